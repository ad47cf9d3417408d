import { compose, IDENTITY, moveBy, stretch, turn, type Affine } from '../affine';
import { readNumbers } from './numbers';

const CALL = /^\s*,?\s*([a-zA-Z]+)\s*\(([^()]*)\)/u;
/** More steps than this in one attribute are no drawing. */
const MOST_STEPS = 1000;

/** A `transform` attribute → one map; null where it cannot be read. Source: SVG 1.1, "The transform attribute". */
export function readTransform(text: string): Affine | null {
  let rest = text.trim();
  let map: Affine | null = IDENTITY;
  for (let steps = 0; rest !== '' && map; steps++) {
    const match = CALL.exec(rest);
    const values = match && readNumbers((match[2] ?? '').replaceAll(/(\d|\.)(?:deg|px)\b/gu, '$1'));
    const step = values && steps < MOST_STEPS ? stepOf((match[1] ?? '').toLowerCase(), values) : null;
    map = step && compose(map, step);
    rest = rest.slice(match?.[0].length ?? 0).trim();
  }
  return map && Object.values(map).every(Number.isFinite) ? map : null;
}

function stepOf(name: string, values: readonly number[]): Affine | null {
  const [a = 0, b, c, d = 1, e = 0, f = 0] = values;
  const count = values.length;
  const angle = (a * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return count === 6 ? { a, b: b ?? 0, c: c ?? 0, d, e, f } : null;
    case 'translate':
      return count === 1 || count === 2 ? moveBy(a, b ?? 0) : null;
    case 'scale':
      return count === 1 || count === 2 ? stretch(a, b ?? a) : null;
    case 'rotate':
      return count === 1 || count === 3 ? about(b ?? 0, c ?? 0, turn(angle)) : null;
    case 'skewx':
      return count === 1 ? { ...IDENTITY, c: Math.tan(angle) } : null;
    case 'skewy':
      return count === 1 ? { ...IDENTITY, b: Math.tan(angle) } : null;
    default:
      return null;
  }
}

function about(x: number, y: number, map: Affine): Affine {
  return compose(moveBy(x, y), compose(map, moveBy(-x, -y)));
}
