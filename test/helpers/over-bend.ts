import { parseAssembly, parseFile } from '../../src/job/parse';
import { planAssembly, type AssemblyMember, type PlannedAssembly } from '../../src/output/panel/assembly/plan-assembly';
import { planPanel } from '../../src/output/panel/plan-panel';
import { loadPanelRules } from '../../src/tables/panel-rules';
import { tables } from './starters';

/** What may differ between the two panels. */
export interface OverBend {
  readonly long?: number;
  readonly radius?: number | string;
  readonly line?: number;
  readonly angle?: number;
  readonly drill?: 'now' | 'match';
  readonly thickness?: number;
  readonly mating?: number;
  readonly bends?: boolean;
}

/** A strip of 300 × 180 with a bend across its middle and a row of rivets along its side, which runs over the bend. */
function panel(title: string, given: Required<Omit<OverBend, 'mating'>> & Pick<OverBend, 'mating'>): string {
  const { long, radius, line, angle, drill, thickness, mating, bends } = given;
  const [x, row] = bends ? [line, `side`] : [line, 'end'];
  return `
title: ${title}
units: mm
sheet: { material: aluminium-3003-h14, thickness: ${thickness} }
outline:
  corners: [[0, 0], [${long}, 0], [${long}, 180], [0, 180]]
  mockup: metal-allowed
  edges: { ${row}: ${row === 'side' ? '[20, 0]' : `[${long}, 90]`} }
bends:
  - { name: knee, line: [[${x}, 180], [${x}, 0]], free: left, angle: ${angle}, radius: ${radius} }
seams:
  - { on: ${row}, lap: 30, fastener: rivet-3.2, count: 8, drill: ${drill}${mating === undefined ? '' : `, mating: ${mating}`} }
board: { stock: mdf-18 }
`;
}

/** A cover over a frame of 1.2 mm with an inside radius of 30: the cover’s is 31.2 and its edge 1.88 mm longer, unless said otherwise. */
export function coverOverFrame(cover: OverBend, drill = 'inner', frame: OverBend = {}): PlannedAssembly {
  const plain = { line: 90, angle: 90, thickness: 1.2, bends: true };
  const side = cover.bends === false ? 'end' : 'side';
  const texts = {
    cover: panel('Cover', { ...plain, long: 301.88, radius: 31.2, drill: 'match', ...cover }),
    frame: panel('Frame', { ...plain, long: 300, radius: 30, drill: 'now', ...frame }),
  };
  const { job } = parseAssembly(
    `title: Box\nunits: mm\npanels: { cover: cover.yaml, frame: frame.yaml }\njoins:\n  - { outer: cover.${side}, inner: frame.side, drill: ${drill} }\n`,
    tables,
  ) ?? { job: null };
  if (!job) throw new Error('no assembly');
  const members = (['cover', 'frame'] as const).map((name): AssemblyMember => {
    const read = parseFile(texts[name], tables);
    if (read.kind !== 'panel' || !read.job) throw new Error(`${name} is no panel: ${JSON.stringify(read.findings)}`);
    const planned = planPanel(read.job, { tables, rules: loadPanelRules() }, read.findings);
    return { name, file: `${name}.yaml`, mirrors: null, planned };
  });
  return planAssembly(job, members);
}
