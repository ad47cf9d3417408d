import { fitsToTry } from '../../../drawing/parts/fit-test';
import { labelLength } from '../../../drawing/parts/lengths';
import { html, type HtmlNode } from '../../html';
import { extentOf } from '../cut-list';
import { list } from '../pieces';
import type { Shop } from '../shop';
import type { Step } from './step';
import { sentences } from '../../sentences';

/** The pieces that try the joints' fit, before anything else is cut; none where there are none. */
export function fitStep(shop: Shop): Step[] {
  const { job, parts, layout } = shop;
  const { cut } = job;
  const strip = parts.find(({ id }) => id === 'fit-test');
  if (!strip || cut.with === 'jigsaw') return [];
  const tongues = parts.filter(({ id }) => id.startsWith('fit-tongue-')).map(({ id }) => id);
  const laser = cut.with === 'laser';
  const fits = fitsToTry(cut.fit, shop.tables.tools.fitStep).map((fit) => labelLength(fit, job.units));
  const [opening, openings] = laser ? ['slot', 'slots'] : ['groove', 'grooves'];
  const enters = laser
    ? layout.layers.stations > 1
      ? 'the tongue, glued up,'
      : 'the tongue'
    : 'an offcut of the stations’ board';
  return [
    {
      id: 'fit',
      title: 'Try the fit, before anything else is cut',
      content: [
        list(
          ...(laser
            ? [
                `Cut fit-test${tongues.length > 0 ? ` and ${tongues.join(', ')}` : ''} from an offcut of the job’s board, by their own drawings in “parts”, with the settings you will cut all of it with.${tongues.length > 1 ? ' Glue the tongue’s layers flush, as the stations will be: thin glue, clamped, dry.' : ''}`,
              ]
            : [
                'Cut fit-test from an offcut of the spine’s board, by its own drawing in “parts”, with the bit you will cut all of it with.',
              ]),
          size(shop, tongues[0] ?? strip.id),
          sentences(
            `The strip’s ${openings} are lettered with how much wider each is than the stations are thick: ${fits.join(', ')}.`,
            `Try ${enters} in each, from the narrowest: the right ${opening} takes it by the push of a hand${laser ? ', up to the shoulders,' : ' to the floor'} and holds it upright without shake.`,
          ),
          ...(laser
            ? []
            : [
                [
                  `Measure the depth of the grooves: ${shop.say.length(shop.joints.with === 'router' ? shop.joints.depth : 0)}. If it differs, set the bit’s height again.`,
                ],
              ]),
          [
            'If that is not the ',
            html('strong', {}, labelLength(cut.fit, job.units)),
            ` one, write its number as fit in the job’s cut block, and make all files again: only then cut the boards, and leave the test pieces out there.`,
          ],
        ),
      ],
    },
  ];
}

/** The first thing to measure tells the machine's own error. */
function size(shop: Shop, id: string): HtmlNode {
  const { job, parts, say } = shop;
  const part = parts.find((one) => one.id === id);
  if (!part) return '';
  const { wide, high } = extentOf(shop, part);
  if (job.cut.with === 'laser') {
    return `Measure ${id} across: it should come out ${say.exact(wide)} wide. If it is wider, the kerf in the job is too large by as much; if it is narrower, too small by as much. Correct it and cut again.`;
  }
  return sentences(
    `Measure the strip: ${say.exact(Math.max(wide, high))} × ${say.exact(Math.min(wide, high))}.`,
    'If both sizes are off by the same amount, the bit is not of the diameter the program reckons with: correct that at the machine.',
  );
}
