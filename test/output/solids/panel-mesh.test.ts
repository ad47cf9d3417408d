import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../../src/base/area';
import { at } from '../../../src/base/at';
import { curvatureRadiusAt } from '../../../src/base/cone';
import { meshVolume, panelMesh, type Mesh } from '../../../src/output/solids';
import { buildUp, finishedWraps, foldPanel, type Panel } from '../../../src/panel';
import { cases } from '../../helpers/cases';
import { bend, box, built, corner, rules } from '../../panel/panels';
import { randomPanels } from '../../panel/random-panels';

const hood = built(
  box(558.8, 228.6, {
    thickness: 1.2141,
    bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
  }),
);
const inches = built(
  box(558.8, 228.6, {
    thickness: 1.2141,
    bends: [
      bend('long', { radius: { short: 31.75, back: 44.45 }, reach: { leg: 63.5 } }),
      bend('short', { radius: { long: 31.75, top: 38.1 }, reach: { leg: 63.5 } }),
    ],
    corners: [corner(['long', 'short'], { gap: 3.175 })],
  }),
);
const zed = built(
  box(300, 200, { bends: [bend('long'), bend('top', { turn: 'down', radius: { back: 20, short: 26 } })] }),
);
const tray = built(box(300, 200, { bends: [bend('long'), bend('back'), bend('short')] }));
const lapped = built(
  box(300, 200, { bends: [bend('long'), bend('short')], corners: [corner(['long', 'short'], { treat: 'lap' })] }),
);
/** A hole that lies half in the base, half in a bend. */
const holed: Panel = {
  ...zed,
  holes: [
    [
      { x: 100, y: 0, bulge: -1 },
      { x: 120, y: 0, bulge: -1 },
    ],
  ],
};

const panels = { hood, inches, zed, tray, lapped, holed };

/** Sides of triangles that are not run along once each way (3MF Core Specification, 4.1.3.1). */
function openSides({ triangles }: Mesh): string[] {
  const sides = new Map<string, number>();
  for (let index = 0; index < triangles.length; index++) {
    const next = index % 3 === 2 ? index - 2 : index + 1;
    const side = `${at(triangles, index)} ${at(triangles, next)}`;
    sides.set(side, (sides.get(side) ?? 0) + 1);
  }
  return [...sides].flatMap(([side, count]) =>
    count === 1 && sides.get(side.split(' ').reverse().join(' ')) === 1 ? [] : [side],
  );
}

describe.each(Object.entries(panels))('finished panel as a solid: %s', (_, panel) => {
  it('is closed and turned outward, finished and flat', () => {
    const flat = foldPanel(
      panel,
      finishedWraps(panel).map(({ cone }) => ({ cone, wrap: 0 })),
    );
    for (const mesh of [panelMesh(panel), panelMesh(panel, flat)]) {
      expect(openSides(mesh)).toEqual([]);
      expect(meshVolume(mesh)).toBeGreaterThan(0);
    }
  });
});

describe('finished panels at random', () => {
  it('are closed solids turned outward, whatever meets in their corners', () => {
    let looked = 0;
    fc.assert(
      fc.property(randomPanels, (spec) => {
        const { value } = buildUp(spec, rules);
        fc.pre(value !== null);
        const mesh = panelMesh(value);
        looked += 1;
        expect(openSides(mesh)).toEqual([]);
        expect(meshVolume(mesh)).toBeGreaterThan(0);
      }),
      { numRuns: cases(200) },
    );
    expect(looked).toBeGreaterThanOrEqual(cases(200));
  });
});

describe('volume of the finished panel', () => {
  it('is the faces’ area by the thickness, and round a bend that of a ring: (mid radius over neutral radius) of its flat', () => {
    const faces = zed.faces.reduce((sum, { outline }) => sum + loopArea(outline), 0) * zed.thickness;
    // Pappus: a small piece of the flat stands for its length at the neutral radius; its volume goes with its length at mid thickness.
    const zones = zed.bends.reduce((sum, { zone, finished, neutral, thickness }) => {
      const middle = curvatureRadiusAt(finished, finished.length / 2);
      return sum + (loopArea(zone) * thickness * (middle + thickness / 2)) / (middle + neutral * thickness);
    }, 0);
    expect(meshVolume(panelMesh(zed)) / (faces + zones)).toBeCloseTo(1, 3);
  });

  it('a hole takes out its area by the thickness', () => {
    const taken = meshVolume(panelMesh(zed)) - meshVolume(panelMesh(holed));
    const area = Math.PI * 100 * zed.thickness;
    expect(taken / area).toBeCloseTo(1, 2);
  });
});
