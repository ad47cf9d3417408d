import { at } from '../../base/at';
import { InternalError } from '../../base/errors';
import { hasErrors, type Finding } from '../../base/findings';
import type { PanelJob } from '../../job/panel/read';
import {
  findOrder,
  handOf,
  orderFindings,
  smallEnd,
  type Bend,
  type Hand,
  type Panel,
  type ShopBodies,
  type Step,
} from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Tables } from '../../tables/tables';
import type { Buildable } from '../pipeline';
import { edgesAndSeams, leftOnAndMetal, type PanelFinish } from './finish/finish';
import { flatOf } from './flat-of';
import type { FlatPanel } from './flat-panel';
import { formsOf, usesOf } from './forms';
import type { FormRun } from './one-bend';
import { standAgain } from './stand-again';
import { either, waysToMake, workOf, type Ways } from './ways';

/** A bend of the panel as it is made. */
export interface PanelBend {
  readonly bend: Bend;
  readonly step: Step;
  readonly hand: Hand;
  /** Where the form's small end is, for someone behind it who looks toward the side that rises. */
  readonly smallEnd: 'left' | 'right' | 'either';
  /** The bend worked out by itself, the held side as in the step. */
  readonly alone: Buildable;
}

/** A form of the panel: the bend whose own it is, and its stretches. */
export interface PanelForm {
  readonly name: string;
  readonly runs: readonly FormRun[];
  readonly planned: Buildable;
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
  const refuse = (findings: readonly Finding[]): PlannedPanel => ({
    buildable: false,
    job,
    findings: unlike(findings),
  });
  const built = flatOf(job, { rules, drawing });
  const soFar = [...earlier, ...built.findings];
  const flat = built.value;
  if (!flat || hasErrors(soFar)) return refuse(soFar);
  const { panel } = flat;
  const early = edgesAndSeams(job, flat);
  if (hasErrors(early.findings)) return refuse([...soFar, ...early.findings]);
  const ways = panel.bends.map((bend) => waysToMake(job, panel, bend, tables));
  const stuck = ways.flatMap(({ base, leg }, index) =>
    base.buildable || leg.buildable ? [] : inBend(base.findings, index),
  );
  if (stuck.length > 0) return refuse([...soFar, ...stuck]);
  const uses = usesOf(job, panel, { alone: ways.map(either), rules });
  const shop: ShopBodies = {
    clamp: { width: rules.clampWidth, frame: rules.clampFrame, throat: job.clamps.throat, pastEnds: true },
  };
  const work = ways.map((way, index) => workOf(panel, index, way, at(uses.value, index)));
  const found = findOrder(panel, { work, shop, rules });
  const ordered = [...soFar, ...uses.findings, ...orderFindings(panel, found)];
  if (!found.steps || hasErrors(ordered)) return refuse(ordered);
  const { steps } = found;
  const alone = ways.map((way, index) => heldAs(stepOf(steps, index), way));
  const tried = formsOf(job, panel, steps, tables);
  const failed = tried.flatMap(({ planned, owner }) => (planned.buildable ? [] : inBend(planned.findings, owner)));
  const forms = tried.flatMap(({ name, runs, planned }) => (planned.buildable ? [{ name, runs, planned }] : []));
  const byName = new Map(forms.map(({ name, planned }) => [name, planned]));
  const stood = standAgain(panel, steps, { alone, forms: byName, shop, rules });
  const late = leftOnAndMetal(job, flat, { order: stood.steps, pulls: alone.map(({ bend }) => bend), rules });
  const findings = [
    ...ordered,
    ...early.findings,
    ...failed,
    ...stood.findings,
    ...late.findings,
    ...alone.flatMap((one, index) => inBend(one.findings, index)),
  ];
  if (hasErrors(findings)) return refuse(findings);
  const bends = panel.bends.map((bend, index) => bendMade(bend, stepOf(stood.steps, index), at(alone, index)));
  const finish = { ...early.value, ...late.value };
  return { buildable: true, job, panel, flat, finish, bends, order: stood.steps, forms, findings: unlike(findings) };
}

function stepOf(steps: readonly Step[], index: number): Step {
  const found = steps.find(({ bend }) => bend === index);
  if (!found) throw new InternalError(`bend ${index} is in no step`);
  return found;
}

function heldAs({ held }: Step, way: Ways): Buildable {
  const alone = way[held];
  if (!alone.buildable) throw new InternalError('a side that cannot be pulled was chosen');
  return alone;
}

function bendMade(bend: Bend, step: Step, alone: Buildable): PanelBend {
  const { held } = step;
  return { bend, step, hand: handOf(bend, held), smallEnd: smallEnd(bend, held), alone };
}

/** What the sums of one bend found, said of that bend in the panel's file. */
function inBend(findings: readonly Finding[], index: number): Finding[] {
  return findings.map((found) => {
    const own = found.path === 'bend' || found.path.startsWith('bend.');
    return own ? { ...found, path: `bends[${index}]${found.path.slice('bend'.length)}` } : found;
  });
}

/** Each finding once: several bends may find the same of the sheet or the boards. */
function unlike(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ code, path, values }) => {
    const key = JSON.stringify([code, path, values]);
    return seen.has(key) ? false : (seen.add(key), true);
  });
}
