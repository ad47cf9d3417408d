import { boardOf } from '../../design/built/board-of';
import { InternalError } from '../../base/errors';
import { sayFindings } from '../../findings/say';
import { findScrew, screwFor } from '../../tables/look-up';
import type { Tables } from '../../tables/tables';
import type { Buildable } from '../pipeline';
import { measuresIn, type SheetUnits } from './measures';
import type { Shop } from './shop';

/** Everything the shop sheet may speak of, from what was worked out; `tables`: in the job's units (`tablesIn`), `units`: those to write in; `ofPanel`: see {@link Shop}. */
export function gather(
  { job, bend, layout, joints, plan, findings }: Buildable,
  { parts, boards }: Pick<Shop, 'parts' | 'boards'>,
  tables: Tables,
  { units, ofPanel }: { readonly units: SheetUnits; readonly ofPanel: boolean },
): Shop {
  const spine = boardOf(job.board.spine, tables);
  const screw =
    job.screws.size === null ? screwFor(tables, job.units, layout.spine.thickness) : findScrew(tables, job.screws.size);
  if (!screw) throw new InternalError('no screw for this form');
  return {
    job,
    bend,
    layout,
    joints,
    plan,
    findings: sayFindings(findings, { units }),
    parts,
    boards,
    tables,
    say: measuresIn(units),
    screw,
    ofPanel,
    board: {
      spine,
      stations: boardOf(job.board.stations, tables),
      backing: boardOf(job.board.backing, tables),
    },
  };
}
