import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import { loopArea } from '../../src/base/area';
import type { Vertex } from '../../src/base/drawing';
import type { Point } from '../../src/base/polygon';
import { apart3 } from '../../src/base/space';
import { distance } from '../../src/panel/flat/plane';
import { foldPanel, toSpace } from '../../src/panel/fold/fold';
import { layOutTraced, type TracedPanel } from '../../src/panel/traced/lay-out';
import { splitLoop } from '../../src/panel/traced/split-loop';
import type { Traced, TracedBend } from '../../src/panel/traced/traced';
import { bend, box, built } from './panels';

const loop = (...points: (readonly [number, number, number?])[]): Vertex[] =>
  points.map(([x, y, bulge = 0]) => ({ x, y, bulge }));

function laidOut(traced: Traced): TracedPanel {
  const { value, findings } = layOutTraced(traced);
  if (!value) throw new Error(findings.map(({ code, path }) => `${path}: ${code}`).join('; '));
  return value;
}

const line = (from: Point, to: Point, more: Partial<TracedBend> = {}): TracedBend => ({
  name: 'line',
  line: [from, to],
  free: 'left',
  turn: 'up',
  angle: toRadians(90),
  radius: { A: 30, B: 30 },
  neutral: null,
  ...more,
});

const rectangle = loop([0, 0], [300, 0], [300, 200], [0, 200]);

describe('cutting a loop along a line', () => {
  it('gives two loops that together have its area, arcs and all', () => {
    const round = loop([0, 0, 0.3], [200, 20], [220, 150, -0.2], [60, 180, 1], [0, 100]);
    for (const [from, to] of [
      [
        [10, 60],
        [190, 70],
      ],
      [
        [100, 10],
        [90, 150],
      ],
      [
        [5, 5],
        [150, 150],
      ],
    ] as const) {
      const split = splitLoop(round, [from, to]);
      if (!split) throw new Error('cut');
      expect(loopArea(split.left) + loopArea(split.right)).toBeCloseTo(loopArea(round), 6);
      expect(loopArea(split.left)).toBeGreaterThan(0);
      expect(loopArea(split.right)).toBeGreaterThan(0);
    }
    expect(
      splitLoop(round, [
        [-50, 0],
        [-50, 10],
      ]),
    ).toBeNull();
  });
});

describe('a traced panel', () => {
  it('with the metal allowed for keeps its outline, and has the built-up panel’s faces', () => {
    const panel = built(box(300, 140, { bends: [bend('top', { radius: { back: 40, short: 30 }, from: 'short' })] }));
    const drawn: Traced = {
      thickness: 1.2,
      outline: panel.outline,
      holes: [],
      mockup: 'metal-allowed',
      bends: [line([10, 140], [290, 140], { radius: { A: 30, B: 40 } })],
    };
    const { panel: traced, takenOff } = laidOut(drawn);
    expect(takenOff).toEqual([{ bend: 'line', A: 0, B: 0 }]);
    expect(traced.outline).toBe(panel.outline);
    expect(traced.faces.map(({ outline }) => loopArea(outline))).toEqual(
      panel.faces.map(({ outline }) => expect.closeTo(loopArea(outline), 6) as number),
    );
    expect(loopArea(traced.bends[0]?.zone ?? [])).toBeCloseTo(loopArea(panel.bends[0]?.zone ?? []), 6);
  });

  it('off card folded sharp takes 2R·tan(ψ/2) − ψ(R + K·t): R 30, 90°, t 1.2 → 12 mm (design section 1)', () => {
    const { panel, takenOff } = laidOut({
      thickness: 1.2,
      outline: rectangle,
      holes: [],
      mockup: 'sharp',
      bends: [line([0, 120], [300, 120])],
    });
    expect(takenOff[0]?.A).toBeCloseTo(60 - (Math.PI / 2) * 30.6, 9);
    expect(Math.abs((takenOff[0]?.A ?? 0) - 12)).toBeLessThan(0.1);
    expect(loopArea(panel.outline)).toBeCloseTo(300 * (200 - 60 + (Math.PI / 2) * 30.6), 6);
    expect(panel.bends[0]?.frame.at[1]).toBeCloseTo(90, 9);
  });

  it('folds to where the card stands: places of the leg as if turned sharply about the traced line, tapers too', () => {
    const holes = [loop([200, 170, 1], [210, 170, 1]), loop([40, 40], [40, 50], [50, 50])];
    for (const radius of [
      { A: 30, B: 30 },
      { A: 20, B: 34 },
      { A: 34, B: 20 },
    ])
      for (const turn of ['up', 'down'] as const) {
        const fold = [
          [0, 110],
          [300, 125],
        ] as const;
        const angle = toRadians(75);
        const { panel } = laidOut({
          thickness: 1.2,
          outline: rectangle,
          holes,
          mockup: 'sharp',
          bends: [line(...fold, { radius, turn, angle })],
        });
        const folded = foldPanel(panel);
        // Card: a rotation about the fold line, both on the inside face.
        const length = distance(...fold);
        const way: Point = [300 / length, 15 / length];
        const out: Point = [-way[1], way[0]];
        const inside = (turn === 'up' ? 1 : -1) * (panel.thickness / 2);
        const card = ([x, y]: Point) => {
          const [u, v] = [x * way[0] + (y - 110) * way[1], x * out[0] + (y - 110) * out[1]];
          const level = v * Math.cos(angle);
          return [
            u * way[0] + level * out[0],
            110 + u * way[1] + level * out[1],
            inside + (turn === 'up' ? 1 : -1) * v * Math.sin(angle),
          ] as const;
        };
        const hole = panel.holes[0]?.[0];
        if (!hole) throw new Error('a hole');
        expect(
          apart3(toSpace(folded, { kind: 'face', face: 1 }, { flat: [hole.x, hole.y], up: inside }), card([200, 170])),
        ).toBeLessThan(1e-6);
        for (const corner of [
          [300, 200],
          [0, 200],
        ] as const) {
          const nearest = Math.min(
            ...panel.outline.map(({ x, y }) =>
              apart3(toSpace(folded, { kind: 'face', face: 1 }, { flat: [x, y], up: inside }), card(corner)),
            ),
          );
          expect(nearest).toBeLessThan(1e-6);
        }
        expect(panel.holes[1]?.[0]).toMatchObject({ x: 40, y: 40 });
      }
  });

  it('wound round a radius: the same panel from card that is as long as its own middle', () => {
    // A mock-up wound round R 20, card 1 mm: base 80 to the line, then (π/2)·20.5, then 60 flat.
    const wound = 80 + (Math.PI / 2) * 20.5 + 60;
    const { panel } = laidOut({
      thickness: 1.2,
      outline: loop([0, 0], [300, 0], [300, wound], [0, wound]),
      holes: [],
      mockup: { radius: 20, thickness: 1, over: 'inside' },
      bends: [line([0, 80], [300, 80])],
    });
    // Planes meet at 100 from the base's edge and 80 below the rim; finished R 30 then leaves 70 and 50.
    expect(panel.bends[0]?.frame.at[1]).toBeCloseTo(70, 9);
    const height = Math.max(...panel.outline.map(({ y }) => y));
    expect(height).toBeCloseTo(70 + (Math.PI / 2) * 30.6 + 50, 9);
  });

  it('takes bends in any order, one on the leg of another', () => {
    const bends = [
      line([0, 165], [300, 165], { name: 'lip', radius: { A: 8, B: 8 } }),
      line([0, 80], [300, 80], { name: 'wall', radius: { A: 20, B: 20 } }),
    ];
    const { panel } = laidOut({ thickness: 1.2, outline: rectangle, holes: [], mockup: 'sharp', bends });
    expect(panel.bends.map(({ name, base, leg }) => [name, base, leg])).toEqual([
      ['lip', 2, 1],
      ['wall', 0, 2],
    ]);
    const folded = foldPanel(panel);
    // A channel: the lip's far edge stands 85 up and 35 back over the base, on the inside face.
    const inside = panel.thickness / 2;
    const nearest = Math.min(
      ...panel.outline.map(({ x, y }) =>
        apart3(toSpace(folded, { kind: 'face', face: 1 }, { flat: [x, y], up: inside }), [0, 45, inside + 85]),
      ),
    );
    expect(nearest).toBeLessThan(1e-6);
    expect(loopArea(panel.outline)).toBeCloseTo(
      300 * (200 - 40 + (Math.PI / 2) * 20.6 - 16 + (Math.PI / 2) * (8 + (panel.bends[0]?.neutral ?? NaN) * 1.2)),
      6,
    );
  });

  it('says what cannot be', () => {
    const sharp = { thickness: 1.2, outline: rectangle, holes: [], mockup: 'sharp' } as const;
    expect(layOutTraced({ ...sharp, bends: [line([400, 0], [400, 100])] }).findings).toMatchObject([
      { code: 'bend-off-outline', path: 'bends[0].line' },
    ]);
    expect(layOutTraced({ ...sharp, bends: [line([0, 190], [300, 190])] }).findings).toMatchObject([
      { code: 'bend-without-metal' },
    ]);
    expect(layOutTraced({ ...sharp, bends: [line([0, 20], [300, 20])] }).findings).toMatchObject([
      { code: 'bend-without-metal' },
    ]);
    expect(
      layOutTraced({ ...sharp, bends: [line([0, 100], [300, 100])], holes: [loop([100, 95, 1], [110, 95, 1])] })
        .findings,
    ).toMatchObject([{ code: 'hole-in-bend', path: 'outline.holes[0]' }]);
    // 350 mm of radius over the outline's 300 mm.
    const steep = line([0, 100], [300, 100], { radius: { A: 50, B: 400 } });
    expect(layOutTraced({ ...sharp, bends: [steep] }).findings).toMatchObject([
      { code: 'taper-too-steep', path: 'bends[0].radius', values: { growth: 350, length: 300 } },
    ]);
  });
});
