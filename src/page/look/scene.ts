import type { Model } from '../../output/picture/model';
import type { Body, BodyKind, Face } from '../../output/picture/solid';
import { addScaled, type Point3 } from '../../output/picture/vector';

/** What can be shown and hidden together. */
export const groups = ['sheet', 'boards', 'yoke', 'plank', 'clamps', 'bench'] as const;
export type Group = (typeof groups)[number];

/** A flat polygon in space, counter-clockwise seen from outside. */
export type Polygon = readonly Point3[];

/** One thing in the view: touched as one, hidden with its group. */
export interface LookPart {
  readonly name: string;
  readonly kind: BodyKind | 'bench';
  readonly group: Group;
  readonly polygons: readonly Polygon[];
  /** Holes and screw heads seen on it. */
  readonly spots: readonly Polygon[];
  /** Lines drawn on it. */
  readonly lines: readonly Polygon[];
}

/** A word at a place. */
export interface LookWord {
  readonly text: string;
  readonly at: Point3;
  readonly strong: boolean;
}

/** All the view shows, mm: x along the tangent line from A, y ahead of the spine, z up. */
export interface LookScene {
  readonly parts: readonly LookPart[];
  readonly words: readonly LookWord[];
  /** The way of the hands, shown by an arrow; empty where nobody pulls. */
  readonly pull: Polygon;
  /** Everything the view must hold, the whole way of the leg too. */
  readonly reach: readonly Point3[];
}

/** What a touch tells: the part's name, or how far apart two touched points are, mm. */
export interface LookEvents {
  readonly touched: (name: string | null) => void;
  readonly measured: (distance: number | null) => void;
}

/** How far the bench reaches beyond what stands on it, and how thick it is drawn, mm. */
const BENCH = { beyond: 60, thick: 12 } as const;

/** The assembled form, the sheet on it `thickness` mm thick, and the bench under them; `pull` is the arrow of the hands and its word. */
export function sceneOf(
  model: Model,
  thickness: number,
  pull: { readonly path: Polygon; readonly text: string } | null,
): LookScene {
  const names = [...new Set(model.bodies.map(nameOf))];
  const parts = names.map((name): LookPart => {
    const bodies = model.bodies.filter((body) => nameOf(body) === name);
    const faces = bodies.flatMap((body) => body.faces);
    const marks = faces.flatMap((face) => face.marks);
    const kind = bodies[0]?.kind ?? 'spine';
    return {
      name,
      kind,
      group: groupOf(kind),
      polygons: bodies.flatMap((body) =>
        body.faces.flatMap((face) => (body.open ? slab(face, thickness) : [face.outline])),
      ),
      spots: marks.filter(({ closed }) => closed).map(({ points }) => points),
      lines: marks.filter(({ closed }) => !closed).map(({ points }) => points),
    };
  });
  const points = model.bodies.flatMap((body) => body.faces.flatMap((face) => face.outline));
  return {
    parts: [...parts, bench(points, model.bench)],
    words: [
      ...model.tags.map(({ kind, text, at }) => ({ text, at, strong: kind === 'end' })),
      ...(pull?.path.slice(-1) ?? []).map((at) => ({ text: pull?.text ?? '', at, strong: false })),
    ],
    pull: pull?.path ?? [],
    reach: [...points, ...model.pull],
  };
}

function groupOf(kind: BodyKind): Group {
  if (kind === 'sheet' || kind === 'yoke' || kind === 'plank') return kind;
  return kind === 'clamp' ? 'clamps' : 'boards';
}

/** The groups that have something in the scene, in their order. */
export function groupsIn({ parts }: LookScene): Group[] {
  return groups.filter((group) => parts.some((part) => part.group === group));
}

/** All pieces of sheet are one part. */
function nameOf({ kind, name }: Body): string {
  return kind === 'sheet' ? 'sheet' : name;
}

/** A flat piece of sheet with its thickness: its inside face, its outside face and the edges between. */
function slab({ outline, normal }: Face, thickness: number): Polygon[] {
  const outside = outline.map((point) => addScaled(point, normal, thickness));
  const edges = outline.map((point, index): Polygon => {
    const next = (index + 1) % outline.length;
    return [point, outside[index] ?? point, outside[next] ?? point, outline[next] ?? point];
  });
  return [outline, [...outside].reverse(), ...edges];
}

function bench(points: readonly Point3[], below: number): LookPart {
  const along = (axis: 0 | 1): readonly [number, number] => {
    const values = points.map((point) => point[axis]);
    return [Math.min(...values) - BENCH.beyond, Math.max(...values) + BENCH.beyond];
  };
  const [[x0, x1], [y0, y1]] = [along(0), along(1)];
  const level = (z: number): Polygon => [
    [x0, y0, z],
    [x1, y0, z],
    [x1, y1, z],
    [x0, y1, z],
  ];
  const [low, top] = [level(-below - BENCH.thick), level(-below)];
  const sides = low.map((point, index): Polygon => {
    const next = (index + 1) % low.length;
    return [point, low[next] ?? point, top[next] ?? point, top[index] ?? point];
  });
  return {
    name: 'bench',
    kind: 'bench',
    group: 'bench',
    polygons: [[...low].reverse(), top, ...sides],
    spots: [],
    lines: [],
  };
}
