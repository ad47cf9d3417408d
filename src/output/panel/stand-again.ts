import { at } from '../../base/at';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { orderFindings, tryBend, type Panel, type ShopBodies, type Step } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import type { Buildable } from '../pipeline';
import { finalUse } from './forms';
import { workAlone } from './ways';

interface Given {
  /** Each bend by itself, held as in its step. */
  readonly alone: readonly Buildable[];
  /** The forms as they are finally made, by name. */
  readonly forms: ReadonlyMap<string, Buildable>;
  readonly shop: ShopBodies;
  readonly rules: PanelRules;
}

/**
 * The steps once more with the forms as they are finally made, stations and holes for every stretch, and the pull as the held side has it: what was looked at to
 * find the order is each bend's own form. Findings where one no longer does.
 */
export function standAgain(
  panel: Panel,
  steps: readonly Step[],
  { alone, forms, shop, rules }: Given,
): { readonly steps: readonly Step[]; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const again = steps.map((step, index): Step => {
    const { bend, held } = step;
    const made = at(alone, bend);
    const form = forms.get(step.use.body.name);
    if (!form) return step;
    const use = finalUse(step, form, made.layout.clamps);
    if (!use) {
      const { clampHoles, clamps } = { clampHoles: form.layout.clampHoles.length, clamps: made.layout.clamps };
      const which = { bend: at(panel.bends, bend).name, form: step.use.body.name };
      findings.push(finding('form-lacks-clamps', `bends[${bend}].form`, { ...which, holes: clampHoles, clamps }));
      return step;
    }
    const done = panel.bends.map((_, other) => steps.slice(0, index).some((before) => before.bend === other));
    const work = workAlone(panel, bend, made, [use]);
    const found = tryBend(panel, { bend, held, use, done, work, shop, rules });
    if (!('why' in found)) return found;
    findings.push(...orderFindings(panel, { steps: null, misses: [found], frees: null, tried: 1 }));
    return step;
  });
  return { steps: again, findings };
}
