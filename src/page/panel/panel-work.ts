import font from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf';
import type { OutputFile } from '../../base/drawing';
import { sayFindings, type SaidFinding } from '../../findings/say';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { labelOf } from '../../job/fields/label';
import { parseFile } from '../../job/parse';
import { planPanel, type BuildablePanel } from '../../output/panel/plan-panel';
import { makePanelFiles } from '../../output/panel/files';
import { loadPanelRules } from '../../tables/panel-rules';
import type { OpenedDrawing } from '../draft';
import { faultText, tables } from '../work';
import { rootOfText } from './panel-root';

/** A panel's job as the page has it. */
export interface PanelAsked {
  readonly text: string;
  /** The drawing that its outline names, where the page has it. */
  readonly drawing: OpenedDrawing | null;
}

/** What became of it; plain data, so that it can come from a worker. */
export interface PanelWorked {
  readonly text: string;
  readonly findings: readonly SaidFinding[];
  /** Null where an error stands in the way. */
  readonly planned: BuildablePanel | null;
  /** What went wrong in the program itself; empty where nothing did. */
  readonly fault: string;
}

const rules = loadPanelRules();

/** Job text → panel, order of work, forms: by the same code as the command line. */
export function workPanel(asked: PanelAsked): PanelWorked {
  const { text } = asked;
  try {
    return { text, fault: '', ...worked(asked) };
  } catch (problem) {
    return { text, fault: faultText(problem), findings: [], planned: null };
  }
}

function worked({ text, drawing }: PanelAsked): Pick<PanelWorked, 'findings' | 'planned'> {
  const root = rootOfText(text);
  const parsed = parseFile(text, tables);
  const say = (found: readonly Finding[]): SaidFinding[] =>
    sayFindings(parsed.locate(found), { units: parsed.units, field: (path) => labelOf(path, root) });
  if (parsed.kind !== 'panel' || !parsed.job) return { findings: say(parsed.findings), planned: null };
  const named = parsed.job.panel.kind === 'traced' ? parsed.job.panel.outline.file : null;
  if (named !== null && drawing?.name !== named)
    return { findings: say([...parsed.findings, lacking(named)]), planned: null };
  const planned = planPanel(parsed.job, { tables, rules, drawing: drawing?.text ?? null }, parsed.findings);
  return { findings: say(planned.findings), planned: planned.buildable ? planned : null };
}

/** The page has no folder to look in: a drawing comes to it by being dropped or opened. */
function lacking(file: string): Finding {
  return finding('drawing-unread', 'outline.file', { file, trouble: 'missing' });
}

/** Every file of a planned panel, byte for byte as the command line writes them. */
export function filesOf(planned: BuildablePanel): Promise<OutputFile[]> {
  return makePanelFiles(planned, { tables, font });
}
