import type { Backing, Station } from '../../design/fixture/fixture';
import { el, type Element } from '../xml';
import { line, num, path, PEN, word, type PaperPoint } from './board-ink';
import { dashed, level, radial, sized, upright } from './dimensions';
import type { Shop } from './shop';

/** Drawings of single boards that stand on the spine are no wider and no higher than this, mm of paper. */
const WIDE = 46;
const HIGH = 44;
const FILL = '#f0e0c0';
const EDGE = { fill: FILL, stroke: PEN.part, 'stroke-width': '0.35' } as const;

/** A station by its radius, and where its pilots go. */
export function stationFigure({ say, layout, joints }: Shop, { name, radius, farRadius, screws }: Station): Element {
  const r = Math.min(WIDE / 2, HIGH);
  const scale = radius / r;
  const stepped = layout.layers.stations > 1 && farRadius !== radius;
  const outermost = Math.max(0, ...screws.map(({ offset }) => offset));
  // A router's station has its edge in a groove, that much behind its diameter; its pilots count from there.
  const groove = joints.with === 'router' ? joints.depth : 0;
  const edge = r + groove / scale;
  const deepest = Math.max(0, ...screws.map(({ pilotDepth }) => pilotDepth)) + groove;
  const tip: PaperPoint = [r + r * Math.cos(Math.PI / 3.2), r - r * Math.sin(Math.PI / 3.2)];
  return sized(`Station ${name}`, { left: 12, right: 30, top: 4, bottom: 16 }, { width: 2 * r, height: edge }, [
    el('path', { d: `M0 ${num(r)}A${num(r)} ${num(r)} 0 0 1 ${num(2 * r)} ${num(r)}V${num(edge)}H0Z`, ...EDGE }),
    ...pilots(
      screws.map(({ offset, pilotDepth }) => ({
        from: [r + offset / scale, edge],
        to: [r + offset / scale, r - pilotDepth / scale],
      })),
    ),
    line([r, edge], [r, 0], 0.13, PEN.thin),
    ...(groove > 0 ? [dashed([0, r], [2 * r, r])] : []),
    word(name, [r * 0.76, r * 0.7], 3),
    ...radial([r, r], tip, ['radius to cut', say.length(radius), ...(stepped ? ['of its smallest layer'] : [])]),
    ...(outermost > 0
      ? level([r, r + outermost / scale], edge + 5, edge, `screws ${say.length(outermost)} off the centre line`)
      : []),
    ...level([0, 2 * r], edge + 12, edge, `diameter ${say.length(2 * radius)}`),
    ...upright([edge - deepest / scale, edge], -4, r - outermost / scale, `pilot depth ${say.length(deepest)}`),
  ]);
}

/** A backing station by height and depth, its edge to the spine on the left. */
export function backingFigure({ say }: Shop, { name, width, depth, screws }: Backing): Element {
  const scale = Math.max(depth / WIDE, width / HIGH);
  const size = { width: depth / scale, height: width / scale };
  const middle = size.height / 2;
  const outermost = Math.max(0, ...screws.map(({ offset }) => offset));
  const deepest = Math.max(0, ...screws.map(({ pilotDepth }) => pilotDepth));
  return sized(`Backing station ${name}`, { left: 12, right: 10, top: 8, bottom: 9 }, size, [
    el('path', {
      d: path(
        [
          [0, 0],
          [size.width, 0],
          [size.width, size.height],
          [0, size.height],
        ],
        true,
      ),
      ...EDGE,
    }),
    ...pilots(
      screws.map(({ offset, pilotDepth }) => ({
        from: [0, middle - offset / scale],
        to: [pilotDepth / scale, middle - offset / scale],
      })),
    ),
    line([0, middle], [size.width, middle], 0.13, PEN.thin),
    word(name, [size.width * 0.85, middle * 0.2], 3),
    ...(outermost > 0 ? upright([middle - outermost / scale, middle], -4, 0, `screws ${say.length(outermost)}`) : []),
    ...upright([0, size.height], size.width + 4, size.width, `height ${say.length(width)}`),
    ...level([0, deepest / scale], -3, middle - outermost / scale, `pilot depth ${say.length(deepest)}`),
    ...level([0, size.width], size.height + 5, size.height, `depth (the foot) ${say.length(depth)}`),
  ]);
}

function pilots(holes: readonly { readonly from: PaperPoint; readonly to: PaperPoint }[]): Element[] {
  return holes.map(({ from, to }) => dashed(from, to, PEN.part));
}
