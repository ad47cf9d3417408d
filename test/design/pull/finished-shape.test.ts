import { describe, expect, it } from 'vitest';
import type { LegPiece } from '../../../src/design/bend/bend-plan';
import { BOW_FROM, finishedShape } from '../../../src/design/pull/finished-shape';

/** What came out against one round bend, by plane geometry: kinks, chords and the nearest of many places on the ideal bend. */

const straight = (length: number): LegPiece => ({ length, loaded: 0, stays: 0 });
const kink = (stays: number): LegPiece => ({ length: 0, loaded: 0, stays });
const round = (length: number, stays: number): LegPiece => ({ length, loaded: 0, stays });

type Place = Readonly<Record<'x' | 'y', number>>;

function fromStretch({ x, y }: Place, from: Place, to: Place): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
}

/** Distance to the ideal bend: legs of 400 mm and an arc of radius 40 mm in 500 chords. */
function fromIdeal(place: Place, angle: number): number {
  const arc = Array.from({ length: 501 }, (_, step) => {
    const turned = (angle * step) / 500;
    return { x: 40 * Math.sin(turned), y: 40 * (1 - Math.cos(turned)) };
  });
  const [end] = arc.slice(-1);
  if (!end) throw new Error('an arc of no places');
  const places = [{ x: -400, y: 0 }, ...arc, { x: end.x + 400 * Math.cos(angle), y: end.y + 400 * Math.sin(angle) }];
  return Math.min(...places.slice(1).map((to, index) => fromStretch(place, places[index] ?? to, to)));
}

describe('the departure from the round bend', () => {
  // Short, square, obtuse, and all but folded back, where the free leg's end lies beyond half a turn about the arc's middle.
  it.each([0.6, Math.PI / 2, 2.4, 2.9])('over %f radians is that of the place furthest from it', (angle) => {
    const free = [round(20, 0.15), round(30, 0.05), straight(100)];
    const held = [round(15, 0.08), straight(85)];
    const { line, departure } = finishedShape({ angle, radius: 40, free, held });
    const furthest = Math.max(...line.map((place) => fromIdeal(place, angle)));
    expect(departure).toBeCloseTo(furthest, 3);
    expect(departure).toBeGreaterThan(0.2);
  });

  it('of a kink at the take-off: the shape goes ahead by ρ(1 − cos δ)/sin α, by a sine of a tenth where the leg is all but folded back', () => {
    const shiftOf = (angle: number): number =>
      -finishedShape({ angle, radius: 40, free: [kink(0.2), straight(100)], held: [] }).early;
    const off = 40 * (1 - Math.cos(0.2));
    expect(shiftOf(2.4)).toBeCloseTo(off / Math.sin(2.4), 9);
    expect(shiftOf(3.1)).toBeCloseTo(off / 0.1, 9);
    // An angle as small needs no such care: its legs are all but one line.
    expect(shiftOf(0.05)).toBeCloseTo((40 * (1 - Math.cos(0.2))) / Math.sin(0.05), 9);
  });
});

describe('the leg’s bow against a straightedge from 30 mm past the take-off to the hands', () => {
  const bowOf = (free: readonly LegPiece[]): number =>
    finishedShape({ angle: 1, radius: 40, free, held: [straight(100)] }).bow;

  it('of a leg kinked at 50 mm: the height of a triangle of 20 and 60 mm', () => {
    expect(BOW_FROM).toBe(30);
    const chord = Math.sqrt(20 ** 2 + 60 ** 2 + 2 * 20 * 60 * Math.cos(0.1));
    const height = (20 * 60 * Math.sin(0.1)) / chord;
    expect(bowOf([straight(50), kink(0.1), straight(60)])).toBeCloseTo(height, 9);
    // The same where a piece ends just at 30 mm, and bent the other way.
    expect(bowOf([straight(30), straight(20), kink(-0.1), straight(60)])).toBeCloseTo(height, 9);
  });

  it('is none where the kink lies nearer, or the leg ends there', () => {
    expect(bowOf([straight(20), kink(0.3), straight(100)])).toBeCloseTo(0, 9);
    expect(bowOf([kink(0.3), straight(10), straight(20)])).toBe(0);
    expect(bowOf([straight(25)])).toBe(0);
  });
});
