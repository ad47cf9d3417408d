import type { Buildable } from '../pipeline';
import { tablesIn, type Tables } from '../../tables/tables';
import { html, type HtmlElement } from '../html';
import { boardFigures } from './board-figure';
import { cutList, pieceRow } from './cut-list';
import { buyList } from './buy';
import { formFigures } from './form-figures';
import { flatSheet } from './flat-sheet';
import { gather } from './gather';
import { screwTable, toolList } from './hardware';
import { jointTables } from './joint-tables';
import type { SheetUnits } from './measures';
import { pulledPicture, setUpPicture } from './pictures';
import { writePage } from './page';
import { flowing, inchNote, section, theirs } from './pieces';
import type { Shop } from './shop';
import { sources } from './sources';
import { backingTable, holeTable, pilotTable, stationTable } from './station-table';
import { legAndHoldTable, yokeTable } from './pulling';
import { steps } from './steps';
import { summary } from './summary';
import { trialPieces } from './trial-pieces';

export interface ShopSheetOptions {
  /** Units to write in; the job's where not given. */
  readonly units?: SheetUnits;
  /** Whether the bend is one of a panel; no where not given. */
  readonly ofPanel?: boolean;
}

/**
 * The shop sheet: one HTML file with everything a maker needs to cut, drill, assemble and use the form, to print on letter or
 * A4.
 */
export function writeShopSheet(
  built: Buildable,
  cut: Pick<Shop, 'parts' | 'boards'>,
  tables: Tables,
  options: ShopSheetOptions = {},
): string {
  const { units } = built.job;
  const shop = gather(built, cut, tablesIn(tables, units), {
    units: options.units ?? units,
    ofPanel: options.ofPanel ?? false,
  });
  return writePage(shop.job.title, 'shop sheet', body(shop));
}

function body(shop: Shop): HtmlElement {
  return html(
    'body',
    {},
    html(
      'header',
      {},
      html('h1', {}, theirs(shop.job.title)),
      html(
        'p',
        { class: 'lead' },
        `Shop sheet: a bending form for ${shop.bend.metal.name}, ${shop.say.thickness(shop.bend.section.thickness)}. Read it through before you cut.`,
      ),
      ...inchNote(shop.say),
    ),
    html(
      'main',
      {},
      setUpPicture(shop),
      flowing('summary', 'In short', ...summary(shop)),
      section(
        'stations',
        'Stations and holes',
        ...formFigures(shop),
        ...stationTable(shop),
        backingTable(shop),
        ...jointTables(shop),
        pilotTable(shop),
        holeTable(shop),
      ),
      section(
        'lists',
        'What to cut and buy',
        cutList(shop),
        ...trialPieces(shop),
        screwTable(shop),
        toolList(shop),
        ...yokeTable(shop),
        ...buyList(shop),
      ),
      ...(shop.boards.length > 0
        ? [
            flowing(
              'boards',
              'Parts on the boards',
              ...boardFigures({ ...shop, rowOf: (part) => pieceRow(shop, part) }),
            ),
          ]
        : []),
      flowing('flat-sheet', 'The sheet', ...flatSheet(shop)),
      section('steps', 'Step by step', pulledPicture(shop), ...steps(shop)),
      flowing('pull', 'Pull and hold', legAndHoldTable(shop)),
      flowing('sources', 'What the numbers rest on', ...sources(shop)),
    ),
  );
}
