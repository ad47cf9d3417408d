import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import { heldFrame } from '../../panel';
import { toFrame } from '../../panel/flat/bend';
import type { BuildablePanel } from './plan-panel';

/** Bench that a bend wants, mm: along the form, behind its front and before it. */
export interface BenchRoom {
  readonly along: number;
  readonly behind: number;
  readonly ahead: number;
}

/** Chord error of the blank's outline, mm. */
const CHORD = 1;

/** For each bend, in the panel's numbering, the bench on which the sheet lies flat with the form on it, before it is bent. */
export function benchOf({ bends, panel, finish }: BuildablePanel): BenchRoom[] {
  const outline = flattenLoop(finish.trim?.cut.cut.vertices ?? panel.outline, CHORD);
  return bends.map(({ bend, step, alone: { layout } }) => {
    const frame = heldFrame(bend, step.held);
    const { spine, foot } = layout;
    return roomFor(
      outline.map((place) => toFrame(frame, place)),
      { behind: spine.thickness + foot, along: spine.length + 2 * spine.ears },
    );
  });
}

/** `outline`: from the held tangent line, along it and toward the pulled side. */
function roomFor(outline: readonly Point[], form: { readonly along: number; readonly behind: number }): BenchRoom {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return {
    along: Math.max(form.along, Math.max(...xs) - Math.min(...xs)),
    behind: Math.max(form.behind, -Math.min(...ys)),
    ahead: Math.max(0, ...ys),
  };
}
