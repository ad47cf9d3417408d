import { midRadiusAt, type Cone } from '../../base/cone';
import { integrate } from '../../base/integrate';
import type { Run } from '../../job/job';
import type { LoadedRun } from './bend-plan';
import { momentPerWidth } from './moment';
import type { Section } from './section';

/** Moment per unit width, N, of the sheet on the form at `x` (mm along the tangent line). */
export function formMomentAt(section: Section, form: Cone, x: number): number {
  return momentPerWidth(section, midRadiusAt(form, section.thickness, x));
}

/** The run with its total moment M = ∫ m dx at the form radii, N·mm. */
export function loadRun(section: Section, form: Cone, run: Run): LoadedRun {
  return { ...run, moment: integrate((x) => formMomentAt(section, form, x), run.from, run.to) };
}
