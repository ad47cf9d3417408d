import { InternalError } from '../../base/errors';
import type { PanelJob } from '../../job/panel/read';
import type { Bend, BendWork, HeldSide, OfferedUse, Panel, Pulling } from '../../panel';
import type { Buildable, Planned } from '../pipeline';
import { yokeBody } from './bodies';
import { heldAlongOf } from './held-along';
import { oneBendJob, runOfAll } from './one-bend';
import type { PlanForm } from './plan-form';

/** A bend worked out by itself, with either side held. */
export type Ways = Readonly<Record<HeldSide, Planned>>;

export function waysToMake(job: PanelJob, panel: Panel, bend: Bend, planForm: PlanForm): Ways {
  const runs = [runOfAll(bend)];
  const plan = (held: HeldSide): Planned =>
    planForm(oneBendJob(job, panel, bend, { held, runs }), { heldAlong: heldAlongOf(panel, bend, held) });
  return { base: plan('base'), leg: plan('leg') };
}

/** The bend with the side held that can be, the base first. Throws where neither can: that was to be refused before. */
export function either({ base, leg }: Ways): Buildable {
  if (base.buildable) return base;
  if (leg.buildable) return leg;
  throw new InternalError('a bend that can be made neither way was let through');
}

/** What the order of work asks of a bend: the forms it may be made on, how far and how hard it is pulled with either side held. */
export function workOf(panel: Panel, index: number, { base, leg }: Ways, uses: readonly OfferedUse[]): BendWork {
  const pulling = (way: Planned): Pulling | null => (way.buildable ? pullingOf(panel, index, way) : null);
  return { uses, pulling: { base: pulling(base), leg: pulling(leg) } };
}

/** The same of a bend whose held side is settled. */
export function workAlone(panel: Panel, index: number, made: Buildable, use: OfferedUse): BendWork {
  const pulling = pullingOf(panel, index, made);
  return { uses: [use], pulling: { base: pulling, leg: pulling } };
}

function pullingOf(panel: Panel, index: number, { bend }: Buildable): Pulling {
  const { pull, wrap } = bend;
  return {
    pulled: wrap.chosen,
    force: pull.handForce,
    yoke: yokeBody(panel, index, bend),
    lever: pull.with === 'bare' ? pull.lever : null,
  };
}
