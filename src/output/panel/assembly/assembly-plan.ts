import { sayFindings, type SaidFinding } from '../../../findings/say';
import { toPanelPlan, type PanelPlan } from '../panel-plan';
import { fastenersOf, type PlannedAssembly } from './plan-assembly';

/** What plan.json holds of an assembly: each panel's own plan, and the joins; mm, degrees, kg. */
export interface AssemblyPlan {
  readonly title: string;
  readonly panels: Readonly<Record<string, { readonly mirrors: string } | PanelPlan>>;
  readonly joins: readonly {
    readonly outer: string;
    readonly inner: string;
    readonly drill: string;
    readonly holes: number;
    readonly fastener: string;
    /** The outer's bends that lie on the inner's: inside radii where the seam crosses, as wanted, and by how much the outer's flat is the longer. */
    readonly bends: readonly {
      readonly outer: string;
      readonly inner: string;
      readonly radius: number;
      readonly wanted: number;
      readonly longer: number;
    }[];
  }[];
  readonly fasteners: readonly { readonly name: string; readonly count: number }[];
  readonly findings: readonly SaidFinding[];
}

/** The plan of an assembly; of one that cannot be made, its findings alone. */
export function toAssemblyPlan(planned: PlannedAssembly, findings: readonly SaidFinding[]): AssemblyPlan {
  const { title } = planned.job;
  if (!planned.buildable) return { title, panels: {}, joins: [], fasteners: [], findings };
  const { job, members, joins } = planned;
  return {
    title,
    panels: Object.fromEntries(
      members.map(({ name, mirrors, planned: panel }) => [
        name,
        mirrors === null ? toPanelPlan(panel, sayFindings(panel.findings, { units: job.units })) : { mirrors },
      ]),
    ),
    joins: joins.map(({ outer, inner, drill, bends }) => ({
      outer: outer.name,
      inner: inner.name,
      drill,
      holes: outer.layout.rows.flat().length,
      fastener: outer.layout.seam.fastener.id,
      bends: bends.map(({ outer: own, inner: under, wanted, longer }) => ({
        outer: own.bend,
        inner: under.bend,
        radius: own.radius,
        wanted,
        longer,
      })),
    })),
    fasteners: fastenersOf(joins),
    findings,
  };
}
