import { expect, it } from 'vitest';
import { triangulate, type Triangle } from '../../../src/output/solids/region';

it('a nearly straight row of sides as short as corners are told apart by is triangulated, and ends', () => {
  // Millionths of a mm along and aside: several lie within three of them of one another's sides.
  const row = [[3, 0], [6, 4], [9, 4], [12, 1], [18, 0], [27, 0], [36, 1], [39, 0]].map(([x = 0, y = 0]) => [x / 1e6, y / 1e6] as const); // prettier-ignore
  const triangles = triangulate({ outline: [[0, 0], ...row, [10, 0], [10, 10], [0, 10]], holes: [] });
  const area = ([a, b, c]: Triangle): number => ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  expect(triangles.reduce((sum, one) => sum + area(one), 0)).toBeCloseTo(100, 3);
  expect(triangles.length).toBeLessThan(30);
});
