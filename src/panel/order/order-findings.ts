import { at } from '../../base/at';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Panel } from '../flat/panel';
import type { FoundOrder } from './find-order';
import { selfCrossing } from './self-crossing';

/** Why a panel cannot be made: what is bent into itself, or the nearest miss where no order is possible. Empty where it can. */
export function orderFindings(panel: Panel, { steps, misses, frees }: FoundOrder): Finding[] {
  const crossed = selfCrossing(panel);
  if (crossed) return [finding('panel-crosses-itself', 'bends', { first: crossed[0], second: crossed[1] })];
  const [miss] = misses;
  if (steps || !miss) return [];
  const path = `bends[${miss.bend}]`;
  const bend = at(panel.bends, miss.bend).name;
  if (miss.why === 'throat') return [finding('clamps-too-short', path, { bend, reach: miss.needed, throat: miss.gap })];
  const { held, form, gap, needed } = miss;
  const [first, second] = miss.what;
  const apart = needed > 0 ? 'too near' : 'meet';
  const values = { bend, held, form, first, second, gap, needed, apart, frees: frees ?? 'nothing-known' } as const;
  return [finding('no-order', path, values)];
}
