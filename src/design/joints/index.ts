import type { Finding, Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { BendPlan } from '../bend/bend-plan';
import type { FixtureLayout } from '../fixture/fixture';
import type { BoardChoice, Job } from '../../job/job';
import type { Tables, ToolRules } from '../../tables/tables';
import { boardOf } from '../built/board-of';
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
          finding('loose-fit', 'cut.fit', {
            fit: cut.fit,
            opening: cut.with === 'router' ? 'groove' : 'slot',
            most: tables.tools.looseFit,
          }),
        ]
      : []),
    ...(thick.length > 0
      ? [
          finding('thick-for-laser', 'board', {
            boards: thick,
            most: tables.tools.laserThickest,
          }),
        ]
      : []),
    ...(unmeasured.length > 0
      ? [
          finding('board-not-measured', 'board', {
            openings: cut.with === 'router' ? 'grooves' : 'slots',
            boards: unmeasured,
          }),
        ]
      : []),
  ];
}

function describe(choice: BoardChoice, tables: Tables): { name: string; thickness: number; measured: boolean } {
  const { name, thickness } = boardOf(choice, tables);
  return { name, thickness, measured: choice.thickness !== null };
}
