import { error, note, warning } from '../entry';

const PLAIN = 'save it as plain SVG, with nothing but the outline in it';

const UNREAD = {
  missing: 'there is no such file beside the job file',
  folder: 'this is a folder, not a drawing',
  forbidden: 'this file may not be read',
  other: 'the file cannot be read',
} as const;

/** Why a drawing file cannot be read, and what of it is not. `where` and `trouble` name the element and its line. */
export const drawingFindings = {
  'drawing-outside': error({ got: 'text' }, ({ got }) => ({
    message: 'the drawing must lie beside the job file, or in a folder below it',
    hint: 'copy it there and give its name alone',
    got,
  })),
  'drawing-kind': error({ got: 'text' }, ({ got }) => ({
    message: 'a drawing is an SVG or a DXF file',
    hint: 'save it as plain SVG, or as ASCII DXF',
    got,
    allowed: 'a name that ends in .svg or .dxf',
  })),
  'drawing-unread': error(
    { file: 'text', trouble: ['missing', 'folder', 'forbidden', 'other'] },
    ({ file, trouble }) => ({
      message: `${file}: ${UNREAD[trouble]}`,
      hint: 'put the drawing beside the job file, under the name the job gives',
    }),
  ),
  'drawing-too-big': error({ kind: ['SVG', 'DXF'], megabytes: 'number' }, ({ kind, megabytes }) => ({
    message: `the ${kind} file is ${megabytes} MB`,
    hint: 'leave only the outline in it: it takes some kB',
  })),
  'drawing-too-full': error({ most: 'count' }, ({ most }) => ({
    message: `more than ${most} things are drawn`,
    hint: 'leave only the outline in the drawing',
  })),
  'drawing-left-out': note({ what: 'text', times: 'count' }, ({ what, times }) => ({
    message: `left out of the drawing: ${what}${times > 1 ? `, ${times} times` : ''}`,
    hint: 'draw what belongs to the outline as lines, arcs or paths, on a layer of its own',
  })),
  'entities-left-out': warning({ what: 'text' }, ({ what }) => ({
    message: `left out of the drawing: ${what}, which are no lines or arcs`,
    hint: 'explode them into lines and arcs',
  })),
  'svg-broken': error({ trouble: 'text' }, ({ trouble }) => ({
    message: trouble,
    hint: 'mend it in the program that drew it, or save it again as plain SVG',
  })),
  'svg-entities': error({ line: 'count' }, ({ line }) => ({
    message: `line ${line}: the SVG file declares a document type of its own`,
    hint: PLAIN,
  })),
  'svg-script': error({ line: 'count', what: 'text' }, ({ line, what }) => ({
    message: `line ${line}: ${what}`,
    hint: PLAIN,
  })),
  'svg-external': error({ line: 'count', what: 'text' }, ({ line, what }) => ({
    message: `line ${line}: ${what}`,
    hint: PLAIN,
  })),
  'svg-size-assumed': warning({ dpi: 'number' }, ({ dpi }) => ({
    message: `the SVG file does not say its true size: read at ${dpi} px to the inch`,
    hint: 'check a length you know, or scale the outline by one',
  })),
  'svg-use': error({ where: 'text' }, ({ where }) => ({
    message: `${where}: it copies what is not there, or itself`,
    hint: 'turn copies into paths and save again',
  })),
  'dxf-broken': error({ trouble: 'text' }, ({ trouble }) => ({
    message: trouble,
    hint: 'mend it in the program that drew it and save it again as ASCII DXF',
  })),
  'dxf-no-unit': warning({}, () => ({
    message: 'the DXF file states no unit: its numbers are read as millimetres',
    hint: 'say which unit it is drawn in, or scale the outline by a length you know',
  })),
  'dxf-unit': error({ unit: 'count' }, ({ unit }) => ({
    message: `the DXF file states unit ${unit} ($INSUNITS), which no sheet is drawn in`,
    hint: 'save it in millimetres or inches',
  })),
};
