import fc from 'fast-check';
import { toRadians } from '../../src/base/angle';
import { plainBend, plainCorner, type BendSpec, type BuiltUp } from '../../src/panel/flat/built-up';

const edges = ['long', 'back', 'top', 'short'] as const;

const bends = fc.record({
  turn: fc.constantFrom('up' as const, 'up' as const, 'down' as const),
  angle: fc.integer({ min: 15, max: 120 }),
  radius: fc.integer({ min: 8, max: 60 }),
  taper: fc.oneof(fc.constant(0), fc.integer({ min: -12, max: 12 })),
  leg: fc.integer({ min: 15, max: 120 }),
  height: fc.boolean(),
});

/** Quadrilaterals with one to four bends, both turns, tapers, and now and then a bend on a leg; from sound to impossible. */
export const randomPanels: fc.Arbitrary<BuiltUp> = fc
  .record({
    width: fc.integer({ min: 150, max: 700 }),
    height: fc.integer({ min: 120, max: 500 }),
    skew: fc.oneof(fc.constant(0), fc.integer({ min: -40, max: 40 })),
    thickness: fc.constantFrom(0.8, 1, 1.2, 1.6, 2),
    measured: fc.constantFrom('flat' as const, 'inside' as const, 'outside' as const),
    on: fc.shuffledSubarray([...edges, 'rim'], { minLength: 1, maxLength: 4 }),
    bends: fc.array(bends, { minLength: 4, maxLength: 4 }),
    treat: fc.constantFrom(null, null, 'open' as const, 'lap' as const),
    square: fc.boolean(),
  })
  .map(({ width, height, skew, thickness, measured, on, bends: shapes, treat, square }) => {
    const standing = on.filter((edge) => edge !== 'rim');
    const first = standing[0];
    const names = [...standing, ...(on.includes('rim') && first ? [`${first}.rim`] : [])];
    const specs = names.map((name, index): BendSpec => specOf(name, shapes[index] ?? shapes[0], square));
    return {
      thickness,
      base: {
        corners: [
          [0, 0],
          [width, 0],
          [width - skew, height],
          [Math.abs(skew) / 2, height],
        ],
        edges,
        measured,
      },
      bends: specs,
      corners:
        treat === null ? [] : edges.map((edge, index) => ({ ...plainCorner, treat, between: pair(edge, index) })),
    } satisfies BuiltUp;
  });

function pair(edge: string, index: number): readonly [string, string] {
  return [edge, edges[(index + 1) % edges.length] ?? 'long'];
}

type Shape = { turn: 'up' | 'down'; angle: number; radius: number; taper: number; leg: number; height: boolean };

function specOf(on: string, shape: Shape | undefined, square: boolean): BendSpec {
  if (!shape) throw new Error('four shapes');
  const edge = edges.findIndex((name) => on.startsWith(name));
  const [before, next] = [edges[(edge + 3) % 4] ?? 'long', edges[(edge + 1) % 4] ?? 'long'];
  const to = Math.max(6, shape.radius + shape.taper);
  return {
    ...plainBend,
    on,
    turn: shape.turn,
    angle: toRadians(square ? 90 : shape.angle),
    radius: { [before]: shape.radius, [next]: to },
    reach: shape.height ? { height: shape.leg + 2 * Math.max(shape.radius, to) } : { leg: shape.leg },
  };
}
