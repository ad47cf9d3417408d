import type { LegPiece } from '../bend/bend-plan';
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

/**
 * How far a nose `thickness` mm thick comes into a disc, mm, as the leg bends over the gap before it: by the leg's pieces from the take-off
 * to the nose, in a slice square to the rulings. `mid`: of the sheet's middle on the disc, `sheet` its thickness. 0 where it clears.
 */
export function noseBite(
  pieces: readonly Pick<LegPiece, 'length' | 'loaded'>[],
  { mid, sheet, thickness }: { readonly mid: number; readonly sheet: number; readonly thickness: number },
): number {
  let [out, up, turn] = [0, 0, 0];
  for (const { length, loaded } of pieces) {
    out += length * Math.cos(turn + loaded / 2);
    up += length * Math.sin(turn + loaded / 2);
    turn += loaded;
  }
  const high = sheet / 2 + thickness;
  const corner = [out - high * Math.sin(turn), up + high * Math.cos(turn)] as const;
  return Math.max(0, mid - sheet / 2 - Math.hypot(corner[0], corner[1] - mid));
}

/** How far past the take-off a yoke's nose must stay, mm, for its flange `thickness` mm thick to clear a disc of this radius: √(R² − (R − s)²). */
export function noseGap(radius: number, thickness: number): number {
  return Math.sqrt(Math.max(0, radius ** 2 - Math.max(0, radius - thickness) ** 2));
}
