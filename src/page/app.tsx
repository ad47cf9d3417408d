import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Cut } from './cut';
import { changed, draftFrom, fromAddress, toAddress, type Draft, type DraftPath } from './draft';
import { Fields } from './fields';
import { Glance } from './glance';
import { begin, edit, redo, settle, undo } from './history';
import { Know } from './know';
import { OpenFile } from './open-file';
import { Plots } from './plots';
import { starters } from './starters';
import { Take } from './take';
import { View } from './view';
import { work, type Form } from './work';
import { pathText } from '../job/path';
import { PrintSheet } from './print-sheet';

/** How long after the last change the address follows, ms. */
const ADDRESS_DELAY = 120;

/** The whole page: one draft, worked out at every change; what follows from it is shown in the order of the work. */
export function App(): JSX.Element {
  const [history, setHistory] = useState(() =>
    begin<Draft>(fromAddress(location.hash) ?? draftFrom(starters[0]?.text ?? '')),
  );
  const draft = history.present;
  const worked = useMemo(() => work(draft), [draft]);
  const last = useRef<Form | null>(null);
  if (worked.form) last.current = worked.form;
  const form = last.current;
  const stale = worked.form === null;

  useEffect(() => {
    // Browsers count how often a page changes its address; while a field is being typed in, the last change is soon enough.
    const timer = setTimeout(() => {
      const address = toAddress(draft);
      if (address !== location.hash) window.history.replaceState(null, '', address);
    }, ADDRESS_DELAY);
    return () => clearTimeout(timer);
  }, [draft]);
  useEffect(() => {
    const follow = (): void => {
      const given = fromAddress(location.hash);
      if (given && toAddress(given) !== toAddress(draft)) setHistory((held) => edit(held, given, 'address'));
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, [draft]);
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
  const open = (text: string): void => setHistory((held) => settle(edit(held, draftFrom(text), 'open')));
  return (
    <>
      <header>
        <h1>bendbuck</h1>
        <p>The form to bend it on, springback included.</p>
        <nav aria-label="Job">
          <label for="starter">Start from</label>
          <select
            id="starter"
            value=""
            onChange={(event) => open(starters.find(({ name }) => name === event.currentTarget.value)?.text ?? '')}
          >
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
        </nav>
      </header>
      <Glance form={form} findings={worked.findings} stale={stale} />
      <main>
        <Fields draft={draft} findings={worked.findings} change={change} settle={() => setHistory(settle)} />
        <div class="shows">
          {form ? <View form={form} stale={stale} /> : null}
          <Know form={form} findings={worked.findings} stale={stale} />
          {form ? <Plots form={form} stale={stale} /> : null}
          {form ? <Cut form={form} stale={stale} /> : null}
          <Take worked={worked} stale={stale} />
        </div>
      </main>
      {form ? <PrintSheet form={form} /> : null}
    </>
  );
}
