import { parseSync, type INode } from 'svgson';
import { describe, expect, it } from 'vitest';
import { makeFiles } from '../src/files';
import { font } from './helpers/font';
import { readDxf } from './helpers/read-dxf';
import { planStarter, starters, tables } from './helpers/starters';

const textOf = (content: string | Uint8Array): string => (typeof content === 'string' ? content : new TextDecoder().decode(content));

describe.each(starters)('files of %s', async (name) => {
  const planned = planStarter(name);
  const { plan } = planned;
  const files = await makeFiles(planned, tables, font);
  const file = (path: string): string => {
    const found = files.find((candidate) => candidate.path === path);
    if (!found) throw new Error(`no file ${path}`);
    return textOf(found.content);
  };

  it('has no error finding and keeps the same bytes', async () => {
    expect(plan.findings.filter(({ level }) => level === 'error')).toEqual([]);
    expect(await makeFiles(planStarter(name), tables, font)).toEqual(files);
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
      ...(plan.spine?.clampHoles ?? []).map(({ at, diameter }) => ({ layer: 'hole', x: at, y: 0, radius: diameter / 2 })),
      ...(plan.spine?.screwHoles ?? []).flatMap(({ at, offset, diameter, countersink }) => [
        { layer: 'hole', x: at, y: offset, radius: diameter / 2 },
        { layer: 'countersink', x: at, y: offset, radius: countersink / 2 },
      ]),
    ];
    expect(read.circles).toHaveLength(wanted.length);
    for (const hole of wanted) {
      const near = read.circles.filter((circle) => circle.layer === hole.layer && Math.hypot(circle.x - hole.x, circle.y - hole.y) < 1e-4 && Math.abs(circle.radius - hole.radius) < 1e-4);
      expect(near, JSON.stringify(hole)).toHaveLength(1);
    }
    const [outline] = read.polylines;
    expect(outline?.vertices.map(({ x, y }) => Math.abs(y) - (x < 1 ? (plan.spine?.widthFrom ?? NaN) : (plan.spine?.widthTo ?? NaN)) / 2).every((gap) => Math.abs(gap) < 1e-4)).toBe(true);
  });

  it('boards hold every part once and nothing more', () => {
    const parts = files.filter(({ path }) => path.startsWith('parts/') && path.endsWith('.dxf')).map(({ content }) => readDxf(textOf(content)));
    const boards = files.filter(({ path }) => path.startsWith('boards/') && path.endsWith('.dxf')).map(({ content }) => readDxf(textOf(content)));
    const total = (list: readonly { count: number }[]): number => list.reduce((sum, { count }) => sum + count, 0);
    expect(total(boards)).toBe(total(parts));
    const radii = (list: typeof parts): number[] => list.flatMap(({ circles }) => circles.map(({ radius }) => radius)).sort((a, b) => a - b);
    expect(radii(boards)).toEqual(radii(parts));
  });

  it('SVG says the same size as the DXF, in mm', () => {
    const pairs = files.filter(({ path }) => path.endsWith('.svg') && path.startsWith('parts/'));
    expect(pairs.length).toBeGreaterThan(2);
    for (const { path, content } of pairs) {
      const svg: INode = parseSync(textOf(content));
      const [, , width, height] = (svg.attributes['viewBox'] ?? '').split(' ').map(Number);
      expect(svg.attributes['width']).toBe(`${width}mm`);
      expect(svg.attributes['height']).toBe(`${height}mm`);
      const extent = /\$EXTMIN\r\n10\r\n(.*)\r\n20\r\n(.*)\r\n30[^$]*\$EXTMAX\r\n10\r\n(.*)\r\n20\r\n(.*)\r\n/u.exec(file(path.replace(/svg$/u, 'dxf')))?.slice(1).map(Number) ?? [];
      expect(width).toBeCloseTo((extent[2] ?? NaN) - (extent[0] ?? NaN) + 10, 4);
      expect(height).toBeCloseTo((extent[3] ?? NaN) - (extent[1] ?? NaN) + 10, 4);
    }
  });
});

describe('the same part in mm and in inches', () => {
  it('gives the same geometry, label texts apart', async () => {
    const drawn = async (name: string): Promise<unknown[]> =>
      (await makeFiles(planStarter(name), tables, font))
        .filter(({ path }) => path.endsWith('.dxf'))
        .map(({ path, content }) => {
          const { polylines, circles, lines, count } = readDxf(textOf(content));
          return { path, polylines, circles, lines, count };
        });
    expect(await drawn('plain-curve-inch')).toEqual(await drawn('plain-curve'));
  });
});
