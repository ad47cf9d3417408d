import { tangentFromCentre } from '../../base/cone';
import type { BendPlan } from '../../design/bend/bend-plan';
import { depthAt, stretchesShort, type ShortStretch } from '../../design/bend/depth-along';
import type { FixtureLayout } from '../../design/fixture/fixture';

/** Less of a foot past the held leg's edge is not packed, mm. */
const LEAST = 1;

/** A backing station that reaches past the far edge of what is held under it, mm. */
export interface FootPast {
  readonly name: string;
  readonly past: number;
}

/** The backing stations under whose rear no held leg lies, and by how much, each by the metal that is under it. */
export function footPast(
  { heldAlong, legs, form }: BendPlan,
  { spine, foot, backings }: Pick<FixtureLayout, 'spine' | 'foot' | 'backings'>,
): FootPast[] {
  const reach = spine.thickness + foot;
  return backings.flatMap(({ name, at: middle, thickness }) => {
    const places = [middle - thickness / 2, middle + thickness / 2].map((s) => tangentFromCentre(form, s));
    const depth = heldAlong ? Math.min(...places.map((x) => depthAt(heldAlong, 'under', x))) : legs.held;
    return reach - depth > LEAST ? [{ name, past: reach - depth }] : [];
  });
}

/** Where the spine itself stands past the held leg's edge: stretches from end A of the bend, mm. */
export function spinePast(
  { heldAlong, legs, length }: BendPlan,
  { spine }: Pick<FixtureLayout, 'spine'>,
): ShortStretch[] {
  const all = { from: 0, to: length };
  const found = heldAlong ? stretchesShort(heldAlong, spine.thickness, all) : [{ ...all, least: legs.held }];
  return found.filter(({ least }) => spine.thickness - least > LEAST);
}
