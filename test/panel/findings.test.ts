import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import { sayFindings } from '../../src/findings/say';
import { findOrder } from '../../src/panel/order/find-order';
import { orderFindings } from '../../src/panel/order/order-findings';
import { bend, box, built, corner, refusal, rules } from './panels';
import { deep, shop, worksFor } from './works';

const square = (more: object) => box(200, 100, more);

describe('what is said of a panel', () => {
  it('is whole sentences in the reader’s unit', () => {
    const refused = [
      square({ bends: [bend('front')] }),
      square({ bends: [bend('long', { radius: { top: 30, back: 20 } })] }),
      square({ bends: [bend('long', { reach: { height: 5 } })] }),
      square({ bends: [bend('long', { radius: -3 })] }),
      square({
        bends: [bend('long', { turn: 'down' }), bend('short')],
        corners: [corner(['long', 'short'], { treat: 'mitre' })],
      }),
      square({
        bends: [bend('long'), bend('short')],
        corners: [corner(['long', 'short'], { treat: 'dress', rounded: 30 })],
      }),
    ].flatMap((spec) => refusal(spec));
    expect(refused.length).toBeGreaterThan(6);
    for (const { message, hint, got = '', allowed = '' } of sayFindings(refused, { units: 'in' })) {
      const words = [message, hint, got, allowed].join('\n');
      expect(words).not.toMatch(/undefined|NaN|null|\[object|\bmm\b/u);
    }
  });

  it('names what a panel strikes in itself, and the nearest miss of every order', () => {
    // Lips turned in from both sides of a channel narrower than they are deep.
    const lip = { radius: 8, reach: { leg: 80 } };
    const channel = built(
      box(200, 90, {
        bends: [
          bend('long', { radius: 12, reach: { leg: 50 } }),
          bend('top', { radius: 12, reach: { leg: 50 } }),
          bend('long.rim', lip),
          bend('top.rim', lip),
        ],
      }),
    );
    const found = findOrder(channel, { work: worksFor(channel), shop: deep, rules });
    expect(orderFindings(channel, found)).toMatchObject([{ code: 'panel-crosses-itself' }]);
    const panel = built(box(400, 300, { bends: [bend('long', { angle: toRadians(80) })] }));
    const work = worksFor(panel).map((one) => ({ ...one, pulling: { ...one.pulling, leg: null } }));
    const short = findOrder(panel, { work, shop, rules });
    expect(orderFindings(panel, short)).toMatchObject([
      { code: 'clamps-too-short', values: { bend: 'long', reach: 291, throat: 100 } },
    ]);
    const clear = findOrder(panel, { work, shop: deep, rules });
    expect(orderFindings(panel, clear)).toEqual([]);
  });
});
