import { at } from '../../base/at';
import { InternalError } from '../../base/errors';
import { hasErrors, type Finding } from '../../base/findings';
import type { PanelJob } from '../../job/panel/read';
import { handOf, smallEnd, type Bend, type Hand, type Panel, type Step } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Tables } from '../../tables/tables';
import type { Buildable } from '../pipeline';
import { edgesAndSeams, leftOnAndMetal, type PanelFinish } from './finish/finish';
import { cornerBlocksOf, type NamedBlock } from './corner-blocks';
import { flatOf } from './flat-of';
import type { FlatPanel } from './flat-panel';
import { inBend, unlike } from './in-bend';
import { formPlanner } from './plan-form';
import { settleOrder, type PanelForm } from './settle-order';
import { waysToMake } from './ways';

export type { PanelForm } from './settle-order';

/** A bend of the panel as it is made. */
export interface PanelBend {
  readonly bend: Bend;
  readonly step: Step;
  readonly hand: Hand;
  /** Where the form's small end is, for someone behind it who looks toward the side that rises. */
  readonly smallEnd: 'left' | 'right' | 'either';
  /** The bend worked out by itself, the side held as in the step, on the form that is built: its own, or its stretch of another's. */
  readonly alone: Buildable;
}

/** A panel that can be made: bends in the panel's numbering, steps in the order of work. */
export interface BuildablePanel {
  readonly buildable: true;
  readonly job: PanelJob;
  readonly panel: Panel;
  /** The net outline with its edges named, and how it was traced. */
  readonly flat: FlatPanel;
  /** What is left on and trimmed, seams, edges, the metal it is cut from. */
  readonly finish: PanelFinish;
  /** The blocks its corners are dressed over, where the job asks for them. */
  readonly blocks: readonly NamedBlock[];
  readonly bends: readonly PanelBend[];
  readonly order: readonly Step[];
  readonly forms: readonly PanelForm[];
  readonly findings: readonly Finding[];
}

export type PlannedPanel =
  BuildablePanel | { readonly buildable: false; readonly job: PanelJob; readonly findings: readonly Finding[] };

/** What a panel's job is worked out by. `drawing`: the text of the drawing that its outline names. */
export interface PanelGiven {
  readonly tables: Tables;
  readonly rules: PanelRules;
  readonly drawing?: string | null;
}

/**
 * A panel's job → its flat, every bend by itself with either side held, the order of work, and the fewest forms that serve it. `job` comes from the
 * job reader, which found `earlier`.
 */
export function planPanel(
  job: PanelJob,
  { tables, rules, drawing = null }: PanelGiven,
  earlier: readonly Finding[] = [],
): PlannedPanel {
  const refuse = (findings: readonly Finding[], of: Pick<Panel, 'bends'> = { bends: [] }): PlannedPanel => ({
    buildable: false,
    job,
    findings: unlike(findings, of),
  });
  const built = flatOf(job, { rules, drawing });
  const soFar = [...earlier, ...built.findings];
  const flat = built.value;
  if (!flat || hasErrors(soFar)) return refuse(soFar);
  const { panel } = flat;
  const early = edgesAndSeams(job, flat);
  const blocks = cornerBlocksOf(job, panel, { tables, rules });
  if (hasErrors([...early.findings, ...blocks.findings]))
    return refuse([...soFar, ...early.findings, ...blocks.findings]);
  const planForm = formPlanner(tables);
  const ways = panel.bends.map((bend) => waysToMake(job, panel, bend, planForm));
  const stuck = ways.flatMap(({ base, leg }, index) =>
    base.buildable || leg.buildable ? [] : inBend(base.findings, panel, index),
  );
  if (stuck.length > 0) return refuse([...soFar, ...stuck], panel);
  const settled = settleOrder(job, panel, { ways, rules, planForm });
  const { steps, forms, made } = settled;
  if (hasErrors(settled.findings)) return refuse([...soFar, ...settled.findings], panel);
  const late = leftOnAndMetal(job, flat, { order: steps, pulls: made.map(({ bend }) => bend), rules });
  const findings = [
    ...soFar,
    ...settled.findings,
    ...early.findings,
    ...late.findings,
    ...made.flatMap((one, index) => inBend(one.findings, panel, index)),
  ];
  if (hasErrors(findings)) return refuse(findings, panel);
  const bends = panel.bends.map((bend, index) => bendMade(bend, stepOf(steps, index), at(made, index)));
  const finish = { ...early.value, ...late.value };
  return {
    buildable: true,
    job,
    panel,
    flat,
    finish,
    blocks: blocks.value,
    bends,
    order: steps,
    forms,
    findings: unlike(findings, panel),
  };
}

function stepOf(steps: readonly Step[], index: number): Step {
  const found = steps.find(({ bend }) => bend === index);
  if (!found) throw new InternalError(`bend ${index} is in no step`);
  return found;
}

function bendMade(bend: Bend, step: Step, alone: Buildable): PanelBend {
  const { held } = step;
  return { bend, step, hand: handOf(bend, held), smallEnd: smallEnd(bend, held), alone };
}
