import { drawAids, drawTrial, type Aid } from '../drawing/aids';
import type { Drawing, OutputFile } from '../base/drawing';
import type { Job } from '../job/job';
import type { FixtureLayout } from '../design/fixture/fixture';
import { formatDiameter, type LengthUnit } from '../base/units';
import { drawParts } from '../drawing/parts';
import { labelLength } from '../drawing/parts/lengths';
import type { Part } from '../drawing/parts/part';
import { inCorner } from '../base/transform';
import { writeBoardPdf } from './pdf/board-pdf';
import { writeTemplates, type Template } from './pdf/pdf';
import { drawPieces, layOutPieces } from './pieces';
import type { Buildable } from './pipeline';
import { planText } from './plan/plan-text';
import type { Watch } from '../drawing/boards';
import type { LaidOut } from '../drawing/boards/laid-out';
import { writeShopSheet, type ShopSheetOptions } from './shop-sheet';
import { findBoard } from '../tables/look-up';
import { tablesIn, type Tables } from '../tables/tables';
import { operationRows } from '../drawing/tooling/operations';
import { coloursFor } from './colour';
import { writeDxf, type DxfKind, type DxfUnits } from './dxf';
import { writeOperations } from './operations';
import { solidFiles, type Form } from './solids';
import { writeSvg } from './svg';

/** How the files are written, where it is not as the job says. */
export interface FileOptions extends Omit<ShopSheetOptions, 'ofPanel'> {
  /** How a DXF's outlines are written; the job's `files.dxf` where not given. */
  readonly dxf?: DxfKind;
  /** Unit of the DXFs' numbers; the job's `files.units` where not given. */
  readonly fileUnits?: DxfUnits;
  /** Its pieces, where the form is one of a panel: boards, buying list and blank are then the panel's. */
  readonly ofPanel?: { readonly parts: readonly Part[] } | undefined;
}

/** What a job's files are made with. */
export interface MadeWith {
  readonly tables: Tables;
  /** The bytes of the printed drawings' typeface, DejaVu Sans Condensed. */
  readonly font: Uint8Array;
  /** Does the part that can be done beside the rest, where the edge has another thread for it; what it gives is the same. */
  readonly beside?: Beside;
}

/** What hangs on nothing that is made after it. */
export interface Beside {
  readonly solids: (form: Form, title: string) => Promise<OutputFile[]>;
  readonly templates: typeof writeTemplates;
  readonly prints: typeof boardPrints;
}

/** The same in the same thread. */
const HERE: Beside = {
  solids: (form, title) => Promise.resolve(solidFiles(form, title)),
  templates: writeTemplates,
  prints: boardPrints,
};

/**
 * parts → boards → files: everything `make` stores for a job that can be built.
 * The options are the drawings' and the shop sheet's; `watch` follows the laying out of boards.
 */
export async function makeFiles(
  planned: Buildable,
  { tables: all, font, beside = HERE }: MadeWith,
  { dxf, fileUnits, ofPanel, ...options }: FileOptions = {},
  watch: Watch = {},
): Promise<OutputFile[]> {
  const { bend, layout, joints, job, plan } = planned;
  const tables = tablesIn(all, job.units);
  const written = writtenAs(job, { dxf, fileUnits });
  const form: Form = { parts: drawParts({ layout, bend, job, joints }, tables), layout, bend, joints };
  const solids = beside.solids(form, job.title);
  const parts = ofPanel?.parts ?? drawPieces(planned, tables);
  const aids = [...drawAids(bend, job), ...drawTrial(bend, job, tables)];
  const templates = beside.templates(templatesOf(planned, { parts, aids }, tables), job.paper, job, font);
  const boards = ofPanel ? [] : layOutPieces(parts, planned, tables, watch);
  const prints = beside.prints(boards, { job: { title: job.title, units: job.units } }, tables, font);
  // All three together: where their thread fails it is heard of once.
  const besides = Promise.all([templates, prints, solids]);
  // A machine is told where a part's corner is, and a drawing of one part begins there.
  const placed = parts.map((part) => ({ ...part, drawing: inCorner(part.drawing) }));
  const drawings = [
    ...placed.map(({ id, name, drawing }) => ({ path: `parts/${id}`, title: `${job.title}: ${name}`, drawing })),
    ...boardDrawings(boards, job),
    ...aids.map(({ id, kind, title, drawing }) => ({
      path: `${kind === 'blank' ? 'blank' : 'aids'}/${id}`,
      title: `${job.title}: ${title}`,
      drawing: inCorner(drawing),
    })),
  ];
  const cut = drawings.flatMap((one) => cutFiles(one, job, written));
  const sheet = writeShopSheet(planned, { parts, boards }, tables, { ...options, ofPanel: ofPanel !== undefined });
  const [templatesPdf, printed, solid] = await besides;
  return [
    ...cut,
    { path: 'shop-sheet.html', content: sheet, mime: 'text/html' },
    { path: 'templates.pdf', content: templatesPdf, mime: 'application/pdf' },
    ...printed,
    ...writeOperations(operationRows(placed, planned, tables.tools), { sizes: job.units, places: written.units }),
    ...solid,
    { path: 'plan.json', content: planText(plan), mime: 'application/json' },
  ];
}

/** How a job's drawings are written. */
export interface WrittenAs {
  readonly kind: DxfKind;
  readonly units: DxfUnits;
  readonly colours: ReturnType<typeof coloursFor>['dxf'];
}

export function writtenAs(
  job: Pick<Job, 'files' | 'cut'>,
  { dxf, fileUnits }: { readonly dxf?: DxfKind | undefined; readonly fileUnits?: DxfUnits | undefined },
): WrittenAs {
  return { kind: dxf ?? job.files.dxf, units: fileUnits ?? job.files.units, colours: coloursFor(job.cut.colours).dxf };
}

/** A drawing and where it is stored, without its ending. */
export interface StoredDrawing {
  readonly path: string;
  readonly title: string;
  readonly drawing: Drawing;
}

/** The boards with their pieces. */
export function boardDrawings(boards: readonly LaidOut[], job: Pick<Job, 'title'>): StoredDrawing[] {
  return boards.map(({ id, drawing }) => ({ path: `boards/${id}`, title: `${job.title}: ${id}`, drawing }));
}

/** A drawing as DXF and SVG; `decimals` of the SVG where more are wanted than usual. */
export function cutFiles(
  { path, title, drawing }: StoredDrawing,
  job: Pick<Job, 'units' | 'cut'>,
  written: WrittenAs,
  decimals?: number,
): OutputFile[] {
  const { svg } = coloursFor(job.cut.colours);
  const options = { title, check: job.units, colours: svg };
  return [
    { path: `${path}.dxf`, content: writeDxf(drawing, written), mime: 'image/vnd.dxf' },
    {
      path: `${path}.svg`,
      content: writeSvg(drawing, decimals === undefined ? options : { ...options, decimals }),
      mime: 'image/svg+xml',
    },
  ];
}

/** The drawings that are printed at 1:1 on paper, for tracing or glueing on. */
export function templatesOf(
  { job, layout }: Pick<Buildable, 'job' | 'layout'>,
  { parts, aids }: { readonly parts: readonly Part[]; readonly aids: readonly Aid[] },
  tables: Tables,
): Template[] {
  return [
    // Traced or glued on, a template is cut to its line: a router's and a laser's drawings are not for that.
    ...(job.cut.with === 'jigsaw' ? parts : []).map(({ id, kind, name, thickness, stock, drawing }) => ({
      id,
      title: name,
      notes: [
        boardNote(stock, thickness, tables, job.units),
        ...(kind === 'spine' ? sinkNotes(layout, job.units) : []),
      ],
      drawing,
    })),
    ...aids
      .filter(({ id }) => isPrinted(id, job.paper.blanks))
      .map(({ id, kind, title, material, notes, drawing }) => ({
        id,
        title,
        notes: [materialNotes(job.units)[material], ...notes, ...(kind === 'blank' ? otherHand(job.paper.blanks) : [])],
        drawing,
      })),
  ];
}

/** Boards to have printed whole: glued on for a saw to follow, or laid under a machine's work to check it by. */
export async function boardPrints(
  boards: readonly LaidOut[],
  { job }: { readonly job: Pick<Job, 'title' | 'units'> },
  tables: Tables,
  font: Uint8Array,
): Promise<OutputFile[]> {
  const prints = await Promise.all(
    boards.map(async (board) => {
      const { id, stock, thickness, length, width } = board;
      const [thick, long, wide] = [thickness, length, width].map((size) => labelLength(size, job.units));
      const name = `${id}, ${findBoard(tables, stock)?.name ?? stock}, ${thick} thick, ${long} × ${wide}`;
      return { id, content: await writeBoardPdf(board, { title: job.title, name, units: job.units }, font) };
    }),
  );
  return prints.flatMap(({ id, content }): OutputFile[] =>
    content ? [{ path: `boards/${id}.pdf`, content, mime: 'application/pdf' }] : [],
  );
}

/** Whether an aid is among the templates: all but the blanks the job does not ask for. */
function isPrinted(id: string, blanks: Job['paper']['blanks']): boolean {
  return !id.startsWith('blank-') || blanks === 'both' || id === `blank-${blanks}`;
}

/** Where one hand is printed, how the other comes of it. */
export function otherHand(blanks: Job['paper']['blanks']): string[] {
  return blanks === 'both'
    ? []
    : [
        'For the other hand turn the joined paper over, printed face to the sheet, and prick every corner and line end through: end A is then on the other side. Or print both, paper.blanks: both.',
      ];
}

/** What an aid is cut from, as its note says. */
function materialNotes(units: LengthUnit): Readonly<Record<Aid['material'], string>> {
  return {
    card: `Glue to card, or to board up to ${units === 'in' ? '1/8 in' : '3 mm'}, and cut out`,
    paper: 'Cut out of the paper',
    sheet: 'Cut 1 from the job’s sheet',
    board: 'Cut from the stations’ board',
  };
}

/** Which face of a spine cut by hand its screw holes are sunk from, and how wide. */
function sinkNotes({ stations }: FixtureLayout, units: LengthUnit): string[] {
  const sizes = [...new Set(stations.flatMap(({ screws }) => screws.map(({ kind }) => kind.headDiameter)))];
  return [
    `Countersink each screw hole from one face only: a whole ring from this face, the front; a dashed ring, FROM BACK, from the other, ${sizes.map((size) => formatDiameter(size, units)).join(', ')} across`,
  ];
}

/** What a part is cut from, as its note says. */
function boardNote(stock: string, thickness: number, tables: Tables, units: LengthUnit): string {
  return `Cut 1 from ${findBoard(tables, stock)?.name ?? stock}, ${labelLength(thickness, units)} thick`;
}
