import { InternalError } from '../../base/errors';
import { sayFindings } from '../../findings/say';
import { drawIsometric, type View } from '../picture/isometric';
import { buildModel } from '../picture/model';
import type { SheetState } from '../picture/wrapped-sheet';
import type { Buildable } from '../pipeline';
import { findBoard, findScrew, screwFor } from '../../tables/look-up';
import type { Board } from '../../tables/schema';
import { tablesIn, type Tables } from '../../tables/tables';
import { html, writeHtml, type HtmlElement } from '../html';
import { boardFigures } from './board-figure';
import { cutList } from './cut-list';
import { buyList } from './buy';
import { drawFigure } from './figure';
import { formFigures } from './form-figures';
import { flatSheet } from './flat-sheet';
import { screwTable, toolList } from './hardware';
import { jointTables } from './joint-tables';
import { measuresIn, type SheetUnits } from './measures';
import { keepFractions, section, theirs } from './pieces';
import type { Shop } from './shop';
import { sources } from './sources';
import { backingTable, holeTable, pilotTable, stationTable } from './station-table';
import { steps } from './steps';
import { STYLE } from './style';
import { summary } from './summary';
import { trialPieces } from './trial-pieces';

export interface ShopSheetOptions {
  /** Units to write in; the job's where not given. */
  readonly units?: SheetUnits;
}

/** No script, nothing fetched: a browser holds the file to it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** Largest picture that fits the text of a letter or A4 page beside a caption, mm. */
const PICTURE = { width: 180, height: 92 };

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
  const shop = gather(built, cut, tablesIn(tables, units), options.units ?? units);
  return writeHtml(html('html', { lang: 'en' }, head(shop), keepFractions(body(shop))));
}

function gather(
  { job, bend, layout, joints, plan, findings }: Buildable,
  { parts, boards }: Pick<Shop, 'parts' | 'boards'>,
  tables: Tables,
  units: SheetUnits,
): Shop {
  const board = (stock: string, thickness: number | null): Board => {
    const found = findBoard(tables, stock);
    if (!found) throw new InternalError(`no board ${stock}`);
    return thickness === null ? found : { ...found, thickness };
  };
  const spine = board(job.board.spine.stock, job.board.spine.thickness);
  const screw =
    job.screws.size === null ? screwFor(tables, job.units, layout.spine.thickness) : findScrew(tables, job.screws.size);
  if (!screw) throw new InternalError('no screw for this form');
  return {
    job,
    bend,
    layout,
    joints,
    plan,
    findings: sayFindings(findings, { units }),
    parts,
    boards,
    tables,
    say: measuresIn(units),
    screw,
    board: {
      spine,
      stations: board(job.board.stations.stock, job.board.stations.thickness),
      backing: board(job.board.backing.stock, job.board.backing.thickness),
    },
  };
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
      ...(shop.say.units === 'mm'
        ? []
        : [
            html(
              'p',
              { class: 'lead' },
              'Lengths in inches: thousandths, as the drawings have them, and in brackets the nearest 1/32 for the rule.',
            ),
          ]),
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
        ...buyList(shop),
      ),
      ...(shop.boards.length > 0 ? [flowing('boards', 'Parts on the boards', ...boardFigures(shop))] : []),
      flowing('flat-sheet', 'The sheet', ...flatSheet(shop)),
      section('steps', 'Step by step', pulledPicture(shop), ...steps(shop)),
      section('sources', 'What the numbers rest on', ...sources(shop)),
    ),
  );
}

/** A section that need not start a page. */
function flowing(id: string, title: string, ...children: Parameters<typeof html>[2][]): HtmlElement {
  return html('section', { id, class: 'flow' }, html('h2', {}, title), ...children);
}

function setUpPicture(shop: Shop): HtmlElement {
  return picture(
    shop,
    { kind: 'on-form', wrap: 0 },
    { face: 'front', tags: ['end', 'station', 'backing'], arrow: { from: 0.02, to: 0.3 } },
    'Set up: the form on the flat sheet, from the front. The lines on the sheet are the free leg’s tangent line and, where there is leverage, the trim line.',
  );
}

function pulledPicture(shop: Shop): HtmlElement {
  return picture(
    shop,
    { kind: 'on-form', wrap: shop.bend.wrap.chosen },
    { face: 'back', tags: ['end', 'backing', 'foot', 'clamp'], arrow: { from: 0.75, to: 1 } },
    `Pulled to ${shop.say.angle(shop.bend.wrap.chosen)} of wrap, from the back: backing stations, foot and clamp holes.`,
  );
}

/** The smaller end is turned to the viewer, so that it hides nothing. */
function picture(
  { bend, layout, joints }: Shop,
  state: SheetState,
  view: Pick<View, 'face' | 'tags' | 'arrow'>,
  caption: string,
): HtmlElement {
  const drawn = drawIsometric(buildModel(layout, bend, state, joints), {
    ...view,
    ...PICTURE,
    end: bend.form.halfAngle >= 0 ? 'A' : 'B',
  });
  return html('figure', {}, drawFigure(drawn, caption), html('figcaption', {}, caption));
}
