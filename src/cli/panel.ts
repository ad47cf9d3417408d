import { at } from '../base/at';
import { hasErrors, type Finding } from '../base/findings';
import { sayFindings } from '../findings/say';
import type { Parsed } from '../job/parse';
import type { PanelJob } from '../job/panel/read';
import { finishWords } from '../output/panel/finish/words';
import { noPanelPlan, toPanelPlan, type PanelPlan } from '../output/panel/panel-plan';
import { planPanel, type PlannedPanel } from '../output/panel/plan-panel';
import { stepWords } from '../output/panel/step-words';
import { tracedWords } from '../output/panel/traced-words';
import { pullAndHold } from '../output/plan/pull-details';
import { planText } from '../output/plan/plan-text';
import { measuresIn } from '../output/shop-sheet/measures';
import { loadPanelRules } from '../tables/panel-rules';
import type { Tables } from '../tables/tables';
import { readDrawing } from './drawing-file';
import { pairs } from './columns';
import { EXIT, type ExitCode, type Io } from './io';
import { printFindings } from './report';
import { printersFor } from './printing';

/** A panel's job file worked out as far as its mistakes allow. */
export interface WorkedPanel {
  readonly planned: PlannedPanel | null;
  /** The numbers, as JSON has them. */
  readonly plan: () => PanelPlan;
  readonly findings: readonly Finding[];
  readonly units: Parsed<PanelJob>['units'];
  readonly tables: Tables;
}

export async function workPanel(
  io: Io,
  path: string,
  { job, findings, locate, units }: Parsed<PanelJob>,
  tables: Tables,
): Promise<WorkedPanel> {
  const say = (found: readonly Finding[]): ReturnType<typeof sayFindings> => sayFindings(found, { units });
  if (!job) return { planned: null, plan: () => noPanelPlan('', say(findings)), findings, units, tables };
  const drawing = await readDrawing(io, path, job);
  if ('refused' in drawing) {
    const refused = locate([...findings, drawing.refused]);
    return { planned: null, plan: () => noPanelPlan(job.title, say(refused)), findings: refused, units, tables };
  }
  const planned = planPanel(job, { tables, rules: loadPanelRules(), drawing: drawing.text }, findings);
  const located = locate(planned.findings);
  const plan = (): PanelPlan =>
    planned.buildable ? toPanelPlan(planned, say(located)) : noPanelPlan(job.title, say(located));
  return { planned, plan, findings: located, units, tables };
}

/** `plan` of a panel: the steps in the order of work, or everything as JSON. */
export function printPanel(io: Io, worked: WorkedPanel, options: { json?: true; units?: 'mm' | 'in' }): ExitCode {
  const { planned, plan, findings } = worked;
  const units = options.units ?? worked.units;
  if (options.json) io.out(planText(plan()));
  else {
    if (planned?.buildable) io.out(panelText(planned, units));
    io.out(printFindings(findings, units, io.colour));
  }
  return hasErrors(findings) ? EXIT.wrong : EXIT.done;
}

function panelText(planned: PlannedPanel & { readonly buildable: true }, units: 'mm' | 'in'): string {
  const say = measuresIn(units);
  const forms = planned.forms.map(
    ({ name, planned: { bend } }) =>
      `  ${name}: ${say.length(bend.length)} long, radius ${say.length(bend.form.radiusA)} at A, ${say.length(bend.form.radiusB)} at B\n`,
  );
  const steps = stepWords(planned, say).map(
    ({ number, bend, title, sentences }) =>
      `\n${number}. ${bend}: ${title}\n${sentences.map((sentence) => `   - ${sentence}\n`).join('')}`,
  );
  const pulls = planned.order.map(({ bend }) => {
    const { bend: made, alone } = at(planned.bends, bend);
    return `\nPull and hold of ${made.name}\n${pairs(pullAndHold(alone.plan, printersFor(units)))}`;
  });
  const traced = tracedWords(planned.flat.traced, say).map((line) => `${line}\n`);
  return `${planned.job.title}\n\n${traced.length > 0 ? `${traced.join('')}\n` : ''}Forms\n${forms.join('')}${steps.join('')}${pulls.join('')}\n${finishWords(
    planned.finish,
    say,
  )
    .map((line) => `${line}\n`)
    .join('')}\n`.replaceAll('\u00a0', ' ');
}
