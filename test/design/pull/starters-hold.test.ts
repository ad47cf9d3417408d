import { describe, expect, it } from 'vitest';
import { toDegrees } from '../../../src/base/angle';
import { midRadiusAt, radiusAt } from '../../../src/base/cone';
import { momentPerWidth } from '../../../src/design/bend/moment';
import { LEAST_BEARING } from '../../../src/design/pull/hold';
import { panelStarters, planPanelStarter, planStarter, starters } from '../../helpers/starters';

/** Each starter as every tool cuts it: the spine is thicker or thinner, the foot another. */
const jobs = starters.flatMap((name) =>
  (['jigsaw', 'router', 'laser'] as const).map((tool) => ({
    what: `${name}, cut with a ${tool}`,
    built: () => planStarter(name, (text) => `${text}\ncut: { with: ${tool} }\n`),
  })),
);

/** Each bend of each panel, the side held as in its step, on the form that is built. */
const bends = panelStarters.flatMap((name) =>
  planPanelStarter(name).bends.map(({ bend, alone }) => ({ what: `${name}, bend ${bend.name}`, built: () => alone })),
);

describe.each([...jobs, ...bends])('$what: sheet and form cut free', ({ built }) => {
  const { bend, hold, layout, job, plan } = built();
  const run = bend.runs.reduce((most, one) => (one.moment > most.moment ? one : most));
  const [b, f] = [layout.spine.thickness, layout.foot];
  const { heldAlong } = bend;
  // Where the held side's depth turns a corner against the bearing no rule of a few places is exact.
  const close = heldAlong ? 1e-3 : 1e-9;
  const under = (x: number): number => {
    const piece = heldAlong?.find(({ to }) => x <= to) ?? heldAlong?.at(-1);
    if (!piece) return job.bend.legs.held;
    const share = (x - piece.from) / (piece.to - piece.from);
    return Math.max(LEAST_BEARING, piece.under.A + share * (piece.under.B - piece.under.A));
  };

  /** ∫ over the governing run by Simpson's rule on 200 strips; on 20000 where the held side is not of one depth. */
  const overRun = (of: (x: number) => number): number => {
    const strips = heldAlong ? 20000 : 200;
    const step = (run.to - run.from) / strips;
    return Array.from({ length: strips + 1 }, (_, index) => {
      const weight = index === 0 || index === strips ? 1 : index % 2 === 1 ? 4 : 2;
      return (weight * step * of(run.from + index * step)) / 3;
    }).reduce((sum, part) => sum + part, 0);
  };
  const mid = (x: number): number => midRadiusAt(bend.form, bend.section.thickness, x);
  const [momentA, momentB] = [momentPerWidth(bend.section, mid(0)), momentPerWidth(bend.section, mid(bend.length))];
  /** Moment per width; where there are many places, between few as a straight line. */
  const moment = (x: number): number =>
    heldAlong ? momentA + (x / bend.length) * (momentB - momentA) : momentPerWidth(bend.section, mid(x));
  /** The bench's push on the held leg, which bears `bearing` mm back and nowhere further than it is deep. */
  const pushed = (bearing: number): number => overRun((x) => moment(x) / Math.min(bearing, under(x)));
  /** Moment about the foot's rear, N·mm, of the pull at a wrap: its force at the take-off, square to the disc, by its two parts. */
  const pullAbout = (wrap: number): number =>
    overRun((x) => {
      const force = moment(x) / (bend.pull.lever + mid(x) * (bend.wrap.chosen - wrap));
      const at = { x: radiusAt(bend.form, x) * Math.sin(wrap), y: radiusAt(bend.form, x) * (1 - Math.cos(wrap)) };
      return (at.x + b + f) * force * Math.cos(wrap) + at.y * force * Math.sin(wrap);
    });

  it('behind the tangent line the bench’s push at the bearing balances what bends the sheet', () => {
    expect(Math.abs(hold.up / pushed(hold.bearing) - 1)).toBeLessThan(close);
    if (!heldAlong) expect(Math.abs((hold.up * hold.bearing) / overRun(moment) - 1)).toBeLessThan(1e-9);
  });

  it('about the foot’s rear nothing is left over of clamps, up-push and pull at the end of the pull', () => {
    const down = hold.fitted * (f + b / 2);
    const left = down - hold.up * (b + f) - pullAbout(bend.wrap.chosen);
    // On the shortest bearing a bench of wood allows, clamps may hold more than is asked: the foot takes it.
    if (hold.bearing > LEAST_BEARING) expect(Math.abs(left) / down).toBeLessThan(close);
    else expect(left / down).toBeGreaterThan(-close);
  });

  it('the clamps asked for, less their safety, just hold at the worst moment of the pull, and more than hold at every other', () => {
    const arm = Math.min(job.bend.legs.held, b + f);
    const need = (hold.clampForce / hold.safety) * (f + b / 2);
    const left = (wrap: number): number => need - pushed(arm) * (b + f) - pullAbout(wrap);
    expect(Math.abs(left(hold.worst)) / need).toBeLessThan(close);
    for (let look = 0; look <= 30; look++) expect(left((bend.wrap.chosen * look) / 30) / need).toBeGreaterThan(-close);
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
