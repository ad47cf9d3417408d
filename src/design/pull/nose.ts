import { at } from '../../base/at';
import type { Point } from '../../base/polygon';
import { rootBetween } from '../../base/solve';
import type { YokeStock } from '../../tables/schema';
import type { ShopRules } from '../../tables/tables';
import type { Wedge } from '../bend/bend-plan';
import type { NosePose } from './grip-poses';

/** A slice of the form square to the rulings with the sheet round it: mm, radians. */
export interface NoseSlice {
  /** Of the sheet's middle on the disc, and the sheet's thickness. */
  readonly mid: number;
  readonly sheet: number;
  /** From the held tangent line to the take-off. */
  readonly wrap: number;
}

/** The wedge a flange is ground to by the shop's rules. */
export function wedgeOf(
  { thickness }: Pick<YokeStock, 'thickness'>,
  { noseEdge, noseSlope }: Pick<ShopRules, 'noseEdge' | 'noseSlope'>,
): Wedge {
  const edge = Math.min(noseEdge, thickness);
  return { edge, back: noseSlope * (thickness - edge) };
}

/** The two corners of a wedge's upper side: out from the nose line and up from the inside face, mm. */
export function wedgeTop({ thickness }: Pick<YokeStock, 'thickness'>, { edge, back }: Wedge): readonly [Point, Point] {
  return [
    [0, edge],
    [back, thickness],
  ];
}

/** Outline of an angle lying on the inside face, from its edge at the nose line, likewise: its flange a wedge there, the other flange up at the far edge. */
export function noseOutline(nose: Pick<YokeStock, 'width' | 'depth' | 'thickness'>, wedge: Wedge): Point[] {
  const { width, depth, thickness } = nose;
  const up: Point[] = [
    [width - thickness, thickness],
    [width - thickness, depth],
    [width, depth],
    [width, 0],
  ];
  return [[0, 0], ...wedgeTop(nose, wedge), ...up];
}

/**
 * How far a nose stays clear of the form, mm, below nothing where it comes in: the sheet in its pose there while pulled, the yoke turned `inside`
 * (radians) further than the sheet. The form: the stations' half-discs, and spine and backing stations behind their centres, no higher than they.
 */
export function noseClears(
  { out, up: rises, turn }: NosePose,
  nose: readonly Point[],
  { mid, sheet, wrap }: NoseSlice,
  inside = 0,
): number {
  // From the disc's centre, seen along the leg at the take-off and up from it.
  const up = rises - mid;
  const [startX, startY] = [out - (sheet / 2) * Math.sin(turn), up + (sheet / 2) * Math.cos(turn)];
  const [cos, sin] = [Math.cos(wrap), Math.sin(wrap)];
  const [ahead, rise] = [Math.cos(turn + inside), Math.sin(turn + inside)];
  const placed = ([along, high]: Point): Point => {
    const x = startX + along * ahead - high * rise;
    const y = startY + along * rise + high * ahead;
    return [x * cos - y * sin, x * sin + y * cos];
  };
  let least = Infinity;
  let before = placed(at(nose, -1));
  for (const corner of nose) {
    const place = placed(corner);
    least = Math.min(least, offAxis(before, place));
    before = place;
  }
  return least - (mid - sheet / 2);
}

/** Least distance of a stretch from the half line that runs back from the disc's centre: the form is all within its radius of that. */
function offAxis([ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const along = dx * dx + dy * dy;
  const share = along === 0 ? 0 : Math.min(1, Math.max(0, -(ax * dx + ay * dy) / along));
  return Math.min(
    ax < 0 ? Math.abs(ay) : Math.hypot(ax, ay),
    bx < 0 ? Math.abs(by) : Math.hypot(bx, by),
    Math.hypot(ax + share * dx, ay + share * dy),
  );
}

/** Gaps are tried ever further out by this share, then narrowed to this share of themselves. */
const FURTHER = 1.25;
const CLOSE = 1e-5;

/**
 * The least gap from `from` to `to`, mm, at which a nose clears, by how far it does at a gap (null where no leg reaches so far); null where it
 * never does. The further out, the further it clears: the leg straightens as its moment falls.
 */
export function leastGap(clears: (gap: number) => number | null, from: number, to: number): number | null {
  let near = from;
  for (let gap = from; gap <= to; gap *= FURTHER) {
    const clear = clears(gap);
    if (clear === null) return null;
    if (clear >= 0) return gap === from ? gap : rootBetween((place) => clears(place) ?? -Infinity, near, gap, CLOSE);
    near = gap;
  }
  return null;
}

/** How far past the take-off a flange's edge clears a disc of this radius where the leg before it is straight, mm: √(R² − (R − s)²). A leg that bends needs more. */
export function straightGap(radius: number, thickness: number): number {
  return Math.sqrt(Math.max(0, radius ** 2 - Math.max(0, radius - thickness) ** 2));
}
