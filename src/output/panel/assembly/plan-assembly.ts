import type { Finding } from '../../../base/findings';
import { hasErrors } from '../../../base/findings';
import { finding } from '../../../findings/finding';
import type { AssemblyJob } from '../../../job/panel/assembly';
import { checkBendsMet, nestedBends, type NestedBend, type SeamOverBends } from '../../../panel/seams/bends-met';
import { crossedBends, type CrossedBend } from '../../../panel/seams/crossed-bends';
import { checkJoin } from '../../../panel/seams/join';
import type { SeamLayout } from '../../../panel/seams/seam';
import { loadFasteners } from '../../../tables/fasteners';
import type { BuildablePanel, PlannedPanel } from '../plan-panel';

/** A panel of an assembly worked out; a mirrored one is the other's, made the other way round. */
export interface AssemblyMember {
  readonly name: string;
  /** Its job file, or that of the panel it mirrors. */
  readonly file: string;
  readonly mirrors: string | null;
  readonly planned: PlannedPanel;
}

/** A panel of an assembly that can be made. */
export interface BuildableMember extends AssemblyMember {
  readonly planned: BuildablePanel;
}

/** Two seams that meet. */
export interface PlannedJoin {
  readonly outer: JoinedSeam;
  readonly inner: JoinedSeam;
  readonly drill: 'inner' | 'outer' | 'both';
  /** The outer's bends that lie on the inner's, by the outer's run. */
  readonly bends: readonly NestedBend[];
}

export interface JoinedSeam {
  /** `middle.left`. */
  readonly name: string;
  readonly panel: string;
  readonly layout: SeamLayout;
  /** Of its panel's sheet, and of the sheet that its job expects to meet there, mm. */
  readonly thickness: number;
  readonly mating: number;
  /** The bends it runs over. */
  readonly crossed: readonly CrossedBend[];
}

export type PlannedAssembly =
  | {
      readonly buildable: true;
      readonly job: AssemblyJob;
      readonly members: readonly BuildableMember[];
      readonly joins: readonly PlannedJoin[];
      readonly findings: readonly Finding[];
    }
  | { readonly buildable: false; readonly job: AssemblyJob; readonly findings: readonly Finding[] };

/** An assembly and its panels, each worked out → which seam meets which. What is wrong with a panel is found at its place in the assembly. */
export function planAssembly(
  job: AssemblyJob,
  members: readonly AssemblyMember[],
  earlier: readonly Finding[] = [],
): PlannedAssembly {
  const refused = members.flatMap(({ name, file, mirrors, planned }) =>
    planned.buildable || mirrors !== null ? [] : [finding('panel-refused', `panels.${name}`, { panel: name, file })],
  );
  const buildable = members.flatMap((member): BuildableMember[] =>
    member.planned.buildable ? [{ ...member, planned: member.planned }] : [],
  );
  if (refused.length > 0) return { buildable: false, job, findings: [...earlier, ...refused] };
  const seams = buildable.flatMap(({ name, planned }) =>
    planned.finish.seams.map((layout): JoinedSeam => {
      const { thickness } = planned.panel;
      const { mating } = planned.job.panel.seams.find(({ on }) => on === layout.seam.on) ?? { mating: null };
      const crossed = crossedBends(planned.panel.bends, layout);
      return {
        name: `${name}.${layout.seam.on}`,
        panel: name,
        layout,
        thickness,
        mating: mating ?? thickness,
        crossed,
      };
    }),
  );
  const known = seams.map(({ name }) => name);
  const findings: Finding[] = [...earlier];
  const joins = job.joins.flatMap(({ outer, inner, drill }, index): PlannedJoin[] => {
    const path = `joins[${index}]`;
    const [first, second] = [outer, inner].map((name) => seams.find((seam) => seam.name === name));
    if (!first) findings.push(finding('no-such-seam', `${path}.outer`, { seam: outer, known }));
    if (!second) findings.push(finding('no-such-seam', `${path}.inner`, { seam: inner, known }));
    if (!first || !second) return [];
    const [a, b] = [overBends(first), overBends(second)];
    const nested = nestedBends(a, b);
    const join = { outer: first, inner: second, drill, bends: nested ?? [] };
    const longer = join.bends.reduce((sum, bend) => sum + bend.longer, 0);
    const { rules } = loadFasteners();
    findings.push(
      ...checkDrill(join, path),
      ...checkMating(join, path),
      ...checkBendsMet({ outer: a, inner: b, nested }, rules, path),
      ...(drill === 'both' ? drilledOverBends(join, path) : []),
      ...checkJoin({ ...join, longer }, rules, path),
    );
    return [join];
  });
  if (hasErrors(findings)) return { buildable: false, job, findings };
  return { buildable: true, job, members: buildable, joins, findings };
}

function overBends({ name, thickness, layout: { length }, crossed }: JoinedSeam): SeamOverBends {
  return { name, thickness, length, crossed };
}

/** Holes drilled in both before they are bent. */
function drilledOverBends({ outer, inner, bends }: PlannedJoin, path: string): Finding[] {
  return bends.map(({ outer: { bend } }) =>
    finding('join-over-bend', path, { outer: outer.name, inner: inner.name, bend }),
  );
}

/** Which seam is drilled on the bench, as each panel's own job says, against what the join says. */
function checkDrill({ outer, inner, drill }: PlannedJoin, path: string): Finding[] {
  const [first, second] = [outer.layout.seam.drill, inner.layout.seam.drill];
  const wanted = { inner: ['match', 'now'], outer: ['now', 'match'], both: ['now', 'now'] }[drill];
  if (first === wanted[0] && second === wanted[1]) return [];
  return [finding('join-drill', path, { outer: outer.name, inner: inner.name, first, second, drill })];
}

/** Thicknesses nearer than this are of one gauge, mm. */
const SAME_SHEET = 0.02;

/** Whether each seam was held against the sheet that it meets: the fastener's diameter goes by the thicker of the two. */
function checkMating({ outer, inner }: PlannedJoin, path: string): Finding[] {
  return [[outer, inner] as const, [inner, outer] as const].flatMap(([seam, other]) =>
    Math.abs(seam.mating - other.thickness) <= SAME_SHEET
      ? []
      : [
          finding('join-mating', path, {
            seam: seam.name,
            other: other.panel,
            expected: seam.mating,
            thickness: other.thickness,
          }),
        ],
  );
}

/** How many of each fastener the joins take. */
export function fastenersOf(joins: readonly PlannedJoin[]): { readonly name: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const { outer } of joins) {
    const { name } = outer.layout.seam.fastener;
    counts.set(name, (counts.get(name) ?? 0) + outer.layout.rows.flat().length);
  }
  return [...counts].map(([name, count]) => ({ name, count }));
}
