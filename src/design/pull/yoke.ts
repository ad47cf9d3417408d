import { parameterForMoment, type BendingCurve } from '../bend/curve';
import { liftPerSquare, tailPerLength } from './tail';

/** One long member of a yoke, as a beam that parts from the other: N·mm², mm, MPa. */
export interface YokeMember {
  /** E·I for bending away from the sheet. */
  readonly stiffness: number;
  /** I over the distance to the outside, mm³. */
  readonly modulus: number;
  /** Along the sheet's lever. */
  readonly width: number;
}

/** How a yoke is held together: mm. */
export interface YokeSpan {
  /** From bolts to bolts along the nose. */
  readonly span: number;
  /** From the nose to the bolts. */
  readonly bolts: number;
}

/** A yoke under the moment its nose takes: N, mm, radians, MPa; forces and turns per unit width unless said. */
export interface LoadedYoke {
  /** How far behind the nose the sheet, bent by the members' parting, lies flat again. */
  readonly grip: number;
  /** Force with which nose and sheet part, N per mm. */
  readonly part: number;
  /** How far the nose opens in the middle. */
  readonly opens: number;
  /** Turn of the sheet inside the yoke in the middle of the span: loaded, and what stays. */
  readonly loaded: number;
  readonly stays: number;
  /** Greatest bending stress in the nose and in the outer member. */
  readonly stress: { readonly nose: number; readonly outer: number };
  /** Pull on the bolts of one end together, N. */
  readonly bolts: number;
}

/** 5/384 between bolts at both ends: a beam under an even load. */
const EVEN_LOAD = 5 / 384;

/**
 * The opening of a yoke whose nose takes `moment` (N·mm per mm): members part by C·p, the sheet between follows a moment falling
 * steadily over `grip`: C·p = c̄·d², p = M_g/d.
 * Shared plan “The pull and the hold”, yoke.
 */
export function loadYoke(
  curve: BendingCurve,
  moment: number,
  { nose, outer }: { readonly nose: YokeMember; readonly outer: YokeMember },
  { span, bolts }: YokeSpan,
): LoadedYoke {
  const { curvature } = curve.at(parameterForMoment(curve, moment));
  const { loaded, stays } = tailPerLength(curve, curvature);
  const lift = liftPerSquare(curve, curvature);
  const softness = EVEN_LOAD * span ** 4 * (1 / nose.stiffness + 1 / outer.stiffness);
  const grip = Math.cbrt((softness * moment) / lift);
  const part = moment / grip;
  const bending = (part * span ** 2) / 8;
  return {
    grip,
    part,
    opens: lift * grip ** 2,
    loaded: loaded * grip,
    stays: stays * grip,
    stress: { nose: bending / nose.modulus, outer: bending / outer.modulus },
    bolts: ((part * span) / 2) * (1 + bolts / (nose.width - bolts)),
  };
}
