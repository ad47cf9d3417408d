import { boxBetween, gapBetween, type Convex } from './gap';
import type { Scene } from './scene';
import { BENCH, failing, type TryGiven } from './trying';
import type { Strike } from './work';

/** Where the clamps stand, along the held tangent line, and how far back each reaches, mm. */
export interface Clamped {
  readonly kind: 'holes' | 'ends';
  readonly at: readonly { readonly x: number; readonly depth: number }[];
}

/** Clamps through the holes where they reach round what is held; else past the sheet's ends, on the ears. */
export function clampPlaces(scene: Scene, given: TryGiven): Clamped | Strike {
  const { body, stretch } = given.use;
  const { throat, pastEnds } = given.shop.clamp;
  const place = (along: number): number => (stretch.startsAtA ? along - stretch.from : stretch.to - along);
  const holes = body.clamps.map(place).filter((x) => x > scene.form.from && x < scene.form.to);
  const reach = body.spine + body.foot;
  const at = holes.map((x) => ({ x, depth: Math.max(reach, heldDepth(scene, x)) }));
  const furthest = Math.max(0, ...at.map(({ depth }) => depth - body.spine / 2));
  if (at.length > 0 && furthest <= throat) return { kind: 'holes', at };
  const ears = [scene.form.from - body.ears.small / 2, scene.form.to + body.ears.large / 2];
  const free = ears.every((x) => heldDepth(scene, x) === 0);
  if (pastEnds && body.ears.small > 0 && body.ears.large > 0 && free && reach - body.spine / 2 <= throat)
    return { kind: 'ends', at: ears.map((x) => ({ x, depth: reach })) };
  return failing(given)('throat', ['clamps', 'what is held'], { gap: throat, needed: furthest, at: 0 });
}

/** How far back the held flat goes behind the tangent line at a place along it. */
function heldDepth(scene: Scene, x: number): number {
  const plumb = boxBetween([x - 1, -BENCH, -0.01], [x + 1, 0, 0.01]);
  const flats = scene.held.filter(({ flat }) => flat).flatMap(({ bodies }) => bodies);
  const under = flats.filter((body) => gapBetween(body, plumb) === 0);
  return Math.max(0, ...under.map((body) => depthOf(body, x)));
}

/** The furthest a flat body goes behind, within its part near a place along. */
function depthOf({ corners }: Convex, x: number): number {
  let deepest = 0;
  corners.forEach((a) =>
    corners.forEach((b) => {
      if (a[2] !== b[2]) return;
      if ((a[0] - x) * (b[0] - x) > 0) return;
      const share = a[0] === b[0] ? 0 : (x - a[0]) / (b[0] - a[0]);
      deepest = Math.max(deepest, -(a[1] + share * (b[1] - a[1])));
    }),
  );
  return deepest;
}
