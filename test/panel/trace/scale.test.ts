import fc from 'fast-check';
import { near } from '../../helpers/near';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../helpers/in-words';
import { boundsOf } from '../../../src/base/bounds';
import { readOutline } from '../../../src/panel/trace/read-outline';
import { scaleFrom, type Reference } from '../../../src/panel/trace/scale';

/** A reference from the origin at an angle (degrees), as long in the drawing as `drawn` says along each axis, `is` on the part. */
function reference(degrees: number, drawn: { x: number; y: number } = { x: 1, y: 1 }, length = 300): Reference {
  const angle = (degrees * Math.PI) / 180;
  const [x, y] = [length * Math.cos(angle) * drawn.x, length * Math.sin(angle) * drawn.y];
  return {
    between: [
      { x: 7, y: -3 },
      { x: 7 + x, y: -3 + y },
    ],
    is: length,
  };
}

const scale = (...references: readonly Reference[]) => scaleFrom(references, 'outline.scale');
const codes = (...references: readonly Reference[]) =>
  scale(...references).findings.map(({ code, level }) => `${level} ${code}`);

describe('scale by reference lengths', () => {
  it('one gives both axes the same factor', () => {
    expect(scale(reference(30, { x: 0.5, y: 0.5 })).value).toEqual({
      x: near(2, 12),
      y: near(2, 12),
      growth: 1,
      residual: null,
    });
  });

  it('two give an axis each, whichever way they lie', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: 0.9, max: 1.1, noNaN: true }),
        fc.integer({ min: -20, max: 20 }),
        fc.integer({ min: 70, max: 110 }),
        (x, ratio, first, second) => {
          const { value } = scale(reference(first, { x, y: x * ratio }), reference(second, { x, y: x * ratio }, 170));
          expect(value?.x).toBeCloseTo(1 / x, 9);
          expect(value?.y).toBeCloseTo(1 / (x * ratio), 9);
        },
      ),
      { numRuns: 100, seed: 1 },
    );
  });

  // panel.md, section 1; the growth is the longer row of the inverse of [[cos²θ₁, sin²θ₁], [cos²θ₂, sin²θ₂]].
  it.each([
    [0, 90, 1.0],
    [20, 70, 1.2],
    [30, 45, 3.6],
  ])('lines at %i° and %i° let an error grow %f times', (first, second, growth) => {
    expect(scale(reference(first), reference(second)).value?.growth).toBeCloseTo(growth, 1);
  });

  it.each([
    [0, 30, '5 times'],
    [0, 16, '17.92 times'],
    [45, -45, 'do not tell the two axes apart'],
    [10, 10, 'do not tell the two axes apart'],
  ])('lines at %i° and %i° are refused: %s', (first, second, words) => {
    const { value, findings } = scale(reference(first), reference(second));
    expect(value).toBeNull();
    expect(inWords(findings)).toEqual([
      expect.objectContaining({
        code: 'references-weak',
        level: 'error',
        message: expect.stringContaining(words) as unknown,
      }),
    ]);
  });

  it('that growth is what an error of one in a thousand in a length does', () => {
    const [a, b] = [reference(30), reference(45)];
    const plain = scale(a, b).value;
    const moved = [scale({ ...a, is: a.is * 1.001 }, b).value, scale(a, { ...b, is: b.is * 1.001 }).value];
    const inY = moved.map((one) => ((one?.y ?? 0) / (plain?.y ?? 1) - 1) / 0.001);
    expect(Math.hypot(...inY)).toBeCloseTo(plain?.growth ?? 0, 1);
  });

  it('a third says how well they agree; more than 1 % is a contradiction', () => {
    const third = reference(45);
    const good = scale(reference(0), reference(90), { ...third, is: third.is * 1.006 });
    expect(good.value?.residual).toBeGreaterThan(0.002);
    expect(good.value?.residual).toBeLessThan(0.006);
    expect(good.findings).toEqual([]);
    expect(codes(reference(0), reference(90), { ...third, is: third.is * 1.05 })).toContain(
      'error references-contradict',
    );
  });

  it('a drawing stretched more one way than the other is pointed out', () => {
    expect(codes(reference(0, { x: 1, y: 1 }), reference(90, { x: 1, y: 0.95 }))).toEqual([
      'warning references-uneven',
    ]);
  });

  it('references that are none', () => {
    expect(
      codes({
        between: [
          { x: 1, y: 1 },
          { x: 1, y: 1 },
        ],
        is: 5,
      }),
    ).toEqual(['error reference-length']);
    expect(
      codes({
        between: [
          { x: 1, y: 1 },
          { x: 2, y: 1 },
        ],
        is: 0,
      }),
    ).toEqual(['error reference-length']);
    expect(
      codes({
        between: [
          { x: 1, y: 1 },
          { x: 2, y: 1 },
        ],
        is: NaN,
      }),
    ).toEqual(['error reference-length']);
    expect(codes()).toEqual(['error reference-missing']);
  });
});

describe('an outline traced at half size', () => {
  const path = 'M20 20C60 10 180 12 240 25L250 60A40 40 0 0 1 210 100L40 110C25 80 22 50 20 20Z';
  const svg = (factor: number): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="${300 * factor}mm" height="${150 * factor}mm" viewBox="0 0 300 150"><path d="${path}"/><circle cx="60" cy="60" r="4"/></svg>`;
  const size = (text: string, references?: readonly Reference[]) => {
    const { value, findings } = readOutline(text, {
      path: 'outline.file',
      format: 'svg',
      ...(references ? { scale: references } : {}),
    });
    if (!value)
      throw new Error(
        inWords(findings)
          .map(({ message }) => message)
          .join(),
      );
    const { minX, minY, maxX, maxY } = boundsOf({
      shapes: [{ kind: 'loop', operation: 'outline', vertices: value.outline.vertices }],
    });
    return { width: maxX - minX, height: maxY - minY, residual: value.scale.residual };
  };

  it('comes back within 0.05 % by two lengths, a third says so', () => {
    const whole = size(svg(1));
    // Places as read from the half-size page: x as drawn, y up from its lower edge.
    const at = (x: number, y: number) => ({ x: x / 2, y: (150 - y) / 2 });
    const along: Reference = { between: [at(20, 20), at(240, 25)], is: Math.hypot(220, 5) };
    const across: Reference = { between: [at(20, 20), at(40, 110)], is: Math.hypot(20, 90) };
    const third: Reference = { between: [at(250, 60), at(40, 110)], is: Math.hypot(210, 50) };
    const half = size(svg(0.5), [along, across, third]);
    expect(Math.abs(half.width / whole.width - 1)).toBeLessThan(0.0005);
    expect(Math.abs(half.height / whole.height - 1)).toBeLessThan(0.0005);
    expect(half.residual).toBeLessThan(1e-9);
  });
});
