import { error, note, type Finding, type Staged } from '../../base/findings';
import { jointDepth } from '../fixture/joint-depth';
import type { FixtureLayout, Station } from '../fixture/fixture';
import type { RouterCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';
import type { Groove, RouterJoints } from './joints';
import { checkWalls, openingFor } from './opening';

/** Rounding of places along the spine, mm. */
const SLACK = 1e-6;

/** Grooves across the spine's front, one a station, and what the bit cannot do. */
export function routerJoints(layout: FixtureLayout, cut: RouterCut, tools: ToolRules): Staged<RouterJoints> {
  const depth = jointDepth(cut, layout.spine.thickness, tools);
  const grooves = layout.stations.map((station): Groove => ({
    holds: station.name,
    ...openingFor(facesOf(station), layout.spine, cut.fit, tools.jointWood),
  }));
  return {
    value: { with: 'router', depth, grooves },
    findings: [
      ...checkDepth(depth, layout, tools),
      ...checkWidths(grooves, cut),
      ...checkWalls(grooves, tools.jointWood, 'grooves'),
      ...smallHoles(layout, cut),
    ],
  };
}

function facesOf({ name, at, thickness }: Station): { name: string; low: number; high: number } {
  return { name, low: at - thickness / 2, high: at + thickness / 2 };
}

function checkDepth(depth: number, layout: FixtureLayout, tools: ToolRules): Finding[] {
  const { thickness } = layout.spine;
  const heads = layout.stations.flatMap(({ screws }) =>
    screws.map(({ kind }) => (kind.headDiameter - kind.clearance) / 2),
  );
  const most = Math.min(thickness * tools.grooveMost, thickness - Math.max(0, ...heads) - tools.underHead);
  if (depth >= tools.grooveLeast && depth <= most) return [];
  return [
    error(
      'groove-depth',
      'cut.groove',
      `grooves ${depth.toFixed(1)} mm deep in a ${thickness.toFixed(1)} mm spine ${depth < tools.grooveLeast ? 'hold nothing' : 'leave too little wood under the screw heads behind them'}`,
      most > tools.grooveLeast ? 'change cut.groove' : 'use a thicker spine board, or cut with a jigsaw',
      { got: `${depth.toFixed(1)} mm`, allowed: `${tools.grooveLeast} to ${most.toFixed(1)} mm` },
    ),
  ];
}

function checkWidths(grooves: readonly Groove[], { bit }: RouterCut): Finding[] {
  const narrowest = Math.min(...grooves.map(({ low, high }) => high - low));
  if (narrowest >= bit - SLACK) return [];
  return [
    error(
      'groove-narrower-than-bit',
      'cut.bit',
      `the bit is ${bit.toFixed(2)} mm across; the stations’ grooves are ${narrowest.toFixed(2)} mm wide`,
      'use a smaller bit or thicker stations',
      {
        got: `${bit.toFixed(2)} mm`,
        allowed: `at most ${narrowest.toFixed(2)} mm`,
      },
    ),
  ];
}

/** Holes the bit cannot go into: they are drilled. */
function smallHoles(layout: FixtureLayout, { bit }: RouterCut): Finding[] {
  const screws = [...layout.stations, ...layout.backings].flatMap((board) =>
    board.screws.map(({ kind }) => ({ what: 'screw holes', diameter: kind.clearance })),
  );
  const clamps = layout.clampHoles.map(({ diameter }) => ({ what: 'clamp holes', diameter }));
  const small = [...screws, ...clamps].filter(({ diameter }) => diameter < bit);
  if (small.length === 0) return [];
  const kinds = [...new Set(small.map(({ what, diameter }) => `${what} of ${diameter.toFixed(1)} mm`))].join(' and ');
  return [
    note(
      'smaller-than-bit',
      'cut.bit',
      `the ${bit.toFixed(2)} mm bit does not go into the ${kinds}: they are drilled, with a drill of their own size`,
      'drill them at the centres the bit marks, or use a smaller bit',
    ),
  ];
}
