import { flattenLoop } from '../../base/flatten';
import type { Shape } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import { InternalError } from '../../base/errors';
import type { Job } from '../../job/job';
import type { BlockLayer } from '../../design/block/finishing-block';
import { checkPart } from '../parts/check-part';
import { labelLength } from '../parts/lengths';
import type { Part } from '../parts/part';
import { circle, label, mark } from '../parts/shapes';
import { layerCorners } from '../../design/block/block-shape';
import type { FinishingBlock } from '../../design/block/finishing-block';
import { outline } from '../../base/outline';
import { stackFirst } from './room';

/** Length of the marks that show where arc and leg edges meet, mm. */
const TICK = 4;
const LETTERS = 5;
/** Kept along the leg edges for their own labels, mm. */
const LEG_STRIP = 8;

/** Every layer of the finishing block as a piece of board to cut, from A to B, checked. None without a block. */
export function drawBlock(block: FinishingBlock | null, job: Job): Part[] {
  if (!block) return [];
  const { block: choice } = job;
  if (!choice) throw new InternalError('a finishing block the job does not ask for');
  return block.layers.map((layer, index): Part => {
    const part: Part = {
      id: layer.name,
      kind: 'block',
      name: `Finishing block, layer ${index + 1} of ${block.layers.length}`,
      stock: choice.board.stock,
      thickness: layer.thickness,
      drawing: { shapes: drawLayer(block, layer, index, job) },
    };
    checkPart(part);
    return part;
  });
}

/** A layer at 1:1, seen on its contact face, as {@link layerCorners}; the dowel holes lie at the same place in every layer. */
function drawLayer(block: FinishingBlock, layer: BlockLayer, index: number, { units, bend }: Job): Shape[] {
  const { wrap, legs, base, holes } = block;
  const edge = outline(layerCorners({ wrap, legs, base, radius: layer.radius, contact: layer.contact }));
  const half = wrap / 2;
  const tangents = [-1, 1].map((side) => {
    const [x, y] = [side * Math.sin(half), Math.cos(half)];
    return mark([layer.radius * x, layer.radius * y], [(layer.radius - TICK) * x, (layer.radius - TICK) * y]);
  });
  const lines = [
    `BLOCK ${index + 1} OF ${block.layers.length}`,
    `R ${labelLength(layer.radius, units)}`,
    `THIS FACE TO END ${layer.contact}`,
  ];
  const holeTop = Math.max(...holes.map(({ y, diameter }) => y + diameter / 2)) + 2;
  const clearOfLegs = flattenLoop(
    layerCorners({ wrap, legs, base, radius: layer.radius - LEG_STRIP, contact: layer.contact }),
    0.05,
  );
  return [
    edge,
    ...holes.map(({ x, y, diameter }) => circle('hole', x, y, diameter)),
    ...tangents,
    ...stackFirst(clearOfLegs, [lines, lines.slice(0, 2)], LETTERS, { low: holeTop }),
    ...legLabels(layer, { half, legs, whole: bend.legs, units }),
  ];
}

/** Each leg edge's name and its length, and the leg's own where that is more, along it just inside. */
function legLabels(
  { radius, contact }: BlockLayer,
  {
    half,
    legs,
    whole,
    units,
  }: {
    readonly half: number;
    readonly legs: FinishingBlock['legs'];
    readonly whole: FinishingBlock['legs'];
    readonly units: LengthUnit;
  },
): Shape[] {
  return (['held', 'free'] as const).flatMap((leg) => {
    const side = (leg === 'free') === (contact === 'B') ? 1 : -1;
    const height = Math.min(3.5, legs[leg] / 6);
    const [normal, along]: [[number, number], [number, number]] = [
      [side * Math.sin(half), Math.cos(half)],
      [side * Math.cos(half), -Math.sin(half)],
    ];
    const [inside, down] = [radius - height - 2, legs[leg] / 2];
    const at = [inside * normal[0] + down * along[0], inside * normal[1] + down * along[1]] as const;
    return label(
      legs[leg] < whole[leg]
        ? `${leg.toUpperCase()} LEG: ${labelLength(legs[leg], units)} OF ${labelLength(whole[leg], units)}`
        : `${leg.toUpperCase()} LEG: ${labelLength(legs[leg], units)}`,
      { x: at[0], y: at[1], width: legs[leg] - 4, tallest: height, angle: -side * half },
    );
  });
}
