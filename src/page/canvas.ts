import { at } from '../base/at';
import type { Model, Tag } from '../output/picture/model';
import {
  paintArrow,
  paintBodies,
  project,
  stretchOf,
  type Ink,
  type OnPaper,
  type PaperPoint,
  type PictureShape,
  type Stretch,
} from '../output/picture/paint';
import { dot, type Point3 } from '../output/picture/vector';

/** Where the eye stands: turn about the upright, and height above the bench, radians. */
export interface Eye {
  readonly turn: number;
  readonly height: number;
}

/** What the canvas shows. */
export interface Scene {
  readonly model: Model;
  readonly eye: Eye;
  /** The arrow of the pull and its word; null where nobody pulls. */
  readonly pull: { readonly stretch: Stretch; readonly text: string } | null;
  readonly dark: boolean;
}

/** Letters' height, pixels. */
const WORD = 13;

type Fill = Extract<PictureShape, { kind: 'fill' }>;
type Word = Extract<PictureShape, { kind: 'word' }>;

/** Hue, saturation and the lightness between which each body is shaded; ours. */
const BODY: Readonly<Record<Fill['body'], readonly [hue: number, saturation: number, from: number, to: number]>> = {
  spine: [34, 38, 45, 74],
  station: [38, 55, 52, 84],
  backing: [30, 34, 42, 70],
  sheet: [204, 14, 58, 88],
  'sheet-outside': [204, 14, 48, 76],
  yoke: [40, 10, 42, 70],
  plank: [32, 40, 50, 78],
  clamp: [215, 8, 32, 58],
};

/** The canvas, pixels. */
interface Room {
  readonly width: number;
  readonly height: number;
}

interface Pens {
  readonly ink: Readonly<Record<Ink, string>>;
  readonly word: string;
  readonly halo: string;
}

const EDGE = { light: '#3a332a', dark: '#0c0c0c' };
const SPOT: Readonly<Record<Ink, string>> = {
  edge: 'none',
  hole: '#33281c',
  screw: '#9a9a9a',
  scribe: 'none',
  pull: '',
  leader: 'none',
};

function pensFor(dark: boolean): Pens {
  const edge = dark ? EDGE.dark : EDGE.light;
  const pull = dark ? '#ff9a94' : '#a3171f';
  const word = dark ? '#f2efe8' : '#1d1a16';
  return {
    ink: { edge, hole: edge, screw: edge, scribe: edge, pull, leader: word },
    word,
    halo: dark ? '#1b1d1f' : '#ffffff',
  };
}

/** Draws the scene on the whole canvas, in the same shapes as the shop sheet's pictures. */
export function drawScene(canvas: HTMLCanvasElement, { model, eye: { turn, height }, pull, dark }: Scene): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const ratio = devicePixelRatio || 1;
  const [width, tall] = [canvas.clientWidth, canvas.clientHeight];
  if (canvas.width !== Math.round(width * ratio) || canvas.height !== Math.round(tall * ratio))
    [canvas.width, canvas.height] = [Math.round(width * ratio), Math.round(tall * ratio)];
  const eye: Point3 = [Math.sin(turn) * Math.cos(height), Math.cos(turn) * Math.cos(height), Math.sin(height)];
  const onCanvas = fit(model, eye, width, tall);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, tall);
  context.lineJoin = 'round';
  context.textBaseline = 'middle';
  const arrow = pull ? paintPull(stretchOf(model.pull, pull.stretch).map(onCanvas), pull.text) : [];
  const shapes = [...paintBodies(model, eye, onCanvas), ...legible([...arrow, ...nameThings(model, eye, onCanvas)])];
  const pens = pensFor(dark);
  for (const shape of shapes) drawShape(context, shape, { pens, dark, room: { width, height: tall } });
}

/** The pull's arrow, and its word where the arrow points to, clear of its head. */
function paintPull(path: readonly PaperPoint[], text: string): PictureShape[] {
  const arrow = paintArrow(path, WORD);
  const tip = path.at(-1);
  const before = tip && path.findLast(([x, y]) => Math.hypot(x - tip[0], y - tip[1]) > WORD);
  if (arrow.length === 0 || !tip || !before) return arrow;
  const way = Math.atan2(tip[1] - before[1], tip[0] - before[0]);
  const [aside, above] = [1.1 * halfWidth({ text, size: WORD }) + 4, 0.8 * WORD];
  return [
    ...arrow,
    {
      kind: 'word',
      at: [tip[0] + aside * Math.cos(way), tip[1] + above * Math.sin(way)],
      text,
      size: WORD,
      strong: true,
      tag: 'pull',
    },
  ];
}

/** Points to the canvas: the model's middle in its middle, at a size that does not change as it is turned. */
function fit(model: Model, eye: Point3, width: number, height: number): OnPaper {
  const points = [
    ...model.bodies.filter((body) => !body.open).flatMap((body) => body.faces.flatMap((face) => face.outline)),
    ...model.pull,
  ];
  const bound = (axis: 0 | 1 | 2, pick: (...values: number[]) => number): number =>
    points.reduce((held, point) => pick(held, point[axis]), at(points, 0)[axis]);
  const low: Point3 = [bound(0, Math.min), bound(1, Math.min), bound(2, Math.min)];
  const high: Point3 = [bound(0, Math.max), bound(1, Math.max), bound(2, Math.max)];
  const [middleX, middleY] = project([(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2], eye);
  const reach = Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  const scale = Math.min(width, 1.5 * height) / reach;
  return (point) => {
    const [x, y] = project(point, eye);
    return [width / 2 + (x - middleX) * scale, height / 2 - (y - middleY) * scale];
  };
}

function drawShape(
  context: CanvasRenderingContext2D,
  shape: PictureShape,
  { pens, dark, room }: { readonly pens: Pens; readonly dark: boolean; readonly room: Room },
): void {
  switch (shape.kind) {
    case 'fill': {
      const [hue, saturation, from, to] = BODY[shape.body];
      const sheet = shape.body === 'sheet' || shape.body === 'sheet-outside';
      context.fillStyle = `hsl(${hue} ${saturation}% ${(from + (to - from) * shape.shade) * (dark ? 0.82 : 1)}%)`;
      trace(context, shape.points, true);
      // The sheet lets the form under it be seen.
      context.globalAlpha = sheet ? 0.82 : 1;
      context.fill();
      context.globalAlpha = 1;
      // A hair of the same colour closes the seams between facets.
      if (!sheet) stroke(context, context.fillStyle, 0.6);
      return;
    }
    case 'stroke':
      trace(context, shape.points, false);
      return stroke(context, pens.ink[shape.ink], shape.ink === 'pull' ? 2.5 : 1);
    case 'spot':
      trace(context, shape.points, true);
      context.fillStyle = SPOT[shape.ink] || pens.ink[shape.ink];
      context.fill();
      return stroke(context, pens.ink[shape.ink], 1);
    case 'word':
      return write(context, shape, pens, room);
  }
}

function trace(context: CanvasRenderingContext2D, points: readonly PaperPoint[], closed: boolean): void {
  context.beginPath();
  points.forEach(([x, y], index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  if (closed) context.closePath();
}

function stroke(
  context: CanvasRenderingContext2D,
  colour: string | CanvasGradient | CanvasPattern,
  width: number,
): void {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}

/** A word with a halo, kept from running off the canvas. */
function write(
  context: CanvasRenderingContext2D,
  { text, at: [x, y], size, strong, tag }: Word,
  { ink, word, halo }: Pens,
  room: Room,
): void {
  context.font = `${strong ? 'bold ' : ''}${size}px system-ui, sans-serif`;
  const long = context.measureText(text).width;
  const left = Math.max(2, Math.min(room.width - long - 2, x - long / 2));
  context.textAlign = 'left';
  context.lineWidth = 3;
  context.strokeStyle = halo;
  context.fillStyle = tag === 'pull' ? ink.pull : word;
  const down = Math.max(size / 2, Math.min(room.height - size / 2 - 1, y));
  context.strokeText(text, left, down);
  context.fillText(text, left, down);
}

/** What is named from the front, and from behind, the foremost first: only what can be seen from there. */
const FRONT: readonly Tag['kind'][] = ['end', 'free leg', 'held leg', 'station'];
const BACK: readonly Tag['kind'][] = ['end', 'free leg', 'held leg', 'foot', 'clamp', 'backing'];

function nameThings({ tags }: Model, eye: Point3, onCanvas: OnPaper): PictureShape[] {
  const held = tags.filter(({ kind }) => kind === 'held leg').sort((a, b) => dot(b.at, eye) - dot(a.at, eye))[0];
  return (eye[1] > 0 ? FRONT : BACK)
    .flatMap((kind) => tags.filter((tag) => tag.kind === kind && (kind !== 'held leg' || tag === held)))
    .flatMap((tag): PictureShape[] => {
      const [x, y] = onCanvas(tag.at);
      const end = tag.kind === 'end';
      const word = (at: PaperPoint): PictureShape => ({
        kind: 'word',
        at,
        text: tag.text,
        size: end ? 22 : WORD,
        strong: end,
        tag: tag.kind,
      });
      if (tag !== held) return [word([x, y])];
      return [
        {
          kind: 'stroke',
          points: [
            [x, y],
            [x, y + 2.2 * WORD],
          ],
          ink: 'leader',
          name: tag.text,
        },
        word([x, y + 3 * WORD]),
      ];
    });
}

/** The shapes without the words that would run into one before them. */
function legible(shapes: readonly PictureShape[]): PictureShape[] {
  const written: Word[] = [];
  return shapes.filter((shape) => {
    if (shape.kind !== 'word') return true;
    const free = written.every(
      (other) =>
        Math.abs(other.at[0] - shape.at[0]) > halfWidth(other) + halfWidth(shape) ||
        Math.abs(other.at[1] - shape.at[1]) > 0.45 * (other.size + shape.size),
    );
    if (free) written.push(shape);
    return free;
  });
}

/** About half of how long a word is, pixels. */
function halfWidth({ text, size }: Pick<Word, 'text' | 'size'>): number {
  return 0.29 * size * text.length;
}
