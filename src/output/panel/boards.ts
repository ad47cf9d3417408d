import { at } from '../../base/at';
import { fileName } from '../../base/file-name';
import type { LaidOut } from '../../drawing/boards/laid-out';
import type { Part } from '../../drawing/parts/part';
import type { Tables } from '../../tables/tables';
import { drawCornerBlock } from '../../drawing/panel/corner-block';
import { withOverall } from '../../drawing/parts/overall';
import { fitToTool } from '../../drawing/tooling';
import { boardOf } from '../../design/built/board-of';
import { drawPieces, layOutPieces } from '../pieces';
import type { BuildablePanel, PanelForm } from './plan-panel';
import { unlikeNames } from './unlike-names';

/** A form of the panel and its pieces of board. */
export interface FormPieces {
  readonly form: PanelForm;
  /** Its folder, and what its pieces are called by among other forms'. */
  readonly folder: string;
  /** By their own names, as in the form's folder. */
  readonly parts: readonly Part[];
}

/** Every piece of board of a panel's forms and its corners' blocks, and all of them laid out together. */
export interface PanelPieces {
  readonly forms: readonly FormPieces[];
  /** By the names they have on the boards: with the form's before them where there are several, `long-S1`. */
  readonly parts: readonly Part[];
  /** The layers of the corners' blocks, which are of no form. */
  readonly blocks: readonly Part[];
  readonly boards: readonly LaidOut[];
}

/** The pieces of all forms of a panel, on as few boards as hold them. Where there are several forms each piece has its form's name written on it. */
export function piecesOfPanel(planned: PanelOfPieces, tables: Tables): PanelPieces {
  const { forms } = planned;
  const folders = unlikeNames(forms.map(({ name }) => fileName(name)));
  const several = forms.length > 1;
  const made = forms.map((form, index): FormPieces => {
    const parts = drawPieces(form.planned, tables, several ? form.name : null);
    return { form, folder: at(folders, index), parts };
  });
  const blocks = blockPieces(planned, tables);
  const ofForms = made.flatMap(({ folder, form, parts: own }) =>
    own.map((part): Part =>
      several ? { ...part, id: idAmongForms(folder, part.id), name: `${part.name} of form ${form.name}` } : part,
    ),
  );
  // Boards, tool and spacing are the job's own, alike for every form.
  const parts = [...ofForms, ...blocks];
  return { forms: made, parts, blocks, boards: layOutPieces(parts, at(forms, 0).planned, tables) };
}

/** The layers of the blocks for a panel's corners, for each hand it is made for, drawn as the job's tool needs them. */
export function blockPieces({ panel, blocks, job }: PanelOfPieces, tables: Tables): Part[] {
  const { stations } = job.board;
  const board = boardOf(stations, tables).thickness;
  const hands = job.panel.pair ? (['left', 'right'] as const) : ([null] as const);
  const parts = blocks.flatMap(({ name, block, dowel }) =>
    hands.flatMap((hand) => drawCornerBlock({ panel, name, block, dowel, stock: stations.stock, board, hand })),
  );
  return fitToTool(
    parts.map((part) => withOverall(part, job.units)),
    job.cut,
    tables,
  );
}

type PanelOfPieces = Pick<BuildablePanel, 'forms' | 'panel' | 'blocks' | 'job'>;

/** What a piece is called among those of other forms. */
export function idAmongForms(folder: string, id: string): string {
  return `${folder}-${id}`;
}
