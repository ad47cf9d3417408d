import type { Tab } from '../joints/joints';

/**
 * The straight edge of a board from (−half, 0) to (half, 0), with tabs reaching `depth` below it; mm. Tabs do not overlap; one as
 * wide as the edge lowers the whole of it.
 */
export function tabbedEdge(half: number, tabs: readonly Tab[], depth: number): [number, number][] {
  const sorted = depth > 0 ? [...tabs].sort((a, b) => a.offset - b.offset) : [];
  const corners = sorted.flatMap(({ offset, width }): [number, number][] => {
    const [left, right] = [offset - width / 2, offset + width / 2];
    return [
      [left, 0],
      [left, -depth],
      [right, -depth],
      [right, 0],
    ];
  });
  const all: [number, number][] = [[-half, 0], ...corners, [half, 0]];
  return all.filter(([x, y], index) => index === 0 || x !== all[index - 1]?.[0] || y !== all[index - 1]?.[1]);
}
