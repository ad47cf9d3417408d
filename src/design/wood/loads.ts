import { at } from '../../base/at';
import { minimumBetween } from '../../base/minimum';
import { centreFromTangent, midRadiusAt, tangentFromCentre } from '../../base/cone';
import { boardOf } from '../built/board-of';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import type { BendPlan, Hold } from '../bend/bend-plan';
import { formMomentAt } from '../bend/effort';
import type { FixtureLayout, Station } from '../fixture/fixture';
import { bearingWith, LEAST_BEARING } from '../pull/hold';
import { heldForm } from '../pull/plan-hold';

/** A load against what bears it, at the station that has it worst. */
export interface StationLoad {
  readonly station: string;
  readonly load: number;
  readonly bears: number;
}

/** Loads on the form's wood where they are greatest in the course of the pull, against what bears them. */
export interface WoodLoads {
  /** Up-push on the spine's front edge, N/mm; the edge's strength, MPa; how far in it must bed to bear that, mm. */
  readonly frontEdge: { readonly load: number; readonly strength: number; readonly beds: number };
  /** Shear on one screw of a station and its allowable load, N. */
  readonly screws: StationLoad;
  /** Pressure on a station's round edge where the sheet leaves it, and the edge's strength, MPa. */
  readonly roundEdge: StationLoad;
}

/** What stands, and how it is held. */
export interface Standing {
  readonly bend: BendPlan;
  readonly layout: FixtureLayout;
  readonly hold: Hold;
}

/**
 * The loads the pull puts on the wood. The held leg pushes the spine's front edge up by m/h per mm, h its bearing at the moment of the pull
 * where that is shortest. Where the sheet leaves the form it presses the round edges toward the disc's centre by F(φ) = M/(a + ρ(ψ − φ)): what of
 * that goes along the spine, F·cos φ, is shear on the screws; on the edge it spreads by once the sheet's thickness either way.
 */
export function woodLoads(standing: Standing, job: Job, tables: Tables): WoodLoads {
  const { layout, bend } = standing;
  const spine = boardOf(job.board.spine, tables).edgeStrength;
  const load = upPush(standing);
  const pulls = bend.runs.flatMap((run) => pullsOn(standing, run));
  return {
    frontEdge: { load, strength: spine, beds: load / spine },
    screws: worst(layout.stations, pulls, ({ station, shear }) => {
      const [screw] = station.screws;
      const bears = screw ? allowedOn(screw.kind.diameter, tables) : Infinity;
      return { load: screw ? shear / station.screws.length : 0, bears };
    }),
    roundEdge: worst(layout.stations, pulls, ({ station, press }) => ({
      load: press / (station.thickness * 2 * bend.section.thickness),
      bears: boardOf(job.board.stations, tables).edgeStrength,
    })),
  };
}

/** Allowable lateral load, N, of a screw of this diameter (mm) in a board's edge: p = C·D², two thirds in the edge. */
function allowedOn(diameter: number, { rules }: Tables): number {
  return rules.screwShear * diameter ** 2 * rules.screwInEdge;
}

/** Up-push per mm of bend, N/mm, the greatest along it and in the course of the pull. */
function upPush({ bend, layout, hold }: Standing): number {
  const form = heldForm(bend, { foot: layout.foot, spine: layout.spine.thickness });
  const shortest = minimumBetween((wrap) => bearingWith(form, hold.fitted, wrap) ?? Infinity, 0, bend.wrap.chosen);
  const bearing = bearingWith(form, hold.fitted, shortest) ?? hold.bearing;
  const bears = Math.max(Math.min(bearing, hold.bearing), LEAST_BEARING);
  if (!bend.heldAlong) return momentOf(bend) / bears;
  // Where the held leg ends before that it bears no further back than it is deep.
  const loads = bend.heldAlong.flatMap(({ from, to, under }) =>
    (
      [
        [from, under.A],
        [to, under.B],
      ] as const
    ).map(([x, depth]) => momentAt(bend, x) / Math.max(Math.min(depth, bears), LEAST_BEARING)),
  );
  return Math.max(...loads);
}

/** The greatest moment per mm of bend, N. */
function momentOf(bend: BendPlan): number {
  return Math.max(...bend.runs.flatMap(({ from, to }) => [from, to].map((x) => momentAt(bend, x))));
}

function momentAt({ section, form }: BendPlan, x: number): number {
  return formMomentAt(section, form, x);
}

/** The pull a station has of one run: N. */
interface PullOn {
  readonly station: Station;
  /** Along the spine, and toward the disc's centre, where each is greatest. */
  readonly shear: number;
  readonly press: number;
}

/** Each station under a run takes what lies nearer to it than to its neighbours. */
function pullsOn({ bend, layout }: Standing, { from, to }: { readonly from: number; readonly to: number }): PullOn[] {
  const { form, section, pull, wrap } = bend;
  const under = layout.stations.filter(
    ({ at: place, thickness }) =>
      place + thickness / 2 > centreFromTangent(form, from) && place - thickness / 2 < centreFromTangent(form, to),
  );
  const borders = under
    .slice(1)
    .map((station, index) => tangentFromCentre(form, (at(under, index).at + station.at) / 2));
  return under.map((station, index): PullOn => {
    const [low, high] = [borders[index - 1] ?? from, borders[index] ?? to];
    const middle = (low + high) / 2;
    const moment = momentAt(bend, middle) * Math.max(0, high - low);
    const mid = midRadiusAt(form, section.thickness, middle);
    const pressAt = (angle: number): number => moment / (pull.lever + mid * (wrap.chosen - angle));
    const shearAt = (angle: number): number => Math.abs(pressAt(angle) * Math.cos(angle));
    const worstAngle = minimumBetween((angle) => -shearAt(angle), 0, wrap.chosen);
    return { station, shear: shearAt(worstAngle), press: pressAt(wrap.chosen) };
  });
}

/** The station whose load comes nearest to what bears it. */
function worst(
  stations: readonly Station[],
  pulls: readonly PullOn[],
  loadOf: (pull: PullOn) => Omit<StationLoad, 'station'>,
): StationLoad {
  return pulls
    .map((pull): StationLoad => ({ station: pull.station.name, ...loadOf(pull) }))
    .reduce((most, one) => (one.load / one.bears > most.load / most.bears ? one : most), {
      station: at(stations, 0).name,
      load: 0,
      bears: Infinity,
    });
}
