import { describe, expect, it } from 'vitest';
import { centreFromTangent, midRadiusAt } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import { momentPerWidth } from '../../../src/design/bend/moment';
import type { FixtureLayout } from '../../../src/design/fixture/fixture';
import { LEAST_BEARING } from '../../../src/design/pull/hold';
import { woodLoads } from '../../../src/design/wood/loads';
import { boardOf } from '../../../src/design/built/board-of';
import { planStarter, tables } from '../../helpers/starters';

/** Loads on the form's wood looked at again at many places along it and many moments of the pull. */

const LOOKS = 1000;
const many = Array.from({ length: LOOKS + 1 }, (_, look) => look / LOOKS);
const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), -Infinity);

const momentAt = ({ section, form }: BendPlan, x: number): number =>
  momentPerWidth(section, midRadiusAt(form, section.thickness, x));

/** What each station takes of one run: the width nearer to it than to its neighbours, and that width's middle; found by walking along the run. */
function widths({ form }: BendPlan, layout: FixtureLayout, { from, to }: { from: number; to: number }) {
  const under = layout.stations.filter((station) => {
    const [low, high] = [station.at - station.thickness / 2, station.at + station.thickness / 2];
    return high > centreFromTangent(form, from) && low < centreFromTangent(form, to);
  });
  const steps = 20_000;
  const taken = new Map<string, { station: (typeof under)[number]; sum: number; count: number }>();
  for (let step = 0; step < steps; step++) {
    const x = from + ((to - from) * (step + 0.5)) / steps;
    const along = centreFromTangent(form, x);
    const [first, ...more] = under;
    if (!first) throw new Error('no station');
    const station = more.reduce((a, b) => (Math.abs(b.at - along) < Math.abs(a.at - along) ? b : a), first);
    const so = taken.get(station.name) ?? { station, sum: 0, count: 0 };
    taken.set(station.name, { station, sum: so.sum + x, count: so.count + 1 });
  }
  return [...taken.values()].map(({ station, sum, count }) => ({
    station,
    middle: sum / count,
    width: ((to - from) * count) / steps,
  }));
}

/** The same loads by hand; `job`'s boards and screws as they stand in the tables. */
function byHand({ bend, layout, job }: Pick<ReturnType<typeof planStarter>, 'bend' | 'layout' | 'job'>) {
  const pulls = bend.runs.flatMap((run) => widths(bend, layout, run));
  const loads = pulls.map(({ station, middle, width }) => {
    const mid = midRadiusAt(bend.form, bend.section.thickness, middle);
    const moment = momentAt(bend, middle) * width;
    const force = (wrap: number): number => moment / (bend.pull.lever + mid * (bend.wrap.chosen - wrap));
    const along = many.map((share) => {
      const wrap = bend.wrap.chosen * share;
      return Math.abs(force(wrap) * Math.cos(wrap));
    });
    const [screw] = station.screws;
    const diameter = screw?.kind.diameter ?? NaN;
    return {
      screws: {
        station: station.name,
        load: most(along) / station.screws.length,
        // 17.37 N/mm² of its diameter squared, two thirds of that in an edge.
        bears: 17.37 * diameter ** 2 * 0.6667,
      },
      roundEdge: {
        station: station.name,
        load: force(bend.wrap.chosen) / (station.thickness * 2 * bend.section.thickness),
        bears: boardOf(job.board.stations, tables).edgeStrength,
      },
    };
  });
  const worst = <Load extends { load: number; bears: number }>(all: readonly Load[]): Load =>
    all.reduce((a, b) => (b.load / b.bears > a.load / a.bears ? b : a));
  return { screws: worst(loads.map((one) => one.screws)), roundEdge: worst(loads.map((one) => one.roundEdge)) };
}

function expectLoad(
  got: { station: string; load: number; bears: number },
  wanted: { station: string; load: number; bears: number },
): void {
  expect(got.load / wanted.load).toBeCloseTo(1, 3);
  expect(got.bears).toBeCloseTo(wanted.bears, 9);
}

const runs = [
  { name: 'short', from: 0, to: 130, moment: 1 },
  { name: 'long', from: 130, to: 457.2, moment: 2 },
];
const plain = planStarter('plain-curve');
// Runs that part right before a station: the one before it takes all up to there, past the middle between the two.
const [, , third] = plain.layout.stations;
const parted = (third?.at ?? NaN) - (third?.thickness ?? NaN) / 2 - 1;
const before = [
  { name: 'before', from: 0, to: parted, moment: 1 },
  { name: 'after', from: parted, to: 457.2, moment: 1 },
];
const cases = [
  { what: 'a bend of one radius', ...plain },
  { what: 'a taper', ...planStarter('tapered-curve') },
  { what: 'a bend pulled in two runs', ...plain, bend: { ...plain.bend, runs } },
  { what: 'a bend pulled up to a station', ...plain, bend: { ...plain.bend, runs: before.slice(0, 1) } },
  { what: 'a bend pulled from a station on', ...plain, bend: { ...plain.bend, runs: before.slice(1) } },
];

describe.each(cases)('$what: the wood', ({ bend, layout, hold, job }) => {
  // Within each test, and not before all: a mutant is only switched on there.
  const loads = () => woodLoads({ bend, layout, hold }, job, tables);
  const hand = () => byHand({ bend, layout, job });

  it('has its screws sheared along the spine, by F·cos φ where that is greatest', () => {
    expectLoad(loads().screws, hand().screws);
  });

  it('has its round edges pressed at the end of the pull, spread by once the sheet’s thickness either way', () => {
    expectLoad(loads().roundEdge, hand().roundEdge);
  });
});

describe('the spine’s front edge', () => {
  const { bend, layout, hold, job } = plain;
  const [b, f] = [layout.spine.thickness, layout.foot];
  const moment = momentAt(bend, 0);
  const mid = midRadiusAt(bend.form, bend.section.thickness, 0);
  const whole = moment * 457.2;
  /** How far back the held leg bears at a wrap, the form cut free about the foot's rear. */
  const bears = (wrap: number, fitted: number): number => {
    const force = whole / (bend.pull.lever + mid * (bend.wrap.chosen - wrap));
    const tips = force * ((b + f) * Math.cos(wrap) + bend.form.radiusA * Math.sin(wrap));
    return (whole * (b + f)) / (fitted * (f + b / 2) - tips);
  };
  const shortest = (fitted: number): number => -most(many.map((share) => -bears(bend.wrap.chosen * share, fitted)));

  it('is pushed up by m/h, h where the held leg bears least in the course of the pull', () => {
    const { frontEdge } = woodLoads({ bend, layout, hold }, job, tables);
    const { edgeStrength } = boardOf(job.board.spine, tables);
    const bearing = Math.max(LEAST_BEARING, shortest(hold.fitted));
    expect(frontEdge.load / (moment / bearing)).toBeCloseTo(1, 4);
    expect(frontEdge.strength).toBe(edgeStrength);
    expect(frontEdge.beds).toBeCloseTo(frontEdge.load / edgeStrength, 12);
    // Clamps that hold harder shorten it, to 8 mm at the least: wood bears over that.
    const harder = woodLoads({ bend, layout, hold: { ...hold, fitted: 100 * hold.fitted } }, job, tables).frontEdge;
    expect(harder.load).toBeCloseTo(moment / LEAST_BEARING, 9);
    expect(harder.load).toBeGreaterThanOrEqual(frontEdge.load);
  });

  it('is pushed harder where the held leg is not so deep, as by 8 mm at the least', () => {
    const pushed = (A: number, B: number): number => {
      const depth = { A, B };
      const heldAlong = [{ from: 0, to: bend.length, under: depth, last: depth }];
      return woodLoads({ bend: { ...bend, heldAlong }, layout, hold }, job, tables).frontEdge.load;
    };
    expect(pushed(9, 50)).toBeCloseTo(moment / 9, 6);
    expect(pushed(50, 9)).toBeCloseTo(moment / 9, 6);
    expect(pushed(50, 3)).toBeCloseTo(moment / LEAST_BEARING, 6);
  });

  it('of a taper is pushed hardest where the sheet’s moment is greatest', () => {
    const taper = planStarter('tapered-curve');
    const { frontEdge } = woodLoads(taper, taper.job, tables);
    const ends = [0, taper.bend.length].map((x) => momentAt(taper.bend, x));
    expect(frontEdge.load).toBeLessThanOrEqual((most(ends) / LEAST_BEARING) * (1 + 1e-12));
    expect(frontEdge.load).toBeGreaterThanOrEqual((most(ends) / taper.hold.bearing) * (1 - 1e-12));
  });
});
