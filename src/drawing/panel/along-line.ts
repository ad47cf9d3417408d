import type { Text } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import type { Bend } from '../../panel';
import { bendLines, type FlatLine } from './bend-lines';
import { ROUNDING } from '../../base/tolerance';

export function lengthOf([[x, y], [u, v]]: FlatLine): number {
  return Math.hypot(u - x, v - y);
}

/** The place that share of the way along a line. */
export function between([[x, y], [u, v]]: FlatLine, share: number): Point {
  return [x + share * (u - x), y + share * (v - y)];
}

/** To the left of the way along a line, so long. */
export function across(line: FlatLine, size: number): Point {
  const [[x, y], [u, v]] = line;
  const length = lengthOf(line);
  return [(-size * (v - y)) / length, (size * (u - x)) / length];
}

/** The same line, walked so that text along it reads from left to right, or upward. */
export function turnedToRead(line: FlatLine): FlatLine {
  const angle = angleOf(line);
  return angle > Math.PI / 2 + ROUNDING || angle <= -Math.PI / 2 + ROUNDING ? [line[1], line[0]] : line;
}

export function angleOf([[x, y], [u, v]]: FlatLine): number {
  return Math.atan2(v - y, u - x);
}

/** A text along a line at a share of its way, its foot so far to the line's left, mm. */
export function textAlong(
  text: string,
  line: FlatLine,
  { out, height, share }: { readonly out: number; readonly height: number; readonly share: number },
): Text[] {
  const [x, y] = between(line, share);
  const [dx, dy] = across(line, out);
  return [
    { kind: 'text', operation: 'label', x: x + dx, y: y + dy, height, angle: angleOf(line), anchor: 'middle', text },
  ];
}

/** Half-way between the tangent lines. */
export function middleLine(bend: Bend): FlatLine {
  const { base, leg } = bendLines(bend, { held: 'base', pulled: null });
  return lineBetween(base, leg, 0.5);
}

/** The line that share of the way from one line to another that runs the same way. */
export function lineBetween(a: FlatLine, b: FlatLine, share: number): FlatLine {
  return [between([a[0], b[0]], share), between([a[1], b[1]], share)];
}
