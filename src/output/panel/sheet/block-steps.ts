import { at } from '../../../base/at';
import type { Panel } from '../../../panel';
import type { Measures } from '../../shop-sheet/measures';
import type { NamedBlock } from '../corner-blocks';
import { sentences } from '../../sentences';

/** How a corner's block is made and used, step by step. */
export function blockSteps(
  { block, dowel }: NamedBlock,
  { panel, pair, say }: { readonly panel: Panel; readonly pair: boolean; readonly say: Measures },
): string[] {
  const count = block.layers.length;
  const [first, second] = block.between.map((number) => at(panel.bends, number));
  if (!first || !second) return [];
  const up = first.turn === 'up' ? 'marked' : 'other';
  return [
    sentences(
      `Cut its ${count} layers square-edged to their drawings, corners/, with both holes, ${say.tool(dowel)}${pair ? '; the left hand’s and the right’s are mirror images' : ''}.`,
      'Each is the inside of the corner at its own upper face.',
    ),
    `Glue them up on two dowels, layer 1 lowest, every face that says so up: ${say.length(block.height)} in all.`,
    sentences(
      'Work the steps off with rasp and sanding board, down to the upper edge of the layer below, which stays; the lowest layer to nothing at its lower edges, along the tangent lines.',
      'Round it across to the inside radius gauges of both bends; where they meet it has an edge.',
    ),
    sentences(
      `It stands on the ${up} face of the base and follows the bends ${first.name} and ${second.name} for ${say.length(block.reach)} from the corner of their tangent lines, flat where the base is.`,
      'Clamp it there when both are bent, and dress the root and the metal past the corner down on it, a little at a time.',
    ),
    'Clamp block and part before you strike; eye and ear protection on.',
  ];
}
