import { describe, expect, it } from 'vitest';
import { coneThrough, radiusAt } from '../../src/base/cone';
import { back, dot3, movedBy, sideOf, turnedBy, type Place3 } from '../../src/base/space';
import { formPlacement, handOf, heldFrame, smallEnd } from '../../src/panel/form/hand';
import { nearestStretch, shareForms } from '../../src/panel/form/share-forms';
import { centreLine } from '../../src/panel/fold/bend-motion';
import { foldPanel, toSpace } from '../../src/panel/fold/fold';
import { flatAt } from '../../src/panel/flat/bend';
import { bend, box, built, rules } from './panels';

/** The table of panel design section 2: long edge along +x, base at y > 0, the leg at y < 0. */
const table = [
  ['up', 'base', 'grows', -1, 'right'],
  ['up', 'base', 'shrinks', 1, 'left'],
  ['down', 'leg', 'grows', -1, 'right'],
  ['down', 'leg', 'shrinks', 1, 'left'],
  ['up', 'leg', 'grows', 1, 'left'],
  ['up', 'leg', 'shrinks', -1, 'right'],
  ['down', 'base', 'grows', 1, 'left'],
  ['down', 'base', 'shrinks', -1, 'right'],
] as const;

const along = (turn: 'up' | 'down', way: 'grows' | 'shrinks') => {
  const radius = way === 'grows' ? { short: 30, back: 45 } : { short: 45, back: 30 };
  const [only] = built(box(500, 200, { bends: [bend('long', { turn, radius })] })).bends;
  if (!only) throw new Error('one bend');
  return only;
};

describe('which way up the form stands', () => {
  it.each(table)(
    '%s, %s held, radius %s along +x: hand %d, small end on the %s',
    (...[turn, held, way, hand, side]) => {
      expect(handOf(along(turn, way), held)).toBe(hand);
      expect(smallEnd(along(turn, way), held)).toBe(side);
    },
  );

  it('turns the form over between neighbouring edges with their small ends at one corner', () => {
    const [long, short] = built(
      box(558.8, 228.6, {
        bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
      }),
    ).bends;
    if (!long || !short) throw new Error('two bends');
    expect(handOf(long, 'base')).toBe(-1);
    expect(handOf(short, 'base')).toBe(1);
  });

  it.each(table)(
    '%s, %s held, radius %s: a proper motion carries the form onto the bend within 1e-9',
    (turn, held, way, hand) => {
      const one = along(turn, way);
      const form = coneThrough(one.finished.radiusA, one.finished.radiusB, one.finished.length);
      const motion = formPlacement(one, form, held);
      expect(sideOf(motion)).toBe(1);
      expect(Math.hypot(...motion.x) - 1).toBeCloseTo(0, 12);
      // The form as a body: a half-cone about its x axis from its small radius on; y ahead of the spine.
      const small = Math.min(form.radiusA, form.radiusB);
      const taper = Math.abs(form.halfAngle);
      const surface = (s: number, turned: number): Place3 => {
        const radius = small + s * Math.tan(taper);
        return [s, radius * Math.sin(turned), -hand * radius * Math.cos(turned)];
      };
      // Where the bend is, from the fold: inside surface over the zone, in the space of the held face.
      const folded = foldPanel({
        thickness: one.thickness,
        faces: [
          { name: 'base', bend: null, outline: [] },
          { name: 'leg', bend: 0, outline: [] },
        ],
        bends: [{ ...one, base: 0, leg: 1 }],
        corners: [],
        outline: [],
        holes: [],
      });
      const leg = folded.motions[1];
      if (!leg) throw new Error('a leg');
      const inside = (turn === 'up' ? 1 : -1) * (one.thickness / 2);
      for (const share of [0, 0.4, 1])
        for (const round of [0, 0.5, 1]) {
          const x = share * one.finished.length;
          const s = (way === 'grows' ? x : one.finished.length - x) * Math.cos(form.halfAngle);
          const wrap = round * one.wrap;
          const inBase = toSpace(folded, { kind: 'zone', bend: 0 }, { flat: flatAt(one, { x, wrap }), up: inside });
          const expected = held === 'base' ? inBase : movedBy(back(leg), inBase);
          const fromHeld = held === 'base' ? wrap : one.wrap - wrap;
          const got = movedBy(motion, surface(s, fromHeld));
          expect(Math.hypot(...got.map((value, index) => value - (expected[index] ?? NaN)))).toBeLessThan(1e-9);
        }
    },
  );

  it('stands on the leg line with the leg held, ahead of it toward the base', () => {
    const one = along('up', 'grows');
    const frame = heldFrame(one, 'leg');
    expect(frame.at[1]).toBeLessThan(-40);
    expect(frame.toLeg[1]).toBeGreaterThan(0.9);
    const { along: axis } = centreLine(one.finished, one.thickness);
    expect(dot3(axis, [1, 0, 0])).toBeGreaterThan(0.99);
    expect(turnedBy(formPlacement(one, one.finished, 'leg'), [1, 0, 0])[0]).toBeGreaterThan(0.9);
  });
});

describe('forms shared by bends', () => {
  const need = (name: string, from: number, to: number, length: number) => ({
    bend: name,
    form: coneThrough(from, to, length),
  });

  it('puts a bend on the stretch of a longer form with its radii, from either end', () => {
    const { forms, offers } = shareForms([need('short', 36, 30, 223.52), need('long', 30, 45, 558.8)], rules);
    expect(offers).toEqual([]);
    expect(forms).toHaveLength(1);
    expect(forms[0]?.name).toBe('long');
    const stretch = forms[0]?.stretches[1];
    expect(stretch).toMatchObject({ bend: 'short', startsAtA: false });
    expect(stretch?.from).toBeCloseTo(0, 9);
    expect(stretch?.to).toBeCloseTo(223.52, 9);
    expect(stretch?.off).toBeLessThan(1e-9);
  });

  it('finds the stretch in the middle of the form, and never off its ends', () => {
    const host = coneThrough(30, 60, 600);
    const found = nearestStretch(host, need('guest', 42, 50, 160));
    expect(found?.from).toBeCloseTo(240, 9);
    const before = nearestStretch(host, need('guest', 20, 28, 160));
    expect(before?.from).toBe(0);
    expect(before?.off).toBeCloseTo(10, 9);
    expect(nearestStretch(host, need('guest', 30, 60, 601))).toBeNull();
  });

  it('offers up to 1 mm with what the bend would be formed to, and nothing beyond', () => {
    const host = need('host', 40, 40, 500);
    const offer = shareForms([host, need('guest', 40.6, 40.6, 300)], rules);
    expect(offer.forms).toHaveLength(2);
    expect(offer.offers).toMatchObject([{ bend: 'guest', form: 'host', radii: { A: 40, B: 40 } }]);
    expect(shareForms([host, need('guest', 40.05, 39.95, 300)], rules).forms).toHaveLength(1);
    expect(shareForms([host, need('guest', 42, 42, 300)], rules)).toMatchObject({ offers: [], forms: [{}, {}] });
  });

  it('takes the best stretch there is: no place along the form comes nearer (looked for in steps)', () => {
    const host = coneThrough(30, 47, 640);
    for (const [from, to, length] of [
      [33, 38, 200],
      [31, 41, 250],
      [46, 45, 100],
      [29, 29, 50],
    ] as const) {
      const guest = coneThrough(Math.min(from, to), Math.max(from, to), length);
      const found = nearestStretch(host, { bend: 'guest', form: guest });
      let least = Infinity;
      for (let at = 0; at <= 640 - length; at += 0.25)
        least = Math.min(
          least,
          Math.max(...[0, length].map((x) => Math.abs(radiusAt(host, at + x) - radiusAt(guest, x)))),
        );
      expect(found?.off).toBeLessThan(least + 1e-9);
    }
  });
});
