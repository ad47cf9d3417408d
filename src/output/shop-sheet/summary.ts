import { toDegrees, toRadians } from '../../base/angle';
import { html, type HtmlElement, type HtmlNode } from '../html';
import { sayParts } from '../plan/came-out';
import { boardsRow, cuttingRows } from './cutting';
import { figureIn, keyFigures, nameOf, names, sayFigure, type FigureId } from '../plan/figures';
import { degrees, printersIn } from './measures';
import { count, findingText, list, table, theirs } from './pieces';
import type { Shop } from './shop';
import { sentences } from '../sentences';

type Row = readonly [string, ...HtmlNode[]];

/** What the maker reads first: what is bent, how far to pull, how hard, with what held. */
export function summary(shop: Shop): HtmlElement[] {
  const { bend, layout, say, plan, job } = shop;
  const { pull } = bend;
  const figure = figuresOf(shop);
  const rows: Row[] = [
    ['Sheet', `${bend.metal.name}, ${say.thickness(bend.section.thickness)}`],
    [
      'Finished bend',
      `${say.angle(bend.angle)} from flat, ${say.length(bend.length)} along the tangent line, inside radius ${ends(shop, bend.finished.radiusA, bend.finished.radiusB)}`,
    ],
    ...figure('form-radius', (said, why) => [`${said}: ${why}`]),
    ...figure('wrap'),
    ...figure('leg-angle', (said) => [
      html('strong', {}, said),
      ` from flat (${degrees(180 - toDegrees(angleWhilePulled(shop)))} between the legs); let go, it opens to ${say.angle(bend.angle)}`,
    ]),
    ['Pull with', wayWords(shop)],
    ...(isTwisted(shop) ? figure('twist', (said, why) => [`${said}: ${why}`]) : []),
    ...figure('pull', (said) => [`${said} from where the sheet leaves the form`]),
    ...figure('leverage', (said) => [
      pull.leverage > 0
        ? `${said}: beyond the finished free leg of ${say.length(bend.legs.free)}`
        : `${said}: the free leg of ${say.length(bend.legs.free)} is lever enough`,
    ]),
    ...figure('clamps', (said) => [
      `${said}, each done up to about ${say.force(job.clamps.rating)}; ${clampPlaces(shop)}`,
    ]),
    ...figure('foot', (said) => [`${said}, on ${count(layout.backings.length, 'backing station')}`]),
    ['Boards', boardsRow(shop)],
    ...cuttingRows(shop),
    ['Legs', `held leg ${say.length(bend.legs.held)}, free leg ${say.length(bend.legs.free)}`],
  ];
  return [
    html('dl', {}, ...rows.flatMap(([term, ...what]) => [html('dt', {}, term), html('dd', {}, ...what)])),
    ...(bend.runs.length > 1
      ? [
          table(
            'Which stretch of the form each bend is made on, along the tangent line from A',
            ['Bend', 'From', 'To', 'Length', names.pull],
            bend.runs.map((run) => [
              theirs(run.name),
              say.length(run.from),
              say.length(run.to),
              say.length(run.to - run.from),
              say.force((pull.handForce * run.moment) / pull.moment),
            ]),
          ),
        ]
      : []),
    ...findingsFirst(shop),
    ...(job.bend.radiusOf === 'form'
      ? [
          html(
            'p',
            {},
            'The form radii were given; the finished radii are what the sheet is expected to spring back to.',
          ),
        ]
      : []),
    ...whatCameOut(shop),
    ...(plan.trials === null ? [trialNote(shop)] : []),
  ];
}

/** Angle between the legs' planes where the gauge is held while the leg is pulled, the mean of both ends, radians. */
function angleWhilePulled({ bend: { pull } }: Pick<Shop, 'bend'>): number {
  return (pull.legAngle.A + pull.legAngle.B) / 2;
}

function wayWords({ bend: { pull }, say }: Shop): string {
  if (pull.yoke)
    return `a yoke: ${pull.yoke.nose.name} and ${pull.yoke.outer.name}, gripping the leg ${say.length(pull.yoke.gap)} from the form`;
  return pull.with === 'press' ? 'a batten pressed down, following the bend' : 'bare hands on the leg’s edge';
}

function ends({ say, bend }: Shop, from: number, to: number): string {
  return bend.form.halfAngle === 0 ? say.length(from) : `${say.length(from)} at A, ${say.length(to)} at B`;
}

/** A key figure as a row: its name and what it says, with what more `words` makes of that and of its reason; none where the plan has it not. */
function figuresOf({ plan, say }: Shop): (id: FigureId, words?: (said: string, why: string) => HtmlNode[]) => Row[] {
  const figures = keyFigures(plan);
  const print = printersIn(say);
  return (id, words = (said) => [said]) => {
    const found = figureIn(figures, id);
    return found ? [[nameOf(found), ...words(sayFigure(found, print), found.why)]] : [];
  };
}

function isTwisted({ bend: { twist } }: Shop): boolean {
  return Math.max(Math.abs(twist.A), Math.abs(twist.B)) >= toRadians(0.05);
}

function clampPlaces({ layout, say }: Shop): string {
  const [first] = layout.clampHoles;
  const holes = first ? `${count(layout.clampHoles.length, 'hole')} of ${say.tool(first.diameter)}` : '';
  const ears = layout.spine.ears > 0 ? 'the two ears' : '';
  return `on ${[holes, ears].filter((place) => place !== '').join(' and ')}`;
}

/** Warnings and notes, each in full, with the step where they matter. */
function findingsFirst({ findings }: Shop): HtmlElement[] {
  if (findings.length === 0) return [];
  return [
    html('h3', {}, 'Know before you start'),
    list(
      ...findings.map((finding) => [
        html('strong', {}, finding.level === 'note' ? 'Note: ' : 'Warning: '),
        ...findingText(finding),
      ]),
    ),
  ];
}

/** Finished parts among the trials, and what to do about form and pull. */
function whatCameOut({ plan, say }: Shop): HtmlElement[] {
  const print = {
    length: say.length,
    angle: (value: number) => say.angle(toRadians(value)),
    force: say.force,
    share: (share: number) => `${(100 * share).toFixed(1)} %`,
    ratio: (ratio: number) => ratio.toFixed(3),
  };
  return sayParts(plan, print).flatMap((lines, index) => [
    ...(index === 0 ? [html('h3', {}, 'What came out of the form')] : []),
    list(...lines),
  ]);
}

/** How sure the springback is without a trial strip, in degrees of this bend. Common practice: tables are good to some 25 %. */
const TABLE_SPREAD = 0.25;

function trialNote({ bend, say }: Shop): HtmlElement {
  const spread = TABLE_SPREAD * Math.max(0, angleWhilePulled({ bend }) - bend.angle);
  return html(
    'p',
    {},
    sentences(
      'No trial strip was bent: springback is from tables, good to some 25 %.',
      `The bend may come out up to ${say.angle(Math.max(spread, toRadians(0.1)))} either side.`,
      'Bend a trial strip of your own sheet first, or stop short, let go, check and pull again.',
    ),
  );
}
