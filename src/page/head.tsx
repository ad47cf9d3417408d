import type { ComponentChildren, JSX } from 'preact';
import type { Opened } from './draft';
import { redo, undo, type History } from './history';
import { RefusedFile } from './notices';
import { OpenFile, type Source } from './open-file';
import { StarterChoice } from './starter-choice';
import { useUndoKeys } from './undo-keys';

interface HeadProps<Value> {
  readonly says: string;
  readonly open: (opened: Opened, from: Source) => void;
  readonly history: History<Value>;
  readonly step: (way: (held: History<Value>) => History<Value>) => void;
  /** Why a file was not taken; empty where none was refused. */
  readonly refused: string;
  readonly close: () => void;
  /** Buttons of the one page alone. */
  readonly children: ComponentChildren;
}

/** The top of the page: what it is for, another job, one step back and on again, and why a file was not taken. */
export function Head<Value>(props: HeadProps<Value>): JSX.Element {
  const { says, open, history, step, refused, close, children } = props;
  useUndoKeys(
    () => step(undo),
    () => step(redo),
  );
  return (
    <header>
      <h1>bendbuck</h1>
      <p>{says}</p>
      <nav aria-label="Job">
        <StarterChoice open={open} />
        <OpenFile open={open} />
        <button type="button" disabled={history.past.length === 0} onClick={() => step(undo)}>
          Undo
        </button>
        <button type="button" disabled={history.future.length === 0} onClick={() => step(redo)}>
          Redo
        </button>
        {children}
      </nav>
      <RefusedFile why={refused} close={close} />
    </header>
  );
}
