import { at } from '../../base/at';
import { tangentFromCentre } from '../../base/cone';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { BendPlan } from '../../design/bend/bend-plan';
import { fromSmallEnd, type Bend, type FormBody, type Panel, type YokeBody } from '../../panel';

/** A form as a body in the metal's way, along its tangent line from its small end, mm; clamped through the holes that `user` uses, its own bend where not said. */
export function formBody(name: string, { form }: Pick<BendPlan, 'form'>, layout: FixtureLayout, user = name): FormBody {
  const holes = layout.guests.find((guest) => guest.name === user)?.holes ?? layout.ownHoles;
  const { cone, startsAtA } = fromSmallEnd(form);
  const along = (centre: number): number => {
    const x = tangentFromCentre(form, centre);
    return startsAtA ? x : form.length - x;
  };
  return {
    name,
    cone,
    spine: layout.spine.thickness,
    ears: { small: layout.spine.ears, large: layout.spine.ears },
    foot: layout.foot,
    backings: layout.backings.map((backing) => ({ at: along(backing.at), thickness: backing.thickness })),
    clamps: holes.map((index) => along(at(layout.clampHoles, index).at)),
  };
}

/**
 * The yoke on the pulled side of a bend, as far as it must reach: past the sheet for its bolts, but not at a corner, where the other
 * leg may stand. Null where the bend is pulled bare.
 */
export function yokeBody(panel: Panel, index: number, { pull }: BendPlan): YokeBody | null {
  const { yoke } = pull;
  if (!yoke) return null;
  const bend = at(panel.bends, index);
  const { length } = bend.finished;
  const past = Math.max(0, (yoke.length - length) / 2);
  const [cornerA, cornerB] = [0, length].map((x) => hasCornerAt(panel, index, bend, x));
  return {
    from: cornerA ? 0 : -past,
    to: cornerB ? length : length + past,
    near: yoke.gap,
    inner: { width: yoke.nose.width, height: yoke.nose.depth, thickness: yoke.nose.thickness },
    outer: { width: yoke.outer.width, depth: yoke.outer.depth },
  };
}

/** Nearer than this to the end of a base line a corner is at it, mm. */
const AT_END = 1;

function hasCornerAt(panel: Panel, index: number, { frame }: Bend, x: number): boolean {
  const [endX, endY] = [frame.at[0] + x * frame.along[0], frame.at[1] + x * frame.along[1]];
  return panel.corners.some(
    ({ between, at: [cornerX, cornerY] }) =>
      between.includes(index) && Math.hypot(cornerX - endX, cornerY - endY) < AT_END,
  );
}
