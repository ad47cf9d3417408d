import { useEffect, useLayoutEffect } from 'preact/hooks';
import { fromAddress, toAddress, type Opened } from './draft';

/** Some browsers refuse a page that changes its address very often, for a while; then it is tried once more, ms. */
const LATER = 1000;

/** Keeps the job, as `address`, in the page's own address, at once, so that a reload or a copied link has it; and follows an address typed or pasted. */
export function useAddress(address: string, follow: (opened: Opened) => void): void {
  useLayoutEffect(() => {
    if (address === location.hash || put(address)) return undefined;
    const timer = setTimeout(() => put(address), LATER);
    return () => clearTimeout(timer);
  }, [address]);
  useEffect(() => {
    const changed = (): void => {
      const given = location.hash === address ? null : fromAddress(location.hash);
      if (given && !(given.draft && toAddress(given.draft) === address)) follow(given);
    };
    addEventListener('hashchange', changed);
    return () => removeEventListener('hashchange', changed);
  }, [address]);
}

function put(address: string): boolean {
  try {
    window.history.replaceState(null, '', address);
    return true;
  } catch {
    return false;
  }
}
