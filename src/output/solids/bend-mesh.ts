import { at } from '../../base/at';
import type { BendPlan } from '../../design/bend/bend-plan';
import { toSpace } from '../../design/form/development';
import { onBench } from '../picture/frame';
import { addScaled, subtract, type Point3 } from '../picture/vector';
import { idealLegPoint } from '../picture/wrapped-sheet';
import { chordsRound } from './chords';
import { MeshBuilder, type Mesh } from './mesh';

const SHEET_COLOUR = '#9fb2c2';

/** A place of the inside face, and the outside face's, square to the sheet over it. */
type Pair = readonly [Point3, Point3];

/**
 * The finished bend, let go and trimmed, as a solid of the sheet's thickness; placed as the form is. Its sides run from end A to end B
 * along the rulings of the finished cone, which are straight, so that only the arc is made of chords.
 */
export function bendMesh(bend: BendPlan): Mesh {
  const ends = [0, bend.length].map((x) => sectionAt(bend, x));
  const builder = new MeshBuilder();
  const [from = [], to = []] = ends.map((section, end) =>
    [0, 1].map((face) =>
      section.map((pair, index) => builder.corner(`${end} ${face} ${index}`, () => pair[face === 0 ? 0 : 1])),
    ),
  );
  const ring = ([inside = [], outside = []]: readonly (readonly number[])[]): number[] => [
    ...inside,
    ...[...outside].reverse(),
  ];
  const [near, far] = [ring(from), ring(to)];
  for (const [index, corner] of near.entries()) {
    const next = (index + 1) % near.length;
    builder.quad(corner, at(near, next), at(far, next), at(far, index));
  }
  for (let index = 0; index < near.length / 2 - 1; index++) {
    const other = near.length - 1 - index;
    builder.quad(at(near, index), at(near, other), at(near, other - 1), at(near, index + 1));
    builder.quad(at(far, index + 1), at(far, other - 1), at(far, other), at(far, index));
  }
  return builder.build('bend', SHEET_COLOUR);
}

/** Across the sheet at `x` along the tangent line, from the held leg's edge round the bend to the free leg's. */
function sectionAt(bend: BendPlan, x: number): Pair[] {
  const { finished: cone, finishedWrap, section, legs } = bend;
  const count = chordsRound(cone, section.thickness, finishedWrap);
  const at = (wrap: number): Pair => {
    const face = (offset: number): Point3 => {
      const [along, ahead, up] = toSpace({ cone, offset }, { x, wrap });
      return onBench(cone, { along, ahead, up });
    };
    return [face(0), face(section.thickness)];
  };
  const arc = Array.from({ length: count + 1 }, (_, index) => at((finishedWrap * index) / count));
  const beside = (edge: Point3, [inside, outside]: Pair): Pair => [edge, addScaled(edge, subtract(outside, inside), 1)];
  return [beside([x, -legs.held, 0], at(0)), ...arc, beside(idealLegPoint(bend, x, legs.free), at(finishedWrap))];
}
