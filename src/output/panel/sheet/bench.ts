import type { Point } from '../../../base/polygon';

/** Bench that a bend wants, mm: along the form, behind its front and before it. */
export interface BenchRoom {
  readonly along: number;
  readonly behind: number;
  readonly ahead: number;
}

/** Room for the flat sheet (`outline` from the held tangent line: along it, and toward the pulled side) and for the form on it. */
export function benchFor(
  outline: readonly Point[],
  form: { readonly along: number; readonly behind: number },
): BenchRoom {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return {
    along: Math.max(form.along, Math.max(...xs) - Math.min(...xs)),
    behind: Math.max(form.behind, -Math.min(...ys)),
    ahead: Math.max(0, ...ys),
  };
}
