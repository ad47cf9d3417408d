import { at } from './at';

/** Words further apart than this share of their length are not taken for one another's misspelling. */
const FURTHEST = 0.45;

/**
 * The nearest of some known words to a mistyped one, or null where none is near. Distance: letters added, dropped, changed or
 * swapped with a neighbour (optimal string alignment).
 */
export function nearest(word: string, known: readonly string[]): string | null {
  if (word.length > 60) return null;
  const ranked = known
    .map((candidate) => ({ candidate, distance: wordDistance(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance);
  const [best] = ranked;
  if (!best || best.distance > Math.ceil(FURTHEST * Math.max(word.length, best.candidate.length))) return null;
  return best.candidate;
}

/** Letters added, dropped, changed or swapped with a neighbour between two words (optimal string alignment). */
export function wordDistance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const above = at(rows, i - 1);
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(at(above, j) + 1, at(row, j - 1) + 1, at(above, j - 1) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(at(rows, i - 2), j - 2) + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return at(at(rows, a.length), b.length);
}
