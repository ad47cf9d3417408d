import * as z from 'zod/mini';
import type { Point } from '../../base/polygon';
import type { Path } from '../path';
import type { Reader } from '../reader';
import { lengthShape } from './keyed';

/** How far from the origin a place may lie, mm. */
const FAR = { min: -10_000, max: 10_000 };

/** A place as it may be written: `[22, 9]`. */
export const placeShape = z.tuple([lengthShape, lengthShape]);

/** What stands in a list; nothing where there is none. */
export function entriesAt(reader: Reader, path: Path): readonly unknown[] {
  const value = reader.at(path);
  return Array.isArray(value) ? value : [];
}

/** The place at a path, mm; not a number where it is wrong. */
export function placeAt(reader: Reader, path: Path): Point {
  const [x, y] = [0, 1].map((axis) => reader.length([...path, axis], FAR) ?? NaN);
  return [x ?? NaN, y ?? NaN];
}

/** The places of a list. */
export function placesAt(reader: Reader, path: Path): Point[] {
  return entriesAt(reader, path).map((_, index) => placeAt(reader, [...path, index]));
}
