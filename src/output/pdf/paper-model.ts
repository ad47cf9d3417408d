import { at } from '../../base/at';
import { boundsOf } from '../../base/bounds';
import type { Drawing } from '../../base/drawing';
import { moveDrawing } from '../../base/transform';
import type { LengthUnit } from '../../base/units';
import { modelScale, paperModel, type PaperModel } from '../../drawing/panel/paper-model';
import type { PaperChoice } from '../../job/job';
import type { Panel } from '../../panel';
import type { SeamLayout } from '../../panel/seams/seam';
import { addPageTo, beginDocument, endDocument } from './document';
import { printShape } from './dress';
import { wrap, type Lettering } from './lettering';
import { isRoll, pagesOf, type Page } from './paper';
import type { SeenPage } from './pdf';
import type { Pen } from './pen';
import { makePicturePen } from './picture-pen';
import { sentences } from '../sentences';

/** A panel to be folded of paper. */
export interface ModelledPanel {
  readonly title: string;
  readonly units: LengthUnit;
  readonly paper: PaperChoice;
  readonly panel: Panel;
  /** Number of a bend's step in the order of work, from 1. */
  readonly stepOf: (bend: number) => number;
  readonly seams: readonly SeamLayout[];
}

/** Line widths and dashes, mm: folded toward whoever looks, and away. */
const LINES: Readonly<Record<keyof PaperModel, readonly [number, readonly number[]]>> = {
  cut: [0.3, []],
  up: [0.18, [3, 1.2]],
  down: [0.18, [5, 1.2, 0.8, 1.2]],
  names: [0.18, []],
  seams: [0.18, []],
};
const TITLE = 3.4;
const WORDS = 2.3;
const LEADING = 1.6;

/** One page with the panel's flat, as large as fits, to be cut out and folded before metal is cut. `font` as for the templates. */
export async function writePaperModel(modelled: ModelledPanel, font: Uint8Array): Promise<Uint8Array> {
  const begun = await beginDocument(font);
  const { page, draw } = layOut(modelled, begun.letters);
  addPageTo(begun, page, draw);
  return endDocument(begun, `${modelled.title}: paper model`);
}

/** The page of {@link writePaperModel} to be looked at. */
export async function seePaperModel(modelled: ModelledPanel, font: Uint8Array): Promise<SeenPage> {
  const { letters } = await beginDocument(font);
  const { page, draw } = layOut(modelled, letters);
  const pen = makePicturePen(page.height);
  draw(pen);
  return { names: 'Paper model', size: page, elements: pen.elements() };
}

/** Upright or lying, whichever takes the larger model: on a cut sheet where the templates are printed on a roll. */
function layOut(
  modelled: ModelledPanel,
  letters: Lettering,
): { readonly page: Page; readonly draw: (pen: Pen) => void } {
  const { paper, units, panel } = modelled;
  const sheet: PaperChoice = isRoll(paper) ? { ...paper, size: units === 'in' ? 'letter' : 'A4' } : paper;
  const whole = paperModel(panel, modelled.stepOf, 1).cut;
  const box = boundsOf(whole);
  const size = { width: box.maxX - box.minX, height: box.maxY - box.minY };
  const tried = pagesOf(sheet).map((page) => ({ page, parts: modelScale(size, page.frame) }));
  const { page, parts } = tried.reduce((best, one) => (one.parts < best.parts ? one : best), at(tried, 0));
  return { page, draw: (pen) => drawPage(pen, { modelled, page, parts, letters }) };
}

interface ToDraw {
  readonly modelled: ModelledPanel;
  readonly page: Page;
  readonly parts: number;
  readonly letters: Lettering;
}

function drawPage(pen: Pen, { modelled, page, parts, letters }: ToDraw): void {
  const model = paperModel(modelled.panel, modelled.stepOf, parts, modelled.seams);
  const box = boundsOf(model.cut);
  const { frame, margin } = page;
  // The middle of what the page leaves above the words, which need no room beside it for bars.
  const place = {
    angle: 0,
    dx: (page.width - box.minX - box.maxX) / 2,
    dy: frame.y + (frame.height - box.minY - box.maxY) / 2,
  };
  for (const kind of ['cut', 'up', 'down', 'names', 'seams'] as const) {
    pen.style(...LINES[kind]);
    print(pen, moveDrawing(model[kind], place), letters);
  }
  const width = page.width - 2 * margin;
  let y = frame.y - 3 - TITLE;
  pen.text(letters.printable(`${modelled.title}: paper model, 1 : ${parts}`), [margin, y], TITLE);
  for (const line of wordsFor(modelled).flatMap((words) => wrap(letters, words, WORDS, width))) {
    y -= WORDS * LEADING;
    pen.text(line, [margin, y], WORDS);
  }
}

function print(pen: Pen, { shapes }: Drawing, { printable }: Lettering): void {
  for (const shape of shapes) printShape(pen, shape, printable);
}

/** What to do with it, and what it cannot show. */
function wordsFor({ panel: { bends }, seams }: ModelledPanel): string[] {
  const down = bends.some(({ turn }) => turn === 'down') ? ' Dash-dotted lines: down, away from you.' : '';
  const holes = seams.length > 0 ? ' Crosses: where the seams’ fasteners come.' : '';
  return [
    sentences(
      'Fold it before you cut metal.',
      'Cut along the whole lines.',
      `Dashed lines: the bend goes up, toward you.${down} In the order of the numbers, roll the paper round between the two lines of a bend, or crease both.${holes}`,
    ),
    'Folded the other way everywhere it is the other hand. It is no template: do not measure or trace from it. The sheet’s thickness, what springs back and what a taper twists are not in it.',
  ];
}
