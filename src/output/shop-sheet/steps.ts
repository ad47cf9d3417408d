import { toDegrees } from '../../base/angle';
import type { SaidFinding } from '../../findings/say';
import type { PlanBlock } from '../plan/plan';
import { html, type HtmlElement, type HtmlNode } from '../html';
import { clampOpening, clampThroat } from './hardware';
import { makingSteps } from './making';
import type { Step, StepId } from './making/step';
import { degrees } from './measures';
import { caution, count, findingText, list, paragraph, theirs } from './pieces';
import type { Shop } from './shop';
import { angleAtWrap } from './summary';

/** A step with what was found about it. */
export interface FoundStep extends Step {
  /** Counted from 1. */
  readonly number: number;
  readonly found: readonly HtmlElement[];
}

/** The work in order, each step with its numbers, its cautions and whatever was found about it. */
export function steps(shop: Shop): HtmlElement[] {
  return workSteps(shop).map(({ id, number, title, found, content }) =>
    html('div', { class: 'step', id: `step-${id}` }, html('h3', {}, `${number}. ${title}`), ...found, ...content),
  );
}

/** The same as data, a step each. */
export function workSteps(shop: Shop): FoundStep[] {
  const all: Step[] = [
    ...makingSteps(shop),
    { id: 'set-up', title: 'Set up', content: setUp(shop) },
    { id: 'wrap', title: 'Pull round', content: wrap(shop) },
    { id: 'check', title: 'Let go and check', content: check(shop) },
    { id: 'turn-over', title: 'Turn the form over for the other hand', content: turnOver(shop) },
    { id: 'trim', title: 'Trim', content: trim(shop) },
    ...(shop.plan.block
      ? [{ id: 'dress', title: 'Dress over the block', content: dress(shop, shop.plan.block) } as const]
      : []),
  ];
  const present = new Set(all.map(({ id }) => id));
  return all.map((step, index) => {
    const found = shop.findings
      .filter((finding) => stepOf(finding, present) === step.id)
      .map((finding) => html('p', { class: 'caution' }, html('strong', {}, 'For this job: '), ...findingText(finding)));
    return { ...step, number: index + 1, found };
  });
}

/** Findings that matter elsewhere than the rest of their block of the job. */
const STEP_OF_CODE: Readonly<Record<string, StepId>> = {
  twist: 'check',
  'board-not-measured': 'fit',
  'fit-tighter-than-beam': 'fit',
  'loose-fit': 'fit',
  'dowels-thinner': 'stack',
  'no-room-for-dowels': 'stack',
  'screws-in-glue-line': 'drill',
  'no-room-for-tabs': 'assemble',
  'smaller-than-bit': 'drill',
};

/** Where a finding matters, by the block of the job it is about. */
function stepOf({ code, path }: SaidFinding, present: ReadonlySet<StepId>): StepId {
  const own = STEP_OF_CODE[code];
  if (own && present.has(own)) return own;
  const block = path.split(/[.[]/u)[0];
  if (block === 'screws') return 'assemble';
  if (block === 'block') return 'dress';
  if (block === 'clamps') return 'set-up';
  if (block === 'board' || block === 'stations' || block === 'runs' || block === 'cut') return 'cut';
  return 'wrap';
}

function setUp(shop: Shop): HtmlNode[] {
  const { bend, job, layout, say } = shop;
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
      `Stand the form on the sheet: one long edge of the spine with its front face on the tangent line, its ${job.cut.with === 'jigsaw' || layout.spine.ears > 0 ? 'lines' : 'ends'} A and B on the sheet’s ends, stations toward the free leg, the held leg back under the spine.`,
      ...(bend.runs.length > 1
        ? [
            [
              `For each run, set the sheet’s edge to that run’s stretch of the form: `,
              ...bend.runs.flatMap((run, index): HtmlNode[] => [
                index > 0 ? '; ' : '',
                theirs(run.name),
                ` from ${say.length(run.from)} to ${say.length(run.to)}`,
              ]),
              '.',
            ],
          ]
        : []),
      packing,
      `Clamp ${layout.clampHoles.length > 0 ? 'through every hole' : ''}${layout.clampHoles.length > 0 && layout.spine.ears > 0 ? ' and ' : ''}${layout.spine.ears > 0 ? 'over both ears' : ''} to the bench: ${count(layout.clamps, 'clamp')}, each at least ${say.force(layout.clampForce / layout.clamps)}. They need a throat of ${say.atLeast(clampThroat(shop))} and open ${say.atLeast(clampOpening(shop))} plus the bench top.`,
      'Try to rock the form backward by hand: it must not move.',
    ),
    caution(
      'Cut sheet edges are sharp: cut-resistant gloves. The bench must not tip or slide: the pull lifts its front.',
    ),
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
    caution(
      'A sheet pulled tight stores energy. Stand to the side of its swing, keep faces and fingers out of it, nobody opposite you; let it back under control, never by dropping it. Stop at any crack, slip or creak.',
    ),
  ];
}

function check(shop: Shop): HtmlNode[] {
  const { bend, say } = shop;
  const radii =
    bend.form.halfAngle === 0
      ? `${say.length(bend.finished.radiusFrom)} inside`
      : `${say.length(bend.finished.radiusFrom)} inside at A, ${say.length(bend.finished.radiusTo)} at B, measured square to the centre line`;
  return [
    list(
      `Ease the leg back by ${say.angle(Math.max(0, atLeastZero(angleAtWrap(shop) - bend.angle)))}, until it pushes no more; only then loosen the clamps, a little each in turn.`,
      `Check the angle with the gauge lettered FINISHED or a bevel: ${say.angle(bend.angle)} from flat (${degrees(180 - toDegrees(bend.angle))} between the legs). Check the radius: ${radii}.`,
      'Short of the angle: clamp up again and pull a little further. Too far: open it by hand over the edge of the bench. Note the wrap that gave the right angle on the form.',
    ),
    caution(
      'A clamped, bent sheet can kick when a clamp is let off. Keep a hand on the leg, stand clear of the sheet’s end.',
    ),
  ];
}

function atLeastZero(value: number): number {
  return Math.max(0, value);
}

function turnOver({ bend }: Shop): HtmlNode[] {
  return [
    paragraph(
      'The form is symmetric about its centre line. For the mirror-image part stand it on its other long edge, stations toward the free leg as before: ends A and B change places. Mark the second sheet as the mirror image of the first. All numbers stay the same',
      bend.form.halfAngle === 0
        ? '.'
        : '; mind that the end with the smaller radius is still end A or B as marked on the spine.',
    ),
  ];
}

function dress({ job: { cut }, say }: Shop, block: PlanBlock): HtmlNode[] {
  const [hole] = block.holes;
  const drilled = cut.with === 'jigsaw' || (cut.with === 'router' && (hole?.diameter ?? 0) < cut.bit);
  return [
    list(
      `Cut the ${count(block.layers.length, 'layer')} ${block.layers[0]?.name ?? ''} to ${block.layers.at(-1)?.name ?? ''} to their drawings, each to its own radius, ${drilled ? 'and drill both holes in each' : 'both holes with them'}${hole ? `, ${say.tool(hole.diameter)}` : ''}.`,
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
