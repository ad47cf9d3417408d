import { near } from '../../helpers/near';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../helpers/in-words';
import { loopArea } from '../../../src/base/area';
import { boundsOf } from '../../../src/base/bounds';
import type { Vertex } from '../../../src/base/drawing';
import { loopLength } from '../../../src/base/way';
import { asCircle, outlineArea } from '../../../src/panel/trace/outline';
import { readOutline, type OutlineOptions, type TracedOutline } from '../../../src/panel/trace/read-outline';

const options: OutlineOptions = { path: 'outline.file', format: 'svg' };

function read(text: string, more: Partial<OutlineOptions> = {}): TracedOutline {
  const { value, findings } = readOutline(text, { ...options, ...more });
  if (!value)
    throw new Error(
      inWords(findings)
        .map(({ code, message }) => `${code}: ${message}`)
        .join('\n'),
    );
  return value;
}

function errorsOf(text: string): string[] {
  const { value, findings } = readOutline(text, options);
  const errors = findings.filter(({ level }) => level === 'error');
  expect(value === null).toBe(errors.length > 0);
  return inWords(errors).map(({ code, message }) => `${code}: ${message}`);
}

const page = (inside: string, attributes = 'width="400mm" height="300mm" viewBox="0 0 400 300"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inside}</svg>`;

const box = (vertices: readonly Vertex[]) => boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] });
const size = ({ outline }: TracedOutline): [number, number] => {
  const { minX, minY, maxX, maxY } = box(outline.vertices);
  return [maxX - minX, maxY - minY];
};

describe('shapes of SVG', () => {
  it('a rectangle lies where its page has it, y up from the lower edge', () => {
    const { outline } = read(page('<rect x="10" y="20" width="100" height="50"/>'));
    expect(box(outline.vertices)).toEqual({ minX: 10, minY: 230, maxX: 110, maxY: 280 });
    expect(outlineArea(outline)).toBeCloseTo(5000, 9);
  });

  it('round corners are arcs: area w·h − (4 − π)·r², edge 2(w + h) − (8 − 2π)·r', () => {
    const { outline } = read(page('<rect x="10" y="20" width="100" height="50" rx="8"/>'));
    expect(outline.vertices).toHaveLength(8);
    expect(outlineArea(outline)).toBeCloseTo(5000 - (4 - Math.PI) * 64, 8);
    expect(loopLength(outline.vertices)).toBeCloseTo(300 - (8 - 2 * Math.PI) * 8, 8);
  });

  it('radii of a rectangle are no more than half its sides, one not given is as the other (SVG 1.1, 9.2)', () => {
    const { outline } = read(page('<rect x="10" y="20" width="100" height="50" ry="40"/>'));
    // rx 40, ry 25: quarter ellipses.
    expect(Math.abs(outlineArea(outline) - (5000 - (4 - Math.PI) * 40 * 25))).toBeLessThan(0.05 * 300);
    const [width, height] = size({ ...read(page('<rect x="10" y="20" width="100" height="50" ry="40"/>')) });
    expect(Math.max(Math.abs(width - 100), Math.abs(height - 50))).toBeLessThan(2 * 0.05);
  });

  it('an ellipse becomes arcs within 0.05 mm: every corner and middle satisfies its equation to that', () => {
    const { outline } = read(page('<ellipse cx="200" cy="150" rx="120" ry="70"/>'));
    expect(outline.vertices.length).toBeLessThan(24);
    expect(strayFromEllipse(outline.vertices, 120, 70)).toBeLessThan(0.05);
  });

  it('circles are exact, as holes too', () => {
    const { outline } = read(page('<circle cx="200" cy="150" r="100"/><circle cx="230" cy="150" r="6.5"/>'));
    expect(outlineArea(outline)).toBeCloseTo(Math.PI * (100 ** 2 - 6.5 ** 2), 8);
    expect(asCircle(outline.holes[0] ?? [])).toMatchObject({
      x: near(230, 9),
      y: near(150, 9),
      radius: near(6.5, 9),
    });
    expect(loopArea(outline.holes[0] ?? [])).toBeLessThan(0);
  });

  it('path commands, absolute and relative, give the same outline as plain corners', () => {
    const plain = read(page('<polygon points="10,10 110,10 110,60 60,90 10,60"/>')).outline;
    for (const d of [
      'M10 10H110V60L60 90 10 60Z',
      'm10,10h100v50l-50,30-50-30z',
      'M10 10 110 10 110 60 60 90 10 60 10 10',
    ]) {
      const { outline } = read(page(`<path d="${d}"/>`));
      expect(outline.vertices).toEqual(plain.vertices.map(({ x, y }) => ({ x: near(x, 9), y: near(y, 9), bulge: 0 })));
    }
  });

  it('arcs of paths keep their radius: the four flags’ arcs over one chord', () => {
    // Chord 60 under radius 50: segments of half angle asin(0.6); small one r²(θ − sin θ)/2.
    const theta = 2 * Math.asin(0.6);
    const small = (2500 * (theta - Math.sin(theta))) / 2;
    for (const [large, sweep] of [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ] as const) {
      const { outline } = read(page(`<path d="M100 100A50 50 0 ${large} ${sweep} 160 100Z"/>`));
      expect(outlineArea(outline)).toBeCloseTo(large === 1 ? Math.PI * 2500 - small : small, 7);
      const { minY, maxY } = box(outline.vertices);
      // Sweep 1 turns clockwise on the page: the arc from left to right lies above its chord.
      expect([maxY > 200.1, minY < 199.9]).toEqual([sweep === 1, sweep === 0]);
    }
  });

  it('a radius too small for its chord is enlarged to half of it (SVG 1.1, F.6.6)', () => {
    expect(outlineArea(read(page('<path d="M100 100A10 10 0 0 1 160 100Z"/>')).outline)).toBeCloseTo(
      (Math.PI * 900) / 2,
      7,
    );
  });

  it('Bézier curves stay within 0.05 mm: cubic, smooth cubic, quadratic, smooth quadratic', () => {
    // The usual four-piece circle strays from a circle by 2.7e-4·r (0.027 mm here); each piece becomes few arcs.
    const k = 0.5522847498 * 100;
    const circle = `M300 150C300 ${150 + k} ${200 + k} 250 200 250S100 ${150 + k} 100 150 ${200 - k} 50 200 50 300 ${150 - k} 300 150Z`;
    const { outline } = read(page(`<path d="${circle}"/>`));
    const far = outline.vertices.map(({ x, y }) => Math.abs(Math.hypot(x - 200, y - 150) - 100));
    expect(Math.max(...far)).toBeLessThan(0.03);
    expect(Math.abs(outlineArea(outline) - Math.PI * 1e4)).toBeLessThan(2 * Math.PI * 100 * 0.05);
    expect(outline.vertices.length).toBeLessThanOrEqual(8);
    // Under a quadratic curve lies two thirds of chord times height: a parabola of height 40 on 100, then its mirror image.
    const wave = read(page('<path d="M100 150Q150 70 200 150T300 150V250H100Z"/>')).outline;
    expect(Math.abs(outlineArea(wave) - 20000)).toBeLessThan(250 * 0.05);
    const hill = read(page('<path d="M100 150Q150 70 200 150Z"/>')).outline;
    expect(Math.abs(outlineArea(hill) - (2 / 3) * 100 * 40)).toBeLessThan(130 * 0.05);
  });

  it('lines, polylines and paths that meet become one loop', () => {
    const { outline } = read(
      page('<line x1="10" y1="10" x2="110" y2="10"/><polyline points="10,10 10,60 110,60.05"/><path d="M110 10V60"/>'),
    );
    expect(outline.vertices).toHaveLength(4);
    expect(Math.abs(outlineArea(outline) - 5000)).toBeLessThan(6);
  });
});

/** How far corners and middles of a loop lie from an ellipse about (200, 150), along its gradient. */
function strayFromEllipse(vertices: readonly Vertex[], a: number, b: number): number {
  const away = (x: number, y: number): number => {
    const [u, v] = [(x - 200) / a, (y - 150) / b];
    return Math.abs((Math.hypot(u, v) ** 2 - 1) / (2 * Math.hypot(u / a, v / b)));
  };
  return Math.max(
    ...vertices.flatMap((from, index) => {
      const to = vertices[(index + 1) % vertices.length] ?? from;
      return Array.from({ length: 40 }, (_, step) => away(...along(from, to, step / 40)));
    }),
  );
}

/** A point of an arc by its chord and sagitta: the circle through both ends, b·c/2 high in the middle. */
function along(from: Vertex, to: Vertex, share: number): [number, number] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const angle = 4 * Math.atan(from.bulge);
  if (angle === 0) return [from.x + share * dx, from.y + share * dy];
  const cot = 1 / Math.tan(angle / 2);
  const [cx, cy] = [(from.x + to.x - dy * cot) / 2, (from.y + to.y + dx * cot) / 2];
  const [cosine, sine] = [Math.cos(share * angle), Math.sin(share * angle)];
  return [cx + (from.x - cx) * cosine - (from.y - cy) * sine, cy + (from.x - cx) * sine + (from.y - cy) * cosine];
}

describe('units, pages and transforms', () => {
  const square = '<rect x="10" y="10" width="100" height="100"/>';

  it.each([
    ['mm page, one unit one mm', 'width="400mm" height="300mm" viewBox="0 0 400 300"', 100],
    ['inch page', 'width="4in" height="3in" viewBox="0 0 400 300"', 25.4],
    ['cm page without viewBox: 96 px to the inch', 'width="40cm" height="30cm"', (100 * 25.4) / 96],
    ['points', 'width="400pt" height="300pt" viewBox="0 0 400 300"', (100 * 25.4) / 72],
    [
      'page larger than its viewBox on one side: the smaller scale, evenly',
      'width="400mm" height="600mm" viewBox="0 0 400 300"',
      100,
    ],
    [
      'slice: the larger',
      'width="400mm" height="600mm" viewBox="0 0 400 300" preserveAspectRatio="xMidYMid slice"',
      200,
    ],
    ['px: 96 to the inch', 'width="400" height="300"', (100 * 25.4) / 96],
    ['no size at all', '', (100 * 25.4) / 96],
    ['only a viewBox', 'viewBox="0 0 400 300"', (100 * 25.4) / 96],
    [
      'Inkscape 0.91: 90 to the inch',
      'width="400" height="300" xmlns:inkscape="i" inkscape:version="0.91 r13725"',
      (100 * 25.4) / 90,
    ],
    [
      'Inkscape 1.2: 96 to the inch',
      'width="400" height="300" xmlns:inkscape="i" inkscape:version="1.2.2"',
      (100 * 25.4) / 96,
    ],
  ])('%s', (_, attributes, side) => {
    expect(size(read(page(square, attributes)))).toEqual([near(side, 8), near(side, 8)]);
  });

  it('an uneven page stretches both ways as told', () => {
    const made = read(page(square, 'width="400mm" height="600mm" viewBox="0 0 400 300" preserveAspectRatio="none"'));
    expect(size(made)).toEqual([near(100, 8), near(200, 8)]);
  });

  it('the dots of an inch can be said', () => {
    expect(size(read(page(square, ''), { dpi: 72 }))[0]).toBeCloseTo((100 * 25.4) / 72, 8);
  });

  it('says when a file does not state its size', () => {
    const { findings } = readOutline(page(square, ''), options);
    expect(findings).toEqual([expect.objectContaining({ code: 'svg-size-assumed', level: 'warning' })]);
  });

  it('lengths in attributes take their unit', () => {
    expect(
      size(read(page('<rect x="1cm" y="10mm" width="1in" height="25%"/>', 'width="400mm" height="300mm"'))),
    ).toEqual([near(25.4, 8), near(75, 8)]);
  });

  it('transforms nest, the inner one first: turned by 90° and doubled, w and h change places', () => {
    const made = read(
      page(
        '<g transform="translate(200 20) scale(2)"><g transform="rotate(90)"><rect width="40" height="30"/></g></g>',
      ),
    );
    expect(box(made.outline.vertices)).toEqual({
      minX: near(140, 8),
      maxX: near(200, 8),
      minY: near(200, 8),
      maxY: near(280, 8),
    });
  });

  it.each([
    ['matrix(2 0 0 3 5 7)', 6],
    ['scale(2,3)', 6],
    ['scale(-1 1)', 1],
    ['rotate(37) skewX(20) skewY(0) translate(4)', 1],
    ['rotate(-30, 50, 50)scale(.5)', 0.25],
    ['translate(1e1-5)', 1],
  ])('area grows by the determinant: %s', (transform, factor) => {
    const inside = '<path d="M120 60A40 40 0 0 1 200 60L200 120H120Z"/>';
    const plain = outlineArea(read(page(inside)).outline);
    const moved = read(page(`<g transform="${transform}">${inside}</g>`)).outline;
    const slack = loopLength(moved.vertices) * 0.05;
    expect(Math.abs(outlineArea(moved) - plain * factor)).toBeLessThan(slack);
    expect(loopArea(moved.vertices)).toBeGreaterThan(0);
  });

  it('nested pages have a viewBox of their own', () => {
    const inner =
      '<svg x="100" y="100" width="200" height="100" viewBox="0 0 10 10"><rect width="10" height="10"/></svg>';
    // 10 units fit into 100, in the middle of 200: from x 150 to 250.
    expect(box(read(page(inner)).outline.vertices)).toEqual({ minX: 150, maxX: 250, minY: 100, maxY: 200 });
  });

  it('copies are drawn where they are put', () => {
    const defs =
      '<defs><rect id="r" width="100" height="50"/><symbol id="s" viewBox="0 0 2 1"><circle cx="1" cy=".5" r=".2"/></symbol></defs>';
    const { outline } = read(
      page(`${defs}<use xlink:href="#r" x="20" y="30"/><use href="#s" x="20" y="30" width="100" height="50"/>`),
    );
    expect(box(outline.vertices)).toEqual({ minX: 20, maxX: 120, minY: 220, maxY: 270 });
    expect(asCircle(outline.holes[0] ?? [])).toMatchObject({
      x: near(70, 8),
      y: near(245, 8),
      radius: near(10, 8),
    });
  });

  it('what is hidden, text and pictures are left out and said so; other layers by name', () => {
    const inside =
      '<g id="edge"><rect width="100" height="50"/></g><g id="mark"><path d="M0 0L9 9"/></g><text>a</text>' +
      '<image href="data:image/png;base64,AAAA"/><path style="display:none" d="M0 0L1 1"/><g id="other"><circle cx="50" cy="25" r="5"/></g>';
    const { value, findings } = readOutline(page(inside), options);
    expect(value?.outline.holes).toHaveLength(1);
    expect(inWords(findings).map(({ message }) => message)).toEqual(
      ['layer mark', 'text', 'a picture', 'what is hidden'].map((what) => expect.stringContaining(what) as unknown),
    );
    expect(read(page(inside), { layers: ['edge'] }).outline.holes).toHaveLength(0);
  });
});

describe('SVG that is refused, with the place', () => {
  const good = '<rect width="100" height="50"/>';

  it.each([
    ['a script', page(`${good}<script>alert(1)</script>`), 'svg-script', 'line 1'],
    ['a handler', page(`\n<rect width="9" height="9" onclick="x()"/>`), 'svg-script', 'line 2: onclick'],
    ['HTML inside', page(`${good}<foreignObject/>`), 'svg-script', 'foreignObject'],
    ['another file’s picture', page(`${good}<image xlink:href="photo.png"/>`), 'svg-external', 'photo.png'],
    ['a picture that is a drawing', page(`${good}<image href="data:image/svg+xml,x"/>`), 'svg-external', 'image'],
    ['another file’s shape', page(`${good}<use href="other.svg#a"/>`), 'svg-external', 'other.svg#a'],
    ['a script as an address', page(`<a href="javascript:x()">${good}</a>`), 'svg-external', 'javascript:x()'],
    ['a style that fetches', page(`<style>@import "x.css";</style>${good}`), 'svg-external', 'style'],
    ['a font that is fetched', page(`<style>a{src:url(http://x)}</style>${good}`), 'svg-external', 'style'],
    [
      'a fill that is fetched',
      page('<rect width="9" height="9" style="fill:url(//x#a)"/>'),
      'svg-external',
      'style of rect',
    ],
    ['a style sheet', `<?xml-stylesheet href="x.css"?>${page(good)}`, 'svg-external', 'line 1'],
    ['entities', `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${page(good)}`, 'svg-entities', 'line 1'],
    [
      'a document type of elsewhere',
      `<!DOCTYPE svg SYSTEM "file:///etc/passwd">${page(good)}`,
      'svg-entities',
      'line 1',
    ],
    ['an entity not declared', page('&evil;'), 'svg-broken', '1:'],
    ['broken XML', '<svg>\n<g>\n</svg>', 'svg-broken', '3:'],
    ['text that is no XML', 'hello', 'svg-broken', '1:'],
    ['nothing', '', 'svg-broken', 'document must contain a root'],
    ['another document', '<html></html>', 'svg-broken', 'html'],
    ['a bad path', page('\n<path id="rim" d="M0 0 L10 10 Lx"/>'), 'svg-broken', 'path “rim” (line 2)'],
    ['a path that begins nowhere', page('<path d="L10 10"/>'), 'svg-broken', 'path (line 1)'],
    ['a number too large', page('<path d="M0 0L1e999 0L1 1Z"/>'), 'drawing-too-far', 'path (line 1)'],
    ['a length that is none', page('<rect width="9em" height="9"/>'), 'svg-broken', 'width is no length: 9em'],
    ['points that are none', page('<polygon points="1,2 3"/>'), 'svg-broken', 'points'],
    [
      'a transform that is none',
      page('<rect width="9" height="9" transform="rotate(1 2)"/>'),
      'svg-broken',
      'rect (line 1)',
    ],
    ['a copy of itself', page('<g id="a"><use href="#a"/></g>'), 'svg-use', 'use (line 1)'],
    ['a copy of nothing', page('<use href="#a"/>'), 'svg-use', 'use (line 1)'],
    ['a bad viewBox', page(good, 'viewBox="0 0 x 1"'), 'svg-broken', 'viewBox'],
    ['a bad page', page(good, 'width="wide" height="1"'), 'svg-broken', 'page'],
  ])('%s', (_, text, code, place) => {
    const errors = errorsOf(text);
    expect(errors[0]).toContain(`${code}: `);
    expect(errors.join('\n')).toContain(place);
  });

  it('copies of copies of copies are put down', () => {
    const levels = Array.from({ length: 16 }, (_, level) => {
      const inside = level === 0 ? good : `<use href="#l${level - 1}"/>`.repeat(8);
      return `<g id="l${level}">${inside}</g>`;
    });
    expect(errorsOf(page(`<defs>${levels.join('')}</defs><use href="#l15"/>`))[0]).toContain('drawing-too-full');
  });

  it('50 MB is refused unread', () => {
    expect(errorsOf(`<svg>${' '.repeat(50_000_000)}`)).toEqual([
      expect.stringContaining('drawing-too-big: the SVG file is 50 MB'),
    ]);
  });

  it('accepts the document type older programs write', () => {
    const type = '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    expect(errorsOf(type + page(good))).toEqual([]);
  });
});
