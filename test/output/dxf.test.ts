import DxfParser from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder, operations, type Drawing, type Loop, type Stroke, type Text } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { DXF_COLOURS, writeDxf } from '../../src/output/dxf';
import { readDxf } from '../helpers/read-dxf';
import { cases } from '../helpers/cases';

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
            const next = vertices[(index + 1) % vertices.length] ?? { x, y };
            const straight = (Math.abs(bulge) * Math.hypot(next.x - x, next.y - y)) / 2 < 5e-7;
            expect(Math.abs(found.bulge - bulge)).toBeLessThanOrEqual(straight ? Math.abs(bulge) : 1e-12);
          }
          expect(polylines[0]?.vertices).toHaveLength(vertices.length);
        },
      ),
    );
  });

  it('has no bulge on a straight side, and a point in every real (format owner’s reference: groups 10 to 59 are reals)', () => {
    for (const options of [{}, { kind: 'lines' }, { units: 'in' }] as const) {
      const tags = tagsOf(writeDxf({ shapes: [...drawing.shapes, stroke] }, options));
      const reals = tags.filter(([code]) => Number(code) >= 10 && Number(code) <= 59);
      expect(reals.length).toBeGreaterThan(20);
      for (const [code, value] of reals) expect(value, code).toMatch(/^-?\d+\.\d+$/u);
    }
    // No entity ends with a bare 0: read line by line it would swallow the 0 that begins the next.
    const tags = tagsOf(writeDxf({ shapes: [...drawing.shapes, label('S2'), stroke] }));
    const begin = tags.findIndex(([, value]) => value === 'ENTITIES');
    const last = tags.slice(begin).filter((_, index, entities) => entities[index + 1]?.[0] === '0');
    expect(last.length).toBeGreaterThan(10);
    expect(last.filter(([code, value]) => code !== '0' && value === '0')).toEqual([]);
    // The half disc's one arc; the format of the text style has a group 42 of its own.
    const bulges = tagsOf(writeDxf({ shapes: [halfDisc, stroke] })).filter(([code]) => code === '42');
    expect(bulges.map(([, value]) => value)).toEqual(['2.5', '1.0']);
  });

  it('colours layers 1 to 255, each its own unless the caller says otherwise', () => {
    const colours = (text: string): number[] =>
      tagsOf(text)
        .filter(([code]) => code === '62')
        .map(([, value]) => Number(value));
    expect(new Set(Object.values(DXF_COLOURS)).size).toBe(operations.length);
    expect(colours(writeDxf(drawing))).toEqual([7, ...operations.map((operation) => DXF_COLOURS[operation])]);
    expect(colours(writeDxf(drawing, { colours: { outline: 1 } }))[1]).toBe(1);
    for (const outline of [0, 256, 1.5, NaN])
      expect(() => writeDxf(drawing, { colours: { outline } })).toThrow(InternalError);
  });
});

describe('a DXF of lines and arcs', () => {
  /** Ends of a LINE or an ARC, by school trigonometry from centre, radius and angles. */
  const endsOf = (tags: ReadonlyMap<string, string>): [number, number][] => {
    const at = (code: string): number => Number(tags.get(code));
    if (tags.has('11'))
      return [
        [at('10'), at('20')],
        [at('11'), at('21')],
      ];
    return ['50', '51'].map((code) => {
      const angle = (at(code) * Math.PI) / 180;
      return [at('10') + at('40') * Math.cos(angle), at('20') + at('40') * Math.sin(angle)];
    });
  };
  const entities = (text: string): { type: string; tags: Map<string, string> }[] => {
    const tags = tagsOf(text);
    const begin = tags.findIndex(([code, value]) => code === '2' && value === 'ENTITIES') + 1;
    const starts = tags.flatMap(([code], index) => (code === '0' && index >= begin ? [index] : []));
    return starts
      .slice(0, -2)
      .map((from, index) => ({ type: tags[from]?.[1] ?? '', tags: new Map(tags.slice(from + 1, starts[index + 1])) }));
  };

  it('has a line for every straight side and an arc for every round one, and no polyline', () => {
    const found = entities(writeDxf({ shapes: [halfDisc, stroke] }, { kind: 'lines' }));
    expect(found.map(({ type }) => type)).toEqual(['LINE', 'LINE', 'LINE', 'ARC']);
    const arc = found[3]?.tags;
    expect(['8', '10', '20', '40', '50', '51'].map((code) => arc?.get(code))).toEqual([
      'outline',
      '0.0',
      '0.0',
      '50.0',
      '0.0',
      '180.0',
    ]);
  });

  it.each(['mm', 'in'] as const)('has ends that meet, all round, in %s', (units) => {
    const coordinates = fc.double({ min: -3000, max: 3000, noNaN: true });
    const corner = fc.record({ x: coordinates, y: coordinates, bulge: fc.double({ min: -5, max: 5, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(corner, { minLength: 2, maxLength: 8 }), (vertices) => {
        const shapes = [{ kind: 'loop' as const, operation: 'outline' as const, vertices }];
        const found = entities(writeDxf({ shapes }, { kind: 'lines', units }));
        const scale = units === 'mm' ? 1 : 25.4;
        expect(found).toHaveLength(vertices.length);
        for (const [index, { x, y, bulge }] of vertices.entries()) {
          const { type, tags } = found[index] ?? { type: '', tags: new Map<string, string>() };
          const next = vertices[(index + 1) % vertices.length] ?? { x, y };
          const flat = (Math.abs(bulge) * Math.hypot(next.x - x, next.y - y)) / 2 < 1.001e-4;
          if (!flat) expect(type).toBe(bulge === 0 ? 'LINE' : 'ARC');
          const ends = endsOf(tags);
          const [from, to] = type === 'ARC' && bulge < 0 ? [ends[1], ends[0]] : ends;
          // Both corners as written; an arc all but straight has its middle thousands of km away and the last digits with it.
          const radius = type === 'ARC' ? Number(tags.get('40')) : 0;
          const slack = 1e-9 + 4e-15 * radius + 0.5000001 * (units === 'mm' ? 1e-6 : 1e-8);
          for (const [end, want] of [
            [from, { x, y }],
            [to, next],
          ] as const) {
            expect(Math.abs((end?.[0] ?? NaN) - want.x / scale)).toBeLessThan(slack);
            expect(Math.abs((end?.[1] ?? NaN) - want.y / scale)).toBeLessThan(slack);
          }
        }
      }),
    );
  });
});

describe('a DXF in inches', () => {
  it('says so, $INSUNITS 1 and $MEASUREMENT 0, and every length is that of the mm file over 25.4', () => {
    const written = writeDxf(drawing, { units: 'in' });
    const header = new DxfParser().parseSync(written)?.header ?? {};
    expect([header['$INSUNITS'], header['$MEASUREMENT']]).toEqual([1, 0]);
    expect(header['$EXTMAX']).toMatchObject({ x: 1.96850394, y: 1.96850394 });
    const read = readDxf(written);
    expect(read.circles).toEqual([{ layer: 'hole', x: 0.39370079, y: 0.78740157, radius: 0.08858268 }]);
    expect(read.polylines[0]?.vertices).toEqual([
      { x: -1.96850394, y: 0, bulge: 0 },
      { x: 1.96850394, y: 0, bulge: 1 },
    ]);
    expect(entityTags(written, 'TEXT').get('40')).toBe('0.19685039');
    expect(entityTags(written, 'TEXT').get('50')).toBe('90.0');
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
  it('stand as anchored and turned: group 72 and the second point 11, 21, left on the baseline unless said; degrees in 50 (format owner’s reference, TEXT)', () => {
    const middle = entityTags(
      writeDxf({ shapes: [halfDisc, label('A', { angle: Math.PI / 6, anchor: 'middle' })] }),
      'TEXT',
    );
    expect(['50', '72', '73', '11', '21', '40'].map((code) => middle.get(code))).toEqual([
      '30.0',
      '1',
      undefined,
      '1.0',
      '2.0',
      '5.0',
    ]);
    const start = entityTags(writeDxf({ shapes: [halfDisc, label('A')] }), 'TEXT');
    expect(['50', '72', '10', '20', '11'].map((code) => start.get(code))).toEqual([
      '0.0',
      undefined,
      '1.0',
      '2.0',
      undefined,
    ]);
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
      { numRuns: cases(500) },
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
