import { radiusAtCentre } from '../../base/cone';
import { toDegrees } from '../../base/angle';
import type { Finding } from '../../base/findings';
import { sayFindings } from '../../findings/say';
import type { BendPlan, Hold } from '../../design/bend/bend-plan';
import type { BendAtFactor, FittedPart, TrialEffect } from '../../design/bend/trial-fit';
import { adviseForm, type FormAdvice } from '../../design/came-out/advise';
import type { Backing, DrivenScrew, FixtureLayout, Station } from '../../design/fixture/fixture';
import { developBlank } from '../../design/form/blank';
import { sizeBlank } from '../../design/form/blank-size';
import type { BlockLayout } from '../../design/block/finishing-block';
import type { Job } from '../../job/job';
import type { WoodLoads } from '../../design/wood/loads';
import type { Joints } from '../../design/joints/joints';
import { flattenLoop } from '../../base/flatten';
import type { End, Ends } from '../../base/ends';
import type {
  BuiltPlan,
  Plan,
  PlanAtFactor,
  PlanBend,
  PlanBlank,
  PlanBlock,
  PlanContact,
  PlanCut,
  PlanEffort,
  PlanEnds,
  PlanHold,
  PlanOpening,
  PlanPull,
  PlanScrew,
  PlanScrewHole,
  PlanSpine,
  PlanStation,
  PlanPart,
  PlanTrials,
} from './plan';
import { CHORD_STRAY } from '../../base/tolerance';

/** What the stages made of a job that came all the way. */
export interface Stages {
  readonly job: Job;
  readonly bend: BendPlan;
  readonly effect: TrialEffect | null;
  readonly layout: FixtureLayout;
  readonly hold: Hold;
  readonly wood: WoodLoads;
  readonly joints: Joints;
  readonly block: PlanBlock | null;
  readonly findings: readonly Finding[];
}

/** What the stages made of a job that got stuck: null where none came so far. */
export interface PartialStages {
  readonly job: Job;
  readonly bend: BendPlan | null;
  readonly effect: TrialEffect | null;
  readonly layout: FixtureLayout | null;
  readonly block: PlanBlock | null;
  readonly findings: readonly Finding[];
}

/** Nothing worked out: a job file that cannot be read, until its findings are put in. Its keys' order is the printed plan's. */
export const NO_PLAN: Plan = {
  title: '',
  sheet: null,
  trials: null,
  bend: null,
  runs: [],
  effort: null,
  pull: null,
  hold: null,
  wood: null,
  stations: [],
  spine: null,
  backings: [],
  blank: null,
  block: null,
  cut: null,
  findings: [],
};

/** The plan as printed, degrees for radians. */
export function toPlan({ job, bend, effect, layout, hold, wood, joints, block, findings }: Stages): BuiltPlan {
  return {
    ...NO_PLAN,
    title: job.title,
    ...bendSections(job, bend, effect),
    ...formSections(job, bend, layout),
    hold: planHold(hold),
    wood,
    cut: planCut(job, layout, joints),
    block,
    findings: sayFindings(findings, { units: job.units }),
  };
}

/** The same of what a job with errors leaves a meaning to. */
export function toPartialPlan({ job, bend, effect, layout, block, findings }: PartialStages): Plan {
  return {
    ...NO_PLAN,
    title: job.title,
    ...(bend ? bendSections(job, bend, effect) : {}),
    ...(bend && layout ? formSections(job, bend, layout) : {}),
    block,
    findings: sayFindings(findings, { units: job.units }),
  };
}

function bendSections(
  job: Job,
  bend: BendPlan,
  effect: TrialEffect | null,
): Pick<BuiltPlan, 'sheet' | 'trials' | 'bend' | 'pull' | 'runs' | 'blank'> {
  return {
    sheet: {
      material: job.sheet.material,
      thickness: bend.section.thickness,
      yield: bend.metal.yield,
      modulus: bend.metal.modulus,
      poisson: bend.metal.poisson,
      hardening: bend.metal.hardening,
      factor: bend.factor,
    },
    trials: planTrials(bend, effect, job),
    bend: planBendSection(bend),
    pull: planPull(bend),
    runs: bend.runs.map(({ name, from, to, moment }) => ({ name, from, to, moment })),
    blank: planBlank(bend),
  };
}

function formSections(
  job: Job,
  bend: BendPlan,
  layout: FixtureLayout,
): Pick<BuiltPlan, 'effort' | 'stations' | 'spine' | 'backings'> {
  return {
    effort: planEffort(bend, layout, job),
    stations: layout.stations.map((station) => planStation(station, bend)),
    spine: planSpine(bend, layout),
    backings: layout.backings.map(({ screws, ...backing }) => ({ ...backing, screws: screws.map(planScrew) })),
  };
}

/** Trials and what they change as printed, angles in degrees; null without any. */
export function planTrials(bend: BendPlan, effect: TrialEffect | null, { bend: { radiusOf } }: Job): PlanTrials | null {
  if (!bend.trials || !effect) return null;
  const { strips, parts, factor, spread, legsKeep } = bend.trials;
  const atFactor = (at: BendAtFactor | null): PlanAtFactor | null =>
    at && { form: fromTo(at.form), finished: fromTo(at.finished), wrap: toDegrees(at.wrap) };
  return {
    strips: strips.map(({ radius, bent, left, width, factor: own }) => ({
      radius,
      bent: toDegrees(bent),
      left: toDegrees(left),
      width,
      factor: own,
    })),
    parts: parts.map((part) => planPart(part, adviseForm(part, bend, radiusOf === 'form'))),
    legsKeep: inDegrees(legsKeep),
    factor,
    spread,
    effect: { tables: atFactor(effect.tables), low: atFactor(effect.low), high: atFactor(effect.high) },
  };
}

function planPart({ index, angle, wrap, reckoned, again, sure, ...part }: FittedPart, advice: FormAdvice): PlanPart {
  const orNull = (turn: number | null): number | null => (turn === null ? null : toDegrees(turn));
  return {
    trial: index + 1,
    at: part.at,
    form: part.form,
    radius: part.radius,
    angle: orNull(angle),
    wrap: orNull(wrap),
    factor: part.factor,
    reckoned: { radius: reckoned.radius, angle: orNull(reckoned.angle) },
    cameOut: part.cameOut,
    advice,
    again: orNull(again),
    sure: { radius: sure.radius, angle: orNull(sure.angle) },
  };
}

function planBendSection(bend: BendPlan): PlanBend {
  return {
    angle: toDegrees(bend.angle),
    length: bend.length,
    finished: { from: bend.finished.radiusA, to: bend.finished.radiusB },
    form: { from: bend.form.radiusA, to: bend.form.radiusB },
    wrap: { ...inDegrees(bend.wrap), chosen: toDegrees(bend.wrap.chosen) },
    twist: inDegrees(bend.twist),
    neutral: bend.neutral,
    allowance: fromTo(bend.allowance),
    setback: fromTo(bend.setback),
    fan: toDegrees(bend.fan),
    strain: fromTo(bend.strain),
    coneHalfAngle: { finished: toDegrees(bend.finished.halfAngle), form: toDegrees(bend.form.halfAngle) },
  };
}

function planEffort({ pull }: BendPlan, { clampForce, clamps, foot }: FixtureLayout, job: Job): PlanEffort {
  const { moment, lever, handForce, leverNeeded, leverage } = pull;
  return { moment, lever, handForce, leverNeeded, leverage, clampForce, clamps, foot, safety: job.effort.safety };
}

/** Ends as the file names them. */
function fromTo({ A, B }: Ends): PlanEnds {
  return { from: A, to: B };
}

function inDegrees({ A, B }: Ends): PlanEnds {
  return { from: toDegrees(A), to: toDegrees(B) };
}

const FILE_END = { A: 'from', B: 'to' } as const;

function withContact<Thing extends { readonly contact: End }>(thing: Thing): Omit<Thing, 'contact'> & PlanContact {
  return { ...thing, contact: FILE_END[thing.contact] };
}

function withOpen<Thing extends { readonly open: End | null }>(
  thing: Thing,
): Omit<Thing, 'open'> & Pick<PlanOpening, 'open'> {
  return { ...thing, open: thing.open && FILE_END[thing.open] };
}

/** Without what only its drawings need. */
export function planBlock({ from, to, legs, holes, layers }: BlockLayout): PlanBlock {
  return { from, to, legs, holes, layers: layers.map(withContact) };
}

function planPull({ wrap, pull }: BendPlan): PlanPull {
  const { legs, yoke } = pull;
  return {
    with: pull.with,
    lever: pull.lever,
    takeOff: { from: toDegrees(wrap.A), to: toDegrees(wrap.B) },
    legAngle: inDegrees(pull.legAngle),
    nearAngle: inDegrees(pull.nearAngle),
    tail: {
      loaded: inDegrees({ A: legs.A.loaded, B: legs.B.loaded }),
      stays: inDegrees({ A: legs.A.stays, B: legs.B.stays }),
      reach: pull.reach,
    },
    departure: fromTo(pull.departure),
    bow: pull.bow,
    early: pull.early,
    handForce: pull.handForce,
    people: pull.people,
    bare: pull.bare,
    yoke: yoke && {
      nose: yoke.nose.id,
      outer: yoke.outer.id,
      handle: yoke.handle.id,
      handles: yoke.handles,
      wedge: yoke.wedge,
      gap: yoke.gap,
      clears: yoke.clears,
      arm: yoke.arm,
      grip: yoke.grip,
      part: yoke.part,
      opens: yoke.opens,
      stays: toDegrees(yoke.stays),
      bolts: { size: yoke.bolt.id, span: yoke.span, force: yoke.bolts },
      length: yoke.length,
    },
  };
}

function planHold({ tail, spread, worst, ...hold }: Hold): PlanHold {
  return {
    ...hold,
    tail: inDegrees(tail),
    // Where something is greatest is known only to the square root of a number's own precision.
    worst: Number(toDegrees(worst).toFixed(3)),
    spread: { weak: spread.weak === null ? null : toDegrees(spread.weak), strong: toDegrees(spread.strong) },
  };
}

function planStation(
  { name, at, thickness, contact, radius, farRadius, screws, ends }: Station,
  bend: BendPlan,
): PlanStation {
  return {
    name,
    at,
    thickness,
    contact: FILE_END[contact],
    radius,
    farRadius,
    bevel: toDegrees(Math.abs(bend.form.halfAngle)),
    screws: screws.map(planScrew),
    ends,
  };
}

function planScrew({ offset, length, lengthName, pilotDepth, kind }: DrivenScrew): PlanScrew {
  return { offset, size: kind.id, length, lengthName, pilot: kind.pilot, pilotDrill: kind.pilotDrill, pilotDepth };
}

function planSpine(bend: BendPlan, layout: FixtureLayout): PlanSpine {
  const { length, thickness, ears } = layout.spine;
  return {
    length,
    thickness,
    widthFrom: 2 * radiusAtCentre(bend.form, 0),
    widthTo: 2 * radiusAtCentre(bend.form, length),
    ears,
    clampHoles: layout.clampHoles,
    screwHoles: [
      ...layout.stations.flatMap((board) => screwHoles(board, 'back')),
      ...layout.backings.flatMap((board) => screwHoles(board, 'front')),
    ],
  };
}

function screwHoles(board: Station | Backing, side: 'back' | 'front'): PlanScrewHole[] {
  return board.screws.map(({ offset, kind }) => ({
    at: board.at,
    offset,
    diameter: kind.clearance,
    countersink: kind.headDiameter,
    side,
    holds: board.name,
  }));
}

function planCut({ cut }: Job, { layers }: FixtureLayout, joints: Joints): PlanCut {
  const { gap, border } = cut;
  if (cut.with === 'router' && joints.with === 'router')
    return {
      with: 'router',
      gap,
      border,
      bit: cut.bit,
      fit: cut.fit,
      bridges: cut.bridges,
      grooveDepth: joints.depth,
      grooves: joints.grooves.map(withOpen),
    };
  if (cut.with === 'laser' && joints.with === 'laser')
    return {
      with: 'laser',
      gap,
      border,
      kerf: cut.kerf,
      fit: cut.fit,
      layers,
      tabLength: joints.tabLength,
      relief: joints.relief,
      boards: joints.boards.map((board) => ({
        ...board,
        layers: board.layers.map(withContact),
        slots: board.slots.map(withOpen),
      })),
    };
  return { with: 'jigsaw', gap, border };
}

function planBlank(bend: BendPlan): PlanBlank {
  const blank = developBlank(bend);
  return {
    outline: flattenLoop(blank.outline, CHORD_STRAY),
    tangents: blank.tangents,
    trims: blank.trims,
    ...sizeBlank(bend, blank),
  };
}
