import { radiusAt, midRadiusAt } from '../../base/cone';
import type { End, Ends } from '../../base/ends';
import type { Tables } from '../../tables/tables';
import type { YokeBolt, YokeStock } from '../../tables/schema';
import type { BentSheet, PulledEnd, Yoke } from '../bend/bend-plan';
import { bendingCurve, type BendingCurve } from '../bend/curve';
import type { GrippedLeg } from './gripped-leg';
import { placeOf } from './leg-shape';
import { gripLeg, piecesToNose, pulledByYoke } from './pulling';
import { loadYoke, noseBite, noseGap, type LoadedYoke } from './yoke';

/** A yoke on the bend's two ends. */
export interface YokedLegs {
  readonly yoke: Yoke;
  readonly legs: Ends<PulledEnd>;
  /** Whether it keeps every limit; the stiffest there is where none does. */
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
}

/** The least pair of members, of the system's stock, that keeps the yoke's limits; null where the sheet is too limp even for a yoke. */
export function chooseYoke(bend: BentSheet, tables: Tables, wanted: Wanted): YokedLegs | null {
  const stock = tables.yokeStock.filter(({ system }) => system === wanted.system);
  const byStiffness = (a: YokeStock, b: YokeStock): number => a.stiffness - b.stiffness;
  const noses = stock.filter(({ kind }) => kind === 'angle').sort(byStiffness);
  const outers = stock.filter(({ kind }) => kind === 'batten').sort(byStiffness);
  const curve = bendingCurve(bend.section);
  let stiffest: YokedLegs | null = null;
  for (const outer of outers) {
    for (const nose of noses) {
      if (outer.width < nose.width) continue;
      const yoked = yokeOf(bend, curve, tables, { ...wanted, nose, outer });
      if (yoked?.within) return yoked;
      stiffest = yoked ?? stiffest;
    }
  }
  return stiffest;
}

function yokeOf(
  bend: BentSheet,
  curve: BendingCurve,
  tables: Tables,
  { nose, outer, lever, system, most, run }: Wanted & { readonly nose: YokeStock; readonly outer: YokeStock },
): YokedLegs | null {
  const { rules } = tables;
  const worst = Math.max(radiusAt(bend.form, 0), radiusAt(bend.form, bend.length));
  const gap = noseGap(worst, nose.thickness);
  const arm = lever - gap;
  if (arm <= nose.width) return null;
  const curvatureAt = (end: End): number => 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end));
  const round = bend.form.halfAngle === 0;
  const gripAt = (end: End): GrippedLeg | null => gripLeg(curve, curvatureAt(end), { gap, arm }, { most });
  const grip = gripAt('A');
  const grips = { A: grip, B: round ? grip : gripAt('B') };
  if (!grips.A || !grips.B) return null;
  const span = run + 2 * rules.yokeBoltPast;
  const members = { nose: memberOf(nose), outer: memberOf(outer) };
  const loadedBy = (leg: GrippedLeg): LoadedYoke =>
    loadYoke(curve, leg.moment, members, { span, bolts: rules.yokeBoltBehind });
  const load = loadedBy(grips.A);
  const loads = { A: load, B: round ? load : loadedBy(grips.B) };
  const harder = loads.A.part >= loads.B.part ? loads.A : loads.B;
  const biteAt = (end: End, leg: GrippedLeg): number =>
    noseBite(piecesToNose(curve, curvatureAt(end), leg), {
      mid: 1 / curvatureAt(end),
      sheet: bend.section.thickness,
      thickness: nose.thickness,
    });
  const bite = round ? biteAt('A', grips.A) : Math.max(biteAt('A', grips.A), biteAt('B', grips.B));
  const bolt = boltFor(tables, system, harder.bolts / 2);
  const handle = handleFor(tables, system);
  if (!bolt || !handle) return null;
  const turning = Math.max(grips.A.moment, grips.B.moment) * run;
  const handles = Math.max(LEAST_HANDLES, Math.ceil(turning / (handle.sectionModulus * handle.stress)));
  const within =
    Math.max(loads.A.stays, loads.B.stays) <= (rules.maxYokeTail * Math.PI) / 180 &&
    harder.grip <= outer.width &&
    harder.stress.nose <= nose.stress &&
    harder.stress.outer <= outer.stress &&
    bolt.force >= harder.bolts / 2;
  const A = pulledByYoke(curve, curvatureAt('A'), grips.A, loads.A);
  const B = round ? A : pulledByYoke(curve, curvatureAt('B'), grips.B, loads.B);
  return {
    within,
    legs: { A, B },
    yoke: {
      ...harder,
      nose,
      outer,
      handle,
      handles,
      bolt,
      gap,
      arm,
      bite,
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
