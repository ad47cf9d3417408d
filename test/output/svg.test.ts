import fc from 'fast-check';
import { parseSync, type INode } from 'svgson';
import { describe, expect, it } from 'vitest';
import { arcBetween } from '../../src/base/arc';
import { loopArea } from '../../src/base/area';
import { boundsOf } from '../../src/base/bounds';
import { cutOrder, operations, type Drawing, type Loop, type Text, type Vertex } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { lineColours } from '../../src/base/colour';
import { writeSvg } from '../../src/output/svg';
import { pathArea, readPath, type PathSide } from '../helpers/svg-path';
import { cases } from '../helpers/cases';

const loop = (...vertices: (readonly [number, number, number])[]): Loop => ({
  kind: 'loop',
  operation: 'outline',
  vertices: vertices.map(([x, y, bulge]) => ({ x, y, bulge })),
});
const halfDisc = loop([-50, 0, 0], [50, 0, 1]);
const label = (text: string, rest: Partial<Text> = {}): Text => ({
  kind: 'text',
  operation: 'label',
  x: 1,
  y: 2,
  height: 7.2,
  angle: 0,
  anchor: 'start',
  text,
  ...rest,
});
const draw = (drawing: Drawing, title = 'T'): INode => parseSync(writeSvg(drawing, { title }));

const all = (node: INode, name: string): INode[] => [
  ...(node.name === name ? [node] : []),
  ...node.children.flatMap((child) => all(child, name)),
];
const first = (node: INode, name: string): INode => {
  const [found] = all(node, name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
/** svgson leaves entities as they stand in the file: decoded by the five rules of XML 1.0, section 4.6. */
const decode = (text: string): string =>
  text.replaceAll(
    /&(?:lt|gt|quot|#39|amp);/gu,
    (entity) => ({ '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&amp;': '&' })[entity] ?? entity,
  );
const textIn = (node: INode): string => decode(node.children.map(({ value }) => value).join(''));
const outlineOf = (vertices: readonly Vertex[]): { sides: readonly PathSide[]; closed: boolean } =>
  readPath(first(draw({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] }), 'path').attributes['d'] ?? '');

describe('an SVG’s size', () => {
  it('is in mm, one user unit a mm, with the border around (CSS: 1 in = 96 px = 25.4 mm holds for mm lengths)', () => {
    const svg = draw({ shapes: [halfDisc] });
    expect(svg.attributes).toMatchObject({ width: '110mm', height: '60mm', viewBox: '0 0 110 60' });
    expect(textIn(first(svg, 'desc'))).toBe('Drawn at 1:1; print or cut at 100 %.');
    expect(parseSync(writeSvg({ shapes: [halfDisc] }, { title: '', margin: 0 })).attributes).toMatchObject({
      width: '100mm',
      height: '50mm',
      viewBox: '0 0 100 50',
    });
  });

  it('has a bar of 100 mm or 4 in below everything that is cut, in a group of its own', () => {
    for (const [check, length, name] of [
      ['mm', 100, '100 mm'],
      ['in', 101.6, '4 in'],
    ] as const) {
      const small = {
        ...halfDisc,
        vertices: halfDisc.vertices.map(({ x, y, bulge }) => ({ x: x / 5, y: y / 5, bulge })),
      };
      const svg = parseSync(writeSvg({ shapes: [small] }, { title: '', check }));
      const group = svg.children.find(({ attributes }) => attributes['id'] === 'check');
      if (!group) throw new Error('no bar');
      const [, x1, y1, x2, y2] =
        /^M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/u.exec(first(group, 'path').attributes['d'] ?? '') ?? [];
      expect(Number(x2) - Number(x1)).toBeCloseTo(length, 5);
      expect(y1).toBe(y2);
      // The half disc is 20 by 10, with 5 round it.
      expect(Number(y1)).toBeGreaterThan(20);
      expect(textIn(first(group, 'text'))).toContain(name);
      expect(svg.attributes).toMatchObject({ width: `${length + 10}mm`, height: '28mm' });
    }
    expect(writeSvg({ shapes: [halfDisc] }, { title: '' })).not.toContain('check');
  });

  it('turns y over: what is up in the drawing is up on paper', () => {
    const svg = draw({
      shapes: [
        halfDisc,
        { kind: 'circle', operation: 'hole', x: 10, y: 40, radius: 2 },
        { kind: 'line', operation: 'mark', from: [0, 0], to: [0, 50] },
      ],
    });
    expect(first(svg, 'circle').attributes).toMatchObject({ cx: '65', cy: '15', r: '2' });
    expect(all(svg, 'path').map(({ attributes }) => attributes['d'])).toEqual([
      'M55 55L55 5',
      'M5 55L105 55A50 50 0 0 0 55 5A50 50 0 0 0 5 55Z',
    ]);
  });
});

describe('groups', () => {
  it('are one an operation used, named after it, in the order of cutting, each in its own colour', () => {
    const shapes = operations.map((operation) =>
      operation === 'label'
        ? label('x')
        : operation === 'mark'
          ? ({ kind: 'line', operation, from: [0, 0], to: [9, 9] } as const)
          : { ...halfDisc, operation },
    );
    const groups = draw({ shapes }).children.filter(({ name }) => name === 'g');
    expect(groups.map(({ attributes }) => attributes['id'])).toEqual([
      'board',
      'label',
      'mark',
      'countersink',
      'pilot',
      'groove',
      'hole',
      'outline',
    ]);
    expect(groups.map(({ attributes: { fill, stroke } }) => (fill === 'none' ? stroke : fill))).toEqual(
      cutOrder.map((operation) => lineColours[operation]),
    );
    expect(new Set(Object.values(lineColours)).size).toBe(operations.length);
    expect(draw({ shapes: [halfDisc] }).children.map(({ name }) => name)).toEqual(['title', 'desc', 'g']);
  });

  it('take other colours only as #rrggbb', () => {
    expect(writeSvg({ shapes: [halfDisc] }, { title: '', colours: { outline: '#FF0000' } })).toContain(
      'stroke="#FF0000"',
    );
    for (const outline of ['red', 'url(http://example.org/)', '#fff"/><script>']) {
      expect(() => writeSvg({ shapes: [halfDisc] }, { title: '', colours: { outline } })).toThrow(InternalError);
    }
  });
});

describe('arcs, their centres reckoned from the path by the standard’s own rule', () => {
  it.each<[string, Loop, number]>([
    ['half disc, R 50', halfDisc, (Math.PI * 50 ** 2) / 2],
    ['circle of two halves, R 20', loop([-20, 0, 1], [20, 0, 1]), Math.PI * 20 ** 2],
    ['the same run clockwise', loop([-20, 0, -1], [20, 0, -1]), Math.PI * 20 ** 2],
    // Circle of R 10 less the segment of a 90° chord: πr²·3/4 + r²/2.
    ['three quarters of a circle, R 10', loop([10, 0, Math.tan((3 * Math.PI) / 8)], [0, -10, 0]), Math.PI * 75 + 50],
    // Square of 20 with a quarter disc of R 5 taken from each corner: 400 − 4·π·25/4.
    [
      'square with hollow corners',
      loop(
        [5, 0, 0],
        [15, 0, -Math.tan(Math.PI / 8)],
        [20, 5, 0],
        [20, 15, -Math.tan(Math.PI / 8)],
        [15, 20, 0],
        [5, 20, -Math.tan(Math.PI / 8)],
        [0, 15, 0],
        [0, 5, -Math.tan(Math.PI / 8)],
      ),
      400 - Math.PI * 25,
    ],
  ])('%s has its area', (_, { vertices }, area) => {
    const { sides, closed } = outlineOf(vertices);
    expect(closed).toBe(true);
    expect(Math.abs(pathArea(sides))).toBeCloseTo(area, 2);
  });

  it('lie on the drawing’s circles from end to end, none wider than a right angle, and close', () => {
    const corner = fc.record({
      x: fc.double({ min: -200, max: 200, noNaN: true }),
      y: fc.double({ min: -200, max: 200, noNaN: true }),
      bulge: fc.double({ min: -6, max: 6, noNaN: true }),
    });
    const loops = fc.array(corner, { minLength: 2, maxLength: 6 }).filter((vertices) =>
      vertices.every(({ x, y }, index) => {
        const next = vertices[(index + 1) % vertices.length];
        return next !== undefined && Math.hypot(next.x - x, next.y - y) > 1;
      }),
    );
    fc.assert(
      fc.property(loops, (vertices) => {
        const bounds = boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] });
        const onPaper = (x: number, y: number): readonly [number, number] => [x - bounds.minX + 5, bounds.maxY - y + 5];
        const { sides, closed } = outlineOf(vertices);
        const rest = [...sides];
        for (const [index, from] of vertices.entries()) {
          const to = vertices[(index + 1) % vertices.length] as Vertex;
          const span = arcBetween(from, to);
          let [run, at] = [0, onPaper(from.x, from.y)];
          const end = onPaper(to.x, to.y);
          do {
            const side = rest.shift();
            if (!side) throw new Error('sides run out');
            expect(Math.hypot(side.from[0] - at[0], side.from[1] - at[1])).toBeLessThan(1e-4);
            expect(Math.abs(side.sweep)).toBeLessThan(Math.PI / 2 + 1e-3);
            if ('radius' in side && span) {
              const centre = onPaper(span.centreX, span.centreY);
              // The middle of the piece, where a wrong radius shows most, against the true circle.
              const angle = Math.atan2(side.from[1] - side.centre[1], side.from[0] - side.centre[0]) + side.sweep / 2;
              const [middleX, middleY] = [
                side.centre[0] + side.radius * Math.cos(angle),
                side.centre[1] + side.radius * Math.sin(angle),
              ];
              expect(Math.abs(Math.hypot(middleX - centre[0], middleY - centre[1]) - span.radius)).toBeLessThan(1e-4);
            }
            run += side.sweep;
            at = side.to;
          } while (Math.hypot(at[0] - end[0], at[1] - end[1]) > 1e-4);
          // On paper y points down: what runs counter-clockwise in the drawing has a negative sweep. A side flatter than the finest cut is straight.
          if (run !== 0) expect(run).toBeCloseTo(-4 * Math.atan(from.bulge), 3);
          else expect(Math.abs(from.bulge) * Math.hypot(to.x - from.x, to.y - from.y)).toBeLessThan(2.01e-4);
        }
        expect([rest, closed]).toEqual([[], true]);
        const area = loopArea(vertices);
        expect(Math.abs(pathArea(sides) + area)).toBeLessThan(1e-5 * Math.abs(area) + 0.2);
      }),
      { numRuns: cases(300) },
    );
  });

  it('of a half disc stand at their full height: no rounding of the radius flattens it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 400, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (radius, x) => {
          const { sides } = outlineOf([
            { x: x - radius, y: 0, bulge: 0 },
            { x: x + radius, y: 0, bulge: 1 },
          ]);
          const arcs = sides.filter((side) => 'radius' in side);
          expect(arcs.length).toBeGreaterThan(0);
          for (const arc of arcs)
            expect(Math.hypot(arc.centre[0] - (radius + 5), arc.centre[1] - (radius + 5))).toBeLessThan(1e-4);
        },
      ),
    );
  });

  it('so flat that none could cut them are straight', () => {
    expect(outlineOf(loop([0, 0, 1e-9], [1000, 0, 0], [0, 9, 0]).vertices).sides.map(({ sweep }) => sweep)).toEqual([
      0, 0, 0,
    ]);
  });
});

describe('strokes of an engraved label in an SVG', () => {
  const stroke = {
    kind: 'stroke',
    operation: 'label',
    points: [
      [0, 0],
      [10, 0],
      [10, 5],
    ],
  } as const;
  const paint = { fill: 'none', stroke: lineColours.label, 'stroke-width': '0.25' };

  it('are open paths, drawn and not filled, in the label’s colour', () => {
    const svg = draw({ shapes: [halfDisc, stroke] });
    const [group] = all(svg, 'g');
    expect(group?.attributes).toEqual({ id: 'label', ...paint });
    expect(group?.children.map(({ name, attributes }) => ({ name, attributes }))).toEqual([
      { name: 'path', attributes: { d: 'M55 55L65 55L65 50' } },
    ]);
  });

  it('beside a text keep their paint, and the text its own', () => {
    const [group] = all(draw({ shapes: [halfDisc, stroke, label('S1')] }), 'g');
    expect(group?.attributes).toEqual({ id: 'label', fill: lineColours.label, stroke: 'none' });
    expect(group?.children.map(({ name, attributes: { fill, stroke: line } }) => [name, fill, line])).toEqual([
      ['path', 'none', lineColours.label],
      ['text', undefined, undefined],
    ]);
  });
});

describe('labels in an SVG', () => {
  it('stand anchored and turned, capitals as high as asked (Helvetica’s capitals are 0.72 of the font size)', () => {
    const svg = draw({ shapes: [halfDisc, label('S1', { anchor: 'middle', angle: Math.PI / 2 })] });
    expect(first(svg, 'text').attributes).toMatchObject({
      x: '56',
      y: '53',
      'font-size': '10',
      'text-anchor': 'middle',
      transform: 'rotate(-90 56 53)',
    });
    expect(first(draw({ shapes: [halfDisc, label('S1')] }), 'text').attributes['transform']).toBeUndefined();
  });

  it.each([
    '<script>alert(1)</script>',
    '"quotes" & \'more\'',
    ']]>',
    '&amp; &#0;',
    '<!-- -->',
    'Ø ⌀ 😀 中',
    '--><svg onload="x">',
  ])('show %j as it is written', (text) => {
    const svg = draw({ shapes: [halfDisc, label(text)] }, text);
    expect(textIn(first(svg, 'text'))).toBe(text);
    expect(textIn(first(svg, 'title'))).toBe(text);
  });

  it('cannot add an element or an attribute, nor a character XML does not allow', () => {
    const outline = (node: INode): unknown => [
      node.name,
      Object.keys(node.attributes),
      node.children.filter(({ type }) => type === 'element').map(outline),
    ];
    const expected = outline(draw({ shapes: [halfDisc, label('x')] }));
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const written = writeSvg({ shapes: [halfDisc, label(text)] }, { title: text });
        expect(outline(parseSync(written))).toEqual(expected);
        // XML 1.0, section 2.2: Char.
        expect(written).toMatch(/^[\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]*$/u);
      }),
      { numRuns: cases(300) },
    );
    expect(textIn(first(draw({ shapes: [halfDisc, label('a\u0000b\nc\ud800d\uffffe')] }), 'text'))).toBe('a b c d e');
  });
});

describe('a drawing that cannot be drawn is refused', () => {
  it.each<[string, Drawing]>([
    ['NaN corner', { shapes: [loop([NaN, 0, 0], [1, 0, 0])] }],
    ['NaN bulge', { shapes: [loop([0, 0, NaN], [1, 0, 0])] }],
    ['infinite bulge', { shapes: [loop([0, 0, Infinity], [1, 0, 0])] }],
    ['NaN radius', { shapes: [{ kind: 'circle', operation: 'hole', x: 0, y: 0, radius: NaN }] }],
    ['NaN label', { shapes: [halfDisc, label('A', { x: NaN })] }],
    ['one corner', { shapes: [loop([0, 0, 1])] }],
    ['stroke of one point', { shapes: [halfDisc, { kind: 'stroke', operation: 'label', points: [[0, 0]] }] }],
    ['nothing', { shapes: [] }],
    ['nothing but labels', { shapes: [label('A')] }],
  ])('%s', (_, drawing) => {
    expect(() => writeSvg(drawing, { title: '' })).toThrow(InternalError);
  });
});
