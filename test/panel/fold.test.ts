import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import { apart3, dot3, sideOf, length3, minus, turnedBy, type Place3 } from '../../src/base/space';
import { flattenLoop } from '../../src/base/flatten';
import { isInside, type Point } from '../../src/base/polygon';
import { flatAt, flatOnLeg, fromFrame, type Bend } from '../../src/panel/flat/bend';
import { buildUp } from '../../src/panel/flat/build-up';
import type { Panel } from '../../src/panel/flat/panel';
import { foldPanel, pieceFinder, toSheet, toSpace, type Folded, type Piece } from '../../src/panel/fold/fold';
import { cases } from '../helpers/cases';
import { bend, box, built, rules } from './panels';
import { randomPanels } from './random-panels';

const COUNT = cases(400);

/** Every random panel that can be laid out. */
function onPanels(check: (panel: Panel, folded: Folded) => void): number {
  let sound = 0;
  fc.assert(
    fc.property(randomPanels, (spec) => {
      const { value: panel } = buildUp(spec, rules);
      if (!panel) return;
      sound++;
      check(panel, foldPanel(panel));
    }),
    { numRuns: COUNT },
  );
  return sound;
}

/** A grid of places of a loop, inside it. */
function within(outline: Panel['outline'], across = 5): Point[] {
  const polygon = flattenLoop(outline, 0.01);
  const [xs, ys] = [polygon.map(([x]) => x), polygon.map(([, y]) => y)];
  const at = (values: number[], share: number): number =>
    Math.min(...values) + share * (Math.max(...values) - Math.min(...values));
  const shares = Array.from({ length: across }, (_, index) => (index + 0.5) / across);
  return shares
    .flatMap((a) => shares.map((b): Point => [at(xs, a), at(ys, b)]))
    .filter((place) => isInside(place, polygon));
}

/** The neutral surface's height over the middle of the sheet in a bend's zone. */
const neutralUp = ({ turn, thickness, neutral }: Bend): number =>
  (turn === 'up' ? 1 : -1) * (thickness / 2 - neutral * thickness);

const pieces = (panel: Panel): Piece[] => [
  ...panel.faces.map((_, face) => ({ kind: 'face' as const, face })),
  ...panel.bends.map((_, index) => ({ kind: 'zone' as const, bend: index })),
];

describe('folding', () => {
  it('keeps every distance along the neutral surface: small steps about random places, all ways, within 1e-6 of their length', () => {
    const sound = onPanels((panel, folded) => {
      panel.bends.forEach((one, index) => {
        const up = neutralUp(one);
        for (const place of within(one.zone, 4))
          for (const way of [0, 1, 2, 3, 4].map((turn): Point => [Math.cos(turn), Math.sin(turn)])) {
            const step = 1e-3;
            const at = (share: number): Place3 =>
              toSpace(
                folded,
                { kind: 'zone', bend: index },
                { flat: [place[0] + way[0] * share, place[1] + way[1] * share], up },
              );
            const sides = apart3(at(-step), at(step)) / (2 * step);
            expect(Math.abs(sides - 1)).toBeLessThan(1e-6);
          }
      });
      panel.faces.forEach((face, index) => {
        expect(sideOf(folded.motions[index] ?? { x: [0, 0, 0], y: [0, 0, 0], z: [0, 0, 0], at: [0, 0, 0] })).toBe(1);
        const [a, b] = within(face.outline, 3);
        if (!a || !b) return;
        const at = (flat: Point): Place3 => toSpace(folded, { kind: 'face', face: index }, { flat, up: 0 });
        expect(apart3(at(a), at(b))).toBeCloseTo(Math.hypot(a[0] - b[0], a[1] - b[1]), 6);
      });
    });
    expect(sound).toBeGreaterThan(COUNT / 4);
  });

  it('joins what it cuts: along both tangent lines zone and faces agree, at every height in the sheet', () => {
    onPanels((panel, folded) => {
      panel.bends.forEach((one, index) => {
        for (const x of [0, 0.3, 1].map((share) => share * one.finished.length))
          for (const up of [-0.5, 0, 0.5].map((share) => share * panel.thickness)) {
            const near = { flat: fromFrame(one.frame, [x, 0]), up };
            const far = { flat: flatAt(one, { x, wrap: one.wrap }), up };
            const zone: Piece = { kind: 'zone', bend: index };
            expect(
              apart3(toSpace(folded, zone, near), toSpace(folded, { kind: 'face', face: one.base }, near)),
            ).toBeLessThan(1e-8);
            expect(
              apart3(toSpace(folded, zone, far), toSpace(folded, { kind: 'face', face: one.leg }, far)),
            ).toBeLessThan(1e-8);
          }
      });
    });
  });

  it('turns each leg from its base by the asked angle within 1e-9, up or down', () => {
    onPanels((panel, folded) => {
      for (const one of panel.bends) {
        const [base, leg] = [folded.motions[one.base], folded.motions[one.leg]];
        if (!base || !leg) throw new Error('a motion each');
        const normals = [turnedBy(base, [0, 0, 1]), turnedBy(leg, [0, 0, 1])] as const;
        const apart = 2 * Math.asin(length3(minus(...normals)) / 2);
        expect(Math.abs(apart - one.angle)).toBeLessThan(1e-9);
        const out = flatOnLeg(one, [one.finished.length / 2, 1]);
        const on = flatOnLeg(one, [one.finished.length / 2, 0]);
        const rise = dot3(turnedBy(leg, [out[0] - on[0], out[1] - on[1], 0]), normals[0]);
        expect(Math.sign(rise)).toBe(one.turn === 'up' ? 1 : -1);
      }
    });
  });

  it('goes there and back', () => {
    onPanels((panel, folded) => {
      const find = pieceFinder(panel);
      for (const piece of pieces(panel)) {
        const outline = piece.kind === 'face' ? panel.faces[piece.face]?.outline : panel.bends[piece.bend]?.zone;
        for (const flat of within(outline ?? [], 3)) {
          const place = { flat, up: 0.3 * panel.thickness };
          const returned = toSheet(folded, piece, toSpace(folded, piece, place));
          expect(Math.hypot(returned.flat[0] - flat[0], returned.flat[1] - flat[1])).toBeLessThan(1e-6);
          expect(returned.up).toBeCloseTo(place.up, 8);
          expect(find(flat)).toEqual(piece);
        }
      }
    });
  });

  it('brings built-up sizes back: the legs’ planes meet the base’s in the polygon given, rims stand level at their height', () => {
    for (const measured of ['inside', 'outside'] as const) {
      const corners: Point[] = [
        [0, 0],
        [558.8, 0],
        [540, 228.6],
        [10, 228.6],
      ];
      const panel = built({
        thickness: 1.2141,
        base: { corners, edges: ['long', 'back', 'top', 'short'], measured },
        bends: [
          bend('long', { radius: { short: 30, back: 45 }, reach: { height: 110 } }),
          bend('short', { radius: { long: 30, top: 36 }, angle: toRadians(70), reach: { height: 95 } }),
          bend('back', { radius: { long: 25, top: 20 }, angle: toRadians(100), turn: 'up', reach: { height: 80 } }),
        ],
        corners: [],
      });
      const folded = foldPanel(panel);
      const up = (measured === 'inside' ? 1 : -1) * (panel.thickness / 2);
      panel.bends.forEach((one, index) => {
        const edge = [0, 3, 1][index] ?? 0;
        const [from, to] = [corners[edge], corners[(edge + 1) % 4]];
        const leg = folded.motions[one.leg];
        if (!from || !to || !leg) throw new Error('an edge and a leg');
        const normal = turnedBy(leg, [0, 0, 1]);
        const on = toSpace(folded, { kind: 'face', face: one.leg }, { flat: flatOnLeg(one, [0, 10]), up });
        for (const place of [from, to]) {
          const off = dot3(minus([place[0], place[1], up], on), normal);
          expect(Math.abs(off / Math.sin(one.angle))).toBeLessThan(1e-6);
        }
        const height = [110, 95, 80][index] ?? NaN;
        const rim = panel.faces[one.leg]?.outline ?? [];
        const rises = rim.map(
          ({ x, y }) => toSpace(folded, { kind: 'face', face: one.leg }, { flat: [x, y], up })[2] - up,
        );
        const top = Math.max(...rises);
        expect(Math.abs(top - height)).toBeLessThan(1e-6);
        expect(rises.filter((rise) => Math.abs(rise - height) < 1e-6).length).toBeGreaterThanOrEqual(2);
      });
    }
  });

  it('passes into the cylinder’s fold as the taper vanishes', () => {
    const spec = (to: number) => box(400, 200, { bends: [bend('long', { radius: { short: 30, back: to } })] });
    const plain = foldPanel(built(spec(30)));
    for (const growth of [1e-12, 1e-9, 1e-7, -1e-7]) {
      const tapered = foldPanel(built(spec(30 + growth * 400)));
      for (const x of [0, 400])
        for (const y of [-10, -40, -90]) {
          const piece: Piece = y < -48 ? { kind: 'face', face: 1 } : { kind: 'zone', bend: 0 };
          const place = { flat: [x, y] as const, up: 0 };
          expect(apart3(toSpace(plain, piece, place), toSpace(tapered, piece, place))).toBeLessThan(
            2e3 * Math.abs(growth) + 1e-9,
          );
        }
    }
  });
});
