import { FULL } from '../../helpers/cases';
import { describe, expect, it } from 'vitest';
import { drawIsometric, eyeOf, type Picture, type View } from '../../../src/output/picture/isometric';
import { buildModel, type Model } from '../../../src/output/picture/model';
import { paintArrow, project, stretchOf, type PaperPoint } from '../../../src/output/picture/paint';
import { dot, subtract, type Point3 } from '../../../src/output/picture/vector';
import { tackleOf } from '../../../src/output/picture/tackle';
import { pulledBy, type SheetState } from '../../../src/output/picture/wrapped-sheet';
import type { Buildable } from '../../../src/output/pipeline';
import { loadTables } from '../../../src/tables/bundled';
import { planStarter, starters } from '../../helpers/starters';

const tables = loadTables();
const base = { width: 180, height: 120, tags: ['end', 'station', 'backing', 'foot', 'clamp'], arrow: null } as const;
const views: View[] = (['A', 'B'] as const).flatMap((end) =>
  (['front', 'back'] as const).map((face) => ({ ...base, end, face })),
);

function modelOf(planned: Buildable, state: SheetState | null): Model {
  if (!planned.bend || !planned.layout) throw new Error('cannot be built');
  return buildModel(planned.layout, planned.bend, state, {
    tackle: tackleOf(planned.bend, planned.layout, tables.rules),
  });
}

/** Even–odd rule. */
function inside(polygon: readonly PaperPoint[], [x, y]: PaperPoint): boolean {
  return (
    polygon.filter(([ax, ay], index) => {
      const [bx, by] = polygon[(index + 1) % polygon.length] as PaperPoint;
      return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
    }).length %
      2 ===
    1
  );
}

function nearEdge(polygon: readonly PaperPoint[], [x, y]: PaperPoint, within: number): boolean {
  return polygon.some(([ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] as PaperPoint;
    const [dx, dy] = [bx - ax, by - ay];
    const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
    return Math.hypot(x - ax - share * dx, y - ay - share * dy) < within;
  });
}

describe('the isometric projection', () => {
  it.each(views)(
    'from $end $face shows the three axes equally long, √(2/3), 120° apart (ISO 5456-3, isometric axonometry; from memory)',
    (view) => {
      const eye = eyeOf(view);
      const axes = (
        [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ] as const
      ).map((axis) => project(axis, eye));
      for (const [x, y] of axes) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(2 / 3), 12);
      const directions = axes.map(([x, y]) => Math.atan2(y, x));
      for (const [a, b] of [
        [0, 1],
        [1, 2],
        [2, 0],
      ] as const) {
        // 60° apart where one of the two points away from the viewer.
        const apart = Math.abs(Math.cos((directions[a] ?? 0) - (directions[b] ?? 0)));
        expect(apart).toBeCloseTo(0.5, 12);
      }
      expect(axes[2]?.[0]).toBeCloseTo(0, 12);
      expect(axes[2]?.[1]).toBeGreaterThan(0);
    },
  );
});

describe('the arrow of the pull', () => {
  const path: Point3[] = Array.from({ length: 11 }, (_, index) => [index, 0, 0]);

  it('covers its stretch of the way, ends included', () => {
    expect(stretchOf(path, { from: 0.3, to: 0.6 }).map(([x]) => x)).toEqual([3, 4, 5, 6]);
    expect(stretchOf(path, { from: 0, to: 1 })).toEqual(path);
  });

  it('has its head at the end of the path, as wide to one side as to the other', () => {
    const shapes = paintArrow(
      path.map(([x]): PaperPoint => [10 * x, 7]),
      12,
    );
    const head = shapes.find((shape) => shape.kind === 'spot');
    const [tip, left, right] = head?.kind === 'spot' ? head.points : [];
    expect(tip).toEqual([100, 7]);
    expect((left?.[1] ?? 0) + (right?.[1] ?? 0)).toBeCloseTo(14, 9);
    expect(left?.[0]).toBeLessThan(100);
    expect(left?.[0]).toBeGreaterThan(88);
  });

  it('is left out where there is no way to go', () => {
    expect(paintArrow([], 3)).toEqual([]);
    expect(paintArrow([[1, 1]], 3)).toEqual([]);
  });
});

describe('the picture', () => {
  it('puts the clamp holes and the foot where the plan’s numbers say, by the textbook formula', () => {
    const planned = planStarter('tapered-curve');
    const { spine, bend, backings, effort } = planned.plan;
    if (!spine || !bend || !effort) throw new Error('no plan');
    const picture = drawIsometric(modelOf(planned, { kind: 'on-form', wrap: 0 }), { ...base, end: 'A', face: 'front' });
    // From end A and the front: x runs up to the left, y down to the left, z up; each axis √(2/3) long at 30°.
    const k = Math.sqrt(2 / 3) * picture.scale;
    const textbook = (x: number, y: number, z: number): PaperPoint => [
      -(x + y) * Math.cos(Math.PI / 6) * k,
      -((x - y) * Math.sin(Math.PI / 6) + z) * k,
    ];
    // The form leans back by its half-angle, known from the plan's own radii.
    const sine = (bend.form.to - bend.form.from) / bend.length;
    const cosine = Math.sqrt(1 - sine ** 2);
    const onPaper = (at: number, ahead: number, up: number): PaperPoint =>
      textbook(at * cosine - (up + bend.form.from) * sine, ahead, at * sine + (up + bend.form.from) * cosine);
    const spots = picture.shapes.filter((shape) => shape.kind === 'spot' && shape.ink === 'hole');
    const centres = spots.map((shape) => {
      const points = shape.kind === 'spot' ? shape.points : [];
      return [0, 1].map((axis) => points.reduce((sum, point) => sum + (point[axis] ?? 0) / points.length, 0)) as [
        number,
        number,
      ];
    });
    expect(centres).toHaveLength(spine.clampHoles.length);
    const expected = spine.clampHoles.map((hole) => onPaper(hole.at, 0, 0));
    const [first, second] = [centres[0] as PaperPoint, centres[1] as PaperPoint];
    const [wantedFirst, wantedSecond] = [expected[0] as PaperPoint, expected[1] as PaperPoint];
    expect(second[0] - first[0]).toBeCloseTo(wantedSecond[0] - wantedFirst[0], 9);
    expect(second[1] - first[1]).toBeCloseTo(wantedSecond[1] - wantedFirst[1], 9);
    const backing = backings[0];
    const drawn = picture.shapes.flatMap((shape) =>
      shape.kind === 'fill' && shape.body === 'backing' ? shape.points : [],
    );
    const corner = onPaper(
      (backing?.at ?? 0) - (backing?.thickness ?? 0) / 2,
      -spine.thickness - effort.foot,
      (backing?.width ?? 0) / 2,
    );
    const wanted = [first[0] + corner[0] - wantedFirst[0], first[1] + corner[1] - wantedFirst[1]] as const;
    expect(Math.min(...drawn.map(([x, y]) => Math.hypot(x - wanted[0], y - wanted[1])))).toBeLessThan(1e-9);
  });

  it('stays on its paper and names both ends, every station and backing station, the clamp holes and the foot', () => {
    for (const name of starters) {
      const planned = planStarter(name);
      for (const view of views) {
        const picture = drawIsometric(modelOf(planned, { kind: 'on-form', wrap: 0.5 }), {
          ...view,
          arrow: { from: 0, to: 0.3 },
        });
        expect(picture.width).toBeLessThanOrEqual(view.width + 1e-9);
        expect(picture.height).toBeLessThanOrEqual(view.height + 1e-9);
        const points = picture.shapes.flatMap((shape) => (shape.kind === 'word' ? [shape.at] : shape.points));
        for (const [x, y] of points) expect(x >= 0 && x <= picture.width && y >= 0 && y <= picture.height).toBe(true);
        const words = picture.shapes.flatMap((shape) => (shape.kind === 'word' ? [shape.text] : []));
        const { stations, backings, spine } = planned.plan;
        expect(words).toEqual(
          expect.arrayContaining([
            'A',
            'B',
            'pull',
            'foot',
            ...stations.map((s) => s.name),
            ...backings.map((b) => b.name),
            ...(spine?.clampHoles.map((_, index) => `C${index + 1}`) ?? []),
          ]),
        );
      }
    }
  });

  it('shows at every place what is really nearest there: a ray through each point of a grid, against what was painted last', () => {
    let looked = 0;
    for (const name of starters) {
      const planned = planStarter(name);
      const states: (SheetState | null)[] = [
        null,
        ...(planned.bend ? [0, 0.1, 0.5, 1].map((share) => pulledBy(planned.bend, share)) : []),
        { kind: 'released', opened: 0.5 },
        { kind: 'released' },
      ];
      for (const state of states) {
        const model = modelOf(planned, state);
        for (const view of views) {
          const wrong = compare(model, drawIsometric(model, view), view);
          looked += wrong.looked;
          expect(wrong.places, `${name}, ${JSON.stringify(state)}, ${view.end} ${view.face}`).toEqual([]);
        }
      }
    }
    expect(looked).toBeGreaterThan(FULL ? 5_000 : 1_200);
  });
});

/** Between the places looked at, mm on paper. */
const GRID = FULL ? 4.3 : 8.9;
/** Places nearer than this to any painted edge are not judged, mm on paper: facets and hairlines. */
const EDGE = 0.35;

function compare(model: Model, picture: Picture, view: View): { looked: number; places: string[] } {
  const eye = eyeOf(view);
  const faces = model.bodies.flatMap((body) =>
    body.faces.map((face) => ({ body: body.kind, face, outline: face.outline.map((point) => project(point, eye)) })),
  );
  const all = faces.flatMap(({ outline }) => outline);
  const [minX, maxY] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([, y]) => y))];
  const fills = picture.shapes.flatMap((shape) => (shape.kind === 'fill' ? [shape] : []));
  const drawn = fills.flatMap(({ points }) => points);
  const [left, top] = [Math.min(...drawn.map(([x]) => x)), Math.min(...drawn.map(([, y]) => y))];
  const places: string[] = [];
  let looked = 0;
  for (let x = left + GRID / 2; x < picture.width; x += GRID) {
    for (let y = top + GRID / 2; y < picture.height; y += GRID) {
      const covering = fills.filter(({ points }) => inside(points, [x, y]));
      if (covering.some(({ points }) => nearEdge(points, [x, y], EDGE))) continue;
      const flat: PaperPoint = [minX + (x - left) / picture.scale, maxY - (y - top) / picture.scale];
      const hits = faces
        .filter(({ outline }) => inside(outline, flat))
        .map(({ body, face, outline }) => ({
          body,
          depth: depthAt({ outline: face.outline, normal: face.normal }, eye, flat, outline),
        }));
      const nearest = hits.sort((a, b) => b.depth - a.depth)[0]?.body ?? 'nothing';
      const painted = covering.at(-1)?.body.replace('-outside', '') ?? 'nothing';
      looked++;
      if (nearest !== painted)
        places.push(`${x.toFixed(1)}, ${y.toFixed(1)}: ${nearest} is nearest, ${painted} was painted`);
    }
  }
  return { looked, places };
}

/** How near to the viewer the face's plane is along the ray through a place of the picture. */
function depthAt(
  { outline, normal }: { readonly outline: readonly Point3[]; readonly normal: Point3 },
  eye: Point3,
  place: PaperPoint,
  projected: readonly PaperPoint[],
): number {
  const [corner, at] = [outline[0] as Point3, projected[0] as PaperPoint];
  // Two directions of the picture plane, from the projection itself.
  const right: Point3 = [project([1, 0, 0], eye)[0], project([0, 1, 0], eye)[0], project([0, 0, 1], eye)[0]];
  const up: Point3 = [project([1, 0, 0], eye)[1], project([0, 1, 0], eye)[1], project([0, 0, 1], eye)[1]];
  const [dx, dy] = [place[0] - at[0], place[1] - at[1]];
  const start: Point3 = [
    corner[0] + dx * right[0] + dy * up[0],
    corner[1] + dx * right[1] + dy * up[1],
    corner[2] + dx * right[2] + dy * up[2],
  ];
  const along = dot(normal, subtract(corner, start)) / dot(normal, eye);
  return dot(start, eye) + along;
}
