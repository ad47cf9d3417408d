import { useEffect, useState } from 'preact/hooks';

/** How long typing must rest before the page speaks of what is not finished, ms. */
const PAUSE = 700;

/** Whether something has held since the last change and through a pause: half a number typed greys nothing. */
export function useAfterPause(holds: boolean, change: unknown): boolean {
  const [after, setAfter] = useState<unknown>(null);
  useEffect(() => {
    if (!holds) return undefined;
    const timer = setTimeout(() => setAfter(change), PAUSE);
    return () => clearTimeout(timer);
  }, [holds, change]);
  return holds && after === change;
}
