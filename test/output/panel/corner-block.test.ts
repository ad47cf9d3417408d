import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { boundsOf } from '../../../src/base/bounds';
import { loopArea } from '../../../src/base/area';
import { parseFile } from '../../../src/job/parse';
import { piecesOfPanel } from '../../../src/output/panel/boards';
import { makePanelFiles } from '../../../src/output/panel/files';
import { toPanelPlan } from '../../../src/output/panel/panel-plan';
import { planPanel } from '../../../src/output/panel/plan-panel';
import { blockMeshes, meshVolume } from '../../../src/output/solids';
import { font } from '../../helpers/font';
import { panelFilesOf } from '../../helpers/laid-out';
import { panelRules as rules, planPanelStarter, tables } from '../../helpers/starters';

const hood = readFileSync('templates/panels/hood-side.yaml', 'utf8');
const askedAtHood = (text: string): string => text.replace('long/short: {', 'long/short: { block: true,');

describe('a block for a corner', () => {
  const planned = planPanelStarter('hood-side', askedAtHood);
  const pieces = piecesOfPanel(planned, tables);

  it('is cut with the forms, for each hand of a pair: mirror images, each layer on a board once', () => {
    expect(askedAtHood(hood)).not.toBe(hood);
    const { block } = at(planned.blocks, 0);
    expect(pieces.blocks).toHaveLength(2 * block.layers.length);
    const ids = pieces.blocks.map(({ id }) => id);
    expect(at(ids, 0)).toBe('corner-long-short-left-1');
    const placed = pieces.boards.flatMap(({ placements }) => placements.map(({ part }) => part));
    for (const id of ids) expect(placed.filter((one) => one === id)).toHaveLength(1);
    const [left, right] = ['left', 'right'].map((hand) =>
      pieces.blocks
        .filter(({ id }) => id.includes(hand))
        .map(({ drawing }) => boundsOf({ shapes: drawing.shapes.filter(({ operation }) => operation === 'outline') }))
        .map(({ minX, maxX, minY, maxY }) => [maxX - minX, maxY - minY]),
    );
    expect(left).toEqual(right?.map((size): unknown[] => size.map((mm): unknown => expect.closeTo(mm, 9))));
  });

  it('stands in three dimensions on the inside face of the finished panel, each layer a closed solid of its board', () => {
    const { block, dowel } = at(planned.blocks, 0);
    const meshes = blockMeshes(planned.panel, block, dowel);
    expect(meshes).toHaveLength(block.layers.length);
    meshes.forEach((mesh, index) => {
      const { from, to, outline } = at(block.layers, index);
      const area = Math.abs(loopArea(outline.map(([x, y]) => ({ x, y, bulge: 0 }))));
      // Two dowels' holes taken out; their circles as chords within 0.002 mm.
      expect(meshVolume(mesh) / ((to - from) * (area - 2 * Math.PI * (dowel / 2) ** 2))).toBeCloseTo(1, 4);
      const heights = mesh.positions.filter((_, place) => place % 3 === 2);
      expect(Math.min(...heights)).toBeCloseTo(planned.panel.thickness / 2 + from, 9);
      expect(Math.max(...heights)).toBeCloseTo(planned.panel.thickness / 2 + to, 9);
      const sides = new Map<string, number>();
      mesh.triangles.forEach((corner, place, all) => {
        const next = at(all, place % 3 === 2 ? place - 2 : place + 1);
        const key = corner < next ? `${corner} ${next}` : `${next} ${corner}`;
        sides.set(key, (sides.get(key) ?? 0) + (corner < next ? 1 : -1));
      });
      expect([...sides.values()].every((sum) => sum === 0)).toBe(true);
    });
  });

  it('stands in the plan beside its corner, with every layer, and nothing where none is asked for', () => {
    const [corner] = toPanelPlan(planned, []).panel?.corners ?? [];
    const { block } = at(planned.blocks, 0);
    expect(corner?.block).toMatchObject({ reach: block.reach, height: block.height, dowel: 7.9375 });
    expect(corner?.block?.layers.map(({ outline }) => outline)).toEqual(block.layers.map(({ outline }) => outline));
    expect(toPanelPlan(planPanelStarter('hood-side'), []).panel?.corners.map((one) => one.block)).toEqual([null]);
  });

  it('is in the files: drawings, templates, the buying list and the order of work', async () => {
    const files = await makePanelFiles(planned, { tables, font });
    const paths = files.map(({ path }) => path);
    expect(paths).toEqual(
      expect.arrayContaining(['corners/corner-long-short-left-1.dxf', 'corners/corner-long-short-right-1.svg']),
    );
    const sheet = String(files.find(({ path }) => path === 'order-of-work.html')?.content);
    expect(sheet).toContain('through the layers of the block for corner long/short');
    expect(sheet).toContain('The block for corner');
    expect(sheet).toContain('the left hand’s and the right’s are mirror images');
    const before = await panelFilesOf(planPanelStarter('hood-side'));
    expect(before.some(({ path }) => path.startsWith('corners/'))).toBe(false);
  });

  it('is refused where no two bends meet, with the place', () => {
    const parsed = parseFile(hood.replace('long/short: {', 'long/back: { block: true } \n  long/short: {'), tables);
    if (parsed.kind !== 'panel' || !parsed.job) throw new Error('a panel');
    const { findings } = planPanel(parsed.job, { tables, rules }, parsed.findings);
    expect(findings.map(({ code, path, values }) => [code, path, values])).toContainEqual([
      'corner-block',
      'corners.long/back.block',
      { why: 'none' },
    ]);
  });
});
