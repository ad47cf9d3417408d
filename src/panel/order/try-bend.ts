import { toRadians } from '../../base/angle';
import { InternalError } from '../../base/errors';
import type { Place3 } from '../../base/space';
import type { PanelRules } from '../../tables/panel-rules';
import type { Point } from '../../base/polygon';
import { onLeg, toFrame, type Bend } from '../flat/bend';
import { pointOf } from '../flat/plane';
import { legMotion } from '../fold/bend-motion';
import type { Panel } from '../flat/panel';
import { boxBetween, boxesGap, gapAlong, gapBetween, leastGap, separation, type Convex } from './gap';
import {
  clampThings,
  formThings,
  movedBody,
  movedThing,
  sceneOf,
  shifted,
  yokeThings,
  type Scene,
  type SceneGiven,
  type Thing,
} from './scene';
import type { BenchEdge, BendWork, FormOff, Pulling, ShopBodies, Step, Strike } from './work';

/** Two things that must keep apart, and how far, mm; 0: they may come as near as they like but not into one another. */
interface Pair {
  readonly moving: Thing;
  readonly standing: Thing;
  readonly needed: number;
}

/** Bodies that may touch must be this clear of one another, mm, once drawn in by more. */
const TOUCH = 0.05;
/** Form ends drawn in where they stand flush beside a corner, mm. */
const FLUSH = 1;
/** The bench's face is looked at this far below the sheet, mm. */
const BELOW = 0.5;
/** Steps of the pull are no finer than makes this much way, mm. */
const FINEST = 0.4;
/** What is due within this, radians, is looked at together. */
const TOGETHER = 0.01;
/** A quick look at a gap is enough where it shows room for this much of the pull, radians. */
const FAR = 0.05;
/** What slides past its neighbour in a corner is looked at this often, mm. */
const SLIDING = 3;
/** The bench goes on for this far, mm. */
const BENCH = 4000;

export interface TryGiven extends SceneGiven {
  readonly work: BendWork;
  readonly shop: ShopBodies;
  readonly rules: PanelRules;
}

/** Whether a bend can be made so: every clash looked for, form on to form off. */
export function tryBend(panel: Panel, given: TryGiven): Step | Strike {
  const own = panel.bends[given.bend];
  const scene = sceneOf(panel, given);
  const fail = failing(given);
  if (!own || !scene) return fail('too-short', ['form', 'bend'], { gap: 0, needed: 0, at: 0 });
  const reopened = opened(panel, own, given);
  if (reopened) return reopened;
  const clamped = clampPlaces(scene, given);
  if ('why' in clamped) return clamped;
  const standing = standingThings(scene, given, clamped);
  const still = firstStanding(scene, { standing, given });
  if (still) return still;
  const struck = pull(scene, { own, standing, given });
  if (struck) return struck;
  const bench = benchFor(scene, given);
  if ('why' in bench) return bench;
  const off = takeOff(scene, { own, given });
  if (typeof off !== 'string') return off;
  const { form, length } = scene;
  return {
    bend: given.bend,
    held: given.held,
    use: given.use,
    bench: bench.edges,
    off,
    clamped: clamped.kind,
    overhang: { from: Math.max(0, -form.from), to: Math.max(0, form.to - length) },
  };
}

/** How the bend is pulled with the side held that is. Throws where it cannot be: the search does not come to such a side. */
function pullingOf({ work, held }: TryGiven): Pulling {
  const pulling = work.pulling[held];
  if (!pulling) throw new InternalError('a bend is held on a side that it cannot be pulled from');
  return pulling;
}

type Failed = { readonly gap: number; readonly needed: number; readonly at: number };

function failing({ bend, held, use }: TryGiven) {
  return (why: Strike['why'], what: Strike['what'], failed: Failed): Strike => ({
    bend,
    held,
    form: use.body.name,
    why,
    what,
    ...failed,
  });
}

/** A bend made the other way on the pulled side opens again where it stands too near the form for a bare pull. */
function opened(panel: Panel, own: Bend, given: TryGiven): Strike | null {
  const { lever } = pullingOf(given);
  if (lever === null) return null;
  const needed = given.rules.oppositeShare * lever;
  const pulledFace = given.held === 'base' ? own.leg : own.base;
  for (const [index, other] of panel.bends.entries()) {
    const there = other.base === pulledFace || other.leg === pulledFace;
    if (index === given.bend || !given.done[index] || !there || other.turn === own.turn) continue;
    const away = other.zone.map((vertex) => beyondFar(own, given.held, pointOf(vertex)));
    const gap = Math.max(0, Math.min(...away));
    if (gap < needed) return failing(given)('reopens', [`bend ${other.name}`, 'pull'], { gap, needed, at: 0 });
  }
  return null;
}

/** How far beyond the pulled side's own tangent line a place of the flat lies, mm. */
function beyondFar(own: Bend, held: TryGiven['held'], place: Point): number {
  return held === 'base' ? onLeg(own, place)[1] : -toFrame(own.frame, place)[1];
}

interface Clamped {
  readonly kind: 'holes' | 'ends';
  readonly at: readonly { readonly x: number; readonly depth: number }[];
}

/** Clamps through the holes where they reach round what is held; else past the sheet's ends, on the ears. */
function clampPlaces(scene: Scene, given: TryGiven): Clamped | Strike {
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

/** Form and clamps, the form also with its ends drawn in. */
interface Standing {
  readonly form: readonly Thing[];
  readonly flushForm: readonly Thing[];
  readonly clamps: readonly Thing[];
}

function standingThings(scene: Scene, { use, shop }: TryGiven, { at }: Clamped): Standing {
  return {
    form: formThings(scene, use, 0),
    flushForm: formThings(scene, use, FLUSH),
    clamps: clampThings(scene, { clamp: shop.clamp, spine: use.body.spine, at }),
  };
}

/** Above the plane of the sheet's inside face, mm: what is not, the form stands over. */
function risesAbove({ bodies }: Thing, level: number): boolean {
  return bodies.some(({ corners }) => corners.some(([, , z]) => z > level));
}

/** The form set down among what already stands on the held side. */
function firstStanding(scene: Scene, { standing, given }: { standing: Standing; given: TryGiven }): Strike | null {
  const inside = scene.thickness / 2 + TOUCH;
  const risen = scene.held.filter((thing) => !thing.flat && risesAbove(thing, inside));
  const need = given.rules.swingClearance;
  for (const thing of risen) {
    const form = thing.besideCorner ? standing.flushForm : standing.form;
    const pairs = [...form, ...standing.clamps].map((part) => ({ part, gap: thingGap(part, thing) }));
    const worst = pairs.find(({ gap }) => gap < (thing.besideCorner ? TOUCH : need));
    if (worst) {
      const failed = { gap: worst.gap, needed: thing.besideCorner ? 0 : need, at: 0 };
      return failing(given)('strikes', [worst.part.name, thing.name], failed);
    }
  }
  return null;
}

function thingGap(a: Thing, b: Thing, enough = Infinity): number {
  let least = enough;
  for (const one of a.bodies)
    for (const other of b.bodies)
      if (leastGap(one, other) < least && boxesGap(one, other) < least) least = Math.min(least, gapBetween(one, other));
  return least;
}

interface PullGiven {
  readonly own: Bend;
  readonly standing: Standing;
  readonly given: TryGiven;
}

/** Swings the pulled side from flat to the pulled angle and a little beyond; null where nothing is struck. */
function pull(scene: Scene, { own, standing, given }: PullGiven): Strike | null {
  const { rules } = given;
  const { pulled, yoke } = pullingOf(given);
  const moving = [...scene.pulled, ...yokeThings(own, yoke)];
  const among = { moving, standing, rules };
  const quarter = Math.PI / 2;
  const end = pulled + toRadians(rules.pulledBeyondDegrees);
  const struck =
    sweep(scene, pairsOf(scene, among, false), { from: 0, to: Math.min(end, quarter) }) ??
    (end > quarter ? sweep(scene, pairsOf(scene, among, true), { from: quarter, to: end }) : null);
  return (
    struck &&
    failing(given)('strikes', [struck.pair.moving.name, struck.pair.standing.name], {
      gap: struck.gap,
      needed: struck.pair.needed,
      at: struck.at,
    })
  );
}

/** What strikes what on the way, mm, and how far the sheet has been pulled, radians. */
interface Struck {
  readonly pair: Pair;
  readonly gap: number;
  readonly at: number;
}

/** Two bodies of a pair as the sweep follows them: the gap last found and the way across it, and when the room there is used up at the soonest. */
interface Followed {
  readonly pair: Pair;
  readonly moving: Convex;
  readonly standing: Convex;
  /** The most that any place of the moving body goes per radian, mm. */
  readonly speed: number;
  way: Place3 | null;
  last: number;
  due: number;
}

/**
 * Swings through a range of wraps. Two bodies are looked at again before either can have used up the room between them, so that no clash is stepped over (what meets
 * in a corner, which slides past its neighbour, is looked at every few mm).
 */
function sweep(scene: Scene, pairs: readonly Pair[], { from, to }: { from: number; to: number }): Struck | null {
  const followed = pairs.flatMap((pair) =>
    pair.moving.bodies.flatMap((moving) => {
      const speed = fastest(moving);
      return pair.standing.bodies.map((standing): Followed => ({
        pair,
        moving,
        standing,
        speed,
        way: null,
        last: 0,
        due: from,
      }));
    }),
  );
  for (let at = from; ;) {
    const motion = scene.swing(at);
    const there = new Map<Convex, Convex>();
    let next = Infinity;
    for (const one of followed) {
      if (one.due <= at + TOGETHER) {
        const { needed } = one.pair;
        const body = there.get(one.moving) ?? movedBody(one.moving, motion);
        there.set(one.moving, body);
        const clear = Math.max(needed, TOUCH);
        const gap = followedGap(one, body, clear + one.speed * Math.min(to - at, FAR));
        if (gap < clear) return { pair: one.pair, gap, at };
        const room = needed > 0 ? gap - needed : Math.max(gap, SLIDING);
        one.due = at + Math.max(FINEST, room) / one.speed;
      }
      next = Math.min(next, one.due);
    }
    if (at >= to) return null;
    at = Math.min(to, next);
  }
}

/** The gap of a followed pair, or no more than it where that is enough to go on. */
function followedGap(one: Followed, body: Convex, enough: number): number {
  const least = leastGap(body, one.standing);
  if (least >= enough) return least;
  const apart = boxesGap(body, one.standing);
  if (apart >= enough) return apart;
  if (one.way) {
    const along = gapAlong(body, one.standing, one.way);
    if (along >= enough || along - one.pair.needed > (one.last - one.pair.needed) / 2 + FINEST)
      return (one.last = along);
  }
  const { gap, way } = separation(body, one.standing);
  one.way = way;
  one.last = gap;
  return gap;
}

interface Among {
  readonly moving: readonly Thing[];
  readonly standing: Standing;
  readonly rules: PanelRules;
}

/** What may strike what. The pulled flat itself touches the form's round edge by design, and is looked at against its spine and foot past the vertical. */
function pairsOf(scene: Scene, { moving, standing, rules }: Among, pastVertical: boolean): Pair[] {
  const need = rules.swingClearance;
  return moving.flatMap((thing): Pair[] => {
    const wood = [...(thing.besideCorner ? standing.flushForm : standing.form), ...standing.clamps];
    const notStations = wood.filter(({ name }) => name !== 'stations');
    const against = thing.flat ? (pastVertical ? notStations : []) : wood;
    const metal = scene.held.filter((still) => !(still.flat && thing.flat));
    return [...against, ...metal].map((still) => {
      const near = still.besideCorner || thing.besideCorner || isYokeByForm(thing, still);
      return { moving: thing, standing: still, needed: near ? 0 : need };
    });
  });
}

/** A yoke is bolted on as near the form's round edge as the pull's design puts it. */
function isYokeByForm(moving: Thing, standing: Thing): boolean {
  return moving.name === 'yoke' && standing.name === 'stations';
}

/** The most any place of a body that is pulled goes per radian, mm: it rolls about where it leaves the form. */
function fastest({ corners }: Convex): number {
  return Math.max(1, ...corners.map((corner) => Math.hypot(Math.max(0, corner[1]), corner[2])));
}

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
function benchFor(scene: Scene, given: TryGiven): { readonly edges: readonly BenchEdge[] } | Strike {
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

/** The first way the form comes off the finished bend. */
function takeOff(scene: Scene, { own, given }: { own: Bend; given: TryGiven }): FormOff | Strike {
  const leg = legMotion(own, { cone: own.finished, wrap: own.wrap });
  const metal = [...scene.held, ...scene.pulled.map((thing) => movedThing(thing, leg))];
  const around = metal.filter((thing) => !thing.flat && (thing.besideCorner || risesAbove(thing, scene.thickness / 2)));
  if (around.length === 0) return 'lift';
  const form = formThings(scene, given.use, FLUSH).map((thing) => ({ ...thing, name: 'form' }));
  const half = own.wrap / 2;
  const tapered = scene.form.cone.halfAngle;
  // Each of these leaves both of the bend's own faces; straight up only where the leg does not lean over.
  const ways: (readonly [FormOff, Place3])[] = [
    ['lift', [0, -Math.sin(half), Math.cos(half)]],
    ...(own.wrap <= Math.PI / 2 ? ([['lift', [0, 0, 1]]] as const) : []),
    ['back', [0, -1, 0]],
    ...(tapered <= 0 ? ([['endA', [-1, 0, 0]]] as const) : []),
    ...(tapered >= 0 ? ([['endB', [1, 0, 0]]] as const) : []),
  ];
  let struck = '';
  for (const [name, way] of ways) {
    const hit = slide(form, { way, around });
    if (hit === null) return name;
    struck = hit;
  }
  return failing(given)('trapped', ['form', struck], { gap: 0, needed: 0, at: own.wrap });
}

/** What the form strikes on its way out; null when it comes clear. */
function slide(form: readonly Thing[], { way, around }: { way: Place3; around: readonly Thing[] }): string | null {
  const size = Math.max(...[...form, ...around].flatMap(({ bodies }) => bodies.map((body) => reachOf(body))));
  for (let gone = 0; gone < 2 * size;) {
    let room = Infinity;
    for (const part of form) {
      const there = shifted(part, way, gone);
      for (const thing of around) {
        const gap = thingGap(there, thing, room);
        if (gap < TOUCH) return thing.name;
        room = Math.min(room, gap);
      }
    }
    gone += Math.max(0.5, room);
  }
  return null;
}

function reachOf({ centre, radius }: Convex): number {
  return Math.hypot(...centre) + radius;
}
