import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { boundsOf } from '../../../src/base/bounds';
import { isInside } from '../../../src/base/polygon';
import { flattenLoop } from '../../../src/base/flatten';
import { MODEL_SCALES, modelScale, paperModel } from '../../../src/drawing/panel/paper-model';
import { modelOf } from '../../../src/output/panel/files';
import { seePaperModel, writePaperModel } from '../../../src/output/pdf/paper-model';
import { font } from '../../helpers/font';
import { planPanelStarter } from '../../helpers/starters';
import { bend, box, built } from '../../panel/panels';

/** 400 by 300 between its tangent lines: one leg up, one down. */
const panel = built(
  box(400, 300, { bends: [bend('long', { turn: 'up' }), bend('back', { turn: 'down', reach: { leg: 40 } })] }),
);

describe('a panel to fold of paper', () => {
  it('is the net flat at its scale, both tangent lines of every bend in the line of its turn', () => {
    const model = paperModel(panel, (index) => index + 1, 4);
    const [small, whole] = [boundsOf(model.cut), boundsOf(paperModel(panel, () => 1, 1).cut)];
    expect(small.maxX - small.minX).toBeCloseTo((whole.maxX - whole.minX) / 4, 9);
    expect(small.maxY - small.minY).toBeCloseTo((whole.maxY - whole.minY) / 4, 9);
    // Along the 400 mm edge the held line is 400 long, and the free one, of a cylinder, as long.
    const lengths = (drawing: typeof model.up): number[] =>
      drawing.shapes.flatMap((shape) =>
        shape.kind === 'line' ? [Math.hypot(shape.to[0] - shape.from[0], shape.to[1] - shape.from[1])] : [],
      );
    expect(lengths(model.up).map((length) => Math.round(length * 1e6) / 1e6)).toEqual([100, 100]);
    expect(lengths(model.down).map((length) => Math.round(length * 1e6) / 1e6)).toEqual([75, 75]);
  });

  it('names each bend by its step, inside the outline', () => {
    const model = paperModel(panel, (index) => 2 - index, 4);
    const outline = at(model.cut.shapes, 0);
    if (outline.kind !== 'loop') throw new Error('no outline');
    const polygon = flattenLoop(outline.vertices, 0.01);
    const names = model.names.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
    expect(names.map(({ text }) => text)).toEqual(['2. long: up 90°', '1. back: down 90°']);
    for (const { x, y, height } of names) {
      expect(isInside([x, y], polygon)).toBe(true);
      expect(height).toBeCloseTo(2.6, 9);
    }
  });

  it('has a cross where each of a seam’s fasteners comes, on the paper as large at every scale', async () => {
    const planned = planPanelStarter('hood-side');
    const { seams } = planned.finish;
    const [whole, small] = [1, 4].map((parts) => paperModel(planned.panel, () => 1, parts, seams).seams.shapes);
    // 7 rivets drilled through the other panel later: two lines each, no hole.
    expect(small).toHaveLength(2 * 7);
    const middles = (shapes = whole) =>
      (shapes ?? []).flatMap((shape) =>
        shape.kind === 'line' ? [[(shape.from[0] + shape.to[0]) / 2, (shape.from[1] + shape.to[1]) / 2] as const] : [],
      );
    seams
      .flatMap(({ rows }) => rows.flat())
      .forEach(({ x, y }, index) => {
        const [mx, my] = at(middles(small), 2 * index);
        expect([mx * 4, my * 4]).toEqual([expect.closeTo(x, 9), expect.closeTo(y, 9)]);
      });
    for (const shape of small ?? [])
      if (shape.kind === 'line')
        expect(Math.hypot(shape.to[0] - shape.from[0], shape.to[1] - shape.from[1])).toBeCloseTo(1.6, 9);
    const seen = JSON.stringify((await seePaperModel(modelOf(planned), font)).elements);
    expect(seen).toContain('Crosses');
    expect(JSON.stringify((await seePaperModel({ ...modelOf(planned), seams: [] }, font)).elements)).not.toContain(
      'Crosses',
    );
  });

  it.each([
    [{ width: 190, height: 200 }, 1],
    [{ width: 190.1, height: 200 }, 2],
    [{ width: 100, height: 601 }, 4],
    [{ width: 1e6, height: 1 }, 100],
  ])('is as large as fits: %o', (size, parts) => {
    expect(modelScale(size, { width: 190, height: 200 })).toBe(parts);
    expect(MODEL_SCALES).toContain(parts);
  });

  it('is one page of the job’s paper that says its scale, the same bytes every time', async () => {
    const modelled = modelOf(planPanelStarter('hood-side'));
    const seen = await seePaperModel(modelled, font);
    expect(seen.size).toMatchObject({ width: 279.4, height: 215.9 });
    const text = JSON.stringify(seen.elements);
    expect(text).toContain('paper model, 1 : 3');
    expect(text).not.toContain('Dash-dotted');
    const [first, second] = await Promise.all([writePaperModel(modelled, font), writePaperModel(modelled, font)]);
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  it('is on a cut sheet where the templates come from a roll', async () => {
    const modelled = modelOf(planPanelStarter('tray'));
    const onRoll = { ...modelled, paper: { ...modelled.paper, size: 'roll' as const, width: 610 } };
    expect((await seePaperModel(onRoll, font)).size).toMatchObject({ width: 297, height: 210 });
  });
});
