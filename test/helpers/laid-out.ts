import { layOutBoards } from '../../src/drawing/boards';
import type { LaidOut } from '../../src/drawing/boards/laid-out';
import type { Part } from '../../src/drawing/parts/part';
import { makeFiles } from '../../src/output/files';
import { makePanelFiles } from '../../src/output/panel/files';
import type { BuildablePanel } from '../../src/output/panel/plan-panel';
import type { OutputFile } from '../../src/base/drawing';
import { drawPieces } from '../../src/output/pieces';
import type { Buildable } from '../../src/output/pipeline';
import { font } from './font';
import { frozen } from './frozen';
import { tables } from './starters';

/** Something worked out once of each planned job, for all tests that ask. */
function once<Planned extends object, Made>(make: (planned: Planned) => Made): (planned: Planned) => Made {
  const known = new WeakMap<Planned, Made>();
  return (planned) => {
    const made = known.get(planned) ?? make(planned);
    known.set(planned, made);
    return made;
  };
}

/** A job's pieces as its tool needs them. */
export const piecesOf: (planned: Buildable) => readonly Part[] = once((planned: Buildable) =>
  frozen(drawPieces(planned, tables)),
);

/** The pieces on boards, no narrow waste hatched. */
export const boardsOf: (planned: Buildable) => readonly LaidOut[] = once((planned: Buildable) =>
  frozen(layOutBoards(piecesOf(planned), tables, { offcuts: planned.job.offcuts, ...planned.job.cut })),
);

/** The files with their bytes as text: lists of numbers are compared one by one, which takes seconds. */
export function asText(
  files: readonly OutputFile[],
): { readonly path: string; readonly mime: string; readonly content: string }[] {
  return files.map(({ content, ...rest }) => ({
    ...rest,
    content: typeof content === 'string' ? content : Buffer.from(content).toString('base64'),
  }));
}

/** All that `make` stores for a job. */
export const filesOf: (planned: Buildable) => Promise<readonly OutputFile[]> = once((planned: Buildable) =>
  makeFiles(planned, { tables, font }),
);

/** All that `make` stores for a panel. */
export const panelFilesOf: (planned: BuildablePanel) => Promise<readonly OutputFile[]> = once(
  (planned: BuildablePanel) => makePanelFiles(planned, { tables, font }),
);
