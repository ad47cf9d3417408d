import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder, operations, type Drawing, type Loop, type Stroke, type Text } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { DXF_COLOURS, writeDxf } from '../../src/output/dxf';
import { readDxf } from '../helpers/read-dxf';

const halfDisc: Loop = {
  kind: 'loop',
  operation: 'outline',
  vertices: [
    { x: -50, y: 0, bulge: 0 },
    { x: 50, y: 0, bulge: 1 },
  ],
};
const label = (text: string, rest: Partial<Text> = {}): Text => ({
  kind: 'text',
  operation: 'label',
  x: 1,
  y: 2,
  height: 5,
  angle: 0,
  anchor: 'start',
  text,
  ...rest,
});
const stroke: Stroke = {
  kind: 'stroke',
  operation: 'label',
  points: [
    [1, 2],
    [3, 2.5],
    [4, 9],
  ],
};
const drawing: Drawing = {
  shapes: [
    halfDisc,
    { kind: 'circle', operation: 'hole', x: 10, y: 20, radius: 2.25 },
    { kind: 'line', operation: 'mark', from: [0, 0], to: [0, 50] },
    label('S1', { angle: Math.PI / 2, anchor: 'middle' }),
  ],
};

/** The file as pairs of group code and value, by the format's own rule: two lines a pair. */
function tagsOf(text: string): (readonly [string, string])[] {
  const lines = text.split('\r\n');
  expect(lines.pop()).toBe('');
  expect(lines.length % 2).toBe(0);
  return Array.from(
    { length: lines.length / 2 },
    (_, index) => [lines[2 * index] ?? '', lines[2 * index + 1] ?? ''] as const,
  );
}

/** The tags of the first entity of a type, as a map of code to value. */
function entityTags(text: string, type: string): Map<string, string> {
  const tags = tagsOf(text);
  const start = tags.findIndex(([code, value]) => code === '0' && value === type);
  const length = tags.slice(start + 1).findIndex(([code]) => code === '0');
  return new Map(tags.slice(start + 1, start + 1 + length));
}

const shownText = (text: string): string | undefined =>
  entityTags(writeDxf({ shapes: [halfDisc, label(text)] }), 'TEXT').get('1');

describe('a DXF read by dxf-parser', () => {
  const read = readDxf(writeDxf(drawing));

  it('holds every shape once, on its operation’s layer, and all layers are declared', () => {
    expect(read.count).toBe(drawing.shapes.length);
    expect(read.layers).toEqual(['0', ...operations]);
    expect(read.polylines.map(({ layer }) => layer)).toEqual(['outline']);
    expect(read.circles).toEqual([{ layer: 'hole', x: 10, y: 20, radius: 2.25 }]);
    expect(read.lines).toEqual([
      {
        layer: 'mark',
        ends: [
          { x: 0, y: 0 },
          { x: 0, y: 50 },
        ],
      },
    ]);
    expect(read.texts).toEqual([{ layer: 'label', text: 'S1' }]);
  });

  it('says millimetres: $INSUNITS 4, $MEASUREMENT 1; release 12 is AC1009 (format owner’s reference, HEADER)', () => {
    const header = new DxfParser().parseSync(writeDxf(drawing))?.header ?? {};
    expect([header['$ACADVER'], header['$INSUNITS'], header['$MEASUREMENT']]).toEqual(['AC1009', 4, 1]);
    expect(header['$EXTMIN']).toMatchObject({ x: -50, y: 0 });
    expect(header['$EXTMAX']).toMatchObject({ x: 50, y: 50 });
  });

  it('keeps loops closed and arcs as bulges: 1 for a half circle', () => {
    expect(read.polylines).toEqual([
      {
        layer: 'outline',
        closed: true,
        vertices: [
          { x: -50, y: 0, bulge: 0 },
          { x: 50, y: 0, bulge: 1 },
        ],
      },
    ]);
  });

  it('gives any loop back within the last decimals', () => {
    const coordinates = fc.double({ min: -3000, max: 3000, noNaN: true });
    const corner = fc.record({ x: coordinates, y: coordinates, bulge: fc.double({ min: -10, max: 10, noNaN: true }) });
    fc.assert(
      fc.property(
        fc.array(corner, { minLength: 2, maxLength: 8 }),
        fc.constantFrom(...operations),
        (vertices, operation) => {
          const { polylines, count } = readDxf(writeDxf({ shapes: [{ kind: 'loop', operation, vertices }] }));
          expect(count).toBe(1);
          expect(polylines[0]).toMatchObject({ layer: operation, closed: true });
          for (const [index, { x, y, bulge }] of vertices.entries()) {
            const found = polylines[0]?.vertices[index] ?? { x: NaN, y: NaN, bulge: NaN };
            expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(1e-6);
            expect(Math.abs(found.bulge - bulge)).toBeLessThan(1e-12);
          }
          expect(polylines[0]?.vertices).toHaveLength(vertices.length);
        },
      ),
    );
  });

  it('colours layers 1 to 255, each its own unless the caller says otherwise', () => {
    const colours = (text: string): number[] =>
      tagsOf(text)
        .filter(([code]) => code === '62')
        .map(([, value]) => Number(value));
    expect(new Set(Object.values(DXF_COLOURS)).size).toBe(operations.length);
    expect(colours(writeDxf(drawing))).toEqual([7, ...operations.map((operation) => DXF_COLOURS[operation])]);
    expect(colours(writeDxf(drawing, { outline: 1 }))[1]).toBe(1);
    for (const outline of [0, 256, 1.5, NaN]) expect(() => writeDxf(drawing, { outline })).toThrow(InternalError);
  });
});

describe('the order of cutting', () => {
  it('is inside before outside: what is engraved or marked first, the outline that frees the part last; within an operation as drawn', () => {
    expect([...cutOrder].sort()).toEqual([...operations].sort());
    const second: Loop = {
      ...halfDisc,
      vertices: halfDisc.vertices.map((vertex) => ({ ...vertex, y: vertex.y + 100 })),
    };
    const others = operations
      .filter((operation) => operation !== 'outline' && operation !== 'label')
      .map((operation) => ({ ...halfDisc, operation }));
    const read = readDxf(writeDxf({ shapes: [second, halfDisc, ...others, label('S1'), stroke] }));
    expect(read.order.map(({ layer }) => layer)).toEqual([
      'board',
      'label',
      'label',
      'mark',
      'countersink',
      'pilot',
      'groove',
      'hole',
      'outline',
      'outline',
    ]);
    expect(
      read.polylines.filter(({ layer }) => layer === 'outline').map(({ vertices: [corner] }) => corner?.y),
    ).toEqual([100, 0]);
  });
});

describe('strokes of an engraved label in a DXF', () => {
  it('are open polylines of straight sides, on the label layer: flag 0 in group 70 (format owner’s reference, POLYLINE)', () => {
    const written = writeDxf({ shapes: [halfDisc, stroke] });
    const read = readDxf(written);
    expect(read.polylines.filter(({ layer }) => layer === 'label')).toEqual([
      {
        layer: 'label',
        closed: false,
        vertices: [
          { x: 1, y: 2, bulge: 0 },
          { x: 3, y: 2.5, bulge: 0 },
          { x: 4, y: 9, bulge: 0 },
        ],
      },
    ]);
    expect([read.count, read.texts]).toEqual([2, []]);
    expect(entityTags(written, 'POLYLINE').get('70')).toBe('0');
    expect(entityTags(writeDxf({ shapes: [halfDisc] }), 'POLYLINE').get('70')).toBe('1');
  });
});

describe('labels in a DXF', () => {
  it('stand as anchored and turned: groups 72, 73 and the second point 11, 21; degrees in 50 (format owner’s reference, TEXT)', () => {
    const middle = entityTags(
      writeDxf({ shapes: [halfDisc, label('A', { angle: Math.PI / 6, anchor: 'middle' })] }),
      'TEXT',
    );
    expect(['50', '72', '73', '11', '21', '40'].map((code) => middle.get(code))).toEqual([
      '30',
      '1',
      '0',
      '1',
      '2',
      '5',
    ]);
    const start = entityTags(writeDxf({ shapes: [halfDisc, label('A')] }), 'TEXT');
    expect(['50', '72', '10', '20', '11'].map((code) => start.get(code))).toEqual(['0', '0', '1', '2', undefined]);
    expect(entityTags(writeDxf({ shapes: [halfDisc, label('A', { anchor: 'end' })] }), 'TEXT').get('72')).toBe('2');
  });

  it.each([
    ['Ø 30', String.raw`\U+00D8 30`],
    ['⌀ 中', String.raw`\U+2300 \U+4E2D`],
    ['a "quoted" <b> & \'c\'', 'a "quoted" <b> & \'c\''],
    ['100 %', '100 %'],
    ['%%d', '% %d'],
    ['%%%%c', '% % % %c'],
    [String.raw`\U+0041`, String.raw`\U+005CU+0041`],
    ['5^2 ^J', '5^ 2 ^ J'],
    ['two\r\nlines\tand\u2028three\u0085', 'two  lines and three '],
    ['\u0000\u001b\u007f', '   '],
    ['smile 😀!', 'smile ?!'],
    ['half \ud83d', 'half ?'],
  ])('%j is stored as %j', (text, stored) => {
    expect(shownText(text)).toBe(stored);
  });

  it('never outgrow the 255 characters the format allows in a string', () => {
    expect(shownText('x'.repeat(255))).toBe('x'.repeat(255));
    expect(shownText('x'.repeat(256))).toBe(`${'x'.repeat(252)}...`);
    const cut = shownText('Ø'.repeat(200)) ?? '';
    expect(cut).toBe(`${String.raw`\U+00D8`.repeat(36)}...`);
    expect((shownText('\\'.repeat(1_000_000)) ?? '').length).toBeLessThanOrEqual(255);
  });

  it('cannot add an entity, whatever they hold', () => {
    const nasty = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc
        .array(
          fc.constantFrom(
            '\n',
            '\r',
            '\r\n',
            '0',
            'LINE',
            '8',
            '%%',
            '\\',
            'U+000A',
            '^J',
            '\u2028',
            '\u000b',
            'SEQEND',
            'EOF',
          ),
          { maxLength: 20 },
        )
        .map((words) => words.join('')),
    );
    fc.assert(
      fc.property(nasty, (text) => {
        const written = writeDxf({ shapes: [label(text), halfDisc] });
        expect(written).toMatch(/^[ -~\r\n]*$/u);
        expect(written.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/u);
        expect(tagsOf(written).filter(([code]) => code === '0')).toEqual(
          tagsOf(writeDxf({ shapes: [label('x'), halfDisc] })).filter(([code]) => code === '0'),
        );
        expect(entityTags(written, 'TEXT').get('1')).not.toMatch(/%%|\^(?! )|\\(?!U\+[0-9A-F]{4})/u);
      }),
      { numRuns: 500 },
    );
    const injecting = readDxf(
      writeDxf({
        shapes: [halfDisc, label('S1\r\n0\r\nLINE\r\n8\r\noutline\r\n10\r\n0\r\n20\r\n0\r\n11\r\n9\r\n21\r\n9')],
      }),
    );
    expect([injecting.count, injecting.lines]).toEqual([2, []]);
  });
});

describe('a drawing that cannot be cut is refused', () => {
  it.each<[string, Drawing]>([
    [
      'NaN corner',
      {
        shapes: [
          {
            ...halfDisc,
            vertices: [
              { x: NaN, y: 0, bulge: 0 },
              { x: 1, y: 0, bulge: 0 },
            ],
          },
        ],
      },
    ],
    [
      'infinite bulge',
      {
        shapes: [
          {
            ...halfDisc,
            vertices: [
              { x: 0, y: 0, bulge: Infinity },
              { x: 1, y: 0, bulge: 0 },
            ],
          },
        ],
      },
    ],
    ['NaN radius', { shapes: [{ kind: 'circle', operation: 'hole', x: 0, y: 0, radius: NaN }] }],
    ['infinite mark', { shapes: [{ kind: 'line', operation: 'mark', from: [0, 0], to: [Infinity, 0] }] }],
    ['NaN label angle', { shapes: [halfDisc, label('A', { angle: NaN })] }],
    ['one corner', { shapes: [{ ...halfDisc, vertices: [{ x: 0, y: 0, bulge: 1 }] }] }],
    ['no corner', { shapes: [halfDisc, { ...halfDisc, vertices: [] }] }],
    ['stroke of one point', { shapes: [halfDisc, { ...stroke, points: [[0, 0]] }] }],
    [
      'NaN stroke',
      {
        shapes: [
          halfDisc,
          {
            ...stroke,
            points: [
              [0, 0],
              [NaN, 1],
            ],
          },
        ],
      },
    ],
    ['nothing', { shapes: [] }],
  ])('%s', (_, refused) => {
    expect(() => writeDxf(refused)).toThrow(InternalError);
  });
});
