import { describe, expect, it } from 'vitest';
import {
  isBetterTurned,
  kept,
  moved,
  pinched,
  whole,
  zoomed,
  type Place,
  type Point,
} from '../../../src/page/drawing/pan';

const FRAME = { width: 400, height: 300 };
const PLACE: Place = { scale: 2, x: 30, y: -40 };
/** Where a point of the drawing, mm, lies on the screen, px: the definition of a place. */
const seen = ({ scale, x, y }: Place, [across, down]: Point): Point => [x + scale * across, y + scale * down];
/** The point of the drawing under a point of the screen. */
const under = ({ scale, x, y }: Place, [left, top]: Point): Point => [(left - x) / scale, (top - y) / scale];

describe('a drawing on the screen', () => {
  it('shown whole lies inside the frame, in its middle, touching the clear border one way', () => {
    const place = whole({ width: 100, height: 20 }, FRAME);
    const [left, top] = seen(place, [0, 0]);
    const [right, bottom] = seen(place, [100, 20]);
    expect(left).toBeCloseTo(12);
    expect(FRAME.width - right).toBeCloseTo(left);
    expect(FRAME.height - bottom).toBeCloseTo(top);
    expect(top).toBeGreaterThan(12);
  });

  it('drawn nearer keeps what lies under the finger there', () => {
    const at: Point = [123, 45];
    const near = zoomed(PLACE, 1.7, at);
    expect(near.scale).toBeCloseTo(3.4);
    expect(seen(near, under(PLACE, at))[0]).toBeCloseTo(at[0]);
    expect(seen(near, under(PLACE, at))[1]).toBeCloseTo(at[1]);
  });

  it('pinched keeps each of the two points under its finger', () => {
    const before: [Point, Point] = [
      [100, 100],
      [200, 100],
    ];
    // Apart to the double and moved on, not turned: both points can stay under their fingers.
    const after: [Point, Point] = [
      [80, 130],
      [280, 130],
    ];
    const place = pinched(PLACE, before, after);
    for (const finger of [0, 1] as const) {
      const [x, y] = seen(place, under(PLACE, before[finger]));
      expect(x).toBeCloseTo(after[finger][0]);
      expect(y).toBeCloseTo(after[finger][1]);
    }
  });

  it('two fingers on one point move it and do not make it vanish', () => {
    const both: [Point, Point] = [
      [50, 50],
      [50, 50],
    ];
    expect(pinched(PLACE, both, both)).toEqual(PLACE);
  });

  it.each<Point>([
    [9e9, 9e9],
    [-9e9, -9e9],
    [9e9, -9e9],
  ])('moved far aside (%d, %d) it stays in sight', (...by) => {
    const size = { width: 100, height: 20 };
    const place = kept(moved(PLACE, by), size, FRAME);
    const [[left, top], [right, bottom]] = [seen(place, [0, 0]), seen(place, [100, 20])];
    expect(Math.min(right, FRAME.width) - Math.max(left, 0)).toBeGreaterThan(10);
    expect(Math.min(bottom, FRAME.height) - Math.max(top, 0)).toBeGreaterThan(5);
  });

  it.each([1e-9, 1e9])('drawn near or far by %d it keeps a scale one can find back from', (factor) => {
    const { scale } = kept(zoomed(PLACE, factor, [0, 0]), { width: 100, height: 20 }, FRAME);
    expect(scale).toBeGreaterThan(1);
    expect(scale).toBeLessThan(100);
  });

  it('a long spine is turned on a phone held upright, a square part is not, and nothing is on a desk', () => {
    const phone = { width: 390, height: 650 };
    expect(isBetterTurned({ width: 190, height: 60 }, phone)).toBe(true);
    expect(isBetterTurned({ width: 90, height: 80 }, phone)).toBe(false);
    expect(isBetterTurned({ width: 190, height: 60 }, { width: 1300, height: 700 })).toBe(false);
  });
});
