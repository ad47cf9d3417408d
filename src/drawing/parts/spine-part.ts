import { centreFromTangent, radiusAtCentre, type Cone } from '../../base/cone';
import type { Line, Shape } from '../../base/drawing';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { Backing, DrivenScrew, FixtureLayout, Station } from '../../design/fixture/fixture';
import type { Joints } from '../../design/joints/joints';
import { circle, label, mark } from './shapes';
import { spineGrooves, spineOutline, spineSlots } from './spine-outline';

/** Lines nearer than this would be cut or scribed twice, mm. */
const SAME_LINE = 0.01;
/** Height of the run names along the edge, mm. */
const EDGE_LABEL = 2.4;
/** Length of the two strokes that point at a run's end on the long edges, mm. */
const POINTER = 5;

/** Which layer of the spine is drawn, counted from its front, and of how many. */
export interface SpineLayer {
  readonly index: number;
  readonly of: number;
  /** How far a router's groove runs past the edges it is open to, mm. */
  readonly overrun: number;
}

/**
 * The spine, or one layer of it, at 1:1, seen on its front face: centre line along x from the cone's end A at the origin, both long
 * edges true. Holes and countersinks for the screws, clamp holes, grooves or slots. On the frontmost layer stand the marks: the
 * names of the boards that stand there, and where they stand on drawn lines the centre line, both faces of every board and the ends
 * of the runs on the edges.
 */
export function drawSpine(
  layout: FixtureLayout,
  bend: BendPlan,
  joints: Joints,
  { index, of, overrun }: SpineLayer,
): Shape[] {
  const { length, ears } = layout.spine;
  const [start, end] = [-ears, length + ears];
  const cuts = [
    ...spineOutline(layout.spine, bend.form, joints),
    ...layout.clampHoles.map((hole) => circle('hole', hole.at, 0, hole.diameter)),
    // What is done from the drawn face: the last of several layers lies with it outward, on the back.
    ...screwHoles(layout, { front: index === 0, back: of > 1 && index === of - 1 }),
    ...spineSlots(joints),
    ...(joints.with === 'router' ? spineGrooves(joints, bend.form, overrun) : []),
  ];
  const drawn =
    joints.with === 'jigsaw'
      ? [
          ...centreLine(layout, start, end),
          ...boardLines(layout, bend.form),
          ...runPointers(bend),
          ...sunkFromBack(layout),
        ]
      : [];
  const lines = spineLabels(
    layout,
    bend,
    joints,
    index === 0
      ? of > 1
        ? `FRONT FACE, LAYER 1 OF ${of}`
        : 'FRONT FACE'
      : `${index === of - 1 ? 'BACK FACE, ' : ''}LAYER ${index + 1} OF ${of}`,
  );
  return [...cuts, ...drawn, ...(index === 0 ? lines.boards : []), ...lines.face, ...(index === 0 ? lines.runs : [])];
}

function screwHoles(layout: FixtureLayout, faces: { readonly front: boolean; readonly back: boolean }): Shape[] {
  const held = (boards: readonly (Station | Backing)[]): { at: number; screw: DrivenScrew }[] =>
    boards.flatMap((board) => board.screws.map((screw) => ({ at: board.at, screw })));
  const [fromBack, fromFront] = [held(layout.stations), held(layout.backings)];
  return [
    ...[...fromBack, ...fromFront].map(({ at, screw }) => circle('hole', at, screw.offset, screw.kind.clearance)),
    ...[...(faces.back ? fromBack : []), ...(faces.front ? fromFront : [])].map(({ at, screw }) =>
      circle('countersink', at, screw.offset, screw.kind.headDiameter),
    ),
  ];
}

/** What the drawn face does not show, as it lies behind: dashed rings, each lettered beside it. */
function sunkFromBack({ stations }: FixtureLayout): Shape[] {
  return stations.flatMap(({ at, screws }) =>
    screws.flatMap(({ offset, kind }) => [
      ...dashedRing(at, offset, kind.headDiameter / 2),
      ...label('FROM BACK', {
        x: at - kind.headDiameter / 2 - 1,
        y: offset,
        width: Infinity,
        tallest: SMALLEST,
        angle: Math.PI / 2,
      }),
    ]),
  );
}

/** Height of the letters beside a dashed ring, mm. */
const SMALLEST = 1.8;
/** How many dashes a hidden ring is drawn by, and the share of it they cover. */
const DASHES = 12;
const DRAWN = 0.6;

function dashedRing(x: number, y: number, radius: number): Line[] {
  const place = (turn: number): [number, number] => [
    x + radius * Math.cos((2 * Math.PI * turn) / DASHES),
    y + radius * Math.sin((2 * Math.PI * turn) / DASHES),
  ];
  return Array.from({ length: DASHES }, (_, dash) => mark(place(dash), place(dash + DRAWN)));
}

/** Broken at every hole it would cross. */
function centreLine(layout: FixtureLayout, start: number, end: number): Line[] {
  const holes = [
    ...layout.clampHoles.map((hole) => ({ at: hole.at, radius: hole.diameter / 2 })),
    ...[...layout.stations, ...layout.backings].flatMap((board) =>
      board.screws
        .filter((screw) => screw.offset === 0)
        .map((screw) => ({ at: board.at, radius: screw.kind.headDiameter / 2 })),
    ),
  ].sort((a, b) => a.at - b.at);
  const from = [start, ...holes.map((hole) => hole.at + hole.radius)];
  const to = [...holes.map((hole) => hole.at - hole.radius), end];
  return from.map((s, index) => mark([s, 0], [to[index] ?? end, 0]));
}

/** Both faces of every board across the spine, each line once, none on the spine's own ends. */
function boardLines(layout: FixtureLayout, form: Cone): Line[] {
  const { length, ears } = layout.spine;
  const faces = [...layout.stations, ...layout.backings].flatMap((board) => [
    board.at - board.thickness / 2,
    board.at + board.thickness / 2,
  ]);
  const taken = [-ears, length + ears];
  return faces.flatMap((s) => {
    if (taken.some((other) => Math.abs(other - s) < SAME_LINE)) return [];
    taken.push(s);
    const half = radiusAtCentre(form, s);
    return [mark([s, -half], [s, half])];
  });
}

function runPointers(bend: BendPlan): Line[] {
  const points = new Set(bend.runs.flatMap((run) => [run.from, run.to]));
  return [...points].flatMap((x) => {
    const s = centreFromTangent(bend.form, x);
    const half = radiusAtCentre(bend.form, s);
    const inward = s > centreFromTangent(bend.form, bend.length) - POINTER ? -1 : 1;
    return [-1, 1].map((side) => mark([s, side * half], [s + inward * POINTER, side * (half - POINTER)]));
  });
}

/** Everything written on the spine; `face` says which face, or which layer, it is. */
function spineLabels(
  layout: FixtureLayout,
  bend: BendPlan,
  joints: Joints,
  face: string,
): { boards: Shape[]; face: Shape[]; runs: Shape[] } {
  return {
    boards: [
      ...(joints.with === 'jigsaw'
        ? boardLabels(layout.stations, 'ON FRONT', bend)
        : besideLabels(layout.stations, layout, bend)),
      ...(joints.with === 'laser'
        ? besideLabels(layout.backings, layout, bend)
        : boardLabels(layout.backings, 'ON BACK', bend)),
    ],
    face: gapLabels(layout, bend, face, joints.with === 'jigsaw' ? 0 : BESIDE),
    runs: runLabels(layout, bend),
  };
}

/** Room for a name beside a groove or slot, mm. */
const BESIDE = 6;

/** Names beside the boards' grooves or slots, across the grain of the other labels, on the side that has more room. */
function besideLabels(boards: readonly (Station | Backing)[], layout: FixtureLayout, bend: BendPlan): Shape[] {
  const gaps = clearStretches(layout);
  return boards.flatMap(({ name, at, thickness }) => {
    const room = (low: number, high: number): number =>
      Math.max(0, ...gaps.map((gap) => Math.min(gap.high, high) - Math.max(gap.low, low)));
    const [low, high] = [at - thickness / 2, at + thickness / 2];
    const after = room(high, high + BESIDE) >= room(low - BESIDE, low);
    const height = 0.6 * BESIDE;
    const half = radiusAtCentre(bend.form, at);
    return label(name, {
      x: after ? high + 1.4 + height : low - 1.4,
      y: half / 2,
      width: half / 2,
      tallest: height,
      angle: Math.PI / 2,
    });
  });
}

/** Which run ends at a pointer, along the upper edge just inside the clear stretch beside the station there. */
function runLabels(layout: FixtureLayout, bend: BendPlan): Shape[] {
  return layout.stations
    .filter((station) => station.ends.length > 0)
    .flatMap((station) => {
      const starts = station.ends.some(({ end }) => end === 'from');
      const names = station.ends.map(({ run, end }) => `${run} ${end === 'from' ? 'start' : 'end'}`).join(', ');
      const face = station.at + ((starts ? 1 : -1) * station.thickness) / 2;
      const gap = clearStretches(layout).find(({ low, high }) => Math.abs((starts ? low : high) - face) < SAME_LINE);
      if (!gap) return [];
      const room = Math.min(gap.high - gap.low - 3, 70);
      const half = Math.min(radiusAtCentre(bend.form, gap.low), radiusAtCentre(bend.form, gap.high));
      return label(names, {
        x: face + (starts ? 1 : -1) * (1.5 + room / 2),
        y: half - EDGE_LABEL - 1,
        width: room,
        tallest: EDGE_LABEL,
      });
    });
}

/** Each board's name inside its own footprint, and on which face of the spine it stands, across the grain of the other labels so that it cannot be taken for one. */
function boardLabels(boards: readonly (Station | Backing)[], face: string, bend: BendPlan): Shape[] {
  return boards.flatMap(({ name, at, thickness, screws }) => {
    const half = radiusAtCentre(bend.form, at);
    const heads = screws.map((screw) => Math.abs(screw.offset));
    const head = Math.max(0, ...screws.map(({ kind }) => kind.headDiameter)) / 2;
    const inner = screws.some((screw) => screw.offset === 0) ? head : 0;
    const outer = Math.max(...heads) > 0 ? Math.max(...heads) - head : half;
    const height = Math.min(5, thickness * 0.4);
    const write = (words: string, side: 1 | -1): Shape[] =>
      label(words, {
        x: at + height / 2,
        y: (side * (inner + outer)) / 2,
        width: outer - inner - 2,
        tallest: height,
        angle: Math.PI / 2,
        most: half - 2,
      });
    return [...write(name, 1), ...write(face, -1)];
  });
}

/** What the maker must not mix up, in the clear stretches between boards: the ends and the face. */
function gapLabels(layout: FixtureLayout, bend: BendPlan, face: string, beside: number): Shape[] {
  const gaps = clearStretches(layout).filter((gap) => gap.high - gap.low > 15);
  const [first, last] = [gaps[0], gaps.at(-1)];
  if (!first || !last) return [];
  const write = (gap: Stretch, side: 1 | -1, text: string): Shape[] => {
    const middle = (gap.low + gap.high) / 2;
    const half = Math.min(radiusAtCentre(bend.form, gap.low), radiusAtCentre(bend.form, gap.high));
    const hole = Math.max(
      0,
      ...layout.clampHoles
        .filter((clamp) => clamp.at + clamp.diameter / 2 > gap.low && clamp.at - clamp.diameter / 2 < gap.high)
        .map((clamp) => clamp.diameter / 2),
    );
    // Clear of the run names along the edge.
    const band = half - hole - 2 * EDGE_LABEL;
    const height = Math.min(7, band / 1.6);
    return label(text, {
      x: middle,
      y: side * (hole + band / 2) - height / 2 + (side > 0 ? 1 : 0),
      width: gap.high - gap.low - 4 - 2 * beside,
      tallest: height,
    });
  };
  return [
    ...write(first, 1, 'END A'),
    ...write(last, 1, 'END B'),
    ...write(first, -1, face),
    ...(last === first ? [] : write(last, -1, face)),
  ];
}

interface Stretch {
  readonly low: number;
  readonly high: number;
}

function clearStretches(layout: FixtureLayout): Stretch[] {
  const boards = [...layout.stations, ...layout.backings]
    .map((board) => ({ low: board.at - board.thickness / 2, high: board.at + board.thickness / 2 }))
    .sort((a, b) => a.low - b.low);
  const { length, ears } = layout.spine;
  return [{ high: -ears }, ...boards].map((board, index) => ({
    low: Math.max(board.high, -ears),
    high: boards[index]?.low ?? length + ears,
  }));
}
