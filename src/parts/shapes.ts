import type { Circle, Line, Operation, Text } from '../base/drawing';

/** Average advance of a capital or digit over its height in the plain sans faces that drawings are shown in; rather wide (common practice). */
const ADVANCE = 0.8;
/** Letters lower than this cannot be read at the bench, mm. */
const LEAST_HEIGHT = 1.8;

export function circle(operation: Operation, x: number, y: number, diameter: number): Circle {
  return { kind: 'circle', operation, x, y, radius: diameter / 2 };
}

export function mark(from: readonly [number, number], to: readonly [number, number]): Line {
  return { kind: 'line', operation: 'mark', from, to };
}

/** The width a line of text takes, mm, for capitals `height` mm high: an upper estimate, so that labels stay inside their part. */
export function textWidth(text: string, height: number): number {
  return [...text].length * ADVANCE * height;
}

/** Text centred on `x`, as high as `tallest` but no wider than `width`; nothing where it could not be read. */
export function label(text: string, x: number, y: number, width: number, tallest: number, angle = 0): Text[] {
  const height = Math.min(tallest, width / textWidth(text, 1));
  if (height < LEAST_HEIGHT) return [];
  return [{ kind: 'text', operation: 'label', x, y, height, angle, anchor: 'middle', text }];
}
