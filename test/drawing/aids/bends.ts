import fc from 'fast-check';
import { drawAids, drawBlock, layOutBlock, type Aid } from '../../../src/drawing/aids';
import { hasErrors } from '../../../src/base/findings';
import type { Loop, Text } from '../../../src/base/drawing';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import { planBend } from '../../../src/design/pull';
import { parseJob } from '../../../src/job/parse';
import type { Job } from '../../../src/job/job';
import type { Part } from '../../../src/drawing/parts/part';
import { samplePoints } from '../../helpers/loops';
import { jobText, randomJobs, shared, type RandomJob } from '../../helpers/random-jobs';
import { tables } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

export interface Bent {
  readonly job: Job;
  readonly bend: BendPlan;
}

/** Reads a random job's text, changed by `change` as plain data, and bends it; null where the bend has an error finding. */
export function bendOf(random: RandomJob, change: object = {}): Bent | null {
  const { job: read, findings } = parseJob(
    JSON.stringify({ ...(JSON.parse(jobText(random, 'mm')) as object), ...change }),
    tables,
  );
  if (!read) throw new Error(JSON.stringify(findings));
  const job = shared(read, random);
  const { value, findings: found } = planBend(job, tables);
  return value && !hasErrors(found) ? { job, bend: value } : null;
}

/** Runs a check on every bend of `count` random jobs that has no error finding; gives back how many there were. */
export function onRandomBends(check: (bent: Bent, random: RandomJob) => void, count = 200): number {
  let sound = 0;
  fc.assert(
    fc.property(randomJobs, (random) => {
      const bent = bendOf(random);
      if (!bent) return;
      sound++;
      check(bent, random);
    }),
    { numRuns: cases(count) },
  );
  return sound;
}

const drawnOnce = new WeakMap<Bent, Aid[]>();

/** One of a bend's aids; all are drawn once. */
export function aid(bent: Bent, id: string): Aid {
  const aids = drawnOnce.get(bent) ?? drawAids(bent.bend, bent.job);
  drawnOnce.set(bent, aids);
  const found = aids.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no aid ${id}`);
  return found;
}

export function blockLayers({ bend, job }: Bent): Part[] {
  return drawBlock(layOutBlock(bend, job, tables).value, job);
}

export function outlineOf({ drawing }: Pick<Aid, 'drawing'>): Loop {
  const loops = drawing.shapes.filter((shape): shape is Loop => shape.kind === 'loop');
  if (loops.length !== 1 || loops[0]?.operation !== 'outline') throw new Error('not one outline');
  return loops[0];
}

export const textsOf = ({ drawing }: Pick<Aid, 'drawing'>): Text[] =>
  drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');

/** The one arc of an outline: its radius by the chord c and the bulge b, c·(1 + b²)/(4·|b|), and its sweep, 4·atan b. */
export function arcOf({ vertices }: Loop): { radius: number; sweep: number; centre: [number, number] } {
  const index = vertices.findIndex(({ bulge }) => bulge !== 0);
  if (vertices.filter(({ bulge }) => bulge !== 0).length !== 1) throw new Error('not one arc');
  const [a, b] = [vertices[index], vertices[(index + 1) % vertices.length]];
  if (!a || !b) throw new Error('no arc');
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const radius = (Math.hypot(dx, dy) * (1 + a.bulge ** 2)) / (4 * Math.abs(a.bulge));
  // The centre lies on the left of the chord by r·cos(sweep/2) for a counter-clockwise arc.
  const sweep = 4 * Math.atan(a.bulge);
  const aside = (Math.sign(a.bulge) * radius * Math.cos(sweep / 2)) / Math.hypot(dx, dy);
  return { radius, sweep, centre: [(a.x + b.x) / 2 - dy * aside, (a.y + b.y) / 2 + dx * aside] };
}

/** Twice the signed area of an outline's fine polygon: positive when it runs counter-clockwise. */
export function turns(loop: Loop): number {
  const points = samplePoints(loop.vertices, 5);
  return points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
}

/** Whether a point lies inside an outline, by the turns its polygon makes round it. */
export function within(loop: Loop, [x, y]: readonly [number, number]): boolean {
  const points = samplePoints(loop.vertices, 6);
  const angle = points.reduce((sum, [ax, ay], index) => {
    const [bx, by] = points[(index + 1) % points.length] ?? [ax, ay];
    return sum + Math.atan2((ax - x) * (by - y) - (bx - x) * (ay - y), (ax - x) * (bx - x) + (ay - y) * (by - y));
  }, 0);
  return Math.abs(angle) > Math.PI;
}

/** Four corners of a text's box: the average advance of Helvetica's capitals is 0.68 of the font size and their height 0.72 of it. */
export function boxOf({ x, y, height, angle, anchor, text }: Text): [number, number][] {
  const width = [...text].length * height * (0.68 / 0.72);
  const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return [
    [start, 0],
    [start + width, 0],
    [start + width, height],
    [start, height],
  ].map(([along, up]): [number, number] => [
    x + (along ?? 0) * cosine - (up ?? 0) * sine,
    y + (along ?? 0) * sine + (up ?? 0) * cosine,
  ]);
}

/** cos β from the finished radii and the length along the tangent line alone. */
export function cosineOf(from: number, to: number, length: number): number {
  return Math.sqrt(1 - ((to - from) / length) ** 2);
}

/** Angle between the tangent planes of a cone at two rulings `wrap` apart, by the dot product of their normals, radians. */
export function planesAngle(sine: number, wrap: number): number {
  const cosine = Math.sqrt(1 - sine ** 2);
  const normal = (turn: number): number[] => [-sine, cosine * Math.sin(turn), -cosine * Math.cos(turn)];
  const [a, b] = [normal(0), normal(wrap)];
  return Math.acos(a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0));
}
