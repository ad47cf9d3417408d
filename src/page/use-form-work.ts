import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Draft } from './draft';
import { takeOver, type HandedOver } from './hand-over';
import { Planner, type Business } from './planner';
import { work, type Worked } from './work';

export interface FormWork {
  /** What the last answer is of. */
  readonly of: Draft;
  /** The last answer; while one types it may be of what stood there a moment ago. */
  readonly worked: Worked;
  /** What becomes of the draft as it stands, worked out here and now where the answer is not there yet. */
  readonly now: () => Worked;
}

const business: Business<Draft, Worked, HandedOver> = {
  ask: (id, asked) => ({ id, want: 'form', asked }),
  here: work,
  heard: takeOver,
  rest: null,
};

/** Has a form worked out at every change, beside the page once its worker has started; the first at once. */
export function useFormWork(draft: Draft): FormWork {
  const [held, setHeld] = useState(() => ({ of: draft, worked: work(draft) }));
  const planner = useMemo(
    () =>
      new Planner(business, (worked, of) => setHeld((before) => ({ of, worked: keepFindings(worked, before.worked) }))),
    [],
  );
  const newest = useRef(draft);
  useLayoutEffect(() => {
    if (newest.current !== draft) planner.plan(draft);
    newest.current = draft;
  }, [planner, draft]);
  useEffect(() => {
    planner.lost = () => planner.plan(newest.current);
    // After the first numbers are shown.
    const timer = setTimeout(() => planner.start());
    return () => {
      clearTimeout(timer);
      planner.stop();
    };
  }, [planner]);
  const { of, worked } = held;
  return { of, worked, now: () => (of === draft ? worked : work(draft)) };
}

/** Findings that say what the last said are the last: what shows them need not be gone through again. */
function keepFindings(worked: Worked, last: Worked): Worked {
  const alike = JSON.stringify(worked.findings) === JSON.stringify(last.findings);
  return alike ? { ...worked, findings: last.findings } : worked;
}
