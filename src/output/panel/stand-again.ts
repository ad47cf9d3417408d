import { at } from '../../base/at';
import type { Finding } from '../../base/findings';
import { orderFindings, tryBend, type LeftMetal, type Panel, type ShopBodies, type Step } from '../../panel';
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
}

/**
 * The steps once more with the forms as they are finally made, stations and holes for every stretch, and the pull as the held side has it: what was looked at to
 * find the order is each form with one of its bends. `failed`: the steps that no longer do, and why.
 */
export function standAgain(
  panel: Panel,
  steps: readonly Step[],
  { made, forms, shop, rules, leftOn }: Given,
): { readonly steps: readonly Step[]; readonly failed: readonly Step[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const failed: Step[] = [];
  const again = steps.map((step, index): Step => {
    const { bend, held } = step;
    const form = forms.get(step.use.body.name);
    if (!form) return step;
    const use = finalUse(step, form, at(panel.bends, bend).name);
    const done = panel.bends.map((_, other) => steps.slice(0, index).some((before) => before.bend === other));
    const work = workAlone(panel, bend, at(made, bend), [use]);
    const found = tryBend(panel, { bend, held, use, done, work, shop, rules, leftOn });
    if (!('why' in found)) return found;
    failed.push(step);
    findings.push(...orderFindings(panel, { steps: null, misses: [found], frees: null, tried: 1 }));
    return step;
  });
  return { steps: again, failed, findings };
}
