import { at } from '../../base/at';
import { sidesOf } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import { flattenLoop } from '../../base/flatten';
import { isInside, type Point } from '../../base/polygon';
import { distanceTo, sideBetween } from '../../base/side';
import { cutRun, type CutCurve } from '../corner/end-cut';
import { bentAt, flatOnLeg, onLeg, toFrame, type Bend, type BendSurface } from '../flat/bend';
import { checkOutline } from '../flat/check-outline';
import type { Face, Panel } from '../flat/panel';
import { distance, pointOf, withoutRepeats } from '../flat/plane';
import { bendOnLine, withEnds, type BendOnLine, type Carry } from './bend-on-line';
import { splitLoop } from './split-loop';
import type { TakenOff, Traced, TracedBend } from './traced';
import { CHORD_STRAY } from '../../base/tolerance';
import { walkedBack } from '../../base/outline';

/** A flat part while the outline is being cut up, and how what was traced on it is carried to the flat. */
interface Part {
  readonly name: string;
  readonly bend: number | null;
  readonly loop: readonly Vertex[];
  readonly carry: Carry;
}

/** A panel from a traced outline, and how much metal each bend took off it. */
export interface TracedPanel {
  readonly panel: Panel;
  readonly takenOff: readonly TakenOff[];
  /** Where a place on or near the outline, as traced, lies on the flat. */
  readonly carried: (place: Point) => Point;
}

/** Lays a traced panel out: finds base line, leg line and faces of each bend, and takes off the metal the mock-up did not allow for. */
export function layOutTraced(traced: Traced): Staged<TracedPanel | null> {
  const parts: Part[] = [{ name: 'base', bend: null, loop: traced.outline, carry: (place) => place }];
  const bends: Bend[] = [];
  const takenOff: TakenOff[] = [];
  for (const index of outwardOrder(traced)) {
    const one = traced.bends[index];
    if (!one) continue;
    const cut = cutAlong(traced, { bend: one, path: `bends[${index}]`, parts, number: index, made: bends });
    if ('code' in cut) return { value: null, findings: [cut] };
    parts[cut.base] = cut.kept;
    parts[index + 1] = cut.leg;
    bends[index] = cut.bend;
    takenOff[index] = { bend: one.name, ...cut.takenOff };
  }
  const holes = traced.holes.map((hole, index) => carryHole(traced, { hole, index, parts }));
  const findings = [
    ...holes.flatMap((one) => one.findings),
    ...crossedHoles(
      bends,
      holes.map(({ value }) => value ?? []),
    ),
  ];
  if (hasErrors(findings)) return { value: null, findings };
  const outline = traced.mockup === 'metal-allowed' ? traced.outline : stitched(parts, bends, 0);
  const checks = checkOutline(outline);
  if (hasErrors(checks)) return { value: null, findings: checks };
  const faces: Face[] = parts.map(({ name, bend, loop }) => ({ name, bend, outline: loop }));
  const panel: Panel = {
    thickness: traced.thickness,
    faces,
    bends,
    corners: [],
    outline,
    holes: holes.flatMap(({ value }) => (value ? [value] : [])),
  };
  return { value: { panel, takenOff, carried: (place) => carriedTo(parts, place) }, findings };
}

/** The bends from the base outward: one that lies on another's free side comes after it. */
function outwardOrder({ outline, bends }: Traced): number[] {
  const depth = bends.map(({ line: [a, b] }) => {
    const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    return bends.filter((other) => {
      const split = splitLoop(outline, other.line);
      return split && isInside(middle, flattenLoop(other.free === 'left' ? split.left : split.right, CHORD_STRAY));
    }).length;
  });
  return bends.map((_, index) => index).sort((a, b) => at(depth, a) - at(depth, b) || a - b);
}

interface Cut {
  readonly base: number;
  readonly kept: Part;
  readonly leg: Part;
  readonly bend: Bend;
  readonly takenOff: BendOnLine['takenOff'];
}

interface CutGiven {
  readonly bend: TracedBend;
  readonly path: string;
  readonly parts: readonly (Part | undefined)[];
  readonly number: number;
  /** The bends cut along before, by number. */
  readonly made: readonly (Bend | undefined)[];
}

function cutAlong(traced: Traced, given: CutGiven): Cut | Finding {
  const { bend, path, parts, number } = given;
  const on = partUnder(parts, bend.line);
  if (!on) return offOutline(bend, path);
  const found = bendOnLine(traced, bend, [on.split.from, on.split.to], path);
  if ('code' in found) return found;
  const { frame, finished } = found.surface;
  const end: Point = [frame.at[0] + frame.along[0] * finished.length, frame.at[1] + frame.along[1] * finished.length];
  const baseSplit = splitLoop(on.part.loop, [frame.at, end]);
  if (!baseSplit) return noRoom(bend, path, 'base');
  const surface = withEnds(bend, found.surface, [baseSplit.from, baseSplit.to], path);
  if ('code' in surface) return surface;
  const isLeft = bend.free === 'left';
  const beyond = isLeft ? baseSplit.left : baseSplit.right;
  const whole = traced.mockup === 'metal-allowed' ? beyond : on.part.loop.map((vertex) => moved(found.carry, vertex));
  const legLine = [flatOnLeg(surface, [0, 0]), flatOnLeg(surface, [surface.finished.length, 0])] as const;
  const legSplit = splitLoop(whole, legLine);
  if (!legSplit) return noRoom(bend, path, 'leg');
  const ends = [baseSplit.from, baseSplit.to, legSplit.from, legSplit.to];
  const other = given.made.find((one) => one && ends.some((end) => endsOn(one, end)));
  if (other) return finding('zones-overlap', `${path}.line`, { bend: bend.name, other: other.name });
  const zone =
    traced.mockup === 'metal-allowed'
      ? isLeft
        ? legSplit.right
        : legSplit.left
      : joinedZone(surface, { from: legSplit.from, to: legSplit.to, turn: bend.turn, isLeft });
  const xs = zone.map((vertex) => bentAt(surface, pointOf(vertex)).x);
  return {
    base: on.index,
    kept: { ...on.part, loop: isLeft ? baseSplit.right : baseSplit.left },
    leg: {
      name: bend.name,
      bend: number,
      loop: isLeft ? legSplit.left : legSplit.right,
      carry: (place) => found.carry(on.part.carry(place)),
    },
    bend: {
      ...surface,
      name: bend.name,
      turn: bend.turn,
      angle: bend.angle,
      base: on.index,
      leg: number + 1,
      zone,
      run: { from: Math.min(0, ...xs), to: Math.max(surface.finished.length, ...xs) },
    },
    takenOff: found.takenOff,
  };
}

/** Nearer to the end of a tangent line than this, or to the line, a place is on it, mm. */
const AT = 1e-3;

/** Whether a place lies on a tangent line of a bend, away from its ends: there the sheet goes on into that bend. */
function endsOn(bend: Bend, place: Point): boolean {
  const own = [toFrame(bend.frame, place), onLeg(bend, place)];
  const lines = [
    bend.zone.map((vertex) => toFrame(bend.frame, pointOf(vertex))),
    bend.zone.map((vertex) => onLeg(bend, pointOf(vertex))),
  ];
  return own.some(([x, off], index) => {
    const on = at(lines, index).flatMap(([along, out]) => (Math.abs(out) < AT ? [along] : []));
    return Math.abs(off) < AT && x > Math.min(...on) + AT && x < Math.max(...on) - AT;
  });
}

/** A place as traced, on the flat: by the part whose edge it is nearest to. */
function carriedTo(parts: readonly Part[], place: Point): Point {
  const found = parts.map(({ loop, carry }) => {
    const [x, y] = carry(place);
    const away = sidesOf(loop).map(([from, to]) => distanceTo(sideBetween(from, to), { x, y }));
    return { there: [x, y] as const, away: Math.min(...away) };
  });
  return at(
    [...found].sort((a, b) => a.away - b.away),
    0,
  ).there;
}

function moved(carry: Carry, { x, y, bulge }: Vertex): Vertex {
  const [toX, toY] = carry([x, y]);
  return { x: toX, y: toY, bulge };
}

/** The part a line lies on, and how it cuts it. */
function partUnder(parts: readonly (Part | undefined)[], line: readonly [Point, Point]) {
  for (const [index, part] of parts.entries()) {
    if (!part) continue;
    const split = splitLoop(part.loop, [part.carry(line[0]), part.carry(line[1])]);
    if (split) return { index, part, split };
  }
  return null;
}

function offOutline({ name }: TracedBend, path: string): Finding {
  return finding('bend-off-outline', `${path}.line`, { bend: name });
}

function noRoom({ name }: TracedBend, path: string, side: 'base' | 'leg'): Finding {
  return finding('bend-without-metal', path, { bend: name, side: side === 'base' ? 'before' : 'beyond' });
}

interface ZoneEnds {
  readonly from: Point;
  readonly to: Point;
  readonly turn: 'up' | 'down';
  readonly isLeft: boolean;
}

/** The zone between two tangent lines whose outlines have been moved apart: its ends run evenly from the one's end to the other's. */
function joinedZone(surface: BendSurface, { from, to, turn, isLeft }: ZoneEnds): Vertex[] {
  const { length } = surface.finished;
  const [x, farX] = [onLeg(surface, from)[0], onLeg(surface, to)[0] - length];
  const atA = zoneEnd({ ...surface, turn }, 0, x);
  const atB = zoneEnd({ ...surface, turn }, length, farX);
  const [first, last] = isLeft ? [atB, atA] : [atA, atB];
  return [...first, ...walkedBack(last)];
}

function zoneEnd(bend: CutCurve['bend'], start: number, by: number): Vertex[] {
  const curve = { bend, xAt: (out: number) => start + by * out, kinks: [], straightFrom: 1, steps: by === 0 ? 1 : 8 };
  return cutRun(curve, 0, 1);
}

/** The outline of a part with everything that hangs from it. */
function stitched(parts: readonly Part[], bends: readonly Bend[], part: number): Vertex[] {
  let loop: readonly Vertex[] = at(parts, part).loop;
  for (const bend of bends) {
    if (bend.base !== part) continue;
    const leg = stitched(parts, bends, bend.leg);
    loop = replaced(loop, bend, withoutLegLine(leg, bend));
  }
  return withoutRepeats(loop);
}

/** The leg's outline from one end of its leg line round to the other, and the zone's ends before and after it. */
function withoutLegLine(leg: readonly Vertex[], bend: Bend): Vertex[] {
  // The zone is walked out along its first end, across the leg line, and back along its other.
  const across = zoneCrossing(bend);
  const [start, end] = [bend.zone[across], bend.zone[across + 1]];
  if (!start || !end) return [];
  const from = nearest(leg, start);
  const round = [...leg.slice(from), ...leg.slice(0, from)];
  return [
    ...bend.zone.slice(0, across),
    ...round.slice(0, -1),
    { ...end, bulge: end.bulge },
    ...bend.zone.slice(across + 2),
  ];
}

/** The corner of a zone that its leg line starts from. */
function zoneCrossing(bend: Bend): number {
  const wraps = bend.zone.map((vertex) => bentAt(bend, pointOf(vertex)).wrap);
  return wraps.findIndex(
    (wrap, index) => wrap > bend.wrap - 1e-6 && at(wraps, (index + 1) % wraps.length) > bend.wrap - 1e-6,
  );
}

function nearest(loop: readonly Vertex[], to: Vertex): number {
  const apart = loop.map((vertex) => distance(pointOf(vertex), pointOf(to)));
  return apart.indexOf(Math.min(...apart));
}

/** A loop with the side along a bend's base line replaced by what hangs there. */
function replaced(loop: readonly Vertex[], { zone }: Bend, run: readonly Vertex[]): Vertex[] {
  const first = zone[0];
  if (!first) return [...loop];
  const at = nearest(loop, first);
  return [...loop.slice(0, at), ...run.slice(0, -1), { ...(run.at(-1) ?? first), bulge: 0 }, ...loop.slice(at + 1)];
}

interface HoleGiven {
  readonly hole: readonly Vertex[];
  readonly index: number;
  readonly parts: readonly Part[];
}

/** A hole where its part of the flat has it. A mock-up that is not the flat cannot say where a hole in the curved part goes. */
function carryHole({ mockup }: Traced, { hole, index, parts }: HoleGiven): Staged<readonly Vertex[] | null> {
  if (mockup === 'metal-allowed') return { value: hole, findings: [] };
  for (const { loop, carry } of parts) {
    const polygon = flattenLoop(loop, CHORD_STRAY);
    const there = hole.map((vertex) => moved(carry, vertex));
    if (flattenLoop(there, 0.05).every((place) => isInside(place, polygon))) return { value: there, findings: [] };
  }
  const first = hole[0];
  return {
    value: null,
    findings: [finding('hole-in-bend', `outline.holes[${index}]`, { near: first ? [first.x, first.y] : null })],
  };
}

/** Holes across a tangent line leave flats and kinks beside them. */
function crossedHoles(bends: readonly Bend[], holes: readonly (readonly Vertex[])[]): Finding[] {
  return holes.flatMap((hole, index) => {
    const over = bends.find((bend) => {
      const inside = flattenLoop(hole, 0.05).map((place) => isInside(place, flattenLoop(bend.zone, 0.05)));
      return inside.includes(true);
    });
    if (!over) return [];
    return [finding('hole-on-bend', `outline.holes[${index}]`, { bend: over.name })];
  });
}
