import { describe, expect, it } from 'vitest';
import { drawAids } from '../../src/drawing/aids';
import { drawParts } from '../../src/drawing/parts';
import { buildModel } from '../../src/output/picture/model';
import { tackleOf } from '../../src/output/picture/tackle';
import { pulledBy } from '../../src/output/picture/wrapped-sheet';
import { cross, dot, type Point3 } from '../../src/output/picture/vector';
import { writeShopSheet } from '../../src/output/shop-sheet';
import { planStarter, starters, tables } from '../helpers/starters';

const DEGREE = Math.PI / 180;
const between = (a: Point3, b: Point3): number => Math.atan2(Math.hypot(...cross(a, b)), dot(a, b));

/** The end of the pull, read out of each thing the maker gets, and compared with plan.json. Shared plan “The pull and the hold”: all belong to the same instant. */
describe.each(starters)('the end of the pull of %s', (name) => {
  const planned = planStarter(name);
  const { bend, job, plan, layout } = planned;
  const legAngle = (plan.pull.legAngle.from + plan.pull.legAngle.to) / 2;
  const wrap = plan.bend.wrap.chosen;
  const taper = bend.form.halfAngle !== 0;
  const model = buildModel(layout, bend, pulledBy(bend, 1), { tackle: tackleOf(bend, layout, tables.rules) });
  const sheet = model.bodies.filter(({ kind }) => kind === 'sheet').flatMap(({ faces }) => faces);

  it('is the take-off on every station’s marks, and in the picture where the sheet leaves the form', () => {
    const stations = drawParts(planned, tables).filter(({ kind }) => kind === 'station');
    expect(stations.length).toBeGreaterThan(0);
    for (const { drawing } of stations) {
      const ticks = drawing.shapes.flatMap((shape) =>
        shape.kind === 'line' && Math.hypot(...shape.from) > 5 ? [Math.atan2(shape.to[1], shape.to[0]) / DEGREE] : [],
      );
      expect(Math.min(...ticks.map((tick) => Math.abs(tick - wrap)))).toBeLessThan(1e-6);
    }
    // In a slice square to the centre line the first piece beyond the form is as far round as the wrap.
    const beyond = model.bodies.filter(({ kind, name: piece }) => kind === 'sheet' && piece !== 'held leg');
    const round = beyond.map(({ faces }) => faces[0]?.normal ?? [0, 0, 0]);
    const reached = round.map(([x, y, z]) => {
      const upright = z * Math.cos(bend.form.halfAngle) - x * Math.sin(bend.form.halfAngle);
      return Math.atan2(y, -upright) / DEGREE;
    });
    expect(Math.min(...reached.map((turned) => Math.abs(turned - wrap)))).toBeLessThan(1e-6);
  });

  it('is the leg’s angle on the gauge, in the picture and at the end of the slider', () => {
    const gauge = drawAids(bend, job).find(({ id }) => id === 'angle-on-form');
    const lettered = gauge?.drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [parseFloat(shape.text)] : []));
    expect(
      Math.min(...(lettered ?? []).filter(Number.isFinite).map((angle) => Math.abs(angle - legAngle))),
    ).toBeLessThan(taper ? 0.02 : 0.0051);
    const [held, free] = [sheet[0]?.normal, sheet.at(-1)?.normal];
    if (!held || !free) throw new Error('no legs');
    expect(Math.abs(between(held, free) / DEGREE - legAngle)).toBeLessThan(taper ? 0.1 : 1e-6);
  });

  it('stands on the blank’s mark, and says the same in words', () => {
    const { held } = job.bend.legs;
    const edge = Math.min(...sheet.flatMap(({ outline }) => outline.map(([, y]) => y)));
    const mark = plan.blank.tangents[0]?.[0][1] ?? NaN;
    // Held edge to mark on the flat blank, and held edge to the spine's front face in the picture.
    expect(mark + held).toBeCloseTo(-edge, 9);
    expect(mark).toBeCloseTo(-plan.pull.early, 12);
    const text = writeShopSheet(planned, { parts: [], boards: [] }, tables, { units: 'mm' }).replaceAll(
      /<[^>]*>/gu,
      '',
    );
    expect(text).toContain(`${wrap.toFixed(1)}° of wrap`);
    expect(text).toContain(`${legAngle.toFixed(1)}° from flat`);
  });

  it('has the yoke on the leg it grips, at the gauge’s angle, its nose as far out as the plan’s gap', () => {
    // The flange’s side on the sheet: of its faces the one that looks away from the held leg’s inside as far as the leg is turned.
    const flange = model.bodies.find(({ name: piece }) => piece === 'nose')?.faces;
    expect(flange === undefined).toBe(plan.pull.yoke === null);
    const [held] = sheet;
    if (!flange || !held) return;
    const turns = flange.map(({ normal }) => between(held.normal, normal) / DEGREE);
    const turned = turns.reduce((near, one) => (Math.abs(one - legAngle) < Math.abs(near - legAngle) ? one : near));
    expect(Math.abs(turned - legAngle)).toBeLessThan(taper ? 0.1 : 1e-6);
  });
});
