import type { HtmlElement } from '../../output/html';
import { figureIn, keyFigures, nameOf, sayFigure, type FigureId } from '../../output/plan/figures';
import { pulledPicture, releasedPicture, setUpPicture } from '../../output/shop-sheet/pictures';
import type { Shop } from '../../output/shop-sheet/shop';
import { workSteps } from '../../output/shop-sheet/steps';
import { keepFractions } from '../../output/shop-sheet/pieces';
import { printersFor } from '../know';
import { shopOf } from '../drawing/all-drawings';
import type { Form } from '../work';
import { stepLines, type StepLines } from './step-lines';

/** A step as the bench shows it. */
export interface BenchStep extends StepLines {
  readonly id: string;
  readonly title: string;
  /** The numbers to have in one's head while doing it. */
  readonly figures: readonly { readonly name: string; readonly value: string }[];
  /** Drawn when the step is come to. */
  readonly picture: (() => HtmlElement) | null;
}

type StepName = ReturnType<typeof workSteps>[number]['id'];

const FIGURES: Readonly<Partial<Record<StepName, readonly FigureId[]>>> = {
  cut: ['form-radius', 'stations'],
  'set-up': ['clamps', 'foot'],
  wrap: ['wrap', 'pull'],
  check: ['finished-radius', 'twist'],
  trim: ['leverage'],
};

const PICTURES: Readonly<Partial<Record<StepName, (shop: Shop) => HtmlElement>>> = {
  assemble: setUpPicture,
  'set-up': setUpPicture,
  wrap: pulledPicture,
  check: releasedPicture,
};

/** The steps of the shop sheet, one a screen. */
export function benchSteps(form: Form): BenchStep[] {
  const shop = shopOf(form);
  const figures = keyFigures(form.planned.plan);
  const print = printersFor(form.job.units);
  return workSteps(shop).map(({ id, title, found, content }) => {
    const draw = PICTURES[id];
    const { lines, cautions } = stepLines(content.map(keepFractions));
    return {
      id,
      title,
      figures: (FIGURES[id] ?? []).flatMap((one) => {
        const figure = figureIn(figures, one);
        return figure ? [{ name: nameOf(figure), value: sayFigure(figure, print) }] : [];
      }),
      picture: draw ? () => draw(shop) : null,
      lines,
      cautions: [...found, ...cautions],
    };
  });
}
