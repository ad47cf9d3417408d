import type { OutputFile } from '../../base/drawing';
import type { CornerBlock, Panel } from '../../panel';
import { bendMesh } from './bend-mesh';
import { blockMeshes } from './block-meshes';
import { formMeshes, type Form } from './form-meshes';
import type { Mesh } from './mesh';
import { panelMesh } from './panel-mesh';
import { writeStl } from './stl';
import { writeThreeMf } from './three-mf';

export { bendMesh } from './bend-mesh';
export { blockMeshes } from './block-meshes';
export { panelMesh } from './panel-mesh';
export { formMeshes, type Form } from './form-meshes';
export { meshVolume, type Mesh } from './mesh';

/**
 * The assembled form and the finished bend as files that 3-D programs read, mm: 3MF, with names and colours; STL, one file a board, each
 * where it stands, since boards that touch share edges and would be no closed solid in one bare list of triangles.
 */
export function solidFiles(form: Form, title: string): OutputFile[] {
  const [boards, bend] = [formMeshes(form), bendMesh(form.bend)];
  return [
    threeMf('form', boards, `${title}: form`),
    ...boards.map((board) => stl(`form/${board.name}`, board)),
    threeMf('bend', [bend], `${title}: finished bend`),
    stl('bend', bend),
  ];
}

/** A corner's block, what its file is called, and its dowels' diameter, mm. */
export interface SolidBlock {
  readonly id: string;
  readonly block: CornerBlock;
  readonly dowel: number;
}

/** The finished panel as files alike, mm; the layers of its corners' blocks, as they are cut, in the same space. */
export function panelSolidFiles(panel: Panel, title: string, blocks: readonly SolidBlock[] = []): OutputFile[] {
  const mesh = panelMesh(panel);
  return [
    threeMf('panel', [mesh], `${title}: finished panel`),
    stl('panel', mesh),
    ...blocks.map(({ id, block, dowel }) =>
      threeMf(id, blockMeshes(panel, block, dowel), `${title}: block for a corner of the finished panel`),
    ),
  ];
}

function threeMf(name: string, meshes: readonly Mesh[], title: string): OutputFile {
  return { path: `solids/${name}.3mf`, content: writeThreeMf(meshes, title), mime: 'model/3mf' };
}

function stl(name: string, mesh: Mesh): OutputFile {
  return { path: `solids/${name}.stl`, content: writeStl(mesh), mime: 'model/stl' };
}
