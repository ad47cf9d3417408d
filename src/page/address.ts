import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { fromAddress, toAddress, type Opened } from './draft';

/** A browser takes milliseconds to change a page's address: while one types, it is changed no more often than this, ms. */
const EVERY = 300;
/** Some browsers refuse a page that changes its address very often, for a while; then it is tried once more, ms. */
const LATER = 1000;

/** Keeps the job, as `address` says it, in the page's own address, at once or nearly, so that a reload or a copied link has it; and follows an address typed or pasted. `job` changes with it. */
export function useAddress(job: unknown, address: () => string, follow: (opened: Opened) => void): void {
  const last = useRef(-Infinity);
  useLayoutEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const keep = (): void => {
      const said = address();
      if (said === location.hash) return;
      last.current = performance.now();
      if (!put(said)) timer = setTimeout(keep, LATER);
    };
    const wait = last.current + EVERY - performance.now();
    if (wait <= 0) keep();
    else timer = setTimeout(keep, wait);
    return () => clearTimeout(timer);
  }, [job]);
  useEffect(() => {
    const changed = (): void => {
      const said = address();
      const given = location.hash === said ? null : fromAddress(location.hash);
      if (given && !(given.draft && toAddress(given.draft) === said)) follow(given);
    };
    addEventListener('hashchange', changed);
    return () => removeEventListener('hashchange', changed);
  }, [job]);
}

function put(address: string): boolean {
  try {
    window.history.replaceState(null, '', address);
    return true;
  } catch {
    return false;
  }
}
