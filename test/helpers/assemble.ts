import type { Drawing, Loop } from '../../src/base/drawing';
import { radiusFromBulge, sidesOf } from '../../src/base/arc';
import { flattenLoop } from '../../src/base/flatten';
import type { Part } from '../../src/drawing/parts/part';
import type { Buildable } from '../../src/output/pipeline';
import { asCut, inWood, loopsUnder, type Ring } from './as-cut';

/**
 * A form put together from nothing but its drawings: each part as its tool leaves it, and each placed by what locates it – drawn lines,
 * grooves, or tabs in slots. The plan only says which part is which, how deep grooves are, how wide the beam is and how thick the
 * boards are. Coordinates: `s` along the centre line, `up` from it, `ahead` of the spine's front; mm.
 */

export interface Placed {
  readonly id: string;
  readonly kind: Part['kind'];
  /** Where a level cut at height `up` runs through its wood. */
  readonly cut: (up: number) => Box[];
}

export interface Box {
  readonly s: readonly [number, number];
  readonly ahead: readonly [number, number];
}

/** A station's contact face as it ends up. */
export interface ContactFace {
  readonly id: string;
  readonly s: number;
  readonly radius: number;
  /** Of the round edge. */
  readonly centre: { readonly up: number; readonly ahead: number };
}

export interface Assembled {
  readonly placed: readonly Placed[];
  readonly contacts: readonly ContactFace[];
}

export function assemble({ plan, layout, joints }: Buildable, parts: readonly Part[]): Assembled {
  if (!layout || !joints || !plan.cut) throw new Error('nothing to assemble');
  const kerf = plan.cut.with === 'laser' ? plan.cut.kerf : 0;
  const part = (id: string): Part => {
    const found = parts.find((one) => one.id === id);
    if (!found) throw new Error(`no part ${id}`);
    return found;
  };
  const layers = (id: string, count: number): Part[] =>
    count === 1 ? [part(id)] : Array.from({ length: count }, (_, index) => part(`${id}-${index + 1}`));
  const spine = layers('spine', layout.layers.spine);
  const front = (spine[0] as Part).drawing;
  const wood = asCut(front, kerf);
  const thick = spine.reduce((sum, { thickness }) => sum + thickness, 0);
  const grooveDepth = plan.cut.with === 'router' ? plan.cut.grooveDepth : 0;

  const placed: Placed[] = spine.map((layer, index) => placeSpine(layer, kerf, index, index === 0 ? grooveDepth : 0));
  const contacts: ContactFace[] = [];
  for (const station of layout.stations) {
    const stack = layers(station.name, layout.layers.stations);
    const total = stack.reduce((sum, { thickness }) => sum + thickness, 0);
    const tab = tabOf(asCut((stack[0] as Part).drawing, kerf), 'x');
    let low = placeAlong(plan.cut.with, front, wood, { at: station.at, thickness: total, offset: tab?.middle ?? 0 });
    for (const layer of stack) {
      const rings = asCut(layer.drawing, kerf);
      const lowest = Math.min(...rings[0]!.map(([, y]) => y));
      const shift = {
        up:
          plan.cut.with === 'laser' && tab
            ? slotMiddle(wood, low + layer.thickness / 2, tab.middle) - tabOf(rings, 'x')!.middle
            : 0,
        ahead: plan.cut.with === 'router' ? -grooveDepth - lowest : 0,
      };
      const s: [number, number] = [low, low + layer.thickness];
      placed.push({
        id: layer.id,
        kind: 'station',
        cut: (up) =>
          inWood(rings, 'y', up - shift.up).map(([from, to]) => ({ s, ahead: [from + shift.ahead, to + shift.ahead] })),
      });
      const round = roundEdge(layer.drawing);
      contacts.push({
        id: layer.id,
        s: station.contact === 'A' ? s[0] : s[1],
        radius: round.radius - kerf / 2,
        centre: { up: round.x + shift.up, ahead: round.y + shift.ahead },
      });
      low += layer.thickness;
    }
  }
  for (const backing of layout.backings) {
    const stack = layers(backing.name, layout.layers.backing);
    const total = stack.reduce((sum, { thickness }) => sum + thickness, 0);
    const tab = tabOf(asCut((stack[0] as Part).drawing, kerf), 'y');
    let low =
      plan.cut.with === 'laser' && tab
        ? placeAlong('laser', front, wood, { at: backing.at, thickness: total, offset: tab.middle })
        : screwsAt(front, backing.at) - total / 2;
    for (const layer of stack) {
      const rings = asCut(layer.drawing, kerf);
      const s: [number, number] = [low, low + layer.thickness];
      placed.push({
        id: layer.id,
        kind: 'backing',
        cut: (up) => inWood(rings, 'x', up).map(([from, to]) => ({ s, ahead: [-thick - to, -thick - from] })),
      });
      low += layer.thickness;
    }
  }
  return { placed, contacts };
}

function placeSpine({ id, kind, thickness, drawing }: Part, kerf: number, index: number, grooveDepth: number): Placed {
  const rings = asCut(drawing, kerf);
  const grooves =
    grooveDepth > 0 ? loopsUnder(drawing, 'groove').map(({ vertices }): Ring => flattenLoop(vertices, 1e-3)) : [];
  const [front, back] = [-index * thickness, -(index + 1) * thickness];
  return {
    id,
    kind,
    cut: (up) =>
      inWood(rings, 'x', up).flatMap(([from, to]): Box[] => {
        const gone = grooves.flatMap((groove) => inWood([groove], 'x', up)).sort((a, b) => a[0] - b[0]);
        const kept: Box[] = [];
        let at = from;
        for (const [low, high] of gone) {
          if (high <= from || low >= to) continue;
          if (low > at) kept.push({ s: [at, low], ahead: [-grooveDepth, front] });
          at = Math.max(at, high);
        }
        if (at < to) kept.push({ s: [at, to], ahead: [-grooveDepth, front] });
        return grooves.length > 0
          ? [{ s: [from, to], ahead: [back, -grooveDepth] }, ...kept]
          : [{ s: [from, to], ahead: [back, front] }];
      }),
  };
}

/** Low face of a board that stands at about `at`: by the lines drawn for its faces, in its groove, or by its tab's slot. */
function placeAlong(
  tool: 'jigsaw' | 'router' | 'laser',
  front: Drawing,
  wood: readonly Ring[],
  { at, thickness, offset }: { readonly at: number; readonly thickness: number; readonly offset: number },
): number {
  if (tool === 'jigsaw') return byLines(front, wood, at, thickness);
  const [low, high] = tool === 'router' ? grooveAt(front, wood, at) : voidAt(inWood(wood, 'x', offset), at);
  if (low === -Infinity) return high - thickness;
  if (high === Infinity) return low;
  return (low + high - thickness) / 2;
}

/** Between two lines across the spine, one of which may be its end. */
function byLines(front: Drawing, wood: readonly Ring[], at: number, thickness: number): number {
  const ends = spread(wood[0] ?? []);
  const lines = front.shapes.flatMap((shape) =>
    shape.kind === 'line' && Math.abs(shape.from[0] - shape.to[0]) < 1e-9 ? [shape.from[0]] : [],
  );
  const nearest = (place: number): number =>
    [...lines, ...ends].reduce((best, one) => (Math.abs(one - place) < Math.abs(best - place) ? one : best), Infinity);
  const [low, high] = [nearest(at - thickness / 2), nearest(at + thickness / 2)];
  if (Math.abs(high - low - thickness) > 1e-3) throw new Error(`no pair of lines ${thickness} mm apart at ${at}`);
  return low;
}

function grooveAt(front: Drawing, wood: readonly Ring[], at: number): [number, number] {
  const [start, end] = spread(wood[0] ?? []);
  for (const { vertices } of loopsUnder(front, 'groove')) {
    const [stretch] = inWood([flattenLoop(vertices, 1e-3)], 'x', 0);
    if (!stretch || stretch[0] > at || stretch[1] < at) continue;
    return [stretch[0] <= start ? -Infinity : stretch[0], stretch[1] >= end ? Infinity : stretch[1]];
  }
  throw new Error(`no groove at ${at}`);
}

/** The stretch without wood round a place; endless where it runs out of the board. */
function voidAt(stretches: readonly (readonly [number, number])[], at: number): [number, number] {
  if (stretches.some(([low, high]) => low < at && at < high)) throw new Error(`wood where a slot should be, at ${at}`);
  return [
    Math.max(-Infinity, ...stretches.filter(([, high]) => high <= at).map(([, high]) => high)),
    Math.min(Infinity, ...stretches.filter(([low]) => low >= at).map(([low]) => low)),
  ];
}

/** Middle of the slot, across the spine, that a tab at `offset` goes into. */
function slotMiddle(wood: readonly Ring[], s: number, offset: number): number {
  const [low, high] = voidAt(inWood(wood, 'y', s), offset);
  return (low + high) / 2;
}

/** The first tab behind a board's straight edge: its middle along the edge, halfway down. */
function tabOf(rings: readonly Ring[], edge: 'x' | 'y'): { middle: number } | null {
  const down = edge === 'x' ? 1 : 0;
  const lowest = Math.min(...(rings[0] ?? []).map((place) => place[down]));
  const [first] = lowest < -0.5 ? inWood(rings, edge, lowest / 2) : [];
  return first ? { middle: (first[0] + first[1]) / 2 } : null;
}

/** Where the countersunk holes of a backing station stand along the spine. */
function screwsAt(front: Drawing, at: number): number {
  const heads = front.shapes.flatMap((shape) =>
    shape.kind === 'circle' && shape.operation === 'countersink' ? [shape.x] : [],
  );
  return heads.reduce((best, one) => (Math.abs(one - at) < Math.abs(best - at) ? one : best), Infinity);
}

/** The widest arc of an outline: the edge that carries the sheet. */
function roundEdge(drawing: Drawing): { x: number; y: number; radius: number } {
  const [outline] = loopsUnder(drawing, 'outline') as [Loop];
  const arcs = sidesOf(outline.vertices).map(([from, to]) => ({ from, to, turn: Math.abs(from.bulge) }));
  const { from, to } = arcs.reduce((best, arc) => (arc.turn > best.turn ? arc : best));
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const aside = (1 - from.bulge ** 2) / (4 * from.bulge);
  return {
    x: (from.x + to.x) / 2 - dy * aside,
    y: (from.y + to.y) / 2 + dx * aside,
    radius: radiusFromBulge(Math.hypot(dx, dy), from.bulge),
  };
}

function spread(ring: Ring): [number, number] {
  return [Math.min(...ring.map(([x]) => x)), Math.max(...ring.map(([x]) => x))];
}
