import type { Entry } from '../entry';
import type { ValuesOf } from '../kinds';
import { bendFindings } from './bend';
import { blockFindings } from './block';
import { formFindings } from './form';
import { jointFindings } from './joints';
import { jobFindings } from './job';
import { jobRuleFindings } from './job-rules';
import { jobTextFindings } from './job-text';
import { seamFindings } from './seams';
import { drawingFindings } from './drawing';
import { outlineFindings } from './outline';
import { panelFindings } from './panel';
import { pullFindings } from './pull';
import { trialFindings } from './trials';
import { woodFindings } from './wood';

/** Every code there is, by area. A code is declared once, with its level, the kinds of its values, and its words. */
export const catalogue = {
  ...jobTextFindings,
  ...jobFindings,
  ...jobRuleFindings,
  ...bendFindings,
  ...pullFindings,
  ...trialFindings,
  ...woodFindings,
  ...formFindings,
  ...jointFindings,
  ...blockFindings,
  ...seamFindings,
  ...drawingFindings,
  ...outlineFindings,
  ...panelFindings,
};

export type Code = keyof typeof catalogue;

/** The values a code asks for. */
export type ValuesFor<C extends Code> = ValuesOf<(typeof catalogue)[C]['kinds']>;

/** The entry of a code; undefined for one that is not in the catalogue. */
export function entryOf(code: string): Entry | undefined {
  return isCode(code) ? catalogue[code] : undefined;
}

function isCode(code: string): code is Code {
  return Object.hasOwn(catalogue, code);
}
