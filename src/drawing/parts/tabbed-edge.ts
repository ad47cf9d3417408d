import type { Tab } from '../../design/built/tabs';

/**
 * The straight edge of a board from (−half, 0) to (half, 0), with tabs reaching `depth` below it; mm. Tabs do not overlap; one as
 * wide as the edge lowers the whole of it. Beside each tab the edge is notched by `relief` each way, so that what a round beam leaves
 * in the corner does not hold the edge off.
 */
export function tabbedEdge(half: number, tabs: readonly Tab[], depth: number, relief = 0): [number, number][] {
  const sorted = depth > 0 ? [...tabs].sort((a, b) => a.offset - b.offset) : [];
  const corners = sorted.flatMap(({ offset, width }): [number, number][] => {
    const [left, right] = [offset - width / 2, offset + width / 2];
    return [
      [left - relief, 0],
      [left - relief, relief],
      [left, relief],
      [left, -depth],
      [right, -depth],
      [right, relief],
      [right + relief, relief],
      [right + relief, 0],
    ];
  });
  const all: [number, number][] = [[-half, 0], ...corners, [half, 0]];
  return all.filter(([x, y], index) => index === 0 || x !== all[index - 1]?.[0] || y !== all[index - 1]?.[1]);
}
