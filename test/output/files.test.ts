import { readFileSync } from 'node:fs';
import { PDFDocument } from '@cantoo/pdf-lib';
import { parseSync, type INode } from 'svgson';
import { describe, expect, it } from 'vitest';
import { openFirst } from '../../src/cli/open-first';
import { cutOrder } from '../../src/base/drawing';
import { makeFiles, type FileOptions } from '../../src/output/files';
import { font } from '../helpers/font';
import { cutWith } from '../helpers/for-tool';
import { asText, filesOf } from '../helpers/laid-out';
import { readDxf } from '../helpers/read-dxf';
import { planStarter, planText, starters, tables } from '../helpers/starters';

const textOf = (content: string | Uint8Array): string =>
  typeof content === 'string' ? content : new TextDecoder().decode(content);

describe.each(starters)('files of %s', async (name) => {
  const planned = planStarter(name);
  const { plan } = planned;
  const files = await filesOf(planned);
  const file = (path: string): string => {
    const found = files.find((candidate) => candidate.path === path);
    if (!found) throw new Error(`no file ${path}`);
    return textOf(found.content);
  };

  it('has no error finding and keeps the same bytes', async () => {
    expect(plan.findings.filter(({ level }) => level === 'error')).toEqual([]);
    const again = planText(readFileSync(`templates/${name}.yaml`, 'utf8'));
    if (!again.buildable) throw new Error('not to be built');
    expect(asText(await makeFiles(again, { tables, font }))).toEqual(asText(files));
  });

  it('DXF gives the stations’ radii back within 1e-4 mm: a half circle over its diameter', () => {
    expect(plan.stations.length).toBeGreaterThan(1);
    for (const station of plan.stations) {
      const read = readDxf(file(`parts/${station.name}.dxf`));
      expect(read.polylines).toHaveLength(1);
      const [{ closed, vertices, layer }] = read.polylines as [(typeof read.polylines)[number]];
      expect([closed, layer, vertices.length]).toEqual([true, 'outline', 2]);
      const [a, b] = vertices as [(typeof vertices)[number], (typeof vertices)[number]];
      expect(Math.abs(Math.hypot(a.x - b.x, a.y - b.y) / 2 - station.radius)).toBeLessThan(1e-4);
      expect([a.bulge, b.bulge].map(Math.abs).sort()).toEqual([0, 1]);
    }
  });

  it('DXF gives the spine’s holes back within 1e-4 mm, each once', () => {
    const read = readDxf(file('parts/spine.dxf'));
    const wanted = [
      ...(plan.spine?.clampHoles ?? []).map(({ at, diameter }) => ({
        layer: 'hole',
        x: at,
        y: 0,
        radius: diameter / 2,
      })),
      // The front is drawn: what is sunk from the back is not cut from there.
      ...(plan.spine?.screwHoles ?? []).flatMap(({ at, offset, diameter, countersink, side }) => [
        { layer: 'hole', x: at, y: offset, radius: diameter / 2 },
        ...(side === 'front' ? [{ layer: 'countersink', x: at, y: offset, radius: countersink / 2 }] : []),
      ]),
    ];
    expect(read.circles).toHaveLength(wanted.length);
    // Line A on the centre line is `ears` from the left edge and half of the greater width up.
    const { ears, length, widthFrom, widthTo } = plan.spine;
    const slope = (widthTo - widthFrom) / length;
    const centre = Math.max(widthFrom - slope * ears, widthTo + slope * ears) / 2;
    for (const hole of wanted) {
      const near = read.circles.filter(
        (circle) =>
          circle.layer === hole.layer &&
          Math.hypot(circle.x - ears - hole.x, circle.y - centre - hole.y) < 1e-4 &&
          Math.abs(circle.radius - hole.radius) < 1e-4,
      );
      expect(near, JSON.stringify(hole)).toHaveLength(1);
    }
    const [outline] = read.polylines;
    for (const { x, y } of outline?.vertices ?? []) {
      const half = (x < 1 ? widthFrom - slope * ears : widthTo + slope * ears) / 2;
      expect(Math.abs(Math.abs(y - centre) - half)).toBeLessThan(1e-4);
    }
    expect(outline?.vertices).toHaveLength(4);
  });

  it('every drawing begins at its lower left corner: nothing of it below 0, something at 0', () => {
    for (const { path, content } of files.filter((each) => /^(?:parts|aids|blank)\/.*\.dxf$/u.test(each.path))) {
      const low = /\$EXTMIN\r\n10\r\n(.*)\r\n20\r\n(.*)\r\n30/u.exec(textOf(content))?.slice(1).map(Number);
      expect(low, path).toEqual([0, 0]);
    }
  });

  it('boards hold every part once and nothing more but their own edges and slanted hatching', () => {
    const parts = files
      .filter(({ path }) => path.startsWith('parts/') && path.endsWith('.dxf'))
      .map(({ content }) => readDxf(textOf(content)));
    const boards = files
      .filter(({ path }) => path.startsWith('boards/') && path.endsWith('.dxf'))
      .map(({ content }) => readDxf(textOf(content)));
    const slanted = ({ ends: [from, to] }: (typeof parts)[number]['lines'][number]): boolean =>
      from !== undefined && to !== undefined && Math.abs(Math.abs(to.x - from.x) - Math.abs(to.y - from.y)) < 1e-3;
    const total = (list: typeof parts): number =>
      list.reduce((sum, { count, lines }) => sum + count - lines.filter(slanted).length, 0);
    expect(total(boards)).toBe(total(parts) + boards.length);
    const radii = (list: typeof parts): number[] =>
      list.flatMap(({ circles }) => circles.map(({ radius }) => radius)).sort((a, b) => a - b);
    expect(radii(boards)).toEqual(radii(parts));
  });

  it('boards lie with a corner at the origin, their edge drawn, everything on them in the positive quadrant', () => {
    const boards = files.filter(({ path }) => path.startsWith('boards/') && path.endsWith('.dxf'));
    expect(boards.length).toBeGreaterThan(0);
    for (const { path, content } of boards) {
      const { polylines, circles, lines } = readDxf(textOf(content));
      const [edge, ...more] = polylines.filter(({ layer }) => layer === 'board');
      const stock = tables.boards.find(({ id }) => path.includes(`board-${id.replaceAll('/', '_')}-`));
      if (!edge || !stock) throw new Error(`no edge, or no stock, of ${path}`);
      expect(more).toEqual([]);
      expect(edge.vertices.map(({ x, y }) => [x, y])).toEqual([
        [0, 0],
        [stock.length, 0],
        [stock.length, stock.width],
        [0, stock.width],
      ]);
      const places = [
        ...polylines.flatMap(({ vertices }) => vertices),
        ...circles.flatMap(({ x, y, radius }) => [-radius, radius].map((by) => ({ x: x + by, y: y + by }))),
        ...lines.flatMap(({ ends }) => ends),
      ];
      expect(places.every(({ x, y }) => x >= 0 && y >= 0 && x <= stock.length && y <= stock.width)).toBe(true);
    }
  });

  it('a board’s print is one page, as large as its parts need, at 1:1', async () => {
    const prints = files.filter(({ path }) => path.startsWith('boards/') && path.endsWith('.pdf'));
    expect(prints).toHaveLength(files.filter(({ path }) => /^boards\/.*\.dxf$/u.test(path)).length);
    for (const { path, content } of prints) {
      if (typeof content === 'string') throw new Error('a PDF is bytes');
      const [page, ...more] = (await PDFDocument.load(content, { updateMetadata: false })).getPages();
      expect(more).toEqual([]);
      const { polylines } = readDxf(file(path.replace(/pdf$/u, 'dxf')));
      const corners = polylines.filter(({ layer }) => layer === 'outline').flatMap(({ vertices }) => vertices);
      const [wide, high] = [Math.max(...corners.map(({ x }) => x)), Math.max(...corners.map(({ y }) => y))];
      const [width, height] = [page?.getWidth() ?? NaN, page?.getHeight() ?? NaN].map((points) => (points * 25.4) / 72);
      expect(width).toBeGreaterThan(wide);
      expect(height).toBeGreaterThan(high);
      expect(height).toBeLessThan(Math.max(115, high + 60) + 100);
    }
  });

  it('SVG says the same size as the DXF, in mm, with a bar below to check it by', () => {
    const pairs = files.filter(({ path }) => path.endsWith('.svg') && path.startsWith('parts/'));
    expect(pairs.length).toBeGreaterThan(2);
    for (const { path, content } of pairs) {
      const svg: INode = parseSync(textOf(content));
      const [, , width, height] = (svg.attributes['viewBox'] ?? '').split(' ').map(Number);
      expect(svg.attributes['width']).toBe(`${width}mm`);
      expect(svg.attributes['height']).toBe(`${height}mm`);
      const extent =
        /\$EXTMIN\r\n10\r\n(.*)\r\n20\r\n(.*)\r\n30[^$]*\$EXTMAX\r\n10\r\n(.*)\r\n20\r\n(.*)\r\n/u
          .exec(file(path.replace(/svg$/u, 'dxf')))
          ?.slice(1)
          .map(Number) ?? [];
      const bar = planned.job.units === 'mm' ? 100 : 101.6;
      expect(width).toBeCloseTo(Math.max((extent[2] ?? NaN) - (extent[0] ?? NaN), bar) + 10, 4);
      expect(height).toBeCloseTo((extent[3] ?? NaN) - (extent[1] ?? NaN) + 10 + 8, 4);
    }
  });
});

describe.each(starters.flatMap((name) => (['router', 'laser'] as const).map((tool) => [name, tool] as const)))(
  'files of %s for a %s',
  async (name, tool) => {
    const files = await filesOf(planStarter(name, cutWith(tool)));
    const boards = files
      .filter(({ path }) => /^(?:parts|boards)\/.*\.dxf$/u.test(path))
      .map(({ path, content }) => ({ path, read: readDxf(textOf(content)) }));

    it('are closed outlines, circles and engraved strokes, inside before outside; no text', () => {
      expect(boards.length).toBeGreaterThan(4);
      for (const { path, read } of boards) {
        expect(read.texts, path).toEqual([]);
        for (const { closed, layer } of read.polylines) expect(closed, `${path}, ${layer}`).toBe(layer !== 'label');
        // A laser's drawn lines are burnt at low power; a router has none.
        expect(
          read.lines.filter(({ layer }) => tool === 'router' || layer !== 'mark'),
          path,
        ).toEqual([]);
        const steps = read.order.map(({ layer }) => cutOrder.findIndex((operation) => operation === layer));
        expect(steps, path).toEqual([...steps].sort((a, b) => a - b));
        expect(steps.at(-1)).toBe(cutOrder.indexOf('outline'));
      }
    });

    it('come with the steps of cutting, and with templates of the gauges and the blank alone', () => {
      const operations = textOf(files.find(({ path }) => path === 'operations.csv')?.content ?? '');
      const parts = boards
        .filter(({ path }) => path.startsWith('parts/'))
        .map(({ path }) => path.slice('parts/'.length, -'.dxf'.length));
      for (const part of parts) expect(operations).toContain(`\r\n${part},outline,1,`);
      expect(files.filter(({ path }) => path === 'templates.pdf')).toHaveLength(1);
    });
  },
);

it.each(['router', 'laser'] as const)('files for a %s take the job’s own colours', async (tool) => {
  const planned = planStarter('plain-curve', (text) =>
    cutWith(tool)(text).replace(`with: ${tool}`, `with: ${tool}\n  colours: { outline: red }`),
  );
  const files = await filesOf(planned);
  const station = (type: 'svg' | 'dxf'): string =>
    textOf(files.find(({ path }) => path === `parts/S1.${type}` || path === `parts/S1-1.${type}`)?.content ?? '');
  expect(station('svg')).toMatch(/<g id="outline"[^>]* stroke="#ff0000"/u);
  expect(station('dxf')).toMatch(/\r\nLAYER\r\n70\r\n0\r\n2\r\noutline\r\n62\r\n1\r\n/u);
});

describe('the files a job asks for', () => {
  it('are lines and arcs in inches where it says so, and the command line has the last word', async () => {
    const planned = planStarter('plain-curve', (text) => `${text}\nfiles: { dxf: lines, units: in }\n`);
    const station = async (options: FileOptions): Promise<ReturnType<typeof readDxf>> => {
      const files = await makeFiles(planned, { tables, font }, options);
      return readDxf(textOf(files.find(({ path }) => path === 'parts/S1.dxf')?.content ?? ''));
    };
    const asked = await station({});
    expect([asked.units, asked.polylines.length]).toEqual([1, 0]);
    expect(asked.order.filter(({ layer }) => layer === 'outline').map(({ type }) => type)).toEqual(['LINE', 'ARC']);
    const told = await station({ dxf: 'polylines', fileUnits: 'mm' });
    expect([told.units, told.polylines.length]).toEqual([4, 1]);
  });
});

describe.each(['jigsaw', 'router', 'laser'] as const)('an inch job cut with a %s', (tool) => {
  const planned = planStarter('plain-curve-inch', (text) => inInches(cutWith(tool)(`${text}\nfiles: { units: in }\n`)));

  it('is told inches only', async () => {
    const read = (await filesOf(planned)).filter(({ path }) => /\.(csv|dxf|html|svg)$/u.test(path));
    expect(new Set(read.map(({ path }) => path.slice(-4))).size).toBe(tool === 'jigsaw' ? 3 : 4);
    const told = read.map(({ path, content }) => ({ path, words: wordsIn(path, textOf(content)) }));
    expect(told.filter(({ words }) => /\d[\s\u00a0]?in\b/u.test(words)).length).toBeGreaterThan(10);
    expect(
      told.flatMap(({ path, words }) => words.match(/.*\bmm\b.*/gu)?.map((line) => `${path}: ${line}`) ?? []),
    ).toEqual([]);
  });

  it('has what is said to be opened first, and why', async () => {
    const paths = (await filesOf(planned)).map(({ path }) => path);
    const lines = openFirst(tool, 'out').trim().split('\n').slice(1);
    expect(lines.length).toBe(tool === 'jigsaw' ? 2 : 4);
    for (const line of lines) {
      const [, name, why] = /^ {2}out\/(\S+) +(\S.*)$/u.exec(line) ?? [];
      expect(
        paths.filter((path) => path === name || (name?.endsWith('/') && path.startsWith(name))),
        line,
      ).not.toEqual([]);
      expect(why?.split(' ').length, line).toBeGreaterThan(4);
    }
  });
});

/** The laser's board as sold in inches. */
function inInches(text: string): string {
  return text.replace('mdf-6', 'mdf-1/4');
}

/** What a reader sees of a file: no tags, no style. */
function wordsIn(path: string, content: string): string {
  return /\.(html|svg)$/u.test(path)
    ? content.replaceAll(/<style>[^]*?<\/style>/gu, '').replaceAll(/<[^>]*>/gu, '\n')
    : content;
}

describe('the same lengths in mm and in inches', () => {
  // A job in inches has boards, screws and rules of its own (test/job/inch.test.ts): here one in mm with its lengths in inches.
  it('give the same geometry', async () => {
    const drawn = async (name: string, change?: (text: string) => string): Promise<unknown[]> =>
      (await filesOf(planStarter(name, change)))
        .filter(({ path }) => path.endsWith('.dxf'))
        .map(({ path, content }) => {
          const { polylines, circles, lines, count } = readDxf(textOf(content));
          return { path, polylines, circles, lines, count };
        });
    const inMm = (text: string): string =>
      text
        .replace('units: in', 'units: mm')
        .replace('thickness: 1/32', 'thickness: 1/32 in')
        .replace('radius: 1-1/2', 'radius: 1-1/2 in')
        .replace('mdf-3/4', 'mdf-18');
    expect(await drawn('plain-curve-inch', inMm)).toEqual(await drawn('plain-curve'));
  });
});
