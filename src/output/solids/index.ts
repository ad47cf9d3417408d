import type { OutputFile } from '../../base/drawing';
import { bendMesh } from './bend-mesh';
import { formMeshes, type Form } from './form-meshes';
import { writeStl } from './stl';
import { writeThreeMf } from './three-mf';

export { bendMesh } from './bend-mesh';
export { formMeshes, type Form } from './form-meshes';
export { meshVolume, type Mesh } from './mesh';

/** The assembled form and the finished bend as files that 3-D programs read: 3MF with names and colours, STL bare; mm. */
export function solidFiles(form: Form, title: string): OutputFile[] {
  const solids = [
    { path: 'solids/form', title: `${title}: form`, meshes: formMeshes(form) },
    { path: 'solids/bend', title: `${title}: finished bend`, meshes: [bendMesh(form.bend)] },
  ];
  return solids.flatMap(({ path, title: name, meshes }): OutputFile[] => [
    { path: `${path}.3mf`, content: writeThreeMf(meshes, name), mime: 'model/3mf' },
    { path: `${path}.stl`, content: writeStl(meshes), mime: 'model/stl' },
  ]);
}
