import { drawIsometric, type View } from '../picture/isometric';
import { buildModel } from '../picture/model';
import { pulledBy, type SheetState } from '../picture/wrapped-sheet';
import { tackleOf } from '../picture/tackle';
import { html, type HtmlElement } from '../html';
import { drawFigure } from './figure';
import type { Shop } from './shop';
import { sentences } from '../sentences';

/** Largest picture that fits the text of a letter or A4 page beside a caption, mm. */
const PICTURE = { width: 180, height: 92 };

/** The form on the flat sheet, from the front. */
export function setUpPicture(shop: Shop): HtmlElement {
  return picture(
    shop,
    pulledBy(shop.bend, 0),
    { face: 'front', tags: ['end', 'station', 'backing'], arrow: { from: 0.02, to: 0.3 } },
    sentences(
      `Set up: the form on the flat sheet, from the front${shop.bend.pull.yoke ? ', on its plank, the yoke bolted on' : ''}.`,
      'The lines on the sheet are the free leg’s tangent line and, where there is leverage, the trim line.',
    ),
  );
}

/** The sheet pulled to the chosen wrap, from the back. */
export function pulledPicture(shop: Shop): HtmlElement {
  return picture(
    shop,
    pulledBy(shop.bend, 1),
    { face: 'back', tags: ['end', 'backing', 'foot', 'clamp'], arrow: { from: 0.75, to: 1 } },
    `Pulled to ${shop.say.angle(shop.bend.wrap.chosen)} of wrap, from the back: backing stations, foot and clamps.`,
  );
}

/** The sheet let go, sprung back to the bend asked for. */
export function releasedPicture(shop: Shop): HtmlElement {
  return picture(
    shop,
    { kind: 'released' },
    { face: 'front', tags: ['end'], arrow: null },
    `Let go: the sheet has sprung back to ${shop.say.angle(shop.bend.angle)} from flat.`,
  );
}

/** The smaller end is turned to the viewer, so that it hides nothing. */
function picture(
  { bend, layout, joints, tables }: Shop,
  state: SheetState,
  view: Pick<View, 'face' | 'tags' | 'arrow'>,
  caption: string,
): HtmlElement {
  const drawn = drawIsometric(
    buildModel(layout, bend, state, { joints, tackle: tackleOf(bend, layout, tables.rules) }),
    {
      ...view,
      ...PICTURE,
      end: bend.form.halfAngle >= 0 ? 'A' : 'B',
    },
  );
  return html('figure', {}, drawFigure(drawn, caption), html('figcaption', {}, caption));
}
