import { at } from '../../base/at';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import type { Point } from '../../base/polygon';
import type { PanelRules } from '../../tables/panel-rules';
import { cornerCuts, shrinkFindings, type CornerCuts } from '../corner/corner-cuts';
import { cornersAlong, outAtRim } from '../corner/end-cut';
import type { BuiltUp } from './built-up';
import { cornerSpec, endOf, headings, insideAngle, roundingAt, type EdgeBendPlaced } from './edge-bends';
import type { Corner } from './panel';
import type { Standing } from './spec-findings';

/** A corner of the base between two bends: how they end there, and what is told of it. */
export interface PlacedCorner {
  readonly cuts: CornerCuts;
  readonly corner: Corner;
  readonly headings: readonly [Point, Point];
  /** Inside angle of the base, radians. */
  readonly inside: number;
  /** How far a rounding shortens the base lines, mm. */
  readonly shortened: number;
}

interface Drafted {
  readonly spec: BuiltUp;
  readonly rules: PanelRules;
  readonly lines: readonly Point[];
  readonly edges: readonly (EdgeBendPlaced | null)[];
  readonly standing: Standing;
}

/** Every corner of the base by the edge that starts there; null where fewer than two bends meet, or where they stop short of it. */
export function cornersOf(draft: Drafted): Staged<(PlacedCorner | null)[] | null> {
  const findings: Finding[] = [];
  const corners = draft.edges.map((_, index) => {
    const found = cornerAt(draft, index);
    if (!found) return null;
    findings.push(...found.findings);
    return found.value;
  });
  return { value: hasErrors(findings) ? null : corners, findings };
}

function cornerAt(draft: Drafted, index: number): Staged<PlacedCorner | null> | null {
  const { spec, lines, edges, rules } = draft;
  const count = edges.length;
  const [first, second] = [edges[(index - 1 + count) % count], edges[index]];
  if (!first || !second) return null;
  const names = [at(spec.base.edges, (index - 1 + count) % count), at(spec.base.edges, index)] as const;
  const asked = (first.spec.inset[names[1]] ?? 0) + (second.spec.inset[names[0]] ?? 0);
  if (asked > 0) return null;
  const own = cornerSpec(spec, index);
  const inside = insideAngle(lines, index);
  const into = headings(lines, index);
  const ends = [endOf(first, 'finish'), endOf(second, 'start')] as const;
  const name = names.join('/');
  const tabOn = own.tab.on === names[0] ? 0 : 1;
  const given = { at: at(lines, index), inside, ends, rims: [first.rim, second.rim] as const };
  const cuts = cornerCuts({ ...given, spec: own, tabOn, name, thickness: spec.thickness, headings: into }, rules);
  if (!('facts' in cuts)) return { value: null, findings: cuts };
  const findings = cuts.facts.treat === 'dress' ? shrinkFindings(name, cuts.facts.shrink, rules) : [];
  const corner: Corner = {
    between: [first.number, second.number],
    at: given.at,
    ...cuts.facts,
    root: cuts.root,
    tab: cuts.tab,
    reach: [reachOf(first, cuts, 0), reachOf(second, cuts, 1)],
  };
  const shortened = roundingAt(spec, { edge: index, lines, standing: draft.standing });
  return { value: { cuts, corner, headings: into, inside, shortened }, findings };
}

/** How far the metal runs past the end of the base line, along the rulings. */
function reachOf({ surface, startsAtA, rim }: EdgeBendPlaced, { curves }: CornerCuts, side: 0 | 1): number {
  const curve = curves[side];
  const past = (side === 1) === startsAtA ? -1 : 1;
  const from = past < 0 ? 0 : surface.finished.length;
  const rimOut = outAtRim(curve, rim);
  // A cut that never meets the rim is refused with its leg.
  if (Number.isNaN(rimOut)) return 0;
  const outs = cornersAlong(curve, 0, Math.min(1, rimOut));
  return Math.max(0, ...outs.map((out) => past * (curve.xAt(out) - from)));
}
