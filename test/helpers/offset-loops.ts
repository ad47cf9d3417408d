import fc from 'fast-check';
import type { Vertex } from '../../src/base/drawing';

/** Corners as [x, y] or [x, y, bulge]. */
export const loop = (...corners: readonly (readonly [number, number, number?])[]): Vertex[] =>
  corners.map(([x, y, bulge = 0]) => ({ x, y, bulge }));

/** The same loop run the other way round. */
export function backwards(vertices: readonly Vertex[]): Vertex[] {
  return vertices
    .map((vertex, index) => ({ x: vertex.x, y: vertex.y, bulge: 0 - (vertices.at(index - 1)?.bulge ?? NaN) }))
    .reverse();
}

/** A half-disc, round edge up, with tabs `depth` mm deep behind its diameter, each from one place along it to another. */
export function halfDisc(radius: number, depth: number, tabs: readonly (readonly [number, number])[]): Vertex[] {
  return loop(
    [radius, 0, 1],
    [-radius, 0],
    ...tabs.flatMap(
      ([from, to]) =>
        [
          [from, 0],
          [from, -depth],
          [to, -depth],
          [to, 0],
        ] as [number, number][],
    ),
  );
}

/** A board of two heights with a notch `depth` mm deep and `width` mm wide in the middle of either end. */
export function notchedBoard(
  length: number,
  low: number,
  high: number,
  { depth, width }: { readonly depth: number; readonly width: number },
): Vertex[] {
  return loop(
    [0, 0],
    [length, 0],
    [length, (high - width) / 2],
    [length - depth, (high - width) / 2],
    [length - depth, (high + width) / 2],
    [length, (high + width) / 2],
    [length, high],
    [0, low],
    [0, (low + width) / 2],
    [depth, (low + width) / 2],
    [depth, (low - width) / 2],
    [0, (low - width) / 2],
  );
}

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const halfDiscs = fc
  .tuple(mm(12, 40), mm(0.5, 6), fc.array(fc.tuple(mm(0.4, 1), mm(0.1, 0.9)), { maxLength: 3 }))
  .map(([radius, depth, tabs]) => {
    const pitch = (2 * radius) / (tabs.length + 1);
    return halfDisc(
      radius,
      depth,
      tabs.map(
        ([place, width], index) =>
          [-radius + (index + place) * pitch, -radius + (index + place + width * 0.55) * pitch] as const,
      ),
    );
  });

const notchedBoards = fc
  .tuple(mm(20, 60), mm(8, 20), mm(8, 20), mm(0.5, 8), mm(0.5, 7))
  .map(([length, low, high, depth, width]) => notchedBoard(length, low, high, { depth, width }));

const rectangles = fc
  .tuple(mm(1, 50), mm(1, 50))
  .map(([width, height]) => loop([0, 0], [width, 0], [width, height], [0, height]));

const angles = fc
  .tuple(mm(5, 40), mm(5, 40), mm(0.1, 0.9), mm(0.1, 0.9))
  .map(([width, height, across, up]) =>
    loop(
      [0, 0],
      [width, 0],
      [width, height * up],
      [width * across, height * up],
      [width * across, height],
      [0, height],
    ),
  );

/** Star-shaped about the origin, with arcs both ways. */
const stars = fc
  .array(fc.tuple(mm(8, 30), fc.oneof(fc.constant(0), mm(-0.35, 0.6))), { minLength: 3, maxLength: 8 })
  .map((corners) =>
    corners.map(([radius, bulge], index) => ({
      x: radius * Math.cos((2 * Math.PI * index) / corners.length),
      y: radius * Math.sin((2 * Math.PI * index) / corners.length),
      bulge,
    })),
  );

/** Two discs and a neck between them: they part when they shrink. */
const dumbbells = fc
  .tuple(mm(4, 12), mm(4, 12), mm(0.5, 6), mm(2, 20), mm(-0.3, 0.3))
  .map(([right, left, neck, length, bulge]) => {
    const half = Math.min(neck, right, left) / 2;
    const round = (radius: number): number => Math.tan((2 * Math.PI - 2 * Math.asin(half / radius)) / 4);
    return loop([0, -half, bulge], [length, -half, round(right)], [length, half, -bulge / 2], [0, half, round(left)]);
  });

/** Rings open by an angle: they close when they grow. */
const openRings = fc.tuple(mm(4, 12), mm(1, 6), mm(0.05, 2)).map(([radius, width, gap]) => {
  const [cosine, sine, bulge, outer] = [
    Math.cos(gap / 2),
    Math.sin(gap / 2),
    Math.tan((2 * Math.PI - gap) / 4),
    radius + width,
  ];
  return loop(
    [outer * cosine, outer * sine, bulge],
    [outer * cosine, -outer * sine],
    [radius * cosine, -radius * sine, -bulge],
    [radius * cosine, radius * sine],
  );
});

const anyhow = (outlines: fc.Arbitrary<Vertex[]>): fc.Arbitrary<Vertex[]> =>
  fc.tuple(outlines, fc.boolean(), mm(0, 7)).map(([vertices, back, turn]) => {
    const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
    const turned = vertices.map(({ x, y, bulge }) => ({ x: x * cosine - y * sine, y: x * sine + y * cosine, bulge }));
    return back ? backwards(turned) : turned;
  });

/** Outlines as the parts have them, and others: half-discs with tabs, notched boards, rectangles, angles, stars of arcs; either way round, turned anyhow. */
export const anyOutline: fc.Arbitrary<Vertex[]> = anyhow(fc.oneof(halfDiscs, notchedBoards, rectangles, angles, stars));

/** Outlines whose offsets part or close: dumbbells and open rings; either way round, turned anyhow. */
export const splittingOutline: fc.Arbitrary<Vertex[]> = anyhow(fc.oneof(dumbbells, openRings));
