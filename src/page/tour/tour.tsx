import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Form } from '../work';
import { FinishedPart } from './finished-part';
import { rememberShown, wasShown } from './seen';
import { stops } from './stops';

/** Shows a newcomer round the page in three stops, once unasked and then whenever asked; the page stays usable all the while. */
export function Tour({ form }: { form: Form | null }): JSX.Element {
  const [at, setAt] = useState<number | null>(() => (wasShown() ? null : 0));
  const box = useRef<HTMLElement>(null);
  const asked = useRef(false);
  const stop = at === null ? undefined : stops[at];
  useEffect(() => {
    const section = stop ? document.getElementById(stop.at)?.closest('section') : null;
    section?.classList.add('shown-now');
    if (asked.current) {
      section?.scrollIntoView({ block: 'start' });
      box.current?.focus({ preventScroll: true });
    }
    return () => section?.classList.remove('shown-now');
  }, [stop]);
  const go = (next: number | null): void => {
    asked.current = next !== null;
    if (next === null) rememberShown();
    setAt(next);
  };
  return (
    <>
      <button type="button" onClick={() => go(0)}>
        Show me round
      </button>
      {stop && at !== null ? (
        <aside class="tour" ref={box} tabIndex={-1} aria-labelledby="tour">
          <h2 id="tour">
            {at + 1} of {stops.length}: {stop.title}
          </h2>
          {at === 0 && form ? <FinishedPart form={form} /> : null}
          <p>{stop.says}</p>
          <p>
            {at > 0 ? (
              <button type="button" onClick={() => go(at - 1)}>
                Back
              </button>
            ) : null}{' '}
            {at + 1 < stops.length ? (
              <button type="button" class="main" onClick={() => go(at + 1)}>
                Next
              </button>
            ) : null}{' '}
            <button type="button" onClick={() => go(null)}>
              {at + 1 < stops.length ? 'Skip' : 'Done'}
            </button>
          </p>
        </aside>
      ) : null}
    </>
  );
}
