import { block, field } from './field';
import { choice } from './quantities';

/** How the drawings that programs and machines read are written. */
export const files = block(
  { help: 'How the drawing files are written', group: 'files' },
  {
    dxf: field({
      label: 'Outlines in a DXF',
      help: 'Outlines in a DXF as closed polylines, or as separate lines and arcs for programs that do not read those',
      is: choice(['polylines', 'lines']),
      unless: 'polylines',
    }),
    units: field({
      label: 'Unit of a DXF',
      help: 'Unit of the numbers in a DXF, which says so itself',
      is: choice(['mm', 'in'], { in: 'inch' }),
      unless: 'mm',
    }),
  },
);
