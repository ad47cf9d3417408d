import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { OutputFile } from '../../base/drawing';
import { Planner, type Business } from '../planner';
import { filesOf, workPanel, type PanelAsked, type PanelWorked } from './panel-work';

const business: Business<PanelAsked, PanelWorked, PanelWorked> = {
  ask: (id, asked) => ({ id, want: 'plan', asked }),
  here: workPanel,
  heard: (worked) => worked,
  rest: 400,
};

export interface PanelWork {
  /** The last answer; null before the first. */
  readonly worked: PanelWorked | null;
  /** The last that could be made. */
  readonly made: PanelWorked | null;
  /** Whether what is asked is not answered yet. */
  readonly busy: boolean;
  readonly makeFiles: () => Promise<readonly OutputFile[]>;
}

/** Has a panel's job worked out beside the page, at every change. */
export function usePanelWork(asked: PanelAsked): PanelWork {
  const [worked, setWorked] = useState<PanelWorked | null>(null);
  const made = useRef<PanelWorked | null>(null);
  if (worked?.planned) made.current = worked;
  const planner = useMemo(() => new Planner(business, (answer) => setWorked(answer)), []);
  const newest = useRef(asked);
  newest.current = asked;
  useEffect(() => {
    planner.lost = () => planner.plan(newest.current);
    return () => planner.stop();
  }, [planner]);
  useEffect(() => planner.plan(asked), [planner, asked]);
  return {
    worked,
    made: made.current,
    busy: worked?.text !== asked.text,
    makeFiles: () => {
      const { current } = newest;
      return planner.files((id) => ({ id, want: 'files', asked: current })) ?? filesHere(current);
    },
  };
}

function filesHere(asked: PanelAsked): Promise<readonly OutputFile[]> {
  const { planned } = workPanel(asked);
  return planned ? filesOf(planned) : Promise.reject(new Error('the panel cannot be made as it is'));
}
