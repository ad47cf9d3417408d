/** Looks along the interval before narrowing: enough to tell the hollows of a sum of a few squares apart. */
const LOOKS = 64;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Golden sections: to 1e-10 of the interval, a hundredth of what a double tells of where a smooth function is least. */
const STEPS = 40;

/**
 * Where a continuous function is least on [low, high], ends included: the lowest of evenly spaced looks, then golden sections on either
 * side of it. The place is good to about the square root of a double's precision; the value there is never above either end's.
 * Source: Kiefer, “Sequential minimax search for a maximum”, Proc. AMS 4 (1953).
 */
export function minimumBetween(f: (x: number) => number, low: number, high: number): number {
  const at = (look: number): number => low + ((high - low) * look) / LOOKS;
  let best = { x: low, y: f(low) };
  const keep = (x: number): number => {
    const y = f(x);
    if (y < best.y) best = { x, y };
    return y;
  };
  for (let look = 1; look <= LOOKS; look++) keep(at(look));
  const step = (high - low) / LOOKS;
  let a = Math.max(low, best.x - step);
  let b = Math.min(high, best.x + step);
  let left = b - GOLDEN * (b - a);
  let right = a + GOLDEN * (b - a);
  let atLeft = keep(left);
  let atRight = keep(right);
  for (let count = 0; count < STEPS; count++) {
    if (atLeft <= atRight) {
      b = right;
      right = left;
      atRight = atLeft;
      left = b - GOLDEN * (b - a);
      atLeft = keep(left);
    } else {
      a = left;
      left = right;
      atLeft = atRight;
      right = a + GOLDEN * (b - a);
      atRight = keep(right);
    }
  }
  return best.x;
}
