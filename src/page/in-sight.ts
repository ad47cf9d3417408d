import { useEffect, useRef, useState } from 'preact/hooks';

/** How long changes must rest before what nobody sees follows them, ms. */
const REST = 200;

/** Whether an element is on the screen or nearly: what nobody sees is not drawn anew at every change. */
export function useSeen(holder: { readonly current: Element | null }): boolean {
  const [seen, setSeen] = useState(true);
  useEffect(() => {
    const target = holder.current;
    if (!target) return undefined;
    const observer = new IntersectionObserver((entries) => setSeen(entries.at(-1)?.isIntersecting ?? true), {
      rootMargin: '150px',
    });
    observer.observe(target);
    return () => observer.disconnect();
  }, [holder]);
  return seen;
}

/** What an element is to show: the newest where it is on the screen or nearly, else that only once changes rest. */
export function useShown<Value>(holder: { readonly current: Element | null }, newest: Value): Value {
  const seen = useSeen(holder);
  const [rested, setRested] = useState(newest);
  const shown = useRef(newest);
  if (seen || rested === newest) shown.current = newest;
  const behind = shown.current !== newest;
  useEffect(() => {
    if (!behind) return undefined;
    const timer = setTimeout(() => setRested(newest), REST);
    return () => clearTimeout(timer);
  }, [behind, newest]);
  return shown.current;
}
