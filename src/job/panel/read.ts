import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Tables } from '../../tables/tables';
import { boardsOf } from '../fields/board';
import { cutOf } from '../fields/cut';
import { handForceOf, ratingOf } from '../fields/hold';
import { checkRoll } from '../fields/paper';
import type { Job } from '../job';
import { Reader } from '../reader';
import { panelFields, type GivenPanel } from './fields';

/** A panel's job after reading: what it shares with the job of one bend, and the panel; mm and radians. */
export interface PanelJob extends Omit<Job, 'bend' | 'runs' | 'block'> {
  readonly panel: Pick<GivenPanel, 'base' | 'bends' | 'corners' | 'pair'>;
}

/** Plain data → a panel's job, as `readJob` does for one bend. */
export function readPanelJob(
  data: unknown,
  tables: Tables,
): { readonly job: PanelJob; readonly findings: readonly Finding[] } {
  const reader = new Reader(data, tables);
  const { base, bends, corners, pair, ...given } = panelFields.read(reader, []);
  checkRoll(reader, given.paper);
  bends.forEach(({ leg, height }, index) => {
    if ((leg === null) === (height === null)) reader.refuse(finding('leg-or-height', `bends[${index}]`));
  });
  const job: PanelJob = {
    ...given,
    units: reader.units,
    board: boardsOf(reader, given.board),
    effort: { ...given.effort, handForce: handForceOf(given.effort, tables) },
    clamps: { ...given.clamps, rating: ratingOf(given.clamps, tables) },
    cut: cutOf(reader, given.cut),
    panel: { base, bends, corners, pair },
  };
  return { job, findings: reader.findings };
}
