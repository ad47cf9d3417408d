import { describe, expect, it } from 'vitest';
import { toDegrees } from '../../../src/base/angle';
import { midRadiusAt, radiusAt } from '../../../src/base/cone';
import { momentPerWidth } from '../../../src/design/bend/moment';
import { LEAST_BEARING } from '../../../src/design/pull/hold';
import { planStarter, starters } from '../../helpers/starters';

/** Each starter as every tool cuts it: the spine is thicker or thinner, the foot another. */
const jobs = starters.flatMap((name) => (['jigsaw', 'router', 'laser'] as const).map((tool) => ({ name, tool })));

describe.each(jobs)('$name, cut with a $tool: sheet and form cut free', ({ name, tool }) => {
  const { bend, hold, layout, job, plan } = planStarter(name, (text) => `${text}\ncut: { with: ${tool} }\n`);
  const run = bend.runs.reduce((most, one) => (one.moment > most.moment ? one : most));
  const [b, f] = [layout.spine.thickness, layout.foot];

  /** ∫ over the governing run by Simpson's rule on 200 strips. */
  const overRun = (of: (x: number) => number): number => {
    const strips = 200;
    const step = (run.to - run.from) / strips;
    return Array.from({ length: strips + 1 }, (_, index) => {
      const weight = index === 0 || index === strips ? 1 : index % 2 === 1 ? 4 : 2;
      return (weight * step * of(run.from + index * step)) / 3;
    }).reduce((sum, part) => sum + part, 0);
  };
  const mid = (x: number): number => midRadiusAt(bend.form, bend.section.thickness, x);
  const moment = (x: number): number => momentPerWidth(bend.section, mid(x));
  /** Moment about the foot's rear, N·mm, of the pull at a wrap: its force at the take-off, square to the disc, by its two parts. */
  const pullAbout = (wrap: number): number =>
    overRun((x) => {
      const force = moment(x) / (bend.pull.lever + mid(x) * (bend.wrap.chosen - wrap));
      const at = { x: radiusAt(bend.form, x) * Math.sin(wrap), y: radiusAt(bend.form, x) * (1 - Math.cos(wrap)) };
      return (at.x + b + f) * force * Math.cos(wrap) + at.y * force * Math.sin(wrap);
    });

  it('behind the tangent line the bench’s push at the bearing balances what bends the sheet', () => {
    expect(Math.abs((hold.up * hold.bearing) / overRun(moment) - 1)).toBeLessThan(1e-9);
  });

  it('about the foot’s rear nothing is left over of clamps, up-push and pull at the end of the pull', () => {
    const down = hold.fitted * (f + b / 2);
    const left = down - hold.up * (b + f) - pullAbout(bend.wrap.chosen);
    // On the shortest bearing a bench of wood allows, clamps may hold more than is asked: the foot takes it.
    if (hold.bearing > LEAST_BEARING) expect(Math.abs(left) / down).toBeLessThan(1e-9);
    else expect(left / down).toBeGreaterThan(-1e-9);
  });

  it('the clamps asked for, less their safety, just hold at the worst moment of the pull, and more than hold at every other', () => {
    const arm = Math.min(job.bend.legs.held, b + f);
    const need = (hold.clampForce / hold.safety) * (f + b / 2);
    const left = (wrap: number): number => need - (overRun(moment) / arm) * (b + f) - pullAbout(wrap);
    expect(Math.abs(left(hold.worst)) / need).toBeLessThan(1e-9);
    for (let look = 0; look <= 30; look++) expect(left((bend.wrap.chosen * look) / 30) / need).toBeGreaterThan(-1e-9);
    expect(hold.fitted).toBeGreaterThanOrEqual(hold.clampForce);
  });

  it('the parts of the finished angle add up: what the arc keeps, and both legs’ tails', () => {
    for (const end of ['A', 'B'] as const) {
      const x = end === 'A' ? 0 : bend.length;
      const share = mid(x) / midRadiusAt(bend.finished, bend.section.thickness, x);
      const legs = (bend.pull.legs[end].stays + hold.tail[end]) / Math.cos(bend.finished.halfAngle);
      const wrapped = bend.wrap[end] * share + legs;
      const angle = 2 * Math.asin(Math.sin(wrapped / 2) * Math.cos(bend.finished.halfAngle));
      expect(Math.abs(angle - job.bend.angle)).toBeLessThan(1e-9);
    }
    expect(Math.abs(toDegrees((bend.wrap.A + bend.wrap.B) / 2) - plan.bend.wrap.chosen)).toBeLessThan(1e-9);
  });
});
