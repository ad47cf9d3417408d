import { curvatureRadius, insideRadius, midRadius, radiusAt } from '../../base/cone';
import { toRadians } from '../../base/angle';
import type { ShopRules } from '../../tables/tables';
import type { BendPlan, Hold } from '../bend/bend-plan';
import { bendingCurve, type BendingCurve } from '../bend/curve';
import { formMomentAt } from '../bend/effort';
import { momentPerWidth } from '../bend/moment';
import { sectionOf, type Section } from '../bend/section';
import { finishedRadius } from '../bend/springback';
import { bareLeg } from '../pull/pulled-leg';
import { staysInYoke } from '../pull/choose-yoke';
import { bearingWith } from '../pull/hold';
import { heldForm, type Standing } from '../pull/plan-hold';
import { tailPerLength } from '../pull/tail';

/** The bend as it was planned when the part was bent, and how it was held; `hold` null where its clamps are not known. */
export interface Before {
  readonly bend: BendPlan;
  readonly hold: { readonly standing: Standing; readonly fitted: Hold['fitted'] } | null;
  /** Whether the job gives the form's radii, so that nobody asks which form the part came off. */
  readonly formGiven: boolean;
  readonly rules: ShopRules;
}

/** Where and how a part was bent: along the tangent line, mid-surface radius on the form, mm; wrap to the take-off, radians. */
export interface Bent {
  readonly at: number;
  readonly mid: number;
  readonly wrap: number;
}

/** Mid-surface radius of curvature, mm, of sheet on an inside radius `radius` square to the centre line. */
export function midOn(radius: number, halfAngle: number, thickness: number): number {
  return midRadius(curvatureRadius(radius, halfAngle), thickness);
}

/** The section of the bend's sheet with another factor on its flow curve. */
export function sectionAt({ bend }: Before, factor: number): Section {
  return sectionOf(bend.metal, bend.section.thickness, factor);
}

/** Share of its curvature that sheet bent to a mid-surface radius (mm) keeps. */
export function shareLeft(section: Section, mid: number): number {
  return mid / finishedRadius(section, mid);
}

/**
 * The finished wrap, radians, that the sums give for sheet of this factor bent so and pulled and held as planned: what the arc keeps, and
 * both legs' tails.
 */
export function finishedWrapOf(before: Before, bent: Bent, factor: number): number {
  const section = sectionAt(before, factor);
  return bent.wrap * shareLeft(section, bent.mid) + tailsOf(before, bent, section) / cosine(before);
}

/** The wrap to the take-off, radians, that leaves a finished wrap: {@link finishedWrapOf} the other way about, `kept` (radians) by the legs beyond the sums. */
export function wrapTo(
  before: Before,
  bent: Bent,
  section: Section,
  { finishedWrap, kept }: { readonly finishedWrap: number; readonly kept: number },
): number {
  return (finishedWrap - (tailsOf(before, bent, section) + kept) / cosine(before)) / shareLeft(section, bent.mid);
}

function cosine({ bend }: Before): number {
  return Math.cos(bend.finished.halfAngle);
}

/** What both legs keep, radians. */
function tailsOf(before: Before, bent: Bent, section: Section): number {
  return freeLeg(before, bendingCurve(section), bent) + heldLeg(before, section, bent);
}

/** What the free leg keeps, radians; as planned where the sums find it too limp for the way it was pulled. */
function freeLeg({ bend, rules }: Before, curve: BendingCurve, { at, mid }: Bent): number {
  const { pull } = bend;
  const most = toRadians(rules.maxLegTurn);
  const stays = pull.yoke
    ? staysInYoke(curve, 1 / mid, pull.yoke, { most, behind: rules.yokeBoltBehind })
    : bareLeg(curve, 1 / mid, most).at(pull.lever)?.stays;
  const share = at / bend.length;
  return stays ?? pull.legs.A.stays * (1 - share) + pull.legs.B.stays * share;
}

/** What the held leg keeps, radians, bearing as far back as the clamps let it: further the stronger the sheet. */
function heldLeg({ bend, hold }: Before, section: Section, { mid, wrap, at }: Bent): number {
  const stronger = momentPerWidth(section, mid) / formMomentAt(bend.section, bend.form, at);
  const planned = hold && heldForm(bend, hold.standing);
  const slices = planned?.slices.map((slice) => ({ ...slice, moment: stronger * slice.moment })) ?? [];
  const bearing = (planned && hold && bearingWith({ ...planned, wrap, slices }, hold.fitted)) ?? bend.pull.bearing;
  return bearing * tailPerLength(bendingCurve(section), 1 / mid).stays;
}

/** Inside radius square to the centre line, mm, of a mid-surface radius of the finished bend. */
export function finishedInside({ bend }: Before, mid: number): number {
  return insideRadius(mid, bend.section.thickness) * Math.cos(bend.finished.halfAngle);
}

/** Radius of the form at a place, square to the centre line, mm, as planned. */
export function formAt({ bend }: Before, at: number): number {
  return radiusAt(bend.form, at);
}
