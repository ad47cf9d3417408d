import { at } from '../../base/at';
import { after, back, movedBy, type Place3 } from '../../base/space';
import { plankFor, type Plank } from '../../design/fixture/plank';
import { foldPanel, frameMotion, heldFrame, type Step } from '../../panel';
import { clampThings, formThings, sceneOf, yokeThings, type Scene, type Thing } from '../../panel/order/scene';
import { loadPanelRules } from '../../tables/panel-rules';
import type { ShopRules } from '../../tables/tables';
import { drawIsometric, type Picture } from '../picture/isometric';
import { prism, type Body, type BodyKind } from '../picture/solid';
import { yokeBody } from './bodies';
import { panelBodies, PICTURE_STRAY } from './picture';
import type { BuildablePanel } from './plan-panel';

/** How thick the bench is drawn, and how far it goes on past sheet and form, mm. */
const BENCH = { thick: 30, past: 60 } as const;

/** A bend as it is being made (`number`: of its step, from 0), from behind its form: what is held, form and clamps on it, the pulled side swung up with the yoke on it, the plank under form and held side where a yoke asks for one, the bench's edge. */
export function drawStep(
  { panel, bends, order }: BuildablePanel,
  number: number,
  room: { readonly width: number; readonly height: number },
  shop: Pick<ShopRules, 'plankShort'>,
): Picture | null {
  const step = at(order, number);
  const done = panel.bends.map((_, index) => order.slice(0, number).some(({ bend }) => bend === index));
  const { bend, alone } = at(bends, step.bend);
  const scene = sceneOf(panel, { bend: step.bend, held: step.held, use: step.use, done });
  if (!scene) return null;
  const folded = foldPanel(
    panel,
    panel.bends.map(({ finished, wrap }, index) => ({
      cone: finished,
      wrap: index === step.bend || done[index] === true ? wrap : 0,
    })),
  );
  const heldFace = step.held === 'base' ? bend.base : bend.leg;
  const home = after(
    back(frameMotion({ frame: heldFrame(bend, step.held), turn: bend.turn })),
    back(at(folded.motions, heldFace)),
  );
  const carry = (place: Place3): Place3 => movedBy(home, place);
  const sheet = panelBodies(panel, folded, { made: done.map((was, index) => was || index === step.bend), carry });
  const rules = loadPanelRules();
  const { spine, foot, clamps } = step.use.body;
  const along = (x: number): number =>
    step.use.stretch.startsAtA ? x - step.use.stretch.from : step.use.stretch.to - x;
  const reach = Math.max(spine + foot, alone.bend.legs.held);
  const places = step.clamped === 'ends' ? [] : clamps.map((x) => ({ x: along(x), depth: reach }));
  const clamp = { throat: reach, width: rules.clampWidth, frame: rules.clampFrame, pastEnds: true };
  const yoke = yokeThings(bend, yokeBody(panel, step.bend, alone.bend)).map((thing) => ({
    ...thing,
    bodies: thing.bodies.map((body) => ({
      ...body,
      corners: body.corners.map((corner) => movedBy(scene.swing(bend.wrap), corner)),
    })),
  }));
  const things = [
    ...formThings(scene, step.use, 0).flatMap((thing) => bodiesOf(thing)),
    ...(places.length > 0 ? clampThings(scene, { clamp, spine, at: places }).flatMap((thing) => bodiesOf(thing)) : []),
    ...yoke.flatMap((thing) => bodiesOf(thing)),
  ];
  const plank = plankFor(alone.bend, alone.layout, shop);
  const under = plank ? [plankBody(plank, scene, step)] : [];
  const held = sheet.flatMap(({ faces }) => faces.flatMap(({ outline }) => outline));
  const bench = benchBody([...held, ...things.flatMap(({ faces }) => faces.flatMap(({ outline }) => outline))], {
    edges: step.bench,
    length: scene.length,
    below: -scene.thickness - (plank?.thickness ?? 0),
  });
  return drawIsometric(
    { bodies: [bench, ...under, ...sheet, ...things], tags: [], chordError: PICTURE_STRAY, bench: 0, pull: [] },
    { ...room, end: 'B', face: 'back', tags: [], arrow: null },
  );
}

const KINDS: Readonly<Record<string, BodyKind>> = {
  stations: 'station',
  spine: 'spine',
  'backing stations': 'backing',
  clamps: 'clamp',
  yoke: 'yoke',
};

/** Every body of a scene's thing is a prism: half of its corners are one end of it, the other half the other. */
function bodiesOf({ name, bodies }: Thing): Body[] {
  return bodies.map(({ corners }) => {
    const half = corners.length / 2;
    const ends = [corners.slice(0, half), corners.slice(half)] as const;
    const round = half > 4;
    const around = (end: readonly Place3[]): readonly Place3[] =>
      round ? end : [0, 1, 3, 2].map((index) => at(end, index));
    const smooth = new Set(round ? Array.from({ length: half - 2 }, (_, index) => index + 1) : []);
    return prism(KINDS[name] ?? 'plank', name, [around(ends[0]), around(ends[1])], { smooth });
  });
}

/** Under form and held side, from one end of the spine to the other; no further than the bench where its edge has to lie beside the form. */
function plankBody(
  { thickness, ahead, behind }: Plank,
  { form, length, thickness: sheet }: Scene,
  { use, bench }: Pick<Step, 'use' | 'bench'>,
): Body {
  const { small, large } = use.body.ears;
  const [earA, earB] = use.stretch.startsAtA ? [small, large] : [large, small];
  const [left, right] = [
    bench.includes('endA') ? 0 : form.from - earA,
    bench.includes('endB') ? length : form.to + earB,
  ];
  const rear = bench.includes('back') ? -use.body.spine - use.body.foot : -behind;
  const level = (z: number): Place3[] => [
    [left, rear, z],
    [right, rear, z],
    [right, ahead, z],
    [left, ahead, z],
  ];
  return prism('plank', 'plank', [level(-sheet - thickness), level(-sheet)]);
}

/** The bench's top under all that lies on it, ending beside the form where a leg has to hang. */
function benchBody(
  places: readonly Place3[],
  { edges, length, below }: { readonly edges: readonly string[]; readonly length: number; readonly below: number },
): Body {
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, right] = [
    edges.includes('endA') ? 0 : Math.min(...xs) - BENCH.past,
    edges.includes('endB') ? length : Math.max(...xs) + BENCH.past,
  ];
  const [rear, front] = [
    edges.includes('back') ? -BENCH.past : Math.min(...ys) - BENCH.past,
    edges.includes('front') ? 0 : Math.max(...ys) + BENCH.past,
  ];
  const level = (z: number): Place3[] => [
    [left, rear, z],
    [right, rear, z],
    [right, front, z],
    [left, front, z],
  ];
  return prism('plank', 'bench', [level(below - BENCH.thick), level(below)]);
}
