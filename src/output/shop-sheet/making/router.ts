import { at } from '../../../base/at';
import type { RouterJoints } from '../../../design/joints/joints';
import type { RouterCut } from '../../../job/job';
import type { HtmlNode } from '../../html';
import { html } from '../../html';
import { gluedBoards } from '../hardware';
import { caution, count, list } from '../pieces';
import type { Shop } from '../shop';
import { fitStep } from './fit-test';
import { countersinks, endLines, pilots } from './pilots';
import type { Step } from './step';
import { sentences } from '../../sentences';

/** Stations in grooves. */
export function routerSteps(shop: Shop, cut: RouterCut, joints: RouterJoints): Step[] {
  return [
    ...fitStep(shop),
    { id: 'cut', title: 'Cut', content: cutStep(shop, cut, joints) },
    { id: 'drill', title: 'Drill and countersink', content: drillStep(shop, cut) },
    { id: 'assemble', title: 'Assemble', content: assembleStep(shop, joints) },
  ];
}

function cutStep(
  { say, layout, board, screw, tables, plan }: Shop,
  { bit, bridges }: RouterCut,
  { depth, grooves }: RouterJoints,
): HtmlNode[] {
  const { bridgeLength, bridgeHeight } = tables.tools;
  const through = [
    ...new Map(
      Object.values(board).map(({ name, thickness }) => [name, `${name}, taken as ${say.thickness(thickness)} thick`]),
    ).values(),
  ].join('; ');
  const openings = grooves.filter(({ open }) => open !== null).length;
  const heads = plan.spine.screwHoles.filter(({ side }) => side === 'back').length;
  return [
    list(
      [
        html('strong', {}, 'Program. '),
        sentences(
          'Open the drawings of the folder “boards”, or single parts from “parts”: the face drawn lies up (the spine’s front, each station’s contact face). operations.csv gives tool and depth of every part’s every operation, in the order they are done: lettering, countersinks, grooves, holes, outlines – inside before outside.',
          `The bit runs ${say.exact(bit / 2)} outside outlines and inside holes.`,
        ),
      ],
      [
        html('strong', {}, 'Hold down. '),
        sentences(
          'Spoil board under all of it; clamps, screws or vacuum in the waste, clear of the bit’s path and of its holder.',
          ...(bridges
            ? [
                `Bridges ${say.length(bridgeLength)} long hold each part: the program leaves ${say.length(bridgeHeight)} of wood there, at the boxes drawn under “mark”, which are not cut.`,
              ]
            : [
                'No bridges are drawn: hold every part itself down before its outline is cut through, with double-sided tape, vacuum, or screws through its holes into the spoil board.',
                'Or set bridges in the job’s cut block and make the files again.',
              ]),
        ),
      ],
      [
        html('strong', {}, 'Two depths. '),
        sentences(
          `Grooves ${say.length(depth)} deep from the spine’s front, floor flat: clear the whole area drawn, which runs out past the spine’s edges so that no round corner is left.`,
          `Holes and outlines through (${through}), a little into the spoil board, in as many passes as the bit’s maker says.`,
          'Lettering just deep enough to read.',
        ),
      ],
      [
        html('strong', {}, 'Countersinks. '),
        `The drawing has those for the backing stations, which enter from the face drawn. The ${heads} for the stations are not drawn: they are made by hand from the back, after turning the spine over.`,
      ],
      ...(bridges
        ? [
            [
              html('strong', {}, 'Free the parts. '),
              'Saw through every bridge and trim it flush with chisel or file: the stations’ straight edges bed in the grooves and the round edges shape the sheet, so nothing may stand proud.',
            ],
          ]
        : []),
      [
        html('strong', {}, 'Check. '),
        sentences(
          `${count(grooves.length, 'groove')}${openings > 0 ? `, ${openings} of them open at an end of the spine` : ''}, all ${say.length(depth)} deep; stations ${say.length(at(layout.stations, 0).thickness)} thick.`,
          'Break the round edges’ corners only enough not to mark the sheet.',
          `Clearance holes ${screw.clearanceDrill}.`,
        ),
      ],
    ),
    caution(
      sentences(
        'The machine’s own manual and the rules of your workplace come first.',
        'Goggles and hearing protection; the work clamped; the bit sound, tight, and at the speed its maker gives; hands, sleeves and hair away; no gloves near a turning bit; stop the spindle and unplug it before you touch the bit.',
      ),
    ),
    caution('MDF and plywood dust harms the lungs: extraction, a dust mask rated for fine dust, eye protection.'),
  ];
}

function drillStep(shop: Shop, { bit }: RouterCut): HtmlNode[] {
  const { layout, plan, say, screw } = shop;
  const [hole] = layout.clampHoles;
  const holes = plan.spine.screwHoles.length;
  const small = screw.clearance < bit;
  return [
    list(
      small
        ? `The ${holes} clearance holes of the spine are smaller than the bit: drill them with ${screw.clearanceDrill}, square to the face, at the places drawn (on the machine, or by the hole table), a scrap behind.`
        : `The ${holes} clearance holes of the spine, ${screw.clearanceDrill}, come from the machine: check them with a screw.`,
      ...(hole
        ? [
            hole.diameter < bit
              ? `Drill the ${count(layout.clampHoles.length, 'clamp hole')}, ${say.tool(hole.diameter)}.`
              : `The ${count(layout.clampHoles.length, 'clamp hole')}, ${say.tool(hole.diameter)}, come from the machine: break the edges.`,
          ]
        : []),
      countersinks(shop),
      'Stations: stand each dry in its groove, on the floor of it, its two ends flush with the spine’s long edges at its contact face, and clamp it there.',
      sentences(
        'Backing stations: no groove shows their place.',
        'Draw their A-side faces square across the back of the spine by their table, hold each there with both ends flush with the spine’s edges at its narrower face, and clamp it: the screw holes then lie on the middle of its edge.',
      ),
      pilots(shop),
    ),
    caution('Clamp what you drill. No gloves near a turning spindle. Eye protection on.'),
  ];
}

function assembleStep(shop: Shop, { depth, grooves }: RouterJoints): HtmlNode[] {
  const { bend, layout, say } = shop;
  const glued = gluedBoards(shop);
  const taper = bend.form.halfAngle !== 0;
  const facing = taper ? `its contact face toward end ${at(layout.stations, 0).contact}` : 'either face toward A';
  const rebated = grooves.filter(({ open }) => open !== null).map(({ holds }) => holds);
  return [
    list(
      sentences(
        `Stations into the front of the spine: straight edge down on the floor of the groove, ${say.length(depth)} below the front, ${facing}, both ends flush with the spine’s long edges.`,
        'Drive the screws from the back, by hand at the end; too tight strips the edge.',
      ),
      ...(rebated.length > 0
        ? [
            `${rebated.join(' and ')} stand${rebated.length === 1 ? 's' : ''} in a rebate: push hard against its closed side before you drive the screws; the outer face is then flush with the spine’s end.`,
          ]
        : []),
      'The outer faces of the stations at the ends of a run are flush with the run’s end.',
      'Backing stations on the back, by the lines you drew; screws from the front.',
      glued.length > 0
        ? `Glue as well as screw: ${glued.join(', ')} (room for one screw only). Let the glue cure before pulling.`
        : 'No glue is needed: dry-screwed, the form can be taken apart.',
      ...endLines(shop),
      `Check with a straight-edge laid along the round edges: it touches every station${taper ? ' at its contact face' : ''}.`,
    ),
  ];
}
