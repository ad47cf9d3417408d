import { at } from '../../base/at';
import { parameterAt, parameterForMoment, type BendingCurve } from '../bend/curve';
import type { GrippedLeg } from './gripped-leg';
import { momentNodes, type MomentNode } from './moment-nodes';
import { lengthOf } from './pulled-leg';

/** Where the middle of a gripped sheet has come to at the yoke's nose: along the leg's direction at the take-off, square to it, and turned; mm, radians. */
export interface NosePose {
  readonly out: number;
  readonly up: number;
  readonly turn: number;
}

/** The pose of a gripped leg bent to `curvature` (1/mm) at the take-off. */
export function poseOf(curve: BendingCurve, curvature: number, { parameter, force, loaded }: GrippedLeg): NosePose {
  const nodes = momentNodes(curve, parameter, parameterAt(curve, curvature));
  return layOut(nodes, { force, offset: curve.at(parameter).complementary, turn: loaded });
}

/** θ being an element's angle to the nose, F·sin θ = W_c − W_c(M_g): its turn from the take-off is Θ − θ. */
function layOut(
  nodes: readonly MomentNode[],
  { force, offset, turn }: { readonly force: number; readonly offset: number; readonly turn: number },
): NosePose {
  let [out, up] = [0, 0];
  for (const { point, weight } of nodes) {
    const sine = (point.complementary - offset) / force;
    const length = weight / (force * Math.sqrt(1 - sine * sine));
    const turned = turn - Math.asin(sine);
    out += length * Math.cos(turned);
    up += length * Math.sin(turned);
  }
  return { out, up, turn };
}

/** Poses are worked out at gaps so far apart, as a share, and read between. */
const APART = 1.2;
/** The arm settles with the gap in so many turns: it is the lever less the gap, and the moment at the nose fixes both. */
const TURNS = 6;

/** A pose with what stays of the leg's turn, radians, and the curve's parameter at the nose. */
export interface GripPose extends NosePose {
  readonly stays: number;
  readonly parameter: number;
}

interface Looked extends GripPose {
  readonly gap: number;
}

/**
 * The pose at any gap between two, mm, and what stays of the leg's turn, of a leg pulled at `lever` mm from the take-off: worked out at gaps a fifth
 * apart, the rest by cubics between, to a few hundredths of a mm. Null where the leg turns more than `most` radians.
 */
export function gripPoses(
  curve: BendingCurve,
  curvature: number,
  {
    lever,
    from,
    to,
    most,
  }: { readonly lever: number; readonly from: number; readonly to: number; readonly most: number },
): (gap: number) => GripPose | null {
  const end = parameterAt(curve, curvature);
  const whole = curve.at(end);
  /** The pose at about a gap; null where the leg turns too far. */
  const lookAt = (aim: number): Looked | null => {
    const parameter = parameterForMoment(curve, whole.moment * (1 - aim / lever));
    const { moment, complementary } = curve.at(parameter);
    const nodes = momentNodes(curve, parameter, end);
    let gap = aim;
    for (let turn = 0; turn < TURNS; turn++) {
      const { length } = lengthOf(nodes, moment / (lever - gap), complementary);
      // By Newton’s rule: the length is about as the arm.
      gap += (length - gap) / (1 + length / (lever - gap));
    }
    const force = moment / (lever - gap);
    const sine = (whole.complementary - complementary) / force;
    if (!(sine < Math.sin(most))) return null;
    const turn = Math.asin(sine);
    const { released } = lengthOf(nodes, force, complementary);
    const place = layOut(nodes, { force, offset: complementary, turn });
    return { gap, parameter, stays: turn - released / curve.stiffness, ...place };
  };
  const looks: Looked[] = [];
  let aim: number | null = from / APART;
  /** Looks as far as two past a gap, if there are so many. */
  const lookPast = (gap: number): void => {
    while (aim !== null && (looks.length < 4 || at(looks, -2).gap < gap)) {
      const look: Looked | null = aim < to * APART && aim < lever ? lookAt(aim) : null;
      if (look) looks.push(look);
      aim = look && aim * APART;
    }
  };
  return (gap) => {
    lookPast(gap);
    const next = looks.findIndex((look) => look.gap >= gap);
    if (next < 1 || looks.length < 4) return null;
    const first = Math.min(Math.max(next - 2, 0), looks.length - 4);
    const near = looks.slice(first, first + 4);
    let [out, up, turn, stays, parameter] = [0, 0, 0, 0, 0];
    for (const look of near) {
      let share = 1;
      for (const other of near) if (other !== look) share *= (gap - other.gap) / (look.gap - other.gap);
      out += share * look.out;
      up += share * look.up;
      turn += share * look.turn;
      stays += share * look.stays;
      parameter += share * look.parameter;
    }
    return { out, up, turn, stays, parameter };
  };
}
