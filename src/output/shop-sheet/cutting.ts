import type { LaserJoints, RouterJoints } from '../../design/joints/joints';
import type { LaserCut, RouterCut } from '../../job/job';
import { count } from './pieces';
import type { Shop } from './shop';
import { sentences } from '../sentences';

/** How the boards are cut, in short: what the drawings have taken into account and what not. Nothing for a jigsaw, which follows the line. */
export function cuttingRows(shop: Shop): (readonly [string, string])[] {
  const { job, joints } = shop;
  if (job.cut.with === 'router' && joints.with === 'router') return routerRows(shop, job.cut, joints);
  if (job.cut.with === 'laser' && joints.with === 'laser') return laserRows(shop, job.cut, joints);
  return [];
}

function routerRows(
  { say, tables }: Shop,
  { bit, fit, bridges }: RouterCut,
  { depth }: RouterJoints,
): (readonly [string, string])[] {
  const { bridgeLength, bridgeHeight } = tables.tools;
  return [
    [
      'Cut with',
      sentences(
        `a router, straight bit ${say.exact(bit)}.`,
        `The bit is not in the drawings: outlines and holes are drawn true, and the machine’s program moves the bit ${say.exact(bit / 2)} outside outlines and inside holes`,
      ),
    ],
    [
      'Joints',
      sentences(
        `stations stand in grooves ${say.length(depth)} deep across the front of the spine, drawn ${say.exact(fit)} wider than the stations are thick; the ones at the spine’s ends in rebates.`,
        'Every station has that depth more wood behind its diameter: it is in the drawings',
      ),
    ],
    [
      'Held down by',
      bridges
        ? `bridges, ${say.length(bridgeLength)} long, ${say.length(bridgeHeight)} of wood left under the cut; places in operations.csv`
        : 'you: no bridges are drawn',
    ],
  ];
}

function laserRows(
  shop: Shop,
  { kerf, fit }: LaserCut,
  { boards, tabLength }: LaserJoints,
): (readonly [string, string])[] {
  const { say } = shop;
  const tabbed = boards.some(({ tabs }) => tabs.length > 0);
  return [
    [
      'Cut with',
      sentences(
        `a laser, kerf ${say.exact(kerf)}.`,
        `The kerf is in the drawings: outlines are drawn ${say.exact(kerf / 2)} outside, holes and slots ${say.exact(kerf / 2)} inside the edge wanted; cut on the line, and add nothing at the machine`,
      ),
    ],
    ...(tabbed
      ? [
          [
            'Joints',
            `tabs ${say.length(tabLength)} long go into slots through the spine, ${say.exact(fit)} wider than the tabs: in the drawings`,
          ] as const,
        ]
      : []),
  ];
}

/** Names of what the form is cut from, and how thick it is where it is glued up from layers. */
export function boardsRow({ board, layout: { layers }, say }: Shop): string {
  const of = (what: keyof typeof board): string => {
    const { name, thickness } = board[what];
    return layers[what] === 1
      ? name
      : `${count(layers[what], 'layer')} of ${name}, ${say.thickness(layers[what] * thickness)} in all`;
  };
  return `spine ${of('spine')}; stations ${of('stations')}; backing stations ${of('backing')}`;
}
