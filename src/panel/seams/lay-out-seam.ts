import { toRadians } from '../../base/angle';
import type { Finding, Staged } from '../../base/findings';
import { hasErrors } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { SeamRules } from '../../tables/fasteners';
import { asRun, lengthOf, movedInward, placeAlong, runSides, sharpestTurn } from './row';
import type { Seam, SeamEdge, SeamLayout } from './seam';
import { ROUNDING, SAME_PLACE } from '../../base/tolerance';

/**
 * A seam laid out along its edge: equal pitch, the ends as asked, one row on the middle of the lap, two with the lap shared out as the
 * rules share it. Error findings: too little edge, lap or pitch; an edge too short or with a corner in it. `path`: the seam in the job.
 */
export function layOutSeam(seam: Seam, edge: SeamEdge, rules: SeamRules, path: string): Staged<SeamLayout | null> {
  const sides = runSides(edge.run);
  const fromEdge = rowDistances(seam, rules);
  const rows = fromEdge.map((inward) => movedInward(sides, inward));
  const lapLine = movedInward(sides, seam.lap);
  const findings = [...checkDiameter(seam, edge, rules, path), ...checkLap(seam, fromEdge, rules, path)];
  const isSmooth = sharpestTurn(sides) <= toRadians(rules.smooth);
  if (!isSmooth || !lapLine || !rows.every((row) => row !== null)) {
    return { value: null, findings: [...findings, finding('seam-corner', `${path}.on`, { edge: seam.on })] };
  }
  const length = lengthOf(sides);
  const { count, pitch } = spaced(seam, Math.min(...rows.map(lengthOf)));
  findings.push(...checkSpacing(seam, { count, pitch, length }, rules, path));
  if (hasErrors(findings)) return { value: null, findings };
  const places = rows.map((row) => holesAlong(row, seam.ends, count));
  return { value: { seam, length, count, pitch, rows: places, fromEdge, lapLine: asRun(lapLine) }, findings };
}

/** One row in the middle; two so that edge, rows and edge share the lap as their least distances do. */
function rowDistances({ lap, rows, countersunk }: Seam, rules: SeamRules): number[] {
  if (rows === 1) return [lap / 2];
  const edge = countersunk ? rules.edgeCountersunk : rules.edge;
  const outside = (lap * edge) / (2 * edge + rules.rowsApart);
  return [outside, lap - outside];
}

function spaced({ spacing, ends }: Seam, length: number): { readonly count: number; readonly pitch: number } {
  const room = length - 2 * ends;
  const count = 'count' in spacing ? spacing.count : Math.max(2, Math.ceil(room / spacing.pitch - ROUNDING) + 1);
  return { count, pitch: room / (count - 1) };
}

function holesAlong(row: ReturnType<typeof runSides>, ends: number, count: number): SeamLayout['rows'][number] {
  const pitch = (lengthOf(row) - 2 * ends) / (count - 1);
  return Array.from({ length: count }, (_, index) => placeAlong(row, ends + index * pitch));
}

function checkDiameter({ fastener }: Seam, { thickness, mating }: SeamEdge, rules: SeamRules, path: string): Finding[] {
  const thickest = Math.max(thickness, mating);
  const { diameter, name } = fastener;
  const fits = diameter >= thickest - SAME_PLACE && diameter <= rules.thickest * thickest + SAME_PLACE;
  const most = rules.thickest * thickest;
  return fits
    ? []
    : [finding('seam-diameter', `${path}.fastener`, { fastener: name, diameter, least: thickest, most })];
}

function checkLap(seam: Seam, fromEdge: readonly number[], rules: SeamRules, path: string): Finding[] {
  const { diameter, name } = seam.fastener;
  const times = seam.countersunk ? rules.edgeCountersunk : rules.edge;
  const least = times * diameter;
  const leastLap = 2 * least + (seam.rows === 2 ? rules.rowsApart * diameter : 0);
  const [first = 0] = fromEdge;
  const asked = { fastener: name, times, least };
  return [
    ...(first < least - SAME_PLACE
      ? [finding('seam-lap', `${path}.lap`, { lap: seam.lap, edge: first, leastLap, ...asked })]
      : []),
    ...(seam.ends < least - SAME_PLACE ? [finding('seam-ends', `${path}.ends`, { ends: seam.ends, ...asked })] : []),
  ];
}

function checkSpacing(
  seam: Seam,
  { count, pitch, length }: Pick<SeamLayout, 'count' | 'pitch' | 'length'>,
  rules: SeamRules,
  path: string,
): Finding[] {
  const at = `${path}.${'count' in seam.spacing ? 'count' : 'pitch'}`;
  const times = seam.rows === 2 ? rules.pitchTwoRows : rules.pitch;
  const least = times * seam.fastener.diameter;
  if (!(count >= 2 && Number.isInteger(count))) return [finding('seam-count', at, { count })];
  if (!(pitch > 0)) return [finding('seam-short', `${path}.ends`, { edge: seam.on, length, ends: seam.ends })];
  return pitch < least - SAME_PLACE
    ? [finding('seam-pitch', at, { count, pitch, fastener: seam.fastener.name, times, least })]
    : [];
}
