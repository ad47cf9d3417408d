import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Tables } from '../../tables/tables';
import { boardsOf } from '../fields/board';
import { cutOf } from '../fields/cut';
import { handForceOf, ratingOf } from '../fields/hold';
import { checkRoll } from '../fields/paper';
import type { Job } from '../job';
import { Reader } from '../reader';
import { panelFields, tracedFields, type GivenPanel, type GivenTraced } from './fields';

/** What every panel says beside its shape and its bends. */
export type FinishChoice = Pick<GivenPanel, 'pair' | 'trim' | 'seams' | 'edges'>;

/** A panel built up from a base with bends on its edges. */
export interface BuiltUpChoice extends FinishChoice, Pick<GivenPanel, 'base' | 'bends' | 'corners'> {
  readonly kind: 'built-up';
}

/** A panel on an outline of the maker's own, its bends along lines of it. */
export interface TracedChoice extends FinishChoice, Pick<GivenTraced, 'outline' | 'bends'> {
  readonly kind: 'traced';
}

/** A panel's job after reading: what it shares with the job of one bend, and the panel; mm and radians. */
export interface PanelJob extends Omit<Job, 'bend' | 'runs' | 'block' | 'sheet'> {
  readonly sheet: GivenPanel['sheet'];
  readonly panel: BuiltUpChoice | TracedChoice;
}

interface ReadPanel {
  readonly job: PanelJob;
  readonly findings: readonly Finding[];
}

/** Plain data with a `base` → a panel's job, as `readJob` does for one bend. */
export function readPanelJob(data: unknown, tables: Tables): ReadPanel {
  const reader = new Reader(data, tables);
  const { base, bends, corners, pair, trim, seams, edges, ...given } = panelFields.read(reader, []);
  bends.forEach(({ leg, height }, index) => {
    if ((leg === null) === (height === null)) reader.refuse(finding('leg-or-height', `bends[${index}]`));
  });
  return withShop(
    reader,
    given,
    { kind: 'built-up', base, bends, corners, ...finishOf(reader, { pair, trim, seams, edges }) },
    tables,
  );
}

/** Plain data with an `outline` → a panel's job. */
export function readTracedJob(data: unknown, tables: Tables): ReadPanel {
  const reader = new Reader(data, tables);
  const { outline, bends, pair, trim, seams, edges, ...given } = tracedFields.read(reader, []);
  const said = [
    ['outline', 'file'],
    ['outline', 'corners'],
  ].filter((path) => reader.at(path) !== undefined);
  if (said.length !== 1) reader.refuse(finding('file-or-corners', 'outline'));
  bends.forEach(({ name }, index) => {
    const isTwice = bends.slice(0, index).some((other) => other.name === name);
    if (name !== '' && isTwice) reader.refuse(finding('bend-named-twice', `bends[${index}].name`, { name }));
  });
  return withShop(
    reader,
    given,
    { kind: 'traced', outline, bends, ...finishOf(reader, { pair, trim, seams, edges }) },
    tables,
  );
}

type Common = Omit<GivenPanel, keyof FinishChoice | 'base' | 'bends' | 'corners'>;

function finishOf(reader: Reader, { pair, trim, seams, edges }: FinishChoice): FinishChoice {
  seams.forEach(({ count, pitch }, index) => {
    if ((count === null) === (pitch === null)) reader.refuse(finding('count-or-pitch', `seams[${index}]`));
  });
  return { pair, trim, seams, edges };
}

/** What every job says, its rules between fields kept. */
function withShop(reader: Reader, given: Common, panel: PanelJob['panel'], tables: Tables): ReadPanel {
  checkRoll(reader, given.paper);
  const job: PanelJob = {
    ...given,
    units: reader.units,
    board: boardsOf(reader, given.board),
    effort: { ...given.effort, handForce: handForceOf(given.effort, tables) },
    clamps: { ...given.clamps, rating: ratingOf(given.clamps, tables) },
    cut: cutOf(reader, given.cut),
    panel,
  };
  return { job, findings: reader.findings };
}
