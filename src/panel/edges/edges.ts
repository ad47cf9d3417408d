import type { Finding, Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import { lengthOf, runSides } from '../seams/row';
import { loopLength } from '../../base/way';
import { edgeRun, findEdge, type Outline } from '../trace/outline';

/** Cap strip over edges, and edges to deburr, mm on the flat. */
export interface EdgeWork {
  readonly caps: readonly Cap[];
  /** Cap strip in all. */
  readonly capLength: number;
  /** The tightest bend of an edge that the strip must follow, in the sheet's plane; null where all are straight. */
  readonly tightest: number | null;
  /** Every edge of the sheet, holes too. */
  readonly deburr: number;
}

export interface Cap {
  readonly edge: string;
  readonly length: number;
}

/** How much cap strip the named edges take and what is to be deburred. An error finding for a name that is no edge. */
export function edgeWork(outline: Outline, capped: readonly string[], path: string): Staged<EdgeWork | null> {
  const findings: Finding[] = [];
  const runs = capped.flatMap((name, index) => {
    const edge = findEdge(outline, name);
    if (edge) return [{ name, sides: runSides(edgeRun(outline, edge)) }];
    findings.push(finding('no-such-edge', `${path}[${index}]`, { edge: name }));
    return [];
  });
  if (findings.length > 0) return { value: null, findings };
  const curvatures = runs.flatMap(({ sides }) => sides.map(({ curvature }) => Math.abs(curvature)));
  const sharpest = Math.max(0, ...curvatures);
  const caps = runs.map(({ name, sides }): Cap => ({ edge: name, length: lengthOf(sides) }));
  const value: EdgeWork = {
    caps,
    capLength: caps.reduce((sum, { length }) => sum + length, 0),
    tightest: sharpest > 0 ? 1 / sharpest : null,
    deburr: [outline.vertices, ...outline.holes].reduce((sum, loop) => sum + loopLength(loop), 0),
  };
  return { value, findings };
}
