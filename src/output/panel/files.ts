import { at } from '../../base/at';
import type { Drawing, OutputFile } from '../../base/drawing';
import { onGrid } from '../../base/on-grid';
import { inCorner } from '../../base/transform';
import { fileName } from '../../base/file-name';
import { drawAids, type Aid } from '../../drawing/aids';
import { drawPanelBlank } from '../../drawing/panel/blank';
import type { PanelJob } from '../../job/panel/read';
import { sayFindings } from '../../findings/say';
import type { Tables } from '../../tables/tables';
import { coloursFor } from '../colour';
import { writeDxf } from '../dxf';
import { makeFiles, otherHand, templatesOf, type FileOptions } from '../files';
import type { Buildable } from '../pipeline';
import { planText } from '../plan/plan-text';
import { panelSolidFiles } from '../solids';
import { writeTemplates, type Template } from '../pdf/pdf';
import { writeSvg } from '../svg';
import { blankOf } from './panel-blank';
import { toPanelPlan } from './panel-plan';
import type { BuildablePanel } from './plan-panel';
import { writeWorkSheet } from './sheet/work-sheet';

/** Everything `make` stores for a panel: its blank for each hand, the order of work, the plan, and each form's own files in a folder by its name. */
export async function makePanelFiles(
  planned: BuildablePanel,
  given: { readonly tables: Tables; readonly font: Uint8Array },
  options: FileOptions = {},
): Promise<OutputFile[]> {
  const { job, forms, findings } = planned;
  const blanks = blankDrawings(planned);
  const gauges = guestGauges(planned);
  const templates = [...blankTemplates(blanks, job), ...gaugeTemplates(gauges, given.tables)];
  const colours = coloursFor(job.cut.colours);
  const folders = unlikeNames(forms.map(({ name }) => fileName(name)));
  const written = {
    kind: options.dxf ?? job.files.dxf,
    units: options.fileUnits ?? job.files.units,
    colours: colours.dxf,
  };
  const made = await Promise.all(
    forms.map(async ({ planned: form }, index) => {
      const files = await makeFiles(form, given, { ...options, ofPanel: true });
      // The panel's blank stands for all its bends.
      return files
        .filter(({ path }) => !path.startsWith('blank/'))
        .map((file) => ({ ...file, path: `forms/${at(folders, index)}/${file.path}` }));
    }),
  );
  const onSheets = (planned.finish.metal?.drawings ?? []).map(({ id, drawing }) => ({
    path: `blank/on-${id}`,
    drawing,
  }));
  return [
    ...[...blanks, ...onSheets].flatMap(({ path, drawing }): OutputFile[] => [
      { path: `${path}.dxf`, content: writeDxf(drawing, written), mime: 'image/vnd.dxf' },
      {
        path: `${path}.svg`,
        content: writeSvg(drawing, {
          title: `${job.title}: ${path}`,
          check: job.units,
          colours: colours.svg,
          decimals: FINE,
        }),
        mime: 'image/svg+xml',
      },
    ]),
    ...gauges.flatMap(({ folder, made, aids: own }) =>
      own.flatMap(({ id, title, drawing }): OutputFile[] => {
        const [path, placed] = [`bends/${folder}/${id}`, inCorner(drawing)];
        const named = `${made.job.title}: ${title}`;
        return [
          { path: `${path}.dxf`, content: writeDxf(placed, written), mime: 'image/vnd.dxf' },
          {
            path: `${path}.svg`,
            content: writeSvg(placed, { title: named, check: job.units, colours: colours.svg }),
            mime: 'image/svg+xml',
          },
        ];
      }),
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
    { path: 'order-of-work.html', content: writeWorkSheet(planned, blanks), mime: 'text/html' },
    {
      path: 'plan.json',
      content: planText(toPanelPlan(planned, sayFindings(findings, { units: job.units }))),
      mime: 'application/json',
    },
    ...panelSolidFiles(planned.panel, job.title),
    ...made.flat(),
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

/** Names told apart, on disks that take small and large letters for the same too: the second `a` is `a-2`. */
export function unlikeNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let count = 2; taken.has(own.toLowerCase()); count++) own = `${name}-${count}`;
    taken.add(own.toLowerCase());
    return own;
  });
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
      drawing: onGrid(inCorner({ shapes: drawPanelBlank(blank, { hand, face, units: job.units }) })),
    })),
  );
}
