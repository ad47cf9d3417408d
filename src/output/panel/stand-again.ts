import { at } from '../../base/at';
import { ROUNDING } from '../../base/tolerance';
import type { Finding } from '../../base/findings';
import {
  orderFindings,
  tryBend,
  type BendWork,
  type LeftMetal,
  type Panel,
  type ShopBodies,
  type Step,
} from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Buildable } from '../pipeline';
import { finalUse } from './forms';
import { workAlone } from './ways';

interface Given {
  /** Each bend as it is held in its step, on the form that is built. */
  readonly made: readonly Buildable[];
  /** The forms as they are finally made, by name. */
  readonly forms: ReadonlyMap<string, Buildable>;
  readonly shop: ShopBodies;
  readonly rules: PanelRules;
  /** What the pulls as they now are leave on. */
  readonly leftOn: readonly LeftMetal[];
  /** What the order was found by. */
  readonly tried: { readonly work: readonly BendWork[]; readonly leftOn: readonly LeftMetal[] };
}

interface Asked extends Pick<Step, 'use' | 'held'> {
  readonly work: BendWork;
  readonly leftOn: readonly LeftMetal[];
}

/** All that a step is looked at by besides the panel and the shop, as text; numbers as far as reckoning bears them out. */
function askedOf({ use: { body, stretch }, held, work, leftOn }: Asked): string {
  const asked = [body, stretch.from, stretch.to, stretch.startsAtA, work.pulling[held], leftOn];
  return JSON.stringify(asked, (_, value: unknown) =>
    typeof value === 'number' ? Math.round(value / ROUNDING) : value,
  );
}

/**
 * The steps once more with the forms as they are finally made, stations and holes for every stretch, and the pull as the held side has it: what was looked at to
 * find the order is each form with one of its bends. `failed`: the steps that no longer do, and why.
 */
export function standAgain(
  panel: Panel,
  steps: readonly Step[],
  { made, forms, shop, rules, leftOn, tried }: Given,
): { readonly steps: readonly Step[]; readonly failed: readonly Step[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const failed: Step[] = [];
  const again = steps.map((step, index): Step => {
    const { bend, held } = step;
    const form = forms.get(step.use.body.name);
    if (!form) return step;
    const use = finalUse(step, form, at(panel.bends, bend).name);
    const done = panel.bends.map((_, other) => steps.slice(0, index).some((before) => before.bend === other));
    const work = workAlone(panel, bend, at(made, bend), use);
    if (
      askedOf({ use, work, held, leftOn }) ===
      askedOf({ use: step.use, work: at(tried.work, bend), held, leftOn: tried.leftOn })
    )
      return step;
    const found = tryBend(panel, { bend, held, use, done, work, shop, rules, leftOn });
    if (!('why' in found)) return found;
    failed.push(step);
    findings.push(...orderFindings(panel, { steps: null, misses: [found], frees: null, tried: 1 }));
    return step;
  });
  return { steps: again, failed, findings };
}
