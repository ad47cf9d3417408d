import { rootBetween } from '../../base/solve';
import { parameterAt, type BendingCurve } from '../bend/curve';
import { momentNodes, type MomentNode } from './moment-nodes';
import type { PulledLeg } from './leg';

/**
 * A leg pulled by hands alone: a beam in its true shape with the sheet's own moment curve, the pull square to the leg at the hands.
 * With θ the leg's angle to the leg at the hands, F·sin θ = W_c(m) all along it. Shared plan “The pull and the hold”, How the leg is pulled.
 */
export interface BareLeg {
  /** Turn from the take-off to the hands, radians, that goes with a lever (mm, > 0); null where no pull square to the leg reaches that far within `most`. */
  readonly at: (lever: number) => PulledLeg | null;
  /** Longest lever, mm, whose leg turns no more than this (radians, at most a quarter turn). */
  readonly leverAt: (turn: number) => number;
}

/** Solves a leg bent to `curvature` (1/mm) at the take-off for any lever; legs turning more than `most` (radians, at most π/2) are given up. */
export function bareLeg(curve: BendingCurve, curvature: number, most: number): BareLeg {
  const parameter = parameterAt(curve, curvature);
  const { complementary: whole } = curve.at(parameter);
  const nodes = momentNodes(curve, 0, parameter);
  const leverAt = (turn: number): number => (turn === 0 ? 0 : lengthOf(nodes, whole / Math.sin(turn)).length);
  const longest = leverAt(most);
  return {
    leverAt,
    at: (lever) => {
      if (lever > longest) return null;
      const loaded = lever === longest ? most : rootBetween((turn) => leverAt(turn) - lever, 0, most, 1e-13);
      const force = whole / Math.sin(loaded);
      const { released } = lengthOf(nodes, force);
      return { force, loaded, stays: parameter <= 1 ? 0 : loaded - released / curve.stiffness };
    },
  };
}

/** Length of leg between the looks, mm, and ∫ m ds over it, N·mm² per mm, where F·sin θ = W_c − `offset`; F in N per mm. */
export function lengthOf(
  nodes: readonly MomentNode[],
  force: number,
  offset = 0,
): { readonly length: number; readonly released: number } {
  let length = 0;
  let released = 0;
  for (const { point, weight } of nodes) {
    const sine = (point.complementary - offset) / force;
    const part = weight / (force * Math.sqrt(1 - sine * sine));
    length += part;
    released += part * point.moment;
  }
  return { length, released };
}
