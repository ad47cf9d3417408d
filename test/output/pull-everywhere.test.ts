import type { ComponentChildren, VNode } from 'preact';
import { describe, expect, it } from 'vitest';
import { printersFor as tablePrinters } from '../../src/cli/printing';
import { printPlan } from '../../src/cli/table';
import { planText } from '../../src/output/plan/plan-text';
import type { Printers } from '../../src/output/plan/figures';
import type { PanelPlan } from '../../src/output/panel/panel-plan';
import { toPanelPlan } from '../../src/output/panel/panel-plan';
import { writeWorkSheet } from '../../src/output/panel/sheet/work-sheet';
import type { BuiltPlan, Plan, PlanHold, PlanPull } from '../../src/output/plan/plan';
import type { Buildable } from '../../src/output/pipeline';
import { writeShopSheet } from '../../src/output/shop-sheet';
import { measuresIn, printersIn } from '../../src/output/shop-sheet/measures';
import { Numbers, printersFor as pagePrinters } from '../../src/page/know';
import { bendbuck } from '../helpers/program';
import { panelStarters, planPanelStarter, planStarter, starters, tables } from '../helpers/starters';

/** The numbers that the issue “The pull and the hold” names, each looked for in all that a maker reads. */

type Kind = keyof Printers;
/** Path of a number in plan.json, the row it is told in, what it is. A count is printed plainly. */
type Asked = readonly [path: string, row: RegExp, kind: Kind | 'count' | 'word'];

const PULL: readonly Asked[] = [
  ['lever', /^Pull at the hands/u, 'length'],
  ['takeOff.from', /^Wrap needed, A \/ B/u, 'angle'],
  ['takeOff.to', /^Wrap needed, A \/ B/u, 'angle'],
  ['legAngle.from', /^Pull until the leg/u, 'angle'],
  ['legAngle.to', /^Pull until the leg/u, 'angle'],
  ['tail.loaded.from', /^Leg’s own bend while pulled/u, 'angle'],
  ['tail.loaded.to', /^Leg’s own bend while pulled/u, 'angle'],
  ['tail.reach', /^Leg’s own bend while pulled/u, 'length'],
  ['tail.stays.from', /^Leg’s own bend that stays/u, 'angle'],
  ['tail.stays.to', /^Leg’s own bend that stays/u, 'angle'],
  ['departure.from', /^Off one round bend by/u, 'length'],
  ['departure.to', /^Off one round bend by/u, 'length'],
  ['bow', /^Leg bows by/u, 'length'],
  ['handForce', /^Pull at the hands/u, 'force'],
];

const YOKE: readonly Asked[] = [
  ['yoke.nose', /^Pulled with|^Pull with/u, 'word'],
  ['yoke.outer', /^Pulled with|^Pull with/u, 'word'],
  ['yoke.gap', /^Yoke’s nose past where the sheet leaves the form/u, 'length'],
  ['yoke.grip', /^Sheet lies flat in the yoke again behind the nose at/u, 'length'],
  ['yoke.opens', /^Nose and outer member part under load by/u, 'length'],
  ['yoke.bolts.size', /^Yoke’s bolts/u, 'word'],
  ['yoke.bolts.span', /^Yoke’s bolts/u, 'length'],
  ['yoke.bolts.force', /^Yoke’s bolts/u, 'force'],
];

const HOLD: readonly Asked[] = [
  ['bearing', /^Held leg bears/u, 'length'],
  ['tail.from', /^Held leg’s own bend that stays/u, 'angle'],
  ['tail.to', /^Held leg’s own bend that stays/u, 'angle'],
  ['up', /^Front edge of the spine is pushed up by/u, 'force'],
  ['clampForce', /^Clamps, |^Clamps$|^Clamps /u, 'force'],
  ['clamps', /^Clamps$|^Clamps /u, 'count'],
  ['foot', /^Foot behind the spine/u, 'length'],
  ['safety', /^Clamps’ safety against tipping/u, 'ratio'],
];

/** What a reader has: rows of a name and what it says; how it prints numbers; how it calls the yoke's members. */
interface Reader {
  readonly rows: readonly (readonly [string, string])[];
  readonly print: Printers;
}

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

function valueAt(of: PlanPull | PlanHold, path: string): unknown {
  return path.split('.').reduce<unknown>((value, key) => (value as Readonly<Record<string, unknown>>)[key], of);
}

/** Every number asked for that a reader does not tell, by its path. */
function missing({ pull, hold }: Pick<BuiltPlan, 'pull' | 'hold'>, { rows, print }: Reader, names: Names): string[] {
  const untold = (of: PlanPull | PlanHold, asked: readonly Asked[]): string[] =>
    asked.flatMap(([path, row, kind]) => {
      const value = valueAt(of, path);
      const told = rows.filter(([name]) => row.test(name)).map(([, said]) => said);
      const words = kind === 'word' || kind === 'count' ? names(String(value)) : [plain(print[kind](value as number))];
      return told.some((said) => words.some((word) => plain(said).includes(word))) ? [] : [`${path}: ${words.join()}`];
    });
  const { yoke } = pull;
  const apart = yoke
    ? rows.some(
        ([name, said]) =>
          name.startsWith('Sheet pushes nose and outer member apart by') &&
          plain(said).includes(plain(print.force(yoke.part * yoke.bolts.span))),
      )
    : true;
  return [
    ...untold(pull, PULL),
    ...(yoke ? untold(pull, YOKE) : []),
    ...(apart ? [] : ['yoke.part']),
    ...untold(hold, HOLD),
  ];
}

/** What a member of the yoke is called: by its id, or by its name in the table of stock. */
type Names = (id: string) => string[];
const called: Names = (id) => [id, ...tables.yokeStock.filter((one) => one.id === id).map(({ name }) => name)];

/** Rows `  Name   what it says` of a text, two spaces between. */
const rowsOfText = (text: string): (readonly [string, string])[] =>
  text.split('\n').flatMap((line) => {
    const [, name, said] = /^ {2}(\S.*?) {2,}(\S.*)$/u.exec(line) ?? [];
    return name !== undefined && said !== undefined ? [[name, said] as const] : [];
  });

/** Rows of tables and of lists of terms. */
const rowsOfHtml = (page: string): (readonly [string, string])[] =>
  [
    ...page.matchAll(/<th scope="row">(.*?)<\/th>\s*<td[^>]*>(.*?)<\/td>/gsu),
    ...page.matchAll(/<dt>(.*?)<\/dt>\s*<dd>(.*?)<\/dd>/gsu),
  ].map(([, name = '', said = '']) => [plain(bare(name)), plain(bare(said))] as const);

const bare = (markup: string): string => markup.replaceAll(/<[^>]*>/gu, '').trim();

/** Terms and what they say, of what a component of the page shows. */
function rowsOfPage(shown: ComponentChildren): (readonly [string, string])[] {
  if (Array.isArray(shown)) return shown.flatMap(rowsOfPage);
  if (!isNode(shown)) return [];
  const children = [shown.props.children].flat() as ComponentChildren[];
  const [term, said] = children;
  if (isNode(term) && term.type === 'dt') return [[plain(textOf(term)), plain(textOf(said))]];
  return children.flatMap(rowsOfPage);
}

function textOf(shown: ComponentChildren): string {
  if (Array.isArray(shown)) return shown.map(textOf).join('');
  if (isNode(shown)) return textOf(shown.props.children);
  return typeof shown === 'string' || typeof shown === 'number' ? String(shown) : '';
}

function isNode(shown: ComponentChildren): shown is VNode<{ children?: ComponentChildren }> {
  return typeof shown === 'object' && shown !== null && 'props' in shown;
}

const onPage = (planned: Buildable, pulled: Plan): Reader => ({
  rows: rowsOfPage(
    Numbers({
      form: { job: planned.job, planned, bend: planned.bend, layout: planned.layout, parts: [] },
      stale: false,
      pulled,
    }),
  ),
  print: pagePrinters(planned.job.units),
});

/** Numbers of plan.json are rounded to ten digits. */
function sameInJson(of: PlanPull | PlanHold, read: PlanPull | PlanHold, asked: readonly Asked[]): void {
  for (const [path, , kind] of asked) {
    const [value, told] = [valueAt(of, path), valueAt(read, path)];
    if (kind === 'word') expect(told, path).toBe(value);
    else
      expect(Math.abs(Number(told) - Number(value)), path).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(Number(value))),
      );
  }
}

function inJson(of: Pick<BuiltPlan, 'pull' | 'hold'>, read: Pick<Plan, 'pull' | 'hold'>): void {
  const { pull, hold } = read;
  if (!pull || !hold) throw new Error('no pull or hold in plan.json');
  sameInJson(of.pull, pull, of.pull.yoke ? [...PULL, ...YOKE, ['yoke.part', /./u, 'force']] : PULL);
  expect(pull.with).toBe(of.pull.with);
  if (!of.pull.yoke) expect(pull.yoke).toBeNull();
  sameInJson(of.hold, hold, HOLD);
}

describe.each(starters)('every number of pull and hold of %s', (name) => {
  const planned = planStarter(name);
  const { plan, job } = planned;

  it('is in plan.json', () => {
    inJson(plan, JSON.parse(planText(plan)) as Plan);
  });

  it('is in the table', () => {
    const rows = rowsOfText(plain(printPlan(plan, job.units, false)));
    expect(missing(plan, { rows, print: tablePrinters(job.units) }, called)).toEqual([]);
  });

  it('is on the page', () => {
    expect(missing(plan, onPage(planned, plan), called)).toEqual([]);
  });

  it('is on the shop sheet', () => {
    const rows = rowsOfHtml(writeShopSheet(planned, { parts: [], boards: [] }, tables, { units: job.units }));
    expect(missing(plan, { rows, print: printersIn(measuresIn(job.units)) }, called)).toEqual([]);
  });
});

describe.each(panelStarters)('every number of pull and hold of each bend of %s', (name) => {
  const planned = planPanelStarter(name);
  const { units } = planned.job;
  const bends = planned.bends.map((one) => [one.bend.name, one] as const);

  it.each(bends)('%s: is in plan.json', (bendName, { alone }) => {
    const read = JSON.parse(planText(toPanelPlan(planned, []))) as PanelPlan;
    const told = read.panel?.bends.find((one) => one.name === bendName);
    if (!told) throw new Error('no such bend');
    inJson(alone.plan, told);
  });

  it('is in the table', async () => {
    const { out } = await bendbuck('.', ['plan', `templates/panels/${name}.yaml`]);
    for (const [bendName, { alone }] of bends) {
      const part = out.slice(out.indexOf(`\nPull and hold of ${bendName}\n`)).split('\n\n')[0] ?? '';
      expect(missing(alone.plan, { rows: rowsOfText(part), print: tablePrinters(units) }, called), bendName).toEqual(
        [],
      );
    }
  });

  it('is on the page', () => {
    for (const [bendName, { alone, step }] of bends) {
      const made = planned.forms.find((form) => form.name === step.use.body.name);
      if (!made) throw new Error('no form');
      expect(missing(alone.plan, onPage(made.planned, alone.plan), called), bendName).toEqual([]);
    }
  });

  it('is on the sheet of the order of work', () => {
    const noBoards = { blanks: [], pieces: { forms: [], parts: [], blocks: [], boards: [] }, tables };
    const tablesOf = writeWorkSheet(planned, noBoards).split('<table');
    for (const [bendName, { alone }] of bends) {
      const own = tablesOf.find((one) => new RegExp(`<caption>\\d+\\. ${bendName}</caption>`, 'u').test(one)) ?? '';
      const reader = { rows: rowsOfHtml(own), print: printersIn(measuresIn(units)) };
      expect(missing(alone.plan, reader, called), bendName).toEqual([]);
    }
  });
});
