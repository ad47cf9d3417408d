import type { Place3 } from '../../base/space';
import { boxBetween, type Convex } from './gap';
import type { Scene, Thing } from './scene';
import { sweep, type Pair } from './sweep';
import { BENCH, failing, pullingOf, thingGap, TOUCH, type TryGiven } from './trying';
import type { BenchEdge, Strike } from './work';

/** The bench's face is looked at this far below the sheet, mm. */
const BELOW = 0.5;

const benchChoices: readonly (readonly BenchEdge[])[] = [
  [],
  ['front'],
  ['back'],
  ['endA'],
  ['endB'],
  ['front', 'endA'],
  ['front', 'endB'],
  ['back', 'endA'],
  ['back', 'endB'],
  ['endA', 'endB'],
  ['front', 'back'],
  ['front', 'endA', 'endB'],
  ['back', 'endA', 'endB'],
];

/** Where the bench's edges run: the first choice that whatever hangs down, held or pulled, stays clear of. */
export function benchFor(scene: Scene, given: TryGiven): { readonly edges: readonly BenchEdge[] } | Strike {
  const down = (thing: Thing): boolean =>
    thing.bodies.some(({ corners }) => corners.some(([, , z]) => z < -scene.thickness / 2 - BELOW - TOUCH));
  const moving = scene.pulled.filter(down);
  const resting = scene.held.filter(down);
  if (moving.length === 0 && resting.length === 0) return { edges: [] };
  for (const edges of benchChoices) {
    const bench: Thing = {
      name: 'bench',
      bodies: [benchBody(scene, { given, edges })],
      flat: true,
      besideCorner: false,
    };
    if (resting.some((thing) => thingGap(thing, bench, 1) < TOUCH)) continue;
    const pairs = moving.map((thing): Pair => ({ moving: thing, standing: bench, needed: 0 }));
    if (!sweep(scene, pairs, { from: 0, to: pullingOf(given).pulled })) return { edges };
  }
  const thing = [...resting, ...moving][0];
  return failing(given)('bench', [thing?.name ?? '', 'bench'], { gap: 0, needed: 0, at: 0 });
}

function benchBody(scene: Scene, { given, edges }: { given: TryGiven; edges: readonly BenchEdge[] }): Convex {
  const { body } = given.use;
  const behind = body.spine + body.foot + given.rules.benchBehind;
  const low: Place3 = [edges.includes('endA') ? 0 : -BENCH, edges.includes('back') ? -behind : -BENCH, -BENCH];
  const high: Place3 = [
    edges.includes('endB') ? scene.length : BENCH,
    edges.includes('front') ? 0 : BENCH,
    -scene.thickness / 2 - BELOW,
  ];
  return boxBetween(low, high);
}
