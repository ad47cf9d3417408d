import { note, warning, type Finding, type Staged } from '../../base/findings';
import type { BendPlan } from '../bend/bend-plan';
import type { FixtureLayout } from '../fixture/fixture';
import type { BoardChoice, Job } from '../../job/job';
import { findBoard } from '../../tables/look-up';
import type { Tables, ToolRules } from '../../tables/tables';
import type { Joints } from './joints';
import { laserJoints } from './laser';
import { routerJoints } from './router';

/** Layout → how its boards find one another when cut as the job says. The joints are worth having only where none of the findings is an error. */
export function layOutJoints(layout: FixtureLayout, bend: BendPlan, job: Job, tables: Tables): Staged<Joints> {
  const joints = jointsFor(layout, bend, job, tables.tools);
  return { value: joints.value, findings: [...joints.findings, ...checkStock(job, tables)] };
}

function jointsFor(layout: FixtureLayout, bend: BendPlan, { cut, units }: Job, tools: ToolRules): Staged<Joints> {
  switch (cut.with) {
    case 'jigsaw':
      return { value: { with: 'jigsaw' }, findings: [] };
    case 'router':
      return routerJoints(layout, cut, tools);
    case 'laser':
      return laserJoints(layout, bend, { cut, units }, tools);
  }
}

/** Joints are cut to the boards' thickness: it has to be measured, and a laser has to get through it. */
function checkStock({ board, cut }: Job, tables: Tables): Finding[] {
  if (cut.with === 'jigsaw') return [];
  const choices = [board.spine, board.stations, board.backing].map((choice) => describe(choice, tables));
  const unmeasured = [...new Set(choices.filter(({ measured }) => !measured).map(({ name }) => name))];
  const thick =
    cut.with === 'laser'
      ? [...new Set(choices.filter(({ thickness }) => thickness > tables.tools.laserThickest).map(({ name }) => name))]
      : [];
  const loose = cut.fit > tables.tools.looseFit;
  return [
    ...(loose
      ? [
          warning(
            'loose-fit',
            'cut.fit',
            `with ${cut.fit.toFixed(2)} mm of play a ${cut.with === 'router' ? 'groove' : 'slot'} no longer places what stands in it`,
            'cut the fit test piece and take the tightest that goes together',
            { got: `${cut.fit.toFixed(2)} mm`, allowed: `up to ${tables.tools.looseFit} mm` },
          ),
        ]
      : []),
    ...(thick.length > 0
      ? [
          warning(
            'thick-for-laser',
            'board',
            `${thick.join(' and ')}: a small laser cuts up to ${tables.tools.laserThickest} mm clean and square`,
            'use a board of 3 to 6 mm, which is stacked, or ask the shop that cuts it',
          ),
        ]
      : []),
    ...(unmeasured.length > 0
      ? [
          note(
            'board-not-measured',
            'board',
            `${cut.with === 'router' ? 'grooves' : 'slots'} are cut to the thickness ${unmeasured.join(' and ')} should have`,
            'measure your board at several places, give the thickness in the job, and cut the fit test piece first',
          ),
        ]
      : []),
  ];
}

function describe(
  { stock, thickness }: BoardChoice,
  tables: Tables,
): { name: string; thickness: number; measured: boolean } {
  const found = findBoard(tables, stock);
  return { name: found?.name ?? stock, thickness: thickness ?? found?.thickness ?? 0, measured: thickness !== null };
}
