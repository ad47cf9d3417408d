import { at } from '../../base/at';
import { html, type HtmlElement } from '../../output/html';
import { drawPanel } from '../../output/panel/picture';
import { piecesOfPanel } from '../../output/panel/boards';
import { blankDrawings } from '../../output/panel/files';
import { massOf } from '../../output/panel/panel-plan';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { stepWords } from '../../output/panel/step-words';
import { writeWorkSheet } from '../../output/panel/sheet/work-sheet';
import { drawFigure } from '../../output/shop-sheet/figure';
import { measuresIn } from '../../output/shop-sheet/measures';
import { caution } from '../../output/shop-sheet/pieces';
import { tablesIn } from '../../tables/tables';
import type { BenchStep } from '../bench/bench-steps';
import { printersFor } from '../know';
import { tables } from '../work';

const PICTURE = { width: 150, height: 80 };

/** The order of work as it is printed. */
export function panelSheet(planned: BuildablePanel): string {
  const own = tablesIn(tables, planned.job.units);
  return writeWorkSheet(planned, { blanks: blankDrawings(planned), pieces: piecesOfPanel(planned, own), tables: own });
}

/** The steps of a panel, one a screen: the sheet cut and marked, then bend by bend. */
export function panelBench(planned: BuildablePanel): BenchStep[] {
  const say = measuresIn(planned.job.units);
  const print = printersFor(planned.job.units);
  const first: BenchStep = {
    id: 'blank',
    title: 'Cut and mark the sheet',
    figures: [{ name: 'one panel', value: say.mass(massOf(planned)) }],
    picture: () => figureOf(planned, 0, 'Before the first bend.'),
    cautions: [caution('Deburr every edge before the sheet is handled; wear gloves.')],
    lines: [
      ['Cut the outline as the blank’s drawing has it, the holes at the corners’ roots first.'],
      ['Draw both tangent lines of every bend with a soft pencil, and mark the ends A and B.'],
      [`Have the forms ready: ${planned.forms.map(({ name }) => name).join(', ')}.`],
    ],
  };
  return [
    first,
    ...stepWords(planned, say).map(({ number, bend, title, sentences }): BenchStep => {
      const made = planned.bends.find((one) => one.bend.name === bend);
      const { pull, bend: sums } = (made ?? at(planned.bends, 0)).alone.plan;
      return {
        id: `bend-${bend}`,
        title: `${bend}: ${title}`,
        figures: [
          { name: 'wrap on the form', value: print.angle(sums.wrap.chosen) },
          { name: 'pull', value: print.force(pull.handForce) },
          {
            name: 'pull until it stands at, A / B',
            value: `${print.angle(pull.legAngle.from)} / ${print.angle(pull.legAngle.to)}`,
          },
        ],
        picture: () => figureOf(planned, number, `After step ${number}.`),
        cautions: [caution('A bent sheet is a spring: stand clear of its end and let it back slowly.')],
        lines: sentences.map((sentence) => [sentence]),
      };
    }),
  ];
}

function figureOf({ panel, order }: BuildablePanel, done: number, caption: string): HtmlElement {
  const made = panel.bends.map((_, index) => order.slice(0, done).some(({ bend }) => bend === index));
  return html('figure', {}, drawFigure(drawPanel(panel, made, PICTURE), caption), html('figcaption', {}, caption));
}
