import type { ToolRules } from '../../tables/tables';

/** A tab along a board's straight edge, mm. */
export interface Tab {
  /** Its middle, from the centre line. */
  readonly offset: number;
  readonly width: number;
}

/** A screw that tabs keep clear of: from the centre line, mm. */
interface InTheWay {
  readonly offset: number;
  readonly kind: { readonly headDiameter: number };
}

/**
 * Tabs along the straight edge of a board that reaches `half` to either side of the centre line, clear of the screws that hold it:
 * between its screws, or on either side of a single one; always alike on both sides. None where there is no room.
 */
export function tabsFor(half: number, screws: readonly InTheWay[], tools: ToolRules): Tab[] {
  const { jointWood, tabLeast, tabMost } = tools;
  const clear = Math.max(0, ...screws.map(({ kind }) => kind.headDiameter / 2)) + jointWood;
  const stops = [
    -half + jointWood,
    ...screws.flatMap(({ offset }) => [offset - clear, offset + clear]),
    half - jointWood,
  ];
  const gaps = stops.flatMap((low, index) => (index % 2 === 0 ? [{ low, high: stops[index + 1] ?? low }] : []));
  const between = screws.length > 1 ? gaps.slice(1, -1) : gaps;
  return between
    .map(({ low, high }): Tab => ({ offset: (low + high) / 2, width: Math.min(tabMost, high - low) }))
    .filter(({ width }) => width >= tabLeast);
}
