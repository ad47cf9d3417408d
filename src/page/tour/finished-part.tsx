import type { JSX } from 'preact';
import { drawFigure } from '../../output/shop-sheet/figure';
import { drawIsometric } from '../../output/picture/isometric';
import { buildModel } from '../../output/picture/model';
import { toNode } from '../drawing/to-node';
import type { Form } from '../work';

/** Size of the picture, as the painter counts. */
const SIZE = { width: 110, height: 62 };

/** The part as it comes off the form: the sheet alone, let go. */
export function FinishedPart({ form }: { form: Form }): JSX.Element {
  const { bend, layout, planned } = form;
  const model = buildModel(layout, bend, { kind: 'released' }, { joints: planned.joints });
  const picture = drawIsometric(
    { ...model, bodies: model.bodies.filter(({ open }) => open) },
    { ...SIZE, face: 'front', end: bend.form.halfAngle >= 0 ? 'A' : 'B', tags: ['end'], arrow: null },
  );
  return <div class="on-white part">{toNode(drawFigure(picture, 'The finished part'))}</div>;
}
