/** Offsets from the centre line as one says them: `±17.1 mm`, `0 and ±45.0 mm`. */
export function bothSides(offsets: readonly number[], length: (mm: number) => string): string {
  const sizes = [...new Set(offsets.map((offset) => Number(Math.abs(offset).toFixed(6))))].sort((a, b) => a - b);
  return sizes.map((size) => (size === 0 ? '0 (on it)' : `±${length(size)}`)).join(' and ');
}
