import { at } from '../../base/at';
import type { Drawing } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import type { PaperChoice } from '../../job/job';
import { captionUnder } from './caption';
import { addPageTo, beginDocument, endDocument } from './document';
import { dressForPaper, printDressed, type Dressed } from './dress';
import { drawFront, layOutFront, type FrontPage, type Listed } from './front';
import { drawFoot, drawMap, drawSeams } from './furniture';
import type { Lettering } from './lettering';
import { planPages, type PlannedPage } from './page-plan';
import type { Page } from './paper';
import type { Pen } from './pen';
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
  job: { readonly title: string; readonly units: LengthUnit },
  font: Uint8Array,
): Promise<Uint8Array> {
  const document = await beginDocument(font);
  const { letters } = document;
  const { prepared, planned, front } = prepare(templates, paper, job, letters);
  const pages = front.length + planned.length;

  const addPage = (page: Page, names: string, number: number, draw: (pen: Pen) => void): void => {
    addPageTo(document, page, (pen) => {
      draw(pen);
      drawFoot(pen, page, { title: job.title, names, number, pages, units: job.units }, letters);
    });
  };
  for (const [index, cover] of front.entries())
    addPage(cover.page, 'Read this first', index + 1, (pen) => drawFront(pen, cover));
  for (const [index, plan] of planned.entries()) {
    addPage(plan.page, namesOn(plan, prepared), front.length + index + 1, (pen) =>
      drawPlanned(pen, plan, prepared, letters),
    );
  }

  return endDocument(document, job.title);
}

/** How many pages {@link writeTemplates} would fill, without drawing them. */
export async function countPages(
  templates: readonly Template[],
  paper: PaperChoice,
  job: { readonly title: string; readonly units: LengthUnit },
  font: Uint8Array,
): Promise<number> {
  const { letters } = await beginDocument(font);
  const { planned, front } = prepare(templates, paper, job, letters);
  return front.length + planned.length;
}

interface PreparedPages {
  readonly prepared: readonly Prepared[];
  readonly planned: readonly PlannedPage[];
  readonly front: readonly FrontPage[];
}

function prepare(
  templates: readonly Template[],
  paper: PaperChoice,
  job: { readonly title: string; readonly units: LengthUnit },
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
  job: { readonly title: string; readonly units: LengthUnit },
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
