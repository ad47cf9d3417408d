import { at } from '../../base/at';
import { flattenLoop } from '../../base/flatten';
import type { Cone } from '../../base/cone';
import type { Job, Run } from '../../job/job';
import type { PanelJob } from '../../job/panel/read';
import { onLeg, toFrame, type Bend } from '../../panel/flat/bend';
import type { HeldSide, Panel } from '../../panel';
import { CHORD_STRAY } from '../../base/tolerance';

/** Depths are measured to this part of a mm: legs that are alike stay alike, whatever side of the panel they were measured on, and what is worked out of one serves the other. */
const PARTS = 1e9;

/** How deep the metal on one side of a bend is, square to its tangent line, mm. */
export function depthOf(panel: Panel, bend: Bend, side: HeldSide): number {
  const face = flattenLoop(at(panel.faces, side === 'base' ? bend.base : bend.leg).outline, CHORD_STRAY);
  const depths = face.map((place) => (side === 'base' ? -toFrame(bend.frame, place)[1] : onLeg(bend, place)[1]));
  return Math.round(Math.max(0, ...depths) * PARTS) / PARTS;
}

/** A run over the whole of a bend. */
export function runOfAll({ name, finished }: Pick<Bend, 'name' | 'finished'>): Run {
  return { name, from: 0, to: finished.length };
}

/** The job of one bend of a panel alone: what is needed to make its form and to bend it, with one side held. */
export function oneBendJob(
  { panel: whole, ...job }: PanelJob,
  panel: Panel,
  bend: Bend,
  { held, runs }: { readonly held: HeldSide; readonly runs: readonly Run[] },
): Job {
  const { finished, angle } = bend;
  return {
    ...job,
    title: `${job.title}, form ${bend.name}`,
    bend: {
      angle,
      length: finished.length,
      radius: { from: finished.radiusA, to: finished.radiusB },
      radiusOf: 'finished',
      legs: { held: depthOf(panel, bend, held), free: depthOf(panel, bend, held === 'base' ? 'leg' : 'base') },
    },
    runs,
    block: null,
    // The blank is the panel's, drawn once for all its bends.
    paper: { ...job.paper, blanks: 'none' },
  };
}

/** The same for a bend on a stretch of another's form: its radii there, from the bend's end A, are the form's. */
export function onFormJob(
  job: PanelJob,
  panel: Panel,
  bend: Bend,
  { held, cone }: { readonly held: HeldSide; readonly cone: Cone },
): Job {
  const alone = oneBendJob(job, panel, bend, { held, runs: [runOfAll(bend)] });
  return {
    ...alone,
    bend: { ...alone.bend, radius: { from: cone.radiusA, to: cone.radiusB }, radiusOf: 'form' },
  };
}
