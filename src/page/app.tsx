import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { BenchButton } from './bench/bench-button';
import { Beside } from './compare/beside';
import { Cut } from './cut';
import { useAddress } from './address';
import { changed, draftFrom, fromAddress, readDraft, textAt, type Draft, type DraftPath, type Opened } from './draft';
import { DropFile } from './drop-file';
import { Fields } from './fields';
import { Glance } from './glance';
import { begin, edit, redo, settle, undo } from './history';
import { Know } from './know';
import { OpenFile } from './open-file';
import { Plots } from './plots';
import { starters } from './starters';
import { useTabTitle } from './tab-title';
import { Take } from './take';
import { View } from './view';
import { work, type Form } from './work';
import { pathText } from '../job/path';
import { PrintSheet } from './print-sheet';

/** The whole page: one draft, worked out at every change; what follows from it is shown in the order of the work. */
export function App(): JSX.Element {
  const [given] = useState(() => fromAddress(location.hash));
  const [refused, setRefused] = useState(
    given?.problem ? `The job in the address was not opened: ${given.problem}` : '',
  );
  const [history, setHistory] = useState(() => begin<Draft>(given?.draft ?? draftFrom(starters[0]?.text ?? '')));
  const [pinned, setPinned] = useState<Draft | null>(null);
  const draft = history.present;
  const worked = useMemo(() => work(draft), [draft]);
  const last = useRef<Form | null>(null);
  if (worked.form) last.current = worked.form;
  const form = last.current;
  const stale = worked.form === null;
  useTabTitle(textAt(draft, ['title']));

  const take = ({ draft: next, problem }: Opened, name: string, place: string): void => {
    setRefused(problem === null ? '' : `${name} was not opened: ${problem}`);
    if (next) setHistory((held) => settle(edit(held, next, place)));
  };
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
  const replace = (next: Draft, place: string): void => setHistory((held) => settle(edit(held, next, place)));
  const start = (name: string): void => {
    const starter = starters.find((one) => one.name === name);
    if (starter) take(readDraft(starter.text), starter.name, 'open');
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
          <OpenFile open={(opened, name) => take(opened, name, 'open')} />
          <button type="button" disabled={history.past.length === 0} onClick={() => setHistory(undo)}>
            Undo
          </button>
          <button type="button" disabled={history.future.length === 0} onClick={() => setHistory(redo)}>
            Redo
          </button>
          <BenchButton form={form} text={worked.text} stale={stale} />
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
      {worked.fault === '' ? null : (
        <p class="refused" role="alert">
          {worked.fault}
        </p>
      )}
      <DropFile open={(opened, name) => take(opened, name, 'open')} />
      <Glance form={form} findings={worked.findings} stale={stale} />
      <main>
        <Fields
          draft={draft}
          findings={worked.findings}
          change={change}
          replace={replace}
          settle={() => setHistory(settle)}
        />
        <div class="shows">
          {form ? <View form={form} stale={stale} /> : null}
          <Know form={form} findings={worked.findings} stale={stale} />
          {form ? <Plots form={form} stale={stale} /> : null}
          {form ? <Cut form={form} stale={stale} /> : null}
          <Beside pinned={pinned} draft={draft} form={form} stale={stale} pin={setPinned} swap={swap} />
          <Take worked={worked} stale={stale} />
        </div>
      </main>
      {form ? <PrintSheet form={form} /> : null}
    </>
  );
}
