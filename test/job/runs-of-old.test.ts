import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { sayFindings, type SaidFinding } from '../../src/findings/say';
import { parseFile } from '../../src/job/parse';
import { planPanel } from '../../src/output/panel/plan-panel';
import type { BuiltPlan } from '../../src/output/plan/plan';
import { planText } from '../../src/output/plan/plan-text';
import { panelRules, planPanelStarter, planStarter, tables } from '../helpers/starters';

/** As the tapered starter once was. */
const OLD = {
  title: 'Rowing-skiff splash coaming',
  units: 'mm',
  sheet: { material: 'aluminium-3003-h14', thickness: 1.6 },
  bend: { angle: 90, length: 620, radius: { from: 38, to: 50 }, legs: { held: 40, free: 180 } },
  runs: [
    { name: 'long edge', from: 0, to: 620 },
    { name: 'short edge', from: 0, to: 240 },
  ],
};

function said(job: object): readonly SaidFinding[] {
  const { findings, units, job: read } = parseFile(stringify(job), tables);
  expect(read).toBeNull();
  return sayFindings(findings, { units });
}

/** The hint's words in the place of the bend and its runs. */
function asTheHintSays(job: typeof OLD): ReturnType<typeof parseFile> {
  const [only] = said(job);
  const [, base = '', bends = ''] = /write base: (.*) and bends: (.*\])/u.exec(only?.hint ?? '') ?? [];
  const { bend: _bend, runs: _runs, ...rest } = job;
  return parseFile(stringify({ ...rest, base: parse(base) as unknown, bends: parse(bends) as unknown }), tables);
}

describe('a job that still has runs', () => {
  it('has one error, which shows the panel’s words in the job’s own numbers', () => {
    expect(said(OLD)).toEqual([
      {
        code: 'runs-gone',
        level: 'error',
        path: 'runs',
        line: 15,
        message: 'a job of one bend has no runs any more: edges that share a form are the bends of a panel',
        hint: 'in place of bend and runs write base: { corners: [[0, 0], [620 mm, 0], [620 mm, 240 mm], [0, 240 mm]], edges: [long edge, back, top, short edge] } and bends: [{ on: long edge, angle: 90, radius: { short edge: 38 mm, back: 50 mm }, leg: 40 mm }, { on: short edge, angle: 90, radius: { long edge: 38 mm, top: 42.645161 mm }, leg: 40 mm, form: { with: long edge } }]',
      },
    ]);
  });

  it('becomes a panel by those words, both its edges on one form', () => {
    const parsed = asTheHintSays(OLD);
    expect(parsed.findings).toEqual([]);
    if (parsed.kind !== 'panel' || !parsed.job) throw new Error('no panel');
    const planned = planPanel(parsed.job, { tables, rules: panelRules });
    if (!planned.buildable) throw new Error(JSON.stringify(planned.findings));
    expect(planned.forms.map(({ name, runs }) => [name, runs.map((run) => run.name)])).toEqual([
      ['long edge', ['long edge', 'short edge']],
    ]);
  });

  it('is told so in inches', () => {
    const inches = { ...OLD, units: 'in', sheet: { material: 'aluminium-3003-h14', thickness: 0.063 } };
    const bend = { angle: 90, length: '2 ft', radius: { from: '1-1/2', to: 2 }, legs: { held: 7, free: '2-1/2 in' } };
    const runs = [
      { name: 'rim', from: 0, to: 24 },
      { name: 'back', from: 12, to: 24 },
    ];
    const [only, ...others] = said({ ...inches, bend, runs });
    expect(others).toEqual([]);
    expect(only?.hint).toContain(
      'base: { corners: [[0, 0], [24 in, 0], [24 in, 12 in], [0, 12 in]], edges: [rim, back edge, top, back] }',
    );
    expect(only?.hint).toContain('{ on: back, angle: 90, radius: { rim: 1.75 in, top: 2 in }, leg: 2.5 in');
  });

  it.each([
    ['one run', [{ name: 'a', from: 100, to: 400 }], /\[300 mm, 180 mm\].*bends: \[\{ on: a, [^[]*\}\]$/u],
    [
      'a name that no edge may have, and one that is none',
      [
        { name: 'a.b', from: 0, to: 620 },
        { from: 0, to: 240 },
      ],
      /edges: \[long, back, top, short\]/u,
    ],
    [
      'names YAML would take for something else',
      [
        { name: 'No', from: 0, to: 620 },
        { name: 'a: b', from: 0, to: 9 },
      ],
      /edges: \["No", back, top, "a: b"\]/u,
    ],
    ['no numbers', [{ name: 'a', from: 'here' }], /^leave runs out;/u],
    ['nothing in it', [], /^leave runs out;/u],
    ['no list', 'long', /^leave runs out;/u],
  ])('%s: one error all the same', (_, runs, hint) => {
    const found = said({ ...OLD, runs });
    expect(found.map(({ code }) => code)).toEqual(['runs-gone']);
    expect(found[0]?.hint).toMatch(hint);
  });

  it('is told of its other mistakes too, and to write finished radii where the form’s were given', () => {
    const [bend] = said({ ...OLD, bend: { ...OLD.bend, angle: 400 } });
    expect(bend).toMatchObject({ code: 'out-of-range', path: 'bend.angle' });
    const [form] = said({ ...OLD, bend: { ...OLD.bend, radiusOf: 'form' } });
    expect(form?.hint).toMatch(/ \(with the radii after release in place of the form’s\)$/u);
  });

  it('in a panel is told to leave them out', () => {
    const { bend: _, ...rest } = OLD;
    const base = { corners: [[0, 0], [300, 0], [300, 200], [0, 200]], edges: ['a', 'b', 'c', 'd'] }; // prettier-ignore
    const panel = { ...rest, base, bends: [{ on: 'a', angle: 90, radius: 30, leg: 50 }] };
    expect(said(panel)).toMatchObject([
      { code: 'runs-gone', hint: expect.stringMatching(/^leave runs out;/u) as string },
    ]);
  });
});

describe('what two runs were is a panel whose bends share a form', () => {
  const coaming = planPanelStarter('coaming');
  const [form] = coaming.forms;
  if (!form) throw new Error('no form');
  const printed = (plan: BuiltPlan): BuiltPlan => JSON.parse(planText(plan)) as BuiltPlan;
  const [alone, shared] = [printed(planStarter('tapered-curve').plan), printed(form.planned.plan)];

  it('the bend’s numbers are those the starter with two runs prints, to the last digit', () => {
    expect(alone.bend).toMatchObject({
      form: { from: 32.74372489, to: 41.36245579 },
      wrap: { from: 90.54850211, to: 95.62019111, chosen: 93.08434661 },
      twist: { from: 2.192115651, to: -2.104485296 },
      allowance: { from: 60.96120233, to: 79.81525526 },
      coneHalfAngle: { finished: 1.10901982, form: 0.7965045337 },
    });
    expect(alone.effort).toMatchObject({ moment: 66112.97924, handForce: 110.0329171, clamps: 4, foot: 80 });
    expect(alone.effort?.clampForce).toBe(2910.171919);
    expect(alone.blank).toMatchObject({ width: 626.3997501, height: 299.7197328, mass: 0.7892984369 });
    expect(shared.bend).toEqual(alone.bend);
    expect(shared.effort).toEqual(alone.effort);
    expect(shared.hold).toEqual(alone.hold);
  });

  it('and so are the form’s stations, one flush with each end of either stretch', () => {
    // The station 18 mm thick that ends at 240·cos β = 239.977 is the short edge's; both begin at S1.
    expect(shared.stations.map(({ at, radius }) => [at, radius])).toEqual([
      [9, 32.74372489],
      [119.9884049, 34.28674365],
      [230.9768097, 35.82976242],
      [420.9584508, 38.4709864],
      [610.9400918, 41.11221039],
    ]);
    expect(shared.stations.map(({ ends }) => ends.map(({ run, end }) => `${run} ${end}`))).toEqual([
      ['long from', 'short from'],
      [],
      ['short to'],
      [],
      ['long to'],
    ]);
    expect(coaming.forms).toHaveLength(1);
  });
});
