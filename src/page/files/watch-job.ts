import { useEffect, useRef } from 'preact/hooks';

/** How often a watched job is asked for, ms. */
const EVERY = 1000;
/** The name under which the page's own server hands out the job it was started with, and nothing else. */
const JOB = 'job.yaml';

/** Where the page was opened by the command line with a job: calls back with the file's text whenever it has been changed on disk. */
export function useWatchedJob(changed: (text: string) => void): void {
  const call = useRef(changed);
  call.current = changed;
  useEffect(() => {
    if (!location.protocol.startsWith('http') || !new URLSearchParams(location.search).has('watch')) return undefined;
    let known: string | null = null;
    const ask = async (): Promise<void> => {
      try {
        const answer = await fetch(JOB, { cache: 'no-store' });
        if (!answer.ok) return;
        const text = await answer.text();
        if (known !== null && text !== known) call.current(text);
        known = text;
      } catch {
        // The server has been stopped: the page goes on without it.
      }
    };
    void ask();
    const timer = setInterval(() => void ask(), EVERY);
    return () => clearInterval(timer);
  }, []);
}
