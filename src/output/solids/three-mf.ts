import { strToU8, zipSync } from 'fflate';
import { escape } from '../xml';
import { fixed } from '../number';
import type { Mesh } from './mesh';
import { at } from '../../base/at';

/** A fixed day, so that the same job gives the same bytes; without a zone it is the same everywhere. */
const DAY = '2000-01-01T00:00:00';
const DECIMALS = 6;
/** How hard the text is squeezed: higher takes twice the time for 2 % less. */
const SQUEEZE = 3;

const TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;
const RELATIONS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;

/**
 * The solids as a 3MF: millimetres, each solid an object with its name and colour. Source: 3MF Core Specification 1.3 (package
 * parts, `basematerials`, `mesh`).
 */
export function writeThreeMf(meshes: readonly Mesh[], title: string): Uint8Array {
  const colours = [...new Set(meshes.map(({ colour }) => colour))];
  const model = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<model unit="millimeter" xml:lang="en-GB" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">',
    `<metadata name="Title">${escape(title)}</metadata>`,
    '<resources>',
    `<basematerials id="1">${colours.map((colour) => `<base name="${colour}" displaycolor="${colour.toUpperCase()}"/>`).join('')}</basematerials>`,
    ...meshes.map((mesh, index) => object(mesh, index + 2, colours.indexOf(mesh.colour))),
    '</resources>',
    `<build>${meshes.map((_, index) => `<item objectid="${index + 2}"/>`).join('')}</build>`,
    '</model>',
    '',
  ].join('\n');
  const files = { '[Content_Types].xml': TYPES, '_rels/.rels': RELATIONS, '3D/3dmodel.model': model };
  return zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])), {
    mtime: DAY,
    level: SQUEEZE,
  });
}

function object({ name, positions, triangles }: Mesh, id: number, material: number): string {
  const text = (index: number): string => fixed(at(positions, index), DECIMALS);
  const vertices = Array.from(
    { length: positions.length / 3 },
    (_, index) => `<vertex x="${text(3 * index)}" y="${text(3 * index + 1)}" z="${text(3 * index + 2)}"/>`,
  );
  const faces = Array.from(
    { length: triangles.length / 3 },
    (_, index) =>
      `<triangle v1="${triangles[3 * index]}" v2="${triangles[3 * index + 1]}" v3="${triangles[3 * index + 2]}"/>`,
  );
  return `<object id="${id}" type="model" name="${escape(name)}" pid="1" pindex="${material}"><mesh><vertices>${vertices.join('')}</vertices><triangles>${faces.join('')}</triangles></mesh></object>`;
}
