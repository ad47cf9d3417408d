import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printPlan } from '../../src/cli/table';
import { parseJob } from '../../src/job/parse';
import { planJob } from '../../src/output/pipeline';
import type { Plan } from '../../src/output/plan/plan';
import { loadTables } from '../../src/tables/bundled';
import { cutWith, tools } from '../helpers/for-tool';

const tables = loadTables();
const planOf = (text: string): Plan => {
  const { job, findings } = parseJob(text, tables);
  if (!job) throw new Error(JSON.stringify(findings));
  return planJob(job, tables, findings).plan;
};
const starter = readFileSync('templates/tapered-curve.yaml', 'utf8');
const plan = planOf(starter);

/** Lines below a heading, down to the next empty line. */
const section = (text: string, heading: string): string[] =>
  (text.split(`\n${heading}`)[1] ?? '').split('\n\n')[0]?.split('\n').slice(1) ?? [];

describe('the plan as a table', () => {
  it('begins with what is set up first: wrap, radii, pull, clamps, foot; then the boards', () => {
    const text = printPlan(plan, 'mm', false, Infinity);
    const wanted = [
      'Leaves the form at a wrap of',
      'Form radius',
      'Pull at the hands',
      'Extra metal on the free leg',
      '\n  Clamps',
      'Foot behind',
      'Spine',
      'Stations',
      'Backing stations',
      'Screw holes',
      'Blank',
      'Mind',
    ];
    const places = wanted.map((words) => text.indexOf(words));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('says each station, in mm to a hundredth', () => {
    const rows = section(printPlan(plan, 'mm', false, Infinity), 'Stations').slice(1);
    expect(rows).toHaveLength(plan.stations.length);
    plan.stations.forEach((station, index) => {
      expect(rows[index]).toContain(`${station.name}  ${station.at.toFixed(2)} mm`);
      expect(rows[index]).toContain(`${station.radius.toFixed(2)} mm`);
      expect(rows[index]).toContain(station.contact === 'from' ? 'to end A' : 'to end B');
    });
  });

  it('inches are thousandths, with the nearest 1/32 in brackets', () => {
    const rows = section(printPlan(plan, 'in', false, Infinity), 'Stations').slice(1);
    plan.stations.forEach((station, index) => {
      const [, decimal, whole = '0', over = '0', under = '1'] =
        /^ *S\d+ +([\d.]+) in \((?:(\d+)(?:-|(?=\))))?(?:(\d+)\/(\d+))?\)/u.exec(rows[index] ?? '') ?? [];
      expect(Math.abs(Number(decimal) - station.at / 25.4)).toBeLessThan(0.0005 + 1e-9);
      expect(32 % Number(under)).toBe(0);
      expect(Math.abs(Number(whole) + Number(over) / Number(under) - station.at / 25.4)).toBeLessThan(1 / 64 + 1e-9);
    });
  });

  it('the sheet’s thickness has no nearest 1/32: 18 ga aluminium is .040', () => {
    const gauge = planOf(starter.replace(/thickness: .*/u, 'thickness: 18 ga'));
    expect(printPlan(gauge, 'in', false, Infinity)).toContain(
      `${gauge.sheet?.material ?? ''}, 0.040 in thick; bent 90.0°`,
    );
    expect(printPlan(gauge, 'mm', false, Infinity)).toContain(', 1.02 mm thick; bent 90.0°');
  });

  it('says every screw hole of the spine', () => {
    const rows = section(printPlan(plan, 'mm', false, Infinity), 'Screw holes').slice(1);
    for (const hole of plan.spine?.screwHoles ?? []) {
      const row = rows.find((line) => line.trim().startsWith(`${hole.holds} `));
      expect(row).toContain(`${hole.at.toFixed(2)} mm`);
      expect(row).toContain(Math.abs(hole.offset).toFixed(2));
      expect(row?.trimEnd().endsWith(hole.side)).toBe(true);
    }
    expect(rows).toHaveLength(plan.stations.length + plan.backings.length);
  });

  it.each([40, 60, 80, 100, 200])('tables fit a terminal of %i columns and lose nothing', (width) => {
    const narrow = printPlan(plan, 'mm', false, width);
    const wide = printPlan(plan, 'mm', false, Infinity);
    const words = (text: string): string[] => [...new Set(text.split(/\s+/u))].sort();
    expect(words(narrow)).toEqual(words(wide));
    const cell = Math.max(
      ...plan.stations.map(({ ends }) => 6 + ends.map(({ run }) => `${run} start; `).join('').length),
    );
    const rows = narrow.split('\n').filter((line) => /^ {2}(?:S\d|BS\d)/u.test(line));
    expect(rows.length).toBeGreaterThanOrEqual(2 * plan.stations.length + plan.backings.length);
    for (const row of rows) expect(row.length).toBeLessThanOrEqual(Math.max(width, cell));
  });

  it('lines columns up where names are wide', () => {
    const name = '長い縁'; // six columns: three wide characters (Unicode Standard Annex #11, class W)
    const [first] = plan.stations;
    if (!first) throw new Error('the starter has stations');
    const rows = section(
      printPlan(
        {
          ...plan,
          stations: [
            { ...first, name },
            { ...first, name: 'abcdef' },
          ],
        },
        'mm',
        false,
        Infinity,
      ),
      'Stations',
    ).slice(1);
    expect(rows[0]?.slice(rows[0].indexOf(name) + 3)).toBe(rows[1]?.slice(rows[1].indexOf('abcdef') + 6));
  });

  it('a plan without sections still prints', () => {
    const bare: Plan = {
      ...plan,
      sheet: null,
      bend: null,
      effort: null,
      stations: [],
      spine: null,
      backings: [],
      blank: null,
    };
    expect(printPlan(bare, 'mm', false, 80).trim()).toBe(plan.title);
  });
});

describe('the plan of a machine’s job', () => {
  const rowsUnder = (text: string, heading: string): string[][] =>
    section(text, heading)
      .slice(1)
      .map((line) => line.trim().split(/\s{2,}/u));
  const mm = (value: number): string => `${value.toFixed(2)} mm`;

  it('has a router’s grooves, and pilots deeper by them', () => {
    const routed = planOf(cutWith('router')(starter));
    const text = printPlan(routed, 'mm', false, Infinity);
    if (routed.cut?.with !== 'router') throw new Error('not a router’s plan');
    const { grooves, grooveDepth, bit } = routed.cut;
    expect(rowsUnder(text, 'Grooves')).toEqual(
      grooves.map(({ holds, low, high, open }) => [
        holds,
        mm(low),
        mm(high),
        open === 'from' ? 'end A' : open === 'to' ? 'end B' : 'none',
      ]),
    );
    expect(text).toContain(`straight bit, not in the drawings  ${mm(bit)}`);
    const rows = section(text, 'Stations').slice(1);
    routed.stations.forEach((station, index) =>
      expect(rows[index]).toContain(
        `${station.screws[0]?.pilotDrill}, ${mm((station.screws[0]?.pilotDepth ?? NaN) + grooveDepth)} deep`,
      ),
    );
    expect(text).toContain('no gloves near the bit');
    expect(text).not.toContain('bevel');
  });

  it('has a laser’s layers, slots and dowels', () => {
    const burnt = planOf(cutWith('laser')(starter));
    const text = printPlan(burnt, 'mm', false, Infinity);
    if (burnt.cut?.with !== 'laser') throw new Error('not a laser’s plan');
    const { boards, kerf } = burnt.cut;
    const stations = boards.slice(0, burnt.stations.length);
    expect(rowsUnder(text, 'Layers')).toEqual(
      stations.flatMap(({ name, layers }) =>
        layers.map((layer, index) => [
          `${name}-${index + 1}`,
          mm(layer.low),
          mm(layer.radius),
          layer.contact === 'from' ? 'to end A' : 'to end B',
          mm(layer.farRadius),
        ]),
      ),
    );
    expect(rowsUnder(text, 'Slots')).toEqual(
      boards.flatMap(({ name, slots }) =>
        slots.map(({ low, high, offset, width, open }) => [
          name,
          mm(low),
          mm(high),
          mm(offset),
          mm(width),
          open === 'from' ? 'end A' : open === 'to' ? 'end B' : 'none',
        ]),
      ),
    );
    expect(rowsUnder(text, 'Dowel')).toEqual(
      boards.flatMap(({ name, dowels }) =>
        dowels.map(({ offset, depth, diameter }) => [name, mm(offset), mm(depth), mm(diameter)]),
      ),
    );
    expect(
      text
        .split('\n')
        .find((line) => line.includes('kerf, in the drawings already'))
        ?.trim()
        .endsWith(`  ${mm(kerf)}`),
    ).toBe(true);
    expect(text).toContain('never cut PVC');
  });

  it('a jigsaw’s says nothing of either', () => {
    expect(printPlan(plan, 'mm', false, Infinity)).not.toMatch(/groove|slot|kerf|dowel|laser|router/iu);
  });

  it.each(Object.keys(tools) as (keyof typeof tools)[])('fits narrow terminals and loses nothing: %s', (tool) => {
    const cut = planOf(cutWith(tool)(starter));
    const words = (text: string): string[] => [...new Set(text.split(/\s+/u))].sort();
    expect(words(printPlan(cut, 'mm', false, 60))).toEqual(words(printPlan(cut, 'mm', false, Infinity)));
  });
});
