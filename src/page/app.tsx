import type { JSX } from 'preact';
import { ChangedOnDisk, Fault } from './notices';
import { useMemo, useRef, useState } from 'preact/hooks';
import { BenchButton } from './bench/bench-button';
import { Beside } from './compare/beside';
import { Cut } from './cut';
import type { AppProps } from './app-props';
import { benchSteps } from './bench/bench-steps';
import { useAddress } from './address';
import { useAfterPause } from './after-pause';
import { NoFormYet } from './no-form-yet';
import {
  changed,
  draftFrom,
  jobFileFrom,
  readDraft,
  textAt,
  toAddress,
  type Draft,
  type DraftPath,
  type Opened,
} from './draft';
import { DropFile } from './drop-file';
import { Fields } from './fields';
import { Glance } from './glance';
import { Head } from './head';
import { begin, edit, settle } from './history';
import { Know } from './know';
import { keptText } from './files/kept-text';
import { useWatchedJob } from './files/watch-job';
import type { Source } from './open-file';
import { Plots } from './plots';
import { useTabTitle } from './tab-title';
import { Take, type Made } from './take';
import { Tour } from './tour/tour';
import { View } from './view';
import { Words } from './words';
import { ShownForm } from './shown-form';
import { useFormWork } from './use-form-work';
import { tables, type Form } from './work';
import { jobFields } from '../job/fields/index';
import { pathText } from '../job/path';
import { PrintSheet, sheetOf } from './print-sheet';
import font from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf';
import { makeFiles } from '../output/files';

/** The page for one bend: one draft, worked out at every change; what follows from it is shown in the order of the work. */
export function App({ given, leave, back }: AppProps): JSX.Element {
  const [refused, setRefused] = useState(given.refused);
  const [history, setHistory] = useState(() => begin<Draft>(draftFrom(given.text)));
  const [pinned, setPinned] = useState<Draft | null>(null);
  const draft = history.present;
  const { of, worked, now } = useFormWork(draft);
  const last = useRef<Form | null>(null);
  if (worked.form) last.current = worked.form;
  const form = last.current;
  const stale = worked.form === null;
  const greyed = useAfterPause(stale, draft);
  useTabTitle(textAt(draft, ['title']));

  // The text the job came from, whose comments and order are kept, and the file it stands in.
  const [source, setSource] = useState<Source | null>(given.source);
  const [original, setOriginal] = useState(given.text);
  const [onDisk, setOnDisk] = useState<string | null>(null);

  const replace = (next: Draft, place: string): void => setHistory((held) => settle(edit(held, next, place)));
  const take = (opened: Opened, name: string, place: string, from: Source | null = null): void => {
    if ('panel' in opened || 'drawing' in opened)
      return leave(opened, from, { text: jobFileFrom(draft), drawing: null });
    setRefused(opened.problem === null ? '' : `${name} was not opened: ${opened.problem}`);
    if (!opened.draft) return;
    replace(opened.draft, place);
    setOriginal(opened.text);
    setOnDisk(null);
  };
  const open = (opened: Opened, from: Source): void => {
    take(opened, from.name, 'open', from);
    if (opened.draft) setSource(from.isStarter ? null : from);
  };
  useWatchedJob((text) => {
    const untouched = jobFileFrom(draft) === jobFileFrom(draftFrom(original));
    if (untouched) take(readDraft(text), 'The job on disk', 'disk');
    else setOnDisk(text);
  });
  useAddress(
    draft,
    () => toAddress(draft),
    (opened) => take(opened, 'The job in the address', 'address'),
  );

  const change = (path: DraftPath, value: Draft | string | undefined): void =>
    setHistory((held) => edit(held, changed(held.present, path, value), pathText(path)));
  const { findings } = worked;
  // What no change touches is not gone through again: the fields when an answer comes, what is shown when a field changes.
  const asks = useMemo(
    () => (
      <Fields
        root={jobFields}
        draft={draft}
        findings={findings}
        change={change}
        replace={replace}
        settle={() => setHistory(settle)}
      />
    ),
    [draft, findings],
  );
  const shows = useMemo(
    () => (
      <>
        {form ? <View form={form} stale={greyed} /> : <NoFormYet />}
        <Know form={form} findings={findings} stale={greyed} />
        {form ? <Plots form={form} stale={greyed} /> : null}
        {form ? <Cut form={form} stale={greyed} /> : null}
      </>
    ),
    [form, findings, greyed],
  );
  const words = useMemo(() => <Words />, []);
  const makeNow = async (): Promise<Made> => {
    const { form: made, text: said } = now();
    if (!made) throw new Error('the form cannot be made as it is');
    return { files: await makeFiles(made.planned, { tables, font }), text: said };
  };
  const swap = (): void => {
    if (!pinned) return;
    replace(pinned, 'swap');
    setPinned(draft);
  };
  return (
    <>
      <Head
        says="The form to bend it on, springback included."
        open={open}
        history={history}
        step={setHistory}
        refused={refused}
        close={() => setRefused('')}
      >
        <BenchButton make={form && !stale ? () => benchSteps(form) : null} of={form} text={worked.text} />
        {back}
        <Tour form={form} />
      </Head>
      {onDisk === null ? null : (
        <ChangedOnDisk take={() => take(readDraft(onDisk), 'The job on disk', 'disk')} keep={() => setOnDisk(null)} />
      )}
      <Fault fault={worked.fault} />
      <DropFile open={open} />
      <Glance form={form} findings={worked.findings} stale={greyed} />
      <main>
        <ShownForm.Provider value={form}>{asks}</ShownForm.Provider>
        <div class="shows">
          {shows}
          <Beside pinned={pinned} draft={of} form={form} stale={stale} pin={setPinned} swap={swap} />
          <Take
            make={form && !stale ? makeNow : null}
            of={draft}
            title={form?.job.title ?? 'job'}
            job={draft}
            kept={() => keptText(original, draft, now().text)}
            source={source}
          />
          {words}
        </div>
      </main>
      {form ? <PrintSheet write={() => sheetOf(now().form ?? form)} /> : null}
    </>
  );
}
