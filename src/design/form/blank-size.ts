import { loopArea } from '../../base/area';
import { boundsOf } from '../../base/bounds';
import type { BendPlan } from '../bend/bend-plan';
import { developBlank, type Blank } from './blank';

/** What the blank weighs and the sheet it is cut from. */
export interface BlankSize {
  /** kg. */
  readonly mass: number;
  /** Along the held tangent line, mm: the upright box round the blank. */
  readonly width: number;
  /** Across it, mm. */
  readonly height: number;
}

/** The blank's mass (area × thickness × the metal's density) and the smallest sheet, its edge along the held tangent line, that holds it. */
export function sizeBlank(bend: BendPlan, blank: Blank = developBlank(bend)): BlankSize {
  const { minX, maxX, minY, maxY } = boundsOf({
    shapes: [{ kind: 'loop', operation: 'outline', vertices: blank.outline }],
  });
  const cubicMetres = loopArea(blank.outline) * bend.section.thickness * 1e-9;
  return { mass: cubicMetres * bend.metal.density, width: maxX - minX, height: maxY - minY };
}
