import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Bench } from './bench';
import type { BenchStep } from './bench-steps';

interface BenchProps {
  /** Says the steps; null while there are none to take. */
  readonly make: (() => readonly BenchStep[]) | null;
  /** What they are of: they are said anew once it changes. */
  readonly of: unknown;
  /** The job's, by which its ticks are kept. */
  readonly text: string;
}

/** The way to the bench; a page that is loaded again while there comes back there. */
export function BenchButton({ make, of, text }: BenchProps): JSX.Element {
  const [open, setOpen] = useState(wasOpen);
  const put = (now: boolean): void => {
    setOpen(now);
    remember(now);
  };
  return (
    <>
      <button type="button" disabled={!make} onClick={() => put(true)}>
        At the bench
      </button>
      {open && make ? <Bench make={make} of={of} text={text} close={() => put(false)} /> : null}
    </>
  );
}

const NAME = 'bendbuck.bench';

function wasOpen(): boolean {
  try {
    return sessionStorage.getItem(NAME) === 'open';
  } catch {
    return false;
  }
}

function remember(open: boolean): void {
  try {
    if (open) sessionStorage.setItem(NAME, 'open');
    else sessionStorage.removeItem(NAME);
  } catch {
    // A browser set to keep nothing: after a reload the page begins at its top.
  }
}
