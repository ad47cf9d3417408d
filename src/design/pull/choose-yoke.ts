import { toRadians } from '../../base/angle';
import { radiusAt, midRadiusAt } from '../../base/cone';
import type { End, Ends } from '../../base/ends';
import type { ShopRules, Tables } from '../../tables/tables';
import type { YokeBolt, YokeStock } from '../../tables/schema';
import type { BentSheet, PulledEnd, Wedge, Yoke } from '../bend/bend-plan';
import { bendingCurve, type BendingCurve } from '../bend/curve';
import type { GrippedLeg } from './gripped-leg';
import { placeOf } from './leg-shape';
import { gripPoses, poseOf } from './grip-poses';
import { leastGap, noseClears, noseOutline, straightGap, wedgeOf, type NoseSlice } from './nose';
import { gripLeg, pulledByYoke } from './pulling';
import { wrapFor } from './wrap-for';
import { loadYoke, type LoadedYoke } from './yoke';

/** A yoke on the bend's two ends. */
export interface YokedLegs {
  readonly yoke: Yoke;
  readonly legs: Ends<PulledEnd>;
  /** Whether its members and bolts keep every limit. */
  readonly within: boolean;
}

interface Wanted {
  /** From the take-off to the hands, mm. */
  readonly lever: number;
  readonly system: 'in' | 'mm';
  /** Radians. */
  readonly most: number;
  /** Length of the governing run, mm. */
  readonly run: number;
  /** By how much a bend with such legs may stray from the round one, mm, and how far it does. */
  readonly mayStray: number;
  readonly strays: (legs: Ends<PulledEnd>) => number;
}

/**
 * The least pair of members, of the system's stock, that keeps a yoke's limits and leaves the leg flat; where none leaves it flat, of those that keep the
 * limits the one that leaves it flattest; the stiffest of all where none keeps them. Null where the sheet is too limp even for a yoke, or no nose
 * clears the form.
 */
export function chooseYoke(bend: BentSheet, tables: Tables, wanted: Wanted): YokedLegs | null {
  const stock = tables.yokeStock.filter(({ system }) => system === wanted.system);
  const byStiffness = (a: YokeStock, b: YokeStock): number => a.stiffness - b.stiffness;
  const outers = stock.filter(({ kind }) => kind === 'batten').sort(byStiffness);
  const curve = bendingCurve(bend.section);
  const noses = stock.filter(({ kind }) => kind === 'angle').sort(byStiffness);
  const poses = posesAt(bend, curve, noses, wanted);
  const known = new Map<YokeStock, Nosed | null>();
  const clear = (nose: YokeStock): Nosed | null => {
    const found = known.has(nose)
      ? (known.get(nose) ?? null)
      : nosed(bend, curve, tables, { ...wanted, nose, poses, inside: 0 });
    known.set(nose, found);
    return found;
  };
  const pairs: (Nosed & { readonly outer: YokeStock })[] = [];
  const boltUp = (pair: Nosed & { readonly outer: YokeStock }): YokedLegs | null =>
    yokeOf(bend, curve, tables, { ...wanted, ...pair, poses });
  let flattest: { readonly yoked: YokedLegs; readonly strays: number } | null = null;
  for (const outer of outers) {
    for (const nose of noses) {
      const first = outer.width < nose.width ? null : clear(nose);
      if (!first) continue;
      const pair = { ...first, outer };
      pairs.push(pair);
      const yoked = boltUp(pair);
      if (!yoked?.within) continue;
      const strays = wanted.strays(yoked.legs);
      if (strays <= wanted.mayStray) return yoked;
      if (!flattest || strays < flattest.strays - TELLS) flattest = { yoked, strays };
    }
  }
  if (flattest) return flattest.yoked;
  return pairs.reverse().reduce<YokedLegs | null>((found, pair) => found ?? boltUp(pair), null);
}

/** Whether the members keep their limits under what the nose takes at either end. */
function holds(
  loads: Ends<LoadedYoke>,
  { nose, outer }: { readonly nose: YokeStock; readonly outer: YokeStock },
  { maxYokeTail }: ShopRules,
): boolean {
  const harder = loads.A.part >= loads.B.part ? loads.A : loads.B;
  return (
    Math.max(loads.A.stays, loads.B.stays) <= toRadians(maxYokeTail) &&
    harder.grip <= outer.width &&
    harder.stress.nose <= nose.stress &&
    harder.stress.outer <= outer.stress
  );
}

/** A heavier nose is worth it from so much less straying on, mm. */
const TELLS = 0.1;

/** A nose where it clears the form, and the leg gripped there. */
interface Nosed {
  readonly nose: YokeStock;
  /** From the take-off to the nose, and from there to the hands, mm. */
  readonly gap: number;
  readonly arm: number;
  readonly grips: Ends<GrippedLeg>;
}

/** Gaps are set out to this, mm. */
const GAP_STEP = 0.1;

/** The sheet's pose at the nose by the gap before it, at either end. */
type Poses = Ends<ReturnType<typeof gripPoses>>;

function posesAt(bend: BentSheet, curve: BendingCurve, noses: readonly YokeStock[], { lever, most }: Wanted): Poses {
  const thinnest = Math.min(...noses.map(({ thickness }) => thickness));
  const narrowest = Math.min(...noses.map(({ width }) => width));
  return bothEnds(bend, (end) => {
    const from = straightGap(radiusAt(bend.form, placeOf(bend, end)), thinnest);
    return gripPoses(curve, curvatureAt(bend, end), { lever, most, from, to: lever - narrowest });
  });
}

/**
 * Where a nose clears the form at both ends: a little beyond the end of the pull, as the leg lies beside the bolts; and at its end in the middle of
 * the span, where the yoke has turned `inside` (radians) further than the sheet at its nose. Null where it never does.
 */
function nosed(
  bend: BentSheet,
  curve: BendingCurve,
  { rules }: Tables,
  {
    nose,
    lever,
    most,
    poses,
    inside,
  }: Wanted & { readonly nose: YokeStock; readonly poses: Poses; readonly inside: number },
): Nosed | null {
  const over = toRadians(rules.swingExtraDegrees);
  const outline = noseOutline(nose, wedgeOf(nose, rules));
  const gapAt = (end: End): number | null => {
    const beyond = over / curvatureAt(bend, end);
    const looked = (gap: number, turn: number, turned: number): number | null => {
      const pose = poses[end](gap);
      return pose && noseClears(pose, outline, sliceAt(bend, end, pose.stays, turn), turned);
    };
    const clears = (gap: number): number | null => {
      const bolted = looked(gap - beyond, over, 0);
      if (inside === 0 || bolted === null) return bolted;
      const middle = looked(gap, 0, inside);
      return middle === null ? null : Math.min(bolted, middle - rules.noseClears);
    };
    const straight = straightGap(radiusAt(bend.form, placeOf(bend, end)), nose.thickness);
    return leastGap(clears, straight + beyond, lever - nose.width);
  };
  const { A, B } = bothEnds(bend, gapAt);
  if (A === null || B === null) return null;
  return grippedAt(bend, curve, { nose, lever, most, poses }, Math.max(A, B));
}

/** The leg gripped at a gap, set out to the next step; null where it is too limp. */
function grippedAt(
  bend: BentSheet,
  curve: BendingCurve,
  { nose, lever, most, poses }: Pick<Wanted, 'lever' | 'most'> & Pick<Nosed, 'nose'> & { readonly poses: Poses },
  least: number,
): Nosed | null {
  const gap = GAP_STEP * Math.ceil(least / GAP_STEP);
  const arm = lever - gap;
  if (arm <= nose.width) return null;
  const grips = bothEnds(bend, (end) =>
    gripLeg(curve, curvatureAt(bend, end), { gap, arm, near: poses[end](gap)?.parameter }, { most }),
  );
  return grips.A && grips.B ? { nose, gap, arm, grips: { A: grips.A, B: grips.B } } : null;
}

/** The slice of an end, `turn` radians beyond the wrap that a leg keeping `stays` asks for. */
function sliceAt(bend: BentSheet, end: End, stays: number, turn = 0): NoseSlice {
  const wrap = wrapFor(bend, { A: { stays }, B: { stays } }, { A: 0, B: 0 })[end] + turn;
  return { mid: 1 / curvatureAt(bend, end), sheet: bend.section.thickness, wrap };
}

/** How near a nose comes to the form, mm, in the middle of its span, at either end of the bend. */
function clearsBy(
  bend: BentSheet,
  curve: BendingCurve,
  { nose, grips, wedge }: Nosed & { readonly wedge: Wedge },
  loads: Ends<LoadedYoke>,
): number {
  const { A, B } = bothEnds(bend, (end) =>
    noseClears(
      poseOf(curve, curvatureAt(bend, end), grips[end]),
      noseOutline(nose, wedge),
      sliceAt(bend, end, grips[end].stays),
      loads[end].loaded,
    ),
  );
  return Math.min(A, B);
}

function curvatureAt(bend: BentSheet, end: End): number {
  return 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end));
}

/** A value for each end; reckoned once on a constant radius. */
function bothEnds<Value>(bend: BentSheet, at: (end: End) => Value): Ends<Value> {
  const A = at('A');
  return { A, B: bend.form.halfAngle === 0 ? A : at('B') };
}

/** What poses are read off by may be out by so little that a nose is set right in so many steps. */
const STEPS = 6;

/**
 * A yoke of a nose and an outer member: where the nose is, or further out where it would come into the form as the members part. Null where it clears
 * the form nowhere.
 */
function yokeOf(
  bend: BentSheet,
  curve: BendingCurve,
  tables: Tables,
  wanted: Wanted & Nosed & { readonly outer: YokeStock; readonly poses: Poses },
): YokedLegs | null {
  const wedge = wedgeOf(wanted.nose, tables.rules);
  const least = tables.rules.noseClears;
  let there: Nosed | null = wanted;
  for (let step = 0; step < STEPS && there; step++) {
    const loads = loadsOn(bend, curve, tables, { ...wanted, ...there });
    const clears = clearsBy(bend, curve, { ...there, wedge }, loads);
    if (clears >= least) return boltedUp(bend, curve, tables, { ...wanted, ...there, loads, clears });
    const inside = Math.max(loads.A.loaded, loads.B.loaded);
    const further = step === 0 ? nosed(bend, curve, tables, { ...wanted, inside }) : null;
    there = further ?? grippedAt(bend, curve, wanted, there.gap + (least - clears));
  }
  return null;
}

/** The yoke under what its nose takes at either end. */
function loadsOn(
  bend: BentSheet,
  curve: BendingCurve,
  { rules }: Tables,
  { nose, outer, grips, run }: Wanted & Nosed & { readonly outer: YokeStock },
): Ends<LoadedYoke> {
  const members = { nose: memberOf(nose), outer: memberOf(outer) };
  const held = { span: spanOf(run, rules), bolts: rules.yokeBoltBehind };
  return bothEnds(bend, (end) => loadYoke(curve, grips[end].moment, members, held));
}

/** From bolts to bolts, past both ends of the sheet, mm. */
function spanOf(run: number, { yokeBoltPast }: ShopRules): number {
  return run + 2 * yokeBoltPast;
}

/** The yoke with its bolts and handles, and the leg in it; null where the tables hold neither. */
function boltedUp(
  bend: BentSheet,
  curve: BendingCurve,
  tables: Tables,
  {
    nose,
    outer,
    gap,
    arm,
    grips,
    system,
    run,
    loads,
    clears,
  }: Wanted & Nosed & { readonly outer: YokeStock; readonly loads: Ends<LoadedYoke>; readonly clears: number },
): YokedLegs | null {
  const { rules } = tables;
  const harder = loads.A.part >= loads.B.part ? loads.A : loads.B;
  const bolt = boltFor(tables, system, harder.bolts / 2);
  const handle = handleFor(tables, system);
  if (!bolt || !handle) return null;
  const turning = Math.max(grips.A.moment, grips.B.moment) * run;
  const handles = Math.max(LEAST_HANDLES, Math.ceil(turning / (handle.sectionModulus * handle.stress)));
  const within =
    holds(loads, { nose, outer }, rules) && bolt.force >= harder.bolts / 2 && bend.legs.free >= gap + nose.width;
  const legs = bothEnds(bend, (end) => pulledByYoke(curve, curvatureAt(bend, end), grips[end], loads[end]));
  const span = spanOf(run, rules);
  return {
    within,
    legs,
    yoke: {
      ...harder,
      nose,
      wedge: wedgeOf(nose, rules),
      outer,
      handle,
      handles,
      bolt,
      gap,
      arm,
      clears,
      span,
      length: span + 2 * rules.yokeBoltPast,
    },
  };
}

/** What stays of a leg's turn at one place, radians, in a yoke as chosen; null where the sheet is too limp. */
export function staysInYoke(
  curve: BendingCurve,
  curvature: number,
  { gap, arm, nose, outer, span }: Yoke,
  { most, behind }: { readonly most: number; readonly behind: number },
): number | null {
  const leg = gripLeg(curve, curvature, { gap, arm }, { most });
  if (!leg) return null;
  const members = { nose: memberOf(nose), outer: memberOf(outer) };
  return pulledByYoke(curve, curvature, leg, loadYoke(curve, leg.moment, members, { span, bolts: behind })).stays;
}

function memberOf({ stiffness, sectionModulus, width }: YokeStock): {
  stiffness: number;
  modulus: number;
  width: number;
} {
  return { stiffness, modulus: sectionModulus, width };
}

/** One for each hand of one who pulls alone. */
const LEAST_HANDLES = 2;

/** The flattest batten: what lies under the yoke lifts form and held leg off the bench. */
function handleFor({ yokeStock }: Tables, system: 'in' | 'mm'): YokeStock | undefined {
  return yokeStock
    .filter((stock) => stock.kind === 'batten' && stock.system === system)
    .reduce<YokeStock | undefined>((flat, one) => (flat && flat.depth <= one.depth ? flat : one), undefined);
}

/** The thinnest bolt that holds; the thickest where none does. */
function boltFor({ yokeBolts }: Tables, system: 'in' | 'mm', force: number): YokeBolt | undefined {
  const bolts = yokeBolts.filter((bolt) => bolt.system === system);
  return bolts.find((bolt) => bolt.force >= force) ?? bolts.at(-1);
}
