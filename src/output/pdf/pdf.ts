import { at } from '../../base/at';
import type { Drawing } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import type { PaperChoice } from '../../job/job';
import type { Element } from '../xml';
import { captionUnder } from './caption';
import { addPageTo, beginDocument, endDocument } from './document';
import { dressForPaper, printDressed, type Dressed } from './dress';
import { drawFront, layOutFront, type FrontPage, type Listed } from './front';
import { drawFoot, drawMap, drawSeams } from './furniture';
import type { Lettering } from './lettering';
import { planPages, type PlannedPage } from './page-plan';
import type { Page, Size } from './paper';
import type { Pen } from './pen';
import { makePicturePen } from './picture-pen';
import { pageCount, tileName } from './tile-plan';

/** A drawing to print at 1:1. */
export interface Template {
  readonly id: string;
  readonly title: string;
  /** Short remarks printed with it: board, how many, which face. */
  readonly notes?: readonly string[];
  readonly drawing: Drawing;
}

/** A drawing with all that is printed with it. */
interface Prepared {
  readonly template: Template;
  readonly dressed: Dressed;
  readonly caption: ReturnType<typeof captionUnder>;
}

/**
 * Every drawing at exactly 1:1 on paper, as one PDF: small ones share pages, large ones are spread over several. The same drawings give
 * the same bytes, in node and in a browser. `font`: the bytes of a TrueType face, DejaVu Sans Condensed; only the characters used are stored.
 * The file asks viewers not to scale it and printers to print one side. Source of the format: ISO 32000-1.
 */
export async function writeTemplates(
  templates: readonly Template[],
  paper: PaperChoice,
  job: PrintedJob,
  font: Uint8Array,
): Promise<Uint8Array> {
  const begun = await beginDocument(font);
  for (const { page, draw } of layOutPages(templates, paper, job, begun.letters)) addPageTo(begun, page, draw);
  return endDocument(begun, job.title);
}

/** How many pages {@link writeTemplates} would fill, without drawing them. */
export async function countPages(
  templates: readonly Template[],
  paper: PaperChoice,
  job: PrintedJob,
  font: Uint8Array,
): Promise<number> {
  const { letters } = await beginDocument(font);
  return layOutPages(templates, paper, job, letters).length;
}

/** A page of {@link writeTemplates} to be looked at: what is on it, and its picture, mm. */
export interface SeenPage {
  readonly names: string;
  readonly size: Size;
  readonly elements: readonly Element[];
}

/** The pages {@link writeTemplates} would print, as pictures. */
export async function seePages(
  templates: readonly Template[],
  paper: PaperChoice,
  job: PrintedJob,
  font: Uint8Array,
): Promise<SeenPage[]> {
  const { letters } = await beginDocument(font);
  return layOutPages(templates, paper, job, letters).map(({ page, names, draw }) => {
    const pen = makePicturePen(page.height);
    draw(pen);
    return { names, size: page, elements: pen.elements() };
  });
}

/** What every page says of its job. */
interface PrintedJob {
  readonly title: string;
  readonly units: LengthUnit;
}

/** A page: its paper, what is on it, and how it is drawn, foot included. */
interface LaidPage {
  readonly page: Page;
  readonly names: string;
  readonly draw: (pen: Pen) => void;
}

function layOutPages(
  templates: readonly Template[],
  paper: PaperChoice,
  job: PrintedJob,
  letters: Lettering,
): LaidPage[] {
  const { prepared, planned, front } = prepare(templates, paper, job, letters);
  const pages: LaidPage[] = [
    ...front.map((cover) => ({
      page: cover.page,
      names: 'Read this first',
      draw: (pen: Pen) => drawFront(pen, cover),
    })),
    ...planned.map((plan) => ({
      page: plan.page,
      names: namesOn(plan, prepared),
      draw: (pen: Pen) => drawPlanned(pen, plan, prepared, letters),
    })),
  ];
  return pages.map(({ page, names, draw }, index) => ({
    page,
    names,
    draw: (pen) => {
      draw(pen);
      drawFoot(pen, page, { ...job, names, number: index + 1, pages: pages.length }, letters);
    },
  }));
}

interface PreparedPages {
  readonly prepared: readonly Prepared[];
  readonly planned: readonly PlannedPage[];
  readonly front: readonly FrontPage[];
}

function prepare(
  templates: readonly Template[],
  paper: PaperChoice,
  job: PrintedJob,
  letters: Lettering,
): PreparedPages {
  const prepared = templates.map((template): Prepared => {
    const dressed = dressForPaper(template.drawing, job.units, letters);
    return { template, dressed, caption: captionUnder(dressed.bounds, template.title, template.notes ?? [], letters) };
  });
  const planned = planPages(
    prepared.map(({ dressed, caption }) => ({ bounds: dressed.bounds, block: caption.block })),
    paper,
  );
  return { prepared, planned, front: layOutFrontPages({ prepared, planned }, paper, job, letters) };
}

function drawPlanned(pen: Pen, plan: PlannedPage, prepared: readonly Prepared[], letters: Lettering): void {
  if (plan.kind === 'tile') {
    printDressed(pen, at(prepared, plan.item).dressed, { place: plan.tile.place, frame: plan.page.frame }, letters);
    drawSeams(pen, plan.tile, plan.grid.overlap);
    drawMap(pen, plan.page, plan.grid, plan.tile);
    return;
  }
  for (const { item, place } of plan.placed) {
    const { dressed, caption } = at(prepared, item);
    const layers = [...dressed.layers, { width: 0, dash: [], drawing: { shapes: caption.lines } }];
    printDressed(pen, { ...dressed, layers }, { place, frame: plan.page.frame }, letters);
  }
  drawMap(pen, plan.page, { columns: 1, rows: 1, overlap: 0, page: plan.page }, { row: 0, column: 0 });
}

function namesOn(plan: PlannedPage, prepared: readonly Prepared[]): string {
  if (plan.kind === 'shared') return plan.placed.map(({ item }) => at(prepared, item).template.title).join(' · ');
  const { title } = at(prepared, plan.item).template;
  return pageCount(plan.grid) === 1 ? title : `${plan.tile.name} of ${title}`;
}

/** The front pages say where each drawing is, which depends on how many front pages there are: laid out again until that settles. */
function layOutFrontPages(
  { prepared, planned }: Omit<PreparedPages, 'front'>,
  paper: PaperChoice,
  job: PrintedJob,
  letters: Lettering,
): FrontPage[] {
  const layOut = (before: number): FrontPage[] =>
    layOutFront(
      job,
      prepared.map(({ template }, item) => listed(template, item, planned, before)),
      paper,
      letters,
    );
  // More front pages make larger page numbers, never fewer lines: the count only grows, and soon stands.
  let front = layOut(1);
  for (let next = layOut(front.length); next.length !== front.length; next = layOut(front.length)) front = next;
  return layOut(front.length);
}

function listed(
  { title, notes = [] }: Template,
  item: number,
  planned: readonly PlannedPage[],
  before: number,
): Listed {
  const numbers = planned.flatMap((plan, index) =>
    (plan.kind === 'tile' ? plan.item === item : plan.placed.some((placed) => placed.item === item))
      ? [index + before + 1]
      : [],
  );
  const [first, last] = [at(numbers, 0), at(numbers, -1)];
  const plan = planned[first - before - 1];
  if (plan?.kind !== 'tile' || pageCount(plan.grid) === 1) return { title, notes, where: `page ${first}` };
  return {
    title,
    notes,
    where: `pages ${first} to ${last}, ${tileName(0, 0)} to ${tileName(plan.grid.rows - 1, plan.grid.columns - 1)}`,
  };
}
