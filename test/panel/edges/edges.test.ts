import { describe, expect, it } from 'vitest';
import { edgeWork } from '../../../src/panel/edges/edges';
import { outlineOf } from '../../../src/panel/trace/outline';

describe('edges to cap and to deburr', () => {
  // 300 × 200, one corner rounded with 40, a hole of 10.
  const plain = outlineOf(
    [
      { x: 0, y: 0, bulge: 0 },
      { x: 260, y: 0, bulge: Math.tan(Math.PI / 8) },
      { x: 300, y: 40, bulge: 0 },
      { x: 300, y: 200, bulge: 0 },
      { x: 0, y: 200, bulge: 0 },
    ],
    [
      [
        { x: 95, y: 100, bulge: 1 },
        { x: 105, y: 100, bulge: 1 },
      ],
    ],
  );
  const outline = { ...plain, edges: ['front', 'front', null, 'back', null] };

  it('strip along the named edges, the tightest arc it follows, all edges to deburr', () => {
    const { value } = edgeWork(outline, ['front', 'back'], 'edges.cap');
    expect(value?.caps).toEqual([
      { edge: 'front', length: expect.closeTo(260 + 20 * Math.PI, 9) as unknown },
      { edge: 'back', length: 300 },
    ]);
    expect(value?.capLength).toBeCloseTo(560 + 20 * Math.PI, 9);
    expect(value?.tightest).toBeCloseTo(40, 9);
    expect(value?.deburr).toBeCloseTo(260 + 20 * Math.PI + 160 + 300 + 200 + 10 * Math.PI, 9);
    expect(edgeWork(outline, ['back'], 'edges.cap').value?.tightest).toBeNull();
  });

  it('a name that is no edge is told with its place', () => {
    const { value, findings } = edgeWork(outline, ['front', 'side'], 'edges.cap');
    expect(value).toBeNull();
    expect(findings.map(({ code, path }) => `${code} ${path}`)).toEqual(['no-such-edge edges.cap[1]']);
  });
});
