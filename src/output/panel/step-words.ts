import { at } from '../../base/at';
import { toRadians } from '../../base/angle';
import type { BendPlan } from '../../design/bend/bend-plan';
import { noseLines } from '../../design/pull/nose-lines';
import { trimWords } from './finish/words';
import { PENCIL } from '../shop-sheet/flat-sheet';
import { footPast, spinePast } from '../shop-sheet/foot-short';
import type { Measures } from '../shop-sheet/measures';
import type { Bend, Step } from '../../panel';
import { gaugeFolder } from './gauge-folder';
import { runsSameWay } from './guests';
import type { BuildablePanel, PanelBend, PanelForm } from './plan-panel';

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
  const form = planned.forms.find(({ name }) => name === step.use.body.name);
  return {
    number,
    bend: bend.name,
    title: `${say.angle(bend.angle)} ${bend.turn}, hold the ${step.held}`,
    sentences: [
      `Lay the sheet on the bench with ${up}; the ${held} lies under the form, the ${pulled} is pulled.`,
      `Stand form ${step.use.body.name} on the ${held}, its front along the line FORM STANDS HERE${startWords(pull.early, say)}${
        smallEnd === 'either'
          ? ''
          : `: behind the form, looking toward the side that rises, its small end is on your ${smallEnd}${
              planned.job.panel.pair ? ` for the left panel, on your ${OTHER[smallEnd]} for the right` : ''
            }`
      }.`,
      ...(form ? stretchWords(form, { bend, step }, say) : []),
      ...step.bench.map(
        (edge) => `The bench must end ${BENCH[edge]} the form there, so that a leg bent before can hang.`,
      ),
      ...overhangs(step.overhang, planned.panel.thickness, say),
      ...footPacking(alone, say),
      `Clamp ${form ? clampedThrough(form, { bend, step }, say) : 'the form'}: ${alone.layout.clamps} clamps, ${say.force(alone.layout.clampForce)} together.`,
      ...noseWords(alone.bend, say),
      `Pull ${pull.with === 'bare' ? 'by hand' : `with the ${pull.with}`}, ${say.force(pull.handForce)} at ${say.length(pull.lever)} from where the sheet leaves the form, until it stands at ${ends}; it leaves the form at a wrap of ${say.angle(toRadians(sums.wrap.chosen))}.`,
      `Let it back slowly. The finished angle is ${say.angle(bend.angle)} from flat: check it with the gauge ${gaugeFolder(planned, step.bend)}/angle-finished before the next step.`,
      OFF[step.off],
      ...trimmed(planned, step.bend, say),
    ],
  };
}

/** Where the line that the form stands on lies beside the bend's own tangent line. */
function startWords(early: number, say: Measures): string {
  if (Math.abs(early) < PENCIL) return '';
  return `, ${say.length(Math.abs(early))} ${early > 0 ? 'behind' : 'ahead of'} that side’s tangent line, where the bend really starts`;
}

/** Where a yoke's nose lies; nothing without one. */
function noseWords(bend: BendPlan, say: Measures): string[] {
  if (!bend.pull.yoke) return [];
  const { A, B } = noseLines(bend);
  const where =
    say.length(A) === say.length(B) ? say.length(A) : `${say.length(A)} at end A, ${say.length(B)} at end B,`;
  return [`Bolt the yoke on with its nose along the line YOKE NOSE, ${where} from where the form stands.`];
}

interface AtBend {
  readonly bend: Bend;
  readonly step: Step;
}

/** Which stretch of a form that serves several bends, and which way round: nothing of a form that serves one. */
function stretchWords({ name, runs, planned }: PanelForm, { bend, step }: AtBend, say: Measures): string[] {
  const run = runs.find((one) => one.name === bend.name);
  if (!run || runs.length < 2) return [];
  const whole = planned.bend.form.length - (run.to - run.from) < WHOLE;
  const [first, second] = [say.length(run.from), say.length(run.to)];
  const way = name === bend.name || runsSameWay(step.use, planned.bend.finished) ? 'A' : 'B';
  return [
    whole
      ? `Use the whole of form ${name}, its end A at end ${way} of the bend.`
      : `Use form ${name} from ${first} to ${second} of its length from its end A, that end toward end ${way} of the bend.`,
  ];
}

/** Shorter than this of a form left over, mm, and the whole of it is used. */
const WHOLE = 0.05;

/** Where the form is clamped for this bend: by which of its holes, where it has more than the bend uses. */
function clampedThrough({ planned: { layout } }: PanelForm, { bend, step }: AtBend, say: Measures): string {
  if (step.clamped === 'ends') return 'on the ears, past the sheet’s ends';
  const used = layout.guests.find(({ name }) => name === bend.name)?.holes ?? layout.ownHoles;
  if (used.length === layout.clampHoles.length) return 'through the holes in the spine';
  const places = used.map((index) => say.length(at(layout.clampHoles, index).at));
  return `through the spine’s ${used.length === 1 ? 'hole' : 'holes'} ${listed(used.map((index) => String(index + 1)))}, counted from its end A (${listed(places)} along it)`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

/** A foot that reaches past the held side's far edge stands off the bench by the sheet: it is packed, each backing station by what lies under it. */
function footPacking({ bend, layout }: PanelBend['alone'], say: Measures): string[] {
  const past = footPast(bend, layout);
  const bare = spinePast(bend, layout);
  if (past.length === 0 && bare.length === 0) return [];
  const even = !bend.heldAlong;
  const feet = past.map((one) => `${one.name} ${say.length(one.past)}`);
  const spines = bare.map(({ from, to }) => `from ${say.length(from)} to ${say.length(to)}`);
  const thick = `pack under it there with the sheet’s thickness, ${say.thickness(bend.section.thickness)}.`;
  return [
    ...(past.length > 0
      ? [
          even
            ? `The foot reaches ${say.length(at(past, 0).past)} past the held side’s far edge: ${thick}`
            : `The foot reaches past the held side’s far edge, ${listed(feet)}: ${thick}`,
        ]
      : []),
    ...(bare.length > 0 && !even
      ? [`The held side is less deep than the spine ${listed(spines)} along the bend from end A: ${thick}`]
      : []),
  ];
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
