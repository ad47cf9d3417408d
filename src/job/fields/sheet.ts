import { block, field } from './field';
import { metal, ratio, sheetThickness } from './quantities';

/** What every job says of the metal that is bent. */
export const sheetFields = {
  /** Id of a row of `shared/sheet-metals.json`. */
  material: field({
    label: 'Metal',
    help: 'Id of a metal in shared/sheet-metals.json',
    example: 'aluminium-3003-h14',
    is: metal,
    required: true,
  }),
  /** mm. */
  thickness: field({
    label: 'Thickness, or gauge as 18 ga',
    help: 'Sheet thickness; a gauge such as 18 ga goes by the metal’s own gauge table',
    example: '18 ga',
    is: sheetThickness(0.1, 12.7),
    required: true,
  }),
  /** Overrides the table's minimum bend radius, in multiples of the thickness. */
  minBendRatio: field({
    label: 'Smallest bend radius over thickness',
    help: 'Smallest inside bend radius as a multiple of the thickness, where your supplier says otherwise',
    example: '1.5',
    group: 'own',
    is: ratio(0, 50),
    without: 'the metal’s',
  }),
};

/** The metal that is bent. */
export const sheet = block({ help: 'The metal that is bent', group: 'sheet', required: true }, sheetFields);
