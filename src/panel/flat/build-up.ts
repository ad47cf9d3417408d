import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { bulgeOf, corner } from '../../base/outline';
import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import type { PanelRules } from '../../tables/panel-rules';
import { squareCut, type CutCurve } from '../corner/end-cut';
import { baseFindings, cornerNames, noRoomInBase } from './base-findings';
import type { Bend } from './bend';
import { cornersOf, type PlacedCorner } from './build-corners';
import { buildLeg, type BuiltLeg, type TabWidths } from './build-leg';
import type { BuiltUp } from './built-up';
import { checkOutline } from './check-outline';
import { endOf, placeOnEdge, settledLines, type EdgeBendPlaced } from './edge-bends';
import type { Face, Panel } from './panel';
import { add, withoutRepeats } from './plane';
import { whatStandsWhere, type Standing } from './spec-findings';
import { walkOutline } from './walk-outline';

/** Lays a built-up panel out flat. Null with error findings where it cannot be. */
export function buildUp(spec: BuiltUp, rules: PanelRules): Staged<Panel | null> {
  const { standing, findings } = whatStandsWhere(spec);
  const wrong = [...findings, ...baseFindings(spec), ...cornerNames(spec)];
  if (hasErrors(wrong)) return { value: null, findings: wrong };
  const lines = settledLines(spec, standing);
  if (!lines) return { value: null, findings: [noRoomInBase()] };
  const placed = spec.base.edges.map((_, edge) => placeOnEdge(spec, { edge, lines, standing }));
  const refused = placed.filter((one): one is Finding => one !== null && 'code' in one);
  if (refused.length > 0) return { value: null, findings: refused };
  const edges = placed.map((one) => (one === null || 'code' in one ? null : one));
  return assemble({ spec, rules, lines, edges, standing });
}

interface Draft {
  readonly spec: BuiltUp;
  readonly rules: PanelRules;
  readonly lines: readonly Point[];
  readonly edges: readonly (EdgeBendPlaced | null)[];
  readonly standing: Standing;
}

/** Everything but the outline: which cuts, which legs; then the outline round it all. */
function assemble(draft: Draft): Staged<Panel | null> {
  const { spec, edges, lines } = draft;
  const { value: corners, findings } = cornersOf(draft);
  if (!corners) return { value: null, findings };
  const built = edges.map((placed, edge) => placed && legAt(draft, { placed, edge, corners }));
  const refused = built.filter((one): one is Finding => one !== null && 'code' in one);
  if (refused.length > 0) return { value: null, findings: refused };
  const legs = built.map((one) => (one === null || 'code' in one ? null : one));
  const outline = withoutRepeats(walkOutline({ lines, legs, corners }));
  const checks = checkOutline(outline);
  if (hasErrors(checks)) return { value: null, findings: [...findings, ...checks] };
  const pieces = legs.flatMap((leg) => leg?.pieces ?? []);
  const faces: Face[] = [{ name: 'base', bend: null, outline: baseOutline(lines, corners) }];
  const bends: Bend[] = [];
  for (const { number, bend, face } of pieces) {
    bends[number] = bend;
    faces[number + 1] = face;
  }
  const placedCorners = corners.flatMap((one) => (one ? [one.corner] : []));
  const panel = { thickness: spec.thickness, faces, bends, corners: placedCorners, outline, holes: [] };
  return { value: panel, findings: [...findings, ...checks] };
}

interface LegAt {
  readonly placed: EdgeBendPlaced;
  readonly edge: number;
  readonly corners: readonly (PlacedCorner | null)[];
}

function legAt({ spec, standing, edges }: Draft, { placed, edge, corners }: LegAt): BuiltLeg | Finding {
  const [here, next] = [corners[edge] ?? null, corners[(edge + 1) % edges.length] ?? null];
  const square = (end: 'start' | 'finish'): CutCurve => {
    const { bend, x } = endOf(placed, end);
    return squareCut(bend, x);
  };
  const tab: TabWidths = { start: tabWidth(here, 1), finish: tabWidth(next, 0) };
  const start = here?.cuts.curves[1] ?? square('start');
  const finish = next?.cuts.curves[0] ?? square('finish');
  return buildLeg(spec, { placed, start, finish, onRim: standing.onRim, base: 0, tab });
}

function tabWidth(corner: PlacedCorner | null, on: 0 | 1): number | null {
  return corner?.cuts.tab?.on === on ? corner.cuts.tab.width : null;
}

/** The base as far as its tangent lines, dressed corners round. */
function baseOutline(lines: readonly Point[], corners: readonly (PlacedCorner | null)[]): Vertex[] {
  return lines.flatMap((place, index): Vertex[] => {
    const at = corners[index];
    if (!at || at.cuts.root) return [corner(place)];
    const [into, out] = at.headings;
    const from = add(place, into, -at.shortened);
    return [corner(from, bulgeOf(Math.PI - at.inside)), corner(add(place, out, at.shortened))];
  });
}
