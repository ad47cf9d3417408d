import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { at } from '../base/at';
import { App } from './app';
import { fromAddress, type Opened } from './draft';
import type { Source } from './open-file';
import { PanelApp } from './panel/panel-app';
import { starters } from './starters';

/** What the page is of: a job of one bend, or of a panel. */
interface Shown {
  readonly id: number;
  readonly kind: 'bend' | 'panel';
  readonly given: Given;
}

interface Given {
  readonly text: string;
  readonly source: Source | null;
  /** Why what was to be opened first was not; empty where nothing was. */
  readonly refused: string;
}

export interface AppProps {
  readonly given: Given;
  /** Opens what the other page is for; `text` is the job that is left. */
  readonly leave: (opened: Opened, source: Source | null, text: string) => void;
  /** The way back to the job that was left for this one. */
  readonly back: JSX.Element | null;
}

/** The page: of one bend or of a whole panel, as the job opened is. */
export function Page(): JSX.Element {
  const [shown, setShown] = useState(firstShown);
  const [before, setBefore] = useState<Shown | null>(null);
  const leave: AppProps['leave'] = (opened, from, text) => {
    const next = shownFor(opened, from?.isStarter ? null : from, shown.id + 1);
    if (!next) return;
    setBefore({ ...shown, given: { ...shown.given, text, refused: '' } });
    setShown(next);
  };
  const turnBack = before && (
    <button
      type="button"
      onClick={() => {
        setBefore(null);
        setShown({ ...before, id: shown.id + 1 });
      }}
    >
      Back to {before.kind === 'bend' ? 'the one bend' : 'the panel'}
    </button>
  );
  const Kind = shown.kind === 'panel' ? PanelApp : App;
  return <Kind key={shown.id} given={shown.given} leave={leave} back={turnBack} />;
}

function firstShown(): Shown {
  const opened = fromAddress(location.hash);
  const refused = opened?.problem ? `The job in the address was not opened: ${opened.problem}` : '';
  const first: Shown = { id: 0, kind: 'bend', given: { text: at(starters, 0).text, source: null, refused } };
  return (opened && shownFor(opened, null, 0)) ?? first;
}

function shownFor(opened: Opened, source: Source | null, id: number): Shown | null {
  if (opened.draft) return { id, kind: 'bend', given: { text: opened.text, source, refused: '' } };
  if ('panel' in opened) return { id, kind: 'panel', given: { text: opened.panel, source, refused: '' } };
  return null;
}
