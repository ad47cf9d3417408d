/** Two sheets bent together, one inside the other, mm and radians. `neutral`: the neutral line's factor K. */
export interface Nested {
  /** Inside radius of the inner sheet. */
  readonly radius: number;
  readonly inner: number;
  readonly outer: number;
  readonly neutral: number;
}

/**
 * Where a seam runs over a bend the outer sheet's flat is the longer one: by how much over a wrap, and how many times its pitch is
 * the inner sheet's. The outer sheet's inside radius is R + t₁, so its neutral line lies t₁ + K·(t₂ − t₁) outside the inner one's.
 */
export function acrossBend(
  { radius, inner, outer, neutral }: Nested,
  wrap: number,
): { readonly longer: number; readonly pitch: number } {
  const apart = inner + neutral * (outer - inner);
  return { longer: wrap * apart, pitch: 1 + apart / (radius + neutral * inner) };
}
