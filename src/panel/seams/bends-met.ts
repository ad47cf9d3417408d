import { toRadians } from '../../base/angle';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { SeamRules } from '../../tables/fasteners';
import { acrossBend } from './across-bend';
import type { CrossedBend } from './crossed-bends';

/** A seam that may run over bends, mm. */
export interface SeamOverBends {
  /** `middle.left`. */
  readonly name: string;
  readonly thickness: number;
  readonly length: number;
  readonly crossed: readonly CrossedBend[];
}

/** A bend of the outer panel on the inner's. */
export interface NestedBend {
  readonly outer: CrossedBend;
  readonly inner: CrossedBend;
  /** The outer's inside radius as it has to be: the inner's and its sheet's thickness, mm. */
  readonly wanted: number;
  /** By how much the outer's flat is the longer for it, mm. */
  readonly longer: number;
  /** How far from where the inner's bend begins the outer's does, along the lap, mm. */
  readonly apart: number;
}

/** The bends that two seams run over together, by the outer's run; null where they are not as many. */
export function nestedBends(outer: SeamOverBends, inner: SeamOverBends): NestedBend[] | null {
  if (outer.crossed.length !== inner.crossed.length) return null;
  const turned = [...inner.crossed]
    .reverse()
    .map((one): CrossedBend => ({ ...one, from: inner.length - one.to, to: inner.length - one.from }));
  // The two edges may run the same way or against each other.
  const [same, against] = [inner.crossed, turned].map((crossed) => paired(outer, inner, crossed));
  const off = (made: readonly NestedBend[] = []): number =>
    made.reduce((sum, { apart, wanted, outer: { radius } }) => sum + Math.abs(apart) + Math.abs(radius - wanted), 0);
  return (off(same) <= off(against) ? same : against) ?? [];
}

function paired(outer: SeamOverBends, { thickness }: SeamOverBends, crossed: readonly CrossedBend[]): NestedBend[] {
  let before = 0;
  return crossed.flatMap((inner, index) => {
    const own = outer.crossed[index];
    if (!own) return [];
    const nested = { radius: inner.radius, inner: thickness, outer: outer.thickness, neutral: own.neutral };
    const { longer } = acrossBend(nested, inner.wrap);
    const apart = own.from - inner.from - before;
    before += longer;
    return [{ outer: own, inner, wanted: inner.radius + thickness, longer, apart }];
  });
}

/** Two seams, and their bends as {@link nestedBends} pairs them. */
interface Met {
  readonly outer: SeamOverBends;
  readonly inner: SeamOverBends;
  readonly nested: readonly NestedBend[] | null;
}

/** Whether the outer panel's bends lie on the inner's: as many, at the same places, by the same angle, and larger by the inner's sheet. `path`: the join. */
export function checkBendsMet({ outer, inner, nested }: Met, rules: SeamRules, path: string): Finding[] {
  const names = { outer: outer.name, inner: inner.name };
  if (!nested) {
    const counts = { first: outer.crossed.length, second: inner.crossed.length };
    return [finding('join-bends', path, { ...names, ...counts })];
  }
  return nested.flatMap(({ outer: own, inner: under, wanted, apart }): Finding[] => {
    const bends = { bend: `${outer.name}, bend ${own.bend}`, other: `${inner.name}, bend ${under.bend}` };
    if (Math.abs(own.angle - under.angle) > toRadians(rules.bendAngle))
      return [finding('join-bend-angle', path, { ...bends, first: own.angle, second: under.angle })];
    return [
      ...(Math.abs(own.radius - wanted) > rules.bendRadius
        ? [finding('join-bend-radius', path, { ...bends, radius: own.radius, wanted })]
        : []),
      ...(Math.abs(apart) > rules.seamLength
        ? [finding('join-bend-place', path, { ...bends, apart: Math.abs(apart), most: rules.seamLength })]
        : []),
    ];
  });
}
