import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toDegrees } from '../../../src/base/angle';
import { midRadiusAt, radiusAt } from '../../../src/base/cone';
import type { Point } from '../../../src/base/polygon';
import type { BendPlan, Wedge, Yoke } from '../../../src/design/bend/bend-plan';
import { bendingCurve, parameterAt } from '../../../src/design/bend/curve';
import { gripPoses, poseOf } from '../../../src/design/pull/grip-poses';
import { grippedLeg, type GrippedLeg } from '../../../src/design/pull/gripped-leg';
import { leastGap, noseClears, noseOutline, straightGap, wedgeOf } from '../../../src/design/pull/nose';
import { beamPieces } from '../../../src/design/pull/residual';
import type { OnForm } from '../../helpers/pull-curves';
import { buildModel } from '../../../src/output/picture/model';
import type { Body } from '../../../src/output/picture/solid';
import { tackleOf } from '../../../src/output/picture/tackle';
import { addScaled, dot, subtract, type Point3 } from '../../../src/output/picture/vector';
import { pulledBy } from '../../../src/output/picture/wrapped-sheet';
import { cases } from '../../helpers/cases';
import { CS, onForm } from '../../helpers/pull-curves';
import { panelStarters, planPanelStarter, planStarter, planText, starters, tables } from '../../helpers/starters';

const QUARTER = Math.PI / 2;
/** The leg of the table in “The pull and the hold”: 18 ga cold rolled steel over a 34.09 mm disc, hands at 203 mm. */
const steel = onForm(CS, 1.2141, 34.09);
const SHEET = 1.2141;
const at = (gap: number): GrippedLeg => {
  const leg = grippedLeg(steel.curve, 1 / steel.mid, { gap, arm: 203 - gap }, QUARTER);
  if (!leg) throw new Error('too limp');
  return leg;
};

/** A flange as it is rolled, not ground. */
const SQUARE: Wedge = { edge: 4, back: 0 };

/** The leg marched in small arcs from the take-off: its middle line's place and turn at the nose, by its moments' own pieces. */
function marched(
  { curve, mid }: Pick<OnForm, 'curve' | 'mid'>,
  leg: GrippedLeg,
): { out: number; up: number; turn: number } {
  let [out, up, turn] = [0, 0, 0];
  for (const { length, loaded } of beamPieces(curve, parameterAt(curve, 1 / mid), leg.parameter, leg.force)) {
    out += length * Math.cos(turn + loaded / 2);
    up += length * Math.sin(turn + loaded / 2);
    turn += loaded;
  }
  return { out, up, turn };
}

/** Places all round an angle, its flange a wedge toward the nose line. */
function roundAngle(
  { width, depth, thickness }: Pick<Yoke['nose'], 'width' | 'depth' | 'thickness'>,
  { edge, back }: Wedge,
): Point[] {
  const corners: Point[] = [
    [0, 0],
    [0, edge],
    [back, thickness],
    [width - thickness, thickness],
    [width - thickness, depth],
    [width, depth],
    [width, 0],
  ];
  return corners.flatMap(([x, y], index): Point[] => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [x, y];
    const steps = Math.max(1, Math.ceil(Math.hypot(nextX - x, nextY - y) / 0.5));
    return Array.from({ length: steps }, (_, step) => [
      x + ((nextX - x) * step) / steps,
      y + ((nextY - y) * step) / steps,
    ]);
  });
}

describe('a nose beside the form', () => {
  it('clears a straight leg’s disc at √(R² − (R − s)²); a leg that bends leaves it too near: there 4 mm of steel would be close on 3 mm in the wood', () => {
    const gap = straightGap(34.09, 4);
    expect(Math.hypot(gap, 34.09 - 4)).toBeCloseTo(34.09, 12);
    expect(straightGap(5, 10)).toBe(5);
    const square = noseOutline({ width: 40, depth: 40, thickness: 4 }, SQUARE);
    const slice = { mid: steel.mid, sheet: SHEET, wrap: QUARTER };
    expect(noseClears({ out: gap, up: 0, turn: 0 }, square, slice)).toBeCloseTo(0, 9);
    expect(toDegrees(at(15).loaded)).toBeGreaterThan(15);
    expect(noseClears(poseOf(steel.curve, 1 / steel.mid, at(15)), square, slice)).toBeLessThan(-3);
    expect(noseClears(poseOf(steel.curve, 1 / steel.mid, at(gap)), square, slice)).toBeLessThan(-2.9);
  });

  it('lies round the disc by its whole thickness where the sheet does', () => {
    const pose = { out: steel.mid * Math.sin(0.5), up: steel.mid * (1 - Math.cos(0.5)), turn: 0.5 };
    const square = noseOutline({ width: 40, depth: 4, thickness: 4 }, SQUARE);
    expect(noseClears(pose, square, { mid: steel.mid, sheet: SHEET, wrap: QUARTER })).toBeCloseTo(-4, 9);
  });

  it('ahead of the disc’s centre is as far from it as its nearest place is from that, behind it as from the line that runs back', () => {
    // A disc of 19 mm under a sheet of 2, no wrap: the inside face at the take-off is 19 mm below the centre, the nose's corners 19 and more above that face.
    const slice = { mid: 20, sheet: 2, wrap: 0 };
    const clears = (out: number, ...nose: [number, number][]) => noseClears({ out, up: 0, turn: 0 }, nose, slice);
    // Corners at (30, 0), (30, 20), (40, 20): level with the centre, and 30 ahead of it.
    expect(clears(30, [0, 19], [0, 39], [10, 39])).toBeCloseTo(30 - 19, 12);
    // (30, −20), (30, 20), (40, 20): the side between them passes there as well.
    expect(clears(30, [0, -1], [0, 39], [10, 39])).toBeCloseTo(30 - 19, 12);
    // (−30, 12), (−30, 40), (−40, 40): no more than 12 above the spine.
    expect(clears(-30, [0, 31], [0, 59], [-10, 59])).toBeCloseTo(12 - 19, 12);
    // (−30, 40), (10, 40), (10, 60), with 40 above the centre on the way.
    expect(clears(0, [-30, 59], [10, 59], [10, 79])).toBeCloseTo(40 - 19, 12);
    // (20, 60), (60, 60), (60, 20): the last side, back to the first corner, has (40, 40) on it.
    expect(clears(0, [20, 79], [60, 79], [60, 39])).toBeCloseTo(40 * Math.SQRT2 - 19, 12);
  });

  it('is where a leg laid out in small arcs has come to, and as far from the disc as the nearest of many places round it', () => {
    const nose = { width: 40, depth: 40, thickness: 4 };
    const wedge = wedgeOf(nose, tables.rules);
    expect(wedge).toEqual({ edge: 1, back: 9 });
    for (const gap of [12, 20, 30, 45, 70]) {
      const pose = poseOf(steel.curve, 1 / steel.mid, at(gap));
      const { out, up, turn } = marched(steel, at(gap));
      expect(Math.hypot(pose.out - out, pose.up - up)).toBeLessThan(0.01);
      expect(pose.turn).toBeCloseTo(turn, 6);
      const disc = steel.mid - SHEET / 2;
      const nearest = Math.min(
        ...roundAngle(nose, wedge).map(([x, y]) => {
          const high = y + SHEET / 2;
          const place = [
            out + x * Math.cos(turn) - high * Math.sin(turn),
            up + x * Math.sin(turn) + high * Math.cos(turn),
          ];
          return Math.hypot(place[0] ?? 0, (place[1] ?? 0) - steel.mid) - disc;
        }),
      );
      // At a right angle all of it is ahead of the spine.
      const clears = noseClears(pose, noseOutline(nose, wedge), { mid: steel.mid, sheet: SHEET, wrap: 0.3 });
      expect(Math.abs(clears - nearest)).toBeLessThan(0.03);
    }
  });

  it('is read between poses a fifth apart to a few hundredths of a mm', () => {
    const poses = gripPoses(steel.curve, 1 / steel.mid, { lever: 203, from: 14, to: 100, most: QUARTER * 0.9 });
    for (let gap = 14; gap <= 100; gap += 3.7) {
      const [read, exact] = [poses(gap), poseOf(steel.curve, 1 / steel.mid, at(gap))];
      if (!read) throw new Error(`no pose at ${gap}`);
      expect(Math.hypot(read.out - exact.out, read.up - exact.up)).toBeLessThan(gap < 60 ? 0.05 : 0.2);
      expect(Math.abs(read.turn - exact.turn)).toBeLessThan(1e-3);
      expect(Math.abs(read.stays - at(gap).stays)).toBeLessThan(1e-3);
    }
    expect(poses(5)).toBeNull();
    expect(poses(1000)).toBeNull();
  });

  it('is set at the least gap that clears, or nowhere', () => {
    expect(leastGap((gap) => gap - 30, 10, 100)).toBeCloseTo(30, 3);
    expect(leastGap((gap) => gap, 10, 100)).toBe(10);
    expect(leastGap((gap) => gap - 300, 10, 100)).toBeNull();
    expect(leastGap((gap) => (gap > 20 ? null : gap - 30), 10, 100)).toBeNull();
  });
});

/** How deep places of the nose come into half-discs, spine and backing stations at a wrap, mm; the yoke turned `inside` past the sheet at its nose. */
function deepest(
  bend: BendPlan,
  yoke: Yoke,
  wood: { spine: number; foot: number },
  look: { x: number; wrap: number; inside: number },
): number {
  const curve = bendingCurve(bend.section);
  const mid = midRadiusAt(bend.form, bend.section.thickness, look.x);
  const radius = radiusAt(bend.form, look.x);
  // The nose keeps its place on the sheet: the less is wrapped, the further past the take-off it is.
  const gap = yoke.gap + mid * (bend.wrap.chosen - look.wrap);
  const leg = grippedLeg(curve, 1 / mid, { gap, arm: yoke.arm }, QUARTER);
  if (!leg) return 0;
  const { out, up, turn } = marched({ curve, mid }, leg);
  const whole = turn + look.inside;
  const [cos, sin] = [Math.cos(look.wrap), Math.sin(look.wrap)];
  return Math.max(
    ...roundAngle(yoke.nose, yoke.wedge).map(([x, y]) => {
      const along = out - (bend.section.thickness / 2) * Math.sin(turn) + x * Math.cos(whole) - y * Math.sin(whole);
      const above =
        up + (bend.section.thickness / 2) * Math.cos(turn) + x * Math.sin(whole) + y * Math.cos(whole) - mid;
      const [ahead, high] = [along * cos - above * sin, along * sin + above * cos];
      if (ahead >= 0) return radius - Math.hypot(ahead, high);
      return ahead > -(wood.spine + wood.foot) ? radius - Math.abs(high) : -Infinity;
    }),
  );
}

function expectClear(bend: BendPlan, wood: { spine: number; foot: number }, name: string): void {
  const { yoke } = bend.pull;
  if (!yoke) return;
  for (const x of [0, bend.length]) {
    for (let step = 0; step <= 12; step++) {
      const wrap = (bend.wrap.chosen * step) / 12;
      // In the middle of the span the members part and the yoke turns further than the sheet; beside the bolts the sheet leaves the form so much later.
      expect(deepest(bend, yoke, wood, { x, wrap, inside: yoke.loaded }), `${name}, middle, ${wrap}`).toBeLessThan(
        0.03,
      );
      const later = Math.min(wrap + (2 / 3) * yoke.loaded, wrap + 0.08);
      expect(deepest(bend, yoke, wood, { x, wrap: later, inside: 0 }), `${name}, bolts, ${wrap}`).toBeLessThan(0.03);
    }
  }
}

/** Places on a body of the picture, a few mm apart on every edge of its faces and between them. */
function placesOn(body: Body): Point3[] {
  const [near, far] = [body.faces[0]?.outline ?? [], body.faces[1]?.outline ?? []];
  return near.flatMap((corner, index) => {
    const next = near[(index + 1) % near.length] ?? corner;
    const over =
      far.length === near.length
        ? subtract(
            far.reduce((a, b) => (Math.hypot(...subtract(a, corner)) < Math.hypot(...subtract(b, corner)) ? a : b)),
            corner,
          )
        : ([0, 0, 0] as const);
    const along = Array.from({ length: 60 }, (_, step) => step / 59);
    return [0, 0.25, 0.5, 0.75].flatMap((share) =>
      along.map((run) => addScaled(addScaled(corner, subtract(next, corner), share), over, run)),
    );
  });
}

const yoked = [
  ...starters.map((name) => ({ name, ...planStarter(name) })),
  ...starters.map((name) => ({
    name: `${name}, by yoke`,
    ...planStarter(name, (text) => `${text}\npull: { with: yoke }\n`),
  })),
  ...panelStarters.flatMap((name) =>
    planPanelStarter(name).forms.map(({ planned, ...form }) => ({ ...planned, name: `${name} ${form.name}` })),
  ),
].filter(({ bend }) => bend.pull.yoke !== null);

describe.each(yoked)('the yoke of $name', ({ bend, layout, name }) => {
  it('stays out of stations, spine and backing stations all through the pull, in the middle of its span and beside its bolts', () => {
    expect(bend.pull.yoke?.clears).toBeGreaterThanOrEqual(0);
    expectClear(bend, { spine: layout.spine.thickness, foot: layout.foot }, name);
  });

  it('stays out of them in the picture too', () => {
    const tackle = tackleOf(bend, layout, tables.rules);
    const { A, B } = bend.pull.legs;
    // A straight nose drawn across a leg that turns unlike at its ends lies a little off both.
    const across = Math.abs(A.loaded - B.loaded) > 0.1 ? 0.2 : 0;
    for (let step = 0; step <= 10; step++) {
      const { bodies, chordError } = buildModel(layout, bend, pulledBy(bend, step / 10), { tackle });
      const places = bodies.filter((body) => body.name === 'nose').flatMap(placesOn);
      expect(places.length).toBeGreaterThan(1000);
      for (const wood of bodies.filter(({ kind }) => kind === 'station' || kind === 'spine' || kind === 'backing')) {
        const planes = wood.faces.map(({ normal, outline }) => ({ normal, off: dot(normal, outline[0] ?? [0, 0, 0]) }));
        const within = places.filter((place) =>
          planes.every(({ normal, off }) => dot(normal, place) < off - chordError - across),
        );
        expect(within, `${wood.name} at ${step}/10`).toEqual([]);
      }
    }
  });
});

describe('a yoke', () => {
  it('stays out of the wood whatever the job', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        fc.record({
          metal: fc.constantFrom(
            'steel-cold-rolled-cs',
            'aluminium-3003-h14',
            'stainless-304-annealed',
            'aluminium-5052-h32',
          ),
          thickness: fc.double({ min: 0.8, max: 2.2, noNaN: true }),
          angle: fc.integer({ min: 45, max: 130 }),
          from: fc.integer({ min: 25, max: 90 }),
          taper: fc.double({ min: 1, max: 1.4, noNaN: true }),
          free: fc.integer({ min: 120, max: 260 }),
          people: fc.integer({ min: 1, max: 3 }),
        }),
        ({ metal, thickness, angle, from, taper, free, people }) => {
          const planned = planText(
            `title: yoked\nunits: mm\nsheet: { material: ${metal}, thickness: ${thickness} }\nbend: { angle: ${angle}, length: 400, radius: { from: ${from}, to: ${from * taper} }, legs: { held: 60, free: ${free} } }\nboard: { stock: mdf-18 }\neffort: { people: ${people} }\npull: { with: yoke }\n`,
          );
          if (!planned.buildable || !planned.bend.pull.yoke) return;
          seen++;
          expectClear(planned.bend, { spine: planned.layout.spine.thickness, foot: planned.layout.foot }, metal);
        },
      ),
      { numRuns: cases(240) },
    );
    expect(seen).toBeGreaterThan(cases(100));
  });
});
