import { describe, expect, it } from 'vitest';
import { arcBetween, sidesOf } from '../../../src/base/arc';
import type { Text } from '../../../src/base/drawing';
import { drawParts } from '../../../src/drawing/parts';
import { withOverall } from '../../../src/drawing/parts/overall';
import { writeDxf } from '../../../src/output/dxf';
import { cutWith } from '../../helpers/for-tool';
import { readDxf } from '../../helpers/read-dxf';
import { piecesOf } from '../../helpers/laid-out';
import { planStarter, starters, tables } from '../../helpers/starters';

/** Millimetres in the units the words end with. */
const UNIT: Readonly<Record<string, number>> = { mm: 1, in: 25.4 };

/** Greatest extent of the outline as another program reads the file: half circles by their ends and their middle. */
function greatest(dxf: string): number {
  const outline = readDxf(dxf).polylines.find(({ layer }) => layer === 'outline')?.vertices ?? [];
  const places = outline.flatMap(({ x, y, bulge }, index) => {
    const next = outline[(index + 1) % outline.length] ?? { x, y };
    return [
      [x, y],
      [(x + next.x) / 2 + (bulge * (next.y - y)) / 2, (y + next.y) / 2 - (bulge * (next.x - x)) / 2],
    ] as const;
  });
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

describe.each(starters)('the overall dimension on every part of %s', (name) => {
  it('is written once, in the job’s unit, and is the greatest extent another reader finds', () => {
    const parts = piecesOf(planStarter(name));
    expect(parts.length).toBeGreaterThan(3);
    for (const part of parts) {
      const written = writeDxf(part.drawing);
      const words = readDxf(written).texts.flatMap(({ text }) => /^OVERALL ([\d.]+) (mm|in)$/u.exec(text) ?? []);
      expect(words, part.id).toHaveLength(3);
      expect(words[2]).toBe(name.endsWith('inch') ? 'in' : 'mm');
      const said = Number(words[1]) * (UNIT[words[2] ?? ''] ?? NaN);
      expect(Math.abs(said - greatest(written)), part.id).toBeLessThan(words[2] === 'mm' ? 0.0051 : 0.0128);
    }
  });
});

describe('the overall dimension', () => {
  it.each(['jigsaw', 'router', 'laser'] as const)('meets nothing else that is written, for a %s', (tool) => {
    const { layout, bend, job, joints } = planStarter('tapered-curve', cutWith(tool));
    if (!layout || !bend || !joints) throw new Error('no form');
    let written = 0;
    for (const part of drawParts({ layout, bend, job, joints }, tables).map((each) => withOverall(each, 'mm'))) {
      const texts = part.drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');
      const overall = texts.find(({ text }) => text.startsWith('OVERALL'));
      if (!overall) {
        // Between dowels and screws a layer of a small station may have no room; its radius is a size to check too.
        const [said] = texts.flatMap(({ text }) => /^R ([\d.]+) mm$/u.exec(text)?.[1] ?? []);
        const drawn = part.drawing.shapes.flatMap((shape) =>
          shape.kind === 'loop' && shape.operation === 'outline'
            ? sidesOf(shape.vertices).flatMap(([from, to]) => arcBetween(from, to)?.radius ?? [])
            : [],
        );
        expect(part.kind).toBe('station');
        expect(Math.abs(Number(said) - Math.max(...drawn)), part.id).toBeLessThan(0.0051);
        continue;
      }
      written += 1;
      // Widths by 0.75 of the height a letter, as plain sans capitals are in the mean.
      const box = ({ x, y, height, angle, text }: Text): [number, number, number, number] => {
        const half = (0.75 * height * text.length) / 2;
        return Math.abs(angle) < 0.1 ? [x - half, y, x + half, y + height] : [x - height, y - half, x, y + half];
      };
      const [left, low, right, high] = box(overall);
      for (const other of texts.filter((text) => text !== overall && Math.abs(text.angle % (Math.PI / 2)) < 0.1)) {
        const [l, b, r, t] = box(other);
        expect(left < r && l < right && low < t && b < high, `${part.id}: over ${other.text}`).toBe(false);
      }
    }
    expect(written).toBeGreaterThan(3);
  });
});
