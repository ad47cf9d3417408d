import type { BlankBend } from '../../drawing/panel/bend-lines';
import type { PanelBlank } from '../../drawing/panel/blank';
import type { BuildablePanel } from './plan-panel';

/** The blank of a panel with every bend as its step makes it: what is drawn and what is marked out are the same. */
export function blankOf({ panel, finish, bends, order }: BuildablePanel): PanelBlank {
  return {
    panel,
    bends: bends.map(({ step, alone }, index): BlankBend => ({
      step: 1 + order.findIndex(({ bend }) => bend === index),
      held: step.held,
      form: step.use.body.name,
      pulled: {
        cone: alone.bend.form,
        wrap: alone.bend.wrap.chosen,
        early: alone.bend.pull.early,
        gap: alone.bend.pull.yoke && alone.bend.pull.yoke.gap,
      },
    })),
    trim: finish.trim && finish.trim.cut,
    seams: finish.seams,
  };
}
