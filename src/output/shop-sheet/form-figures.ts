import { html, type HtmlElement } from '../html';
import { backingFigure, stationFigure } from './board-figures';
import type { Element } from '../xml';
import { measuresIn } from './measures';
import type { Shop } from './shop';
import { spineFigure } from './spine-figure';
import { sentences } from '../sentences';

/** The form's boards drawn to scale with the measures they are laid out by, in the words of the tables below them. */
export function formFigures(whole: Shop): HtmlElement[] {
  // Two units to a dimension are too many words for a drawing: the tables have both.
  const shop = whole.say.units === 'both' ? { ...whole, say: measuresIn(whole.job.units) } : whole;
  const figure = (svg: Element, caption: string): HtmlElement =>
    html('figure', { class: 'drawn' }, svg, html('figcaption', {}, caption));
  const [station] = shop.layout.stations;
  const [backing] = shop.layout.backings;
  const small = [
    ...(station
      ? [
          figure(
            stationFigure(shop, station),
            `Station ${station.name}, seen on its contact face. The others: their own measures in the tables below.`,
          ),
        ]
      : []),
    ...(backing
      ? [
          figure(
            backingFigure(shop, backing),
            `Backing station ${backing.name}. The edge with the pilot holes goes to the spine.`,
          ),
        ]
      : []),
  ];
  return [
    figure(
      spineFigure(shop),
      sentences(
        'Spine, seen on its front.',
        'Above: from line A to the A-side face of each board that stands on it (backing stations on the back, dashed).',
        'Below: from line A to the middle of each hole, then how far it lies off the centre line.',
      ),
    ),
    html('div', { class: 'beside' }, ...small),
  ];
}
