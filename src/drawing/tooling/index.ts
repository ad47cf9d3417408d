import type { Drawing, Shape } from '../../base/drawing';
import { engrave } from '../engrave';
import type { Cut } from '../../job/job';
import { grooveOverrun } from '../../design/joints/overrun';
import type { Part } from '../parts/part';
import { checkPart } from '../parts/check-part';
import type { Tables } from '../../tables/tables';
import { bridgesFor } from './bridges';
import { compensate } from './kerf';
import { reliefCuts } from './relief-cuts';
import { relieveCorners } from './relieve-corners';

/**
 * Parts as they are to come out → parts as the job's tool needs them drawn, checked: relief cuts for a jigsaw; rounded-out corners,
 * and labels and marks as engraved strokes for a router; lines moved by half the beam, and engraved labels, for a laser.
 */
export function fitToTool(parts: readonly Part[], cut: Cut, tables: Tables): Part[] {
  return parts.map((part) => {
    const fitted: Part = { ...part, drawing: draw(part, cut, tables) };
    checkPart(fitted, grooveOverrun(cut, tables.tools));
    return fitted;
  });
}

function draw({ drawing: { shapes } }: Part, cut: Cut, { tools }: Tables): Drawing {
  switch (cut.with) {
    case 'jigsaw':
      return { shapes: [...shapes, ...reliefCuts(shapes, cut, tools)] };
    case 'router': {
      const kept = shapes.map((shape): Shape =>
        shape.kind === 'loop'
          ? relieveCorners(shape, cut.bit / 2)
          : shape.kind === 'line'
            ? { kind: 'stroke', operation: 'label', points: [shape.from, shape.to] }
            : shape,
      );
      return { shapes: engrave([...kept, ...(cut.bridges ? bridgesFor(kept, cut, tools) : [])]) };
    }
    case 'laser':
      return { shapes: engrave(shapes.map((shape) => compensate(shape, cut.kerf / 2))) };
  }
}
