import { midRadiusAt } from '../../base/cone';
import type { End, Ends } from '../../base/ends';
import { toRadians } from '../../base/angle';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import type { BentSheet, LoadedRun, Pull } from '../bend/bend-plan';
import { bendingCurve } from '../bend/curve';
import { formMomentAt } from '../bend/effort';
import { chooseYoke, type YokedLegs } from './choose-yoke';
import { legShape, placeOf } from './leg-shape';
import { bareLeg } from './pulled-leg';
import { barePull } from './pulling';

/** The way the leg is pulled, and the leg at both ends. */
export interface Way extends Pick<
  Pull,
  'with' | 'moment' | 'lever' | 'leverNeeded' | 'leverage' | 'edge' | 'people' | 'handForce' | 'legs' | 'yoke' | 'bare'
> {
  /** Why it is doubtful: the leg bows, or the yoke gives. */
  readonly bows: boolean;
  readonly gives: boolean;
}

type Legs = Pull['legs'];

/** A leg too limp to be pulled so: the longest lever it stands, mm. */
export interface TooLimp {
  readonly limp: number;
}

const BARE_STEP = 5;

/** Bare hands where the leg comes out flat, else a yoke, or a batten pressed down where no yoke finds room; or what the job asks for. */
export function chooseWay(bend: BentSheet, job: Job, tables: Tables): Way | TooLimp {
  const run = bend.runs.reduce((most, one) => (one.moment > most.moment ? one : most));
  const { rules } = tables;
  const most = toRadians(rules.maxLegTurn);
  const { free } = job.bend.legs;
  const { people, handForce, maxLeverage } = job.effort;
  const leverNeeded = run.moment / (handForce * people);
  const leverage = Math.min(Math.max(0, leverNeeded - free), maxLeverage ?? Infinity);
  const shared = { moment: run.moment, leverNeeded, people };
  const finish = (
    legs: Legs,
    more: Pick<Way, 'with' | 'lever' | 'leverage' | 'yoke' | 'bare' | 'bows' | 'gives'>,
  ): Way => ({
    ...shared,
    ...more,
    legs,
    edge: free + more.leverage,
    handForce: forceOf(bend, run, legs),
  });

  const bare = bareLegs(bend, most);
  const pressed = (): Way | null => {
    const legs = bare(job.pull.press);
    if (!legs) return null;
    const bows = !flat(bend, legs, tables);
    const more = { leverage: 0, yoke: null, bare: null, gives: false };
    return finish(legs, { with: 'press', lever: job.pull.press, ...more, bows });
  };
  if (job.pull.with === 'press') return pressed() ?? limpAt(bend, most);
  const lever = free + leverage;
  const byHand = (at: number): Way | null => {
    const legs = bare(at);
    const bows = legs !== null && !flat(bend, legs, tables);
    const more = { with: 'bare', lever: at, leverage: at - free, yoke: null, bare: null, gives: false } as const;
    return legs && finish(legs, { ...more, bows });
  };
  const first = job.pull.with === 'yoke' ? null : byHand(lever);
  if (first && !first.bows) return first;
  const within = bareWithin(bend, { run, tables, most, bare });
  if (job.pull.with !== 'bare') {
    const yoked = byYoke(bend, job, tables, { run, most, leverNeeded });
    if (yoked) return finish(yoked.legs, { ...yoked, with: 'yoke', leverage: 0, bare: within });
  }
  // By hand all the same: as far out as the leg stays flat, and more people pull. Where it bows even so, a batten pressed down near the bend.
  const hand = byHand(Math.min(lever, Math.max(free, within?.lever ?? 0))) ?? first;
  if ((hand && !hand.bows) || job.pull.with !== null) return hand ?? limpAt(bend, most);
  const press = pressed();
  return (press && !press.bows ? press : (hand ?? press)) ?? limpAt(bend, most);
}

/** Hands are tried nearer to the bend by this share. */
const NEARER = 0.75;

/**
 * The yoke where there is leg enough for one, or where the job asks for it: hands at the leg's edge or beyond; where the leg would bow so, under it,
 * as far out as leaves it flat, or as near as the hands' limit lets them.
 */
function byYoke(
  bend: BentSheet,
  job: Job,
  tables: Tables,
  { run, most, leverNeeded }: { readonly run: LoadedRun; readonly most: number; readonly leverNeeded: number },
): (Pick<YokedLegs, 'yoke' | 'legs'> & Pick<Way, 'lever' | 'gives' | 'bows'>) | null {
  const { rules } = tables;
  const { free } = bend.legs;
  const at = (lever: number): ReturnType<typeof byYoke> => {
    const yoked = chooseYoke(bend, tables, {
      lever,
      system: job.units,
      most,
      run: run.to - run.from,
      mayStray: rules.maxDeparture,
      strays: (legs) => strays(bend, legs),
    });
    if (!yoked) return null;
    const fits = free >= yoked.yoke.gap + yoked.yoke.nose.width;
    if (!fits && job.pull.with !== 'yoke') return null;
    const bows = !flat(bend, yoked.legs, tables);
    return { yoke: yoked.yoke, legs: yoked.legs, lever, gives: !yoked.within, bows };
  };
  const reach = Math.min(leverNeeded, rules.maxHandle);
  const nearest = Math.max(reach, rules.minHandle);
  let best: ReturnType<typeof byYoke> = null;
  for (let lever = Math.max(free, reach); ; lever = Math.max(lever * NEARER, nearest)) {
    best = at(lever) ?? best;
    if ((best && !best.bows) || lever <= nearest) return best;
  }
}

/** A value for each end; reckoned once on a constant radius. */
function bothEnds<Value>(bend: BentSheet, at: (end: End) => Value): Ends<Value> {
  const A = at('A');
  return { A, B: bend.form.halfAngle === 0 ? A : at('B') };
}

/** The leg pulled by its end at any lever; null where it is too limp. */
type BareLegs = (lever: number) => Legs | null;

function bareLegs(bend: BentSheet, most: number): BareLegs {
  const curve = bendingCurve(bend.section);
  const ends = bothEnds(bend, (end) =>
    barePull(curve, 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end)), most),
  );
  return (lever) => {
    const { A, B } = bothEnds(bend, (end) => ends[end](lever));
    return A && B && { A, B };
  };
}

/** Greatest distance of the bend from the round one, mm, the held leg taken as flat. */
function strays(bend: BentSheet, legs: Legs): number {
  const { A, B } = bothEnds(bend, (end) => legShape(bend, end, legs[end], 0).departure);
  return Math.max(A, B);
}

/** Whether bend and free leg come out as wanted within the shop's limits, the held leg taken as flat. */
function flat(bend: BentSheet, legs: Legs, { rules }: Tables): boolean {
  const fine = bothEnds(bend, (end) => {
    const { departure, bow } = legShape(bend, end, legs[end], 0);
    return departure <= rules.maxDeparture && bow <= (rules.maxLegBow * bend.legs.free) / 100;
  });
  return fine.A && fine.B;
}

function limpAt(bend: BentSheet, most: number): TooLimp {
  const curve = bendingCurve(bend.section);
  const longest = (['A', 'B'] as const).map((end) =>
    bareLeg(curve, 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end)), most).leverAt(most),
  );
  return { limp: Math.min(...longest) };
}

/** The longest lever, in steps, at which bare hands would still bring the leg out flat, and the force there. */
function bareWithin(
  bend: BentSheet,
  {
    run,
    tables,
    most,
    bare,
  }: { readonly run: LoadedRun; readonly tables: Tables; readonly most: number; readonly bare: BareLegs },
): Pull['bare'] {
  const legsAt = (steps: number): Legs | null => {
    const legs = bare(steps * BARE_STEP);
    return legs && flat(bend, legs, tables) ? legs : null;
  };
  let [low, high] = [0, Math.floor(limpAt(bend, most).limp / BARE_STEP) + 1];
  let found: Legs | null = null;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const legs = legsAt(middle);
    if (legs) [low, found] = [middle, legs];
    else high = middle;
  }
  return found && { lever: low * BARE_STEP, handForce: forceOf(bend, run, found) };
}

/** All hands together, N, on a run: each end's pull per moment, the mean of both, times the run's moment. */
function forceOf(bend: BentSheet, run: LoadedRun, legs: Legs): number {
  const share = (end: End): number => legs[end].force / formMomentAt(bend.section, bend.form, placeOf(bend, end));
  return (run.moment * (share('A') + share('B'))) / 2;
}
