import { at } from '../../../base/at';
import { radiusAtCentre, tangentFromCentre } from '../../../base/cone';
import { html, type HtmlNode } from '../../html';
import { gluedBoards } from '../hardware';
import { isHatched, withReliefCuts } from '../jigsaw-marks';
import { caution, count, list } from '../pieces';
import type { Shop } from '../shop';
import type { Step } from './step';
import { sentences } from '../../sentences';

/** By hand, along drawn lines. */
export function jigsawSteps(shop: Shop): Step[] {
  return [
    { id: 'cut', title: 'Cut', content: cut(shop) },
    { id: 'drill', title: 'Drill', content: drill(shop) },
    { id: 'assemble', title: 'Assemble', content: assemble(shop) },
  ];
}

function cut(shop: Shop): HtmlNode[] {
  const { bend, layout, say } = shop;
  const { length, ears } = layout.spine;
  const half = (s: number): number => radiusAtCentre(bend.form, s);
  const diagonal = Math.hypot(length, half(0) + half(length));
  return [
    list(
      [
        html('strong', {}, 'Spine. '),
        sentences(
          'Draw the centre line.',
          `Square across it draw line A and, ${say.length(length)} further, line B${ears > 0 ? `; the board’s ends are ${say.length(ears)} outside these lines` : '; these are the board’s ends'}. `,
        ),
        sentences(
          `Mark half the width each side of the centre line: ${say.length(half(0))} at A and ${say.length(half(length))} at B (${say.length(2 * half(0))} and ${say.length(2 * half(length))} across).`,
          'Join them with a straight-edge',
        ),
        ears > 0
          ? `, on to the ends of the board (${say.length(2 * half(-ears))} across at the A end, ${say.length(2 * half(length + ears))} at the B end). `
          : '. ',
        `Check: each long edge measures ${say.length(tangentFromCentre(bend.form, length))} from A to B, and both diagonals from A to B ${say.length(diagonal)}. Mark the ends A and B and the front face.`,
      ],
      [
        html('strong', {}, 'Stations. '),
        sentences(
          'Draw a straight line, set the compass point on it and strike a half circle of the radius in the station table: the straight edge is the whole diameter.',
          'Cut outside the line and dress to it; the round edge is what the sheet takes its shape from.',
          'Break its corners only enough not to mark the sheet.',
          'Write the name and the contact face on each.',
        ),
      ],
      [
        html('strong', {}, 'Backing stations. '),
        'Rectangles to the table; corners square, since both short edges are feet.',
      ],
      ...sawing(shop),
    ),
    caution(
      sentences(
        'MDF and plywood dust harms the lungs: extraction, a dust mask rated for fine dust, eye protection.',
        'If a laser does the cutting, it needs working extraction: the fumes of glued board carry formaldehyde.',
        'Never laser PVC.',
      ),
    ),
  ];
}

/** What the lines in the waste are for, where there are any. */
function sawing(shop: Shop): HtmlNode[][] {
  const relieved = withReliefCuts(shop);
  const cut = shop.job.cut;
  return [
    ...(relieved.length > 0 && cut.with === 'jigsaw'
      ? [
          [
            html('strong', {}, 'Relief cuts. '),
            `The short lines in the waste that run up to the outline of ${relieved.join(', ')} are sawn first, up to their end just before the line: then the waste falls away bit by bit where the blade cannot follow (an arc of less than ${shop.say.length(cut.turn)}, or an inside corner).`,
          ],
        ]
      : []),
    ...(isHatched(shop)
      ? [
          [
            html('strong', {}, 'Hatching. '),
            'Slanted lines on a board’s drawing are waste: it is narrow there, so keep the blade on the hatched side of both outlines.',
          ],
        ]
      : []),
  ];
}

function drill(shop: Shop): HtmlNode[] {
  const { screw, layout, say } = shop;
  const [hole] = layout.clampHoles;
  return [
    list(
      sentences(
        'Spine: lay out the hole table along the centre line from A.',
        `Drill the ${shop.plan.spine.screwHoles.length} clearance holes with ${screw.clearanceDrill}, square to the face, and countersink each on the face given (back for stations, front for backing stations) until the head lies flush.`,
      ),
      ...(hole
        ? [
            `Drill the ${count(layout.clampHoles.length, 'clamp hole')}, ${say.tool(hole.diameter)}: from one face until the pilot shows, then from the other, so that the board does not tear out.`,
          ]
        : []),
      sentences(
        `Stations and backing stations: pilot holes with ${screw.pilotDrill} into the straight edge, in the middle of its thickness, at the places and depths of the pilot table.`,
        'Edges of MDF and plywood split without pilots.',
        'Clamp the piece between two scraps while you drill.',
      ),
    ),
    caution('Clamp what you drill. No gloves near a turning spindle. Eye protection on.'),
  ];
}

function assemble(shop: Shop): HtmlNode[] {
  const { bend, layout } = shop;
  const glued = gluedBoards(shop);
  const facing =
    bend.form.halfAngle === 0
      ? 'either face toward A'
      : `its contact face toward end ${at(layout.stations, 0).contact}`;
  return [
    list(
      sentences(
        `Stations on the front of the spine: straight edge flat on the spine, square to the centre line, ${facing}, its middle on the centre line.`,
        'Drive the screws from the back, by hand at the end; too tight strips the edge.',
      ),
      `The outer faces of the stations at the ends of a run are flush with the run’s end.`,
      'Backing stations on the back, their middle on the centre line; screws from the front.',
      glued.length > 0
        ? `Glue as well as screw: ${glued.join(', ')} (room for one screw only). Let the glue cure before pulling.`
        : 'No glue is needed: dry-screwed, the form can be taken apart.',
      `Check with a straight-edge laid along the round edges: it touches every station${bend.form.halfAngle === 0 ? '' : ' at its contact face'}.`,
    ),
  ];
}
