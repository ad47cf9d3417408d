import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { piecesOfPanel } from '../../../src/output/panel/boards';
import { layOutPieces, drawPieces } from '../../../src/output/pieces';
import { tablesIn } from '../../../src/tables/tables';
import { asText, panelFilesOf } from '../../helpers/laid-out';
import { rowsOf } from '../../helpers/sheet-rows';
import { planPanelStarter, tables } from '../../helpers/starters';

const routed = (text: string): string => `${text}\ncut: { with: router, bit: 6 }\n`;

/** Names of the pieces of a form as its own folder has them. */
const own = ['spine', 'S1', 'BS1'];

describe('a panel of two forms', () => {
  const planned = planPanelStarter('bracket');
  const inUnits = tablesIn(tables, 'mm');
  const pieces = piecesOfPanel(planned, inUnits);

  it('has every piece of every form on its boards once, by its form and its name', () => {
    expect(pieces.forms).toHaveLength(2);
    const placed = pieces.boards.flatMap(({ placements }) => placements.map(({ part }) => part));
    expect([...placed].sort()).toEqual(
      pieces.forms.flatMap(({ folder, parts }) => parts.map(({ id }) => `${folder}-${id}`)).sort(),
    );
    for (const { folder } of pieces.forms)
      expect(placed).toEqual(expect.arrayContaining(own.map((id) => `${folder}-${id}`)));
  });

  it('takes no more boards than its forms one by one, and fewer here', () => {
    const alone = planned.forms.reduce(
      (sum, { planned: form }) => sum + layOutPieces(drawPieces(form, inUnits), form, inUnits).length,
      0,
    );
    expect(alone).toBe(2);
    expect(pieces.boards).toHaveLength(1);
  });

  it('has its form’s name written on each piece with room for it', () => {
    for (const { form, parts } of pieces.forms) {
      const named = parts.filter(({ drawing }) =>
        drawing.shapes.some((shape) => shape.kind === 'text' && shape.text.includes(form.name.toUpperCase())),
      );
      expect(named.map(({ id }) => id)).toEqual(expect.arrayContaining(['spine', 'BS1']));
    }
  });
});

describe('the files of a panel', () => {
  it('have one set of boards and, for a machine, one list of steps that names the pieces as the boards do', async () => {
    const files = await panelFilesOf(planPanelStarter('bracket', routed));
    const paths = files.map(({ path }) => path);
    expect(paths.filter((path) => /(^|\/)boards\//u.test(path))).toEqual([
      'boards/board-mdf-18-1.dxf',
      'boards/board-mdf-18-1.svg',
      'boards/board-mdf-18-1.pdf',
    ]);
    expect(paths.filter((path) => path.includes('operations.'))).toEqual(['operations.csv', 'operations.json']);
    const [csv] = asText(files.filter(({ path }) => path === 'operations.csv'));
    const parts = new Set(
      (csv?.content ?? '')
        .split('\r\n')
        .slice(1, -1)
        .map((row) => row.split(',')[0]),
    );
    expect([...parts]).toEqual(expect.arrayContaining(['foot-spine', 'foot-S1', 'arm-spine', 'arm-S1']));
    for (const name of parts) {
      const [form, ...rest] = (name ?? '').split('-');
      expect(paths).toContain(`forms/${form}/parts/${rest.join('-')}.dxf`);
    }
  });

  it('say once what to buy, and the forms’ own sheets point there', async () => {
    const planned = planPanelStarter('bracket');
    const files = asText(await panelFilesOf(planned));
    const sheet = files.find(({ path }) => path === 'order-of-work.html')?.content ?? '';
    const rows = rowsOf(sheet, 'To buy, or find in the shop, for the whole panel');
    const row = (what: string) => rows.filter(([name]) => name?.startsWith(what));
    // Both forms’ screws, counted in the layouts.
    const screws = planned.forms.flatMap(({ planned: { layout } }) =>
      [...layout.stations, ...layout.backings].flatMap((board) => board.screws),
    ).length;
    expect(row('screw').reduce((sum, [, , number]) => sum + Number(number), 0)).toBe(screws);
    expect(row('MDF').map(([, , number]) => number)).toEqual(['1']);
    // The clamps of the bend that needs most.
    const most = Math.max(...planned.bends.map(({ alone }) => alone.layout.clamps));
    expect(at(row('clamps'), 0)[2]).toBe(String(most));
    // Both forms' spines are 18 mm thick and reach 60 mm past either end of their bends: the same two strips lie under the one, then under the other.
    expect(row('packing').filter(([, , , remark]) => remark?.startsWith('under the form'))).toEqual([
      [
        'packing as thick as the sheet, offcuts of it',
        '60 mm × 18 mm',
        '2',
        'under the form past the bend’s end (bend foot, arm)',
      ],
    ]);
    expect(row('bench')).toHaveLength(1);
    const foot = planned.bends.filter(({ step }) => step.bench.length > 0).map(({ bend }) => bend.name);
    if (foot.length > 0) expect(at(row('bench'), 0)[3]).toContain(`for bend ${foot.join(', ')}`);
    for (const { content, path } of files.filter((file) => file.path.endsWith('shop-sheet.html'))) {
      expect(content, path).toContain('stands in order-of-work.html');
      expect(content, path).not.toContain('material and bench');
    }
  });
});
