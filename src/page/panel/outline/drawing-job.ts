import { stringify } from 'yaml';
import type { OpenedDrawing } from '../../draft';

/** The job of a panel on the outline of a drawing, as it begins: what it is made of and its bends are still to be said. */
export function jobOfDrawing({ name }: Pick<OpenedDrawing, 'name'>): string {
  const title =
    name
      .replace(/\.\w+$/u, '')
      .replaceAll(/[-_]+/gu, ' ')
      .trim() || 'Panel';
  const say = (value: string): string => stringify(value, { lineWidth: 0 }).trim();
  return `# A panel on the outline in ${name.replaceAll(/[\r\n]/gu, ' ')}.
# Change first: the sheet, what the outline was traced from, and place the bends on it.
title: ${say(title.charAt(0).toUpperCase() + title.slice(1))}
units: mm

sheet:
  material: aluminium-3003-h14
  thickness: 1.2

outline:
  file: ${say(name)}
  mockup: metal-allowed # or sharp: card folded on the lines

bends: []

board: { stock: mdf-18 }
`;
}
