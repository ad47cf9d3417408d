import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/base/drawing';
import { loopLength } from '../../../src/base/way';
import { asCircle, outlineArea, outlineOf, type Outline } from '../../../src/panel/trace/outline';
import { cutAndTrim } from '../../../src/panel/trim/cut-and-trim';
import type { CutAndTrim, PulledSide } from '../../../src/panel/trim/trim';
import { inWords } from '../../helpers/in-words';

type Point = readonly [number, number];
const loop = (...points: readonly Point[]): Vertex[] => points.map(([x, y]) => ({ x, y, bulge: 0 }));

/** A panel whose base lies above y 50 and whose leg, given by its corners from right to left, below: the pulled side. */
const below = (leg: readonly Vertex[], lever = 120): PulledSide => ({
  bend: 'long',
  line: [
    { x: 300, y: 50 },
    { x: 0, y: 50 },
  ],
  free: [leg],
  lever,
});

function made(net: Outline, ...pulled: readonly PulledSide[]): CutAndTrim {
  const { value, findings } = cutAndTrim(net, pulled, 'trim');
  if (!value)
    throw new Error(
      inWords(findings)
        .map(({ message }) => message)
        .join('\n'),
    );
  return value;
}

const corners = (vertices: readonly Vertex[]): string =>
  vertices
    .map(({ x, y, bulge }) => `${x.toFixed(3)},${y.toFixed(3)}${bulge === 0 ? '' : ` ${bulge.toFixed(4)}`}`)
    .join(' ');

describe('the shadow of a pulled leg', () => {
  it('a narrowing leg is widened to the whole line: area 300·lever beyond it', () => {
    const leg = loop([0, 50], [50, 0], [250, 0], [300, 50]);
    const net = outlineOf(loop([300, 50], [300, 200], [0, 200], [0, 50], [50, 0], [250, 0]), [
      [
        { x: 100, y: 20, bulge: 1 },
        { x: 110, y: 20, bulge: 1 },
      ],
    ]);
    const { cut, trim } = made(net, below(leg));
    expect(outlineArea(cut)).toBeCloseTo(300 * 150 + 300 * 120 - Math.PI * 25, 3);
    expect(asCircle(cut.holes[0] ?? [])?.radius).toBeCloseTo(5, 9);
    expect(trim.map(corners)).toEqual(['0.000,50.000 50.000,0.000 250.000,0.000 300.000,50.000']);
  });

  it('a flaring leg grows no wider: outside the line from its slanted edge out, 300·l + 2·(50·l − 50²/2)', () => {
    const leg = loop([0, 50], [-50, 0], [350, 0], [300, 50]);
    const net = outlineOf(loop([300, 50], [300, 200], [0, 200], [0, 50], [-50, 0], [350, 0]), []);
    const { cut, trim } = made(net, below(leg));
    expect(outlineArea(cut)).toBeCloseTo(300 * 150 + 300 * 120 + 2 * (50 * 120 - 1250), 3);
    expect(corners(cut.vertices.toSorted((a, b) => a.y - b.y || a.x - b.x).slice(0, 2))).toBe(
      '-50.000,-70.000 350.000,-70.000',
    );
    expect(trim.map(corners)).toEqual(['-50.000,0.000 350.000,0.000']);
  });

  it('a notch in the rim is filled, arcs elsewhere stay arcs, edges keep their names', () => {
    const quarter = Math.tan(Math.PI / 8);
    const leg = loop([0, 50], [0, 0], [100, 0], [100, 20], [130, 20], [130, 0], [300, 0], [300, 50]);
    const base: Vertex[] = [
      { x: 300, y: 50, bulge: 0 },
      { x: 300, y: 160, bulge: quarter },
      { x: 260, y: 200, bulge: 0 },
      { x: 0, y: 200, bulge: 0 },
    ];
    const plain = outlineOf([...base, ...leg.slice(0, -1)], []);
    const net = {
      ...plain,
      edges: plain.vertices.map(({ y }, index) => (index === 1 ? 'corner' : y === 200 ? 'back' : null)),
    };
    const { cut, trim } = made(net, below(leg));
    expect(outlineArea(cut)).toBeCloseTo(300 * 150 + 300 * 120 - (1 - Math.PI / 4) * 1600, 3);
    expect(cut.vertices.map(({ bulge }) => bulge).filter((bulge) => bulge !== 0)).toHaveLength(1);
    expect(Math.max(...cut.vertices.map(({ bulge }) => bulge))).toBeCloseTo(quarter, 6);
    expect(new Set(cut.edges)).toEqual(new Set([null, 'corner', 'back']));
    expect(trim).toHaveLength(1);
    expect(loopLength(trim[0] ?? []) - 300).toBeCloseTo(300 + 2 * 20, 6);
  });

  it('a leg with a round end: its arc is where it is trimmed', () => {
    const quarter = Math.tan(Math.PI / 8);
    const leg: Vertex[] = [
      { x: 0, y: 50, bulge: 0 },
      { x: 0, y: 40, bulge: quarter },
      { x: 40, y: 0, bulge: 0 },
      { x: 300, y: 0, bulge: 0 },
      { x: 300, y: 50, bulge: 0 },
    ];
    const net = outlineOf(
      [...leg.slice(-1), { x: 300, y: 200, bulge: 0 }, { x: 0, y: 200, bulge: 0 }, ...leg.slice(0, -1)],
      [],
    );
    const { cut, trim } = made(net, below(leg));
    expect(outlineArea(cut)).toBeCloseTo(300 * 270, 3);
    expect(trim.map(corners)).toEqual([`0.000,40.000 ${quarter.toFixed(4)} 40.000,0.000 300.000,0.000`]);
  });

  it('a leg that already reaches the lever is left as it is', () => {
    const leg = loop([0, 50], [0, -100], [300, -100], [300, 50]);
    const net = outlineOf(loop([300, 50], [300, 200], [0, 200], [0, 50], [0, -100], [300, -100]), []);
    const { cut, trim } = made(net, below(leg, 90));
    expect(outlineArea(cut)).toBeCloseTo(outlineArea(net), 6);
    expect(trim).toEqual([]);
  });

  it('turned by any angle the areas are the same', () => {
    for (const degrees of [17, 90, 213]) {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const turned = (points: readonly Vertex[]): Vertex[] =>
        points.map(({ x, y, bulge }) => ({ x: c * x - s * y, y: s * x + c * y, bulge }));
      const leg = loop([0, 50], [-50, 0], [350, 0], [300, 50]);
      const [from, to] = turned(loop([300, 50], [0, 50]));
      const net = outlineOf(turned(loop([300, 50], [300, 200], [0, 200], [0, 50], [-50, 0], [350, 0])), []);
      if (!from || !to) throw new Error('no line');
      const { cut } = made(net, { bend: 'long', line: [from, to], free: [turned(leg)], lever: 120 });
      expect(outlineArea(cut)).toBeCloseTo(300 * 150 + 300 * 120 + 9500, 2);
    }
  });
});

describe('shadows that are refused', () => {
  it('on another part of the panel', () => {
    // An arm of the base reaches down beside the leg and under it.
    const net = outlineOf(
      loop(
        [300, 50],
        [330, 50],
        [330, -100],
        [100, -100],
        [100, -120],
        [360, -120],
        [360, 200],
        [0, 200],
        [0, 50],
        [0, 0],
        [300, 0],
      ),
      [],
    );
    const leg = loop([0, 50], [0, 0], [300, 0], [300, 50]);
    const { value, findings } = cutAndTrim(net, [below(leg, 160)], 'trim');
    expect(value).toBeNull();
    expect(inWords(findings).map(({ code, message }) => `${code}: ${message}`)).toEqual([
      'trim-on-panel: the metal left on for the pull at long falls on another part of the panel at (200 mm, -105 mm)',
    ]);
    expect(inWords(cutAndTrim(net, [below(leg, 140)], 'trim').findings)).toEqual([]);
  });

  it('on each other', () => {
    // Two legs of a base with a corner of 60° between their lines lean toward each other.
    const net = outlineOf(loop([0, 0], [200, 0], [200, -20], [260, -20], [200, 200], [0, 200]), []);
    const down: PulledSide = {
      bend: 'a',
      line: [
        { x: 200, y: 0 },
        { x: 0, y: 0 },
      ],
      free: [loop([0, 0], [0, -1], [200, -1], [200, 0])],
      lever: 90,
    };
    const slanted: PulledSide = {
      bend: 'b',
      line: [
        { x: 205, y: -15 },
        { x: 155, y: -15 },
      ],
      free: [loop([205, -15], [155, -15], [155, -16], [205, -16])],
      lever: 60,
    };
    expect(cutAndTrim(net, [down, slanted], 'trim').findings.map(({ code }) => code)).toContain('trim-on-trim');
  });
});
