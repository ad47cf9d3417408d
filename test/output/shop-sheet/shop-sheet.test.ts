import { parse, parseFragment, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/base/findings';
import { finding } from '../../../src/findings/finding';
import type { Buildable } from '../../../src/output/pipeline';
import { writeShopSheet, type ShopSheetOptions } from '../../../src/output/shop-sheet';
import { boardsOf, piecesOf } from '../../helpers/laid-out';
import { at } from '../../../src/base/at';
import { planPanelStarter, planStarter, starters, tables } from '../../helpers/starters';

function sheetFor(planned: Buildable, options?: ShopSheetOptions): string {
  return writeShopSheet(planned, { parts: piecesOf(planned), boards: boardsOf(planned) }, tables, options);
}

type Node = Tree.ChildNode;
const childrenOf = (node: Tree.Node): Node[] => ('childNodes' in node ? node.childNodes : []);
const all = (node: Tree.Node): Tree.Node[] => [node, ...childrenOf(node).flatMap(all)];
const elements = (node: Tree.Node, name: string): Tree.Element[] =>
  all(node).filter((one): one is Tree.Element => one.nodeName === name);
/** What a reader sees: the text, with what joins numbers to their units as plain spaces. */
const textOf = (node: Tree.Node): string =>
  ('value' in node ? node.value : childrenOf(node).map(textOf).join('')).replaceAll('\u00a0', ' ');
const attribute = (element: Tree.Element, name: string): string | undefined =>
  element.attrs.find((one) => one.name === name)?.value;

/** Rows of the table whose caption starts so, as texts. */
function rowsOf(document: Tree.Node, caption: string): string[][] {
  const table = elements(document, 'table').find((one) =>
    textOf(elements(one, 'caption')[0] as Tree.Node).startsWith(caption),
  );
  if (!table) throw new Error(`no table ${caption}`);
  const body = elements(table, 'tbody')[0] as Tree.Element;
  return elements(body, 'tr').map((row) =>
    childrenOf(row)
      .filter((cell) => cell.nodeName === 'td' || cell.nodeName === 'th')
      .map(textOf),
  );
}

/** Parsed with every complaint of the HTML standard's parser collected. */
function read(html: string): { document: Tree.Document; complaints: string[] } {
  const complaints: string[] = [];
  const document = parse(html, { onParseError: (error) => complaints.push(error.code) });
  return { document, complaints };
}

const mm = (value: number): string => `${value.toFixed(1)} mm`;

/** `1.628 in (1-5/8)` or `41.3 mm` back to mm, by hand. */
function toMm(text: string): number {
  const metric = /^(-?[\d.]+) mm/u.exec(text);
  if (metric) return Number(metric[1]);
  const match = /^(-?[\d.]+) in \((-?)(?:(\d+)-)?(\d+)(?:\/(\d+))?\)/u.exec(text);
  if (!match) throw new Error(`not a length: ${text}`);
  const [, decimal, sign, whole, top, bottom] = match;
  const fraction = (sign === '-' ? -1 : 1) * (Number(whole ?? 0) + Number(top) / Number(bottom ?? 1));
  // Half a thirty-second, and what rounding to a thousandth adds.
  expect(Math.abs(fraction - Number(decimal))).toBeLessThan(1 / 64 + 0.0006);
  return Number(decimal) * 25.4;
}

describe.each(starters)('the shop sheet of %s', (name) => {
  const planned = planStarter(name);
  const { plan, layout, bend } = planned;
  const { document, complaints } = read(sheetFor(planned, { units: 'mm' }));
  const text = textOf(document);
  if (!plan.spine || !plan.effort || !plan.bend || !layout || !bend) throw new Error('no plan');
  const { spine, effort } = plan;

  it('is well-formed by the HTML standard’s parser', () => {
    expect(complaints).toEqual([]);
    expect(elements(document, 'script')).toEqual([]);
  });

  it('fetches nothing and runs nothing, by its own policy and by what is in it', () => {
    const policy = elements(document, 'meta').find(
      (meta) => attribute(meta, 'http-equiv') === 'Content-Security-Policy',
    );
    expect(policy && attribute(policy, 'content')).toBe("default-src 'none'; style-src 'unsafe-inline'; img-src data:");
    const attributes = all(document).flatMap((node) => ('attrs' in node ? node.attrs : []));
    expect(
      attributes.filter(
        (one) => /^(src|href|on|xlink|action|data|srcset|style)/u.test(one.name) && !one.value.startsWith('#'),
      ),
    ).toEqual([]);
    expect(elements(document, 'style').map(textOf).join('')).not.toMatch(/url\(|@import/u);
  });

  it('gives each station’s place, radii, contact face and bevel, in the sheet’s unit', () => {
    const inchRows = rowsOf(read(sheetFor(planned, { units: 'in' })).document, 'Stations');
    const rows = rowsOf(document, 'Stations');
    expect(rows).toHaveLength(plan.stations.length);
    for (const [index, station] of plan.stations.entries()) {
      const row = rows[index] ?? [];
      expect(row[0]).toContain(station.name);
      for (const { run } of station.ends) expect(row[0]).toContain(run);
      for (const [column, value] of [
        [1, station.at - station.thickness / 2],
        [2, station.at],
        [4, station.radius],
        [5, station.farRadius],
      ] as const) {
        expect(row[column]).toBe(mm(value));
        const inches = inchRows[index]?.[column] ?? '';
        expect(Math.abs(toMm(inches) - value)).toBeLessThan(0.0005 * 25.4 + 1e-9);
      }
      if (plan.bend?.coneHalfAngle.form !== 0) {
        expect(row[3]).toBe(`end ${station.contact === 'from' ? 'A' : 'B'}`);
        expect(row[6]).toBe(`${station.bevel.toFixed(1)}°`);
      }
    }
  });

  it('draws spine, station and backing station with the measures of the tables', () => {
    const [drawnSpine, station, backing] = elements(document, 'figure')
      .filter((figure) => attribute(figure, 'class') === 'drawn')
      .map((figure) => elements(figure, 'text').map(textOf));
    for (const { name, at, thickness, screws } of [...plan.stations, ...plan.backings]) {
      expect(drawnSpine).toContain(`${name}  ${mm(at - thickness / 2)}`);
      const holes = drawnSpine?.find((words) => words.startsWith(`${name}  ${mm(at)}, `));
      for (const { offset } of screws) expect(holes).toContain(offset === 0 ? '0 (on it)' : `±${mm(Math.abs(offset))}`);
    }
    for (const [index, { at, diameter }] of spine.clampHoles.entries())
      expect(drawnSpine).toContain(`C${index + 1}  ${mm(at)}, ⌀ ${Number(diameter.toFixed(2))} mm`);
    expect(drawnSpine?.join(' ')).toContain(`A to B ${mm(spine.length)}`);
    expect(drawnSpine).toContain(`A: ${mm(spine.widthFrom)} wide`);
    expect(drawnSpine).toContain(`B: ${mm(spine.widthTo)} wide`);
    expect(station).toContain(mm(plan.stations[0]?.radius ?? NaN));
    expect(backing).toContain(`height ${mm(plan.backings[0]?.width ?? NaN)}`);
    expect(backing).toContain(`depth (the foot) ${mm(plan.backings[0]?.depth ?? NaN)}`);
  });

  it('says all that is to be bought or found: metal, boards, what is pulled at, packing, bench', () => {
    const rows = rowsOf(document, 'To buy');
    const row = (what: string): string[] => rows.find(([first]) => first?.startsWith(what)) ?? [];
    const { blank } = plan;
    if (!blank) throw new Error('no blank');
    // The upright box round the blank, up to whole mm.
    const [wide, high] = [blank.width, blank.height].map((size) => `${Math.ceil(size - 1e-9)} mm`);
    expect(row(bend.metal.name)[1]).toBe(`${wide} × ${high}`);
    expect(row(bend.metal.name)[3]).toContain(`${blank.mass.toFixed(2)} kg`);
    expect(row('MDF')[2]).toBe('1');
    // A yoke member by member, its bolts and the plank; a batten is for bare hands.
    const members = rows.filter(([, , , remark]) => /^(?:yoke’s|plank)/u.test(remark ?? ''));
    expect(members.map(([, , number]) => number)).toEqual(
      plan.pull.yoke ? ['1', '1', String(plan.pull.yoke.handles), '1', '4', String(4 * plan.pull.yoke.handles)] : [],
    );
    if (plan.pull.yoke) expect(members[0]?.[1]).toBe(`${mm(plan.pull.yoke.length)} long`);
    expect(row('stiff batten')[1]?.includes('long')).toBe(plan.pull.yoke ? undefined : true);
    const behind = spine.thickness + effort.foot;
    const { held } = planned.job.bend.legs;
    if (held < behind) expect(row('packing strip')[1]).toContain(`${Math.ceil(behind - held - 1e-9)} mm`);
    const deep = Math.max(behind, held) + blank.height - held;
    expect(row('bench')[3]).toContain(`${Math.ceil(deep - 1e-9)} mm in all`);
  });

  it('lists every hole of the plan once, with its place, drill, side and what it holds', () => {
    const rows = rowsOf(document, 'Holes');
    const clearance = rows.filter((row) => row[0]?.startsWith('for '));
    expect(clearance.reduce((sum, row) => sum + Number(/^\d+/u.exec(row[3] ?? '')?.[0]), 0)).toBe(
      spine.screwHoles.length,
    );
    for (const hole of spine.screwHoles) {
      const row = clearance.find((one) => one[0] === `for ${hole.holds}`) ?? [];
      expect(row[1]).toBe(mm(hole.at));
      if (hole.offset !== 0) expect(row[2]).toContain(`±${mm(Math.abs(hole.offset))}`);
      else expect(row[2]).toContain('0 (on it)');
      expect(row[5]).toContain(hole.side);
      expect(Math.abs(Number(/([\d.]+) mm across/u.exec(row[5] ?? '')?.[1]) - hole.countersink)).toBeLessThanOrEqual(
        0.05,
      );
    }
    const clamps = rows.filter((row) => row[0]?.startsWith('C'));
    expect(clamps.map((row) => [row[1], row[4]])).toEqual(
      spine.clampHoles.map((hole) => [mm(hole.at), `${hole.diameter} mm`]),
    );
  });

  it('gives each board its screws and pilots, and counts to buy that add up to the plan’s', () => {
    const boards = [...plan.stations, ...plan.backings];
    const pilots = rowsOf(document, 'Screws and pilot holes');
    for (const board of boards) {
      const row = pilots.find((one) => one[0] === board.name) ?? [];
      expect(Number(row[1])).toBe(board.screws.length);
      for (const screw of board.screws) {
        expect(row[5]).toBe(mm(screw.pilotDepth));
        expect(row[4]).toBe(tables.screws.find((kind) => kind.id === screw.size)?.pilotDrill);
      }
    }
    const bought = rowsOf(document, 'Screws:');
    const driven = boards.flatMap((board) => board.screws);
    expect(bought.reduce((sum, row) => sum + Number(row[2]), 0)).toBe(driven.length);
    for (const [size, length, number] of bought) {
      const kind = tables.screws.find((row) => row.name === size);
      const mmLength = kind?.lengths[kind.lengthNames.indexOf(length ?? '')];
      expect(Number(number)).toBe(
        driven.filter((screw) => screw.size === kind?.id && screw.length === mmLength).length,
      );
    }
    for (const drill of driven.map((screw) => tables.screws.find((kind) => kind.id === screw.size))) {
      expect(text).toContain(`pilot drill ${drill?.pilotDrill}`);
      expect(text).toContain(`clearance drill ${drill?.clearanceDrill}`);
    }
  });

  it('lists every piece to cut, with its size', () => {
    const rows = rowsOf(document, 'Cut list');
    expect(rows.reduce((sum, row) => sum + Number(row[4]), 0)).toBe(
      1 + plan.stations.length + plan.backings.length + (plan.pull.yoke ? 3 + plan.pull.yoke.handles : 0),
    );
    const rowOf = (piece: string): string => rows.find((row) => row[0]?.split(', ').includes(piece))?.[2] ?? '';
    expect(rowOf('spine')).toContain(`${mm(spine.length + 2 * spine.ears)} long`);
    if (spine.ears === 0)
      for (const width of [spine.widthFrom, spine.widthTo]) expect(rowOf('spine')).toContain(mm(width));
    for (const station of plan.stations)
      expect(rowOf(station.name)).toBe(
        `radius ${mm(station.radius)}: ${mm(2 * station.radius)} × ${mm(station.radius)}`,
      );
    for (const backing of plan.backings)
      expect(rowOf(backing.name)).toBe(`${mm(backing.width)} high × ${mm(backing.depth)} deep`);
  });

  it('tells the pull, the gauge, the lever, the clamps, the foot and the sheet’s lines', () => {
    if (!plan.bend || !plan.blank || !plan.sheet) throw new Error('no plan');
    for (const said of [
      `${plan.bend.wrap.chosen.toFixed(1)}° of wrap`,
      `${plan.bend.angle.toFixed(1)}° from flat`,
      `${effort.handForce.toFixed(0)} N`,
      `${mm(effort.lever)} from where the sheet leaves the form`,
      `${effort.clamps} clamps`,
      `${(effort.clampForce / effort.clamps).toFixed(0)} N`,
      `Foot behind the spine\n${mm(effort.foot)}, on `,
      mm(plan.bend.finished.from),
      mm(plan.bend.finished.to),
      mm(plan.bend.form.from),
      mm(plan.bend.form.to),
      mm(plan.bend.allowance.from),
      mm(plan.bend.allowance.to),
      ...(effort.leverage > 0 ? [mm(effort.leverage)] : []),
      ...plan.runs.map((run) => run.name),
      ...plan.findings.map((finding) => finding.message),
      `${plan.sheet.yield} MPa`,
    ]) {
      expect(text).toContain(said);
    }
    const lines = rowsOf(document, 'Flat sheet');
    const held = planned.job.bend.legs.held;
    expect(lines.find((row) => row[0]?.startsWith('mark of the held'))?.slice(1)).toEqual([
      `${mm(0)}, ${mm(held - plan.pull.early)}`,
      `${mm(plan.bend.length)}, ${mm(held - plan.pull.early)}`,
    ]);
    const [, free] = plan.blank.tangents;
    expect(lines.find((row) => row[0]?.startsWith('tangent line of the free'))?.slice(1)).toEqual(
      free?.map(([x, y]) => `${x.toFixed(1).replace('-0.0', '0.0')} mm, ${mm(y + held)}`),
    );
  });

  it('checks of the spine it asks for hold: long edge and diagonals by coordinates of its corners', () => {
    const said = /each long edge measures ([\d.]+) mm from A to B, and both diagonals from A to B ([\d.]+) mm/u.exec(
      text,
    );
    const [low, high] = [spine.widthFrom / 2, spine.widthTo / 2];
    expect(Math.abs(Number(said?.[1]) - Math.hypot(spine.length, high - low))).toBeLessThan(0.0501);
    expect(Math.abs(Number(said?.[2]) - Math.hypot(spine.length, high + low))).toBeLessThan(0.0501);
  });

  it('repeats table heads and names every column and row', () => {
    for (const table of elements(document, 'table')) {
      expect(elements(table, 'thead')).toHaveLength(1);
      const columns = elements(elements(table, 'thead')[0] as Tree.Element, 'th').length;
      const rows = elements(elements(table, 'tbody')[0] as Tree.Element, 'tr');
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) expect(childrenOf(row).filter((cell) => cell.nodeName !== '#text')).toHaveLength(columns);
    }
  });

  it('is the same bytes twice', () => {
    expect(sheetFor(planStarter(name), { units: 'mm' })).toBe(sheetFor(planned, { units: 'mm' }));
  });
});

describe('units', () => {
  const planned = planStarter('tapered-curve');

  it('are the job’s unless asked otherwise', () => {
    expect(sheetFor(planned)).toBe(sheetFor(planned, { units: 'mm' }));
    const inch = planStarter('plain-curve-inch');
    expect(sheetFor(inch)).toBe(sheetFor(inch, { units: 'in' }));
    expect(sheetFor(inch)).not.toBe(sheetFor(inch, { units: 'mm' }));
  });

  it('in inches every cut size is the plan’s, to half a thousandth of an inch', () => {
    const { document } = read(sheetFor(planned, { units: 'in' }));
    const rows = rowsOf(document, 'Cut list');
    for (const station of planned.plan.stations) {
      const size = rows.find((row) => row[0]?.split(', ').includes(station.name))?.[2] ?? '';
      expect(Math.abs(toMm(size.replace('radius ', '')) - station.radius)).toBeLessThan(0.0128);
    }
  });

  it('both on request, side by side', () => {
    const { document } = read(sheetFor(planned, { units: 'both' }));
    for (const [index, backing] of planned.plan.backings.entries()) {
      const [metric, inch] = (rowsOf(document, 'Backing stations')[index]?.[2] ?? '').split(' / ') as [string, string];
      expect(metric).toBe(mm(backing.at));
      expect(Math.abs(toMm(inch) - backing.at)).toBeLessThan(0.0128);
    }
  });
});

describe('text from the job', () => {
  const hostile = [
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "' onmouseover='alert(1)",
    '</title></style><b>&amp;&#60;',
    'x'.repeat(200),
    '\u202eright to left\u202c קשת פח עוקם \u200f',
    'naïve 曲げ型 🛶 é',
    '{{7*7}} ${7*7} ]]> -->',
  ];

  it.each(hostile)('appears as it is and changes nothing else: %s', (words) => {
    const found = (board: string): Finding => finding('one-screw', 'screws', { board, half: 20 });
    const base = { ...at(planPanelStarter('coaming').forms, 0).planned, findings: [found('S1')] };
    const [firstRun, secondRun] = base.bend?.runs ?? [];
    if (!base.bend || !base.layout || !firstRun || !secondRun) throw new Error('cannot be built');
    const renamed: Buildable = {
      ...base,
      job: { ...base.job, title: words },
      bend: { ...base.bend, runs: [{ ...firstRun, name: words }, secondRun] },
      layout: {
        ...base.layout,
        stations: base.layout.stations.map((station) => ({
          ...station,
          ends: station.ends.map((end) => ({ ...end, run: words })),
        })),
      },
      plan: {
        ...base.plan,
        title: words,
      },
      findings: [found(words)],
    };
    const [plain, changed] = [read(sheetFor(base)), read(sheetFor(renamed))];
    expect(changed.complaints).toEqual([]);
    const shape = (document: Tree.Document): string[] =>
      all(document)
        .filter((node) => node.nodeName !== '#text')
        .map((node) => node.nodeName);
    expect(shape(changed.document)).toEqual(shape(plain.document));
    expect(textOf(elements(changed.document, 'h1')[0] as Tree.Node)).toBe(words);
    expect(textOf(elements(changed.document, 'title')[0] as Tree.Node)).toBe(`${words}: shop sheet`);
    const theirs = elements(changed.document, 'bdi').filter((node) => textOf(node) === words);
    expect(theirs.length).toBeGreaterThan(6);
    // Nowhere outside the isolated places but the title.
    const outside = all(changed.document).filter(
      (node) =>
        node.nodeName === '#text' &&
        'value' in node &&
        node.value.includes(words) &&
        node.parentNode?.nodeName !== 'bdi',
    );
    expect(outside.map((node) => ('parentNode' in node ? node.parentNode?.nodeName : ''))).toEqual(['title']);
  });

  it('control characters and half characters become spaces', () => {
    const base = planStarter('plain-curve');
    const { document } = read(sheetFor({ ...base, job: { ...base.job, title: 'a\u0000b\u0007c\ud800d' } }));
    expect(textOf(elements(document, 'h1')[0] as Tree.Node)).toBe('a b c d');
  });
});

describe('a job with a board the tables lack', () => {
  it('has no shop sheet', () => {
    const base = planStarter('plain-curve');
    const job = { ...base.job, board: { ...base.job.board, spine: { stock: 'none', thickness: null } } };
    expect(() => writeShopSheet({ ...base, job }, { parts: [], boards: [] }, tables)).toThrow(
      /not in the tables: none/u,
    );
  });
});

describe('a single screw', () => {
  it('is glued as well, and the sheet says so', () => {
    const base = planStarter('plain-curve');
    if (!base.layout) throw new Error('cannot be built');
    const layout = {
      ...base.layout,
      stations: base.layout.stations.map((station, index) =>
        index === 0 ? { ...station, screws: station.screws.slice(0, 1) } : station,
      ),
    };
    const [dry, glued] = [base, { ...base, layout }].map((planned) => textOf(parseFragment(sheetFor(planned))));
    expect(dry).toContain('No glue is needed');
    expect(glued).toContain('Glue as well as screw: S1');
    expect(glued).toContain('wood glue, for S1');
  });
});
