import { compose, IDENTITY, moveBy, stretch, type Affine } from '../affine';
import { readNumbers } from './numbers';

/** The part of the page an `svg` element draws in, in the units outside it. */
export interface Viewport {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A `viewBox` attribute; null where it is none or has no size. */
export function readViewBox(text: string): ViewBox | null {
  const [x = 0, y = 0, width = 0, height = 0, ...more] = readNumbers(text) ?? [];
  return width > 0 && height > 0 && more.length === 0 ? { x, y, width, height } : null;
}

/** User units → the units outside, as `preserveAspectRatio` asks. Source: SVG 1.1, "Coordinate systems", 7.8. */
export function viewBoxMap(viewport: Viewport, box: ViewBox | null, aspect: string): Affine {
  const shift = moveBy(viewport.x, viewport.y);
  if (!box) return shift;
  const [wide, high] = [viewport.width / box.width, viewport.height / box.height];
  const words = aspect.trim().split(/\s+/u);
  const align = words.find((word) => /^(?:none|x(?:Min|Mid|Max)Y(?:Min|Mid|Max))$/u.test(word)) ?? 'xMidYMid';
  const even = words.includes('slice') ? Math.max(wide, high) : Math.min(wide, high);
  const [scaleX, scaleY] = align === 'none' ? [wide, high] : [even, even];
  const left = share(align.slice(1, 4)) * (viewport.width - box.width * scaleX);
  const top = share(align.slice(5, 8)) * (viewport.height - box.height * scaleY);
  const inside = align === 'none' ? IDENTITY : moveBy(left, top);
  return [inside, stretch(scaleX, scaleY), moveBy(-box.x, -box.y)].reduce(compose, shift);
}

function share(word: string): number {
  return word === 'Min' ? 0 : word === 'Max' ? 1 : 0.5;
}
