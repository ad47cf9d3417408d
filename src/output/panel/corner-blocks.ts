import type { Finding, Staged } from '../../base/findings';
import { boardOf } from '../../design/built/board-of';
import { finding } from '../../findings/finding';
import type { PanelJob } from '../../job/panel/read';
import { cornerBlock, type CornerBlock, type Panel } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import { tablesIn, type Tables } from '../../tables/tables';
import { at } from '../../base/at';

/** A corner's block and what the corner is called: `long/short`, as the job has it. */
export interface NamedBlock {
  readonly name: string;
  readonly block: CornerBlock;
  /** Of its dowels, mm. */
  readonly dowel: number;
}

/** The blocks that a job asks for at its corners, of the stations' board. */
export function cornerBlocksOf(
  job: PanelJob,
  panel: Panel,
  given: { readonly tables: Tables; readonly rules: PanelRules },
): Staged<NamedBlock[]> {
  if (job.panel.kind === 'traced') return { value: [], findings: [] };
  const tables = tablesIn(given.tables, job.units);
  const dowel = tables.tools.blockDowel;
  const by = {
    board: boardOf(job.board.stations, tables).thickness,
    dowel,
    wood: tables.rules.clampWood,
    past: given.rules.cornerBlockPast,
    leg: given.rules.cornerBlockLeg,
  };
  const findings: Finding[] = [];
  const asked = job.panel.corners.filter(({ block }) => block);
  const value = asked.flatMap(({ key }): NamedBlock[] => {
    const names = key.split('/').map((name) => name.trim());
    const corner = panel.corners.find(({ between }) =>
      between.every((one) => names.includes(at(panel.bends, one).name)),
    );
    const block = corner ? cornerBlock(panel, corner, by) : 'none';
    if (typeof block !== 'string') return [{ name: names.join('/'), block, dowel }];
    findings.push(finding('corner-block', `corners.${key}.block`, { why: block }));
    return [];
  });
  return { value, findings };
}
