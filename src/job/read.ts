import type { Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import type { Tables } from '../tables/tables';
import { checkTaper } from './fields/bend';
import { blockOf } from './fields/block';
import { boardsOf } from './fields/board';
import { cutOf } from './fields/cut';
import { handForceOf, ratingOf } from './fields/hold';
import { jobFields } from './fields/index';
import { checkRoll } from './fields/paper';
import { trials } from './fields/trials';
import type { Job, Trial } from './job';
import { Reader } from './reader';

/**
 * Plain data → job: every value read by its own field's rule, defaults filled in, lengths to mm and degrees to radians; then the rules
 * between fields. Values the schema has complained of are passed over in silence; everything else that is wrong is said. The job is
 * worth having only where neither has complained.
 */
export function readJob(data: unknown, tables: Tables): { readonly job: Job; readonly findings: readonly Finding[] } {
  const reader = new Reader(data, tables);
  const given = jobFields.read(reader, []);
  checkTaper(reader, given.bend);
  checkRoll(reader, given.paper);
  const board = boardsOf(reader, given.board);
  const job: Job = {
    ...given,
    units: reader.units,
    runs: [{ name: 'whole length', from: 0, to: given.bend.length }],
    board,
    effort: { ...given.effort, handForce: handForceOf(given.effort, tables) },
    clamps: { ...given.clamps, rating: ratingOf(given.clamps, tables) },
    block: blockOf(reader, given.block, given.bend.length, board.stations),
    cut: cutOf(reader, given.cut),
  };
  return { job, findings: reader.findings };
}

/** Trial strips alone, from data shaped as a job file: `units` and `trials`. Finds what {@link readJob} would find in them. */
export function readTrials(
  data: { readonly units: LengthUnit; readonly trials: readonly unknown[] },
  tables: Tables,
): { readonly trials: readonly Trial[]; readonly findings: readonly Finding[] } {
  const reader = new Reader(data, tables);
  return { trials: trials.read(reader, ['trials']), findings: reader.findings };
}
