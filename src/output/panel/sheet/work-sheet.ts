import { sayFindings } from '../../../findings/say';
import { at } from '../../../base/at';
import type { Drawing } from '../../../base/drawing';
import { html, type HtmlElement } from '../../html';
import { drawFigure } from '../../shop-sheet/figure';
import { pullAndHold } from '../../plan/pull-details';
import { measuresIn, printersIn, type Measures } from '../../shop-sheet/measures';
import { caution, flowing, inchNote, paragraph, section, table, theirs } from '../../shop-sheet/pieces';
import { writePage } from '../../shop-sheet/page';
import { drawPanel } from '../picture';
import { grainWords } from '../grain';
import { finishWords } from '../finish/words';
import { blankOf } from '../panel-blank';
import { massOf } from '../panel-plan';
import type { BuildablePanel } from '../plan-panel';
import { blankMass } from '../../../drawing/boards/lay-out-metal';
import type { Tables } from '../../../tables/tables';
import type { PanelPieces } from '../boards';
import { boardsTogether, shopOf } from './boards-together';
import { buyAll } from './buy-all';
import { pieceFor } from './places';
import { blockSteps } from './block-steps';
import { cutAndMark } from './cut-and-mark';
import { drawStep } from '../step-picture';
import { stepWords } from '../step-words';
import { tracedWords } from '../traced-words';
import { sentences } from '../../sentences';

const PICTURE = { width: 150, height: 68 };

/** What the sheet shows of what is cut: the blanks' drawings, the forms' pieces on their boards. */
export interface ShownCut {
  readonly blanks: readonly { readonly path: string; readonly drawing: Drawing }[];
  readonly pieces: PanelPieces;
  /** In the job's units. */
  readonly tables: Tables;
}

/**
 * The panel's own sheet: what to buy for all of it, the whole order of work, with a picture of the panel after every step. Each form has a shop sheet of its
 * own.
 */
export function writeWorkSheet(planned: BuildablePanel, { blanks, pieces, tables }: ShownCut): string {
  const { job } = planned;
  const say = measuresIn(job.units);
  const cut = planned.finish.trim?.cut.cut ?? planned.flat.outline;
  const shops = planned.bends.map(({ alone }) => shopOf(alone, [], { tables, units: job.units }));
  const { density } = at(planned.bends, 0).alone.bend.metal;
  const body = html(
    'body',
    {},
    html(
      'header',
      {},
      html('h1', {}, theirs(job.title)),
      html(
        'p',
        { class: 'lead' },
        sentences(
          `The whole panel, in the order of work, of ${at(planned.bends, 0).alone.bend.metal.name}, ${say.thickness(planned.panel.thickness)}${job.panel.pair ? ': twice, the right side as the mirror image of the left' : ''}.`,
          'Each form has a shop sheet of its own in forms/.',
          'Read all of them through before you cut.',
        ),
      ),
      ...inchNote(say),
    ),
    html(
      'main',
      {},
      picture(
        planned,
        planned.panel.bends.map(() => true),
        'The finished panel, seen from above its marked face.',
      ),
      flowing('forms', 'The bends and their forms', bendsTable(planned, say), formsTable(planned, say)),
      flowing('mind', 'What you must know', ...notes(planned)),
      flowing(
        'buy',
        'What to buy',
        ...buyAll({
          planned,
          pieces,
          shops,
          piece: pieceFor(cut.vertices),
          mass: blankMass(cut, { thickness: planned.panel.thickness, density }),
          say,
        }),
      ),
      ...(pieces.boards.length > 0
        ? [
            flowing(
              'boards',
              'The forms’ pieces on the boards',
              ...boardsTogether(pieces, { tables, units: job.units }),
            ),
          ]
        : []),
      section(
        'blank',
        'The sheet: cut and mark',
        paragraph(
          'Before you cut metal, cut out and fold paper-model.pdf: it shows how the bends come together, and in what order.',
        ),
        ...tracedWords(planned.flat.traced, say).map((sentence) => paragraph(theirs(sentence))),
        paragraph(theirs(grainWords(planned, say))),
        ...cutAndMark(blankOf(planned), {
          say,
          paths: blanks.map(({ path }) => path),
          pair: job.panel.pair,
          mass: massOf(planned),
        }),
      ),
      flowing(
        'seams',
        'Metal, seams and edges',
        ...finishWords(planned.finish, say).map((sentence) => paragraph(theirs(sentence))),
      ),
      section('bends', 'Bend by bend', ...bendSteps(planned, tables, say)),
      flowing('pulls', 'Pull and hold of every bend, in numbers', ...pullTables(planned, say)),
      ...(planned.panel.corners.length > 0 ? [flowing('corners', 'Corners', ...cornerSteps(planned, say))] : []),
    ),
  );
  return writePage(job.title, 'order of work', body);
}

function picture({ panel }: BuildablePanel, made: readonly boolean[], caption: string): HtmlElement {
  return html('figure', {}, drawFigure(drawPanel(panel, made, PICTURE), caption), html('figcaption', {}, caption));
}

/** A table a bend, in the order of work. */
function pullTables({ order, bends }: BuildablePanel, say: Measures): HtmlElement[] {
  return order.map(({ bend }, index) => {
    const { bend: made, alone } = at(bends, bend);
    return table(
      `${index + 1}. ${made.name}`,
      ['What', 'Measure'],
      pullAndHold(alone.plan, printersIn(say)).map(([name, said]) => [name, said]),
    );
  });
}

function bendsTable({ panel }: BuildablePanel, say: Measures): HtmlElement {
  return table(
    'Bends, as they are when let go',
    ['bend', 'angle from flat', 'inside radius, end A / B', 'base line, A to B'],
    panel.bends.map(({ name, angle, turn, finished }) => [
      name,
      `${say.angle(angle)} ${turn}`,
      `${say.length(finished.radiusA)} / ${say.length(finished.radiusB)}`,
      say.length(finished.length),
    ]),
  );
}

function formsTable({ forms, order, panel }: BuildablePanel, say: Measures): HtmlElement {
  return table(
    'Forms to make',
    ['form', 'for the bends', 'length', 'form radius, end A / B'],
    forms.map(({ name, planned: { bend } }) => [
      name,
      order
        .filter(({ use }) => use.body.name === name)
        .map((step) => at(panel.bends, step.bend).name)
        .join(', '),
      say.length(bend.length),
      `${say.length(bend.form.radiusA)} / ${say.length(bend.form.radiusB)}`,
    ]),
  );
}

function bendSteps(planned: BuildablePanel, tables: Tables, say: Measures): HtmlElement[] {
  const made = planned.panel.bends.map(() => false);
  return stepWords(planned, say).flatMap(({ number, bend, title, sentences }) => {
    const index = planned.panel.bends.findIndex(({ name }) => name === bend);
    made[index] = true;
    return [
      html(
        'div',
        { class: 'whole-step' },
        html('h3', {}, `${number}. `, theirs(bend), `: ${title}`),
        html('ol', {}, ...sentences.map((sentence) => html('li', {}, sentence))),
        ...duringStep(planned, tables, number),
        picture(planned, [...made], `After step ${number}.`),
      ),
    ];
  });
}

/** The bend being made: the form as it stands, which way it runs and what swings. */
function duringStep(planned: BuildablePanel, { rules }: Tables, number: number): HtmlElement[] {
  const drawn = drawStep(planned, number - 1, PICTURE, rules);
  if (!drawn) return [];
  const { bench } = at(planned.order, number - 1);
  const caption = `Step ${number}, seen from behind the form${planned.job.panel.pair ? ', the left panel' : ''}: the pulled side swung up${
    at(planned.bends, at(planned.order, number - 1).bend).alone.bend.pull.yoke
      ? ', the yoke on it, the plank under form and held side'
      : ''
  }.${bench.length > 0 ? ' The bench ends where it is drawn to.' : ''}`;
  return [html('figure', {}, drawFigure(drawn, caption), html('figcaption', {}, caption))];
}

function cornerSteps({ panel, blocks, job }: BuildablePanel, say: Measures): HtmlElement[] {
  return [
    table(
      'Where two bends meet',
      ['corner', 'treated', 'gap at the rim', 'root hole', 'what to do'],
      panel.corners.map(({ between: [a, b], treat, gap, root }) => [
        `${at(panel.bends, a).name} / ${at(panel.bends, b).name}`,
        treat,
        treat === 'mitre' || treat === 'lap' ? say.length(gap) : '–',
        root ? say.tool(root.diameter) : '–',
        CORNER[treat],
      ]),
    ),
    ...blocks.flatMap((made) => [
      html('h3', {}, 'The block for corner ', theirs(made.name)),
      html('ol', {}, ...blockSteps(made, { panel, pair: job.panel.pair, say }).map((step) => html('li', {}, step))),
    ]),
  ];
}

const CORNER = {
  mitre: 'the cut edges meet along the corner: dress the root over a block, then weld, braze or back it',
  open: 'left open: make a corner piece for it where it must be closed',
  lap: 'bend the tab round by hand outside the other leg, after both bends',
  dress: 'the rim is shrunk in over a block, a little at a time',
} as const;

function notes({ findings, job: { units } }: BuildablePanel): HtmlElement[] {
  return [
    caution(
      'A bent sheet is a spring: stand clear of its end and let it back slowly. Fix every clamp before you pull; deburr edges, wear gloves. Local codes and licensed practice come first.',
    ),
    html(
      'ul',
      {},
      ...sayFindings(findings, { units }).map(({ message, hint }) =>
        html('li', {}, hint === '' ? message : `${message}: ${hint}`),
      ),
    ),
  ];
}
