import { radiusAtCentre, tangentFromCentre } from '../base/cone';
import { toDegrees } from '../base/angle';
import type { Finding } from '../base/findings';
import type { PlanBlock } from '../plan';
import { html, type HtmlElement, type HtmlNode } from '../write/html';
import { clampOpening, clampThroat, gluedBoards } from './hardware';
import { degrees } from './measures';
import { caution, count, findingText, list, paragraph, theirs } from './pieces';
import type { Shop } from './shop';
import { angleAtWrap } from './summary';

type StepId = 'cut' | 'drill' | 'assemble' | 'set-up' | 'wrap' | 'check' | 'turn-over' | 'trim' | 'dress';

/** The work in order, each step with its numbers, its cautions and whatever was found about it. */
export function steps(shop: Shop): HtmlElement[] {
  return [
    step(shop, 'cut', '1. Cut', cut(shop)),
    step(shop, 'drill', '2. Drill', drill(shop)),
    step(shop, 'assemble', '3. Assemble', assemble(shop)),
    step(shop, 'set-up', '4. Set up', setUp(shop)),
    step(shop, 'wrap', '5. Pull round', wrap(shop)),
    step(shop, 'check', '6. Let go and check', check(shop)),
    step(shop, 'turn-over', '7. Turn the form over for the other hand', turnOver(shop)),
    step(shop, 'trim', '8. Trim', trim(shop)),
    ...(shop.plan.block ? [step(shop, 'dress', '9. Dress over the block', dress(shop, shop.plan.block))] : []),
  ];
}

function step(shop: Shop, id: StepId, title: string, content: readonly HtmlNode[]): HtmlElement {
  const found = shop.plan.findings.filter((finding) => stepOf(finding) === id).map((finding) => html('p', { class: 'caution' }, html('strong', {}, 'For this job: '), ...findingText(finding)));
  return html('div', { class: 'step', id: `step-${id}` }, html('h3', {}, title), ...found, ...content);
}

/** Where a finding matters, by the block of the job it is about. */
function stepOf({ code, path }: Finding): StepId {
  if (code === 'twist') return 'check';
  const block = path.split(/[.[]/u)[0];
  if (block === 'screws') return 'assemble';
  if (block === 'block') return 'dress';
  if (block === 'clamps') return 'set-up';
  if (block === 'board' || block === 'stations' || block === 'runs') return 'cut';
  return 'wrap';
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
        `Draw the centre line. Square across it draw line A and, ${say.length(length)} further, line B${ears > 0 ? `; the board’s ends are ${say.length(ears)} outside these lines` : '; these are the board’s ends'}. `,
        `Mark half the width each side of the centre line: ${say.length(half(0))} at A and ${say.length(half(length))} at B (${say.length(2 * half(0))} and ${say.length(2 * half(length))} across). Join them with a straight-edge`,
        ears > 0 ? `, on to the ends of the board (${say.length(2 * half(-ears))} across at the A end, ${say.length(2 * half(length + ears))} at the B end). ` : '. ',
        `Check: each long edge measures ${say.length(tangentFromCentre(bend.form, length))} from A to B, and both diagonals from A to B ${say.length(diagonal)}. Mark the ends A and B and the front face.`,
      ],
      [
        html('strong', {}, 'Stations. '),
        'Draw a straight line, set the compass point on it and strike a half circle of the radius in the station table: the straight edge is the whole diameter. Cut outside the line and dress to it; the round edge is what the sheet takes its shape from. Break its corners only enough not to mark the sheet. Write the name and the contact face on each.',
      ],
      [html('strong', {}, 'Backing stations. '), 'Rectangles to the table; corners square, since both short edges are feet.'],
    ),
    caution('MDF and plywood dust harms the lungs: extraction, a dust mask rated for fine dust, eye protection. If a laser does the cutting, it needs working extraction: the fumes of glued board carry formaldehyde. Never laser PVC.'),
  ];
}

function drill(shop: Shop): HtmlNode[] {
  const { screw, layout, say } = shop;
  const [hole] = layout.clampHoles;
  return [
    list(
      `Spine: lay out the hole table along the centre line from A. Drill the ${shop.plan.spine?.screwHoles.length ?? 0} clearance holes with ${screw.clearanceDrill}, square to the face, and countersink each on the face given (back for stations, front for backing stations) until the head lies flush.`,
      ...(hole ? [`Drill the ${count(layout.clampHoles.length, 'clamp hole')}, ${say.tool(hole.diameter)}: from one face until the pilot shows, then from the other, so that the board does not tear out.`] : []),
      `Stations and backing stations: pilot holes with ${screw.pilotDrill} into the straight edge, in the middle of its thickness, at the places and depths of the pilot table. Edges of MDF and plywood split without pilots. Clamp the piece between two scraps while you drill.`,
    ),
    caution('Clamp what you drill. No gloves near a turning spindle. Eye protection on.'),
  ];
}

function assemble(shop: Shop): HtmlNode[] {
  const { bend, layout } = shop;
  const glued = gluedBoards(shop);
  const facing = bend.form.halfAngle === 0 ? 'either face toward A' : `its contact face toward end ${layout.stations[0]?.contact === 'from' ? 'A' : 'B'}`;
  return [
    list(
      `Stations on the front of the spine: straight edge flat on the spine, square to the centre line, ${facing}, its middle on the centre line. Drive the screws from the back, by hand at the end; too tight strips the edge.`,
      `The outer faces of the stations at the ends of a run are flush with the run’s end.`,
      'Backing stations on the back, their middle on the centre line; screws from the front.',
      glued.length > 0 ? `Glue as well as screw: ${glued.join(', ')} (room for one screw only). Let the glue cure before pulling.` : 'No glue is needed: dry-screwed, the form can be taken apart.',
      `Check with a straight-edge laid along the round edges: it touches every station${bend.form.halfAngle === 0 ? '' : ' at its contact face'}.`,
    ),
  ];
}

function setUp(shop: Shop): HtmlNode[] {
  const { bend, layout, say } = shop;
  const reach = layout.spine.thickness + layout.foot;
  const { held } = bend.legs;
  const under = held < layout.spine.thickness ? 'the rear of the spine and under each foot' : 'each foot';
  const packing =
    held < reach
      ? `The held leg reaches ${say.length(held)} back and the foot ${say.length(reach)}: lay packing of the same thickness as the sheet (${say.thickness(bend.section.thickness)}) under ${under}${layout.spine.ears > 0 ? ' and each ear' : ''}, or the form rocks.`
      : `The held leg reaches under the whole foot${layout.spine.ears > 0 ? '; pack the ears up by the thickness of the sheet' : ''}.`;
  return [
    list(
      'Deburr every edge of the sheet. Mark the tangent line of the held leg on the inside face, and ends A and B.',
      `Lay the sheet flat on a firm bench, inside face up, the tangent line ${say.atLeast(reach)} in from the bench’s edge so that the foot ends at that edge and the free leg lies inward; or turn it so that the free leg hangs out past the opposite edge, if your clamps reach.`,
      'Stand the form on the sheet: one long edge of the spine with its front face on the tangent line, its lines A and B on the sheet’s ends, stations toward the free leg, the held leg back under the spine.',
      ...(bend.runs.length > 1
        ? [[`For each run, set the sheet’s edge to that run’s stretch of the form: `, ...bend.runs.flatMap((run, index): HtmlNode[] => [index > 0 ? '; ' : '', theirs(run.name), ` from ${say.length(run.from)} to ${say.length(run.to)}`]), '.']]
        : []),
      packing,
      `Clamp ${layout.clampHoles.length > 0 ? 'through every hole' : ''}${layout.clampHoles.length > 0 && layout.spine.ears > 0 ? ' and ' : ''}${layout.spine.ears > 0 ? 'over both ears' : ''} to the bench: ${count(layout.clamps, 'clamp')}, each at least ${say.force(layout.clampForce / layout.clamps)}. They need a throat of ${say.atLeast(clampThroat(shop))} and open ${say.atLeast(clampOpening(shop))} plus the bench top.`,
      'Try to rock the form backward by hand: it must not move.',
    ),
    caution('Cut sheet edges are sharp: cut-resistant gloves. The bench must not tip or slide: the pull lifts its front.'),
  ];
}

function wrap(shop: Shop): HtmlNode[] {
  const { bend, say } = shop;
  const atWrap = angleAtWrap(shop);
  return [
    list(
      `Cut the angle gauge lettered ON THE FORM from the templates, or set a bevel to ${degrees(180 - toDegrees(atWrap))} between the legs (${say.angle(atWrap)} from flat).`,
      `Take hold of the free leg’s outer edge, ${say.length(bend.pull.lever)} from the tangent line, hands spread to the quarter points; a stiff batten clamped along the edge gives the fingers hold and spreads the pull. Expect ${say.force(bend.pull.handForce)} in all.`,
      'Pull up and over in one steady motion, keeping the sheet against the round edges; do not push near the bend.',
      `Stop when the gauge fits: ${say.angle(bend.wrap.chosen)} of wrap. The marks on the stations show where the sheet should leave the round edge.`,
    ),
    caution('A sheet pulled tight stores energy. Stand to the side of its swing, keep faces and fingers out of it, nobody opposite you; let it back under control, never by dropping it. Stop at any crack, slip or creak.'),
  ];
}

function check(shop: Shop): HtmlNode[] {
  const { bend, say } = shop;
  const radii = bend.form.halfAngle === 0 ? `${say.length(bend.finished.radiusFrom)} inside` : `${say.length(bend.finished.radiusFrom)} inside at A, ${say.length(bend.finished.radiusTo)} at B, measured square to the centre line`;
  return [
    list(
      `Ease the leg back by ${say.angle(Math.max(0, atLeastZero(angleAtWrap(shop) - bend.angle)))}, until it pushes no more; only then loosen the clamps, a little each in turn.`,
      `Check the angle with the gauge lettered FINISHED or a bevel: ${say.angle(bend.angle)} from flat (${degrees(180 - toDegrees(bend.angle))} between the legs). Check the radius: ${radii}.`,
      'Short of the angle: clamp up again and pull a little further. Too far: open it by hand over the edge of the bench. Note the wrap that gave the right angle on the form.',
    ),
    caution('A clamped, bent sheet can kick when a clamp is let off. Keep a hand on the leg, stand clear of the sheet’s end.'),
  ];
}

function atLeastZero(value: number): number {
  return Math.max(0, value);
}

function turnOver({ bend }: Shop): HtmlNode[] {
  return [
    paragraph(
      'The form is symmetric about its centre line. For the mirror-image part stand it on its other long edge, stations toward the free leg as before: ends A and B change places. Mark the second sheet as the mirror image of the first. All numbers stay the same',
      bend.form.halfAngle === 0 ? '.' : '; mind that the end with the smaller radius is still end A or B as marked on the spine.',
    ),
  ];
}

function dress({ say }: Shop, block: PlanBlock): HtmlNode[] {
  const [hole] = block.holes;
  return [
    list(
      `Cut the ${count(block.layers.length, 'layer')} ${block.layers[0]?.name ?? ''} to ${block.layers.at(-1)?.name ?? ''} to their drawings, each to its own radius, and drill both holes in each${hole ? `, ${say.tool(hole.diameter)}` : ''}.`,
      'Stack them in the order of their numbers, contact faces to the end lettered on them, on two dowels through all of them; glue, or bolt through the same holes.',
      `The block fits the inside of the bend from ${say.length(block.from)} to ${say.length(block.to)} along the tangent line from end A, legs included. Hold it there and dress the metal down over it with a mallet or slapper, from the middle outward.`,
    ),
    caution('Clamp block and part before you strike; eye and ear protection on.'),
  ];
}

function trim({ bend, say }: Shop): HtmlNode[] {
  return [
    paragraph(
      bend.pull.leverage > 0
        ? `Mark the trim line on the free leg ${say.length(bend.legs.free)} from its tangent line and cut off the ${say.length(bend.pull.leverage)} of leverage. Deburr.`
        : 'No leverage was left on: nothing to trim but the marks of the work. Deburr.',
    ),
  ];
}
