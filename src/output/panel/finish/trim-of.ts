import { at } from '../../../base/at';
import type { Finding, Staged } from '../../../base/findings';
import { hasErrors } from '../../../base/findings';
import type { Point } from '../../../base/polygon';
import { finding } from '../../../findings/finding';
import type { FinishChoice } from '../../../job/panel/read';
import { flatOnLeg, type Bend, type HeldSide, type Panel, type Step } from '../../../panel';
import { fromFrame, sideOfLeg } from '../../../panel/flat/bend';
import { cutAndTrim } from '../../../panel/trim/cut-and-trim';
import type { CutAndTrim, PulledSide } from '../../../panel/trim/trim';
import type { BendPlan } from '../../../design/bend/bend-plan';
import type { FlatPanel } from '../flat-panel';
import { depthOf } from '../one-bend';

/** Metal left on a side of a bend until it is made. */
export interface LeftOn {
  /** Number of the bend. */
  readonly bend: number;
  readonly side: HeldSide;
  /** Beyond the side's deepest place, mm. */
  readonly extra: number;
  /** Whether it is the lever of a pull by hand, not an allowance that the job asks for. */
  readonly isLever: boolean;
}

/** What is cut before the bends, where it is trimmed after, and what for. */
export interface Trim {
  readonly leftOn: readonly LeftOn[];
  readonly cut: CutAndTrim;
}

interface Given {
  readonly order: readonly Step[];
  /** The pull of each bend. */
  readonly pulls: readonly Pick<BendPlan, 'pull'>[];
}

const RIM = /\.rim$/u;

/** What a job leaves on: as it asks, and what a pull by hand needs as its lever. Null where nothing is. */
export function trimOf(
  { trim }: Pick<FinishChoice, 'trim'>,
  { panel, outline }: FlatPanel,
  { order, pulls }: Given,
): Staged<Trim | null> {
  const asked = rimsAsked(trim, panel);
  const levers = order.flatMap(({ bend, held }): LeftOn[] => {
    const { pull } = at(pulls, bend);
    if (pull.with !== 'bare' || !(pull.leverage > 0)) return [];
    return [{ bend, side: held === 'base' ? 'leg' : 'base', extra: pull.leverage, isLever: true }];
  });
  // A leg that is left longer than its lever asks is left so long; one that is not keeps its lever.
  const allowances = asked.value
    .filter((bend) => !levers.some((lever) => onLegOf(lever, bend) && lever.extra >= trim.allowance))
    .map((bend): LeftOn => ({ bend, side: 'leg', extra: trim.allowance, isLever: false }));
  const leftOn = [...levers.filter((lever) => !allowances.some(({ bend }) => onLegOf(lever, bend))), ...allowances];
  if (leftOn.length === 0 || hasErrors(asked.findings)) return { value: null, findings: asked.findings };
  const made = cutAndTrim(
    outline,
    leftOn.map((one) => pulledSide(panel, one)),
    'trim',
  );
  const last = order.at(-1)?.bend;
  const later = leftOn.flatMap(({ bend, extra }) =>
    bend === last ? [] : [finding('trim-before-next', 'trim', { bend: at(panel.bends, bend).name, extra })],
  );
  const findings = [...asked.findings, ...made.findings, ...(made.value ? later : [])];
  return { value: made.value && { leftOn, cut: made.value }, findings };
}

function onLegOf({ bend, side }: LeftOn, of: number): boolean {
  return bend === of && side === 'leg';
}

/** The bends whose legs' rims the job names. */
function rimsAsked({ after }: FinishChoice['trim'], { bends }: Panel): Staged<readonly number[]> {
  const free = bends.filter((bend) => !bends.some(({ name }) => name === `${bend.name}.rim`));
  const findings: Finding[] = [];
  const value = after.flatMap((rim, index) => {
    const found = bends.findIndex((bend) => free.includes(bend) && bend.name === rim.replace(RIM, '') && RIM.test(rim));
    if (found >= 0) return [found];
    findings.push(
      finding('no-such-rim', `trim.after[${index}]`, { rim, known: free.map(({ name }) => `${name}.rim`) }),
    );
    return [];
  });
  return { value, findings };
}

function pulledSide(panel: Panel, { bend: index, side, extra }: LeftOn): PulledSide {
  const bend = at(panel.bends, index);
  const [a, b] = endsOf(bend, side);
  // The side lies on the left of the way along its line.
  const isLegLeft = sideOfLeg(bend.frame) === 1;
  return {
    bend: bend.name,
    line: isLegLeft === (side === 'leg') ? [placeOf(a), placeOf(b)] : [placeOf(b), placeOf(a)],
    free: facesBeyond(panel, bend, side),
    lever: depthOf(panel, bend, side) + extra,
  };
}

function placeOf([x, y]: Point): PulledSide['line'][0] {
  return { x, y };
}

function endsOf(bend: Bend, side: HeldSide): readonly [Point, Point] {
  const { length } = bend.finished;
  return side === 'leg'
    ? [flatOnLeg(bend, [0, 0]), flatOnLeg(bend, [length, 0])]
    : [fromFrame(bend.frame, [0, 0]), fromFrame(bend.frame, [length, 0])];
}

/** The loops of everything that hangs on one side of a bend: faces and the zones between them. */
function facesBeyond(panel: Panel, bend: Bend, side: HeldSide): Panel['outline'][] {
  const start = side === 'leg' ? bend.leg : bend.base;
  const seen = new Set<number>([start]);
  const loops = [at(panel.faces, start).outline];
  for (const face of seen) {
    for (const other of panel.bends) {
      if (other === bend) continue;
      const next = other.base === face ? other.leg : other.leg === face ? other.base : null;
      if (next === null || seen.has(next)) continue;
      seen.add(next);
      loops.push(other.zone, at(panel.faces, next).outline);
    }
  }
  return loops;
}
