import { boardOf } from '../../design/built/board-of';
import { DEGREE, toDegrees } from '../../base/angle';
import type { Loop, Shape, Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { formatLength, type LengthUnit } from '../../base/units';
import type { BendPlan } from '../../design/bend/bend-plan';
import { adviseTrial, type TrialAdvice } from '../../design/bend/trial-advice';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { labelLength } from '../parts/lengths';
import { circle, label, mark } from '../parts/shapes';
import type { Aid } from './aid';
import { bulgeOf, corner, outline } from '../../base/outline';
import { stackLines } from './room';
import { ROUNDING } from '../../base/tolerance';

/** Discs up to this radius are whole arches, larger ones a part of the rim, mm. */
const ARCH_UP_TO = 90;
/** What a larger disc has behind its rim, mm, and beyond the turn, radians. */
const RIM = 70;
const BEYOND = 10 * DEGREE;
/** The arch's foot: how far it stands out on either side, where the strip's end butts on it, and its height, mm. */
const TOE = 20;
const FOOT = 40;
/** Clears any wood screw of `shared/screws.json`, mm. */
const SCREW_HOLE = 5.6;
/** Marks on the rim: one every so many radians, so long, mm. */
const TICK_EVERY = 10 * DEGREE;
const TICK = 4;
const LETTERS = 4;

/** A trial strip and the disc to bend it round, 1:1; nothing where the job's strips are bent and measured already. */
export function drawTrial(bend: BendPlan, job: Job, tables: Tables): Aid[] {
  if (job.trials.length > 0) return [];
  const advice = adviseTrial(bend, job.units);
  const { layers, thickness } = discLayers(advice, job, tables);
  const turn = `${toDegrees(advice.bent).toFixed(0)}°`;
  return [
    {
      id: 'trial-strip',
      kind: 'trial-strip',
      title: `Trial strip, ${formatLength(advice.width, job.units)} wide`,
      material: 'sheet',
      notes: ['Cut two more, from elsewhere on the sheet, all the same way of the grain as the part.'],
      drawing: { shapes: drawStrip(advice) },
    },
    {
      id: 'trial-disc',
      kind: 'trial-disc',
      title: `Trial disc, radius ${formatLength(advice.radius, job.units)}`,
      material: 'board',
      notes: [
        `${layers === 1 ? 'One layer of board' : `${layers} layers of board, screwed together`}, ${formatLength(layers * thickness, job.units)} high in all, screwed flat to the bench.`,
        `Clamp the strip’s held end to the straight side, on edge. Pull it round to about ${turn}, measure its turn from flat, let it go, measure again.`,
        'The marks on the rim are 10° apart: the strip leaves the rim at the mark of its turn.',
      ],
      drawing: { shapes: drawDisc(advice, job.units) },
    },
  ];
}

/** How many layers of the stations' board, each of this thickness (mm), make a disc as high as the strip is wide. */
export function discLayers(
  { width }: TrialAdvice,
  { board: { stations } }: Job,
  tables: Tables,
): { readonly layers: number; readonly thickness: number } {
  const { thickness } = boardOf(stations, tables);
  return { layers: Math.ceil(width / thickness - ROUNDING), thickness };
}

/** The strip flat, along x from its held end: both tangent lines square across it. */
export function drawStrip({ width, held, free, length, bent }: TrialAdvice): Shape[] {
  const far = length - free;
  const lettering = (text: string, from: number, to: number): Shape[] =>
    label(text, {
      x: (from + to) / 2,
      y: width / 2 - Math.min(LETTERS, width / 4) / 2,
      width: to - from - 4,
      tallest: Math.min(LETTERS, width / 4),
    });
  return [
    outline([corner([0, 0]), corner([length, 0]), corner([length, width]), corner([0, width])]),
    mark([held, 0], [held, width]),
    mark([far, 0], [far, width]),
    ...lettering('HELD END', 0, held),
    ...lettering(`BEND ${toDegrees(bent).toFixed(0)} DEG`, held, far),
    ...lettering('TRIAL STRIP, FREE END', far, length),
  ];
}

/**
 * The disc seen from above, its centre at the origin: the strip's held end lies along its straight side x = radius, below y = 0, and
 * bends round counter-clockwise. A small one is an arch for either hand.
 */
export function drawDisc(advice: TrialAdvice, units: LengthUnit): Shape[] {
  const { radius, held, bent } = advice;
  const arch = radius <= ARCH_UP_TO;
  const edge = arch ? archOf(radius, held) : rimOf(radius, held, bent + BEYOND);
  const holes = arch
    ? [-1, 1].map((side) => [(side * (radius + TOE)) / 2, -held - FOOT / 2] as const)
    : rimHoles(radius, held, bent + BEYOND);
  const lines = [`R ${labelLength(radius, units)}`, `BEND ${toDegrees(bent).toFixed(0)} DEG`];
  const polygon = flattenLoop(edge.vertices, 0.05);
  const within = arch ? { low: 2 - held, high: radius - TICK - 2 } : { low: 2 - held, high: 0 };
  const wordy = stackLines(polygon, ['TRIAL DISC', ...lines], LETTERS, within);
  return [
    edge,
    ...holes.map(([x, y]) => circle('hole', x, y, SCREW_HOLE)),
    ...ticks(radius, arch ? Math.PI : bent + BEYOND, bent),
    ...(wordy.length > 0 ? wordy : stackLines(polygon, lines, LETTERS, within)),
  ];
}

function archOf(radius: number, held: number): Loop {
  const toe = radius + TOE;
  return outline([
    corner([radius, 0], bulgeOf(Math.PI)),
    corner([-radius, 0]),
    corner([-radius, -held]),
    corner([-toe, -held]),
    corner([-toe, -held - FOOT]),
    corner([toe, -held - FOOT]),
    corner([toe, -held]),
    corner([radius, -held]),
  ]);
}

function rimOf(radius: number, held: number, reach: number): Loop {
  const at = (r: number, angle: number, bulge = 0): Vertex => corner([r * Math.cos(angle), r * Math.sin(angle)], bulge);
  return outline([
    at(radius, 0, bulgeOf(reach)),
    at(radius, reach),
    at(radius - RIM, reach),
    corner([radius - RIM, -held]),
    corner([radius, -held]),
  ]);
}

/** One near the held end, one near the end of the rim. */
function rimHoles(radius: number, held: number, reach: number): (readonly [number, number])[] {
  const [middle, back] = [radius - RIM / 2, reach - RIM / 2 / radius];
  return [
    [middle, -held + SCREW_HOLE * 2],
    [middle * Math.cos(back), middle * Math.sin(back)],
  ];
}

/** From the tangent line on, the one at the turn twice as long. */
function ticks(radius: number, reach: number, bent: number): Shape[] {
  const count = Math.floor((reach - ROUNDING) / TICK_EVERY);
  const angles = Array.from({ length: count + 1 }, (_, index) => ({ angle: index * TICK_EVERY, long: TICK })).filter(
    ({ angle }) => Math.abs(angle - bent) > 2 * DEGREE,
  );
  return [...angles, { angle: bent, long: 2 * TICK }].map(({ angle, long }) => {
    const inner = radius - Math.min(long, radius / 3);
    return mark(
      [inner * Math.cos(angle), inner * Math.sin(angle)],
      [radius * Math.cos(angle), radius * Math.sin(angle)],
    );
  });
}
