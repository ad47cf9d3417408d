import type { Shape } from '../../src/base/drawing';

/** How many pairs of marks, or of a mark and an outline's side, run over one another for more than a point. */
export function doubled(shapes: readonly Shape[]): number {
  const lines: [number, number, number, number][] = [];
  for (const shape of shapes) {
    if (shape.kind === 'line') lines.push([...shape.from, ...shape.to] as [number, number, number, number]);
    if (shape.kind === 'loop') {
      shape.vertices.forEach((from, index) => {
        const to = shape.vertices[(index + 1) % shape.vertices.length];
        if (to && from.bulge === 0) lines.push([from.x, from.y, to.x, to.y]);
      });
    }
  }
  let count = 0;
  lines.forEach(([ax, ay, bx, by], index) => {
    const length = Math.hypot(bx - ax, by - ay);
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    for (const [cx, cy, dx, dy] of lines.slice(index + 1)) {
      const aside = (x: number, y: number): number => Math.abs((x - ax) * uy - (y - ay) * ux);
      const along = (x: number, y: number): number => (x - ax) * ux + (y - ay) * uy;
      const [from, to] = [along(cx, cy), along(dx, dy)].sort((p, q) => p - q) as [number, number];
      if (aside(cx, cy) < 1e-3 && aside(dx, dy) < 1e-3 && Math.min(to, length) - Math.max(from, 0) > 1e-3) count++;
    }
  });
  return count;
}
