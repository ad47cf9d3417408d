import { useEffect, useState } from 'preact/hooks';

/** Keeps the screen from going dark while used, as far as the browser can; whether it does. */
export function useStayAwake(): boolean {
  const [awake, setAwake] = useState(false);
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let over = false;
    const ask = async (): Promise<void> => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const got = await navigator.wakeLock.request('screen');
        if (over) return void got.release();
        lock = got;
        setAwake(true);
        got.addEventListener('release', () => setAwake(false));
      } catch {
        // Refused, with a low battery for one: the page says the screen may sleep.
        setAwake(false);
      }
    };
    // A browser lets go when the page is hidden: asked again as it comes back.
    const back = (): void => void ask();
    void ask();
    document.addEventListener('visibilitychange', back);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', back);
      void lock?.release();
    };
  }, []);
  return awake;
}
