import { discLayers, drawTrial } from '../../drawing/aids';
import { boundsOf } from '../../base/bounds';
import { adviseTrial } from '../../design/bend/trial-advice';
import { html, type HtmlElement } from '../html';
import { table } from './pieces';
import type { Shop } from './shop';

/** As many strips as tell whether they agree (common practice). */
export const TRIAL_STRIPS = 3;

/** What their drawings do not have that the boards' have. */
const UNTOOLED = {
  jigsaw: '',
  router: '',
  laser: ' Their drawings are true to size: the kerf is not in them, and a disc that much smaller does no harm.',
} as const;

/** What to cut for bending trial strips, which is not laid out on the boards; nothing where the job's strips are measured already. */
export function trialPieces({ bend, job, tables, say, board }: Shop): HtmlElement[] {
  const aids = drawTrial(bend, job, tables);
  if (aids.length === 0) return [];
  const advice = adviseTrial(bend, job.units);
  const { layers } = discLayers(advice, job, tables);
  return [
    table(
      'For a trial of your sheet, before the form',
      ['Piece', 'What', 'Size', 'Cut from', 'Quantity'],
      aids.map(({ id, kind, drawing }) => {
        const { minX, minY, maxX, maxY } = boundsOf(drawing);
        return kind === 'trial-disc'
          ? [
              id,
              `disc of radius ${say.length(advice.radius)}`,
              `within ${say.length(maxX - minX)} × ${say.length(maxY - minY)}`,
              board.stations.name,
              layers === 1 ? '1' : `${layers}, screwed together`,
            ]
          : [
              id,
              'strip',
              `${say.length(maxX - minX)} × ${say.length(maxY - minY)}`,
              'the sheet itself',
              String(TRIAL_STRIPS),
            ];
      }),
    ),
    html(
      'p',
      {},
      `Both are drawn full size in the folder “aids” and on the templates, and are not laid out on the boards below: cut them from what is left.${UNTOOLED[job.cut.with]}`,
    ),
  ];
}
