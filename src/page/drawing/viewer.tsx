import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { drawingOf, groups, type ViewedDrawing } from './all-drawings';
import { copy } from './copy';
import { isDimension, wordsOf } from './legible';
import { NEARER, Stage, type StageHandle } from './stage';

interface ViewerProps {
  /** Draws what there is to see. */
  readonly make: () => readonly ViewedDrawing[];
  /** Draws what takes longer and comes after. */
  readonly later?: () => Promise<readonly ViewedDrawing[]>;
  /** What it is of: it is drawn anew once that changes. */
  readonly of: unknown;
  readonly first: string;
  readonly close: () => void;
}

/** Every drawing over the whole window, one at a time, `first` (a part, or a drawing) to begin with. */
export function Viewer({ make, later, of, first, close }: ViewerProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const handle = useRef<StageHandle | null>(null);
  const made = useMemo(make, [of]);
  const more = useLater(later, of);
  const all = useMemo(() => [...made, ...more], [made, more]);
  const [id, setId] = useState(() => drawingOf(first, all));
  const [told, setTold] = useState('');
  const at = Math.max(
    0,
    all.findIndex((view) => view.id === id),
  );
  const view = all[at];
  useEffect(() => {
    dialog.current?.showModal();
    // The keys move the drawing from the start.
    dialog.current?.querySelector<SVGElement>('.stage')?.focus();
  }, []);
  const go = (by: number): void => {
    setId(all[at + by]?.id ?? id);
    setTold('');
  };
  const take = async (text: string): Promise<void> =>
    setTold((await copy(text)) ? `Copied: ${text}` : `This browser does not let it be copied: ${text}`);
  return (
    <dialog ref={dialog} class="viewer" aria-label="Drawings" onClose={close}>
      <div class="bar" role="group" aria-label="Which drawing">
        <button type="button" aria-label="The drawing before" disabled={at === 0} onClick={() => go(-1)}>
          ‹
        </button>
        <Choice all={all} id={view?.id ?? ''} choose={setId} />
        <button type="button" aria-label="The next drawing" disabled={at >= all.length - 1} onClick={() => go(1)}>
          ›
        </button>
        <button type="button" class="close" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {view ? <Stage view={view} handle={handle} tapped={(text) => void take(text)} /> : null}
      <div class="bar" role="group" aria-label="How it is shown">
        <button type="button" aria-label="Farther" onClick={() => handle.current?.nearer(1 / NEARER)}>
          −
        </button>
        <button type="button" aria-label="Nearer" onClick={() => handle.current?.nearer(NEARER)}>
          +
        </button>
        <button type="button" onClick={() => handle.current?.whole()}>
          Whole
        </button>
        <button type="button" onClick={() => handle.current?.turn()}>
          Turn
        </button>
        <span role="status" class="told">
          {told || 'Tap a dimension to copy it.'}
        </span>
      </div>
      {view ? <Dimensions view={view} take={(text) => void take(text)} /> : null}
    </dialog>
  );
}

/** What comes after: nothing until then, and nothing of what was asked before. */
function useLater(later: ViewerProps['later'], of: unknown): readonly ViewedDrawing[] {
  const [come, setCome] = useState<{ readonly of: unknown; readonly views: readonly ViewedDrawing[] } | null>(null);
  useEffect(() => {
    let isWanted = true;
    void later?.().then((views) => (isWanted ? setCome({ of, views }) : undefined));
    return () => {
      isWanted = false;
    };
  }, [of]);
  return come && come.of === of ? come.views : NONE;
}

const NONE: readonly ViewedDrawing[] = [];

function Choice({
  all,
  id,
  choose,
}: {
  all: readonly ViewedDrawing[];
  id: string;
  choose: (id: string) => void;
}): JSX.Element {
  return (
    <select aria-label="Drawing" value={id} onChange={(event) => choose(event.currentTarget.value)}>
      {groups
        .filter((group) => all.some((view) => view.group === group))
        .map((group) => (
          <optgroup key={group} label={group}>
            {all
              .filter((view) => view.group === group)
              .map((view) => (
                <option key={view.id} value={view.id}>
                  {view.name}
                </option>
              ))}
          </optgroup>
        ))}
    </select>
  );
}

/** The drawing's dimensions as a list, each to be copied: for the keyboard, and for fingers on a small screen. */
function Dimensions({ view, take }: { view: ViewedDrawing; take: (text: string) => void }): JSX.Element | null {
  const texts = useMemo(() => [...new Set(wordsOf(view.elements).map(({ text }) => text))].filter(isDimension), [view]);
  if (texts.length === 0) return null;
  return (
    <details class="dimensions" key={view.id}>
      <summary>Dimensions as a list ({texts.length})</summary>
      <ul>
        {texts.map((text) => (
          <li key={text}>
            <button type="button" class="link" onClick={() => take(text)}>
              {text}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
