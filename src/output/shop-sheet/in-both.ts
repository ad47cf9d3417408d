import { html } from '../html';
import { inches, metric } from './measures';
import type { Cell } from './pieces';
import type { Shop } from './shop';

/** A length in a narrow column: in the sheet's unit, the second of two below the first. */
export function inBoth({ say }: Pick<Shop, 'say'>, mm: number): Cell {
  return say.units === 'both' ? [metric(mm), html('small', {}, inches(mm))] : say.length(mm);
}
