import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseFile } from '../../../src/job/parse';
import { changed, nodeAt } from '../../../src/page/draft';
import { inUnits } from '../../../src/page/convert-units';
import { rootOf } from '../../../src/page/panel/panel-root';
import { openPanelText, withDraft, type PanelDraft } from '../../../src/page/panel/panel-draft';
import { workPanel } from '../../../src/page/panel/panel-work';
import { drawnOutline, nearestCorner } from '../../../src/page/panel/outline/drawn';
import { jobOfDrawing } from '../../../src/page/panel/outline/drawing-job';
import { lineAt, withBend, withReference } from '../../../src/page/panel/outline/placing';
import { tables } from '../../helpers/starters';

/** Drawn by ourselves at half size: 210 mm along the deck edge and 68 mm up its end stand for 420 and 136. */
const drawing = { name: 'wing.svg', text: readFileSync('templates/panels/traced-deflector.svg', 'utf8') };

const begin = (): PanelDraft => openPanelText(jobOfDrawing(drawing));

describe('a drawing dropped on the page', () => {
  it('begins a job that lacks nothing but a bend', () => {
    expect(parseFile(begin().text, tables).findings.map(({ path }) => path)).toEqual(['bends']);
  });

  it.each(['mm', 'in'] as const)(
    'in %s: a bend by two places and two lengths make the panel at its true size',
    (units) => {
      const [along, up] = units === 'mm' ? ['420', '136'] : ['420 mm', '136 mm'];
      let held = withDraft(begin(), inUnits(begin().draft, 'mm', units, rootOf(begin().draft)));
      held = withDraft(
        held,
        withBend(
          held.draft,
          [
            [20, 70],
            [230, 70],
          ],
          units,
        ),
      );
      held = withDraft(
        held,
        withReference(
          held.draft,
          {
            between: [
              [20, 20],
              [230, 20],
            ],
            is: along,
          },
          units,
        ),
      );
      held = withDraft(
        held,
        withReference(
          held.draft,
          {
            between: [
              [230, 20],
              [230, 88],
            ],
            is: up,
          },
          units,
        ),
      );
      const { planned, findings, fault } = workPanel({ text: held.text, drawing });
      expect([fault, findings.filter(({ level }) => level === 'error')]).toEqual(['', []]);
      const { scale } = planned?.flat.traced ?? {};
      // Twice as large, within 0.05 %.
      expect(Math.abs((scale?.x ?? 0) / 2 - 1)).toBeLessThan(5e-4);
      expect(Math.abs((scale?.y ?? 0) / 2 - 1)).toBeLessThan(5e-4);
      const xs = planned?.panel.outline.map(({ x }) => x) ?? [];
      expect(Math.abs((Math.max(...xs) - Math.min(...xs)) / 420 - 1)).toBeLessThan(5e-4);
      const [a, b] = lineAt(held.draft, ['bends', 0, 'line'], units) ?? [];
      expect([a?.[0], a?.[1], b?.[0], b?.[1]].map((one) => Math.round((one ?? NaN) * 50) / 50)).toEqual([
        20, 70, 230, 70,
      ]);
      expect(held.text).toMatch(/line: \[ ?\[ ?[\d.]+, [\d.]+ ?\], \[ ?[\d.]+, [\d.]+ ?\] ?\]/u);
    },
  );

  it('each bend has a name of its own', () => {
    const one = withBend(
      { bends: [{ name: 'bend 2' }] },
      [
        [0, 0],
        [1, 0],
      ],
      'mm',
    );
    const two = withBend(
      one,
      [
        [0, 0],
        [1, 0],
      ],
      'mm',
    );
    expect([0, 1, 2].map((index) => nodeAt(two, ['bends', index, 'name']))).toEqual(['bend 2', 'bend 3', 'bend 4']);
  });

  it('without its drawing the page says which one it lacks', () => {
    const held = withDraft(
      begin(),
      withBend(
        begin().draft,
        [
          [20, 70],
          [230, 70],
        ],
        'mm',
      ),
    );
    const said = workPanel({ text: held.text, drawing: null }).findings;
    expect(said).toEqual([expect.objectContaining({ code: 'drawing-unread', path: 'outline.file' }) as unknown]);
    expect(said[0]?.message).toContain('wing.svg');
  });

  it('is shown unscaled, as drawn, and why where it cannot be', () => {
    const outline = nodeAt(begin().draft, ['outline']) ?? '';
    const drawn = drawnOutline(outline, drawing, 'mm');
    if (drawn.kind !== 'read') throw new Error(drawn.kind);
    const xs = drawn.outline.vertices.map(({ x }) => x);
    expect([Math.min(...xs), Math.max(...xs)].map((x) => Math.round(x * 100) / 100)).toEqual([20, 230]);
    expect(drawn.outline.holes.length).toBe(3);
    expect(drawnOutline(outline, null, 'mm')).toEqual({ kind: 'missing' });
    const broken = { ...drawing, text: drawing.text.replace(' Z"', '"') };
    const refused = drawnOutline(outline, broken, 'mm');
    expect(refused.kind === 'refused' && refused.findings.map(({ code }) => code)).toContain('outline-open');
    const corners = changed(
      changed(
        {},
        ['corners'],
        [
          ['0', '0'],
          ['300', '0'],
          ['300', '200'],
        ],
      ),
      ['mockup'],
      'sharp',
    );
    const read = drawnOutline(corners, null, 'mm');
    expect(read.kind === 'read' && read.outline.vertices.length).toBe(3);
  });

  it('a touch near a corner takes it, one elsewhere does not', () => {
    const corners = [
      [0, 0],
      [100, 0],
    ] as const;
    expect(nearestCorner([97, 2], corners, 5)).toEqual([100, 0]);
    expect(nearestCorner([90, 2], corners, 5)).toBeNull();
  });
});
