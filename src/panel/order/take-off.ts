import type { Place3 } from '../../base/space';
import type { Bend } from '../flat/bend';
import { legMotion } from '../fold/bend-motion';
import type { Convex } from './gap';
import { formThings, movedThing, shifted, type Scene, type Thing } from './scene';
import { failing, FLUSH, risesAbove, thingGap, TOUCH, type TryGiven } from './trying';
import type { FormOff, Strike } from './work';

/** The first way the form comes off the finished bend. */
export function takeOff(scene: Scene, { own, given }: { own: Bend; given: TryGiven }): FormOff | Strike {
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
