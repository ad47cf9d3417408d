import type { OutputFile } from '../../base/drawing';
import type { Panel } from '../../panel';
import { bendMesh } from './bend-mesh';
import { formMeshes, type Form } from './form-meshes';
import type { Mesh } from './mesh';
import { panelMesh } from './panel-mesh';
import { writeStl } from './stl';
import { writeThreeMf } from './three-mf';

export { bendMesh } from './bend-mesh';
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

/** The finished panel as files alike, mm. */
export function panelSolidFiles(panel: Panel, title: string): OutputFile[] {
  const mesh = panelMesh(panel);
  return [threeMf('panel', [mesh], `${title}: finished panel`), stl('panel', mesh)];
}

function threeMf(name: string, meshes: readonly Mesh[], title: string): OutputFile {
  return { path: `solids/${name}.3mf`, content: writeThreeMf(meshes, title), mime: 'model/3mf' };
}

function stl(name: string, mesh: Mesh): OutputFile {
  return { path: `solids/${name}.stl`, content: writeStl(mesh), mime: 'model/stl' };
}
