import font from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf';
import { boundsOf } from '../../base/bounds';
import type { Drawing } from '../../base/drawing';
import { drawAids, drawTrial } from '../../drawing/aids';
import { coloursFor } from '../../output/colour';
import { templatesOf } from '../../output/files';
import type { HtmlNode } from '../../output/html';
import { seePages, type SeenPage } from '../../output/pdf/pdf';
import { layOutPieces } from '../../output/pieces';
import { backingFigure, stationFigure } from '../../output/shop-sheet/board-figures';
import { boardFigures } from '../../output/shop-sheet/board-figure';
import { pieceRow } from '../../output/shop-sheet/cut-list';
import { gather } from '../../output/shop-sheet/gather';
import type { Shop } from '../../output/shop-sheet/shop';
import { spineFigure } from '../../output/shop-sheet/spine-figure';
import { drawingGroups } from '../../output/svg';
import { el, type Element } from '../../output/xml';
import { tablesIn } from '../../tables/tables';
import { tables, type Form } from '../work';
import type { Letters } from './legible';
import type { Size } from './pan';

/** A drawing that can be looked at by itself. */
export interface ViewedDrawing {
  /** Its own among all of a form. */
  readonly id: string;
  readonly group: Group;
  readonly name: string;
  /** mm. */
  readonly size: Size;
  readonly elements: readonly Element[];
  readonly letters: Letters;
}

export const groups = [
  'With dimensions',
  'To cut',
  'Boards',
  'Blank, gauges, trial strips',
  'Blank',
  'Pages of templates.pdf',
  'To fold of paper',
] as const;
export type Group = (typeof groups)[number];

/** Blank border round a drawing, mm. */
const MARGIN = 5;

/** The shop sheet's matter of a form, boards laid out: what takes longest. */
export function shopOf(form: Form): Shop {
  const { units } = form.job;
  const cut = { parts: form.parts, boards: layOutPieces(form.parts, form.planned, tables) };
  return gather(form.planned, cut, tablesIn(tables, units), { units, ofPanel: false });
}

/** Every drawing of a form, dimensioned ones first. */
export function allDrawings(form: Form): ViewedDrawing[] {
  const { job, bend, layout, parts } = form;
  const shop = shopOf(form);
  const colours = coloursFor(job.cut.colours).svg;
  const toCut = (group: Group, id: string, name: string, drawing: Drawing): ViewedDrawing => {
    const bounds = boundsOf(drawing);
    const size = { width: bounds.maxX - bounds.minX + 2 * MARGIN, height: bounds.maxY - bounds.minY + 2 * MARGIN };
    return {
      id: `cut-${id}`,
      group,
      name,
      size,
      elements: drawingGroups(drawing, bounds, MARGIN, colours),
      letters: 'cut',
    };
  };
  const boards = boardFigures({ ...shop, rowOf: (part) => pieceRow(shop, part) }).flatMap(picturesIn);
  return [
    figure('spine', 'Spine', spineFigure(shop)),
    ...layout.stations.map((one) => figure(one.name, `Station ${one.name}`, stationFigure(shop, one))),
    ...layout.backings.map((one) => figure(one.name, `Backing station ${one.name}`, backingFigure(shop, one))),
    ...shop.boards.flatMap(({ id }, index) => {
      const svg = boards[index];
      return svg ? [figure(id, `Layout of ${id}`, svg)] : [];
    }),
    ...parts.map(({ id, name, drawing }) => toCut('To cut', id, `${name}, to cut`, drawing)),
    ...shop.boards.map(({ id, drawing }) => toCut('Boards', id, `${id}, full size`, drawing)),
    ...[...drawAids(bend, job), ...drawTrial(bend, job, tablesIn(tables, job.units))].map(({ id, title, drawing }) =>
      toCut('Blank, gauges, trial strips', id, title, drawing),
    ),
  ];
}

/** Every page of a form's templates, as it is printed. */
export async function templatePages({ job, planned, bend, parts }: Form): Promise<ViewedDrawing[]> {
  const own = tablesIn(tables, job.units);
  const aids = [...drawAids(bend, job), ...drawTrial(bend, job, own)];
  return viewedPages(await seePages(templatesOf(planned, { parts, aids }, own), job.paper, job, font));
}

/** Printed pages as drawings to be looked at. */
export function viewedPages(pages: readonly SeenPage[]): ViewedDrawing[] {
  return pages.map((page, index) =>
    viewedPage(page, {
      id: `page-${index + 1}`,
      group: 'Pages of templates.pdf',
      name: `Page ${index + 1} of ${pages.length}: ${page.names}`,
    }),
  );
}

/** One printed page as a drawing of that name. */
export function viewedPage(
  { size, elements }: SeenPage,
  name: Pick<ViewedDrawing, 'id' | 'group' | 'name'>,
): ViewedDrawing {
  const edge = el('path', { d: `M0 0H${size.width}V${size.height}H0Z`, fill: '#ffffff', stroke: 'none' });
  return { ...name, size, elements: [edge, ...elements], letters: 'print' };
}

/** The drawing to begin with when a part is opened: the one with its dimensions, where there is one. */
export function drawingOf(part: string, all: readonly ViewedDrawing[]): string {
  return (all.find(({ id }) => id === part) ?? all.find(({ id }) => id === `cut-${part}`))?.id ?? '';
}

function figure(id: string, name: string, svg: Element): ViewedDrawing {
  const [, , width = 1, height = 1] = (svg.attributes.viewBox ?? '').split(' ').map(Number);
  const elements = svg.children.filter((child) => typeof child !== 'string').filter(({ name: tag }) => tag !== 'title');
  return { id, group: 'With dimensions', name, size: { width, height }, elements, letters: 'measures' };
}

function picturesIn(node: HtmlNode): Element[] {
  if (typeof node === 'string') return [];
  return 'tag' in node ? node.children.flatMap(picturesIn) : [node];
}
