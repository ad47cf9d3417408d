import { hasErrors, type Finding, type Staged } from '../../base/findings';
import type { Memory } from '../../base/memory';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import type { BendPlan, Hold } from '../bend/bend-plan';
import type { DepthAlong } from '../bend/depth-along';
import type { TrialEffect, TrialFit } from '../bend/trial-fit';
import { layOutFixture } from '../fixture';
import type { FixtureLayout } from '../fixture/fixture';
import type { Guest } from '../fixture/guests';
import { planBend } from '../pull';
import { holdBend, type Standing } from '../pull/plan-hold';
import type { Before } from './before';
import { effectOfTrials } from './effect';
import { fitParts } from './fit-parts';

/** Bend, fixture and hold of a job, as far as its errors let them come. */
export interface Held {
  /** As held where it is held, else as pulled. */
  readonly bend: BendPlan | null;
  /** Whether the bend stands, so that the rest could be tried. */
  readonly bends: boolean;
  readonly layout: FixtureLayout | null;
  readonly hold: Hold | null;
  /** What the trials change; null without any, or without a bend. */
  readonly effect: TrialEffect | null;
  readonly findings: readonly Finding[];
}

/** What is settled of a form besides its job. */
export interface FormGiven {
  /** Other bends that are made on a stretch of it. */
  readonly guests?: readonly Guest[];
  /** The form as it stands already, where the bend is made on one that is there. */
  readonly layout?: FixtureLayout | null;
  /** How deep the held leg is along the bend, where it is not the same everywhere. */
  readonly heldAlong?: DepthAlong | undefined;
  /** What was reckoned for other forms of the same panel. */
  readonly memory?: Memory;
}

interface Asked {
  readonly job: Job;
  readonly tables: Tables;
  readonly given: FormGiven;
}

/**
 * Job → bend, fixture, hold. Where finished parts are among its trials, first as it was without them: that is the form they came off; then
 * anew with what they show.
 */
export function planHeld(job: Job, tables: Tables, given: FormGiven = {}): Held {
  const once = planOnce(job, tables, { given });
  const planned =
    once.bend && job.trials.some((trial) => 'part' in trial)
      ? planAgain(once, once.bend, { job, tables, given })
      : once;
  const effect = planned.bend && effectOfTrials(job, asPlanned(planned, planned.bend, job, tables));
  return { ...planned, effect };
}

/** Without what came out of it a plan has no effect to tell. */
type Planned = Omit<Held, 'effect'>;

/** The same job with what its parts show. */
function planAgain(before: Planned, bend: BendPlan, { job, tables, given }: Asked): Planned {
  const fit = fitParts(job.trials, asPlanned(before, bend, job, tables));
  if (!fit.value) return { bend: null, bends: false, layout: null, hold: null, findings: fit.findings };
  return planOnce(job, tables, { given, known: { value: fit.value, findings: fit.findings } });
}

function asPlanned({ layout, hold }: Planned, bend: BendPlan, job: Job, { rules }: Tables): Before {
  return {
    bend,
    hold: hold && layout && { standing: standingOf(layout), fitted: hold.fitted },
    formGiven: job.bend.radiusOf === 'form',
    rules,
  };
}

function planOnce(
  job: Job,
  tables: Tables,
  {
    known,
    given: { guests, layout: there, heldAlong, memory },
  }: { readonly known?: Staged<TrialFit>; readonly given: FormGiven },
): Planned {
  const { value: pulled, findings: bendFindings } = planBend(job, tables, { known, heldAlong, memory });
  if (!pulled || hasErrors(bendFindings))
    return { bend: pulled, bends: false, layout: null, hold: null, findings: bendFindings };
  const { value: layout, findings: layoutFindings } = there
    ? { value: there, findings: [] }
    : layOutFixture(pulled, job, tables, { guests, memory });
  const soFar = [...bendFindings, ...layoutFindings];
  if (!layout || hasErrors(layoutFindings)) return { bend: pulled, bends: true, layout, hold: null, findings: soFar };
  const held = holdBend(pulled, standingOf(layout), layout.clamps, { job, rules: tables.rules });
  const findings = [...soFar, ...held.findings];
  const stands = hasErrors(held.findings) ? null : held.value;
  return { bend: stands?.bend ?? pulled, bends: true, layout, hold: stands?.hold ?? null, findings };
}

function standingOf({ foot, spine }: FixtureLayout): Standing {
  return { foot, spine: spine.thickness };
}
