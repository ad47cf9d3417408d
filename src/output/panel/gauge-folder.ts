import { at } from '../../base/at';
import { fileName } from '../../base/file-name';
import type { BuildablePanel } from './plan-panel';
import { unlikeNames } from './unlike-names';

/** The folder that holds a bend's gauges: beside its own form, or one of the bend's own where it is made on another's. */
export function gaugeFolder({ bends, forms }: Pick<BuildablePanel, 'bends' | 'forms'>, bend: number): string {
  const { name } = at(bends, bend).bend;
  const own = forms.findIndex((form) => form.name === name);
  if (own >= 0) return `forms/${at(unlikeNames(forms.map((form) => fileName(form.name))), own)}/aids`;
  const guests = bends.filter((one) => one.step.use.body.name !== one.bend.name).map((one) => one.bend.name);
  return `bends/${at(unlikeNames(guests.map(fileName)), guests.indexOf(name))}`;
}
