import { at } from '../../base/at';
import { centreFromTangent, coneThrough, radiusAt, type Cone } from '../../base/cone';
import { ROUNDING, SAME_PLACE } from '../../base/tolerance';
import type { FixtureLayout, Station } from '../../design/fixture/fixture';
import type { Guest } from '../../design/fixture/guests';
import type { Run } from '../../job/job';
import type { PanelJob } from '../../job/panel/read';
import type { Bend, FormUse, HeldSide, Panel } from '../../panel';
import type { Buildable, Planned } from '../pipeline';
import { heldAlongOf } from './held-along';
import { oneBendJob, onFormJob, runOfAll } from './one-bend';
import type { PlanForm } from './plan-form';

/** Which way a form runs: whether its own bend's end A is its small end. */
type Own = { readonly radiusA: number; readonly radiusB: number };

/** Stretches are counted from a form's small end, runs from end A of the form's own bend. */
export function runOf(name: string, { stretch, body: { cone } }: Pick<FormUse, 'stretch' | 'body'>, own: Own): Run {
  const { length } = cone;
  const [from, to] = growsFromA(own) ? [stretch.from, stretch.to] : [length - stretch.to, length - stretch.from];
  return { name, from: Math.max(0, from), to: Math.min(length, to) };
}

/** Whether a bend's end A lies toward end A of the form's own bend. */
export function runsSameWay({ stretch }: Pick<FormUse, 'stretch'>, own: Own): boolean {
  return growsFromA(own) ? stretch.startsAtA : !stretch.startsAtA;
}

function growsFromA({ radiusA, radiusB }: Own): boolean {
  return radiusA <= radiusB;
}

/** A stretch's cone from the bend's end A. */
function stretchCone({ stretch: { from, to, startsAtA }, body: { cone } }: FormUse): Cone {
  const [small, large] = [radiusAt(cone, from), radiusAt(cone, to)];
  return startsAtA ? coneThrough(small, large, to - from) : coneThrough(large, small, to - from);
}

function sameCone(a: Cone, b: Cone): boolean {
  const apart = [a.radiusA - b.radiusA, a.radiusB - b.radiusB, a.length - b.length].map(Math.abs);
  return Math.max(...apart) < ROUNDING;
}

interface Standing {
  readonly bend: Bend;
  readonly held: HeldSide;
  readonly use: FormUse;
  /** The bend whose own the form is. */
  readonly owner: Bend;
}

/** A bend as a guest on another's form, worked out by the radii that are built there; null where it cannot be made on them. */
export function guestOn(
  job: PanelJob,
  panel: Panel,
  { bend, held, use, owner }: Standing,
  planForm: PlanForm,
): Guest | null {
  const heldAlong = heldAlongOf(panel, bend, held);
  const alone = planForm(oneBendJob(job, panel, bend, { held, runs: [runOfAll(bend)] }), { heldAlong });
  const cone = stretchCone(use);
  // On the very radii of its own form it is pulled as there.
  const planned =
    alone.buildable && sameCone(alone.bend.form, cone)
      ? alone
      : planForm(onFormJob(job, panel, bend, { held, cone }), { heldAlong });
  if (!planned.buildable) return null;
  const { from, to } = runOf(bend.name, use, owner.finished);
  return { name: bend.name, from, to, sameWay: runsSameWay(use, owner.finished), bend: planned.bend };
}

/** The guest's bend as it is made on the form that stands: held on its foot by its own clamps, its wrap as they settle it. */
export function madeOnForm(
  job: PanelJob,
  panel: Panel,
  { standing: { bend, held, use, owner }, form }: { readonly standing: Standing; readonly form: Buildable },
  planForm: PlanForm,
): Planned {
  const stretch = { ...runOf(bend.name, use, owner.finished), sameWay: runsSameWay(use, owner.finished) };
  const layout = cutOff(form.layout, form.bend.form, stretch);
  return planForm(onFormJob(job, panel, bend, { held, cone: stretchCone(use) }), {
    layout,
    heldAlong: heldAlongOf(panel, bend, held),
  });
}

/** What of a form stands under one of its guests, from the bend's own end A: as a form cut off at the ends of its stretch. */
function cutOff(
  layout: FixtureLayout,
  form: Cone,
  { name, from, to, sameWay }: Run & { readonly sameWay: boolean },
): FixtureLayout {
  const [low, high] = [centreFromTangent(form, from), centreFromTangent(form, to)];
  const moved = <Thing extends { readonly at: number }>(things: readonly Thing[]): Thing[] =>
    things.map((thing) => ({ ...thing, at: sameWay ? thing.at - low : high - thing.at })).sort((a, b) => a.at - b.at);
  const under = ({ at: place, thickness }: { readonly at: number; readonly thickness: number }): boolean =>
    place - thickness / 2 > low - SAME_PLACE && place + thickness / 2 < high + SAME_PLACE;
  const asSeen = (station: Station): Station =>
    sameWay ? station : { ...station, contact: station.contact === 'A' ? 'B' : 'A' };
  const whole = low < SAME_PLACE && high > layout.spine.length - SAME_PLACE;
  const hold = layout.guests.find((guest) => guest.name === name);
  const holes = (hold?.holes ?? []).map((index) => at(layout.clampHoles, index));
  return {
    ...layout,
    stations: moved(layout.stations.filter(under)).map(asSeen),
    backings: moved(layout.backings.filter(under)),
    clampHoles: moved(holes),
    spine: { ...layout.spine, length: high - low, ears: whole ? layout.spine.ears : 0 },
    clamps: hold?.clamps ?? layout.clamps,
    clampForce: hold?.clampForce ?? layout.clampForce,
    ownHoles: holes.map((_, index) => index),
    guests: [],
  };
}
