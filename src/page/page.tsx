import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { at } from '../base/at';
import { App } from './app';
import type { AppProps, Given } from './app-props';
import { fromAddress, type Opened } from './draft';
import type { Source } from './open-file';
import { jobOfDrawing } from './panel/outline/drawing-job';
import { keptDrawing } from './panel/outline/kept-drawing';
import { PanelApp } from './panel/panel-app';
import { starters } from './starters';

/** What the page is of: a job of one bend, or of a panel. */
interface Shown {
  readonly id: number;
  readonly kind: 'bend' | 'panel';
  readonly given: Given;
}

/** The page: of one bend or of a whole panel, as the job opened is. */
export function Page(): JSX.Element {
  const [shown, setShown] = useState(firstShown);
  const [before, setBefore] = useState<Shown | null>(null);
  const leave: AppProps['leave'] = (opened, from, left) => {
    const next = shownFor(opened, from?.isStarter ? null : from, shown.id + 1);
    if (!next) return;
    setBefore({ ...shown, given: { ...shown.given, ...left, refused: '' } });
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
  const first: Shown = {
    id: 0,
    kind: 'bend',
    given: { text: at(starters, 0).text, source: null, drawing: null, refused },
  };
  return (opened && shownFor(opened, null, 0)) ?? first;
}

function shownFor(opened: Opened, source: Source | null, id: number): Shown | null {
  const common = { source, drawing: null, refused: '' };
  if (opened.draft) return { id, kind: 'bend', given: { ...common, text: opened.text } };
  if ('panel' in opened)
    return { id, kind: 'panel', given: { ...common, text: opened.panel, drawing: opened.beside ?? keptDrawing() } };
  if ('drawing' in opened) {
    const { drawing } = opened;
    return { id, kind: 'panel', given: { refused: '', source: null, text: jobOfDrawing(drawing), drawing } };
  }
  return null;
}
