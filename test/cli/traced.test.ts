import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../helpers/fresh-folder';
import { bendbuck } from '../helpers/program';

const JOB = readFileSync('templates/panels/traced-deflector.yaml', 'utf8');
const DRAWING = readFileSync('templates/panels/traced-deflector.svg', 'utf8');
const NAME = 'traced-deflector.svg';

interface Given {
  readonly job?: (text: string) => string;
  readonly drawing?: string;
  readonly name?: string;
}

/** A folder with the starter job and its drawing in it, changed as told. */
function folderWith({ job = (text) => text, drawing = DRAWING, name = NAME }: Given = {}): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'job.yaml'), job(JOB));
  writeFileSync(join(folder, name), drawing);
  return folder;
}

/** What `make` says of it: refused, with nothing written. */
async function refused(folder: string): Promise<string> {
  const before = readdirSync(folder);
  const { code, out, err } = await bendbuck(folder, ['make', 'job.yaml', '--out', 'made']);
  expect(code).toBe(2);
  expect(readdirSync(folder)).toEqual(before);
  expect(existsSync(join(folder, 'made'))).toBe(false);
  expect(err).toContain('Nothing was written.');
  return out + err;
}

const svg = (inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="260mm" height="200mm" viewBox="0 0 260 200">${inside}</svg>`;
const dxf = (entities: string): string =>
  `0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${entities}0\nENDSEC\n0\nEOF\n`;
const asDxf = (text: string): string => text.replace(NAME, 'wing.dxf');

describe('a traced outline in a job', () => {
  it('is made from its drawing: the starter, copied with its drawing and planned', async () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'boat'));
    expect((await bendbuck(folder, ['new', 'traced-deflector', 'boat/mine.yaml'])).code).toBe(0);
    expect(readdirSync(join(folder, 'boat')).sort()).toEqual(['mine.yaml', NAME]);
    const { code, out } = await bendbuck(folder, ['plan', 'boat/mine.yaml']);
    expect(code).toBe(0);
    expect(out).toContain('scaled 2.0000 times');
    expect(out).toContain('Residual: 0.00 %');
  });

  it('the drawing is never written over by a starter', async () => {
    const folder = freshFolder();
    writeFileSync(join(folder, NAME), 'precious');
    expect((await bendbuck(folder, ['new', 'traced-deflector'])).code).toBe(3);
    expect(readFileSync(join(folder, NAME), 'utf8')).toBe('precious');
    expect(readdirSync(folder)).toEqual([NAME]);
  });

  it('lies beside the job from standard input, or in a folder below', async () => {
    const folder = folderWith();
    expect((await bendbuck(folder, ['check', '-'], JOB)).code).toBe(0);
    mkdirSync(join(folder, 'drawings'));
    writeFileSync(join(folder, 'drawings', 'wing.svg'), DRAWING);
    expect((await bendbuck(folder, ['check', '-'], JOB.replace(NAME, 'drawings/wing.svg'))).code).toBe(0);
  });

  it('of corners needs no drawing', async () => {
    const folder = folderWith({
      job: (text) => text.replace(`file: ${NAME}`, 'corners: [[20, 20], [230, 20], [230, 120], [20, 120]]'),
    });
    expect((await bendbuck(folder, ['check', 'job.yaml'])).code).toBe(0);
  });

  it('traced at half size, and stretched a little one way, comes back within 0.05 % by two lengths', async () => {
    // The same drawing on a page 4 % too high, as a copying machine makes it; corners then at 108 % of their height.
    const stretched = DRAWING.replace('height="200mm"', 'height="208mm" preserveAspectRatio="none"');
    const folder = folderWith({
      drawing: stretched,
      job: (text) =>
        text
          .replace('mockup: sharp', 'mockup: metal-allowed')
          .replaceAll(/(\[\d+), (\d+)\]/gu, (_, x: string, y: string) => `${x}, ${(1.04 * Number(y)).toFixed(2)}]`),
    });
    const { code, out } = await bendbuck(folder, ['plan', 'job.yaml', '--json']);
    expect(code).toBe(0);
    const { panel } = JSON.parse(out) as {
      panel: { outline: [number, number][]; traced: { scale: { x: number; y: number }; residual: number | null } };
    };
    const [xs, ys] = [panel.outline.map(([x]) => x), panel.outline.map(([, y]) => y)];
    const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
    // As drawn by hand: 210 × 144 at half size; the area by summing the drawn curve's own points.
    expect(Math.abs(extent(xs) / 420 - 1)).toBeLessThan(5e-4);
    expect(Math.abs(extent(ys) / 288 - 1)).toBeLessThan(5e-4);
    expect(Math.abs(areaOf(panel.outline) / (4 * areaOf(drawn())) - 1)).toBeLessThan(5e-4);
    expect(panel.traced.residual).toBeNull();
    const table = (await bendbuck(folder, ['plan', 'job.yaml'])).out;
    expect(table).toContain('scaled 2.0000 times along x, 1.9231 along y');
    expect(table).toMatch(/Residual: 0\.00 %, two lengths are met exactly \(the two ways differ by 4\.00 %\)/u);
  });

  it('a third length leaves a residual, which is printed', async () => {
    // 420 by 136 has a diagonal of √(420² + 136²) = 441.47; given as 443 the least squares leave about a tenth of a per cent each.
    const folder = folderWith({
      job: (text) => text.replace('  edges:', '    - { between: [[20, 20], [230, 88]], is: 443 }\n  edges:'),
    });
    const { code, out } = await bendbuck(folder, ['plan', 'job.yaml']);
    expect(code).toBe(0);
    expect(out).toMatch(/Residual: 0\.[12]\d % at the worst reference/u);
    expect(out).toContain('Reference 3: 443.0 mm, comes out 442');
  });
});

/** The path of the starter's drawing, y up, by many points of its two curves. */
function drawn(): [number, number][] {
  const curve = (...p: (readonly [number, number])[]): [number, number][] =>
    Array.from({ length: 2000 }, (_, step) => {
      const t = step / 2000;
      const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
      return [0, 1].map((axis) => weights.reduce((sum, w, i) => sum + w * (p[i]?.[axis] ?? NaN), 0)) as [
        number,
        number,
      ];
    });
  return [
    [20, 180],
    [230, 180],
    ...curve([230, 112], [230, 66], [178, 36], [122, 36]),
    ...curve([122, 36], [70, 36], [20, 66], [20, 112]),
    [20, 112],
  ];
}

function areaOf(points: readonly (readonly [number, number])[]): number {
  const sum = points.reduce((total, [x, y], index) => {
    const [u, v] = points[(index + 1) % points.length] ?? [NaN, NaN];
    return total + x * v - u * y;
  }, 0);
  return Math.abs(sum) / 2;
}

describe('bad input is refused, the place named, nothing written', () => {
  it.each<[string, string, string[]]>([
    [
      'an outline that crosses itself',
      svg('<path d="M20 180L230 40V180L20 40Z"/>'),
      ['outline.file', '(125 mm, 90 mm)', 'outline-crossing'],
    ],
    ['an open chain', svg('<path d="M20 180H230V40H20"/>'), ['(20 mm, 20 mm)', '(20 mm, 160 mm)', 'outline-open']],
    [
      'a line drawn twice',
      svg('<path d="M20 180H230V40H20Z"/><path d="M20 180H230"/>'),
      ['(125 mm, 20 mm)', 'outline-double'],
    ],
    ['a script', svg('<script>alert(1)</script><path d="M20 180H230V40H20Z"/>'), ['line 1', 'script', 'svg-script']],
    [
      'a script that waits for a click',
      svg('<path onclick="go()" d="M20 180H230V40H20Z"/>'),
      ['onclick', 'svg-script'],
    ],
    ['an external reference', svg('<use href="https://example.org/a.svg#b"/>'), ['line 1', 'svg-external']],
    ['an external picture', svg('<image href="file:///etc/hostname"/>'), ['line 1', 'svg-external']],
    [
      'entities',
      `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>${svg('<text>&b;</text>')}`,
      ['line 1', 'svg-entities'],
    ],
    ['broken XML', DRAWING.slice(0, 400), ['svg-broken']],
    ['nothing', '', ['svg-broken']],
    ['zeros', '\0'.repeat(500), ['svg-broken']],
  ])('SVG with %s', async (_, drawing, words) => {
    const said = await refused(folderWith({ drawing }));
    expect(said).toContain('line 11, outline.file');
    for (const word of words) expect(said).toContain(word);
  });

  it.each<[string, string, string]>([
    ['garbage', 'wing\nof\nnothing\n', 'dxf-broken'],
    ['bytes of a picture', '\u0089PNG\r\n\u001a\n\0\0\0\rIHDR', 'dxf-broken'],
    ['a binary file’s beginning', 'AutoCAD Binary DXF\r\n\u001a\0', 'dxf-broken'],
    ['an end before its end', dxf('0\nLINE\n8\n0\n10\n0\n').slice(0, 90), 'dxf-broken'],
    ['a spline that does not close', dxf(spline(false)), 'outline-open'],
    ['a spline with fewer knots than it needs', dxf(spline(false).replace('74\n0\n40\n0\n', '')), 'dxf-broken'],
  ])('DXF with %s', async (_, drawing, code) => {
    const said = await refused(folderWith({ drawing, name: 'wing.dxf', job: asDxf }));
    expect(said).toContain('outline.file');
    expect(said).toContain(code);
  });

  it('an SVG of 50 MB, unread', async () => {
    const folder = folderWith();
    truncateSync(join(folder, NAME), 50_000_000);
    expect(await refused(folder)).toContain('the SVG file is 50 MB');
  });

  it.each<[string, (text: string) => string, string[]]>([
    [
      'zones that overlap',
      withBend('{ name: lug, line: [[60, 30], [60, 40]], free: left, angle: 90, radius: 10 }'),
      ['bends[0].line', 'spray runs into that of lug', 'zones-overlap'],
    ],
    [
      'zones side by side too near',
      withBend('{ name: lip, line: [[20, 78], [230, 78]], free: left, angle: 30, radius: 20 }'),
      ['bends[1]'],
    ],
    [
      'a bend line off the outline',
      (text) => text.replace('[[20, 70], [230, 70]]', '[[20, 190], [230, 190]]'),
      ['bends[0].line', 'bend-off-outline'],
    ],
    [
      'a bend line that is a place',
      (text) => text.replace('[[20, 70], [230, 70]]', '[[20, 70], [20, 70]]'),
      ['bends[0].line', 'bend-line-short'],
    ],
    [
      'a bend line along the edge',
      (text) => text.replace('[[20, 70], [230, 70]]', '[[20, 20], [230, 20]]'),
      ['bends[0]', 'no flat metal before it'],
    ],
    [
      'references that contradict one another',
      (text) => text.replace('  edges:', '    - { between: [[20, 20], [230, 88]], is: 460 }\n  edges:'),
      ['line 13, outline.scale', 'reference 3', 'references-contradict'],
    ],
    [
      'references that mirror one another',
      (text) =>
        text
          .replace(/\[\[20, 20\], \[230, 20\]\], is: 420/u, '[[20, 88], [230, 20]], is: 441.5')
          .replace('[[230, 20], [230, 88]], is: 136', '[[20, 20], [230, 88]], is: 441.5'),
      ['outline.scale', 'references-weak'],
    ],
    [
      'a reference between one place',
      (text) => text.replace('[[20, 20], [230, 20]], is', '[[20, 20], [20, 20]], is'),
      ['outline.scale', 'reference 1', 'reference-length'],
    ],
    [
      'a drawing and corners',
      (text) => text.replace('mockup:', 'corners: [[0, 0], [9, 0], [9, 9]]\n  mockup:'),
      ['outline', 'file-or-corners'],
    ],
    ['neither', (text) => text.replace(/ {2}file: .*\n/u, ''), ['outline', 'file-or-corners']],
    ['no word of what it was traced from', (text) => text.replace(/ {2}mockup: .*\n/u, ''), ['outline.mockup']],
    [
      'a hole where it curves',
      (text) => text.replace('[[20, 70], [230, 70]]', '[[20, 38], [230, 38]]'),
      ['hole-in-bend'],
    ],
    [
      'corners that cross',
      (text) => text.replace(`file: ${NAME}`, 'corners: [[20, 20], [230, 120], [230, 20], [20, 120]]'),
      ['outline.corners', '(125 mm, 70 mm)', 'outline-crossing'],
    ],
    ['a misspelt key', (text) => text.replace('free: left', 'fre: left'), ['bends[0].fre', 'free']],
  ])('%s', async (_, job, words) => {
    const said = await refused(folderWith({ job }));
    for (const word of words) expect(said).toContain(word);
  });

  it.each([
    ['a path to the folder above', '../wing.svg', 'drawing-outside'],
    ['a path from the root', '/etc/wing.svg', 'drawing-outside'],
    ['a path that goes out and in', 'a/../../wing.svg', 'drawing-outside'],
    ['a path of another system', 'C:\\wing.svg', 'drawing-outside'],
    ['a file of another kind', 'job.yaml', 'drawing-kind'],
    ['a file that is not there', 'wing.svg', 'drawing-unread'],
  ])('%s', async (_, file, code) => {
    const said = await refused(folderWith({ job: (text) => text.replace(NAME, `"${file.replaceAll('\\', '\\\\')}"`) }));
    expect(said).toContain('line 11, outline.file');
    expect(said).toContain(code);
  });

  it('a link that leads out of the folder, a folder for a file', async () => {
    const outside = freshFolder();
    writeFileSync(join(outside, 'wing.svg'), DRAWING);
    const folder = folderWith({ job: (text) => text.replace(NAME, 'wing.svg') });
    symlinkSync(join(outside, 'wing.svg'), join(folder, 'wing.svg'));
    expect(await refused(folder)).toContain('drawing-outside');
    const other = folderWith({ job: (text) => text.replace(NAME, 'wing.svg') });
    mkdirSync(join(other, 'wing.svg'));
    expect(await refused(other)).toContain('this is a folder');
  });

  it('a panel that cannot be bent in any order', async () => {
    const folder = freshFolder();
    const tray = readFileSync('templates/panels/tray.yaml', 'utf8');
    // Four high legs round a small base: whichever is last, the others stand in the way of its form.
    const deep = tray
      .replace('[[0, 0], [420, 0], [420, 260], [0, 260]]', '[[0, 0], [160, 0], [160, 150], [0, 150]]')
      .replaceAll('leg: 60', 'leg: 130')
      .replace('bends:\n', 'bends:\n  - { on: front, angle: 90, radius: 30, leg: 130 }\n');
    writeFileSync(join(folder, 'job.yaml'), deep);
    const said = await refused(folder);
    expect(said).toMatch(/no-order|clamps-too-short/u);
    expect(said).toContain('bends[');
  });
});

function withBend(entry: string): (text: string) => string {
  return (text) => text.replace('\nboard', `  - ${entry}\n\nboard`);
}

/** A quadratic B-spline through its four control points' hull, open or closed. */
function spline(closed: boolean): string {
  const points = [[0, 0], [100, 0], [100, 80], closed ? [0, 0] : [0, 80]];
  const knots = [0, 0, 0, 1, 2, 2, 2];
  return `0\nSPLINE\n8\n0\n70\n8\n71\n2\n72\n7\n73\n4\n74\n0\n${knots.map((knot) => `40\n${knot}\n`).join('')}${points.map(([x, y]) => `10\n${x}\n20\n${y}\n`).join('')}`;
}
