import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { formMomentAt } from '../../../src/design/bend/effort';
import { midRadiusAt, radiusAt } from '../../../src/base/cone';
import type { BuildablePanel, PanelBend } from '../../../src/output/panel/plan-panel';
import { stepWords } from '../../../src/output/panel/step-words';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { asText, panelFilesOf } from '../../helpers/laid-out';
import { planPanelStarter } from '../../helpers/starters';

/** Radii of panel design's own example, its second edge on a stretch of the first's form. */
const hood = (text: string): string =>
  text
    .replace('{ short: 1-1/4, back: 1-3/4 }', '{ short: 30 mm, back: 45 mm }')
    .replace('{ long: 1-1/4, top: 1-1/2 }', '{ long: 30 mm, top: 36 mm }\n    form: { with: long }');

const steep = (text: string): string =>
  text.replace('on: right, angle: 90', 'on: right, angle: 60').replace('[420, 260], [0, 260]', '[420, 300], [0, 300]');

/** Too small round for holes: both bends are clamped over its ears. */
const bracket = (text: string): string => text.replace('radius: { left: 20, right: 26 }', 'radius: 20');

const shared = [
  ['a bracket of one radius', planPanelStarter('bracket', bracket), ['foot']],
  ['the tray', planPanelStarter('tray'), ['back']],
  ['a tray with one end less steep', planPanelStarter('tray', steep), ['back']],
  ['the hood of the design', planPanelStarter('hood-side', hood), ['long']],
] as const;

/** The form a bend is made on, its stretch there and the holes it is clamped through, along the tangent line from the form's end A, mm. */
function standing({ forms }: BuildablePanel, { bend, step }: PanelBend) {
  const form = forms.find(({ name }) => name === step.use.body.name);
  const run = form?.runs.find((one) => one.name === bend.name);
  if (!form || !run) throw new Error(`no form for ${bend.name}`);
  const { layout, bend: sums } = form.planned;
  const cosine = Math.cos(sums.form.halfAngle);
  const numbers = layout.guests.find(({ name }) => name === bend.name)?.holes ?? layout.ownHoles;
  const holes = numbers.map((index) => at(layout.clampHoles, index)).map((hole) => ({ ...hole, at: hole.at / cosine }));
  const backings = layout.backings.map((one) => ({ ...one, at: one.at / cosine }));
  return { form, run, holes, layout, backings };
}

describe.each(shared)('%s on one form', (_, planned, names) => {
  it('is made on it', () => {
    expect(planned.forms.map(({ name }) => name)).toEqual(names);
    expect(at(planned.forms, 0).runs).toHaveLength(planned.bends.length);
  });

  it('has clamps for each bend within the stretch it uses, wood beside them, over metal that is there', () => {
    for (const made of planned.bends) {
      const { run, holes, layout, form } = standing(planned, made);
      const { wood } = form.planned.job.clamps;
      expect(
        holes.length + (layout.spine.ears > 0 && run.to - run.from > form.planned.bend.form.length - 1e-6 ? 2 : 0),
      ).toBe(made.alone.layout.clamps);
      for (const { at: place, diameter } of holes) {
        expect(place - diameter / 2 - wood).toBeGreaterThan(run.from - 1e-6);
        expect(place + diameter / 2 + wood).toBeLessThan(run.to + 1e-6);
      }
    }
  });

  it('has a station flush with both ends of each stretch, and a backing station within it', () => {
    for (const made of planned.bends) {
      const { run, layout, backings, form } = standing(planned, made);
      const cosine = Math.cos(form.planned.bend.form.halfAngle);
      const lows = layout.stations.map(({ at: place, thickness }) => (place - thickness / 2) / cosine);
      const highs = layout.stations.map(({ at: place, thickness }) => (place + thickness / 2) / cosine);
      expect(Math.min(...lows.map((low) => Math.abs(low - run.from)))).toBeLessThan(1e-6);
      expect(Math.min(...highs.map((high) => Math.abs(high - run.to)))).toBeLessThan(1e-6);
      expect(
        backings.some(
          ({ at: place, thickness }) =>
            place - thickness / 2 >= run.from - 1e-6 && place + thickness / 2 <= run.to + 1e-6,
        ),
      ).toBe(true);
    }
  });

  it('has no two stations, backing stations or holes in one another, and no hole in a board', () => {
    const { layout } = at(planned.forms, 0).planned;
    const half = ({ diameter }: { readonly diameter: number }): number => diameter / 2;
    const rooms = [...layout.stations.map(({ at: s, thickness }) => [s - thickness / 2, s + thickness / 2] as const)];
    const behind = layout.backings.map(({ at: s, thickness }) => [s - thickness / 2, s + thickness / 2] as const);
    const holes = layout.clampHoles.map((hole) => [hole.at - half(hole), hole.at + half(hole)] as const);
    for (const row of [rooms, behind, holes]) {
      const rising = [...row].sort((a, b) => a[0] - b[0]);
      rising.slice(1).forEach(([low], index) => expect(low).toBeGreaterThanOrEqual(at(rising, index)[1] - 1e-6));
    }
    for (const [low, high] of holes)
      for (const [from, to] of [...rooms, ...behind]) expect(high <= from || low >= to).toBe(true);
  });

  it('is held for each bend by its own clamps, with the safety asked: moments about the foot’s rear at each degree, and along the spine', () => {
    for (const made of planned.bends) {
      const { run, holes, form } = standing(planned, made);
      const { bend, layout, hold } = made.alone;
      const { job } = form.planned;
      const [spine, foot] = [form.planned.layout.spine.thickness, form.planned.layout.foot];
      expect([layout.foot, layout.spine.thickness]).toEqual([foot, spine]);
      // The bend in slices of a millimetre or so, on the form that is built.
      const count = Math.ceil(run.to - run.from);
      const wide = (run.to - run.from) / count;
      const slices = Array.from({ length: count }, (_slice, index) => {
        const x = run.from + (index + 0.5) * wide;
        const cone = form.planned.bend.form;
        return {
          x,
          moment: wide * formMomentAt(bend.section, cone, x),
          radius: radiusAt(cone, x),
          mid: midRadiusAt(cone, bend.section.thickness, x),
        };
      });
      const whole = slices.reduce((sum, { moment }) => sum + moment, 0);
      const bears = Math.min(bend.legs.held, spine + foot);
      let most = 0;
      for (let wrap = 0; wrap < bend.wrap.chosen; wrap += Math.PI / 180) {
        const tips = slices.reduce((sum, { moment, radius, mid }) => {
          const force = moment / (bend.pull.lever + mid * (bend.wrap.chosen - wrap));
          return sum + force * ((spine + foot) * Math.cos(wrap) + radius * Math.sin(wrap));
        }, 0);
        most = Math.max(most, ((whole / bears) * (spine + foot) + tips) / (foot + spine / 2));
      }
      const needed = job.effort.safety * most;
      const fitted = layout.clamps * job.clamps.rating;
      expect(fitted).toBeGreaterThan(needed * 0.999);
      expect(hold.clampForce).toBeGreaterThan(needed * 0.99);
      // Along the spine: some shares of its clamps, each within its rating, have their middle where the pull has its.
      if (holes.length !== layout.clamps) continue;
      const middle = slices.reduce((sum, { x, moment }) => sum + x * moment, 0) / whole;
      expect(
        sharesFor(
          holes.map((hole) => hole.at),
          { middle, needed, rating: job.clamps.rating },
        ),
      ).toBe(true);
    }
  });

  it('has each bend’s wrap from the radii that are built there', () => {
    for (const made of planned.bends) {
      const { form, run } = standing(planned, made);
      const cone = form.planned.bend.form;
      const built = [radiusAt(cone, run.from), radiusAt(cone, run.to)].sort((a, b) => a - b);
      const own = [made.alone.bend.form.radiusA, made.alone.bend.form.radiusB].sort((a, b) => a - b);
      own.forEach((radius, index) => expect(radius).toBeCloseTo(at(built, index), 9));
    }
  });

  it('says for each bend which stretch, and which holes where it has more than the bend uses', () => {
    const words = stepWords(planned, measuresIn(planned.job.units));
    for (const made of planned.bends) {
      const said = words.find(({ bend }) => bend === made.bend.name)?.sentences.join(' ') ?? '';
      const { layout, holes, form } = standing(planned, made);
      expect(said).toMatch(/Use (?:the whole of )?form/u);
      if (made.step.clamped === 'holes' && holes.length < layout.clampHoles.length) {
        expect(said).toContain('counted from its end A');
      }
      expect(said).toContain(`form ${form.name}`);
    }
  });
});

describe('the files of a form that bends share', () => {
  it('have gauges for each bend: beside the form its own bend’s, in a folder by its name any other’s, and these among the templates', async () => {
    const planned = planPanelStarter('tray', steep);
    const files = await panelFilesOf(planned);
    const paths = files.map(({ path }) => path);
    const beside = paths
      .filter((path) => path.startsWith('forms/back/aids/'))
      .map((path) => path.slice('forms/back/aids/'.length));
    expect(beside.some((path) => path.startsWith('angle-'))).toBe(true);
    for (const guest of ['left', 'right'])
      expect(paths.filter((path) => path.startsWith(`bends/${guest}/`)).sort()).toEqual(
        beside
          .filter((path) => !path.startsWith('trial'))
          .map((path) => `bends/${guest}/${path}`)
          .sort(),
      );
    expect(paths).toContain('templates.pdf');
    // Each step names its gauge's file, beside the form or, of a guest, in the bend's own folder.
    for (const { sentences } of stepWords(planned, measuresIn('mm'))) {
      const named = /with the gauge (?<path>\S+)/u.exec(sentences.join(' '))?.groups?.['path'];
      expect(paths).toContain(`${named ?? ''}.svg`);
    }
    const drawn = (path: string): string =>
      asText(files.filter((file) => file.path === path))
        .map(({ content }) => content)
        .join();
    // 60° and 90°: not the same gauge.
    expect(drawn('bends/right/angle-finished.svg')).not.toBe(drawn('bends/left/angle-finished.svg'));
  });
});

/** Looked for by trying: shares of the force in steps of a fortieth, the last clamp taking what is left. */
function sharesFor(
  places: readonly number[],
  { middle, needed, rating }: { readonly middle: number; readonly needed: number; readonly rating: number },
): boolean {
  const step = needed / 40;
  const reach = Math.max(...places) - Math.min(...places);
  const go = (index: number, left: number, turned: number): boolean => {
    const place = at(places, index);
    if (index === places.length - 1)
      return left <= rating + 1e-6 && Math.abs((turned + left * place) / needed - middle) <= reach / 40 + 1;
    for (let share = 0; share <= Math.min(left, rating) + 1e-6; share += step)
      if (go(index + 1, left - share, turned + share * place)) return true;
    return false;
  };
  return go(0, needed, 0);
}
