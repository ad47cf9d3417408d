import type { JSX } from 'preact';
import { ChangedOnDisk, Fault } from '../notices';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { pathText } from '../../job/path';
import { useAddress } from '../address';
import { useAfterPause } from '../after-pause';
import { BenchButton } from '../bench/bench-button';
import { readDraft, textAt, textToAddress, type Opened, type OpenedDrawing } from '../draft';
import { DropFile } from '../drop-file';
import { Fields } from '../fields';
import { useWatchedJob } from '../files/watch-job';
import { Head } from '../head';
import { begin, edit, settle } from '../history';
import type { Source } from '../open-file';
import type { AppProps } from '../app-props';
import { PrintSheet } from '../print-sheet';
import { useTabTitle } from '../tab-title';
import { Take } from '../take';
import { Words } from '../words';
import { JobText } from './job-text';
import { countedText, openPanelText, withDraft, withField, withText, type PanelDraft } from './panel-draft';
import { panelBench, panelSheet } from './panel-bench';
import { PanelGlance } from './panel-glance';
import { jobOfDrawing } from './outline/drawing-job';
import { keepDrawing } from './outline/kept-drawing';
import { OutlineView } from './outline/outline-view';
import { isTraced, rootOf } from './panel-root';
import { PanelShows } from './panel-shows';
import { usePanelWork } from './use-panel-work';

/** The page for a whole panel: its text, worked out beside the page at every change; flat, folded, step by step, and each bend's form. */
export function PanelApp({ given, leave, back }: AppProps): JSX.Element {
  const [refused, setRefused] = useState(given.refused);
  const [history, setHistory] = useState(() => begin<PanelDraft>(openPanelText(given.text)));
  const [source, setSource] = useState<Source | null>(given.source);
  const [onDisk, setOnDisk] = useState<string | null>(null);
  const [saved, setSaved] = useState(given.text);
  const { text, draft } = history.present;
  const counted = useMemo(() => countedText(history.present), [history.present]);
  const [drawings, setDrawings] = useState<readonly OpenedDrawing[]>(given.drawing ? [given.drawing] : []);
  const file = isTraced(draft) ? textAt(draft, ['outline', 'file']) : '';
  const drawing = useMemo(() => named(file, drawings), [file, drawings]);
  // Kept for when the page is loaded again, under the name it came by.
  useEffect(() => {
    if (drawing) keepDrawing({ ...drawing, name: baseOf(drawing.name) });
  }, [drawing]);
  const asked = useMemo(() => ({ text: counted, drawing }), [counted, drawing]);
  const { worked, made, busy, makeFiles } = usePanelWork(asked);
  const stale = busy || worked?.planned === null;
  const greyed = useAfterPause(stale, history.present);
  const planned = made?.planned ?? null;
  const findings = worked?.findings ?? [];
  const root = rootOf(draft);
  useTabTitle(textAt(draft, ['title']));

  const put = (next: (held: PanelDraft) => PanelDraft, place: string): void =>
    setHistory((held) => edit(held, next(held.present), place));
  const addDrawing = (one: OpenedDrawing): void => {
    setDrawings((held) => [one, ...held.filter(({ name }) => name !== one.name)]);
  };
  /** The drawing the job asks for goes to it; any other begins a job of its own. */
  const takeDrawing = (one: OpenedDrawing): void => {
    addDrawing(one);
    if (baseOf(file) === one.name) return;
    setHistory((held) => settle(edit(held, openPanelText(jobOfDrawing(one)), `open ${one.name}`)));
    setSource(null);
  };
  const take = (opened: Opened, name: string, from: Source | null): void => {
    if (opened.draft) return leave(opened, from, { text, drawing });
    if ('drawing' in opened) return takeDrawing(opened.drawing);
    setRefused(opened.problem === null ? '' : `${name} was not opened: ${opened.problem}`);
    if (!('panel' in opened)) return;
    setHistory((held) => settle(edit(held, openPanelText(opened.panel), `open ${name}`)));
    if (opened.beside) addDrawing(opened.beside);
    setSource(from?.isStarter ? null : from);
    setSaved(opened.panel);
    setOnDisk(null);
  };
  const open = (opened: Opened, from: Source): void => take(opened, from.name, from);
  useAddress(
    text,
    () => textToAddress(text),
    (opened) => take(opened, 'The job in the address', null),
  );
  useWatchedJob((there) => (text === saved ? take(readDraft(there), 'The job on disk', source) : setOnDisk(there)));
  const ready = planned !== null && !stale;
  const shows = useMemo(
    () => <PanelShows planned={planned} findings={findings} stale={greyed} busy={busy} root={root} />,
    [planned, findings, greyed, busy, root],
  );
  return (
    <>
      <Head
        says="The whole panel, and the forms to bend it on."
        open={open}
        history={history}
        step={setHistory}
        refused={refused}
        close={() => setRefused('')}
      >
        <BenchButton make={ready ? () => panelBench(planned) : null} of={planned} text={counted} />
        {back}
      </Head>
      {onDisk === null ? null : (
        <ChangedOnDisk take={() => take(readDraft(onDisk), 'The job on disk', source)} keep={() => setOnDisk(null)} />
      )}
      <Fault fault={worked?.fault ?? ''} />
      <DropFile open={open} />
      <PanelGlance planned={planned} findings={findings} stale={greyed} busy={busy} />
      <main>
        <div class="asks">
          <Fields
            root={root}
            draft={draft}
            findings={findings}
            change={(path, value) => put((held) => withField(held, path, value), pathText(path))}
            replace={(next, place) => put((held) => withDraft(held, next), place)}
            settle={() => setHistory(settle)}
          />
          <JobText
            text={text}
            change={(next) => put((held) => withText(held, next), 'text')}
            settle={() => setHistory(settle)}
          />
        </div>
        <div class="shows">
          {isTraced(draft) ? (
            <OutlineView
              draft={draft}
              drawing={drawing}
              replace={(next, place) => {
                put((held) => withDraft(held, next), place);
                setHistory(settle);
              }}
            />
          ) : null}
          {shows}
          <Take
            make={ready ? async () => ({ files: await makeFiles(), text: counted }) : null}
            of={worked}
            title={planned?.job.title ?? 'panel'}
            job={counted}
            kept={() => text}
            source={source}
            beside={drawing}
          />
          <Words />
        </div>
      </main>
      {planned ? <PrintSheet write={() => panelSheet(planned)} /> : null}
    </>
  );
}

/** The drawing a job names, under that name: one that is dropped says no folder. */
function named(file: string, drawings: readonly OpenedDrawing[]): OpenedDrawing | null {
  const found = drawings.find(({ name }) => name === baseOf(file));
  return found ? { ...found, name: file } : null;
}

function baseOf(file: string): string {
  return file.split(/[/\\]/u).at(-1) ?? '';
}
