import { at } from '../../base/at';
import type { SaidFinding } from '../../findings/say';
import type { PlanBlock } from '../plan/plan';
import { html, type HtmlElement, type HtmlNode } from '../html';
import { makingSteps } from './making';
import type { Step, StepId } from './making/step';
import { caution, count, findingText, list, paragraph } from './pieces';
import { letGo, pullRound, setUp } from './pulling';
import type { Shop } from './shop';
import { sentences } from '../sentences';

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
    { id: 'wrap', title: 'Pull round', content: pullRound(shop) },
    { id: 'check', title: 'Let go and check', content: letGo(shop) },
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
  if (block === 'board' || block === 'stations' || block === 'cut') return 'cut';
  return 'wrap';
}

function turnOver({ bend }: Shop): HtmlNode[] {
  return [
    paragraph(
      sentences(
        'The form is symmetric about its centre line.',
        'For the mirror-image part stand it on its other long edge, stations toward the free leg as before: ends A and B change places.',
        'Mark the second sheet as the mirror image of the first.',
        'All numbers stay the same',
      ),
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
      `Cut the ${count(block.layers.length, 'layer')} ${at(block.layers, 0).name} to ${at(block.layers, -1).name} to their drawings, each to its own radius, ${drilled ? 'and drill both holes in each' : 'both holes with them'}${hole ? `, ${say.tool(hole.diameter)}` : ''}.`,
      'Stack them in the order of their numbers, contact faces to the end lettered on them, on two dowels through all of them; glue, or bolt through the same holes.',
      sentences(
        `The block fits the inside of the bend from ${say.length(block.from)} to ${say.length(block.to)} along the tangent line from end A, legs included.`,
        'Hold it there and dress the metal down over it with a mallet or slapper, from the middle outward.',
      ),
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
