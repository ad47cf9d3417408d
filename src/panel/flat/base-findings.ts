import { loopArea } from '../../base/area';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { corner } from '../../base/outline';
import type { BuiltUp } from './built-up';

export function noRoomInBase(): Finding {
  return finding('base-too-small', 'base.corners');
}

export function baseFindings({ base }: BuiltUp): Finding[] {
  const count = base.corners.length;
  if (count < 3 || base.edges.length !== count) {
    return [finding('base-edges', 'base.edges', { corners: count, edges: base.edges.length })];
  }
  if (new Set(base.edges).size !== count || base.edges.some((name) => name === '' || name.includes('.'))) {
    return [finding('edge-names', 'base.edges')];
  }
  const area = loopArea(base.corners.map((place) => corner(place)));
  if (!(area > 0)) {
    return [finding('base-clockwise', 'base.corners')];
  }
  return [];
}

export function cornerNames({ base, corners }: BuiltUp): Finding[] {
  return corners.flatMap(({ between: [a, b] }) => {
    const [i, j] = [base.edges.indexOf(a), base.edges.indexOf(b)];
    const count = base.edges.length;
    if (i >= 0 && j >= 0 && ((i + 1) % count === j || (j + 1) % count === i)) return [];
    return [finding('no-such-corner', `corners.${a}/${b}`, { first: a, second: b, edges: base.edges })];
  });
}
