import type { Vertex } from './drawing';

/**
 * The points of a closed loop with its arcs as chords that stray from them by at most `chordError` mm.
 * The first point is not repeated.
 */
export function flattenLoop(vertices: readonly Vertex[], chordError: number): [number, number][] {
  return vertices.flatMap((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? vertex;
    return [[vertex.x, vertex.y] as [number, number], ...arcPoints(vertex, next, chordError)];
  });
}

/** Points strictly between two corners along the arc between them. */
function arcPoints(from: Vertex, to: Vertex, chordError: number): [number, number][] {
  if (from.bulge === 0) return [];
  const included = 4 * Math.atan(from.bulge);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = chord / (2 * Math.abs(Math.sin(included / 2)));
  const widest = 2 * Math.acos(Math.max(0, 1 - chordError / radius));
  const count = Math.max(1, Math.ceil(Math.abs(included) / Math.max(widest, 1e-4)));
  // Centre: from the chord's middle, square to it, by radius·cos(included/2), to the left for a counter-clockwise arc.
  const side = ((Math.cos(included / 2) * radius) / chord) * Math.sign(from.bulge);
  const centreX = (from.x + to.x) / 2 - (to.y - from.y) * side;
  const centreY = (from.y + to.y) / 2 + (to.x - from.x) * side;
  const start = Math.atan2(from.y - centreY, from.x - centreX);
  return Array.from({ length: count - 1 }, (_, index) => {
    const angle = start + (included * (index + 1)) / count;
    return [centreX + radius * Math.cos(angle), centreY + radius * Math.sin(angle)];
  });
}
