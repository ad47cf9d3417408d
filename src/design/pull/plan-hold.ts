import { at } from '../../base/at';
import { boardOf } from '../built/board-of';
import { midRadiusAt, radiusAt } from '../../base/cone';
import type { Ends } from '../../base/ends';
import { nodesBetween } from '../../base/integrate';
import { finding } from '../../findings/finding';
import type { Finding, Staged } from '../../base/findings';
import type { Job, Run } from '../../job/job';
import type { ShopRules, Tables } from '../../tables/tables';
import type { BendPlan, Hold } from '../bend/bend-plan';
import { bendingCurve } from '../bend/curve';
import { depthAt } from '../bend/depth-along';
import { formMomentAt } from '../bend/effort';
import { checkHold } from './check';
import { bearingWith, clampNeed, upPush, type HeldForm } from './hold';
import { bearingAt, heldTail, settle } from './settle';
import { wrapFor } from './wrap-for';
import { liftPerSquare } from './tail';

/** What stands behind the spine, mm. */
export interface Standing {
  readonly foot: number;
  readonly spine: number;
}

/** The wrap and the held leg's bearing settle one another in a few turns: the tail changes the pull's arm by little. */
const TURNS = 60;
const SETTLED = 1e-13;
/** More clamps shorten the tail, so that a count is found at once or one later. */
const COUNTS = 5;

/** The form as the pull of the governing run tips it, at the wrap so far settled. */
export function heldForm(bend: BendPlan, { foot, spine }: Standing): HeldForm {
  const run = bend.runs.reduce((most, one) => (one.moment > most.moment ? one : most));
  return {
    foot,
    spine,
    held: bend.legs.held,
    lever: bend.pull.lever,
    wrap: bend.wrap.chosen,
    slices: stretchesOf(bend, run)
      .flatMap(([from, to]) => nodesBetween(from, to, 1))
      .map(({ x, weight }) => ({
        moment: weight * formMomentAt(bend.section, bend.form, x),
        radius: radiusAt(bend.form, x),
        mid: midRadiusAt(bend.form, bend.section.thickness, x),
        ...(bend.heldAlong ? { held: depthAt(bend.heldAlong, 'under', x) } : {}),
      })),
  };
}

/** A run in the stretches within which its held leg's depth runs straight. */
function stretchesOf({ heldAlong }: BendPlan, { from, to }: Run): (readonly [number, number])[] {
  if (!heldAlong) return [[from, to]];
  const borders = [from, ...heldAlong.map((piece) => piece.to).filter((x) => x > from && x < to), to];
  return borders.slice(1).map((border, index) => [at(borders, index), border]);
}

/** What a hold is reckoned by. */
interface Shop {
  readonly job: Job;
  readonly rules: ShopRules;
}

/**
 * Clamps, all together, N, safety included, and how many of them: enough with the wrap their own bearing leads to, since a longer tail of
 * the held leg means less wrap and a shorter lever on the way.
 */
export function clampsFor(
  bend: BendPlan,
  standing: Standing,
  { job, rules }: Shop,
): Pick<Hold, 'clampForce' | 'clamps'> {
  const form = heldForm(bend, standing);
  const at = (wrap: number): Pick<Hold, 'clampForce' | 'clamps'> => {
    const clampForce = job.effort.safety * clampNeed({ ...form, wrap }).force;
    return { clampForce, clamps: Math.max(rules.minClamps, Math.ceil(clampForce / job.clamps.rating)) };
  };
  let wanted = at(form.wrap);
  for (let turn = 0; turn < COUNTS; turn++) {
    const { wrap } = settleWrap(bend, form, wanted.clamps * job.clamps.rating);
    const { clampForce, clamps } = at(wrap);
    if (clamps <= wanted.clamps) return { clampForce, clamps: wanted.clamps };
    wanted = { clampForce, clamps };
  }
  return wanted;
}

/**
 * How far behind the tangent line the held leg will bear, mm, on the shallowest foot and the spine's board as bought: what the form is laid
 * out by before its clamps are known. 0 where the clamps could not hold it.
 */
export function likelyBearing(bend: BendPlan, job: Job, tables: Tables): number {
  const { thickness: spine } = boardOf(job.board.spine, tables);
  const standing = { foot: at(tables.rules.footDepths, 0), spine };
  const { clamps } = clampsFor(bend, standing, { job, rules: tables.rules });
  return settleWrap(bend, heldForm(bend, standing), clamps * job.clamps.rating).bearing ?? 0;
}

/** Wrap and bearing as clamps holding `fitted` N together settle them; the wrap as it is where they cannot hold the form. */
function settleWrap(
  bend: BendPlan,
  form: HeldForm,
  fitted: number,
): { readonly wrap: number; readonly bearing: number | null } {
  const perLength = heldTail(bend, 1);
  let { wrap } = form;
  let bearing: number | null = null;
  for (let turn = 0; turn < TURNS; turn++) {
    bearing = bearingWith({ ...form, wrap }, fitted);
    if (bearing === null) return { wrap, bearing };
    const held = {
      A: perLength.A * bearingAt(bend, 'A', bearing),
      B: perLength.B * bearingAt(bend, 'B', bearing),
    };
    const next = wrapFor(bend, bend.pull.legs, held).chosen;
    if (Math.abs(next - wrap) < SETTLED) return { wrap: next, bearing };
    wrap = next;
  }
  return { wrap, bearing };
}

/**
 * The bend with the form held by `clamps` clamps on this foot: the held leg's tail in the wrap, and the hold itself. An error where the
 * form lifts.
 */
export function holdBend(
  bend: BendPlan,
  standing: Standing,
  clamps: number,
  { job, rules }: Shop,
): Staged<{ readonly bend: BendPlan; readonly hold: Hold } | null> {
  const fitted = clamps * job.clamps.rating;
  const form = heldForm(bend, standing);
  const { wrap, bearing } = settleWrap(bend, form, fitted);
  const held = { ...form, wrap };
  const need = clampNeed(held).force;
  const clampForce = job.effort.safety * need;
  if (bearing === null || need > fitted) {
    return { value: null, findings: [lifts(clampForce, job)] };
  }
  const settled = settle(bend, { ...bend.pull, bows: false, gives: false }, bearing);
  const hold = describe(settled, held, { clamps, fitted, clampForce, bearing }, { job, rules });
  return { value: { bend: settled, hold }, findings: checkHold(settled, hold, rules) };
}

/** No count of clamps that fits holds it. */
function lifts(force: number, { clamps }: Job): Finding {
  return finding('no-room-for-clamps', 'clamps', {
    clamps: Math.ceil(force / clamps.rating),
    force,
    rating: clamps.rating,
    wood: clamps.wood,
  });
}

function describe(
  bend: BendPlan,
  form: HeldForm,
  { clamps, fitted, clampForce, bearing }: Pick<Hold, 'clamps' | 'fitted' | 'clampForce' | 'bearing'>,
  { job, rules }: Shop,
): Hold {
  const mean = ({ A, B }: Ends): number => (A + B) / 2;
  const tailAt = (arm: number): number => mean(heldTail(bend, arm));
  const tightest = 1 / Math.min(...form.slices.map(({ mid }) => mid));
  const share = rules.clampForceSpread;
  const weakest = bearingWith(form, (1 - share) * fitted);
  const strongest = bearingWith(form, (1 + share) * fitted);
  return {
    foot: form.foot,
    clamps,
    clampForce,
    fitted,
    safety: job.effort.safety,
    worst: clampNeed(form).wrap,
    bearing,
    tail: heldTail(bend, bearing),
    // Done up harder, the sheet bears no further back than it does as reckoned.
    spread: { weak: weakest === null ? null : tailAt(weakest), strong: tailAt(strongest ?? bearing) },
    up: upPush(form, bearing),
    lift: liftPerSquare(bendingCurve(bend.section), tightest) * bearing ** 2,
  };
}
