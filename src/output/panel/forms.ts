import { at } from '../../base/at';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Run } from '../../job/job';
import type { FormChoice } from '../../job/panel/form-choice';
import type { PanelJob } from '../../job/panel/read';
import {
  nearestStretch,
  ownForm,
  settledUse,
  type FormBody,
  type FormUse,
  type HeldSide,
  type OfferedUse,
  type Panel,
  type Step,
  type Stretch,
} from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Buildable, Planned } from '../pipeline';
import { formBody } from './bodies';
import { guestOn, madeOnForm, runOf } from './guests';
import { heldAlongOf } from './held-along';
import { oneBendJob, runOfAll } from './one-bend';
import type { PlanForm } from './plan-form';

interface Given {
  /** Each bend by itself, and the side held in it. */
  readonly alone: readonly { readonly made: Buildable; readonly held: HeldSide }[];
  readonly rules: PanelRules;
  readonly planForm: PlanForm;
  /** Forms that were tried for a bend in vain. */
  readonly barred: readonly Barred[];
}

/** A bend that is not to be made on another's form. */
export interface Barred {
  readonly bend: number;
  readonly form: string;
}

interface Host {
  readonly index: number;
  readonly body: FormBody;
}

/** The forms each bend may be made on: its own first, then those of other bends whose radii agree and which hold it; or the one that is asked for. */
export function usesOf(
  job: PanelJob,
  panel: Panel,
  given: Given,
): { readonly value: readonly (readonly OfferedUse[])[]; readonly findings: readonly Finding[] } {
  const { alone, rules, barred } = given;
  const hosts = panel.bends.map(({ name }, index): Host => {
    const { bend, layout } = at(alone, index).made;
    return { index, body: formBody(name, bend, layout) };
  });
  const findings: Finding[] = [];
  const value = panel.bends.map(({ name }, index): readonly OfferedUse[] => {
    const need = { bend: name, form: at(alone, index).made.bend.form };
    const own = ownForm(need).stretches.map((stretch): FormUse => ({ body: at(hosts, index).body, stretch }));
    const choice = at<{ readonly form: FormChoice }>(job.panel.bends, index).form;
    if (choice.kind === 'own') return own;
    const others = hosts.filter((host) => host.index !== index);
    if (choice.kind === 'any') {
      const free = others.filter(({ body }) => !barred.some((one) => one.bend === index && one.form === body.name));
      const shared = free.flatMap((host) => {
        const stretch = nearestStretch(host.body.cone, need, rules.formsAlike);
        return stretch && stretch.off <= rules.formsAlike
          ? sharedUses(job, panel, { host, index, stretch }, given)
          : [];
      });
      return [...own, ...shared];
    }
    const path = `bends[${index}].form`;
    const host = others.find(({ body }) => body.name === choice.bend);
    if (!host) {
      findings.push(finding('no-such-form', path, { name: choice.bend, known: others.map(({ body }) => body.name) }));
      return own;
    }
    const stretch = nearestStretch(host.body.cone, need, rules.formsAlike);
    const offered = stretch ? sharedUses(job, panel, { host, index, stretch }, given) : [];
    const uses = offered.flatMap((use) => settledUse(use) ?? []);
    findings.push(
      ...checkAsked(stretch, uses, {
        bend: name,
        form: choice.bend,
        path,
        rules,
        clamps: at(alone, index).made.layout.clamps,
      }),
    );
    return uses.length > 0 ? uses : own;
  });
  return { value, findings };
}

interface Sharing {
  readonly host: Host;
  readonly index: number;
  readonly stretch: Stretch;
}

/**
 * A bend on another's form, with clamps, foot and stations for both; nothing where they do not find room. A form of one radius may stand either end first, so that
 * what of it reaches past the bend lies at either end.
 */
function sharedUses(
  job: PanelJob,
  panel: Panel,
  { host, index, stretch }: Sharing,
  { alone, planForm }: Given,
): OfferedUse[] {
  const { held } = at(alone, index);
  const [bend, owner] = [at(panel.bends, index), at(panel.bends, host.index)];
  const turns = host.body.cone.halfAngle === 0 ? [true, false] : [stretch.startsAtA];
  return turns.map((startsAtA): OfferedUse => {
    const use = { body: host.body, stretch: { ...stretch, startsAtA } };
    const settled = once((): FormUse | null => {
      const guest = guestOn(job, panel, { bend, held, use, owner }, planForm);
      if (!guest) return null;
      const runs = [runOfAll(owner), runOf(bend.name, use, owner.finished)];
      const { held: ownersSide } = at(alone, host.index);
      const asked = oneBendJob(job, panel, owner, { held: ownersSide, runs });
      const form = planForm(asked, { guests: [guest], heldAlong: heldAlongOf(panel, owner, ownersSide) });
      return form.buildable ? { ...use, body: formBody(owner.name, form.bend, form.layout, bend.name) } : null;
    });
    return { ...use, settled };
  });
}

function once<Value>(work: () => Value): () => Value {
  let done: { readonly value: Value } | null = null;
  return () => (done ??= { value: work() }).value;
}

interface Asks {
  readonly bend: string;
  readonly form: string;
  readonly path: string;
  readonly clamps: number;
  readonly rules: PanelRules;
}

/** What speaks against the form that is asked for. */
function checkAsked(
  stretch: Stretch | null,
  uses: readonly FormUse[],
  { path, rules, clamps, ...which }: Asks,
): Finding[] {
  if (!stretch) return [finding('form-too-short', path, which)];
  if (stretch.off > rules.formsOffered) return [finding('form-differs', path, { ...which, off: stretch.off })];
  if (uses.length === 0) return [finding('form-lacks-clamps', path, { ...which, clamps })];
  return stretch.off > rules.formsAlike ? [finding('form-nearly', path, { ...which, off: stretch.off })] : [];
}

/** A form that is used, with stations at the ends of each stretch that is; planned, or why it cannot be. */
export interface FormTried {
  readonly name: string;
  /** Number of the bend whose own it is. */
  readonly owner: number;
  readonly runs: readonly Run[];
  readonly planned: Planned;
  /** Numbers of the other bends made on it. */
  readonly guests: readonly number[];
  /** The bends made on it, each as it is held on the form that is built; nothing where that cannot be. */
  readonly made: readonly { readonly bend: number; readonly planned: Planned }[];
}

/** Every form that the steps use. */
export function formsOf(job: PanelJob, panel: Panel, steps: readonly Step[], planForm: PlanForm): FormTried[] {
  const names = [...new Set(steps.map(({ use }) => use.body.name))];
  return names.map((name) =>
    formOf(job, panel, { name, served: steps.filter(({ use }) => use.body.name === name) }, planForm),
  );
}

interface Served {
  readonly name: string;
  readonly served: readonly Step[];
}

function formOf(job: PanelJob, panel: Panel, { name, served }: Served, planForm: PlanForm): FormTried {
  const owner = panel.bends.findIndex((bend) => bend.name === name);
  const bend = at(panel.bends, owner);
  const runs = served.map(({ bend: number, use }) => runOf(at(panel.bends, number).name, use, bend.finished));
  const { held } = served.find(({ bend: number }) => number === owner) ?? at(served, 0);
  const standings = served
    .filter(({ bend: number }) => number !== owner)
    .map((step) => ({
      bend: at(panel.bends, step.bend),
      held: step.held,
      use: step.use,
      owner: bend,
      index: step.bend,
    }));
  const guests = standings.flatMap((standing) => guestOn(job, panel, standing, planForm) ?? []);
  const planned = planForm(oneBendJob(job, panel, bend, { held, runs }), {
    guests,
    heldAlong: heldAlongOf(panel, bend, held),
  });
  const made = planned.buildable
    ? [
        ...(standings.length < served.length ? [{ bend: owner, planned }] : []),
        ...standings.map((standing) => ({
          bend: standing.index,
          planned: madeOnForm(job, panel, { standing, form: planned }, planForm),
        })),
      ]
    : [];
  return { name, owner, runs, guests: standings.map(({ index }) => index), planned, made };
}

/** The bends that share a form which could not be made for all of them, or on which one of them then could not be made. */
export function barredBy(tried: readonly FormTried[]): Barred[] {
  return tried.flatMap(({ name, owner, guests, planned, made }) => {
    const failed = planned.buildable
      ? made.flatMap((one) => (one.planned.buildable || one.bend === owner ? [] : [one.bend]))
      : guests;
    return failed.map((bend) => ({ bend, form: name }));
  });
}

/** A form as it is finally made, in the way of the metal, clamped as the bend is. */
export function finalUse({ use }: Step, form: Buildable, bend: string): FormUse {
  return { body: formBody(use.body.name, form.bend, form.layout, bend), stretch: use.stretch };
}
