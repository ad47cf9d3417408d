import { useEffect, useLayoutEffect } from 'preact/hooks';
import { fromAddress, toAddress, type Draft, type Opened } from './draft';

/** Some browsers refuse a page that changes its address very often, for a while; then it is tried once more, ms. */
const LATER = 1000;

/** Keeps the draft in the page's address, at once, so that a reload or a copied link has it; and follows an address typed or pasted. */
export function useAddress(draft: Draft, follow: (opened: Opened) => void): void {
  useLayoutEffect(() => {
    const address = toAddress(draft);
    if (address === location.hash || put(address)) return undefined;
    const timer = setTimeout(() => put(address), LATER);
    return () => clearTimeout(timer);
  }, [draft]);
  useEffect(() => {
    const changed = (): void => {
      const given = fromAddress(location.hash);
      if (given && !(given.draft && toAddress(given.draft) === toAddress(draft))) follow(given);
    };
    addEventListener('hashchange', changed);
    return () => removeEventListener('hashchange', changed);
  }, [draft]);
}

function put(address: string): boolean {
  try {
    window.history.replaceState(null, '', address);
    return true;
  } catch {
    return false;
  }
}
