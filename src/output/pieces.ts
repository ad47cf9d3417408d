import { drawBlock } from '../drawing/aids';
import { drawParts } from '../drawing/parts';
import { withFormName } from '../drawing/parts/form-name';
import { withOverall } from '../drawing/parts/overall';
import type { Part } from '../drawing/parts/part';
import type { Buildable } from './pipeline';
import { layOutBoards, spacingFor, type Watch } from '../drawing/boards';
import { hatchNarrowWaste } from '../drawing/boards/hatch';
import type { LaidOut } from '../drawing/boards/laid-out';
import { tablesIn, type Tables } from '../tables/tables';
import { fitToTool } from '../drawing/tooling';

/**
 * Every piece of board of a planned job, drawn as the job's tool needs it: the form, what tries its joints, the finishing block. `form`: a name to write on each,
 * where pieces of several forms lie together.
 */
export function drawPieces(
  { bend, layout, joints, block, job }: Buildable,
  all: Tables,
  form: string | null = null,
): Part[] {
  const tables = tablesIn(all, job.units);
  const parts = [...drawParts({ layout, bend, job, joints }, tables), ...drawBlock(block, job)];
  return fitToTool(
    parts.map((part) => {
      const sized = withOverall(part, job.units);
      return form === null ? sized : withFormName(sized, form);
    }),
    job.cut,
    tables,
  );
}

/** The pieces laid out on boards as the job asks, their narrow waste hatched where a saw follows the lines. */
export function layOutPieces(
  parts: readonly Part[],
  { job, layout }: Buildable,
  all: Tables,
  watch: Watch = {},
): LaidOut[] {
  const tables = tablesIn(all, job.units);
  const boards = layOutBoards(parts, tables, spacingFor(job, layout, tables), watch);
  const { narrowWaste, hatchSpacing } = tables.tools;
  return job.cut.with === 'jigsaw'
    ? boards.map((board) => hatchNarrowWaste(board, parts, narrowWaste, hatchSpacing))
    : boards;
}
