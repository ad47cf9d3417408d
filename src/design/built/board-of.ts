import { InternalError } from '../../base/errors';
import type { BoardChoice } from '../../job/job';
import { findBoard } from '../../tables/look-up';
import type { Board } from '../../tables/schema';
import type { Tables } from '../../tables/tables';

/** The board a job chooses, as thick as the maker measured it where he did. Throws where the tables have none: the job's reader refuses such a name. */
export function boardOf({ stock, thickness }: BoardChoice, tables: Tables): Board {
  const found = findBoard(tables, stock);
  if (!found) throw new InternalError(`job names a board that is not in the tables: ${stock}`);
  return thickness === null ? found : { ...found, thickness };
}
