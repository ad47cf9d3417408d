import type { Shape } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import type { BendPlan } from '../../design/bend/bend-plan';
import { developBlank } from '../../design/form/blank';
import { labelLength } from '../parts/lengths';
import { label, mark } from '../parts/shapes';
import { runMarks } from './marks';
import { outline } from '../../base/outline';

/** Paper left beyond each tangent line, mm. */
const BEYOND = 20;
/** A held leg no longer than this is covered whole, so that the strip can be laid to the sheet's edge, mm. */
const WHOLE_LEG = 60;
const LETTERS = 4;

/**
 * A paper strip to lay on the blank, 1:1, seen as the sheet lies on the bench: both tangent lines with both ends of every run,
 * its ends those of the blank, and its lower edge the blank's held edge where that is near enough. Coordinates as in {@link developBlank}.
 */
export function drawMarkingStrip(bend: BendPlan, units: LengthUnit): Shape[] {
  const toEdge = bend.legs.held <= WHOLE_LEG;
  const held = toEdge ? bend.legs.held : BEYOND;
  const free = Math.min(BEYOND, bend.legs.free);
  const strip = developBlank({ ...bend, legs: { held, free }, pull: { ...bend.pull, edge: free, leverage: 0 } });
  const middle = bend.length / 2;
  const letters = Math.min(LETTERS, held / 3);
  const edge = toEdge
    ? 'THIS EDGE TO THE HELD EDGE OF THE BLANK'
    : `HELD TANGENT LINE ${labelLength(bend.legs.held - bend.pull.early, units)} FROM THE HELD EDGE`;
  const [, line] = strip.tangents;
  const ends: Shape[] = [
    ...label('END A', { x: 0, y: -held + 1, width: bend.length / 6, tallest: letters }).map((text) => ({
      ...text,
      x: 2,
      anchor: 'start' as const,
    })),
    ...label('END B', { x: 0, y: -held + 1, width: bend.length / 6, tallest: letters }).map((text) => ({
      ...text,
      x: bend.length - 2,
      anchor: 'end' as const,
    })),
  ];
  const beyondFree = line && {
    x: (line[0][0] + line[1][0]) / 2 - (free / 2) * Math.sin(bend.fan),
    y: (line[0][1] + line[1][1]) / 2 + (free / 2) * Math.cos(bend.fan),
  };
  return [
    outline(strip.outline),
    ...strip.tangents.map(([from, to]) => mark(from, to)),
    ...runMarks(bend, units, held),
    ...ends,
    ...label(edge, { x: middle, y: -held + 1, width: bend.length * 0.6, tallest: letters }),
    ...label('HELD TANGENT LINE', {
      x: middle,
      y: -letters - 1.5,
      width: bend.length * 0.6,
      tallest: Math.min(letters, held / 4),
    }).filter(() => held > 2.6 * letters),
    ...(beyondFree
      ? label('FREE TANGENT LINE', {
          x: beyondFree.x,
          y: beyondFree.y - 1,
          width: bend.length * 0.6,
          tallest: Math.min(LETTERS, free / 3),
          angle: bend.fan,
        })
      : []),
  ];
}
