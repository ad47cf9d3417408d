import { at } from '../base/at';
import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { BenchButton } from './bench/bench-button';
import { Beside } from './compare/beside';
import { Cut } from './cut';
import { useAddress } from './address';
import { useAfterPause } from './after-pause';
import { NoFormYet } from './no-form-yet';
import {
  changed,
  draftFrom,
  fromAddress,
  jobFileFrom,
  readDraft,
  textAt,
  type Draft,
  type DraftPath,
  type Opened,
} from './draft';
import { DropFile } from './drop-file';
import { Fields } from './fields';
import { Glance } from './glance';
import { begin, edit, redo, settle, undo } from './history';
import { Know } from './know';
import { keptText } from './files/kept-text';
import { useWatchedJob } from './files/watch-job';
import { OpenFile, type Source } from './open-file';
import { Plots } from './plots';
import { starters } from './starters';
import { useTabTitle } from './tab-title';
import { Take } from './take';
import { Tour } from './tour/tour';
import { View } from './view';
import { Words } from './words';
import { work, type Form } from './work';
import { pathText } from '../job/path';
import { PrintSheet } from './print-sheet';

/** The whole page: one draft, worked out at every change; what follows from it is shown in the order of the work. */
export function App(): JSX.Element {
  const [given] = useState(() => fromAddress(location.hash));
  const [refused, setRefused] = useState(
    given?.problem ? `The job in the address was not opened: ${given.problem}` : '',
  );
  const [history, setHistory] = useState(() => begin<Draft>(given?.draft ?? draftFrom(at(starters, 0).text)));
  const [pinned, setPinned] = useState<Draft | null>(null);
  const draft = history.present;
  const worked = useMemo(() => work(draft), [draft]);
  const last = useRef<Form | null>(null);
  if (worked.form) last.current = worked.form;
  const form = last.current;
  const stale = worked.form === null;
  const greyed = useAfterPause(stale, draft);
  useTabTitle(textAt(draft, ['title']));

  // The text the job came from, whose comments and order are kept, and the file it stands in.
  const [source, setSource] = useState<Source | null>(null);
  const [original, setOriginal] = useState(() => (given?.draft ? given.text : at(starters, 0).text));
  const [onDisk, setOnDisk] = useState<string | null>(null);

  const replace = (next: Draft, place: string): void => setHistory((held) => settle(edit(held, next, place)));
  const take = (opened: Opened, name: string, place: string): void => {
    setRefused(opened.problem === null ? '' : `${name} was not opened: ${opened.problem}`);
    if (!opened.draft) return;
    replace(opened.draft, place);
    setOriginal(opened.text);
    setOnDisk(null);
  };
  const open = (opened: Opened, from: Source): void => {
    take(opened, from.name, 'open');
    if (opened.draft) setSource(from);
  };
  useWatchedJob((text) => {
    const untouched = jobFileFrom(draft) === jobFileFrom(draftFrom(original));
    if (untouched) take(readDraft(text), 'The job on disk', 'disk');
    else setOnDisk(text);
  });
  useAddress(draft, (opened) => take(opened, 'The job in the address', 'address'));
  useEffect(() => {
    const keys = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const back = event.key.toLowerCase() === 'z' && !event.shiftKey;
      const forth = event.key.toLowerCase() === 'y' || (event.key.toLowerCase() === 'z' && event.shiftKey);
      if (!back && !forth) return;
      event.preventDefault();
      setHistory(back ? undo : redo);
    };
    addEventListener('keydown', keys);
    return () => removeEventListener('keydown', keys);
  }, []);

  const change = (path: DraftPath, value: Draft | string | undefined): void =>
    setHistory((held) => edit(held, changed(held.present, path, value), pathText(path)));
  const start = (name: string): void => {
    const starter = starters.find((one) => one.name === name);
    if (!starter) return;
    take(readDraft(starter.text), starter.name, 'open');
    setSource(null);
  };
  const swap = (): void => {
    if (!pinned) return;
    replace(pinned, 'swap');
    setPinned(draft);
  };
  return (
    <>
      <header>
        <h1>bendbuck</h1>
        <p>The form to bend it on, springback included.</p>
        <nav aria-label="Job">
          <label for="starter">Start from</label>
          <select id="starter" value="" onChange={(event) => start(event.currentTarget.value)}>
            <option value="">choose a starter</option>
            {starters.map(({ name, what }) => (
              <option key={name} value={name}>
                {what}
              </option>
            ))}
          </select>
          <OpenFile open={open} />
          <button type="button" disabled={history.past.length === 0} onClick={() => setHistory(undo)}>
            Undo
          </button>
          <button type="button" disabled={history.future.length === 0} onClick={() => setHistory(redo)}>
            Redo
          </button>
          <BenchButton form={form} text={worked.text} stale={stale} />
          <Tour form={form} />
        </nav>
        {refused === '' ? null : (
          <p class="refused" role="alert">
            {refused}. What was here is kept.{' '}
            <button type="button" class="link" onClick={() => setRefused('')}>
              Close
            </button>
          </p>
        )}
      </header>
      {onDisk === null ? null : (
        <p class="refused" role="alert">
          The job file has been changed on disk.{' '}
          <button type="button" onClick={() => take(readDraft(onDisk), 'The job on disk', 'disk')}>
            Take it, my changes go
          </button>{' '}
          <button type="button" class="link" onClick={() => setOnDisk(null)}>
            Keep mine
          </button>
        </p>
      )}
      {worked.fault === '' ? null : (
        <p class="refused" role="alert">
          {worked.fault}
        </p>
      )}
      <DropFile open={open} />
      <Glance form={form} findings={worked.findings} stale={greyed} />
      <main>
        <Fields
          form={form}
          draft={draft}
          findings={worked.findings}
          change={change}
          replace={replace}
          settle={() => setHistory(settle)}
        />
        <div class="shows">
          {form ? <View form={form} stale={greyed} /> : <NoFormYet />}
          <Know form={form} findings={worked.findings} stale={greyed} />
          {form ? <Plots form={form} stale={greyed} /> : null}
          {form ? <Cut form={form} stale={greyed} /> : null}
          <Beside pinned={pinned} draft={draft} form={form} stale={stale} pin={setPinned} swap={swap} />
          <Take worked={worked} stale={stale} kept={() => keptText(original, draft, worked.text)} source={source} />
          <Words />
        </div>
      </main>
      {form ? <PrintSheet form={form} /> : null}
    </>
  );
}
