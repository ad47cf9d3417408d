import { at } from '../../base/at';
import type { Drawing, OutputFile } from '../../base/drawing';
import { onGrid } from '../../base/on-grid';
import { inCorner } from '../../base/transform';
import { fileName } from '../../base/file-name';
import { drawAids, type Aid } from '../../drawing/aids';
import { drawPanelBlank } from '../../drawing/panel/blank';
import { blockId } from '../../drawing/panel/corner-block';
import type { PanelJob } from '../../job/panel/read';
import { sayFindings } from '../../findings/say';
import { operationRows, type OperationRow } from '../../drawing/tooling/operations';
import { tablesIn, type Tables } from '../../tables/tables';
import {
  boardDrawings,
  boardPrints,
  cutFiles,
  makeFiles,
  otherHand,
  templatesOf,
  writtenAs,
  type FileOptions,
} from '../files';
import { writeOperations } from '../operations';
import type { Buildable } from '../pipeline';
import { planText } from '../plan/plan-text';
import { panelSolidFiles, type SolidBlock } from '../solids';
import { writePaperModel, type ModelledPanel } from '../pdf/paper-model';
import { writeTemplates, type Template } from '../pdf/pdf';
import { blankOf } from './panel-blank';
import { toPanelPlan } from './panel-plan';
import type { BuildablePanel } from './plan-panel';
import { blockPieces, idAmongForms, piecesOfPanel, type PanelPieces } from './boards';
import { unlikeNames } from './unlike-names';
import { writeWorkSheet } from './sheet/work-sheet';

/** Everything `make` stores for a panel: its blank for each hand, the order of work, the plan, and each form's own files in a folder by its name. */
export async function makePanelFiles(
  planned: BuildablePanel,
  given: { readonly tables: Tables; readonly font: Uint8Array },
  options: FileOptions = {},
): Promise<OutputFile[]> {
  const { job, findings } = planned;
  const blanks = blankDrawings(planned);
  const gauges = guestGauges(planned);
  const tables = tablesIn(given.tables, job.units);
  const pieces = piecesOfPanel(planned, tables);
  const templates = templatesOfPanel(planned, tables);
  const written = writtenAs(job, options);
  const made = await Promise.all(
    pieces.forms.map(async ({ form, folder, parts }) => {
      const files = await makeFiles(form.planned, given, { ...options, ofPanel: { parts } });
      // The panel's blank stands for all its bends, and its steps of cutting name the pieces as its boards do.
      return files
        .filter(({ path }) => !path.startsWith('blank/') && !path.startsWith('operations.'))
        .map((file) => ({ ...file, path: `forms/${folder}/${file.path}` }));
    }),
  );
  const onSheets = (planned.finish.metal?.drawings ?? []).map(({ id, drawing }) => ({
    path: `blank/on-${id}`,
    drawing,
  }));
  return [
    ...[...blanks, ...onSheets].flatMap(({ path, drawing }) =>
      cutFiles({ path, title: `${job.title}: ${path}`, drawing }, job, written, FINE),
    ),
    ...pieces.blocks.flatMap(({ id, name, drawing }) =>
      cutFiles({ path: `corners/${id}`, title: `${job.title}: ${name}`, drawing: inCorner(drawing) }, job, written),
    ),
    ...boardDrawings(pieces.boards, job).flatMap((one) => cutFiles(one, job, written)),
    ...(await boardPrints(pieces.boards, planned, tables, given.font)),
    ...writeOperations(operationsOf(pieces, tables), { sizes: job.units, places: written.units }),
    ...gauges.flatMap(({ folder, made: guest, aids }) =>
      aids.flatMap(({ id, title, drawing }) =>
        cutFiles(
          { path: `bends/${folder}/${id}`, title: `${guest.job.title}: ${title}`, drawing: inCorner(drawing) },
          job,
          written,
        ),
      ),
    ),
    ...(templates.length === 0
      ? []
      : [
          {
            path: 'templates.pdf',
            content: await writeTemplates(templates, job.paper, job, given.font),
            mime: 'application/pdf',
          },
        ]),
    { path: 'paper-model.pdf', content: await writePaperModel(modelOf(planned), given.font), mime: 'application/pdf' },
    { path: 'order-of-work.html', content: writeWorkSheet(planned, { blanks, pieces, tables }), mime: 'text/html' },
    {
      path: 'plan.json',
      content: planText(toPanelPlan(planned, sayFindings(findings, { units: job.units }))),
      mime: 'application/json',
    },
    ...panelSolidFiles(planned.panel, job.title, blockSolids(planned)),
    ...made.flat(),
  ];
}

/** The blocks by what their pieces are called. */
function blockSolids({ blocks }: BuildablePanel): SolidBlock[] {
  return blocks.map(({ name, block, dowel }) => ({ id: blockId(name), block, dowel }));
}

/** The steps of cutting of all forms' pieces, by the names these have on the boards. */
function operationsOf({ forms, blocks }: PanelPieces, { tools }: Tables): OperationRow[] {
  const ofBlocks = blocks.map((part) => ({ ...part, drawing: inCorner(part.drawing) }));
  const ofForms = forms.flatMap(({ form, folder, parts }) => {
    const placed = parts.map((part) => ({ ...part, drawing: inCorner(part.drawing) }));
    return operationRows(placed, form.planned, tools).map((row) =>
      forms.length > 1 ? { ...row, part: idAmongForms(folder, row.part) } : row,
    );
  });
  return [...ofForms, ...operationRows(ofBlocks, at(forms, 0).form.planned, tools)];
}

/** The panel as it is folded of paper. */
export function modelOf({ panel, job, order, finish: { seams } }: BuildablePanel): ModelledPanel {
  const stepOf = (bend: number): number => 1 + order.findIndex((step) => step.bend === bend);
  return { title: job.title, units: job.units, paper: job.paper, panel, stepOf, seams };
}

/** What a panel's own templates.pdf holds, at true size. */
export function templatesOfPanel(planned: BuildablePanel, tables: Tables): Template[] {
  return [
    ...blankTemplates(blankDrawings(planned), planned.job),
    ...gaugeTemplates(guestGauges(planned), tables),
    ...templatesOf(at(planned.forms, 0).planned, { parts: blockPieces(planned, tables), aids: [] }, tables),
  ];
}

/** The blanks to lay on the sheet and prick through: those of the hand the job has printed. */
function blankTemplates(
  blanks: readonly PanelBlankDrawing[],
  { paper: { blanks: printed }, panel: { pair } }: PanelJob,
): Template[] {
  return blanks
    .filter(({ hand }) => printed === 'both' || hand === printed)
    .map(({ path, hand, drawing }) => ({
      id: path,
      title: `Blank, ${hand}`,
      notes: [
        'Lay it on the sheet, prick every corner, line end and place of a curve through, and join the pricks.',
        ...(pair ? otherHand(printed) : []),
      ],
      drawing,
    }));
}

/** The gauges of a bend that is made on another's form: those beside the form are its own bend's. */
interface GuestGauges {
  readonly name: string;
  readonly folder: string;
  readonly made: Buildable;
  readonly aids: readonly Aid[];
}

function guestGauges({ bends }: BuildablePanel): GuestGauges[] {
  const guests = bends.filter(({ bend, step }) => step.use.body.name !== bend.name);
  const folders = unlikeNames(guests.map(({ bend }) => fileName(bend.name)));
  return guests.map(({ bend: { name }, alone: made }, index) => ({
    name,
    folder: at(folders, index),
    made,
    aids: drawAids(made.bend, made.job).filter(({ kind }) => kind !== 'blank'),
  }));
}

function gaugeTemplates(gauges: readonly GuestGauges[], tables: Tables): Template[] {
  return gauges.flatMap(({ name, made, aids }) =>
    templatesOf(made, { parts: [], aids }, tables).map((template) => ({
      ...template,
      id: `${template.id} (${name})`,
      title: `${template.title}, bend ${name}`,
    })),
  );
}

/** Decimals of the blank's SVG: read again it is the same within 10⁻⁶ mm. */
const FINE = 8;

/** One face of a blank for one hand. */
export interface PanelBlankDrawing {
  readonly path: string;
  readonly hand: 'left' | 'right';
  readonly drawing: Drawing;
}

/** The panel’s blank for each hand, and each face that is marked. */
export function blankDrawings(planned: BuildablePanel): PanelBlankDrawing[] {
  const { panel, job } = planned;
  const blank = blankOf(planned);
  const hands = job.panel.pair ? (['left', 'right'] as const) : (['left'] as const);
  const faces = panel.bends.some(({ turn }) => turn === 'down')
    ? (['marked', 'other'] as const)
    : (['marked'] as const);
  return hands.flatMap((hand) =>
    faces.map((face) => ({
      path: `blank/${job.panel.pair ? `blank-${hand}` : 'blank'}${face === 'other' ? '-other-face' : ''}`,
      hand,
      drawing: onGrid(
        inCorner({ shapes: drawPanelBlank(blank, { hand: job.panel.pair ? hand : null, face, units: job.units }) }),
      ),
    })),
  );
}
