import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Form } from '../work';
import { Bench } from './bench';

/** The way to the bench; a page that is loaded again while there comes back there. `text`: the job's, by which its ticks are kept. */
export function BenchButton({ form, text, stale }: { form: Form | null; text: string; stale: boolean }): JSX.Element {
  const [open, setOpen] = useState(wasOpen);
  const put = (now: boolean): void => {
    setOpen(now);
    remember(now);
  };
  return (
    <>
      <button type="button" disabled={!form || stale} onClick={() => put(true)}>
        At the bench
      </button>
      {open && form && !stale ? <Bench form={form} text={text} close={() => put(false)} /> : null}
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
