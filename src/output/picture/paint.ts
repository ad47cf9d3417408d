import type { Model, Tag } from './model';
import { paintOrder } from './paint-order';
import type { Body, BodyKind, Edge, Face, FaceMark } from './solid';
import { cross, dot, unit, type Point3 } from './vector';
import { ROUNDING } from '../../base/tolerance';

/** A place on the picture, y down; mm on paper, or pixels. */
export type PaperPoint = readonly [number, number];

export type Ink = 'edge' | 'hole' | 'screw' | 'scribe' | 'pull' | 'leader';

/** What a picture is made of, in the order it is painted. */
export type PictureShape =
  | {
      readonly kind: 'fill';
      readonly points: readonly PaperPoint[];
      readonly body: BodyKind | 'sheet-outside';
      readonly shade: number;
    }
  | { readonly kind: 'stroke'; readonly points: readonly PaperPoint[]; readonly ink: Ink; readonly name: string }
  | {
      readonly kind: 'spot';
      readonly points: readonly PaperPoint[];
      readonly ink: 'hole' | 'screw' | 'pull';
      readonly name: string;
    }
  | {
      readonly kind: 'word';
      readonly at: PaperPoint;
      readonly text: string;
      readonly size: number;
      readonly strong: boolean;
      readonly tag: Tag['kind'] | 'pull';
    };

/** From a point of the model to its place on the picture. */
export type OnPaper = (point: Point3) => PaperPoint;

/** Where a point appears from `eye`, toward the viewer, length 1: right and up on the picture plane, true size. Not valid from straight above. */
export function project(point: Point3, eye: Point3): PaperPoint {
  const right = unit(cross([0, 0, 1], eye));
  const up = cross(eye, right);
  return [dot(point, right), dot(point, up)];
}

/** The bodies, hidden faces left out, nearer ones painted over farther ones. */
export function paintBodies(
  { bodies, chordError }: Pick<Model, 'bodies' | 'chordError'>,
  eye: Point3,
  onPaper: OnPaper,
): PictureShape[] {
  return paintOrder(bodies, eye, chordError).flatMap((body) => paintBody(body, eye, onPaper));
}

function paintBody(body: Body, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const seen = body.faces.filter((face) => body.open || dot(face.normal, eye) > 0);
  return [
    ...seen.flatMap((face) => paintFace(body, face, eye, onPaper)),
    ...seen.flatMap((face) => paintEdges(body, face, eye, onPaper)),
  ];
}

/** From above and from the viewer's left, so that the three sides of a box differ. */
const LIGHT = { up: 0.75, right: -0.25, toward: 0.6 };

function paintFace(body: Body, face: Face, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const facing = dot(face.normal, eye) > 0;
  const [x, y] = project(face.normal, eye);
  const sign = facing ? 1 : -1;
  const shade = Math.max(
    0,
    Math.min(1, 0.35 + 0.65 * sign * (LIGHT.right * x + LIGHT.up * y + LIGHT.toward * dot(face.normal, eye))),
  );
  const kind = body.kind === 'sheet' && facing ? 'sheet-outside' : body.kind;
  return [
    { kind: 'fill', points: face.outline.map(onPaper), body: kind, shade },
    ...face.marks.map((mark) => paintMark(mark, onPaper)),
  ];
}

function paintMark({ kind, name, closed, points }: FaceMark, onPaper: OnPaper): PictureShape {
  const drawn = points.map(onPaper);
  if (closed) return { kind: 'spot', points: drawn, ink: kind === 'clamp-hole' ? 'hole' : 'screw', name };
  return { kind: 'stroke', points: drawn, ink: 'scribe', name };
}

/** Sharp edges, and smooth ones where the surface turns out of sight there. */
function paintEdges(body: Body, face: Face, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const facing = dot(face.normal, eye) > 0;
  const isDrawn = (edge: Edge): boolean => edge === 'sharp' || dot(edge, eye) > 0 !== facing;
  return face.outline.flatMap((corner, index): PictureShape[] => {
    const next = face.outline[(index + 1) % face.outline.length] ?? corner;
    return isDrawn(face.edges[index] ?? 'sharp')
      ? [{ kind: 'stroke', points: [corner, next].map(onPaper), ink: 'edge', name: body.name }]
      : [];
  });
}

/** A stretch of the pull, as shares of the way to the chosen wrap. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The points of a path in a stretch of it. */
export function stretchOf(path: readonly Point3[], { from, to }: Stretch): Point3[] {
  const last = path.length - 1;
  return path.filter((_, index) => index >= from * last - ROUNDING && index <= to * last + ROUNDING);
}

/** An arrow along `path` with a head of this length. None where the path is no longer than that. */
export function paintArrow(path: readonly PaperPoint[], head: number): PictureShape[] {
  const tip = path.at(-1);
  const tail = path.findLast(([x, y]) => tip && Math.hypot(tip[0] - x, tip[1] - y) > head);
  if (!tip || !tail) return [];
  const along = Math.atan2(tip[1] - tail[1], tip[0] - tail[0]);
  const wing = (side: number): PaperPoint => [
    tip[0] - head * Math.cos(along + side * 0.38),
    tip[1] - head * Math.sin(along + side * 0.38),
  ];
  return [
    { kind: 'stroke', points: path, ink: 'pull', name: 'pull' },
    { kind: 'spot', points: [tip, wing(1), wing(-1)], ink: 'pull', name: 'pull' },
  ];
}
