import { at } from '../../../base/at';
import type { Staged } from '../../../base/findings';
import { hasErrors } from '../../../base/findings';
import { finding } from '../../../findings/finding';
import type { FinishChoice } from '../../../job/panel/read';
import { cutAndTrim } from '../../../panel/trim/cut-and-trim';
import type { CutAndTrim } from '../../../panel/trim/trim';
import type { FlatPanel } from '../flat-panel';
import { leftOnFor, pulledSide, type LeftOn, type PullsMade } from './left-on';

/** What is cut before the bends, where it is trimmed after, and what for. */
export interface Trim {
  readonly leftOn: readonly LeftOn[];
  readonly cut: CutAndTrim;
}

/** What a job leaves on: as it asks, and what a pull by hand needs as its lever. Null where nothing is. */
export function trimOf(
  choice: Pick<FinishChoice, 'trim'>,
  { panel, outline }: FlatPanel,
  given: PullsMade,
): Staged<Trim | null> {
  const { value: leftOn, findings: asked } = leftOnFor(choice, panel, given);
  if (leftOn.length === 0 || hasErrors(asked)) return { value: null, findings: asked };
  const made = cutAndTrim(
    outline,
    leftOn.map((one) => pulledSide(panel, one)),
    'trim',
  );
  const last = given.order.at(-1)?.bend;
  const later = leftOn.flatMap(({ bend, extra }) =>
    bend === last ? [] : [finding('trim-before-next', 'trim', { bend: at(panel.bends, bend).name, extra })],
  );
  const findings = [...asked, ...made.findings, ...(made.value ? later : [])];
  return { value: made.value && { leftOn, cut: made.value }, findings };
}
