import { toDegrees } from '../../base/angle';
import { radiusAt } from '../../base/cone';
import type { Shape } from '../../base/drawing';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { Job } from '../../job/job';
import type { Aid } from './aid';
import { drawAngleGauge, holdOf, type GaugedBend } from './angle-gauge';
import { drawBlank } from './blank-drawing';
import { drawMarkingStrip } from './marking-strip';
import { drawInsideGauge, drawOutsideGauge } from './radius-gauge';

export type { Aid } from './aid';
export { drawBlock } from './block-part';
export { layOutBlock, type FinishingBlock } from '../../design/block/finishing-block';
export { discLayers, drawTrial } from './trial-strip';

/** Bend → gauges, marking strip and both blanks at 1:1. */
export function drawAids(bend: BendPlan, job: Job): Aid[] {
  return [...angleGauges(bend), ...radiusGauges(bend, job), markingStrip(bend, job), ...blanks(bend, job)];
}

function angleGauges(bend: BendPlan): Aid[] {
  const { thickness } = bend.section;
  return [
    angleGauge('angle-on-form', 'Angle gauge of the leg while it is pulled, held by the hands', {
      state: 'WHILE PULLED',
      cone: bend.form,
      wrap: bend.pull.gaugeWrap,
      thickness,
    }),
    angleGauge('angle-finished', 'Angle gauge, finished', {
      state: 'FINISHED',
      cone: bend.finished,
      wrap: bend.finishedWrap,
      thickness,
    }),
  ];
}

function angleGauge(id: string, title: string, gauged: GaugedBend): Aid {
  const { angle, skew, near } = holdOf(gauged);
  const turned = toDegrees(Math.abs(skew)).toFixed(1);
  return {
    id,
    kind: 'angle-gauge',
    title: `${title}: ${toDegrees(angle).toFixed(2)}°`,
    material: 'card',
    notes: [
      'Stand the edge marked BENCH on the bench in front of the bend and slide it up to the outside of the free leg.',
      `Hold it square to the held tangent line${turned === '0.0' ? '' : `, then turn its front ${turned}° toward end ${skew > 0 ? 'A' : 'B'}: square to the line where the legs’ planes meet`}.`,
      ...(near === null ? [] : [`Use it near end ${near}; at the other end it is too short.`]),
    ],
    drawing: { shapes: drawAngleGauge(gauged) },
  };
}

function radiusGauges(bend: BendPlan, { units }: Job): Aid[] {
  const { finished, finishedWrap: wrap, section, length } = bend;
  const ends = [
    { end: 'A', inside: radiusAt(finished, 0) },
    { end: 'B', inside: radiusAt(finished, length) },
  ] as const;
  const notes = ['Hold it square to the bend’s centre line, at the end it names.'];
  const gauge = (side: 'inside' | 'outside', end: 'A' | 'B', shapes: readonly Shape[]): Aid => ({
    id: `radius-${side}-${end.toLowerCase()}`,
    kind: 'radius-gauge',
    title: `Radius gauge, finished, ${side} at end ${end}`,
    material: 'card',
    notes,
    drawing: { shapes },
  });
  return ends.flatMap(({ end, inside }) => [
    gauge('inside', end, drawInsideGauge({ radius: inside, wrap, end, units })),
    gauge(
      'outside',
      end,
      drawOutsideGauge({ radius: inside + section.thickness * Math.cos(finished.halfAngle), wrap, end, units }),
    ),
  ]);
}

function markingStrip(bend: BendPlan, { units }: Job): Aid {
  return {
    id: 'marking-strip',
    kind: 'marking-strip',
    title: 'Marking strip',
    material: 'paper',
    notes: [
      'Lay it on the face of the blank that goes to the form and mark both tangent lines and the run ends in pencil.',
      'For the other hand turn it over and prick through.',
    ],
    drawing: { shapes: drawMarkingStrip(bend, units) },
  };
}

function blanks(bend: BendPlan, { units }: Job): Aid[] {
  return (['left', 'right'] as const).map((hand) => ({
    id: `blank-${hand}`,
    kind: 'blank',
    title: `Blank, ${hand} hand`,
    material: 'sheet',
    notes: [
      'Seen on the face that goes to the form, free leg away from you, the left blank has end A on its left; the right blank is its mirror image.',
    ],
    drawing: { shapes: drawBlank(bend, hand, units) },
  }));
}
