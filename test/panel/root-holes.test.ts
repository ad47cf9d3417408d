import { describe, expect, it } from 'vitest';
import { at } from '../../src/base/at';
import { loopArea } from '../../src/base/area';
import { flattenLoop } from '../../src/base/flatten';
import { isInside } from '../../src/base/polygon';
import { cutAtRoots } from '../../src/panel/trim/root-holes';
import { bend, box, built } from './panels';

const panel = built(box(300, 200, { bends: [bend('long'), bend('short')] }));
const corner = at(panel.corners, 0);
const root = corner.root;
if (!root) throw new Error('a mitre with a root hole');

describe('the outline that is cut', () => {
  const cut = cutAtRoots(panel);
  const polygon = flattenLoop(cut, 0.001);

  it('has its edge round the root hole, and metal from there to the base’s corner', () => {
    const [x, y] = root.at;
    const [towardX, towardY] = [corner.at[0] - x, corner.at[1] - y];
    const reach = Math.hypot(towardX, towardY);
    for (const share of [0.2, 0.5, 0.8]) {
      const way = (root.diameter / 2 / reach) * (1 - share) + share;
      expect(isInside([x + towardX * way, y + towardY * way], polygon)).toBe(true);
    }
    expect(isInside(root.at, polygon)).toBe(false);
    // Round the hole the edge is an arc of its radius, not a row of chords.
    const rim = cut.filter((vertex) => Math.abs(Math.hypot(vertex.x - x, vertex.y - y) - root.diameter / 2) < 1e-4);
    expect(rim.some(({ bulge }) => Math.abs(bulge) > 0.3)).toBe(true);
  });

  it('is otherwise the net outline: it differs by the hole and a sliver', () => {
    const disc = (Math.PI * root.diameter ** 2) / 4;
    const net = loopArea(panel.outline);
    expect(Math.abs(loopArea(cut) - net)).toBeLessThan(2 * disc);
    expect(loopArea(cut)).toBeLessThan(net + disc);
  });

  it('of a panel without corners is the net outline', () => {
    const plain = built(box(300, 200, { bends: [bend('long')] }));
    expect(cutAtRoots(plain)).toBe(plain.outline);
  });
});
