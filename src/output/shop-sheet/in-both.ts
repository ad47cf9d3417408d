import { html } from '../html';
import { inches, metric } from './measures';
import type { Cell } from './pieces';
import type { Shop } from './shop';

/** A length in mm and in inches whatever the sheet is written in, its own unit first: what is cut to. */
export function inBoth({ say }: Pick<Shop, 'say'>, mm: number): Cell {
  const lines = say.units === 'in' ? [inches(mm), metric(mm)] : [metric(mm), inches(mm)];
  return [lines[0] ?? '', html('small', {}, lines[1] ?? '')];
}
