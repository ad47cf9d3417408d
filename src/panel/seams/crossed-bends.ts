import { radiusAt } from '../../base/cone';
import { flattenLoop } from '../../base/flatten';
import { isInside, type Point } from '../../base/polygon';
import { bentAt, type Bend } from '../flat/bend';
import { lengthOf, movedInward, placeAlong, runSides } from './row';
import type { SeamLayout } from './seam';
import { CHORD_STRAY } from '../../base/tolerance';

/** A bend that a seam runs over, mm and radians. */
export interface CrossedBend {
  readonly bend: string;
  /** Finished inside radius where the middle of the lap crosses it. */
  readonly radius: number;
  /** How far round it the seam goes. */
  readonly wrap: number;
  /** Between the two sides' planes. */
  readonly angle: number;
  /** The neutral line's factor K. */
  readonly neutral: number;
  /** Along the seam, from its start. */
  readonly from: number;
  readonly to: number;
}

/** The middle of the lap is looked at so often along it, mm; where it enters and leaves a zone is halved this often. */
const STEP = 1;
const HALVINGS = 20;
/** A seam that goes less far round a bend runs along it, not over it, radians. */
const LEAST = 0.02;

/** The bends that a seam runs over, in the order of its run. */
export function crossedBends(bends: readonly Bend[], { lapLine, seam, length }: SeamLayout): CrossedBend[] {
  const line = runSides(lapLine);
  const middle = movedInward(line, -seam.lap / 2) ?? line;
  const whole = lengthOf(middle);
  const steps = Math.ceil(whole / STEP);
  const placed = (step: number): Point => {
    const { x, y } = placeAlong(middle, (step * whole) / steps);
    return [x, y];
  };
  const all = Array.from({ length: steps + 1 }, (_, step) => step);
  const crossed = bends.flatMap((bend): CrossedBend[] => {
    const zone = flattenLoop(bend.zone, CHORD_STRAY);
    const isIn = (step: number): boolean => isInside(placed(step), zone);
    const inside = all.filter(isIn);
    const [first, last] = [inside[0], inside.at(-1)];
    if (first === undefined || last === undefined) return [];
    const ends = [edge(isIn, first, Math.max(0, first - 1)), edge(isIn, last, Math.min(steps, last + 1))] as const;
    const [a, b] = [bentAt(bend, placed(ends[0])), bentAt(bend, placed(ends[1]))];
    const wrap = Math.abs(b.wrap - a.wrap);
    if (wrap < LEAST) return [];
    return [
      {
        bend: bend.name,
        radius: radiusAt(bend.finished, (a.x + b.x) / 2),
        wrap,
        angle: bend.angle,
        neutral: bend.neutral,
        from: (ends[0] * length) / steps,
        to: (ends[1] * length) / steps,
      },
    ];
  });
  return crossed.sort((a, b) => a.from - b.from);
}

/** Between a step that is in and its neighbour, the last that is in. */
function edge(isIn: (step: number) => boolean, inside: number, beyond: number): number {
  if (isIn(beyond)) return beyond;
  let [within, without] = [inside, beyond];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (within + without) / 2;
    if (isIn(middle)) within = middle;
    else without = middle;
  }
  return within;
}
