import type { Finding, Staged } from '../../../base/findings';
import { hasErrors } from '../../../base/findings';
import { finding } from '../../../findings/finding';
import type { FinishChoice, PanelJob } from '../../../job/panel/read';
import { checkClearOfBends } from '../../../panel/seams/clear-of-bends';
import { layOutSeam } from '../../../panel/seams/lay-out-seam';
import type { Seam, SeamLayout } from '../../../panel/seams/seam';
import { edgeRun, findEdge } from '../../../panel/trace/outline';
import { loadFasteners, type SeamRules } from '../../../tables/fasteners';
import type { FlatPanel } from '../flat-panel';

type GivenSeam = FinishChoice['seams'][number];

/** The seams a panel's job asks for, laid out on its flat; what is wrong with any of them is found at once. */
export function seamsOf(job: PanelJob, { panel, outline }: FlatPanel): Staged<readonly SeamLayout[]> {
  const { rules } = loadFasteners();
  const zones = panel.bends.map(({ name, zone }) => ({ name, outline: zone }));
  const laid = job.panel.seams.map((given, index): Staged<SeamLayout | null> => {
    const path = `seams[${index}]`;
    const edge = findEdge(outline, given.on);
    const seam = seamFrom(given);
    if (!edge) return { value: null, findings: [finding('no-such-edge', `${path}.on`, { edge: given.on })] };
    if (!seam) return { value: null, findings: [] };
    const { thickness } = job.sheet;
    const run = edgeRun(outline, edge);
    const made = layOutSeam(seam, { run, thickness, mating: given.mating ?? thickness }, rules, path);
    const crossing: Finding[] = made.value ? checkClearOfBends(made.value, zones, path) : [];
    return { value: hasErrors(crossing) ? null : made.value, findings: [...made.findings, ...crossing] };
  });
  const value = laid.flatMap((one) => (one.value ? [one.value] : []));
  return { value, findings: [...laid.flatMap(({ findings }) => findings), ...crowded(value, rules)] };
}

/** Holes of two seams that stand nearer to one another than those of one row may. */
function crowded(seams: readonly SeamLayout[], rules: SeamRules): Finding[] {
  return seams.flatMap((a, index) =>
    seams.slice(index + 1).flatMap((b): Finding[] => {
      const apart = a.rows.flat().flatMap((p) => b.rows.flat().map((q) => Math.hypot(p.x - q.x, p.y - q.y)));
      const [gap, least] = [
        Math.min(...apart),
        rules.pitch * Math.max(a.seam.fastener.diameter, b.seam.fastener.diameter),
      ];
      if (gap >= least) return [];
      return [finding('seams-crowded', 'seams', { first: a.seam.on, second: b.seam.on, gap, least })];
    }),
  );
}

/** Null where its fastener is none of the table's, which the job's reader has said. */
function seamFrom({ on, lap, fastener: id, countersunk, ends, count, pitch, rows, drill }: GivenSeam): Seam | null {
  const fastener = loadFasteners().fasteners.find((row) => row.id === id);
  if (!fastener) return null;
  return {
    on,
    lap,
    fastener,
    countersunk,
    ends: ends ?? lap / 2,
    spacing: pitch === null ? { count: count ?? NaN } : { pitch },
    rows: rows === 2 ? 2 : 1,
    drill,
  };
}
