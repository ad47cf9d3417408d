import { at } from '../../base/at';
import { boundsOf } from '../../base/bounds';
import type { Shape, Text } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { mirrorShapes } from '../../base/mirror';
import type { LengthUnit } from '../../base/units';
import type { BendPlan } from '../../design/bend/bend-plan';
import { developBlank, type Blank } from '../../design/form/blank';
import { sizeBlank } from '../../design/form/blank-size';
import { labelLength } from '../parts/lengths';
import { label, mark } from '../parts/shapes';
import type { Point } from '../../base/polygon';
import { runMarks } from './marks';
import { outline } from '../../base/outline';
import { stackFirst } from './room';

const LETTERS = 7;
/** Length of the arrow along the grain, mm, and of its head's strokes. */
const ARROW = 60;
const ARROW_HEAD = 6;
/** Its distance from end A on a short blank, mm; an eighth of a long one. */
const ARROW_FROM_END = 25;
const GRAMS_PER_POUND = 453.59237;

/**
 * The flat blank at 1:1. Seen on the face that goes to the form, free leg away from you, the left blank has end A on its left; the
 * right blank is its mirror image. Outline to cut; both tangent lines, run ends, trim line and grain arrow to mark.
 */
export function drawBlank(bend: BendPlan, hand: 'left' | 'right', units: LengthUnit): Shape[] {
  const blank = developBlank(bend);
  const { minX, maxX } = boundsOf({ shapes: [outline(blank.outline)] });
  const left = [
    outline(blank.outline),
    ...[...blank.tangents, ...blank.trims].map(([from, to]) => mark(from, to)),
    ...runMarks(bend, units, bend.legs.held),
    ...grainArrow(bend, blank),
    ...blankLabels(bend, blank, hand, units),
  ];
  return hand === 'left' ? left : mirrorShapes(left, minX + maxX);
}

/** Across the bend, on the free leg by end A: two strokes at either end of a line. */
function grainArrow(bend: BendPlan, blank: Blank): Shape[] {
  const { x, low, high } = arrowPlace(bend, blank);
  const head = Math.min(ARROW_HEAD, (high - low) / 3);
  const tips = [
    [high, -1],
    [low, 1],
  ] as const;
  return [
    mark([x, low], [x, high]),
    ...tips.flatMap(([y, inward]) => [-1, 1].map((side) => mark([x, y], [x + (side * head) / 2, y + inward * head]))),
  ];
}

/** In the middle of the finished free leg's depth, near end A: as long as the leaning end leaves room for. */
function arrowPlace({ legs, length, fan }: BendPlan, { tangents }: Blank): { x: number; low: number; high: number } {
  const [from, to] = at(tangents, 1);
  const inward = Math.max(length / 8, Math.min(length / 4, ARROW_FROM_END));
  const share = inward / length;
  const along: Point = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  const middle: Point = [along[0] - (legs.free / 2) * Math.sin(fan), along[1] + (legs.free / 2) * Math.cos(fan)];
  const leaning = fan === 0 ? Infinity : (0.6 * inward) / Math.abs(Math.tan(fan));
  const half = Math.min(ARROW / 2, 0.35 * legs.free, leaning);
  return { x: middle[0], low: middle[1] - half, high: middle[1] + half };
}

function blankLabels(bend: BendPlan, blank: Blank, hand: 'left' | 'right', units: LengthUnit): Text[] {
  const { legs, length, pull } = bend;
  const [heldLine, freeLine] = blank.tangents;
  if (!heldLine || !freeLine) return [];
  const { x, low, high } = arrowPlace(bend, blank);
  const grain = label('GRAIN', {
    x: x - 2,
    y: (low + high) / 2,
    width: high - low,
    tallest: Math.min(4, legs.free / 8, length / 16),
    angle: Math.PI / 2,
  });
  const heldLetters = Math.min(LETTERS, legs.held / 4);
  const bendHeight = Math.min(bend.allowance.A, bend.allowance.B);
  const heldTexts = [
    ...label(`BLANK ${hand.toUpperCase()}: HELD LEG ${labelLength(legs.held, units)}`, {
      x: length / 2,
      y: -legs.held / 2 - heldLetters / 2,
      width: length * 0.65,
      tallest: heldLetters,
    }),
    ...label('END A', { x: length / 12, y: -legs.held / 2 - heldLetters / 2, width: length / 8, tallest: heldLetters }),
    ...label('END B', {
      x: (11 * length) / 12,
      y: -legs.held / 2 - heldLetters / 2,
      width: length / 8,
      tallest: heldLetters,
    }),
  ];
  const free = zoneBeyond(bend, blank, { near: 0, far: legs.free, left: x + 4 });
  const spare =
    pull.leverage > 0
      ? stackFirst(
          zoneBeyond(bend, blank, { near: legs.free, far: pull.edge }),
          leverageWords(labelLength(pull.leverage, units)),
          LETTERS,
        )
      : [];
  const [, , heldB, freeB, , , freeA, heldA] = blank.outline;
  const bendZone =
    heldB && freeB && freeA && heldA ? flattenLoop([heldB, { ...freeB, bulge: 0 }, freeA, heldA], 0.5) : [];
  const bendNote =
    bendHeight > 40 ? stackFirst(bendZone, [['BEND: PENCIL LINES ONLY']], 5, { low: bendHeight * 0.6 }) : [];
  return [
    ...heldTexts,
    ...bendNote,
    ...grain,
    ...stackFirst(free, noteWords(bend, blank, hand, units), LETTERS),
    ...spare,
  ];
}

/**
 * What the maker must know before cutting, fullest wording first. Grain and pencil: common practice (bends along the grain, and
 * scribed ones, crack first).
 */
function noteWords(bend: BendPlan, blank: Blank, hand: 'left' | 'right', units: LengthUnit): string[][] {
  const { mass, width, height } = sizeBlank(bend, blank);
  const weight = units === 'mm' ? `${mass.toFixed(3)} kg` : `${((mass * 1000) / GRAMS_PER_POUND).toFixed(2)} lb`;
  const [name, leg, across, along, thick] = [
    `BLANK ${hand.toUpperCase()}`,
    `FREE LEG ${labelLength(bend.legs.free, units)}`,
    labelLength(width, units),
    labelLength(height, units),
    labelLength(bend.section.thickness, units),
  ];
  return [
    [
      `${name}: ${leg}`,
      `SHEET ${across} x ${along} x ${thick}, ${weight}`,
      'THIS FACE TO THE FORM',
      'GOOD FACE DOWN WHERE THE OUTSIDE SHOWS',
      'GRAIN (ROLLING DIRECTION) ALONG THE ARROW WHERE YOU CAN',
      'PENCIL THE TANGENT LINES: SCRIBED LINES START CRACKS',
    ],
    [
      name,
      leg,
      `SHEET ${across}`,
      `x ${along}`,
      `x ${thick}`,
      weight,
      'THIS FACE TO FORM',
      'GOOD FACE DOWN',
      'PENCIL LINES ONLY',
    ],
    [name, 'THIS FACE TO FORM', 'GOOD FACE DOWN', 'PENCIL LINES ONLY'],
    [name],
  ];
}

/** The free leg between two distances from its tangent line, from `left` on; corners counter-clockwise from the lower left. */
function zoneBeyond(
  bend: BendPlan,
  blank: Blank,
  { near, far, left = -Infinity }: { readonly near: number; readonly far: number; readonly left?: number },
): Point[] {
  const [a, b] = at(blank.tangents, 1);
  const beyond = ([x, y]: Point, distance: number): Point => [
    x - distance * Math.sin(bend.fan),
    y + distance * Math.cos(bend.fan),
  ];
  const share =
    left === -Infinity
      ? 0
      : Math.max(0, Math.min(1, (left - Math.min(beyond(a, near)[0], beyond(a, far)[0])) / (b[0] - a[0])));
  const start: Point = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
  return [beyond(start, near), beyond(b, near), beyond(b, far), beyond(start, far)];
}

function leverageWords(leverage: string): string[][] {
  return [
    [`LEVERAGE ${leverage}: TRIM AT THE LINE AFTER BENDING`],
    [`LEVERAGE ${leverage}`, 'TRIM AFTER BENDING'],
    ['TRIM OFF'],
  ];
}
