import { hasErrors, type Staged } from '../../../base/findings';
import type { PanelJob } from '../../../job/panel/read';
import type { Step } from '../../../panel';
import { edgeWork, type EdgeWork } from '../../../panel/edges/edges';
import type { SeamLayout } from '../../../panel/seams/seam';
import type { BendPlan } from '../../../design/bend/bend-plan';
import type { FlatPanel } from '../flat-panel';
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
}

export type PanelFinish = EdgesAndSeams & LeftOnAndMetal;

/** Seams and edges, which the flat alone decides. */
export function edgesAndSeams(job: PanelJob, flat: FlatPanel): Staged<EdgesAndSeams> {
  const seams = seamsOf(job, flat);
  const edges = edgeWork(flat.outline, job.panel.edges.cap, 'edges.cap');
  return { value: { seams: seams.value, edges: edges.value }, findings: [...seams.findings, ...edges.findings] };
}

/** What is left on, which follows from how the bends are pulled. */
export function leftOnAndMetal(
  job: PanelJob,
  flat: FlatPanel,
  given: { readonly order: readonly Step[]; readonly pulls: readonly Pick<BendPlan, 'pull'>[] },
): Staged<LeftOnAndMetal> {
  const trim = trimOf(job.panel, flat, given);
  if (hasErrors(trim.findings)) return { value: { trim: null }, findings: trim.findings };
  return { value: { trim: trim.value }, findings: trim.findings };
}
