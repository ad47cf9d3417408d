import type { Circle, Line, Operation, Text } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import { ROUNDING } from '../../base/tolerance';

/** Advance of a capital over its height in plain sans faces: Helvetica’s capitals average 0.68 of the font size, 0.72 of which is their height; rather wide. */
const ADVANCE = 0.95;
/** Letters lower than this cannot be read at the bench, mm. */
const LEAST_HEIGHT = 1.8;

export function circle(operation: Operation, x: number, y: number, diameter: number): Circle {
  return { kind: 'circle', operation, x, y, radius: diameter / 2 };
}

export function mark(from: readonly [number, number], to: readonly [number, number]): Line {
  return { kind: 'line', operation: 'mark', from, to };
}

/** A place marked by a cross, its arms `half` mm long. */
export function cross([x, y]: Point, half: number): Line[] {
  return [mark([x - half, y], [x + half, y]), mark([x, y - half], [x, y + half])];
}

/** The width a line of text takes, mm, for capitals `height` mm high: an upper estimate, so that labels stay inside their part. */
export function textWidth(text: string, height: number): number {
  return [...text].length * ADVANCE * height;
}

/** Where a label stands and what room it has, mm. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly tallest: number;
  /** Radians. */
  readonly angle?: number;
  /** What it may take where it would be too small to read otherwise; `width` where nothing is said. */
  readonly most?: number;
}

/**
 * Text centred on `x`, as high as `tallest` but no wider than `width`. Where that would be too small to read it is written as
 * small as can be read, over what it meets, so long as it stays within `most`; beyond that there is nothing.
 */
export function label(text: string, { x, y, width, tallest, angle = 0, most = width }: LabelPlace): Text[] {
  const height = Math.max(LEAST_HEIGHT, Math.min(tallest, width / textWidth(text, 1)));
  if (textWidth(text, height) > Math.max(width, most) + ROUNDING) return [];
  return [{ kind: 'text', operation: 'label', x, y, height, angle, anchor: 'middle', text }];
}

/** Between letters and a hole, mm. */
const CLEAR = 1;

/** The widest a line of text about `x`, between the heights `low` and `high`, may be beside these holes; at most `width`, 0 where a hole is in its middle. */
export function widthBeside(
  holes: readonly Circle[],
  { x, low, high, width }: { readonly x: number; readonly low: number; readonly high: number; readonly width: number },
): number {
  const beside = holes
    .filter((hole) => hole.y + hole.radius + CLEAR > low && hole.y - hole.radius - CLEAR < high)
    .map((hole) => 2 * (Math.abs(hole.x - x) - hole.radius - CLEAR));
  return Math.max(0, Math.min(width, ...beside));
}
