import { useCallback, useEffect, useRef, useState } from 'preact/hooks';

/** How long changes must rest before what nobody sees follows them, ms. */
const REST = 200;

/** Whether an element is on the screen or nearly: what nobody sees is not drawn anew at every change. */
export function useSeen(holder: { readonly current: Element | null }): boolean {
  const find = useCallback(() => holder.current, [holder]);
  return useOnScreen(find, '150px');
}

/** Whether the section headed by `id` is on the screen, off its upper and lower seventh. */
export function useInSight(id: string): boolean {
  const find = useCallback(() => document.getElementById(id)?.closest('section') ?? null, [id]);
  return useOnScreen(find, '-15% 0px');
}

/** Whether an element is on the screen, which is larger by a margin; taken to be until it is known. */
function useOnScreen(find: () => Element | null, margin: string): boolean {
  const [isOn, setOn] = useState(true);
  useEffect(() => {
    const target = find();
    if (!target) return undefined;
    const observer = new IntersectionObserver((entries) => setOn(entries.at(-1)?.isIntersecting ?? true), {
      rootMargin: margin,
    });
    observer.observe(target);
    return () => observer.disconnect();
  }, [find, margin]);
  return isOn;
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
