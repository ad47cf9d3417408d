import type { Place } from '../../base/side';
import { Troubles } from './trace';
import type { Staged } from '../../base/findings';

/** A length known on the part: between two places of the drawing (mm as it was read) it is `is` mm. */
export interface Reference {
  readonly between: readonly [Place, Place];
  readonly is: number;
}

/** How a drawing is stretched to true size. */
export interface Scale {
  readonly x: number;
  readonly y: number;
  /** How many times an error in a reference length comes out in the scale; 1 for a plain factor and for one reference. */
  readonly growth: number;
  /** The largest relative difference between a reference and its length once scaled; null where none is left to check with. */
  readonly residual: number | null;
}

/** An error in a reference length may grow so many times (panel.md, section 1). */
const MOST_GROWTH = 4;
/** References that disagree by more than this share contradict one another. */
const MOST_RESIDUAL = 0.01;
/** Axes stretched differently by more than this share are worth a second look. */
const UNEVEN = 0.02;

interface Row {
  /** Squares of the reference's run along x and y over its true length squared. */
  readonly x: number;
  readonly y: number;
}

/**
 * References → scale. One gives both axes the same factor; two or more an axis each its own, by least squares of the relative differences.
 * Lᵢ² = sx²·dx² + sy²·dy² sees neither shear nor perspective. Refused: a reference without length, references that let an error grow more
 * than 4 times, that contradict one another by more than 1 %.
 */
export function scaleFrom(references: readonly Reference[], path: string): Staged<Scale | null> {
  const troubles = new Troubles(path);
  for (const [index, { between, is }] of references.entries()) {
    const run = lengthOf(between);
    if (!(is > 0 && run > 0 && Number.isFinite(is / run))) {
      troubles.say('reference-length', { reference: index + 1, trouble: is > 0 ? 'same place' : 'no length' });
    }
  }
  if (references.length === 0) troubles.say('reference-missing');
  const value = troubles.refused ? null : solve(references, troubles);
  return { value: troubles.refused ? null : value, findings: troubles.findings };
}

function lengthOf([p, q]: Reference['between']): number {
  return Math.hypot(q.x - p.x, q.y - p.y);
}

function solve(references: readonly Reference[], troubles: Troubles): Scale | null {
  const [only] = references;
  if (only && references.length === 1) {
    const factor = only.is / lengthOf(only.between);
    return { x: factor, y: factor, growth: 1, residual: null };
  }
  const rows = references.map(({ between: [p, q], is }): Row => ({
    x: ((q.x - p.x) / is) ** 2,
    y: ((q.y - p.y) / is) ** 2,
  }));
  const squares = leastSquares(rows);
  const scale = squares && squares.x > 0 && squares.y > 0 ? { x: Math.sqrt(squares.x), y: Math.sqrt(squares.y) } : null;
  const growth = scale ? growthOf(rows, scale) : Infinity;
  if (!scale || growth > MOST_GROWTH) {
    troubles.say('references-weak', { growth: Number.isFinite(growth) ? growth : null, most: MOST_GROWTH });
    return null;
  }
  const residual = references.length > 2 ? checkResiduals(rows, scale, troubles) : null;
  if (Math.abs(scale.x / scale.y - 1) > UNEVEN) warnUneven(scale, troubles);
  return { ...scale, growth, residual };
}

/** Σ(x·sx² + y·sy² − 1)² least; null where the references do not tell the axes apart. */
function leastSquares(rows: readonly Row[]): { readonly x: number; readonly y: number } | null {
  const sum = (of: (row: Row) => number): number => rows.reduce((total, row) => total + of(row), 0);
  const [xx, xy, yy] = [sum(({ x }) => x * x), sum(({ x, y }) => x * y), sum(({ y }) => y * y)];
  const [x, y] = [sum((row) => row.x), sum((row) => row.y)];
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-12 * xx * yy)) return null;
  return { x: (yy * x - xy * y) / determinant, y: (xx * y - xy * x) / determinant };
}

/**
 * With cᵢ = cos²θᵢ of a reference as it truly lies, δL/L = cᵢ·δsx/sx + (1 − cᵢ)·δsy/sy: the longer row of the inverse is how far one unit
 * of error in every length comes out in an axis.
 */
function growthOf(rows: readonly Row[], scale: { readonly x: number; readonly y: number }): number {
  const shares = rows.map(({ x, y }) => (x * scale.x ** 2) / (x * scale.x ** 2 + y * scale.y ** 2));
  const sum = (of: (share: number) => number): number => shares.reduce((total, share) => total + of(share), 0);
  const [xx, xy, yy] = [sum((c) => c * c), sum((c) => c * (1 - c)), sum((c) => (1 - c) ** 2)];
  const determinant = xx * yy - xy * xy;
  return determinant > 0 ? Math.sqrt(Math.max(xx, yy) / determinant) : Infinity;
}

function checkResiduals(
  rows: readonly Row[],
  scale: { readonly x: number; readonly y: number },
  troubles: Troubles,
): number {
  const away = rows.map(({ x, y }) => Math.sqrt(x * scale.x ** 2 + y * scale.y ** 2) - 1);
  const worst = away.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0);
  if (Math.abs(worst) > MOST_RESIDUAL) {
    troubles.say('references-contradict', {
      reference: away.indexOf(worst) + 1,
      off: Math.abs(worst),
      longer: worst > 0 ? 'longer' : 'shorter',
    });
  }
  return Math.abs(worst);
}

function warnUneven({ x, y }: { readonly x: number; readonly y: number }, troubles: Troubles): void {
  troubles.say('references-uneven', { off: Math.abs(x / y - 1), more: x > y ? 'more' : 'less' });
}
