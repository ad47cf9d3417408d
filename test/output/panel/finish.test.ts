import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { isInside } from '../../../src/base/polygon';
import { flattenLoop } from '../../../src/base/flatten';
import { loopArea } from '../../../src/base/area';
import { toPanelPlan } from '../../../src/output/panel/panel-plan';
import { finishWords } from '../../../src/output/panel/finish/words';
import { stepWords } from '../../../src/output/panel/step-words';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { planPanelStarter, tryPanelStarter } from '../../helpers/starters';

const INCH = 25.4;
const plain = (sentences: readonly string[]): string => sentences.join(' ').replaceAll('\u00a0', ' ');
/** A starter without seams and metal left on of its own. */
const unfinished = (text: string): string => text.replace(/\nseams:.*?\ntrim:[^\n]*\n/su, '\n');
/** The same with a block before a key. */
const before = (key: string, block: string) => (text: string) =>
  unfinished(text).replace(`\n${key}`, `\n${block}\n${key}`);
const codes = (name: string, change: (text: string) => string): string[] =>
  tryPanelStarter(name, change).findings.flatMap(({ code, level, path }) =>
    level === 'error' ? [`${code} ${path}`] : [],
  );

describe('a seam in a job', () => {
  const planned = planPanelStarter(
    'hood-side',
    before('clamps', 'seams: [{ on: top, lap: 1-1/4, fastener: rivet-1/8, ends: 5/8, count: 7 }]'),
  );

  it('lies on the middle of its lap, spaced evenly between its ends: 22 in, 5/8 in, 7 holes', () => {
    const [seam] = toPanelPlan(planned, []).panel?.seams ?? [];
    // The top edge runs from the back to the short side at y 9 in.
    const wanted = Array.from({ length: 7 }, (_, index) => [22 - 5 / 8 - (index * (22 - 2 * (5 / 8))) / 6, 9 - 5 / 8]);
    expect(seam?.holes.map((place) => place.map((mm) => mm / INCH))).toEqual(
      wanted.map((place) => place.map((inch) => expect.closeTo(inch, 6) as number)),
    );
    expect(seam?.pitch).toBeCloseTo((INCH * (22 - 1.25)) / 6, 6);
    expect(seam?.hole).toBeCloseTo(3.2639, 6);
  });

  it('is said with its drill, in inches alone', () => {
    const [words] = finishWords(planned.finish, measuresIn('in'));
    expect(words).toContain('7 1/8 in rivets');
    expect(words).toContain('#30 drill');
    expect(words).not.toMatch(/\bmm\b/u);
  });

  it('by a pitch has as many holes as keep within it: ⌈(228.6 − 2·16)/40⌉ + 1 = 6', () => {
    const seams = planPanelStarter(
      'hood-side',
      before('clamps', 'seams: [{ on: back, lap: 1, ends: 16 mm, fastener: rivet-1/8, pitch: 40 mm }]'),
    ).finish.seams;
    expect(at(seams, 0).count).toBe(6);
    expect(at(seams, 0).pitch).toBeCloseTo((228.6 - 32) / 5, 6);
  });

  it('lies on a leg’s rim too, on the leg: as far from the tangent line as it is deep less half the lap', () => {
    const { panel, finish } = planPanelStarter(
      'bracket',
      before('board', 'seams: [{ on: foot.rim, lap: 24, fastener: M3, count: 5 }]'),
    );
    const leg = flattenLoop(at(panel.faces, at(panel.bends, 0).leg).outline, 0.01);
    for (const { x, y } of at(finish.seams, 0).rows.flat()) expect(isInside([x, y], leg)).toBe(true);
    // The foot bends down along y 0; its leg's rim is the lowest edge of the flat.
    const low = Math.min(...panel.outline.map(({ y }) => y));
    expect(
      at(finish.seams, 0)
        .rows.flat()
        .map(({ y }) => y - low),
    ).toEqual([12, 12, 12, 12, 12].map((mm) => expect.closeTo(mm, 6) as number));
  });

  it('on an edge of a traced outline is found by the place that names it', () => {
    const { finish } = planPanelStarter(
      'traced-deflector',
      before('board', 'seams: [{ on: deck, lap: 24, fastener: M4, count: 5 }]'),
    );
    // The deck's edge is drawn at y 20 and half size, so it lies at 40, from x 40 to 460.
    expect(
      at(finish.seams, 0)
        .rows.flat()
        .map(({ x, y }) => [x, y]),
    ).toEqual(
      [0, 1, 2, 3, 4].map((index) => [expect.closeTo(52 + 99 * index, 6), expect.closeTo(52, 6)] as [number, number]),
    );
  });

  it.each([
    ['too little edge', 'lap: 1/4, fastener: rivet-1/8, count: 7', 'seam-lap seams[0].lap'],
    ['too little end', 'lap: 1, ends: 1/8, fastener: rivet-1/8, count: 7', 'seam-ends seams[0].ends'],
    ['too many holes', 'lap: 1, fastener: rivet-1/8, count: 200', 'seam-pitch seams[0].count'],
    ['a count and a pitch', 'lap: 1, fastener: rivet-1/8, count: 7, pitch: 2', 'count-or-pitch seams[0]'],
    ['no such screw', 'lap: 1, fastener: rivet-9, count: 7', 'unknown-fastener seams[0].fastener'],
  ])('with %s is refused', (_, words, code) => {
    const change = before('clamps', `seams: [{ on: top, ${words} }]`);
    const found = (() => {
      try {
        return codes('hood-side', change);
      } catch (problem) {
        return [String(problem)];
      }
    })();
    const [name = '', path = ''] = code.split(' ');
    expect(found.join()).toContain(name);
    expect(found.join()).toContain(path);
  });

  it('on no edge, on a bent edge, or over a bend is refused', () => {
    const on = (edge: string) => before('clamps', `seams: [{ on: ${edge}, lap: 1, fastener: rivet-1/8, count: 7 }]`);
    expect(codes('hood-side', on('side'))).toEqual(['no-such-edge seams[0].on']);
    expect(codes('hood-side', on('long'))).toEqual(['no-such-edge seams[0].on']);
  });
});

describe('metal left on', () => {
  it('is the rim’s shadow: 260 mm of rim and 15 mm left on are 3900 mm², the trim line is the rim', () => {
    const planned = planPanelStarter('bracket', before('board', 'trim: { after: [foot.rim], allowance: 15 }'));
    const { trim } = planned.finish;
    const cut = trim?.cut.cut.vertices ?? [];
    expect(loopArea(cut) - loopArea(planned.panel.outline)).toBeCloseTo(260 * 15, 3);
    const low = Math.min(...planned.panel.outline.map(({ y }) => y));
    expect(trim?.cut.trim.map((run) => run.map(({ x, y }) => [x, y]))).toEqual([
      expect.arrayContaining([
        [expect.closeTo(0, 3), expect.closeTo(low, 3)],
        [expect.closeTo(260, 3), expect.closeTo(low, 3)],
      ]),
    ]);
  });

  it('keeps every place of the net panel, on tapers and at mitres too', () => {
    const { panel, finish } = planPanelStarter(
      'hood-side',
      before('clamps', 'trim: { after: [long.rim, short.rim], allowance: 1 }'),
    );
    const cut = flattenLoop(finish.trim?.cut.cut.vertices ?? [], 0.001);
    const mean = (of: (vertex: { readonly x: number; readonly y: number }) => number): number =>
      panel.outline.reduce((sum, vertex) => sum + of(vertex), 0) / panel.outline.length;
    const [cx, cy] = [mean(({ x }) => x), mean(({ y }) => y)];
    for (const { x, y } of panel.outline) {
      // A hair toward the middle where that is inside the net panel.
      const place = [x + (cx - x) * 1e-4, y + (cy - y) * 1e-4] as const;
      if (isInside(place, flattenLoop(panel.outline, 0.001))) expect(isInside(place, cut), `${x} ${y}`).toBe(true);
    }
    // Each rim's own length, an inch deep; the slanted ends of a fanned leg make a few per mille of it.
    const left = loopArea(finish.trim?.cut.cut.vertices ?? []) - loopArea(panel.outline);
    expect(left / (INCH * INCH * (22 + 9))).toBeGreaterThan(1);
    expect(left / (INCH * INCH * (22 + 9 + 2 * 1.6))).toBeLessThan(1.05);
  });

  it('is cut off before the next bend, and the steps say so', () => {
    const planned = planPanelStarter('hood-side', before('clamps', 'trim: { after: [long.rim] }'));
    const [first, second] = stepWords(planned, measuresIn('in')).map(({ sentences }) => plain(sentences));
    expect(first).toContain(
      'Cut the leg of long to its trim line, where 0.500 in (1/2) was left on, before the next bend',
    );
    expect(second).not.toContain('trim line');
  });

  it('is a lever where a bend is pulled by hand, unasked: with the leg as long as hands of 100 N need', () => {
    const job = `title: Lip
sheet: { material: aluminium-3003-h14, thickness: 1.6 }
base: { corners: [[0, 0], [120, 0], [120, 90], [0, 90]], edges: [a, b, c, d] }
bends: [{ on: a, angle: 60, radius: 60, leg: 100 }]
effort: { handForce: 100 }
`;
    const planned = planPanelStarter('bracket', () => job);
    const { pull } = at(planned.bends, 0).alone.bend;
    const { leftOn, cut } = planned.finish.trim ?? { leftOn: [] };
    expect(leftOn).toMatchObject([{ bend: 0, side: 'leg', isLever: true }]);
    expect(pull.moment / (100 + at(leftOn, 0).extra)).toBeCloseTo(100, 6);
    const more = loopArea(cut?.cut.vertices ?? []) - loopArea(planned.panel.outline);
    expect(more).toBeCloseTo(120 * at(leftOn, 0).extra, 3);
  });
});

describe('the sheet it is cut from', () => {
  const stock = (text: string) =>
    unfinished(text).replace('thickness: 18 ga', 'thickness: 18 ga\n  stock: { width: 36, length: 48 }');

  it('takes both of a pair, each inside it and clear of the other; the plan’s places are those', () => {
    const planned = planPanelStarter('hood-side', stock);
    const part = toPanelPlan(planned, []).panel;
    const [only, ...more] = part?.metal?.sheets ?? [];
    expect(more).toEqual([]);
    const placed = (only?.blanks ?? []).map(({ blank, angle, dx, dy }) => {
      const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      return (part?.outline ?? []).map(([x, y]): [number, number] => {
        const u = blank === 'right' ? -x : x;
        return [c * u - s * y + dx, s * u + c * y + dy];
      });
    });
    expect(only?.blanks.map(({ blank }) => blank).sort()).toEqual(['left', 'right']);
    for (const [x, y] of placed.flat()) {
      expect(Math.min(x, y)).toBeGreaterThan(4.99);
      expect(x).toBeLessThan(48 * INCH - 4.99);
      expect(y).toBeLessThan(36 * INCH - 4.99);
    }
    const [left = [], right = []] = placed;
    expect(polygonClipping.intersection([left], [right])).toEqual([]);
    // Two of the panel's own mass, on 36 × 48 in of steel at 7.85 kg/dm³, 1.2141 mm thick (18 ga).
    expect(part?.metal?.mass['left']).toBeCloseTo(part?.mass ?? NaN, 6);
    const sheet = 36 * 48 * INCH * INCH * 1.2141e-6 * 7.85;
    expect((part?.metal?.used ?? NaN) / ((2 * (part?.mass ?? NaN)) / sheet)).toBeCloseTo(1, 2);
  });

  it('too small for a blank is refused', () => {
    expect(codes('hood-side', (text) => stock(text).replace('width: 36', 'width: 12'))).toContain(
      'metal-too-small sheet.stock',
    );
  });
});

describe('edges', () => {
  it('capped are measured, by the base’s own corners', () => {
    const planned = planPanelStarter('hood-side', before('clamps', 'edges: { cap: [top, back] }'));
    expect(planned.finish.edges?.caps.map(({ edge, length }) => [edge, length / INCH])).toEqual([
      ['top', expect.closeTo(22, 6)],
      ['back', expect.closeTo(9, 6)],
    ]);
    expect(plain(finishWords(planned.finish, measuresIn('in')))).toContain('Cap strip to buy: 31.000 in');
  });

  it('of no such name are refused', () => {
    expect(codes('hood-side', before('clamps', 'edges: { cap: [side] }'))).toEqual(['no-such-edge edges.cap[0]']);
  });
});
