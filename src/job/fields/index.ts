import { bend } from './bend';
import { finishingBlock } from './block';
import { board } from './board';
import { cut } from './cut';
import { block, field, type Read } from './field';
import { files } from './files';
import { clamps, effort, pull, screws, stations } from './hold';
import { machine } from './machine';
import { offcuts } from './offcuts';
import { paper } from './paper';
import { choice, ratio, title } from './quantities';
import { sheet } from './sheet';
import { trials } from './trials';

const partTitle = field({
  label: 'Title',
  help: 'What the part is; names the output folder',
  example: 'Rowing-skiff splash coaming',
  group: 'sheet',
  is: title,
  required: true,
});
const units = field({
  label: 'Units',
  help: 'Unit of bare numbers, and of what is printed',
  group: 'sheet',
  is: choice(['mm', 'in'], { in: 'inch' }),
  unless: 'mm',
});
const neutral = field({
  label: 'Neutral-line factor K',
  help: 'Neutral-line factor K, where you use your own',
  example: '0.44',
  group: 'own',
  is: ratio(0.2, 0.5),
  without: 'DIN 6935’s',
});

const first = { title: partTitle, units, sheet };
const shop = { trials, offcuts, board, cut, machine, pull, effort, clamps, screws, stations, neutral };
const last = { files, paper };

/** What every job may say, whether it is of one bend or of a whole panel. */
export const commonFields = { ...first, ...shop, ...last };

/**
 * The job file described: every key once, in the order of the work. The schema, the reader, the page's form, the README's table and
 * the words of messages all come from here.
 */
export const jobFields = block(
  { help: 'One bend of one sheet-metal part, and the form to bend it on', required: true },
  { ...first, bend, ...shop, block: finishingBlock, ...last },
);

/** What stands in a job file, read, with defaults filled in where they follow from a field alone. */
export type Given = Read<typeof jobFields>;
