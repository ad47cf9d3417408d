import { at } from '../../../base/at';
import { hasErrors, type Staged } from '../../../base/findings';
import type { PanelJob } from '../../../job/panel/read';
import type { Step } from '../../../panel';
import { edgeWork, type EdgeWork } from '../../../panel/edges/edges';
import type { SeamLayout } from '../../../panel/seams/seam';
import type { BendPlan } from '../../../design/bend/bend-plan';
import type { PanelRules } from '../../../tables/panel-rules';
import type { FlatPanel } from '../flat-panel';
import { metalOf, type Metal } from './metal-of';
import { seamsOf } from './seams-of';
import { trimOf, type Trim } from './trim-of';

/** What is done to a panel's edges, before and after it is bent. */
export interface EdgesAndSeams {
  readonly seams: readonly SeamLayout[];
  /** Null where a name is none of an edge. */
  readonly edges: EdgeWork | null;
}

/** What it is cut to, and from. */
export interface LeftOnAndMetal {
  /** Null where nothing is left on for the bends. */
  readonly trim: Trim | null;
  /** Null where the job names no sheet to cut it from. */
  readonly metal: Metal | null;
}

export type PanelFinish = EdgesAndSeams & LeftOnAndMetal;

/** Seams and edges, which the flat alone decides. */
export function edgesAndSeams(job: PanelJob, flat: FlatPanel): Staged<EdgesAndSeams> {
  const seams = seamsOf(job, flat);
  const edges = edgeWork(flat.outline, job.panel.edges.cap, 'edges.cap');
  return { value: { seams: seams.value, edges: edges.value }, findings: [...seams.findings, ...edges.findings] };
}

interface Made {
  readonly order: readonly Step[];
  /** Each bend's own sums. */
  readonly pulls: readonly Pick<BendPlan, 'pull' | 'metal'>[];
  readonly rules: PanelRules;
}

/** What is left on, which follows from how the bends are pulled; and the blanks as cut on the sheet. */
export function leftOnAndMetal(job: PanelJob, flat: FlatPanel, given: Made): Staged<LeftOnAndMetal> {
  const trim = trimOf(job.panel, flat, given);
  if (hasErrors(trim.findings)) return { value: { trim: null, metal: null }, findings: trim.findings };
  const { metal } = at(given.pulls, 0);
  const laid = metalOf(job, trim.value?.cut.cut ?? flat.outline, { metal, rules: given.rules });
  return { value: { trim: trim.value, metal: laid.value }, findings: [...trim.findings, ...laid.findings] };
}
