import { InternalError } from '../../../base/errors';
import type { Part } from '../../../drawing/parts/part';
import type { Tables } from '../../../tables/tables';
import type { HtmlElement } from '../../html';
import { boardFigures } from '../../shop-sheet/board-figure';
import { pieceRow, type PieceRow } from '../../shop-sheet/cut-list';
import { gather } from '../../shop-sheet/gather';
import type { SheetUnits } from '../../shop-sheet/measures';
import { paragraph } from '../../shop-sheet/pieces';
import type { Shop } from '../../shop-sheet/shop';
import type { Buildable } from '../../pipeline';
import { idAmongForms, type PanelPieces } from '../boards';
import { sentences } from '../../sentences';

/** What a form's own sheet speaks of, for a form of a panel or a bend on one; `tables`: in the job's units. */
export function shopOf(
  planned: Buildable,
  parts: readonly Part[],
  { tables, units }: { readonly tables: Tables; readonly units: SheetUnits },
): Shop {
  return gather(planned, { parts, boards: [] }, tables, { units, ofPanel: true });
}

/** The boards with the pieces of every form on them, and what is cut from each. */
export function boardsTogether(
  { forms, parts, blocks, boards }: PanelPieces,
  given: { readonly tables: Tables; readonly units: SheetUnits },
): HtmlElement[] {
  const several = forms.length > 1;
  const rows = new Map(
    forms.flatMap(({ form, folder, parts: own }) => {
      const shop = shopOf(form.planned, own, given);
      return own.map((part): [string, PieceRow] => [
        several ? idAmongForms(folder, part.id) : part.id,
        pieceRow(shop, part),
      ]);
    }),
  );
  const [first] = forms;
  if (!first) return [];
  const shop = shopOf(first.form.planned, first.parts, given);
  const { job, say, tables } = shop;
  for (const part of blocks) rows.set(part.id, { ...pieceRow(shop, part), names: [part.id] });
  const rowOf = (part: Part): PieceRow => {
    const row = rows.get(part.id);
    if (!row) throw new InternalError(`a piece of no form: ${part.id}`);
    return row;
  };
  return [
    ...(several
      ? [
          paragraph(
            sentences(
              'The pieces of all forms together.',
              'Each is called by its form and its own name, and has its form’s name written on it; the forms’ own sheets call it by the latter.',
              'Write the name on whatever has none.',
            ),
          ),
        ]
      : []),
    ...boardFigures({ job, say, tables, parts, boards, rowOf }),
  ];
}
