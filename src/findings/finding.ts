import type { Finding } from '../base/findings';
import { catalogue, type Code, type ValuesFor } from './catalogue';

/** No values need be given where a code has none. */
export type Given<C extends Code> = keyof ValuesFor<C> extends never ? [] : [values: ValuesFor<C>];

/**
 * A finding of the catalogue: `finding('would-crack', 'bend.radius', { ratio, … })`. Values are in mm, radians, N, MPa; what each
 * is, and the words, stand in the catalogue. `path` is where in the job; empty for the job as a whole.
 */
export function finding<C extends Code>(code: C, path: string, ...given: Given<C>): Finding;
export function finding(code: Code, path: string, values: Finding['values'] = {}): Finding {
  return { code, level: catalogue[code].level, path, values };
}
