import { lineColours } from '../../base/colour';
import { finding } from '../../findings/finding';
import { operations, type Operation } from '../../base/drawing';
import type { ToolRules } from '../../tables/tables';
import { cuttingTools } from '../cutting-tool';
import type { Reader } from '../reader';
import type { Setting } from '../setting';
import { block, field, type Field, type Read } from './field';
import { choice, colour, count, length, yesNo } from './quantities';

const forRouter = ['router'] as const;
const forLaser = ['laser'] as const;

/** One operation's colour; `lines` as in “outlines”. */
function colourOf(operation: Operation, lines: string): Field<string | null> {
  return field({
    label: `Colour of ${lines}`,
    help: `Colour of ${lines} in the files`,
    example: 'red',
    group: 'colours',
    is: colour,
    without: lineColours[operation],
  });
}

/** How the boards are cut: it changes the joints and the drawings, never the bend surface. Lengths in mm. */
export const cut = block(
  { help: 'How the boards are cut; with a jigsaw unless said', group: 'cut' },
  {
    with: field({
      label: 'Cut with',
      help: 'What cuts the boards: a jigsaw follows drawn lines, a router cuts grooves that the stations stand in, a laser cuts thin layers to stack, with tabs and slots',
      is: choice(cuttingTools),
      unless: 'jigsaw',
    }),
    turn: field({
      label: 'Smallest radius the blade turns',
      help: 'Jigsaw: the smallest radius your blade turns',
      example: '20',
      tools: ['jigsaw'],
      is: length(1, 500),
      unless: ({ tables }) => tables.tools.bladeTurn,
    }),
    bit: field({
      label: 'Diameter of the bit',
      help: 'Router: diameter of the bit',
      example: '6',
      tools: forRouter,
      is: length(0.5, 30),
      unless: ({ tables }) => tables.tools.bit,
    }),
    groove: field({
      label: 'Depth of the grooves',
      help: 'Router: depth of the grooves across the spine',
      example: '6',
      tools: forRouter,
      is: length(0.5, 50),
      without: '⅓ of the spine',
    }),
    bridges: field({
      label: 'Hold-down bridges',
      help: 'Router: leave small bridges that hold the parts to the board until they are cut by hand',
      tools: forRouter,
      is: yesNo,
      unless: false,
    }),
    kerf: field({
      label: 'Kerf',
      help: 'Laser: width the beam takes out of this board',
      example: '0.2',
      tools: forLaser,
      is: length(0, 2),
      unless: ({ tables }) => tables.tools.kerf,
    }),
    layers: field({
      label: 'Layers to each board',
      help: 'Laser: layers stacked to each board of the form; the odd number that makes it as thick as usual unless said',
      example: '3',
      tools: forLaser,
      is: count(1, 12),
      without: 'as thick as usual',
    }),
    dowel: field({
      label: 'Dowels or bolts through the layers',
      help: 'Laser: diameter of the dowels or bolts that align the layers',
      example: '6',
      tools: forLaser,
      is: length(({ tables }) => tables.tools.dowelLeast, 25),
      unless: ({ tables }) => tables.tools.dowel,
    }),
    fit: field({
      label: 'Fit: groove or slot wider by',
      help: 'Router and laser: how much wider a groove or slot is than what enters it',
      example: '0.15',
      tools: ['router', 'laser'],
      is: length(0, 2),
      unless: ({ tables, tool }) => (tool === 'laser' ? tables.tools.laserFit : tables.tools.routerFit),
    }),
    gap: field({
      label: 'Between parts on a board',
      help: 'Left between parts laid out on a board',
      example: '10',
      is: length(({ tables }) => tables.tools.leastGap, 100),
      without: usualGap,
    }),
    border: field({
      label: 'Uncut edge of a board',
      help: 'Left uncut along the edges of a board',
      example: '15',
      is: length(0, 200),
      unless: ({ tables, tool }) => (tool === 'laser' ? tables.tools.laserBorder : tables.rules.boardBorder),
    }),
    colours: block({ help: 'Colours of the drawings’ lines, by operation', group: 'colours' }, {
      outline: colourOf('outline', 'outlines'),
      hole: colourOf('hole', 'holes'),
      pilot: colourOf('pilot', 'pilot holes'),
      countersink: colourOf('countersink', 'countersinks'),
      groove: colourOf('groove', 'grooves'),
      mark: colourOf('mark', 'marks'),
      label: colourOf('label', 'labels'),
      board: colourOf('board', 'the board’s own edge'),
    } satisfies Readonly<Record<Operation, Field>>),
  },
);

/** The usual gap in words. */
function usualGap(setting: Setting): string {
  const { tools, rules } = setting.tables;
  const say = (mm: number): string => length(0, 0).print(mm, setting);
  if (setting.tool === 'router') return `bit + ${say(tools.bitGap)}`;
  return say(setting.tool === 'laser' ? tools.laserGap : rules.partGap);
}

type Given = Read<typeof cut>;

/** How the boards are cut, as the rest of the program has it: the settings of one tool. Lengths in mm. */
export type Cut = JigsawCut | RouterCut | LaserCut;

interface AnyCut {
  /** Left between the parts laid out on a board, and uncut along its edges. */
  readonly gap: number;
  readonly border: number;
  /** Colours of the maker's own, by operation, as #rrggbb. */
  readonly colours: Readonly<Partial<Record<Operation, string>>>;
}

export interface JigsawCut extends AnyCut, Pick<Given, 'turn'> {
  readonly with: 'jigsaw';
}

export interface RouterCut extends AnyCut, Pick<Given, 'bit' | 'groove' | 'fit' | 'bridges'> {
  readonly with: 'router';
}

export interface LaserCut extends AnyCut, Pick<Given, 'kerf' | 'fit' | 'layers' | 'dowel'> {
  readonly with: 'laser';
}

/** The settings of the job's tool. */
export function cutOf(reader: Reader, given: Given): Cut {
  const { tools, rules } = reader.tables;
  const { border, bit, groove, fit, bridges, kerf, layers, dowel, turn } = given;
  const spaced = (usual: number): AnyCut => ({ gap: given.gap ?? usual, border, colours: coloursOf(given) });
  switch (given.with) {
    case 'jigsaw':
      return { with: 'jigsaw', turn, ...spaced(rules.partGap) };
    case 'router': {
      const spacing = spaced(bit + tools.bitGap);
      // The bit must pass, and a groove may run past one part's edge without reaching the next.
      const least = bit + tools.grooveOverrun;
      refuseNarrow(reader, spacing.gap, least, 'router');
      return { with: 'router', bit, groove, fit, bridges, ...spacing };
    }
    case 'laser': {
      const spacing = spaced(tools.laserGap);
      refuseKerf(reader, kerf, tools);
      refuseNarrow(reader, spacing.gap, kerf, 'laser');
      return { with: 'laser', kerf, fit, layers, dowel, ...spacing };
    }
  }
}

function coloursOf({ colours }: Given): AnyCut['colours'] {
  return Object.fromEntries(
    operations.flatMap((operation) => {
      const own = colours[operation];
      return own === null ? [] : [[operation, own] as const];
    }),
  );
}

function refuseNarrow(reader: Reader, gap: number, least: number, tool: 'router' | 'laser'): void {
  if (gap < least) reader.refuse(finding('gap-too-narrow', 'cut.gap', { tool, gap, least }));
}

/** A width a beam can have, or 0. */
function refuseKerf(reader: Reader, kerf: number, { kerfLeast }: ToolRules): void {
  if (kerf === 0 || kerf >= kerfLeast) return;
  reader.refuse(finding('kerf-too-narrow', 'cut.kerf', { kerf, least: kerfLeast }));
}
