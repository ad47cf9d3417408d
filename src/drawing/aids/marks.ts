import type { Line, Shape } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import type { BendPlan } from '../../design/bend/bend-plan';
import { neutralSurface } from '../../design/form/blank';
import { toFlat } from '../../design/form/development';
import { labelLength } from '../parts/lengths';
import { label, mark } from '../parts/shapes';
import type { Point } from '../../base/polygon';

/** Length of the strokes that point at a run's end on a tangent line, mm. */
const POINTER = 5;
/** Run ends nearer than this are one, mm. */
const SAME_END = 0.01;
const LETTERS = 3.5;
const PITCH = 1.6;

/** A run's end as marked on both tangent lines: `inward` +1 where the run lies toward B, −1 toward A. */
interface RunEnd {
  readonly x: number;
  readonly inward: 1 | -1;
  readonly name: string;
}

/**
 * Marks on the flat sheet, mm, held tangent line along +x from A, its mark where the form stands: at both ends of every run two strokes on each tangent line that
 * point at it from inside the run, and each end's name and distance from end A by the held one. `heldRoom`: how much of the
 * held leg is drawn, mm.
 */
export function runMarks(bend: BendPlan, units: LengthUnit, heldRoom: number): Shape[] {
  const ends = runEnds(bend);
  return [...ends.flatMap((end) => pointers(bend, end)), ...endLabels(bend, ends, units, heldRoom)];
}

function runEnds(bend: BendPlan): RunEnd[] {
  const all = bend.runs.flatMap(({ name, from, to }): RunEnd[] => [
    { x: from, inward: 1, name: `${name} start` },
    { x: to, inward: -1, name: `${name} end` },
  ]);
  const groups: RunEnd[] = [];
  for (const end of all) {
    const same = groups.findIndex(({ x, inward }) => Math.abs(x - end.x) < SAME_END && inward === end.inward);
    const held = groups[same];
    if (held) groups[same] = { ...held, name: `${held.name}, ${end.name}` };
    else groups.push(end);
  }
  return groups.sort((a, b) => a.x - b.x);
}

/** On either side of each tangent line, 45° to it; shorter where the run or the bend is. */
function pointers(bend: BendPlan, { x, inward }: RunEnd): Line[] {
  const stroke = Math.min(
    POINTER,
    bend.length / 4,
    bend.legs.held / 2,
    bend.legs.free / 2,
    Math.min(bend.allowance.A, bend.allowance.B) / 3,
  );
  return [0, bend.finishedWrap].flatMap((wrap): Line[] => {
    const [tipX, tipY] = toFlat(neutralSurface(bend), { x, wrap });
    const tip: Point = [tipX, wrap === 0 ? tipY - bend.pull.early : tipY];
    const turn = wrap === 0 ? 0 : bend.fan;
    const at = (along: number, aside: number): Point => [
      tip[0] + along * Math.cos(turn) - aside * Math.sin(turn),
      tip[1] + along * Math.sin(turn) + aside * Math.cos(turn),
    ];
    return [1, -1].map((side) => mark(tip, at(inward * stroke, side * stroke)));
  });
}

/** By the held tangent line, above it inside the bend or, where that is too narrow, below; each on a line of its own so that near ends cannot be mistaken. */
function endLabels(bend: BendPlan, ends: readonly RunEnd[], units: LengthUnit, heldRoom: number): Shape[] {
  const above = Math.min(bend.allowance.A, bend.allowance.B) - 2 * POINTER;
  const below = heldRoom - 2 * POINTER;
  const least = 1.8 * PITCH * ends.length;
  const side = above >= least || above >= below ? 1 : -1;
  const height = Math.max(1.8, Math.min(LETTERS, (side > 0 ? above : below) / (PITCH * ends.length)));
  return ends.flatMap(({ x, inward, name }, index) => {
    const room = Math.min((inward > 0 ? bend.length - x : x) - 2 * POINTER, 120);
    const near = POINTER + 1 + index * PITCH * height;
    if (near + height > (side > 0 ? above : below) + POINTER + 1) return [];
    return label(`${name} ${labelLength(x, units)}`, {
      x: 0,
      y: side > 0 ? near : -near - height,
      width: room,
      tallest: height,
    }).map((text) => ({
      ...text,
      x: x + inward * (POINTER + 2),
      anchor: inward > 0 ? ('start' as const) : ('end' as const),
    }));
  });
}
