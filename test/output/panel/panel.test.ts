import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { toDegrees } from '../../../src/base/angle';
import { parseFile } from '../../../src/job/parse';
import { sayFindings } from '../../../src/findings/say';
import { makePanelFiles } from '../../../src/output/panel/files';
import { formBody } from '../../../src/output/panel/bodies';
import { yokeDepth } from '../../../src/design/pull/yoke-parts';
import { drawStep } from '../../../src/output/panel/step-picture';
import { grainWords } from '../../../src/output/panel/grain';
import { toPanelPlan } from '../../../src/output/panel/panel-plan';
import { planPanel } from '../../../src/output/panel/plan-panel';
import { stepWords } from '../../../src/output/panel/step-words';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { font } from '../../helpers/font';
import { asText, panelFilesOf } from '../../helpers/laid-out';
import { panelRules as rules, panelStarters, planPanelStarter, tables } from '../../helpers/starters';
import { sampledStep } from '../../panel/brute-force';

/** How finely the sheet is looked at: every 3° of the pull, places 9 mm from one another. */
const FINELY = { every: Math.PI / 60, apart: 9 };

const codesOf = (text: string): string[] => {
  const parsed = parseFile(text, tables);
  const found =
    parsed.kind === 'panel' && parsed.job
      ? planPanel(parsed.job, { tables, rules }, parsed.findings).findings
      : parsed.findings;
  return found.flatMap(({ code, path, level }) => (level === 'error' ? [`${code} ${path}`] : []));
};
const hood = readFileSync('templates/panels/hood-side.yaml', 'utf8');

describe.each(panelStarters)('the starter panel %s', (name) => {
  const planned = planPanelStarter(name);

  it('is made bend by bend, nothing striking anything: looked at again by places sampled in the sheet', () => {
    const { panel, order, bends } = planned;
    expect(order.map(({ bend }) => bend).sort()).toEqual(panel.bends.map((_, index) => index));
    order.forEach((step, index) => {
      const done = panel.bends.map((_, other) => order.slice(0, index).some(({ bend }) => bend === other));
      const alone = at(bends, step.bend).alone.bend;
      const pulling = { pulled: alone.wrap.chosen, force: 1, yoke: null, lever: null };
      const work = { uses: [step.use], pulling: { base: pulling, leg: pulling } };
      const seen = sampledStep(panel, work, { step, done }, FINELY);
      expect(seen.wood).toBeGreaterThan(1.5);
      expect(seen.metal).toBeGreaterThan(2.5);
    });
  });

  it('has each bend on a form as long as it, its radii within a tenth of a mm', () => {
    for (const { bend, step, alone } of planned.bends) {
      const form = planned.forms.find(({ name: called }) => called === step.use.body.name);
      const run = form?.runs.find((one) => one.name === bend.name);
      expect((run?.to ?? 0) - (run?.from ?? 0)).toBeCloseTo(bend.finished.length, 6);
      expect(step.use.stretch.from).toBeGreaterThanOrEqual(0);
      expect(Math.min(alone.bend.form.radiusA, alone.bend.form.radiusB)).toBeCloseTo(
        step.use.body.cone.radiusA + Math.sin(step.use.body.cone.halfAngle) * step.use.stretch.from,
        1,
      );
    }
  });

  it('is drawn as each bend is made: form, what swings, and the bench beneath', () => {
    planned.order.forEach((_, number) => {
      const drawn = drawStep(planned, number, { width: 150, height: 80 }, tables.rules);
      expect(drawn?.width).toBeLessThanOrEqual(150 + 1e-6);
      expect(drawn?.height).toBeLessThanOrEqual(80 + 1e-6);
      // Bench, three parts of the form and the sheet at the least.
      expect(drawn?.shapes.length).toBeGreaterThan(10);
    });
  });

  it('is drawn on its plank where a yoke needs room below the sheet, as thick as the yoke is deep there', () => {
    planned.order.forEach((step, number) => {
      const drawn = drawStep(planned, number, { width: 150, height: 80 }, tables.rules);
      const { yoke } = at(planned.bends, step.bend).alone.bend.pull;
      const lines = (drawn?.shapes ?? []).flatMap((shape) =>
        shape.kind === 'stroke' && shape.name === 'plank' ? [shape.points] : [],
      );
      if (!yoke) return expect(lines).toEqual([]);
      const upright = lines.flatMap(([from, ...rest]) =>
        rest.flatMap((to) => (from && Math.abs(to[0] - from[0]) < 1e-6 ? [Math.abs(to[1] - from[1])] : [])),
      );
      // Heights are seen √(2/3) as long: the eye stands as far out along all three axes.
      const wanted = yokeDepth(yoke) * Math.sqrt(2 / 3) * (drawn?.scale ?? NaN);
      expect(Math.max(...upright)).toBeCloseTo(wanted, 3);
    });
  });

  it('is looked at on each form as it is finally made, with the stations and holes of all its stretches', () => {
    for (const { step, bend } of planned.bends) {
      const form = planned.forms.find(({ name: called }) => called === step.use.body.name);
      if (!form) throw new Error(`no form ${step.use.body.name}`);
      const { bend: sums, layout } = form.planned;
      expect(step.use.body).toEqual(formBody(form.name, sums, layout, bend.name));
    }
  });

  it('writes its files: the same bytes again, each path once', async () => {
    const [first, again] = [await panelFilesOf(planned), await makePanelFiles(planned, { tables, font })];
    expect(asText(again)).toEqual(asText(first));
    const paths = first.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toEqual(expect.arrayContaining(['order-of-work.html', 'plan.json']));
    for (const form of planned.forms) expect(paths).toContain(`forms/${form.name}/templates.pdf`);
    // The blank on paper, for those who prick it through: the panel's, not one for each form.
    expect(paths.filter((path) => path.includes('blank'))).toEqual(paths.filter((path) => path.startsWith('blank/')));
    expect(paths).toContain('templates.pdf');
    for (const { path, content } of first.filter((file) => file.path.endsWith('shop-sheet.html'))) {
      expect(content, path).toContain('stand in order-of-work.html');
      expect(content, path).not.toContain('Flat sheet: lines and where they end');
    }
  });
});

describe('the hood side', () => {
  const planned = planPanelStarter('hood-side');

  it('turns the second form over: small ends at one corner, both legs held, hands +1 and −1', () => {
    // Panel design section 2's table: long edge, A→B from the small end, up, leg held: +1, left.
    expect(planned.bends.map(({ bend, hand, smallEnd, step }) => [bend.name, step.held, hand, smallEnd])).toEqual([
      ['long', 'leg', 1, 'left'],
      ['short', 'leg', -1, 'right'],
    ]);
  });

  it('has the dart that a calculation by hand gives', () => {
    // Held lines 90° apart, both bent 90°: E = E₀(C) + Σ(2γ − fan), panel design section 3, with γ = atan(sinβ·tan(ψ/2)), fan = ψ·sinβ.
    const parts = planned.bends.map(({ bend: { finished, wrap } }) => {
      const sine = Math.abs(finished.radiusB - finished.radiusA) / finished.length;
      return { gamma: Math.atan(sine * Math.tan(wrap / 2)), fan: wrap * sine };
    });
    const C = Math.PI - (Math.PI / 2 + parts.reduce((sum, { gamma }) => sum + gamma, 0));
    const E0 = 2 * Math.atan2(Math.sin(C), 1 + Math.cos(C));
    const dart = E0 + parts.reduce((sum, { gamma, fan }) => sum + 2 * gamma - fan, 0);
    expect(toDegrees(at(planned.panel.corners, 0).dart)).toBeCloseTo(toDegrees(dart), 6);
  });

  it('says in its plan what it is made of, in mm and degrees', () => {
    const { panel, forms } = toPanelPlan(planned, []);
    expect(panel?.order).toEqual(['long', 'short']);
    expect(panel?.pair).toBe(true);
    expect(panel?.corners).toMatchObject([{ treat: 'mitre', gap: 3.175 }]);
    expect(panel?.bends.map(({ baseLine }) => baseLine)).toEqual([
      [
        [expect.closeTo(0, 6), expect.closeTo(0, 6)],
        [expect.closeTo(558.8, 6), expect.closeTo(0, 6)],
      ],
      [
        [expect.closeTo(0, 6), expect.closeTo(228.6, 6)],
        [expect.closeTo(0, 6), expect.closeTo(0, 6)],
      ],
    ]);
    expect(forms.map(({ name }) => name)).toEqual(['long', 'short']);
    // Both hold the leg: the form stands on the leg's tangent line, the base is pulled.
    for (const { held, heldLine, freeLine, baseLine, legLine, grain } of panel?.bends ?? []) {
      expect([held, heldLine, freeLine, grain]).toEqual(['leg', legLine, baseLine, null]);
    }
    // The base, 228.6 deep, is pulled over bench ahead of the long edge's form; its leg and the foot lie behind.
    const [long] = panel?.bends ?? [];
    expect(long?.bench.ahead ?? 0).toBeGreaterThan(228.6 + 30);
    expect(long?.bench.behind ?? 0).toBeGreaterThanOrEqual(2.5 * 25.4);
    expect(long?.bench.along ?? 0).toBeGreaterThan(558.8);
    // 18 ga steel, 7.85 kg/dm³: base, two legs 2-1/2 in deep and two quarter rounds; the corners' curves make a few per cent of it.
    const about = (22 * 9 + (22 + 9) * (2.5 + (Math.PI / 2) * 1.4)) * 645.16 * 1.2141 * 7.85e-6;
    expect((panel?.mass ?? 0) / about).toBeGreaterThan(0.95);
    expect((panel?.mass ?? 0) / about).toBeLessThan(1.05);
  });

  it('has its steps in inches alone', () => {
    for (const { sentences } of stepWords(planned, measuresIn('in'))) {
      expect(sentences.join(' ')).not.toMatch(/\bmm\b|\bN\b/u);
    }
  });
});

describe('the grain of the sheet it is cut from', () => {
  const stocked =
    (grain: string) =>
    (text: string): string =>
      text.replace('thickness: 18 ga', `thickness: 18 ga\n  stock: { width: 48, length: 96, grain: ${grain} }`);

  it.each([
    ['x', 0, 90],
    ['y', 90, 0],
  ])('along %s of the blank meets the long edge at %d° and the short one at %d°', (grain, long, short) => {
    const planned = planPanelStarter('hood-side', stocked(grain));
    const bends = toPanelPlan(planned, []).panel?.bends ?? [];
    expect(bends.map((bend) => Math.round((bend.grain ?? NaN) * 1e6) / 1e6)).toEqual([long, short]);
    expect(grainWords(planned, measuresIn('in'))).toContain(`${long === 0 ? 'long' : 'short'} runs along it`);
  });
});

describe('a pair', () => {
  it('has the form the other way about for its mirror image: all hands of the twin are reversed (panel design section 2)', () => {
    const [first, second] = stepWords(planPanelStarter('hood-side'), measuresIn('in')).map(({ sentences }) =>
      sentences.join(' '),
    );
    expect(first).toContain('small end is on your left for the left panel, on your right for the right');
    expect(second).toContain('small end is on your right for the left panel, on your left for the right');
    const single = planPanelStarter('hood-side', (text) => text.replace('pair: true', 'pair: false'));
    expect(at(stepWords(single, measuresIn('in')), 0).sentences.join(' ')).toContain('small end is on your left.');
  });

  it('of forms whose names differ by large and small letters alone has a folder for each', async () => {
    const named = planPanelStarter('bracket', (text) => text.replaceAll('arm', 'Foot'));
    const paths = (await makePanelFiles(named, { tables, font })).map(({ path }) => path.toLowerCase());
    expect(named.forms.map(({ name }) => name).sort()).toEqual(['Foot', 'foot']);
    expect(new Set(paths).size).toBe(paths.length);
  });
});

describe('a tray', () => {
  it('is made on one form, which has clamps for each of its bends', () => {
    const { forms, order } = planPanelStarter('tray');
    expect(forms.map(({ name, runs }) => [name, runs.map((run) => run.name).sort()])).toEqual([
      ['back', ['back', 'left', 'right']],
    ]);
    expect(order).toHaveLength(3);
  });

  it('with a form of its own for each where that is asked', () => {
    const { forms } = planPanelStarter('tray', (text) => text.replaceAll('leg: 60 }', 'leg: 60, form: own }'));
    expect(forms.map(({ name }) => name).sort()).toEqual(['back', 'left', 'right']);
  });
});

describe.each(panelStarters)('the clamps of the starter panel %s', (name) => {
  it('go through as many holes over the bend as it is given clamps, else over ears that the form has', () => {
    const { order, forms, bends } = planPanelStarter(name);
    order.forEach(({ bend, clamped, use }) => {
      const form = forms.find((one) => one.name === use.body.name);
      const run = form?.runs.find((one) => one.name === at(bends, bend).bend.name);
      const spine = form?.planned.plan.spine;
      if (!run || !spine) throw new Error('a form with a run for the bend');
      const cosine = Math.cos(use.body.cone.halfAngle);
      const over = spine.clampHoles.filter(({ at: place }) => place > run.from * cosine && place < run.to * cosine);
      if (clamped === 'holes') expect(over.length).toBeGreaterThanOrEqual(at(bends, bend).alone.layout.clamps);
      else expect(spine.ears).toBeGreaterThan(0);
    });
  });

  it('and all else in the way are those of the forms that are drawn', () => {
    const { order, forms, bends } = planPanelStarter(name);
    for (const { use, bend } of order) {
      const form = forms.find((one) => one.name === use.body.name);
      const { layout } = form?.planned ?? {};
      const holes = layout?.guests.find(({ name: guest }) => guest === at(bends, bend).bend.name)?.holes;
      expect(use.body.clamps).toHaveLength((holes ?? layout?.ownHoles ?? []).length);
      expect(use.body.foot).toBe(form?.planned.layout.foot);
    }
  });
});

describe('what is wrong with a panel', () => {
  it.each([
    ['an unknown edge', hood.replace('on: short', 'on: shrot'), ['unknown-edge bends[1].on']],
    [
      'a leg and a height',
      hood.replace('leg: 2-1/2\n  - on', 'leg: 2-1/2\n    height: 3\n  - on'),
      ['leg-or-height bends[0]'],
    ],
    [
      'corners that run clockwise',
      hood.replace('[[0, 0], [22, 0], [22, 9], [0, 9]]', '[[0, 9], [22, 9], [22, 0], [0, 0]]'),
      ['base-clockwise base.corners'],
    ],
    ['corners that do not meet', hood.replace('long/short', 'long/top'), ['no-such-corner corners.long/top']],
    [
      'a form of nobody’s',
      hood.replace('leg: 2-1/2\n\n', 'leg: 2-1/2\n    form: { with: back }\n\n'),
      ['no-such-form bends[1].form'],
    ],
    [
      'a form that differs',
      hood.replace('leg: 2-1/2\n\n', 'leg: 2-1/2\n    form: { with: long }\n\n').replace('top: 1-1/2', 'top: 3'),
      ['form-differs bends[1].form'],
    ],
    ['runs of old', `${hood}\nruns: [{ name: a, from: 0, to: 4 }]\n`, ['runs-gone runs']],
  ])('%s is refused, the place named', (_, text, wanted) => {
    expect(codesOf(text)).toEqual(wanted);
  });

  it('a key that a corner does not know is named, without an empty list of others', () => {
    const { findings, units } = parseFile(hood.replace('treat: mitre', 'treet: mitre'), tables);
    expect(sayFindings(findings, { units })).toEqual([
      expect.objectContaining({ code: 'unknown-key', path: 'corners.long/short.treet', got: 'treet' }),
    ]);
    expect(sayFindings(findings, { units })[0]).not.toHaveProperty('allowed');
  });
});
