import { at } from '../../../base/at';
import type { Finding, Staged } from '../../../base/findings';
import type { Point } from '../../../base/polygon';
import { finding } from '../../../findings/finding';
import type { FinishChoice } from '../../../job/panel/read';
import { flatOnLeg, type Bend, type HeldSide, type LeftMetal, type Panel, type Step } from '../../../panel';
import { fromFrame, sideOfLeg } from '../../../panel/flat/bend';
import { leftRegions } from '../../../panel/trim/left-regions';
import type { PulledSide } from '../../../panel/trim/trim';
import type { BendPlan } from '../../../design/bend/bend-plan';
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

/** How the bends are made, as far as is known: none before an order has been found. */
export interface PullsMade {
  readonly order: readonly Pick<Step, 'bend' | 'held'>[];
  /** The pull of each bend in the order, by its number. */
  readonly pulls: readonly Pick<BendPlan, 'pull'>[];
}

const RIM = /\.rim$/u;

/** What the job asks to be left on, and the lever of each pull by hand that needs it. */
export function leftOnFor(
  { trim }: Pick<FinishChoice, 'trim'>,
  panel: Panel,
  { order, pulls }: PullsMade,
): Staged<readonly LeftOn[]> {
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
  const value = [...levers.filter((lever) => !allowances.some(({ bend }) => onLegOf(lever, bend))), ...allowances];
  return { value, findings: asked.findings };
}

/** The metal itself, by the faces it carries on. */
export function leftMetals(panel: Panel, leftOn: readonly LeftOn[]): LeftMetal[] {
  return leftOn.flatMap((one) => {
    const side = pulledSide(panel, one);
    const faces = beyond(panel, at(panel.bends, one.bend), one.side);
    const regions = leftRegions(
      panel.outline,
      side,
      faces.map((face) => at(panel.faces, face).outline),
    );
    return faces.flatMap((face, index): LeftMetal[] => {
      const own = at(regions, index);
      return own.length === 0 ? [] : [{ bend: one.bend, face, regions: own }];
    });
  });
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

/** A side that metal is left on: what of it there is, and how far out it is to reach. */
export function pulledSide(panel: Panel, { bend: index, side, extra }: LeftOn): PulledSide {
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
  const faces = beyond(panel, bend, side);
  const zones = panel.bends.filter(
    (other) => other !== bend && faces.includes(other.base) && faces.includes(other.leg),
  );
  return [...faces.map((face) => at(panel.faces, face).outline), ...zones.map(({ zone }) => zone)];
}

/** The faces on one side of a bend, the nearest first. */
function beyond(panel: Panel, bend: Bend, side: HeldSide): number[] {
  const seen = new Set<number>([side === 'leg' ? bend.leg : bend.base]);
  for (const face of seen) {
    for (const other of panel.bends) {
      if (other === bend) continue;
      if (other.base === face) seen.add(other.leg);
      if (other.leg === face) seen.add(other.base);
    }
  }
  return [...seen];
}
