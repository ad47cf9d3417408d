import { radiusAtCentre } from '../../base/cone';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { Backing, FixtureLayout, Station } from '../../design/fixture/fixture';
import type { Joints, Layer } from '../../design/joints/joints';
import { onBench } from './frame';
import { CURVE_FACETS, prism, type Body, type FaceMark } from './solid';
import type { Point3 } from './vector';

const HOLE_FACETS = 24;

/** The boards of the form as convex solids on the bench: spine, stations, backing stations; holes and screw heads as marks on the spine. */
export function buildWood(layout: FixtureLayout, bend: BendPlan, joints: Joints | null): Body[] {
  return [
    spineBody(layout, bend, joints),
    ...layout.stations.flatMap((station) =>
      layersOf(station, joints).map((layer) => stationBody(station.name, layer, bend)),
    ),
    ...layout.backings.map((backing) => backingBody(backing, layout, bend)),
  ];
}

/** A station's layers, or the station itself as its only one. */
function layersOf(
  { name, at, thickness, radius }: Station,
  joints: Joints | null,
): Pick<Layer, 'low' | 'high' | 'radius'>[] {
  const stack = joints?.with === 'laser' ? joints.boards.find((board) => board.name === name) : undefined;
  return stack ? [...stack.layers] : [{ low: at - thickness / 2, high: at + thickness / 2, radius }];
}

function spineBody(layout: FixtureLayout, bend: BendPlan, joints: Joints | null): Body {
  const { length, thickness, ears } = layout.spine;
  const half = (along: number): number => radiusAtCentre(bend.form, along);
  const face = (ahead: number): Point3[] =>
    [
      { along: -ears, up: -half(-ears) },
      { along: length + ears, up: -half(length + ears) },
      { along: length + ears, up: half(length + ears) },
      { along: -ears, up: half(-ears) },
    ].map((place) => onBench(bend.form, { ...place, ahead }));
  return prism('spine', 'spine', [face(0), face(-thickness)], {
    marks: [
      spineMarks(layout, bend, 'front'),
      [...spineMarks(layout, bend, 'back'), ...tabMarks(layout, bend, joints)],
    ],
  });
}

/** What is seen on one face of the spine: the clamp holes, and the heads of the screws driven from that face. */
function spineMarks(layout: FixtureLayout, bend: BendPlan, side: 'front' | 'back'): FaceMark[] {
  const ahead = side === 'front' ? 0 : -layout.spine.thickness;
  const ring = (along: number, up: number, diameter: number): Point3[] =>
    Array.from({ length: HOLE_FACETS }, (_, index) => {
      const angle = (2 * Math.PI * index) / HOLE_FACETS;
      return onBench(bend.form, {
        along: along + (diameter / 2) * Math.cos(angle),
        up: up + (diameter / 2) * Math.sin(angle),
        ahead,
      });
    });
  return [
    ...layout.clampHoles.map((hole, index): FaceMark => ({
      kind: 'clamp-hole',
      name: `C${index + 1}`,
      closed: true,
      points: ring(hole.at, 0, hole.diameter),
    })),
    ...(side === 'back' ? layout.stations : layout.backings).flatMap((board) =>
      board.screws.map((screw): FaceMark => ({
        kind: 'screw-head',
        name: board.name,
        closed: true,
        points: ring(board.at, screw.offset, screw.kind.headDiameter),
      })),
    ),
  ];
}

/** Ends of tabs seen on the spine's back. */
function tabMarks({ spine }: FixtureLayout, bend: BendPlan, joints: Joints | null): FaceMark[] {
  if (joints?.with !== 'laser') return [];
  return joints.boards.flatMap(({ name, slots }) =>
    slots.map(({ low, high, offset, width }): FaceMark => {
      const corners = [
        [low, offset - width / 2],
        [high, offset - width / 2],
        [high, offset + width / 2],
        [low, offset + width / 2],
      ] as const;
      return {
        kind: 'tab',
        name,
        closed: true,
        points: corners.map(([along, up]) => onBench(bend.form, { along, up, ahead: -spine.thickness })),
      };
    }),
  );
}

function stationBody(
  name: string,
  { low, high, radius }: Pick<Layer, 'low' | 'high' | 'radius'>,
  bend: BendPlan,
): Body {
  const face = (along: number): Point3[] =>
    Array.from({ length: CURVE_FACETS + 1 }, (_, index) => {
      const angle = (Math.PI * index) / CURVE_FACETS;
      return onBench(bend.form, { along, ahead: radius * Math.sin(angle), up: -radius * Math.cos(angle) });
    });
  const inner = new Set(Array.from({ length: CURVE_FACETS - 1 }, (_, index) => index + 1));
  return prism('station', name, [face(low), face(high)], { smooth: inner });
}

function backingBody(backing: Backing, layout: FixtureLayout, bend: BendPlan): Body {
  const back = -layout.spine.thickness;
  const face = (along: number): Point3[] =>
    [
      { ahead: back, up: -backing.width / 2 },
      { ahead: back - backing.depth, up: -backing.width / 2 },
      { ahead: back - backing.depth, up: backing.width / 2 },
      { ahead: back, up: backing.width / 2 },
    ].map((place) => onBench(bend.form, { ...place, along }));
  return prism('backing', backing.name, [
    face(backing.at - backing.thickness / 2),
    face(backing.at + backing.thickness / 2),
  ]);
}
