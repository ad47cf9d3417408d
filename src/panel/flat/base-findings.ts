import { loopArea } from '../../base/area';
import { error, type Finding } from '../../base/findings';
import { corner } from '../../base/outline';
import type { BuiltUp } from './built-up';

export function noRoomInBase(): Finding {
  const hint = 'make the base larger or the radii smaller';
  return error('base-too-small', 'base.corners', 'the bends leave no base between their tangent lines', hint);
}

export function baseFindings({ base }: BuiltUp): Finding[] {
  const count = base.corners.length;
  if (count < 3 || base.edges.length !== count) {
    const hint = 'give at least three corners and as many edges';
    return [
      error('base-edges', 'base.edges', 'edge i runs from corner i to the next: as many edges as corners', hint, {
        got: `${count} corners, ${base.edges.length} edges`,
      }),
    ];
  }
  if (new Set(base.edges).size !== count || base.edges.some((name) => name === '' || name.includes('.'))) {
    const hint = 'name each edge once, in a word without a full stop';
    return [error('base-edges', 'base.edges', 'an edge’s name is used twice, is empty or holds a full stop', hint)];
  }
  const area = loopArea(base.corners.map((place) => corner(place)));
  if (!(area > 0)) {
    return [error('base-clockwise', 'base.corners', 'the corners run clockwise', 'give them counter-clockwise')];
  }
  return [];
}

export function cornerNames({ base, corners }: BuiltUp): Finding[] {
  return corners.flatMap(({ between: [a, b] }) => {
    const [i, j] = [base.edges.indexOf(a), base.edges.indexOf(b)];
    const count = base.edges.length;
    if (i >= 0 && j >= 0 && ((i + 1) % count === j || (j + 1) % count === i)) return [];
    return [
      error('no-such-corner', `corners.${a}/${b}`, `${a} and ${b} do not meet`, 'name two edges side by side', {
        allowed: base.edges.join(', '),
      }),
    ];
  });
}
