import fc from 'fast-check';
import { near } from '../../helpers/near';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../helpers/in-words';
import { boundsOf } from '../../../src/base/bounds';
import { loopLength } from '../../../src/base/way';
import { asCircle, outlineArea } from '../../../src/panel/trace/outline';
import { readOutline, type OutlineOptions, type TracedOutline } from '../../../src/panel/trace/read-outline';

const options: OutlineOptions = { path: 'outline.file', format: 'dxf' };
type Group = readonly [code: number, value: string | number];

const text = (groups: readonly Group[]): string => groups.map(([code, value]) => `${code}\n${value}\n`).join('');
const section = (name: string, groups: readonly Group[]): Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...groups,
  [0, 'ENDSEC'],
];

interface Parts {
  readonly unit?: number;
  readonly blocks?: readonly Group[];
  readonly tables?: readonly Group[];
}

function file(entities: readonly Group[], { unit = 4, blocks = [], tables = [] }: Parts = {}): string {
  return text([
    ...section('HEADER', [
      [9, '$INSUNITS'],
      [70, unit],
    ]),
    ...section('TABLES', tables),
    ...section('BLOCKS', blocks),
    ...section('ENTITIES', entities),
    [0, 'EOF'],
  ]);
}

const line = (x1: number, y1: number, x2: number, y2: number): Group[] => [
  [0, 'LINE'],
  [8, '0'],
  [10, x1],
  [20, y1],
  [11, x2],
  [21, y2],
];
const circle = (x: number, y: number, r: number, ...more: Group[]): Group[] => [
  [0, 'CIRCLE'],
  [8, '0'],
  [10, x],
  [20, y],
  [40, r],
  ...more,
];
const arc = (place: readonly [number, number, number], from: number, to: number, ...more: Group[]): Group[] => [
  [0, 'ARC'],
  [8, '0'],
  [10, place[0]],
  [20, place[1]],
  [40, place[2]],
  [50, from],
  [51, to],
  ...more,
];
const rectangle = (x: number, y: number, w: number, h: number): Group[] => [
  ...line(x, y, x + w, y),
  ...line(x + w, y, x + w, y + h),
  ...line(x, y + h, x + w, y + h),
  ...line(x, y + h, x, y),
];

function read(source: string, more: Partial<OutlineOptions> = {}): TracedOutline {
  const { value, findings } = readOutline(source, { ...options, ...more });
  if (!value)
    throw new Error(
      inWords(findings)
        .map(({ code, message }) => `${code}: ${message}`)
        .join('\n'),
    );
  return value;
}

const box = ({ outline }: TracedOutline) =>
  boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices: outline.vertices }] });

describe('entities of DXF', () => {
  it('lines in any order and direction, an arc and a circle: a rounded end and a hole', () => {
    const made = read(
      file([
        ...line(0, 0, 100, 0),
        ...arc([100, 25, 25], -90, 90),
        ...line(0, 50, 100, 50),
        ...line(0, 50, 0, 0),
        ...circle(30, 25, 6),
      ]),
    );
    expect(outlineArea(made.outline)).toBeCloseTo(5000 + (Math.PI * 625) / 2 - Math.PI * 36, 8);
    expect(box(made)).toEqual({ minX: 0, minY: 0, maxX: near(125, 9), maxY: 50 });
    expect(asCircle(made.outline.holes[0] ?? [])).toMatchObject({
      x: near(30, 9),
      radius: near(6, 9),
    });
  });

  it('polylines, new and old, keep their bulges: a half circle is a bulge of 1', () => {
    const light: Group[] = [
      [0, 'LWPOLYLINE'],
      [8, '0'],
      [90, 4],
      [70, 1],
      [10, 0],
      [20, 0],
      [10, 100],
      [20, 0],
      [42, 1],
      [10, 100],
      [20, 50],
      [10, 0],
      [20, 50],
    ];
    const vertex = (x: number, y: number, ...more: Group[]): Group[] => [
      [0, 'VERTEX'],
      [8, '0'],
      [10, x],
      [20, y],
      ...more,
    ];
    const old: Group[] = [
      [0, 'POLYLINE'],
      [8, '0'],
      [66, 1],
      [70, 1],
      ...vertex(0, 0),
      ...vertex(100, 0, [42, 1]),
      ...vertex(100, 50),
      ...vertex(0, 50),
      [0, 'SEQEND'],
    ];
    for (const entities of [light, old]) {
      const { outline } = read(file(entities));
      expect(outline.vertices).toEqual([
        { x: 0, y: 0, bulge: 0 },
        { x: 100, y: 0, bulge: 1 },
        { x: 100, y: 50, bulge: 0 },
        { x: 0, y: 50, bulge: 0 },
      ]);
    }
  });

  it('what is drawn from behind (extrusion 0, 0, −1) is mirrored', () => {
    const behind: Group[] = [
      [210, 0],
      [220, 0],
      [230, -1],
    ];
    const made = read(file([...rectangle(-100, -50, 100, 100), ...circle(30, 10, 5, ...behind)]));
    expect(asCircle(made.outline.holes[0] ?? [])).toMatchObject({
      x: near(-30, 9),
      y: near(10, 9),
    });
    // An arc seen from behind runs clockwise: from (−25, 0) over (0, 25) back to (25, 0).
    const half = read(file([...line(-25, 0, 25, 0), ...arc([0, 0, 25], 0, 180, ...behind)]));
    expect(box(half)).toEqual({
      minX: near(-25, 9),
      maxX: near(25, 9),
      minY: near(0, 9),
      maxY: near(25, 9),
    });
  });

  it('an ellipse by its long axis and parameters, whole and half', () => {
    const whole = read(
      file([
        [0, 'ELLIPSE'],
        [8, '0'],
        [10, 50],
        [20, 50],
        [11, 0],
        [21, 40],
        [40, 0.5],
        [41, 0],
        [42, 2 * Math.PI],
      ]),
    );
    expect(Math.abs(outlineArea(whole.outline) - Math.PI * 40 * 20)).toBeLessThan(194 * 0.05);
    const { minX, maxX, minY, maxY } = box(whole);
    expect(Math.max(Math.abs(minX - 30), Math.abs(maxX - 70), Math.abs(minY - 10), Math.abs(maxY - 90))).toBeLessThan(
      0.05,
    );
    const half = read(
      file([
        ...line(-40, 0, 40, 0),
        [0, 'ELLIPSE'],
        [8, '0'],
        [10, 0],
        [20, 0],
        [11, 40],
        [21, 0],
        [40, 0.5],
        [41, 0],
        [42, Math.PI],
      ]),
    );
    expect(Math.abs(outlineArea(half.outline) - (Math.PI * 800) / 2)).toBeLessThan(100 * 0.05);
  });

  it('a rational quadratic spline of nine points is a circle (Piegl & Tiller, The NURBS Book, 7.5)', () => {
    const w = Math.SQRT1_2;
    const points = [
      [1, 0, 1],
      [1, 1, w],
      [0, 1, 1],
      [-1, 1, w],
      [-1, 0, 1],
      [-1, -1, w],
      [0, -1, 1],
      [1, -1, w],
      [1, 0, 1],
    ] as const;
    const spline: Group[] = [
      [0, 'SPLINE'],
      [8, '0'],
      [70, 12],
      [71, 2],
      ...[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4].map((knot): Group => [40, knot]),
      ...points.map(([, , weight]): Group => [41, weight]),
      ...points.flatMap(([x, y]): Group[] => [
        [10, 100 * x],
        [20, 100 * y],
        [30, 0],
      ]),
    ];
    const { outline } = read(file(spline));
    expect(Math.max(...outline.vertices.map(({ x, y }) => Math.abs(Math.hypot(x, y) - 100)))).toBeLessThan(1e-9);
    expect(Math.abs(loopLength(outline.vertices) - 200 * Math.PI)).toBeLessThan(0.1);
    expect(outline.vertices.length).toBeLessThan(8);
  });

  it('a cubic spline with inner knots passes where its basis functions say (Cox–de Boor, summed directly)', () => {
    const knots = [0, 0, 0, 0, 1, 2.5, 4, 4, 4, 4];
    const points = [
      [0, 0],
      [30, 80],
      [90, -60],
      [150, 90],
      [200, 40],
      [240, 0],
    ] as const;
    const spline: Group[] = [
      [0, 'SPLINE'],
      [8, '0'],
      [70, 8],
      [71, 3],
      ...knots.map((knot): Group => [40, knot]),
      ...points.flatMap(([x, y]): Group[] => [
        [10, x],
        [20, y + 100],
        [30, 0],
      ]),
    ];
    const { outline } = read(
      file([...spline, ...line(0, 100, 0, 0), ...line(0, 0, 240, 0), ...line(240, 0, 240, 100)]),
    );
    const basis = (i: number, p: number, t: number): number => {
      const [a = 0, b = 0, c = 0, d = 0] = [knots[i], knots[i + 1], knots[i + p], knots[i + p + 1]];
      if (p === 0) return t >= a && t < b ? 1 : 0;
      return (
        (c > a ? ((t - a) / (c - a)) * basis(i, p - 1, t) : 0) +
        (d > b ? ((d - t) / (d - b)) * basis(i + 1, p - 1, t) : 0)
      );
    };
    const curve = Array.from({ length: 4000 }, (_, step) => (4 * step) / 4000).map(
      (t) =>
        [
          points.reduce((sum, [x], i) => sum + x * basis(i, 3, t), 0),
          points.reduce((sum, [, y], i) => sum + (y + 100) * basis(i, 3, t), 0),
        ] as const,
    );
    const corners = outline.vertices.filter(({ x, y }) => y > 0 && x > 0 && x < 240);
    const away = corners.map(({ x, y }) => Math.min(...curve.map(([u, v]) => Math.hypot(u - x, v - y))));
    expect(corners.length).toBeGreaterThan(4);
    expect(Math.max(...away)).toBeLessThan(0.1);
    // The area under it by the trapezium rule.
    const under = curve
      .slice(1)
      .reduce((sum, [x, y], i) => sum + ((x - (curve[i]?.[0] ?? 0)) * (y + (curve[i]?.[1] ?? 0))) / 2, 0);
    expect(Math.abs(outlineArea(outline) - under)).toBeLessThan(300 * 0.05 + 10);
  });
});

describe('blocks, units and layers', () => {
  const block = (name: string, base: readonly [number, number], entities: readonly Group[]): Group[] => [
    [0, 'BLOCK'],
    [8, '0'],
    [2, name],
    [70, 0],
    [10, base[0]],
    [20, base[1]],
    ...entities,
    [0, 'ENDBLK'],
  ];
  const insert = (name: string, x: number, y: number, ...more: Group[]): Group[] => [
    [0, 'INSERT'],
    [8, '0'],
    [2, name],
    [10, x],
    [20, y],
    ...more,
  ];

  it('a block in a block: base point, scale and turn of each in turn', () => {
    // The hole, 10 right of its block’s base, doubled: 20 right; that block turned by 90°: 20 up; then moved.
    const blocks = [
      ...block('hole', [5, 5], circle(15, 5, 3)),
      ...block('outer', [0, 0], insert('hole', 0, 0, [41, 2], [42, 2])),
    ];
    const made = read(file([...rectangle(0, 0, 200, 100), ...insert('OUTER', 60, 40, [50, 90])], { blocks }));
    expect(asCircle(made.outline.holes[0] ?? [])).toMatchObject({
      x: near(60, 8),
      y: near(60, 8),
      radius: near(6, 8),
    });
  });

  it('a block scaled unevenly turns a circle into an ellipse; a negative scale mirrors', () => {
    const blocks = block('b', [0, 0], [...arc([0, 0, 20], 0, 180), ...line(-20, 0, 20, 0)]);
    const made = read(file(insert('b', 0, 0, [41, 2], [42, -1]), { blocks }));
    expect(Math.abs(outlineArea(made.outline) - (Math.PI * 40 * 20) / 2)).toBeLessThan(140 * 0.05);
    expect(box(made).maxY).toBeCloseTo(0, 9);
  });

  it('rows and columns of a block', () => {
    const made = read(
      file([...rectangle(0, 0, 200, 100), ...insert('h', 20, 20, [70, 3], [71, 2], [44, 40], [45, 30])], {
        blocks: block('h', [0, 0], circle(0, 0, 4)),
      }),
    );
    const centres = made.outline.holes
      .map((hole) => asCircle(hole))
      .map((hole) => `${hole?.x.toFixed(3)} ${hole?.y.toFixed(3)}`);
    expect(centres.sort()).toEqual([
      '100.000 20.000',
      '100.000 50.000',
      '20.000 20.000',
      '20.000 50.000',
      '60.000 20.000',
      '60.000 50.000',
    ]);
  });

  it.each([
    [1, 25.4],
    [2, 304.8],
    [4, 1],
    [5, 10],
    [6, 1000],
    [10, 914.4],
    [14, 100],
  ])('unit %i is %f mm', (unit, mm) => {
    expect(box(read(file(rectangle(0, 0, 2, 1), { unit }))).maxX).toBeCloseTo(2 * mm, 9);
  });

  it('without a unit it is read as mm and said, or as the job says', () => {
    const source = file(rectangle(0, 0, 20, 10), { unit: 0 });
    expect(readOutline(source, options).findings).toEqual([
      expect.objectContaining({ code: 'dxf-no-unit', level: 'warning' }),
    ]);
    const { value, findings } = readOutline(source, { ...options, unit: 'in' });
    expect([value && box(value).maxX, findings]).toEqual([508, []]);
  });

  it('layers that are off or frozen, paper space, texts and dimensions are left out', () => {
    const layer = (name: string, colour: number, flags: number): Group[] => [
      [0, 'LAYER'],
      [2, name],
      [70, flags],
      [62, colour],
    ];
    const tables = [...layer('off', -7, 0), ...layer('ice', 7, 1)];
    const on = (name: string, entities: readonly Group[]): Group[] =>
      entities.map(([code, value]) => (code === 8 ? [8, name] : [code, value]));
    const paper: Group[] = [...line(0, 0, 5, 5), [67, 1]];
    const entities = [
      ...rectangle(0, 0, 90, 60),
      ...on('off', line(1, 1, 5, 5)),
      ...on('ice', line(1, 1, 5, 5)),
      ...on('Mark', line(2, 2, 5, 5)),
      ...paper,
      [0, 'MTEXT'] as const,
      [8, '0'] as const,
      [0, 'REGION'] as const,
    ];
    const { value, findings } = readOutline(file(entities, { tables }), options);
    expect(value?.outline.vertices).toHaveLength(4);
    expect(
      inWords(findings)
        .map(({ level, message }) => `${level} ${message}`)
        .sort(),
    ).toEqual([
      'note left out of the drawing: MTEXT entities',
      'note left out of the drawing: layer Mark',
      'note left out of the drawing: what is hidden, 2 times',
      'note left out of the drawing: what is on paper layouts',
      'warning left out of the drawing: REGION entities, which are no lines or arcs',
    ]);
  });
});

describe('DXF that is refused, with the place', () => {
  const rest = rectangle(0, 0, 90, 60);
  const endless: Group[] = [
    [0, 'BLOCK'],
    [2, 'a'],
    [0, 'INSERT'],
    [2, 'a'],
    [10, 0],
    [20, 0],
    [0, 'ENDBLK'],
  ];

  it.each([
    ['text', 'hello\nworld\n', 'line 1 should be a group code: hello'],
    ['nothing', '', 'without its end mark'],
    ['a binary drawing', 'AutoCAD Binary DXF\r\n\u001a', 'binary'],
    ['another binary drawing', 'AC1032\u0000', 'binary'],
    ['a file cut off', file(rest).slice(0, -30), 'ends at line'],
    ['a line lost', file(rest).replace('\n20\n', '\n'), 'should be a group code'],
    ['a value that is no number', file(line(0, 0, 1, 1)).replace('\n11\n1\n', '\n11\nx\n'), 'line 36: not a number: x'],
    ['a value beyond measure', file(circle(1e300, 0, 1)), 'not a number: 1e+300'],
    ['a radius of nothing', file(circle(0, 0, 0)), 'radius'],
    [
      'no end to a line',
      file([
        [0, 'LINE'],
        [8, '0'],
        [10, 1],
        [20, 1],
        [11, 1],
      ]),
      'has no group 21',
    ],
    ['a drawing without entities', text([...section('HEADER', []), [0, 'EOF']]), 'no ENTITIES section'],
    ['a tilted circle', file(circle(0, 0, 9, [210, 0], [220, 1], [230, 0])), 'does not lie flat'],
    [
      'a mesh',
      file([
        [0, 'POLYLINE'],
        [8, '0'],
        [70, 16],
      ]),
      'mesh',
    ],
    [
      'a spline of fit points',
      file([
        [0, 'SPLINE'],
        [8, '0'],
        [71, 3],
        [11, 0],
        [21, 0],
      ]),
      'fit points only',
    ],
    [
      'a spline short of knots',
      file([
        [0, 'SPLINE'],
        [8, '0'],
        [71, 3],
        [40, 0],
        [10, 0],
        [20, 0],
      ]),
      'do not make degree 3',
    ],
    [
      'a block that holds itself',
      file(
        [
          [0, 'INSERT'],
          [8, '0'],
          [2, 'a'],
          [10, 0],
          [20, 0],
        ],
        { blocks: endless },
      ),
      'block a holds itself',
    ],
    [
      'a block that is not there',
      file([
        [0, 'INSERT'],
        [8, '0'],
        [2, 'z'],
        [10, 0],
        [20, 0],
      ]),
      'block z is not in the file',
    ],
    [
      'a block a million times',
      file(
        [
          [0, 'INSERT'],
          [8, '0'],
          [2, 'a'],
          [70, 1e6],
          [10, 0],
          [20, 0],
        ],
        { blocks: endless },
      ),
      'repeats its block',
    ],
    ['light years', file(rest, { unit: 19 }), 'unit 19'],
  ])('%s', (_, source, place) => {
    const { value, findings } = readOutline(source, options);
    expect(value).toBeNull();
    expect(
      inWords(findings)
        .filter(({ level }) => level === 'error')
        .map(({ message }) => message)
        .join('\n'),
    ).toContain(place);
  });

  it('a mistake after any number of remarks still refuses the drawing', () => {
    const odd = Array.from({ length: 60 }, (_, index): Group[] => [
      [0, `ODD${index}`],
      [8, '0'],
    ]).flat();
    const { value, findings } = readOutline(file([...odd, ...circle(0, 0, 0)]), options);
    expect(value).toBeNull();
    expect(findings.filter(({ level }) => level === 'error').map(({ code }) => code)).toEqual(['dxf-broken']);
  });

  it('no text makes it throw or hang', () => {
    const whole = file([...rest, ...circle(40, 20, 5), ...arc([3, 3, 1], 0, 90)]);
    fc.assert(
      fc.property(fc.nat(whole.length), fc.nat(40), fc.string({ maxLength: 12, unit: 'binary' }), (at, cut, put) => {
        const { value, findings } = readOutline(whole.slice(0, at) + put + whole.slice(at + cut), options);
        expect(value !== null || findings.some(({ level }) => level === 'error')).toBe(true);
      }),
      { numRuns: 300, seed: 1 },
    );
  });
});
