import type { Staged } from '../../base/findings';
import type { PanelJob } from '../../job/panel/read';
import { buildUp } from '../../panel';
import type { PanelRules } from '../../tables/panel-rules';
import { builtUpOf } from './built-up-of';
import { namedEdges } from './named-edges';
import type { FlatPanel } from './flat-panel';
import { tracedPanelOf } from './traced-of';

/** A panel's job → its flat. `drawing`: the text of the drawing a traced outline names; null where it names none. */
export function flatOf(
  job: PanelJob,
  { rules, drawing }: { readonly rules: PanelRules; readonly drawing: string | null },
): Staged<FlatPanel | null> {
  const { panel: choice } = job;
  if (choice.kind === 'traced') return tracedPanelOf(job, choice, drawing);
  const built = buildUp(builtUpOf(job, choice), rules);
  const { value: panel, findings } = built;
  return { value: panel && { panel, outline: namedEdges(panel, choice), traced: null }, findings };
}
