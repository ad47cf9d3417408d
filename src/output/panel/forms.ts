import { at } from '../../base/at';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { FormChoice } from '../../job/panel/form-choice';
import type { PanelJob } from '../../job/panel/read';
import { nearestStretch, ownForm, type FormBody, type FormUse, type Panel, type Step, type Stretch } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Tables } from '../../tables/tables';
import { planJob, type Buildable, type Planned } from '../pipeline';
import { formBody } from './bodies';
import { oneBendJob, type FormRun } from './one-bend';

interface Given {
  /** Each bend by itself. */
  readonly alone: readonly Buildable[];
  readonly rules: PanelRules;
}

/** The forms each bend may be made on: its own first, then those of other bends whose radii agree and which hold it; or the one that is asked for. */
export function usesOf(
  { panel: asked }: PanelJob,
  panel: Panel,
  { alone, rules }: Given,
): { readonly value: readonly (readonly FormUse[])[]; readonly findings: readonly Finding[] } {
  const bodies = panel.bends.map(({ name }, index) => formBody(name, at(alone, index).bend, at(alone, index).layout));
  const findings: Finding[] = [];
  const value = panel.bends.map(({ name }, index): FormUse[] => {
    const { bend, layout } = at(alone, index);
    const need = { bend: name, form: bend.form };
    const own = (): FormUse[] => ownForm(need).stretches.map((stretch) => ({ body: at(bodies, index), stretch }));
    const choice = at<{ readonly form: FormChoice }>(asked.bends, index).form;
    if (choice.kind === 'own') return own();
    const others = bodies.filter((_, other) => other !== index);
    if (choice.kind === 'any') {
      const shared = others.flatMap((body): FormUse[] => {
        const stretch = nearestStretch(body.cone, need);
        const does = stretch && stretch.off <= rules.formsAlike && holdsWith(body, stretch, layout.clamps);
        return does ? [{ body, stretch }] : [];
      });
      return [...own(), ...shared];
    }
    const body = others.find((one) => one.name === choice.bend);
    const asks = { name, path: `bends[${index}].form`, clamps: layout.clamps, rules };
    const refused = body
      ? checkAsked(body, nearestStretch(body.cone, need), asks)
      : [finding('no-such-form', asks.path, { name: choice.bend, known: others.map((one) => one.name) })];
    findings.push(...refused);
    const stretch = body && nearestStretch(body.cone, need);
    return body && stretch ? [{ body, stretch }] : own();
  });
  return { value, findings };
}

interface Asks {
  readonly name: string;
  readonly path: string;
  readonly clamps: number;
  readonly rules: PanelRules;
}

/** What speaks against the form that is asked for. */
function checkAsked(body: FormBody, stretch: Stretch | null, { name, path, clamps, rules }: Asks): Finding[] {
  const which = { bend: name, form: body.name };
  if (!stretch) return [finding('form-too-short', path, which)];
  if (stretch.off > rules.formsOffered) return [finding('form-differs', path, { ...which, off: stretch.off })];
  if (!holdsWith(body, stretch, clamps))
    return [finding('form-lacks-clamps', path, { ...which, holes: holesUnder(body, stretch), clamps })];
  return stretch.off > rules.formsAlike ? [finding('form-nearly', path, { ...which, off: stretch.off })] : [];
}

function holesUnder({ clamps }: FormBody, { from, to }: Pick<Stretch, 'from' | 'to'>): number {
  return clamps.filter((place) => place > from && place < to).length;
}

/** Rounding of a form's length, mm. */
const SAME = 1e-6;

/** Whether a stretch of a form has as many holes as it needs clamps; one that is clamped on its ears must be used whole. */
function holdsWith(body: FormBody, stretch: Pick<Stretch, 'from' | 'to'>, clamps: number): boolean {
  if (body.clamps.length === 0) return stretch.from < SAME && stretch.to > body.cone.length - SAME;
  return holesUnder(body, stretch) >= clamps;
}

/** A form that is used, with stations at the ends of each stretch that is; planned, or why it cannot be. */
export interface FormTried {
  readonly name: string;
  /** Number of the bend whose own it is. */
  readonly owner: number;
  readonly runs: readonly FormRun[];
  readonly planned: Planned;
}

/** Every form that the steps use. */
export function formsOf(job: PanelJob, panel: Panel, steps: readonly Step[], tables: Tables): FormTried[] {
  const names = [...new Set(steps.map(({ use }) => use.body.name))];
  return names.map((name): FormTried => {
    const served = steps.filter(({ use }) => use.body.name === name);
    const owner = panel.bends.findIndex((bend) => bend.name === name);
    const bend = at(panel.bends, owner);
    const runs = served.map(({ bend: number, use }) => runOf(at(panel.bends, number).name, use, bend.finished));
    const held = (served.find(({ bend: number }) => number === owner) ?? at(served, 0)).held;
    return { name, owner, runs, planned: planJob(oneBendJob(job, panel, bend, { held, runs }), tables) };
  });
}

/** Stretches are counted from a form's small end, runs from end A of the form's own bend. */
function runOf(
  bend: string,
  { stretch, body: { cone } }: FormUse,
  own: { readonly radiusA: number; readonly radiusB: number },
): FormRun {
  const { length } = cone;
  const [from, to] =
    own.radiusA <= own.radiusB ? [stretch.from, stretch.to] : [length - stretch.to, length - stretch.from];
  return { bend, from: Math.max(0, from), to: Math.min(length, to) };
}

/** A form as it is finally made, in the way of the metal; null where a step's stretch of it lacks the holes for its clamps. */
export function finalUse({ use }: Step, form: Buildable, clamps: number): FormUse | null {
  const body = formBody(use.body.name, form.bend, form.layout);
  return holdsWith(body, use.stretch, clamps) ? { body, stretch: use.stretch } : null;
}
