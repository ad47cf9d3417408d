import { at } from '../../base/at';
import { centreOf, dot, normalOf, subtract, turnedBy, type Motion, type Point3 } from './vector';

/** Flat facets that stand for a half round, or for the whole bend of the sheet: no printed picture shows the chords. */
export const CURVE_FACETS = 24;

/** What a body is, for those who colour it. */
export type BodyKind = 'spine' | 'station' | 'backing' | 'sheet' | 'yoke' | 'clamp' | 'plank';

/** A side of a face: a sharp edge, always drawn, or the outward normal of the smooth neighbour, drawn only where the surface turns out of sight. */
export type Edge = 'sharp' | Point3;

/** A line drawn on a face. */
export interface FaceMark {
  readonly kind: 'clamp-hole' | 'screw-head' | 'tab' | 'tangent' | 'trim';
  readonly name: string;
  readonly closed: boolean;
  readonly points: readonly Point3[];
}

/** A flat polygon; `edges[i]` runs from `outline[i]` to the next corner. */
export interface Face {
  readonly outline: readonly Point3[];
  /** Outward, length 1. */
  readonly normal: Point3;
  readonly edges: readonly Edge[];
  readonly marks: readonly FaceMark[];
}

/** A convex solid, or one flat piece of the sheet, which is seen from both sides. */
export interface Body {
  readonly kind: BodyKind;
  readonly name: string;
  /** Whether it is a piece of sheet: its one face shows both sides, `normal` pointing away from the form. */
  readonly open: boolean;
  readonly faces: readonly Face[];
}

/**
 * The convex solid between two equal outlines. Corners listed in `smooth` belong to a curve: the edges that join the outlines
 * there are not drawn. `marks` go on the faces of the low and the high outline.
 */
export function prism(
  kind: BodyKind,
  name: string,
  [low, high]: readonly [readonly Point3[], readonly Point3[]],
  {
    smooth = new Set(),
    marks = [[], []],
  }: { smooth?: ReadonlySet<number>; marks?: readonly [readonly FaceMark[], readonly FaceMark[]] } = {},
): Body {
  const middle = centreOf([...low, ...high]);
  const corner = (points: readonly Point3[], index: number): Point3 =>
    at(points, (index + points.length) % points.length);
  const sides = low.map((from, index) => [from, corner(low, index + 1), corner(high, index + 1), corner(high, index)]);
  const outward = sides.map((side) => outwardNormal(side, middle));
  const smoothTo = (at: number, neighbour: number): Edge =>
    smooth.has((at + low.length) % low.length) ? corner(outward, neighbour) : 'sharp';
  const cap = (outline: readonly Point3[], drawn: readonly FaceMark[]): Face => ({
    outline,
    normal: outwardNormal(outline, middle),
    edges: outline.map(() => 'sharp'),
    marks: drawn,
  });
  return {
    kind,
    name,
    open: false,
    faces: [
      cap(low, marks[0]),
      cap(high, marks[1]),
      ...sides.map((outline, index): Face => ({
        outline,
        normal: at(outward, index),
        edges: ['sharp', smoothTo(index + 1, index + 1), 'sharp', smoothTo(index, index - 1)],
        marks: [],
      })),
    ],
  };
}

/** The body moved as a whole. */
export function moveBody(body: Body, motion: Motion): Body {
  const faces = body.faces.map(({ outline, normal, edges, marks }): Face => ({
    outline: outline.map(motion),
    normal: turnedBy(motion, normal),
    edges: edges.map((edge) => (edge === 'sharp' ? edge : turnedBy(motion, edge))),
    marks: marks.map((mark) => ({ ...mark, points: mark.points.map(motion) })),
  }));
  return { ...body, faces };
}

/** Square to the polygon, pointing away from `middle`. */
function outwardNormal(outline: readonly Point3[], middle: Point3): Point3 {
  const normal = normalOf(outline);
  const [corner] = outline;
  if (!corner || dot(normal, subtract(corner, middle)) >= 0) return normal;
  return [-normal[0], -normal[1], -normal[2]];
}
