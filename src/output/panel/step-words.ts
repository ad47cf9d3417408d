import { at } from '../../base/at';
import { toRadians } from '../../base/angle';
import { trimWords } from './finish/words';
import type { Measures } from '../shop-sheet/measures';
import type { BuildablePanel, PanelBend } from './plan-panel';

/** What is done at one bend, in the order it is done: short sentences for the table, the sheet and the blank. */
export interface StepWords {
  readonly number: number;
  readonly bend: string;
  /** `90.0° up, hold the leg`. */
  readonly title: string;
  readonly sentences: readonly string[];
}

const OFF = {
  lift: 'Lift the form off.',
  back: 'Push the form back from under the bend.',
  endA: 'Slide the form out at end A.',
  endB: 'Slide the form out at end B.',
} as const;

const OTHER = { left: 'right', right: 'left' } as const;

const BENCH = { front: 'in front of', back: 'behind', endA: 'at end A of', endB: 'at end B of' } as const;

/** The steps of a panel in the order of work. */
export function stepWords(planned: BuildablePanel, say: Measures): StepWords[] {
  return planned.order.map(({ bend }, index) => wordsOf(planned, at(planned.bends, bend), { number: index + 1, say }));
}

function wordsOf(
  planned: BuildablePanel,
  { bend, step, smallEnd, alone }: PanelBend,
  { number, say }: { readonly number: number; readonly say: Measures },
): StepWords {
  const held = step.held === 'base' ? (planned.panel.faces[bend.base]?.name ?? 'base') : `leg of ${bend.name}`;
  const pulled = step.held === 'base' ? `leg of ${bend.name}` : (planned.panel.faces[bend.base]?.name ?? 'base');
  const { pull, bend: sums } = alone.plan;
  const up = bend.turn === 'up' ? 'the marked face up' : 'the marked face down';
  const ends = `A ${say.angle(toRadians(pull.legAngle.from))}, B ${say.angle(toRadians(pull.legAngle.to))}`;
  const stretch = planned.forms
    .find(({ name }) => name === step.use.body.name)
    ?.runs.find((run) => run.bend === bend.name);
  return {
    number,
    bend: bend.name,
    title: `${say.angle(bend.angle)} ${bend.turn}, hold the ${step.held}`,
    sentences: [
      `Lay the sheet on the bench with ${up}; the ${held} lies under the form, the ${pulled} is pulled.`,
      `Stand form ${step.use.body.name} on the ${held}, its front along that side’s tangent line${
        smallEnd === 'either'
          ? ''
          : `: behind the form, looking toward the side that rises, its small end is on your ${smallEnd}${
              planned.job.panel.pair ? ` for the left panel, on your ${OTHER[smallEnd]} for the right` : ''
            }`
      }.`,
      ...(stretch && planned.forms.some(({ runs }) => runs.length > 1)
        ? [`Use the form from ${say.length(stretch.from)} to ${say.length(stretch.to)} of its length.`]
        : []),
      ...step.bench.map(
        (edge) => `The bench must end ${BENCH[edge]} the form there, so that a leg bent before can hang.`,
      ),
      ...overhangs(step.overhang, planned.panel.thickness, say),
      `Clamp ${step.clamped === 'holes' ? 'through the holes in the spine' : 'on the ears, past the sheet’s ends'}: ${alone.layout.clamps} clamps, ${say.force(alone.layout.clampForce)} together.`,
      `Pull ${pull.with === 'bare' ? 'by hand' : `with the ${pull.with}`}, ${say.force(pull.handForce)} at ${say.length(pull.lever)} from where the sheet leaves the form, until it stands at ${ends}; it leaves the form at a wrap of ${say.angle(toRadians(sums.wrap.chosen))}.`,
      `Let it back slowly. The finished angle is ${say.angle(bend.angle)} from flat: check it with the gauge before the next step.`,
      OFF[step.off],
      ...trimmed(planned, step.bend, say),
    ],
  };
}

function trimmed({ finish, panel }: BuildablePanel, bend: number, say: Measures): string[] {
  const words = trimWords(finish.trim, panel, bend, say);
  return words === null ? [] : [words];
}

function overhangs(
  { from, to }: { readonly from: number; readonly to: number },
  thickness: number,
  say: Measures,
): string[] {
  return [
    ['A', from],
    ['B', to],
  ].flatMap(([end, mm]) =>
    typeof mm === 'number' && mm > 1
      ? [
          `The form reaches ${say.length(mm)} past end ${end}: pack it there with the sheet’s thickness, ${say.thickness(thickness)}.`,
        ]
      : [],
  );
}
