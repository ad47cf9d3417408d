import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { SeamRules } from '../../tables/fasteners';
import type { SeamLayout } from './seam';
import { SAME_PLACE } from '../../base/tolerance';

/** A seam of one panel that meets one of another, by their names in the assembly: `middle.left`. */
export interface Join {
  readonly outer: { readonly name: string; readonly layout: SeamLayout };
  readonly inner: { readonly name: string; readonly layout: SeamLayout };
  /** Which panel is drilled on the bench; the other through it. */
  readonly drill: 'outer' | 'inner' | 'both';
  /** By how much the outer's flat has to be the longer for the bends that both run over, mm; absent where they run over none. */
  readonly longer?: number | undefined;
}

/**
 * Whether two seams fit each other: edges as long, laps as wide, the same fastener, as many holes and rows; drilled apart, every hole
 * within the other's play. `path`: the join in the assembly.
 */
export function checkJoin({ outer, inner, drill, longer = 0 }: Join, rules: SeamRules, path: string): Finding[] {
  const [a, b] = [outer.layout, inner.layout];
  const names = { outer: outer.name, inner: inner.name };
  const findings: Finding[] = [];
  if (Math.abs(a.length - b.length - longer) > rules.seamLength) {
    const lengths = { ...names, first: a.length, second: b.length };
    findings.push(
      longer === 0
        ? finding('join-length', path, { ...lengths, most: rules.seamLength })
        : finding('join-length-over-bends', path, { ...lengths, wanted: b.length + longer, longer }),
    );
  }
  if (Math.abs(a.seam.lap - b.seam.lap) > SAME_PLACE) {
    findings.push(finding('join-lap', path, { ...names, first: a.seam.lap, second: b.seam.lap }));
  }
  if (a.seam.fastener.id !== b.seam.fastener.id) {
    findings.push(
      finding('join-fastener', path, { ...names, first: a.seam.fastener.name, second: b.seam.fastener.name }),
    );
  }
  if (a.count !== b.count || a.seam.rows !== b.seam.rows) {
    const [first, second] = [a.count * a.seam.rows, b.count * b.seam.rows];
    findings.push(finding('join-count', path, { ...names, first, second }));
  } else if (drill === 'both') findings.push(...checkHoles(a, b, names, path));
  return findings;
}

/** Drilled apart: the row from either end, hole by hole, against what a screw's hole has to spare. */
function checkHoles(
  a: SeamLayout,
  b: SeamLayout,
  names: { readonly outer: string; readonly inner: string },
  path: string,
): Finding[] {
  const { hole, diameter } = a.seam.fastener;
  const span = (layout: SeamLayout): number => layout.pitch * (layout.count - 1);
  const apart = Math.abs(a.seam.ends - b.seam.ends) + Math.abs(span(a) - span(b)) / 2;
  const play = hole - diameter;
  return apart > play + SAME_PLACE ? [finding('join-holes', path, { ...names, apart, play })] : [];
}
