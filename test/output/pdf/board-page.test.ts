import { PDFDocument } from '@cantoo/pdf-lib';
import { parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import type { LaidOut } from '../../../src/drawing/boards/laid-out';
import { writeBoardPdf } from '../../../src/output/pdf/board-pdf';
import { writeShopSheet } from '../../../src/output/shop-sheet';
import { font } from '../../helpers/font';
import { boardsOf, piecesOf } from '../../helpers/laid-out';
import { planStarter, tables } from '../../helpers/starters';

const planned = planStarter('plain-curve');

/** The starter's board as if it and what lies on it were so long, mm. */
function reaching(length: number): LaidOut {
  const board = at(boardsOf(planned), 0);
  return { ...board, length: length + 500, used: { ...board.used, length } };
}

/** Words of a page, tags taken away. */
const saidOf = (board: LaidOut): string => {
  const html = writeShopSheet(planned, { parts: piecesOf(planned), boards: [board] }, tables);
  expect(parse(html).childNodes.length).toBeGreaterThan(0);
  return html.replaceAll(/<[^>]*>/gu, '');
};

describe('a board’s print', () => {
  // ISO 32000-1, annex C: a page is at most 14 400 units of 1/72 in either way.
  const MOST = 14_400;

  it.each([500, 2400, 4700])('reaching %d mm is one page a reader opens', async (length) => {
    const board = reaching(length);
    const pdf = await writeBoardPdf(board, { title: 'Long', name: 'board', units: 'mm' }, font);
    const page = at((await PDFDocument.load(pdf ?? '', { updateMetadata: false })).getPages(), 0);
    expect(page.getWidth()).toBeGreaterThan((length / 25.4) * 72);
    expect(Math.max(page.getWidth(), page.getHeight())).toBeLessThanOrEqual(MOST);
    expect(saidOf(board)).not.toContain('longer than one PDF page');
  });

  it.each([5100, 5800])('reaching %d mm is none, and the shop sheet says why', async (length) => {
    const board = reaching(length);
    expect(await writeBoardPdf(board, { title: 'Long', name: 'board', units: 'mm' }, font)).toBeNull();
    expect(saidOf(board)).toContain(`boards/${board.id}, as SVG and DXF only: it is longer than one PDF page can be`);
  });
});
