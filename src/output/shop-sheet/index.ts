import type { Buildable } from '../pipeline';
import { tablesIn, type Tables } from '../../tables/tables';
import { html, writeHtml, type HtmlElement } from '../html';
import { boardFigures } from './board-figure';
import { cutList } from './cut-list';
import { buyList } from './buy';
import { formFigures } from './form-figures';
import { flatSheet } from './flat-sheet';
import { gather } from './gather';
import { screwTable, toolList } from './hardware';
import { jointTables } from './joint-tables';
import type { SheetUnits } from './measures';
import { pulledPicture, setUpPicture } from './pictures';
import { flowing, inchNote, keepFractions, section, theirs } from './pieces';
import type { Shop } from './shop';
import { sources } from './sources';
import { backingTable, holeTable, pilotTable, stationTable } from './station-table';
import { yokeTable } from './pulling';
import { steps } from './steps';
import { STYLE } from './style';
import { summary } from './summary';
import { trialPieces } from './trial-pieces';

export interface ShopSheetOptions {
  /** Units to write in; the job's where not given. */
  readonly units?: SheetUnits;
  /** Whether the bend is one of a panel; no where not given. */
  readonly ofPanel?: boolean;
}

/** No script, nothing fetched: a browser holds the file to it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

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
  return writeHtml(html('html', { lang: 'en' }, head(shop), keepFractions(body(shop))));
}

function head({ job }: Shop): HtmlElement {
  return html(
    'head',
    {},
    html('meta', { charset: 'utf-8' }),
    html('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    html('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    html('title', {}, `${job.title}: shop sheet`),
    html('style', {}, STYLE),
  );
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
      ...(shop.boards.length > 0 ? [flowing('boards', 'Parts on the boards', ...boardFigures(shop))] : []),
      flowing('flat-sheet', 'The sheet', ...flatSheet(shop)),
      section('steps', 'Step by step', pulledPicture(shop), ...steps(shop)),
      section('sources', 'What the numbers rest on', ...sources(shop)),
    ),
  );
}
