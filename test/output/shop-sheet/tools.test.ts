import { tablesIn } from '../../../src/tables/tables';
import { parse, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import { describe, expect, it } from 'vitest';
import { finding } from '../../../src/findings/finding';
import { sayFinding } from '../../../src/findings/say';
import type { Plan } from '../../../src/output/plan/plan';
import type { Buildable } from '../../../src/output/pipeline';
import { hatchNarrowWaste } from '../../../src/drawing/boards/hatch';
import { writeShopSheet } from '../../../src/output/shop-sheet';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { cutWith, tools } from '../../helpers/for-tool';
import { boardsOf, piecesOf } from '../../helpers/laid-out';
import { planStarter, starters, tables } from '../../helpers/starters';

const childrenOf = (node: Tree.Node): Tree.ChildNode[] => ('childNodes' in node ? node.childNodes : []);
const all = (node: Tree.Node): Tree.Node[] => [node, ...childrenOf(node).flatMap(all)];
const elements = (node: Tree.Node, name: string): Tree.Element[] =>
  all(node).filter((one): one is Tree.Element => one.nodeName === name);
const textOf = (node: Tree.Node): string =>
  ('value' in node ? node.value : childrenOf(node).map(textOf).join('')).replaceAll('\u00a0', ' ');
const mm = (value: number): string => `${value.toFixed(1)} mm`;

interface Page {
  readonly planned: Buildable;
  readonly plan: Plan;
  readonly text: string;
  /** Rows of the table whose caption starts so, the first lines of their cells; none where there is no such table. */
  readonly rows: (caption: string) => string[][];
  /** Titles of the steps, and what each says. */
  readonly steps: readonly (readonly [string, string])[];
}

/** How many pieces a cut list has besides the yoke and the plank under it, which are steel and wood as bought. */
function boardPieces(rows: readonly (readonly string[])[]): number {
  const pulling = rows.filter(([piece]) => piece?.startsWith('yoke’s') || piece === 'plank');
  expect(pulling.map(([piece]) => piece)).toEqual(['yoke’s nose', 'yoke’s outer member', 'yoke’s handle', 'plank']);
  return rows.reduce((sum, row) => sum + (pulling.includes(row) ? 0 : Number(row[4])), 0);
}

const known = new Map<Buildable, Page>();

function pageOf(starter: string, tool: keyof typeof tools, change: (text: string) => string = (text) => text): Page {
  const planned = planStarter(starter, (text) => change(cutWith(tool)(text)));
  const page = known.get(planned) ?? writtenPage(planned);
  known.set(planned, page);
  return page;
}

function writtenPage(planned: Buildable): Page {
  const given = { parts: piecesOf(planned), boards: boardsOf(planned) };
  const document = parse(writeShopSheet(planned, given, tables, { units: 'mm' }));
  return {
    planned,
    plan: planned.plan,
    text: textOf(document),
    rows: (caption) => {
      const table = elements(document, 'table').find((one) =>
        textOf(elements(one, 'caption')[0] as Tree.Node).startsWith(caption),
      );
      return table
        ? elements(elements(table, 'tbody')[0] as Tree.Node, 'tr').map((row) =>
            childrenOf(row)
              .filter(({ nodeName }) => nodeName !== '#text')
              .map((cell) =>
                childrenOf(cell)
                  .filter(({ nodeName }) => nodeName !== 'small')
                  .map(textOf)
                  .join(''),
              ),
          )
        : [];
    },
    steps: stepsOf(document),
  };
}

function stepsOf(document: Tree.Node): (readonly [string, string])[] {
  return elements(document, 'div')
    .filter(({ attrs }) => attrs.some(({ value }) => value.startsWith('step-')))
    .map((one) => [textOf(elements(one, 'h3')[0] as Tree.Node), textOf(one)] as const);
}

const titles = ({ steps }: Page): string[] => steps.map(([title]) => title);
const step = ({ steps }: Page, words: string): string => steps.find(([title]) => title.includes(words))?.[1] ?? '';

describe.each(starters)('%s cut with a router', (name) => {
  const page = pageOf(name, 'router');
  const { plan, text } = page;
  const { rules } = tablesIn(tables, page.planned.job.units);
  if (plan.cut?.with !== 'router' || !plan.spine) throw new Error('not a router’s plan');
  const { cut, spine } = plan;

  it('has every groove of the plan: place, width, depth, open side', () => {
    expect(page.rows('Grooves')).toEqual(
      cut.grooves.map(({ holds, low, high, open }) => [
        holds,
        mm(low),
        mm(high),
        mm(high - low),
        mm(cut.grooveDepth),
        open === null ? 'none' : open === 'from' ? 'end A' : 'end B',
      ]),
    );
  });

  it('has pilots as deep as their screws reach: the tip in the same wood whether measured from the board’s edge or the spine’s face', () => {
    const rows = page.rows('Screws and pilot');
    for (const station of plan.stations) {
      const row = rows.find(([board]) => board === station.name) ?? [];
      const [screw] = station.screws;
      if (!screw) throw new Error('a station without a screw');
      // From the spine's back the screw passes what the groove leaves of the spine; all else of its length, and the room beyond its tip, is in the station.
      const passed = spine.thickness - cut.grooveDepth;
      const inStation = screw.length - passed + rules.pilotExtraDepth;
      expect(row[5]).toBe(mm(inStation));
      expect(row[6]).toBe(mm(passed + inStation));
    }
    for (const backing of plan.backings) {
      const row = rows.find(([board]) => board === backing.name) ?? [];
      const [screw] = backing.screws;
      expect([row[5], row[6]]).toEqual([
        mm((screw?.length ?? 0) - spine.thickness + rules.pilotExtraDepth),
        mm((screw?.length ?? 0) + rules.pilotExtraDepth),
      ]);
    }
  });

  it('has the work in its order, fit first, and none of the jigsaw’s', () => {
    expect(
      titles(page)
        .slice(0, 5)
        .map((title) => title.replace(/^\d+\. /u, '')),
    ).toEqual(['Try the fit, before anything else is cut', 'Cut', 'Drill and countersink', 'Assemble', 'Set up']);
    expect(text).not.toMatch(/jigsaw|band saw|hole saw|compass|strike a half circle|Bevel|Hatching|Relief cuts/u);
    expect(text).toContain('The marks on the stations');
  });

  it('says bit, depths, bridges, holes smaller than the bit, and what a router does to hands and lungs', () => {
    const cutting = step(page, 'Cut');
    expect(cutting).toContain(`${Number((cut.bit / 2).toFixed(2))} mm outside outlines and inside holes`);
    expect(cutting).toContain(`Grooves ${mm(cut.grooveDepth)} deep`);
    expect(cutting).toContain(`leaves ${mm(tablesIn(tables, page.planned.job.units).tools.bridgeHeight)} of wood`);
    expect(cutting).toContain('Saw through every bridge');
    expect(cutting).toMatch(/Goggles.*hearing.*no gloves.*extraction/su);
    const back = spine.screwHoles.filter(({ side }) => side === 'back').length;
    expect(cutting).toContain(`The ${back} for the stations are not drawn: they are made by hand from the back`);
    const drilled = spine.screwHoles.every(({ diameter }) => diameter < cut.bit);
    expect(
      step(page, 'Drill').includes(
        `The ${spine.screwHoles.length} clearance holes of the spine are smaller than the bit`,
      ),
    ).toBe(drilled);
    expect(
      page
        .rows('Holes')
        .filter(([hole]) => hole?.startsWith('for '))
        .every((row) => row[4]?.endsWith(drilled ? ', drilled' : ', cut by the bit')),
    ).toBe(true);
  });

  it('lists stations as large as they are cut, and the fit test', () => {
    const rows = page.rows('Cut list');
    const sizeOf = (piece: string): string | undefined => rows.find((row) => row[0]?.split(', ').includes(piece))?.[2];
    for (const { name: station, radius } of plan.stations)
      expect(sizeOf(station)).toBe(`radius ${mm(radius)}: ${mm(2 * radius)} × ${mm(radius + cut.grooveDepth)}`);
    // Three openings as wide as a station is thick, 12 mm of wood round each, in a strip 46 mm wide.
    const [station] = plan.stations;
    expect(sizeOf('fit-test')).toBe(`${mm(3 * ((station?.thickness ?? NaN) + 12) + 12)} × ${mm(46)}`);
    expect(boardPieces(rows)).toBe(2 + plan.stations.length + plan.backings.length);
  });
});

describe.each(starters)('%s cut with a laser', (name) => {
  const page = pageOf(name, 'laser');
  const { plan, planned, text } = page;
  const { rules } = tablesIn(tables, planned.job.units);
  if (plan.cut?.with !== 'laser' || !plan.spine || !plan.bend) throw new Error('not a laser’s plan');
  const { cut, spine } = plan;

  it('has every layer with its radius on a taper, and one radius for all on a cylinder', () => {
    const rows = page.rows('Layers of the stations');
    const stations = cut.boards.filter((board) => plan.stations.some((station) => station.name === board.name));
    if (plan.bend?.coneHalfAngle.form === 0) {
      expect(rows).toEqual([]);
      expect(page.rows('Stations').map((row) => row[4])).toEqual(plan.stations.map(({ radius }) => mm(radius)));
    } else {
      expect(rows).toEqual(
        stations.flatMap((board) =>
          board.layers.map((layer, index) => [
            `${board.name}-${index + 1}`,
            mm(layer.low),
            `end ${layer.contact === 'from' ? 'A' : 'B'}`,
            mm(layer.radius),
            mm(layer.farRadius),
          ]),
        ),
      );
    }
  });

  it('has every slot with its tab, and every dowel hole', () => {
    const slots = page.rows('Slots');
    for (const board of cut.boards.filter(({ tabs }) => tabs.length > 0)) {
      const row = slots.find(([holds]) => holds === board.name) ?? [];
      const [slot] = board.slots;
      expect(row.slice(1, 3)).toEqual([mm(slot?.low ?? NaN), mm(slot?.high ?? NaN)]);
      expect(Number.parseFloat(row[4] ?? '') - Number.parseFloat(row[5] ?? '')).toBeCloseTo(cut.fit, 1);
      for (const { offset } of board.tabs)
        expect(row[3]).toContain(offset === 0 ? '0 (on it)' : `±${mm(Math.abs(offset))}`);
    }
    const dowels = page.rows('Dowel holes');
    for (const board of cut.boards) {
      const row = dowels.find(([holds]) => holds === board.name);
      const [dowel] = board.dowels;
      if (dowel)
        expect(row?.slice(1)).toEqual([
          `±${mm(Math.abs(dowel.offset))}`,
          mm(dowel.depth),
          `${Number(dowel.diameter.toFixed(2))} mm`,
          mm((board.layers.at(-1)?.high ?? 0) - (board.layers[0]?.low ?? 0)),
        ]);
      else expect(row).toBeUndefined();
    }
    const bought = [...text.matchAll(/(\d+) dowels or bolts/gu)].reduce((sum, [, number]) => sum + Number(number), 0);
    expect(bought).toBe(cut.boards.reduce((sum, board) => sum + board.dowels.length, 0));
  });

  it('has pilots from the shoulder, and from the spine’s face through all its layers', () => {
    const rows = page.rows('Screws and pilot');
    for (const board of [...plan.stations, ...plan.backings]) {
      const row = rows.find(([holds]) => holds === board.name) ?? [];
      const reach = (board.screws[0]?.length ?? NaN) + rules.pilotExtraDepth;
      expect([row[5], row[6]]).toEqual([mm(reach - spine.thickness), mm(reach)]);
    }
  });

  it('has the work in its order, fit first, stack before pilots, and none of the jigsaw’s', () => {
    expect(
      titles(page)
        .slice(0, 6)
        .map((title) => title.replace(/^\d+\. /u, '')),
    ).toEqual([
      'Try the fit, before anything else is cut',
      'Cut',
      'Glue the layers',
      'Countersink, stand dry, drill',
      'Assemble',
      'Set up',
    ]);
    expect(text).not.toMatch(
      /jigsaw|band saw|hole saw|compass|strike a half circle|Bevel|clearance drill \d|No glue is needed/u,
    );
    expect(step(page, 'Glue')).toMatch(/S1-1 nearest end A.*before any pilot is drilled/su);
    expect(step(page, 'Cut')).toMatch(/extraction.*never leave it.*PVC.*manual/su);
  });

  it('says the kerf once for all: in the drawings, and sizes are of what comes out', () => {
    expect(text).toContain(`kerf ${Number(cut.kerf.toFixed(2))} mm. The kerf is in the drawings`);
    const rows = page.rows('Cut list');
    const sizeOf = (piece: string): string | undefined => rows.find((row) => row[0]?.split(', ').includes(piece))?.[2];
    for (const board of cut.boards.slice(0, plan.stations.length)) {
      for (const [index, { radius }] of board.layers.entries()) {
        expect(sizeOf(`${board.name}-${index + 1}`)).toBe(
          `radius ${mm(radius)}: ${mm(2 * radius)} × ${mm(radius + (board.tabs.length > 0 ? cut.tabLength : 0))}`,
        );
      }
    }
    const pieces =
      cut.layers.spine +
      cut.layers.stations * plan.stations.length +
      cut.layers.backing * plan.backings.length +
      1 +
      cut.layers.stations;
    expect(boardPieces(rows)).toBe(pieces);
    // The tongue of the fit test is 44 mm wide (src/parts/fit-test.ts): measured against that, the kerf shows.
    expect(step(page, 'Try the fit')).toContain('come out 44 mm wide');
  });

  it('has the thickness of one layer where board is bought, and of the stack where it is built', () => {
    const each = planned.layout ? planned.layout.spine.thickness / cut.layers.spine : NaN;
    expect(page.rows('To buy').find(([what]) => what === 'MDF 6 mm')?.[3]).toContain(
      `${each} mm thick as reckoned here`,
    );
    expect(text).toContain(`spine ${cut.layers.spine} layers of MDF ${each} mm, ${spine.thickness} mm in all`);
  });
});

describe('other ways to cut', () => {
  it('a laser’s single layer is not glued up', () => {
    const page = pageOf('tapered-curve', 'laser, one layer');
    expect(titles(page).some((title) => title.includes('Glue'))).toBe(false);
    expect(page.rows('Layers')).toEqual([]);
    expect(page.rows('Dowel')).toEqual([]);
    expect(page.text).not.toMatch(/layer/u);
    expect(page.rows('Stations').map((row) => row[4])).toEqual(page.plan.stations.map(({ radius }) => mm(radius)));
  });

  it('a router without bridges leaves the holding to the maker', () => {
    const page = pageOf('plain-curve', 'router', (text) => text.replace('bridges: true', 'bridges: false'));
    expect(step(page, 'Cut')).toContain('No bridges are drawn');
    expect(step(page, 'Cut')).not.toContain('Saw through');
  });

  it('a bit that fits the screw holes cuts them', () => {
    const page = pageOf('plain-curve', 'router', (text) => text.replace('with: router', 'with: router\n  bit: 3'));
    expect(step(page, 'Drill')).toContain('come from the machine: check them with a screw');
    expect(page.text).not.toContain('clearance drill');
  });

  it('screws are those of the spine as built, not of one layer', () => {
    const { plan, text } = pageOf('tapered-curve', 'laser, thin board');
    const [size] = new Set(plan.stations.flatMap(({ screws }) => screws.map((screw) => screw.size)));
    const kind = tables.screws.find(({ id }) => id === size);
    expect(kind).not.toEqual(tables.screws.find(({ system }) => system === kind?.system));
    expect(text).toContain(`pilot drill ${kind?.pilotDrill},`);
  });

  it.each(['router', 'laser'] as const)(
    'with ears, a %s’s maker draws the lines A and B that the machine does not',
    (tool) => {
      const { planned } = pageOf('tapered-curve', tool);
      if (!planned.layout || !planned.plan.spine) throw new Error('cannot be built');
      const eared = { ...planned, layout: { ...planned.layout, spine: { ...planned.layout.spine, ears: 90 } } };
      const said = (one: Buildable): string =>
        textOf(parse(writeShopSheet(one, { parts: piecesOf(planned), boards: [] }, tables, { units: 'mm' })));
      expect(said(eared)).toContain(
        `Draw line A square across the front of the spine, 90.0 mm from its A end, and line B, ${mm(planned.plan.spine.length)} further`,
      );
      expect(said(planned)).not.toContain('Draw line A');
    },
  );

  it('diameters to be met are fractions of an inch where they are, else thousandths', () => {
    const { exact } = measuresIn('in');
    const said = (mm: number): string => exact(mm).replaceAll('\u00a0', ' ');
    expect([said(6.35), said(4.7625), said(6), said(0.2)]).toEqual(['1/4 in', '3/16 in', '0.236 in', '0.008 in']);
    expect(measuresIn('both').exact(6).replaceAll('\u00a0', ' ')).toBe('6 mm / 0.236 in');
  });

  it('what was found about joints stands at the step it matters in', () => {
    const page = pageOf('tapered-curve', 'laser');
    const found = [
      [finding('board-not-measured', 'board', { openings: 'slots', boards: ['MDF 6 mm'] }), 'Try the fit'],
      [finding('loose-fit', 'cut.fit', { fit: 0.6, opening: 'slot', most: 0.5 }), 'Try the fit'],
      [finding('dowels-thinner', 'cut.dowel', { dowel: 6, thinner: [{ name: 'S1', mm: 4 }] }), 'Glue'],
      [finding('screws-in-glue-line', 'cut.layers', { boards: ['stations'] }), 'drill'],
      [finding('no-room-for-tabs', 'cut', { boards: ['S1'] }), 'Assemble'],
      [finding('thick-for-laser', 'board', { boards: ['MDF 18 mm'], most: 10 }), 'Cut'],
    ] as const;
    const planned = { ...page.planned, findings: found.map(([one]) => one) };
    const messages = found.map(([one, where]) => ({ where, message: sayFinding(one, { units: 'mm' }).message }));
    const document = parse(writeShopSheet(planned, { parts: piecesOf(page.planned), boards: [] }, tables));
    const said = stepsOf(document);
    for (const { where, message } of messages)
      expect(said.filter(([, words]) => words.includes(message)).map(([title]) => title)).toEqual([
        expect.stringContaining(where),
      ]);
  });

  it('every finding has its step', () => {
    for (const tool of Object.keys(tools) as (keyof typeof tools)[]) {
      const page = pageOf('tapered-curve', tool);
      const said = page.steps.map(([, words]) => words).join(' ');
      for (const { message } of page.plan.findings) expect(said).toContain(message);
    }
  });
});

describe('a jigsaw’s lines in the waste', () => {
  const tight = (text: string): string => text.replace('with: jigsaw', 'with: jigsaw\n  turn: 60');

  it('relief cuts are explained where there are any', () => {
    expect(step(pageOf('tapered-curve', 'jigsaw', tight), 'Cut')).toMatch(/Relief cuts\. .*S1.* sawn first/u);
    expect(pageOf('tapered-curve', 'jigsaw').text).not.toContain('Relief cuts');
  });

  it('hatching is explained where there is any', () => {
    const { planned, text } = pageOf('tapered-curve', 'jigsaw');
    expect(text).not.toMatch(/[Hh]atching/u);
    const parts = piecesOf(planned);
    const boards = boardsOf(planned).map((board) =>
      hatchNarrowWaste(board, parts, tables.tools.narrowWaste, tables.tools.hatchSpacing),
    );
    const hatched = textOf(parse(writeShopSheet(planned, { parts: parts, boards: boards }, tables)));
    expect(hatched).toContain('keep the blade on the hatched side of both outlines');
    expect(hatched).toContain('Slanted hatching on the full-size boards');
  });
});
