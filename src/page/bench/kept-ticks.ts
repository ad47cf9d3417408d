import { useState } from 'preact/hooks';
import { keptAs, readTicking, writeTicking, type Ticking } from './ticks';

/** A job's ticks, kept by the browser so that they outlast a reload; where it keeps nothing, as long as the page is open. */
export function useTicking(jobText: string): readonly [Ticking, (next: Ticking) => void] {
  const name = keptAs(jobText);
  const [held, setHeld] = useState(() => ({ name, ticking: read(name) }));
  const now = held.name === name ? held.ticking : read(name);
  return [
    now,
    (ticking) => {
      setHeld({ name, ticking });
      keep(name, writeTicking(ticking));
    },
  ];
}

function read(name: string): Ticking {
  try {
    return readTicking(localStorage.getItem(name));
  } catch {
    return readTicking(null);
  }
}

function keep(name: string, text: string): void {
  try {
    localStorage.setItem(name, text);
  } catch {
    // A browser set to keep nothing, or full: the ticks stay on the page.
  }
}
