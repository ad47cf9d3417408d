import { describe, expect, it } from 'vitest';
import { finding } from '../../../src/findings/finding';
import { sayFindings } from '../../../src/findings/say';
import { inBend, unlike } from '../../../src/output/panel/in-bend';
import { bend, box, built } from '../../panel/panels';

const panel = built(box(400, 300, { bends: [bend('long'), bend('top')] }));

describe('what the sums of one bend of a panel found', () => {
  it('stands at that bend in the file, and names it', () => {
    const [found] = inBend([finding('base-too-small', 'bend.angle')], panel, 1);
    expect(found).toMatchObject({ path: 'bends[1].angle', bends: ['top'] });
    const [said] = sayFindings(found ? [found] : [], { units: 'mm' });
    expect(said?.message).toMatch(/^top: /u);
  });

  it('is said once where several found the same, of none by name where all did', () => {
    const shared = finding('base-too-small', 'board');
    const own = finding('base-too-small', 'effort');
    const found = [...inBend([shared, own], panel, 0), ...inBend([shared], panel, 1)];
    expect(unlike(found, panel)).toEqual([shared, { ...own, bends: ['long'] }]);
    expect(unlike(found, { bends: [...panel.bends, ...panel.bends] })[0]).toEqual({
      ...shared,
      bends: ['long', 'top'],
    });
  });
});
