import type { Finding, Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import { jointDepth } from '../built/joint-depth';
import type { FixtureLayout, Station } from '../fixture/fixture';
import type { RouterCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';
import type { Groove, RouterJoints } from './joints';
import { checkWalls, openingFor } from './opening';
import { SAME_PLACE } from '../../base/tolerance';

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
    finding('groove-depth', 'cut.groove', {
      depth,
      spine: thickness,
      trouble: depth < tools.grooveLeast ? 'shallow' : 'deep',
      least: tools.grooveLeast,
      most,
      mend: most > tools.grooveLeast ? 'change depth' : 'change board',
    }),
  ];
}

function checkWidths(grooves: readonly Groove[], { bit }: RouterCut): Finding[] {
  const narrowest = Math.min(...grooves.map(({ low, high }) => high - low));
  if (narrowest >= bit - SAME_PLACE) return [];
  return [finding('groove-narrower-than-bit', 'cut.bit', { bit, groove: narrowest })];
}

/** Holes the bit cannot go into: they are drilled. */
function smallHoles(layout: FixtureLayout, { bit }: RouterCut): Finding[] {
  const screws = [...layout.stations, ...layout.backings].flatMap((board) =>
    board.screws.map(({ kind }) => ({ what: 'screw holes', diameter: kind.clearance })),
  );
  const clamps = layout.clampHoles.map(({ diameter }) => ({ what: 'clamp holes', diameter }));
  const small = [...screws, ...clamps].filter(({ diameter }) => diameter < bit);
  if (small.length === 0) return [];
  const holes = small
    .filter((hole, index) => small.findIndex((other) => isLike(hole, other)) === index)
    .map(({ what, diameter }) => ({ name: what, mm: diameter }));
  return [finding('smaller-than-bit', 'cut.bit', { bit, holes })];
}

interface Hole {
  readonly what: string;
  readonly diameter: number;
}

function isLike(a: Hole, b: Hole): boolean {
  return a.what === b.what && Math.abs(a.diameter - b.diameter) < SAME_PLACE;
}
