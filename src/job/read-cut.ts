import { colourNames, parseColour } from '../base/colour';
import { operations, type Operation } from '../base/drawing';
import type { Tables } from '../tables/tables';
import { show } from './explain';
import { cuttingTools, type Cut, type CuttingTool } from './job';
import { isBlock, type Reader } from './reader';

/** Whose each setting is; one that belongs to another tool than the job's is a slip. Those not here are everybody's. */
export const CUT_SETTINGS: Readonly<Record<string, readonly CuttingTool[]>> = {
  turn: ['jigsaw'],
  bit: ['router'],
  groove: ['router'],
  bridges: ['router'],
  kerf: ['laser'],
  layers: ['laser'],
  dowel: ['laser'],
  fit: ['router', 'laser'],
};

/** The `cut` block, or a jigsaw where there is none. */
export function readCut(reader: Reader, { tools, rules }: Tables): Cut {
  const tool = cuttingTools.find((known) => known === reader.at(['cut', 'with'])) ?? 'jigsaw';
  if (isBlock(reader.at(['cut']))) refuseOthers(reader, tool);
  const length = (key: string, min: number, max: number): number | undefined =>
    reader.length(['cut', key], { min, max });
  const spacing = (gap: number, border: number): Pick<Cut, 'gap' | 'border' | 'colours'> => ({
    gap: length('gap', tools.leastGap, 100) ?? gap,
    border: length('border', 0, 200) ?? border,
    colours: readColours(reader),
  });
  const fit = length('fit', 0, 2);
  switch (tool) {
    case 'jigsaw':
      return {
        with: tool,
        turn: length('turn', 1, 500) ?? tools.bladeTurn,
        ...spacing(rules.partGap, rules.boardBorder),
      };
    case 'router': {
      const bit = length('bit', 0.5, 30) ?? tools.bit;
      const spaced = spacing(bit + tools.bitGap, rules.boardBorder);
      // The bit must pass, and a groove may run past one part's edge without reaching the next.
      refuseNarrow(
        reader,
        spaced.gap,
        bit + tools.grooveOverrun,
        'the bit cuts all round each part, and grooves run past its edge',
      );
      return {
        with: tool,
        bit,
        groove: length('groove', 0.5, 50) ?? null,
        fit: fit ?? tools.routerFit,
        bridges: reader.at(['cut', 'bridges']) === true,
        ...spaced,
      };
    }
    case 'laser': {
      const kerf = readKerf(reader, tools.kerfLeast) ?? tools.kerf;
      const spaced = spacing(tools.laserGap, tools.laserBorder);
      refuseNarrow(reader, spaced.gap, kerf, 'the beam cuts all round each part');
      return {
        with: tool,
        kerf,
        fit: fit ?? tools.laserFit,
        layers: readLayers(reader),
        dowel: length('dowel', tools.dowelLeast, 25) ?? tools.dowel,
        ...spaced,
      };
    }
  }
}

function refuseNarrow(reader: Reader, gap: number, least: number, why: string): void {
  if (gap < least)
    reader.refuse(
      'gap-too-narrow',
      ['cut', 'gap'],
      `cut.gap is ${reader.print(gap)}: ${why}`,
      'leave more between the parts',
      reader.print(gap),
      `at least ${reader.print(least)}`,
    );
}

/** A width a beam can have, or 0. */
function readKerf(reader: Reader, least: number): number | undefined {
  const kerf = reader.length(['cut', 'kerf'], { min: 0, max: 2 });
  if (kerf === undefined || kerf === 0 || kerf >= least) return kerf;
  return reader.refuse(
    'out-of-range',
    ['cut', 'kerf'],
    `cut.kerf is ${reader.print(kerf)}: no beam is as narrow`,
    'measure it, or write 0 where the machine makes up for it',
    reader.print(kerf),
    `0, or at least ${reader.print(least)}`,
  );
}

function readLayers(reader: Reader): number | null {
  const path = ['cut', 'layers'];
  const layers = reader.number(path, { min: 1, max: 12 });
  if (layers === undefined) return null;
  if (!Number.isInteger(layers))
    reader.refuse(
      'layers-not-whole',
      path,
      `cut.layers is ${layers}: layers are counted in whole ones`,
      'write a whole number',
      String(layers),
      '1 to 12',
    );
  return layers;
}

function refuseOthers(reader: Reader, tool: CuttingTool): void {
  for (const [key, owners] of Object.entries(CUT_SETTINGS)) {
    if (reader.at(['cut', key]) === undefined || owners.includes(tool)) continue;
    reader.refuse(
      'not-for-this-tool',
      ['cut', key],
      `cut.${key} belongs to a ${owners.join(' or ')}; this job cuts with a ${tool}`,
      `leave it out, or let cut.with be ${owners.join(' or ')}`,
      tool,
      owners.join(', '),
    );
  }
}

function readColours(reader: Reader): Cut['colours'] {
  const colours: Partial<Record<Operation, string>> = {};
  for (const operation of operations) {
    const path = ['cut', 'colours', operation];
    const text = reader.text(path);
    if (text === undefined) continue;
    const colour = parseColour(text);
    if (colour === null)
      reader.refuse(
        'unknown-colour',
        path,
        `cut.colours.${operation} is no colour: ${show(text)}`,
        'write a name from the list, or #rrggbb',
        show(text),
        `${Object.keys(colourNames).join(', ')}, or #rrggbb`,
      );
    else colours[operation] = colour;
  }
  return colours;
}
