import { SVGPathData, SVGPathDataTransformer } from 'svg-pathdata';
import type { Place } from '../../../base/side';
import { bezierCurve, endOf, lineCurve, type Curve } from '../curve';
import { arcCurve } from './arc-curve';

/** One subpath after another. Throws a SyntaxError with the place in the path where it cannot be read. */
export function readPathData(data: string): Curve[][] {
  const commands = new SVGPathData(data)
    .toAbs()
    .transform(SVGPathDataTransformer.NORMALIZE_HVZ(false, true, true, false))
    .normalizeST()
    .qtToC().commands;
  const paths: Curve[][] = [];
  let [start, at]: [Place, Place] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  let curves: Curve[] = [];
  for (const command of commands) {
    if (command.type === SVGPathData.MOVE_TO || curves.length === 0) paths.push((curves = []));
    if (command.type === SVGPathData.MOVE_TO) {
      start = at = { x: command.x, y: command.y };
      continue;
    }
    const curve = curveOf(command, at, start);
    if (!curve) continue;
    curves.push(curve);
    at = endOf(curve);
    if (command.type === SVGPathData.CLOSE_PATH) curves = [];
  }
  return paths.filter((path) => path.length > 0);
}

type Command = SVGPathData['commands'][number];

function curveOf(command: Command, from: Place, start: Place): Curve | null {
  switch (command.type) {
    case SVGPathData.LINE_TO:
      return lineCurve(from, { x: command.x, y: command.y });
    case SVGPathData.CLOSE_PATH:
      return lineCurve(from, start);
    case SVGPathData.CURVE_TO:
      return bezierCurve([
        from,
        { x: command.x1, y: command.y1 },
        { x: command.x2, y: command.y2 },
        { x: command.x, y: command.y },
      ]);
    case SVGPathData.ARC:
      return arcCurve(from, {
        radii: { x: command.rX, y: command.rY },
        turned: (command.xRot * Math.PI) / 180,
        large: command.lArcFlag === 1,
        sweep: command.sweepFlag === 1,
        to: { x: command.x, y: command.y },
      });
    default:
      return null;
  }
}
