import { at } from '../../base/at';
import { InternalError } from '../../base/errors';
import { hasErrors, type Finding } from '../../base/findings';
import type { Run } from '../../job/job';
import type { PanelJob } from '../../job/panel/read';
import { findOrder, orderFindings, type Panel, type ShopBodies, type Step } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Buildable } from '../pipeline';
import { barredBy, formsOf, usesOf, type Barred, type FormTried } from './forms';
import { leftMetals, leftOnFor, type LeftOn } from './finish/left-on';
import { inBend } from './in-bend';
import type { PlanForm } from './plan-form';
import { standAgain } from './stand-again';
import { either, workOf, type Ways } from './ways';

/** A form of the panel: the bend whose own it is, and its stretches. */
export interface PanelForm {
  readonly name: string;
  readonly runs: readonly Run[];
  readonly planned: Buildable;
}

/** The steps, the forms they need, and each bend as it is held on the form that is built; nothing of it where there are errors. */
export interface SettledOrder {
  readonly steps: readonly Step[];
  readonly forms: readonly PanelForm[];
  /** In the panel's numbering. */
  readonly made: readonly Buildable[];
  readonly findings: readonly Finding[];
}

interface Given {
  readonly ways: readonly Ways[];
  readonly rules: PanelRules;
  readonly planForm: PlanForm;
}

/**
 * The order of work and its forms. Sharing is tried two bends at a time; where a form then cannot be made for all its bends, or one of them no longer clears, that bend
 * is kept off it and the order is looked for again.
 */
export function settleOrder(job: PanelJob, panel: Panel, given: Given): SettledOrder {
  const barred: Barred[] = [];
  let leftOn = leftOnFor(job.panel, panel, { order: [], pulls: [] }).value;
  for (;;) {
    const { settled, bar, leaves } = tryOrder(job, panel, { barred, leftOn }, given);
    // Where a lever that was not reckoned with is in the way, the order is looked for with it.
    const unseen = hasErrors(settled.findings)
      ? leaves.filter((one) => !leftOn.some((known) => holds(known, one)))
      : [];
    if (unseen.length > 0) {
      leftOn = [...leftOn.filter((known) => !unseen.some((one) => holds(one, known))), ...unseen];
      continue;
    }
    const fresh = bar.filter((one) => !barred.some(({ bend, form }) => bend === one.bend && form === one.form));
    const asked = fresh.filter(
      ({ bend }) => at<{ readonly form: { readonly kind: string } }>(job.panel.bends, bend).form.kind === 'any',
    );
    if (asked.length === 0) return settled;
    barred.push(...asked);
  }
}

/** Whether what is left on covers something else that is. */
function holds(known: LeftOn, { bend, side, extra }: LeftOn): boolean {
  return known.bend === bend && known.side === side && known.extra >= extra;
}

interface Attempt {
  readonly settled: SettledOrder;
  /** What the pulls found leave on; nothing where there is no order. */
  readonly leaves: readonly LeftOn[];
  /** Bends that are better kept off a form. */
  readonly bar: readonly Barred[];
}

interface Assumed {
  readonly barred: readonly Barred[];
  readonly leftOn: readonly LeftOn[];
}

function tryOrder(job: PanelJob, panel: Panel, { barred, leftOn }: Assumed, { ways, rules, planForm }: Given): Attempt {
  const alone = ways.map((way) => ({
    made: either(way),
    held: way.base.buildable ? ('base' as const) : ('leg' as const),
  }));
  const uses = usesOf(job, panel, { alone, rules, planForm, barred });
  const shop: ShopBodies = {
    clamp: { width: rules.clampWidth, frame: rules.clampFrame, throat: job.clamps.throat, pastEnds: true },
  };
  const work = ways.map((way, index) => workOf(panel, index, way, at(uses.value, index)));
  const leftThen = leftMetals(panel, leftOn);
  const found = findOrder(panel, { work, shop, rules, leftOn: leftThen });
  const ordered = [...uses.findings, ...orderFindings(panel, found)];
  if (!found.steps || hasErrors(ordered)) return { settled: { ...nothing, findings: ordered }, leaves: [], bar: [] };
  const { steps } = found;
  const tried = formsOf(job, panel, steps, planForm);
  const failed = failures(tried, panel);
  const bar = barredBy(tried);
  if (failed.length > 0) return { settled: { ...nothing, findings: [...ordered, ...failed] }, leaves: [], bar };
  const forms = tried.flatMap(({ name, runs, planned }) => (planned.buildable ? [{ name, runs, planned }] : []));
  const made = panel.bends.map((_, index) => madeIn(tried, index));
  const byName = new Map(forms.map(({ name, planned }) => [name, planned]));
  const leaves = leftOnFor(job.panel, panel, { order: steps, pulls: made.map(({ bend }) => bend) }).value;
  const leftNow = leftMetals(panel, leaves);
  const stood = standAgain(panel, steps, {
    made,
    forms: byName,
    shop,
    rules,
    leftOn: leftNow,
    tried: { work, leftOn: leftThen },
  });
  return {
    settled: { steps: stood.steps, forms, made, findings: [...ordered, ...stood.findings] },
    leaves,
    bar: stood.failed.flatMap(({ bend, use }) =>
      at(panel.bends, bend).name === use.body.name ? [] : [{ bend, form: use.body.name }],
    ),
  };
}

const nothing = { steps: [], forms: [], made: [] } as const;

function failures(tried: readonly FormTried[], panel: Panel): Finding[] {
  return tried.flatMap(({ planned, owner, made }) => [
    ...(planned.buildable ? [] : inBend(planned.findings, panel, owner)),
    ...made.flatMap((one) => (one.planned.buildable ? [] : inBend(one.planned.findings, panel, one.bend))),
  ]);
}

function madeIn(tried: readonly FormTried[], index: number): Buildable {
  const found = tried.flatMap(({ made }) => made).find(({ bend }) => bend === index);
  if (!found?.planned.buildable) throw new InternalError(`bend ${index} is in no step`);
  return found.planned;
}
