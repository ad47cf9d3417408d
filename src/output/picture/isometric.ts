import type { Model, Tag } from './model';
import {
  paintArrow,
  paintBodies,
  project,
  stretchOf,
  type OnPaper,
  type PaperPoint,
  type PictureShape,
  type Stretch,
} from './paint';
import { unit, type Point3 } from './vector';

/** Sizes and places in mm on paper. */
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
  /** The stretch of the pull to show as an arrow; null for none. */
  readonly arrow: Stretch | null;
}

const WORD = 3;
const HEAD = 3.2;
const BORDER = 8;

/** Toward the viewer, length 1: all three axes equally slanted, which is what isometric means. */
export function eyeOf({ end, face }: Pick<View, 'end' | 'face'>): Point3 {
  return unit([end === 'A' ? -1 : 1, face === 'front' ? 1 : -1, 1]);
}

/** The model as an isometric picture: hidden faces left out, nearer bodies painted over farther ones, then the names. */
export function drawIsometric(model: Model, view: View): Picture {
  const eye = eyeOf(view);
  const arrow = view.arrow ? stretchOf(model.pull, view.arrow) : [];
  const tags = model.tags.filter((tag) => view.tags.includes(tag.kind));
  const everything = [
    ...model.bodies.flatMap((body) => body.faces.flatMap((face) => face.outline)),
    ...arrow,
    ...tags.map((tag) => tag.at),
  ].map((point) => project(point, eye));
  const [minX, maxX] = [Math.min(...everything.map(([x]) => x)), Math.max(...everything.map(([x]) => x))];
  const [minY, maxY] = [Math.min(...everything.map(([, y]) => y)), Math.max(...everything.map(([, y]) => y))];
  const [roomX, roomY] = [view.width - 2 * BORDER, view.height - 2 * BORDER];
  const scale = Math.min(roomX / (maxX - minX), roomY / (maxY - minY));
  const onPaper: OnPaper = (point) => {
    const [x, y] = project(point, eye);
    return [BORDER + (x - minX) * scale, BORDER + (maxY - y) * scale];
  };
  const width = 2 * BORDER + (maxX - minX) * scale;
  const shapes = [
    ...paintBodies(model, eye, onPaper),
    ...paintPull(arrow.map(onPaper)),
    ...paintTags(tags, onPaper, width),
  ];
  return { width, height: 2 * BORDER + (maxY - minY) * scale, scale, shapes };
}

function paintPull(path: readonly PaperPoint[]): PictureShape[] {
  const arrow = paintArrow(path, HEAD);
  const middle = path[Math.floor(path.length / 2)];
  return arrow.length > 0 && middle
    ? [
        ...arrow,
        { kind: 'word', at: [middle[0] + 3, middle[1] - 3], text: 'pull', size: WORD, strong: true, tag: 'pull' },
      ]
    : [];
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
    if (tag.kind === 'end')
      return [{ kind: 'word', at: [x, y + 0.7 * WORD], text: tag.text, size: 2 * WORD, strong: true, tag: 'end' }];
    const size = WORD;
    const down = tag.kind === 'foot' ? 1 : -1;
    const halfWidth = 0.36 * size * tag.text.length + 0.5;
    const at = Math.max(halfWidth, Math.min(width - halfWidth, x));
    let reach = 4;
    const clear = (): boolean =>
      taken.every(
        (box) =>
          Math.abs(box.x - at) >= box.halfWidth + halfWidth || Math.abs(box.y - (y + down * reach)) >= 1.3 * size,
      );
    while (!clear() && reach < 40) reach += 1;
    taken.push({ x: at, y: y + down * reach, halfWidth });
    return [
      {
        kind: 'stroke',
        points: [
          [x, y],
          [at, y + down * (reach - 0.6)],
        ],
        ink: 'leader',
        name: tag.text,
      },
      {
        kind: 'word',
        at: [at, y + down * reach + (down > 0 ? size * 0.75 : 0)],
        text: tag.text,
        size,
        strong: false,
        tag: tag.kind,
      },
    ];
  });
}
