import { at } from '../../base/at';
import { hasErrors, type Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { PanelJob } from '../../job/panel/read';
import {
  buildUp,
  findOrder,
  handOf,
  nearestStretch,
  orderFindings,
  ownForm,
  plainBend,
  plainCorner,
  smallEnd,
  type Bend,
  type BendWork,
  type BuiltUp,
  type FormBody,
  type FormUse,
  type Hand,
  type HeldSide,
  type Panel,
  type Step,
} from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Tables } from '../../tables/tables';
import { planJob, type Buildable } from '../pipeline';
import { formBody, yokeBody } from './bodies';
import { oneBendJob, type FormRun } from './one-bend';

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
  readonly bends: readonly PanelBend[];
  readonly order: readonly Step[];
  readonly forms: readonly PanelForm[];
  readonly findings: readonly Finding[];
}

export type PlannedPanel =
  BuildablePanel | { readonly buildable: false; readonly job: PanelJob; readonly findings: readonly Finding[] };

/** Width and depth of a clamp's frame as a body in the way, mm. Common practice: an F-clamp's bar and jaw. */
const CLAMP = { width: 40, frame: 25 } as const;

/**
 * A panel's job → its flat, every bend by itself with either side held, the order of work, and the fewest forms that serve it. `job` comes from the
 * job reader, which found `earlier`.
 */
export function planPanel(
  job: PanelJob,
  { tables, rules }: { readonly tables: Tables; readonly rules: PanelRules },
  earlier: readonly Finding[] = [],
): PlannedPanel {
  const built = buildUp(builtUpOf(job), rules);
  const soFar = [...earlier, ...built.findings];
  const panel = built.value;
  if (!panel || hasErrors(soFar)) return { buildable: false, job, findings: soFar };
  const ways = panel.bends.map((bend, index) => waysToMake(job, panel, { bend, index }, tables));
  const stuck = ways.flatMap(({ base, leg }, index) =>
    base.buildable || leg.buildable ? [] : inBend(base.findings, index),
  );
  if (stuck.length > 0) return { buildable: false, job, findings: unlike([...soFar, ...stuck]) };
  const bodies = ways.map((way, index) => bodyOf(panel, index, way));
  const uses = usesOf(job, panel, { ways, bodies }, rules);
  const shop = { clamp: { ...CLAMP, throat: job.clamps.throat, pastEnds: true } };
  const work = panel.bends.map((bend, index) =>
    workOf(panel, index, { bend, way: at(ways, index), uses: at(uses.value, index) }),
  );
  const found = findOrder(panel, { work, shop, rules });
  const ordered = [...soFar, ...uses.findings, ...orderFindings(panel, found)];
  if (!found.steps || hasErrors(ordered)) return { buildable: false, job, findings: unlike(ordered) };
  const { steps } = found;
  const forms = formsOf(job, panel, steps, tables);
  const bends = panel.bends.map((bend, index) => bendMade(bend, { step: stepOf(steps, index), way: at(ways, index) }));
  const failed = forms.flatMap(({ planned }) => (planned.buildable ? [] : planned.findings));
  const findings = unlike([
    ...ordered,
    ...failed,
    ...bends.flatMap(({ alone }, index) => inBend(alone.findings, index)),
  ]);
  if (hasErrors(findings)) return { buildable: false, job, findings };
  const made = forms.flatMap(({ planned, ...form }) => (planned.buildable ? [{ ...form, planned }] : []));
  return { buildable: true, job, panel, bends, order: steps, forms: made, findings };
}

function builtUpOf({ sheet, neutral, panel }: PanelJob): BuiltUp {
  return {
    thickness: sheet.thickness,
    base: panel.base,
    bends: panel.bends.map(({ on, turn, angle, radius, leg, height }) => ({
      ...plainBend,
      on,
      turn,
      angle,
      radius,
      reach: leg === null ? { height: height ?? NaN } : { leg },
      neutral,
    })),
    corners: panel.corners.map(({ key, treat, gap, rounded }) => {
      const [first = '', second = ''] = key.split('/').map((name) => name.trim());
      return { ...plainCorner, between: [first, second] as const, treat, gap, rounded };
    }),
  };
}

type Ways = Readonly<Record<HeldSide, ReturnType<typeof planJob>>>;

interface Numbered {
  readonly bend: Bend;
  readonly index: number;
}

function waysToMake(job: PanelJob, panel: Panel, { bend }: Numbered, tables: Tables): Ways {
  const runs = [{ bend: bend.name, from: 0, to: bend.finished.length }];
  const plan = (held: HeldSide): Ways['base'] => planJob(oneBendJob(job, panel, bend, { held, runs }), tables);
  return { base: plan('base'), leg: plan('leg') };
}

/** The side that can be held, the base first. */
function either({ base, leg }: Ways): Buildable {
  if (base.buildable) return base;
  if (leg.buildable) return leg;
  throw new RangeError('a bend that can be made neither way was let through');
}

function bodyOf(panel: Panel, index: number, way: Ways): FormBody {
  const { bend, layout } = either(way);
  return formBody(at(panel.bends, index).name, bend, layout);
}

/** The forms each bend may be made on: its own first, then those of other bends whose radii agree; or the one that is asked for. */
function usesOf(
  { panel: asked }: PanelJob,
  panel: Panel,
  { ways, bodies }: { readonly ways: readonly Ways[]; readonly bodies: readonly FormBody[] },
  rules: PanelRules,
): { readonly value: readonly (readonly FormUse[])[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const value = panel.bends.map(({ name }, index): FormUse[] => {
    const need = { bend: name, form: either(at(ways, index)).bend.form };
    const stretchOf = (body: FormBody) => nearestStretch(body.cone, need);
    const own = (): FormUse[] => ownForm(need).stretches.map((stretch) => ({ body: at(bodies, index), stretch }));
    const choice = at(asked.bends, index).form;
    if (choice.kind === 'own') return own();
    if (choice.kind === 'any') {
      const shared = bodies.flatMap((body, other): FormUse[] => {
        const stretch = other === index ? null : stretchOf(body);
        return stretch && stretch.off <= rules.formsAlike ? [{ body, stretch }] : [];
      });
      return [...own(), ...shared];
    }
    const path = `bends[${index}].form`;
    const body = bodies.find((one) => one.name === choice.bend && one.name !== name);
    if (!body) {
      const known = panel.bends.filter((_, other) => other !== index).map((other) => other.name);
      findings.push(finding('no-such-form', path, { name: choice.bend, known }));
      return own();
    }
    const stretch = stretchOf(body);
    const off = stretch?.off ?? Infinity;
    if (!stretch || off > rules.formsOffered) {
      findings.push(
        finding('form-differs', path, { bend: name, form: body.name, off: Number.isFinite(off) ? off : 0 }),
      );
      return own();
    }
    if (off > rules.formsAlike) findings.push(finding('form-nearly', path, { bend: name, form: body.name, off }));
    return [{ body, stretch }];
  });
  return { value, findings };
}

function workOf(
  panel: Panel,
  index: number,
  { bend, way, uses }: { readonly bend: Bend; readonly way: Ways; readonly uses: readonly FormUse[] },
): BendWork {
  const made = (['base', 'leg'] as const).flatMap((held) => (way[held].buildable ? [way[held]] : []));
  const { bend: plan } = either(way);
  const force = (held: HeldSide): number => (way[held].buildable ? way[held].bend.pull.handForce : Infinity);
  return {
    uses,
    pulled: Math.max(...made.map((one) => one.bend.wrap.chosen)),
    force: { base: force('base'), leg: force('leg') },
    yoke: yokeBody(panel, index, bend, plan),
    lever: plan.pull.with === 'bare' ? plan.pull.lever : null,
  };
}

function stepOf(steps: readonly Step[], index: number): Step {
  const found = steps.find(({ bend }) => bend === index);
  if (!found) throw new RangeError(`bend ${index} is in no step`);
  return found;
}

function bendMade(bend: Bend, { step, way }: { readonly step: Step; readonly way: Ways }): PanelBend {
  const { held } = step;
  const alone = way[held];
  if (!alone.buildable) throw new RangeError('a side that cannot be pulled was chosen');
  return { bend, step, hand: handOf(bend, held), smallEnd: smallEnd(bend, held), alone };
}

interface FormTried {
  readonly name: string;
  readonly runs: readonly FormRun[];
  readonly planned: ReturnType<typeof planJob>;
}

/** Every form that is used, with stations at the ends of each stretch that is. */
function formsOf(job: PanelJob, panel: Panel, steps: readonly Step[], tables: Tables): FormTried[] {
  const names = [...new Set(steps.map(({ use }) => use.body.name))];
  return names.map((name): FormTried => {
    const served = steps.filter(({ use }) => use.body.name === name);
    const owner = panel.bends.findIndex((bend) => bend.name === name);
    const { startsAtA, length } = ownerSide(served, at(panel.bends, owner));
    const runs = served.map(({ bend, use: { stretch } }): FormRun => {
      const [from, to] = startsAtA ? [stretch.from, stretch.to] : [length - stretch.to, length - stretch.from];
      return { bend: at(panel.bends, bend).name, from: Math.max(0, from), to: Math.min(length, to) };
    });
    const held = served.find(({ bend }) => bend === owner)?.held ?? served[0]?.held ?? 'base';
    return { name, runs, planned: planJob(oneBendJob(job, panel, at(panel.bends, owner), { held, runs }), tables) };
  });
}

/** Stretches are counted from a form's small end; its own bend's from end A. */
function ownerSide(
  served: readonly Step[],
  { finished }: Bend,
): { readonly startsAtA: boolean; readonly length: number } {
  const cone = at(served, 0).use.body.cone;
  return { startsAtA: finished.radiusA <= finished.radiusB, length: cone.length };
}

/** What the sums of one bend found, said of that bend in the panel's file. */
function inBend(findings: readonly Finding[], index: number): Finding[] {
  return findings.map((found) => ({
    ...found,
    path:
      found.path === 'bend' || found.path.startsWith('bend.')
        ? `bends[${index}]${found.path.slice('bend'.length)}`
        : found.path,
  }));
}

/** Each finding once: several bends may find the same of the sheet or the boards. */
function unlike(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ code, path, values }) => {
    const key = JSON.stringify([code, path, values]);
    return seen.has(key) ? false : (seen.add(key), true);
  });
}
