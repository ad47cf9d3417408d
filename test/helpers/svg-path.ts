/** A path's `d` as a browser reads it: absolute M, L, A and Z, arcs turned into centres by the rules of the SVG standard. */
export interface PathArc {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly radius: number;
  readonly centre: readonly [number, number];
  /** Angle run through, radians, positive clockwise on paper (y down). */
  readonly sweep: number;
}
export interface PathLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly sweep: 0;
}
export type PathSide = PathArc | PathLine;

/** Sides of a path that is one closed loop, or one open line; throws on anything else. */
export function readPath(d: string): { readonly sides: readonly PathSide[]; readonly closed: boolean } {
  const commands = [...d.matchAll(/([A-Za-z])([^A-Za-z]*)/gu)].map(([, letter = '', rest = '']) => ({
    letter,
    numbers: (rest.match(/-?\d+(?:\.\d+)?/gu) ?? []).map(Number),
  }));
  if (commands.map(({ letter, numbers }) => letter + numbers.join(' ')).join('') !== d)
    throw new Error(`not plain M, L, A, Z: ${d}`);
  const sides: PathSide[] = [];
  let at: readonly [number, number] = [NaN, NaN];
  for (const [index, { letter, numbers }] of commands.entries()) {
    const [x = NaN, y = NaN] = numbers.slice(-2);
    const shape = `${letter}${numbers.length}`;
    if (shape === 'L2') sides.push({ from: at, to: [x, y], sweep: 0 });
    else if (shape === 'A7') sides.push(arc(at, [x, y], numbers));
    else if (!(shape === 'M2' && index === 0) && !(shape === 'Z0' && index === commands.length - 1))
      throw new Error(`unexpected ${shape} in ${d}`);
    at = [x, y];
  }
  return { sides, closed: commands.at(-1)?.letter === 'Z' };
}

/** Endpoint to centre parameters, SVG 1.1 appendix F.6.5 and F.6.6 (radii too small are scaled up), for a circle. */
function arc(
  from: readonly [number, number],
  to: readonly [number, number],
  [rx = NaN, ry = NaN, turn = NaN, large = NaN, positive = NaN]: readonly number[],
): PathArc {
  if (rx !== ry || turn !== 0) throw new Error('not a circle');
  const [halfX, halfY] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const radius = Math.max(rx, Math.hypot(halfX, halfY));
  const factor = (large === positive ? -1 : 1) * Math.sqrt(Math.max(0, radius ** 2 / (halfX ** 2 + halfY ** 2) - 1));
  const [asideX, asideY] = [factor * halfY, -factor * halfX];
  const centre = [asideX + (from[0] + to[0]) / 2, asideY + (from[1] + to[1]) / 2] as const;
  const angle = (point: readonly [number, number]): number => Math.atan2(point[1] - centre[1], point[0] - centre[0]);
  const run = (angle(to) - angle(from)) % (2 * Math.PI);
  const sweep = positive === 1 ? (run < 0 ? run + 2 * Math.PI : run) : run > 0 ? run - 2 * Math.PI : run;
  return { from, to, radius, centre, sweep };
}

/** Area within a closed path, positive where it runs clockwise on paper: polygon of the corners plus r²(θ − sin θ)/2 under each arc. */
export function pathArea(sides: readonly PathSide[]): number {
  return sides.reduce((sum, side) => {
    const segment = 'radius' in side ? (side.radius ** 2 * (side.sweep - Math.sin(side.sweep))) / 2 : 0;
    return sum + (side.from[0] * side.to[1] - side.to[0] * side.from[1]) / 2 + segment;
  }, 0);
}
