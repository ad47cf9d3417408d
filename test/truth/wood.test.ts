import { describe, expect, it } from 'vitest';
import { planStarter, tables } from '../helpers/starters';

/** By hand from the plan's printed numbers, with published strengths typed here. */
const planned = (name: string, change = ''): ReturnType<typeof planStarter> =>
  planStarter(name, (text) => `${text}\n${change}\n`);

describe('screws and wood', () => {
  it('a #8 screw bears p = C·D², C 2520, D .164 in: 67.8 lb, in end grain two thirds (Timber Engineering Formulas, read)', () => {
    const { plan } = planned('plain-curve-inch');
    expect(plan.stations[0]?.screws[0]?.size).toBe('#8');
    const pounds = (2520 * 0.164 ** 2 * 2) / 3;
    expect(pounds).toBeCloseTo(45.2, 1);
    expect(Math.abs(plan.wood.screws.bears / 4.448222 / pounds - 1)).toBeLessThan(1e-3);
  });

  it('MDF bears on its edge less than EN 12369-1 has for MDF.LA (about 13 MPa, from memory), plywood less than the handbooks’ compression', () => {
    for (const { id, edgeStrength } of tables.boards) {
      const most = id.startsWith('mdf') ? 13 : id.startsWith('ply-birch') ? 22 : 21;
      expect(edgeStrength, id).toBeLessThanOrEqual(most);
      expect(edgeStrength, id).toBeGreaterThan(most / 2);
    }
  });

  it.each(['plain-curve', 'plain-curve-inch', 'thick-steel'])('%s: loads by hand from the plan', (name) => {
    const { plan } = planned(name);
    const { bend, sheet, pull, hold, wood, stations, spine, effort, runs } = plan;
    const [run] = runs;
    if (!run) throw new Error('no run');
    const perMm = run.moment / (run.to - run.from);
    const rho = bend.form.from + sheet.thickness / 2;
    const psi = (bend.wrap.chosen * Math.PI) / 180;
    const angles = Array.from({ length: 2001 }, (_, k) => (psi * k) / 2000);
    // Each station takes half way to its neighbours, the outer ones from the ends.
    const at = stations.map((station) => station.at);
    const share = (index: number): number =>
      (index + 1 < at.length ? ((at[index] ?? 0) + (at[index + 1] ?? 0)) / 2 : run.to) -
      (index > 0 ? ((at[index - 1] ?? 0) + (at[index] ?? 0)) / 2 : run.from);
    const force = (index: number, phi: number): number => (perMm * share(index)) / (pull.lever + rho * (psi - phi));
    const shears = stations.map(
      (station, index) =>
        Math.max(...angles.map((phi) => Math.abs(force(index, phi) * Math.cos(phi)))) / station.screws.length,
    );
    expect(Math.abs(wood.screws.load / Math.max(...shears) - 1)).toBeLessThan(1e-4);
    expect(wood.screws.station).toBe(stations[shears.indexOf(Math.max(...shears))]?.name);
    const presses = stations.map((station, index) => force(index, psi) / (station.thickness * 2 * sheet.thickness));
    expect(Math.abs(wood.roundEdge.load / Math.max(...presses) - 1)).toBeLessThan(1e-4);
    expect(wood.roundEdge.bears).toBe(10);

    // The shortest bearing on the way: what the clamps press down less what the pull lifts, about the foot's rear.
    const [f, b] = [effort.foot, spine.thickness];
    const bearings = angles.map((phi) => {
      const all = run.moment / (pull.lever + rho * (psi - phi));
      const lifts = all * ((b + f) * Math.cos(phi) + bend.form.from * Math.sin(phi));
      return (run.moment * (b + f)) / (hold.fitted * (f + b / 2) - lifts);
    });
    const shortest = Math.max(8, Math.min(...bearings));
    expect(Math.abs(wood.frontEdge.load / (perMm / shortest) - 1)).toBeLessThan(1e-3);
    expect(wood.frontEdge.beds).toBeCloseTo(wood.frontEdge.load / 10, 9);
  });

  it('half as much clamp force bears further back and pushes the front edge up less', () => {
    const [few, many] = ['1200 N', '6000 N'].map(
      (rating) => planned('thick-steel', `clamps: { rating: ${rating} }`).plan,
    );
    expect(many?.wood.frontEdge.load).toBeGreaterThan(few?.wood.frontEdge.load ?? Infinity);
  });
});
