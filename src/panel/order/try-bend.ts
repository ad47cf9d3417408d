import { toRadians } from '../../base/angle';
import type { Point } from '../../base/polygon';
import type { PanelRules } from '../../tables/panel-rules';
import { onLeg, toFrame, type Bend } from '../flat/bend';
import type { Panel } from '../flat/panel';
import { pointOf } from '../flat/plane';
import { benchFor } from './bench-for';
import { clampPlaces, type Clamped } from './clamp-places';
import { clampThings, formThings, sceneOf, yokeThings, type Scene, type Thing } from './scene';
import { sweep, type Pair } from './sweep';
import { takeOff } from './take-off';
import { failing, FLUSH, pullingOf, risesAbove, thingGap, TOUCH, type TryGiven } from './trying';
import type { Step, Strike } from './work';

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
