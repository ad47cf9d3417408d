import { at } from '../../base/at';
import { loopArea } from '../../base/area';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import { flatAt, foldPanel, toSpace, type Bend, type Folded, type Panel, type Piece } from '../../panel';
import { loopLength } from '../../base/way';
import { chordsRound, MESH_CHORD_ERROR } from './chords';
import { MeshBuilder, type Mesh } from './mesh';
import { CornerIndex } from './corner-index';
import { partedBy, regionsOf, ringsOf, triangulate, withCorners, type Region } from './region';

const SHEET_COLOUR = '#9fb2c2';
/** Rulings are drawn on so far past a zone's ends before it is parted along them, mm. */
const PAST = 1;

interface FlatPiece {
  readonly piece: Piece;
  readonly regions: readonly Region[];
}

/**
 * The panel, let go and trimmed, as one solid of the sheet's thickness, mm, in the space of its base (z out of the marked face); or folded as given. Zones are
 * parted along their rulings, which stay straight. Where a corner's metal is left whole between its root hole and the base, the solid is open along
 * the line that the metal is dressed into.
 */
export function panelMesh(panel: Panel, folded: Folded = foldPanel(panel)): Mesh {
  const triangles = flatTriangles(panel);
  const builder = new MeshBuilder();
  const half = panel.thickness / 2;
  const corner = (piece: Piece, { key, place }: Snapped, up: number): number =>
    builder.corner(`${up > 0 ? 'up' : 'down'} ${key}`, () => toSpace(folded, piece, { flat: place, up }));
  const edges = new Set(triangles.flatMap(({ corners }) => sidesOf(corners).map(([a, b]) => `${a.key} ${b.key}`)));
  for (const { piece, corners } of triangles) {
    const [top, under] = [half, -half].map((up) => corners.map((one) => corner(piece, one, up)));
    builder.triangle(...threeOf(top));
    const [a, b, c] = threeOf(under);
    builder.triangle(a, c, b);
    for (const [from, to] of sidesOf(corners)) {
      if (edges.has(`${to.key} ${from.key}`)) continue;
      const place = (one: Snapped, up: number): number => corner(piece, one, up);
      builder.quad(place(from, -half), place(to, -half), place(to, half), place(from, half));
    }
  }
  return builder.build('panel', SHEET_COLOUR);
}

function threeOf(indexes: readonly number[] | undefined): [number, number, number] {
  const [a = NaN, b = NaN, c = NaN] = indexes ?? [];
  return [a, b, c];
}

/** A place of the flat that stands for all within rounding of it. */
interface Snapped {
  readonly key: number;
  readonly place: Point;
}

interface Triangle {
  readonly piece: Piece;
  /** Counter-clockwise on the marked face. */
  readonly corners: readonly [Snapped, Snapped, Snapped];
}

function sidesOf([a, b, c]: Triangle['corners']): (readonly [Snapped, Snapped])[] {
  return [
    [a, b],
    [b, c],
    [c, a],
  ];
}

/** The flat in triangles, each on one piece, corner to corner. */
function flatTriangles(panel: Panel): Triangle[] {
  const snap = snapper();
  const snapped = (ring: readonly Point[]): Point[] => tidied(ring.map((place) => snap(place).place));
  const pieces = flatPieces(panel).map(({ piece, regions }): FlatPiece => ({
    piece,
    regions: regions
      .map(({ outline, holes }) => ({ outline: snapped(outline), holes: holes.map(snapped).filter(isWide) }))
      .filter(({ outline }) => isWide(outline)),
  }));
  const corners = new CornerIndex(pieces.flatMap(({ regions }) => regions.flatMap(ringsOf)).flat());
  return pieces.flatMap(({ piece, regions }) =>
    withCorners(regions, corners)
      .flatMap(triangulate)
      .map(([a, b, c]): Triangle => ({ piece, corners: [snap(a), snap(b), snap(c)] }))
      .filter(({ corners: [a, b, c] }) => a !== b && b !== c && c !== a),
  );
}

/** Without corners that stand on the one before. */
function tidied(ring: readonly Point[]): Point[] {
  return ring.filter((place, index) => place !== ring.at(index - 1));
}

/** Whether a ring is more than what rounding leaves between two lines that should be one. */
function isWide(ring: readonly Point[]): boolean {
  const vertices = ring.map(([x, y]): Vertex => ({ x, y, bulge: 0 }));
  return Math.abs(loopArea(vertices)) > SAME * loopLength(vertices);
}

/** Places nearer than this are one, mm: what rounding may part. */
const SAME = 5e-6;

function snapper(): (place: Point) => Snapped {
  const cells = new Map<string, Snapped[]>();
  const cellOf = (value: number): number => Math.round(value / (2 * SAME));
  let count = 0;
  return (place) => {
    const [column, row] = [cellOf(place[0]), cellOf(place[1])];
    for (const dx of [0, -1, 1]) {
      for (const dy of [0, -1, 1]) {
        const near = cells.get(`${column + dx} ${row + dy}`);
        const found = near?.find(({ place: [x, y] }) => Math.hypot(x - place[0], y - place[1]) < SAME);
        if (found) return found;
      }
    }
    const fresh = { key: count++, place };
    const cell = `${column} ${row}`;
    cells.set(cell, [...(cells.get(cell) ?? []), fresh]);
    return fresh;
  };
}

/** Faces and strips of zones, holes and root holes taken out. */
function flatPieces(panel: Panel): FlatPiece[] {
  const voids = [
    ...panel.holes.map(flattened),
    ...panel.corners.flatMap(({ root }) => (root ? [roundHole(root)] : [])),
  ];
  const clear = (regions: readonly Region[]): Region[] =>
    voids.length > 0 ? partedBy(regions, voids).outside : [...regions];
  return [
    ...panel.faces.map(({ outline }, face): FlatPiece => ({
      piece: { kind: 'face', face },
      regions: clear(regionsOf([flattened(outline)])),
    })),
    ...panel.bends.flatMap((bend, index) =>
      strips(bend).map((regions): FlatPiece => ({ piece: { kind: 'zone', bend: index }, regions: clear(regions) })),
    ),
  ];
}

function flattened(loop: readonly Vertex[]): Point[] {
  return thinned(flattenLoop(loop, MESH_CHORD_ERROR));
}

/** Corners between sides shorter than this are left out, mm: a row of them is all but straight, which no triangles are told apart on. */
const SHORT = 0.05;

function thinned(ring: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const [index, place] of ring.entries()) {
    const next = at(ring, (index + 1) % ring.length);
    const before = kept.at(-1) ?? at(ring, -1);
    if (distance(before, place) >= SHORT || distance(place, next) >= SHORT) kept.push(place);
  }
  return kept;
}

function distance([x, y]: Point, [u, v]: Point): number {
  return Math.hypot(u - x, v - y);
}

/** Counter-clockwise, as a loop to take out. */
function roundHole({ at: [x, y], diameter }: { readonly at: Point; readonly diameter: number }): Point[] {
  const radius = diameter / 2;
  return flattened([
    { x: x - radius, y, bulge: 1 },
    { x: x + radius, y, bulge: 1 },
  ]);
}

/** A zone parted along rulings so near that the chords between them stray by no more than other curves' do. */
function strips(bend: Bend): Region[][] {
  const { finished: cone, wrap, thickness, run } = bend;
  const count = chordsRound(cone, thickness, wrap);
  const zone = regionsOf([flattened(bend.zone)]);
  const [from, to] = [run.from - PAST, run.to + PAST];
  return Array.from({ length: count }, (_, index) => {
    const [low, high] = [(wrap * index) / count, (wrap * (index + 1)) / count];
    const corners = [
      { x: from, wrap: low },
      { x: to, wrap: low },
      { x: to, wrap: high },
      { x: from, wrap: high },
    ];
    return partedBy(zone, [corners.map((place) => flatAt(bend, place))]).inside;
  });
}
