import { describe, expect, it } from 'vitest';
import { bulgeFromSweep } from '../../src/base/arc';
import type { Text, Vertex } from '../../src/base/drawing';
import { wayAlong } from '../../src/base/way';

const corner = (x: number, y: number, bulge = 0): Vertex => ({ x, y, bulge });

describe('the way along a shape', () => {
  it('of a square is its sides, of a half-disc its arc and its diameter, of a circle its round', () => {
    const square = [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)];
    expect(wayAlong({ kind: 'loop', operation: 'outline', vertices: square })).toBeCloseTo(40, 9);
    const half = [corner(-20, 0), corner(20, 0, bulgeFromSweep(Math.PI))];
    expect(wayAlong({ kind: 'loop', operation: 'outline', vertices: half })).toBeCloseTo(40 + 20 * Math.PI, 9);
    expect(wayAlong({ kind: 'circle', operation: 'hole', x: 3, y: 4, radius: 5 })).toBeCloseTo(10 * Math.PI, 9);
  });

  it('of a mark or a stroke is its length, of words nothing', () => {
    expect(wayAlong({ kind: 'line', operation: 'mark', from: [0, 0], to: [3, 4] })).toBeCloseTo(5, 9);
    const points = [
      [0, 0],
      [3, 4],
      [3, 10],
    ] as const;
    expect(wayAlong({ kind: 'stroke', operation: 'label', points })).toBeCloseTo(11, 9);
    const text: Text = {
      kind: 'text',
      operation: 'label',
      x: 0,
      y: 0,
      height: 5,
      angle: 0,
      anchor: 'start',
      text: 'S1',
    };
    expect(wayAlong(text)).toBe(0);
  });
});
