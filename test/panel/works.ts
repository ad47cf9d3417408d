import { coneThrough, type Cone } from '../../src/base/cone';
import type { Panel } from '../../src/panel/flat/panel';
import { fromSmallEnd, nearestStretch } from '../../src/panel/form/share-forms';
import type { BendWork, FormBody, FormUse, ShopBodies } from '../../src/panel/order/work';

export const shop: ShopBodies = { clamp: { throat: 100, width: 40, frame: 25, pastEnds: false } };
export const deep: ShopBodies = { clamp: { throat: 1000, width: 40, frame: 25, pastEnds: false } };

/** A form of a bend's own length, its radius a little tighter; an 18 mm spine, an 80 mm foot, clamps at the quarter points. */
export function bodyFor(name: string, bend: { finished: Cone }): FormBody {
  const { radiusA, radiusB, length } = bend.finished;
  const { cone } = fromSmallEnd(coneThrough(0.93 * radiusA, 0.93 * radiusB, length));
  return {
    name,
    cone,
    spine: 18,
    ears: { small: 0, large: 0 },
    foot: 80,
    backings: [length / 2].map((at) => ({ at, thickness: 18 })),
    clamps: [length / 4, (3 * length) / 4],
  };
}

/** Forms are shared where radii differ by no more, mm (panel design 2). */
const ALIKE = 0.1;

/** Each bend on its own form, or on a longer one with its radii. */
export function worksFor(panel: Panel, { share = false } = {}): BendWork[] {
  const bodies = panel.bends.map((bend) => bodyFor(bend.name, bend));
  return panel.bends.map((bend, index): BendWork => {
    const own = bodies[index];
    if (!own) throw new Error('a body each');
    const startsAtA = bend.finished.radiusA <= bend.finished.radiusB;
    const self: FormUse = { body: own, stretch: { from: 0, to: own.cone.length, startsAtA } };
    const need = {
      bend: bend.name,
      form: coneThrough(0.93 * bend.finished.radiusA, 0.93 * bend.finished.radiusB, bend.finished.length),
    };
    const shared = bodies.flatMap((body, other): FormUse[] => {
      if (!share || other === index) return [];
      const stretch = nearestStretch(body.cone, need, ALIKE);
      return stretch && stretch.off < ALIKE ? [{ body, stretch }] : [];
    });
    const pulling = { pulled: bend.wrap * 1.07, force: 100, yoke: null, lever: null };
    return { uses: [self, ...shared], pulling: { base: pulling, leg: pulling } };
  });
}
