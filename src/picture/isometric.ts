import type { Body, BodyKind, Edge, Face, FaceMark } from './solid';
import type { Model, Tag } from './model';
import { paintOrder } from './paint-order';
import { cross, dot, unit, type Point3 } from './vector';

/** A place on the picture, mm on paper, y down. */
export type PaperPoint = readonly [number, number];

export type Ink = 'edge' | 'hole' | 'screw' | 'scribe' | 'pull' | 'leader';

/** What a picture is made of, in the order it is painted; mm on paper. */
export type PictureShape =
  | { readonly kind: 'fill'; readonly points: readonly PaperPoint[]; readonly body: BodyKind | 'sheet-outside'; readonly shade: number }
  | { readonly kind: 'stroke'; readonly points: readonly PaperPoint[]; readonly ink: Ink; readonly name: string }
  | { readonly kind: 'spot'; readonly points: readonly PaperPoint[]; readonly ink: 'hole' | 'screw' | 'pull'; readonly name: string }
  | { readonly kind: 'word'; readonly at: PaperPoint; readonly text: string; readonly size: number; readonly strong: boolean; readonly tag: Tag['kind'] | 'pull' };

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** mm on paper in one mm of the form (along a line square to the view). */
  readonly scale: number;
  readonly shapes: readonly PictureShape[];
}

/** The four isometric views from above: which end and which face is nearer. */
export interface View {
  readonly end: 'A' | 'B';
  readonly face: 'front' | 'back';
  /** The picture is made as large as fits, mm on paper. */
  readonly width: number;
  readonly height: number;
  /** What to name. */
  readonly tags: readonly Tag['kind'][];
  /** The stretch of the pull to show as an arrow, as shares of the way to the chosen wrap; null for none. */
  readonly arrow: { readonly from: number; readonly to: number } | null;
}

const WORD = 3;
const BORDER = 8;

/** Toward the viewer, length 1: all three axes equally slanted, which is what isometric means. */
export function eyeOf({ end, face }: Pick<View, 'end' | 'face'>): Point3 {
  return unit([end === 'A' ? -1 : 1, face === 'front' ? 1 : -1, 1]);
}

/** Where a point appears: right and up on the picture plane, true size (axes come out √(2/3) as long, by isometry). */
export function project(point: Point3, eye: Point3): PaperPoint {
  const right = unit(cross([0, 0, 1], eye));
  const up = cross(eye, right);
  return [dot(point, right), dot(point, up)];
}

/** The model as an isometric picture: hidden faces left out, nearer bodies painted over farther ones, then the names. */
export function drawIsometric(model: Model, view: View): Picture {
  const eye = eyeOf(view);
  const arrow = view.arrow ? stretch(model.pull, view.arrow.from, view.arrow.to) : [];
  const tags = model.tags.filter((tag) => view.tags.includes(tag.kind));
  const everything = [...model.bodies.flatMap((body) => body.faces.flatMap((face) => face.outline)), ...arrow, ...tags.map((tag) => tag.at)].map((point) => project(point, eye));
  const [minX, maxX] = [Math.min(...everything.map(([x]) => x)), Math.max(...everything.map(([x]) => x))];
  const [minY, maxY] = [Math.min(...everything.map(([, y]) => y)), Math.max(...everything.map(([, y]) => y))];
  const [roomX, roomY] = [view.width - 2 * BORDER, view.height - 2 * BORDER];
  const scale = Math.min(roomX / (maxX - minX), roomY / (maxY - minY));
  const onPaper = (point: Point3): PaperPoint => {
    const [x, y] = project(point, eye);
    return [BORDER + (x - minX) * scale, BORDER + (maxY - y) * scale];
  };
  const width = 2 * BORDER + (maxX - minX) * scale;
  const shapes = [
    ...paintOrder(model.bodies, eye, model.chordError).flatMap((body) => paintBody(body, eye, onPaper)),
    ...paintArrow(arrow.map(onPaper)),
    ...paintTags(tags, onPaper, width),
  ];
  return { width, height: 2 * BORDER + (maxY - minY) * scale, scale, shapes };
}

function stretch(path: readonly Point3[], from: number, to: number): Point3[] {
  const last = path.length - 1;
  return path.filter((_, index) => index >= from * last && index <= to * last);
}

type OnPaper = (point: Point3) => PaperPoint;

function paintBody(body: Body, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const seen = body.faces.filter((face) => body.open || dot(face.normal, eye) > 0);
  return [...seen.flatMap((face) => paintFace(body, face, eye, onPaper)), ...seen.flatMap((face) => paintEdges(body, face, eye, onPaper))];
}

/** From above and from the viewer's left, so that the three sides of a box differ. */
const LIGHT = { up: 0.75, right: -0.25, toward: 0.6 };

function paintFace(body: Body, face: Face, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const facing = dot(face.normal, eye) > 0;
  const [x, y] = project(face.normal, eye);
  const sign = facing ? 1 : -1;
  const shade = Math.max(0, Math.min(1, 0.35 + 0.65 * sign * (LIGHT.right * x + LIGHT.up * y + LIGHT.toward * dot(face.normal, eye))));
  const kind = body.kind === 'sheet' && facing ? 'sheet-outside' : body.kind;
  return [{ kind: 'fill', points: face.outline.map(onPaper), body: kind, shade }, ...face.marks.map((mark) => paintMark(mark, onPaper))];
}

function paintMark({ kind, name, closed, points }: FaceMark, onPaper: OnPaper): PictureShape {
  const drawn = points.map(onPaper);
  if (closed) return { kind: 'spot', points: drawn, ink: kind === 'screw-head' ? 'screw' : 'hole', name };
  return { kind: 'stroke', points: drawn, ink: 'scribe', name };
}

/** Sharp edges, and smooth ones where the surface turns out of sight there. */
function paintEdges(body: Body, face: Face, eye: Point3, onPaper: OnPaper): PictureShape[] {
  const facing = dot(face.normal, eye) > 0;
  const isDrawn = (edge: Edge): boolean => edge === 'sharp' || dot(edge, eye) > 0 !== facing;
  return face.outline.flatMap((corner, index): PictureShape[] => {
    const next = face.outline[(index + 1) % face.outline.length] ?? corner;
    return isDrawn(face.edges[index] ?? 'sharp') ? [{ kind: 'stroke', points: [corner, next].map(onPaper), ink: 'edge', name: body.name }] : [];
  });
}

const HEAD = 3.2;

function paintArrow(path: readonly PaperPoint[]): PictureShape[] {
  const tip = path.at(-1);
  const tail = path.findLast(([x, y]) => tip && Math.hypot(tip[0] - x, tip[1] - y) > HEAD);
  const start = path[0];
  if (!tip || !tail || !start) return [];
  const along = Math.atan2(tip[1] - tail[1], tip[0] - tail[0]);
  const wing = (side: number): PaperPoint => [tip[0] - HEAD * Math.cos(along + side * 0.38), tip[1] - HEAD * Math.sin(along + side * 0.38)];
  const middle = path[Math.floor(path.length / 2)] ?? start;
  return [
    { kind: 'stroke', points: path, ink: 'pull', name: 'pull' },
    { kind: 'spot', points: [tip, wing(1), wing(-1)], ink: 'pull', name: 'pull' },
    { kind: 'word', at: [middle[0] + 3, middle[1] - 3], text: 'pull', size: WORD, strong: true, tag: 'pull' },
  ];
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
}

/** Each name above its place on a leader, which is lengthened until the name is clear of those before it. */
function paintTags(tags: readonly Tag[], onPaper: OnPaper, width: number): PictureShape[] {
  const taken: Box[] = [];
  return tags.flatMap((tag): PictureShape[] => {
    const [x, y] = onPaper(tag.at);
    if (tag.kind === 'end') return [{ kind: 'word', at: [x, y + 0.7 * WORD], text: tag.text, size: 2 * WORD, strong: true, tag: 'end' }];
    const size = WORD;
    const down = tag.kind === 'foot' ? 1 : -1;
    const halfWidth = 0.36 * size * tag.text.length + 0.5;
    const at = Math.max(halfWidth, Math.min(width - halfWidth, x));
    let reach = 4;
    const clear = (): boolean => taken.every((box) => Math.abs(box.x - at) >= box.halfWidth + halfWidth || Math.abs(box.y - (y + down * reach)) >= 1.3 * size);
    while (!clear() && reach < 40) reach += 1;
    taken.push({ x: at, y: y + down * reach, halfWidth });
    return [
      { kind: 'stroke', points: [[x, y], [at, y + down * (reach - 0.6)]], ink: 'leader', name: tag.text },
      { kind: 'word', at: [at, y + down * reach + (down > 0 ? size * 0.75 : 0)], text: tag.text, size, strong: false, tag: tag.kind },
    ];
  });
}
