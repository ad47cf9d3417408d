import { at } from '../../base/at';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import type { CornerBlock, Panel } from '../../panel';
import { Extruder } from './extrude';
import { MESH_CHORD_ERROR } from './chords';
import { BOARD_COLOURS } from './form-meshes';
import type { Mesh } from './mesh';

/**
 * The layers of a corner's block as they are cut, square-edged with their dowels' holes, mm; each where it stands in the finished panel, on the base's inside face.
 * `dowel`: their diameter.
 */
export function blockMeshes(
  { bends, thickness }: Pick<Panel, 'bends' | 'thickness'>,
  { between, layers, holes }: CornerBlock,
  dowel: number,
): Mesh[] {
  const inward = at(bends, between[0]).turn === 'up' ? 1 : -1;
  const extruder = new Extruder();
  const rings = holes.map((hole) => ring(hole, dowel / 2));
  return layers.map(({ from, to, outline }, index) =>
    extruder.extrude(
      {
        name: `layer-${index + 1}`,
        colour: index % 2 === 0 ? BOARD_COLOURS.station : BOARD_COLOURS.backing,
        loops: [outline, ...rings],
        low: from,
        high: to,
        pockets: [],
        floor: from,
      },
      ([x, y, height]) => [x, y, inward * (thickness / 2 + height)],
    ),
  );
}

function ring([x, y]: Point, radius: number): Point[] {
  const halves = [radius, -radius].map((out) => ({ x: x + out, y, bulge: 1 }));
  return flattenLoop(halves, MESH_CHORD_ERROR);
}
