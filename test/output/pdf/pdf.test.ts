import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFRawStream,
  decodePDFRawStream,
  type PDFPage,
} from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import { inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../src/base/drawing';
import type { PaperChoice } from '../../../src/job/job';
import { makeLettering, shorten, wrap } from '../../../src/output/pdf/lettering';
import { at } from '../../../src/base/at';
import { seePages, writeTemplates, type Template } from '../../../src/output/pdf/pdf';
import type { Element } from '../../../src/output/xml';
import { font } from '../../helpers/font';

const A4: PaperChoice = { size: 'A4', orientation: 'auto', width: null, margin: 7, overlap: 10 };
const JOB = { title: 'Hatch trim', units: 'mm' } as const;

const box = (width: number, height: number): Drawing => ({
  shapes: [
    {
      kind: 'loop',
      operation: 'outline',
      vertices: [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ].map(([x, y]) => ({ x: x ?? 0, y: y ?? 0, bulge: 0 })),
    },
    { kind: 'circle', operation: 'hole', x: 20, y: height / 2, radius: 3 },
    { kind: 'text', operation: 'label', x: 30, y: 5, height: 4, angle: 0, anchor: 'start', text: 'Štítek λ “π” <b>' },
  ],
});
const TEMPLATES: Template[] = [
  { id: 'spine', title: 'Spine', notes: ['Cut 1'], drawing: box(420, 380) },
  { id: 'S1', title: 'Station S1', drawing: box(60, 40) },
  { id: 'S2', title: 'Station S2', drawing: box(70, 40) },
];

const codes = (hex: string): string[] => hex.match(/.{4}/gu) ?? [];
const latin = (bytes: Uint8Array): string => new TextDecoder('latin1').decode(bytes);

/** What a reader's search would find on a page: the shown strings, turned back to characters by the file's own ToUnicode map. */
function textsOf(pdf: PDFDocument, page: PDFPage): string[] {
  const fonts = page.node.Resources()?.lookup(PDFName.of('Font'), PDFDict);
  const [name] = fonts?.keys() ?? [];
  const face = name && fonts?.lookup(name, PDFDict);
  const stream = face?.lookup(PDFName.of('ToUnicode'));
  if (!(stream instanceof PDFRawStream)) throw new Error('no ToUnicode map');
  const cmap = latin(decodePDFRawStream(stream).decode());
  const characters = new Map(
    [...cmap.matchAll(/<([0-9a-f]{4})> <([0-9a-f]+)>/giu)].map(([, code, units]) => [
      (code ?? '').toUpperCase(),
      String.fromCharCode(...codes(units ?? '').map((unit) => parseInt(unit, 16))),
    ]),
  );
  return [...contentOf(pdf, page).matchAll(/<([0-9a-f]*)> Tj/giu)].map(([, shown]) =>
    codes((shown ?? '').toUpperCase())
      .map((code) => characters.get(code) ?? '?')
      .join(''),
  );
}

/** An element and all inside it. */
function within(elements: readonly (Element | string)[]): Element[] {
  return elements.flatMap((one) => (typeof one === 'string' ? [] : [one, ...within(one.children)]));
}

function contentOf(pdf: PDFDocument, page: PDFPage): string {
  const contents = page.node.Contents();
  const streams =
    contents instanceof PDFArray ? contents.asArray().map((reference) => pdf.context.lookup(reference)) : [contents];
  return streams
    .map((stream) => (stream instanceof PDFRawStream ? inflateSync(stream.getContents()).toString('latin1') : ''))
    .join('\n');
}

async function read(
  templates: readonly Template[],
  paper = A4,
  job: { title: string; units: 'mm' | 'in' } = JOB,
): Promise<{ pdf: PDFDocument; pages: PDFPage[]; texts: string[][] }> {
  const pdf = await PDFDocument.load(await writeTemplates(templates, paper, job, font), { updateMetadata: false });
  const pages = pdf.getPages();
  return { pdf, pages, texts: pages.map((page) => textsOf(pdf, page)) };
}

/** The title as it stands on the first page, below the check bars. */
function titleOn(page: readonly string[] | undefined): string | undefined {
  return page?.[page.indexOf('Full-size drawings on A4 paper') - 1];
}

describe('templates.pdf', () => {
  it('begins with the bars and with what to do where they are short', async () => {
    for (const [units, told] of [
      // 100/97 = 1.0309; 4/3.875 = 1.0323.
      ['mm', '97 → 103.1 %'],
      ['in', '3-7/8 → 103.2 %'],
    ] as const) {
      const [ours, other] = units === 'mm' ? ['100 mm', /\bin\b/u] : ['4 in', /\bmm\b/u];
      const { texts } = await read([TEMPLATES[1] as Template], A4, { ...JOB, units });
      expect(texts[0]?.slice(0, 2)).toEqual([
        'MEASURE BEFORE YOU CUT',
        expect.stringContaining(`THIS BAR IS ${ours} LONG`),
      ]);
      expect(
        texts
          .flat()
          .filter((text) => text.startsWith('THIS BAR IS'))
          .filter((text) => other.test(text)),
      ).toEqual([]);
      expect(texts[0]?.join(' ').replaceAll('\u00a0', ' ')).toContain(told);
    }
  });

  it('is seen on the page as it is printed: the same words, and every curve in the same place', async () => {
    const { pdf, pages, texts } = await read(TEMPLATES);
    const seen = await seePages(TEMPLATES, A4, JOB, font);
    expect(seen.map(({ size }) => [size.width, size.height])).toEqual(pages.map(() => [210, 297]));
    const numbers = (text: string): number[] => text.trim().split(/\s+/u).map(Number);
    for (const [index, { elements, size }] of seen.entries()) {
      const all = within(elements);
      expect(all.filter(({ name }) => name === 'text').flatMap(({ children }) => children)).toEqual(texts[index]);
      const curves = all.flatMap(({ attributes: { d = '' } }) =>
        [...d.matchAll(/C([-\d. ]+)/gu)].map(([, curve = '']) =>
          numbers(curve).map((value, at) => (at % 2 === 0 ? value : size.height - value)),
        ),
      );
      const circles = all.filter(({ name }) => name === 'circle').length;
      const content = contentOf(pdf, at(pages, index));
      const printed = [...content.matchAll(/^([-\d. ]+) c$/gmu)].map(([, curve = '']) => numbers(curve));
      // A circle is twelve curves on paper, of 30° each.
      expect(printed).toHaveLength(curves.length + 12 * circles);
      for (const curve of curves)
        expect(
          printed.some((one) => one.every((value, place) => Math.abs(value - at(curve, place)) < 2e-4)),
          curve.join(' '),
        ).toBe(true);
    }
    expect(seen.flatMap(({ elements }) => within(elements)).some(({ attributes }) => attributes.d?.includes('C'))).toBe(
      true,
    );
  });

  it('has the same bytes twice, and no date', async () => {
    const bytes = await writeTemplates(TEMPLATES, A4, JOB, font);
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(await writeTemplates(TEMPLATES, A4, JOB, font)))).toBe(0);
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    expect(pdf.getCreationDate()).toBeUndefined();
    expect(pdf.getModificationDate()).toBeUndefined();
    expect(pdf.getTitle()).toBe('Hatch trim');
  });

  it('draws the strokes of an engraved label as one thin open line at 1:1 (ISO 32000-1, annex A: m, l, S; w the width)', async () => {
    const points = [
      [10, 10],
      [14, 18],
      [18, 10],
    ] as const;
    const { pdf, pages } = await read([
      {
        id: 'S1',
        title: 'S1',
        drawing: { shapes: [...box(60, 40).shapes.slice(0, 2), { kind: 'stroke', operation: 'label', points }] },
      },
    ]);
    const content = pages.map((page) => contentOf(pdf, page)).join('\n');
    const runs = [
      ...content.matchAll(/([\d.]+) w\n\[\] 0 d\n([\d.]+) ([\d.]+) m\n([\d.]+) ([\d.]+) l\n([\d.]+) ([\d.]+) l\nS/gu),
    ].map(([, ...numbers]) => numbers.map(Number));
    expect(runs).toHaveLength(1);
    const [width, x = NaN, y = NaN, ...rest] = runs[0] ?? [];
    expect(width).toBeLessThan(0.2);
    const expected = [4, 8, 8, 0];
    for (const [index, value] of rest.entries())
      expect(value - (index % 2 === 0 ? x : y)).toBeCloseTo(expected[index] ?? NaN, 3);
  });

  it('asks not to be scaled, and to be printed on one side', async () => {
    const { pdf } = await read(TEMPLATES);
    const preferences = pdf.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
    expect(preferences.get(PDFName.of('PrintScaling'))?.toString()).toBe('/None');
    expect(preferences.get(PDFName.of('Duplex'))?.toString()).toBe('/Simplex');
  });

  it.each([
    ['A4', 'portrait', 210, 297],
    ['A3', 'landscape', 420, 297],
    ['letter', 'portrait', 8.5 * 25.4, 11 * 25.4],
    ['tabloid', 'landscape', 17 * 25.4, 11 * 25.4],
  ] as const)('%s %s pages are %f × %f mm (ISO 216, ANSI/ASME Y14.1)', async (size, orientation, width, height) => {
    const { pages } = await read(TEMPLATES, { ...A4, size, orientation });
    for (const page of pages) {
      expect(page.getWidth()).toBeCloseTo((width * 72) / 25.4, 3);
      expect(page.getHeight()).toBeCloseTo((height * 72) / 25.4, 3);
    }
  });

  it('a roll takes a whole drawing on one page as wide as itself and no longer than needed', async () => {
    const { pages } = await read([TEMPLATES[0] as Template], { ...A4, size: 'roll', width: 610 });
    expect(pages).toHaveLength(2);
    expect(pages[1]?.getWidth()).toBeCloseTo((610 * 72) / 25.4, 3);
    expect((pages[1]?.getHeight() ?? NaN) * (25.4 / 72)).toBeLessThan(420 + 60);
  });

  it('every page says its drawing, place and number, and how to check the print', async () => {
    const { texts } = await read(TEMPLATES);
    expect(texts.length).toBeGreaterThan(6);
    for (const [index, page] of texts.entries()) {
      // Level and upright; on the first page once more, before anything else.
      expect(page.filter((text) => text.startsWith('THIS BAR IS 100 mm LONG.'))).toHaveLength(index === 0 ? 3 : 2);
      expect(page).toContain('MEASURE THE BARS FIRST');
      expect(page).toContain('Hatch trim');
      expect(page).toContain(`Page ${index + 1} of ${texts.length}`);
    }
    const tiles = texts.flatMap((page) => page.filter((text) => text.endsWith(' of Spine')));
    expect(tiles).toEqual(
      ['A1 of Spine', 'A2 of Spine', 'A3 of Spine', 'B1 of Spine', 'B2 of Spine', 'B3 of Spine'].slice(0, tiles.length),
    );
    expect(texts.at(-1)).toEqual(
      expect.arrayContaining(['Station S1 · Station S2', 'Station S1', 'Station S2', 'Ø 6 mm']),
    );
    expect(texts[0]).toContain(`Spine: pages 2 to ${tiles.length + 1}, A1 to ${tiles.at(-1)?.split(' ')[0]}`);
    expect(texts[0]).toContain('Cut 1');
  });

  it('both pages of a seam name it the same', async () => {
    const { texts } = await read([TEMPLATES[0] as Template]);
    const pairs = new Map<string, number>();
    for (const page of texts)
      for (const pair of new Set(page.filter((text) => /^[A-Z]+\d+-[A-Z]+\d+$/u.test(text))))
        pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
    expect(pairs.size).toBeGreaterThan(3);
    expect([...pairs.values()].every((count) => count === 2)).toBe(true);
  });

  it.each(['<script>alert("1")</script> & “quotes”', 'Größe Ωmega Привет ½ × Ø', 'العربية', 'a\\b (c) [d] {e} %f'])(
    'job text %s appears literally',
    async (title) => {
      const { texts } = await read([TEMPLATES[1] as Template], A4, { ...JOB, title });
      if (/^[\u0600-\u06ff]+$/u.test(title)) expect(titleOn(texts[0])?.length).toBeGreaterThanOrEqual(title.length);
      else expect(titleOn(texts[0])).toBe(title);
    },
  );

  it('a character the typeface lacks is shown as its code point, a control character not at all', async () => {
    const { texts } = await read([{ ...(TEMPLATES[1] as Template), title: 'lid 🧰 \u6f22\n\u0007end' }], A4, {
      ...JOB,
      title: 'x\u{1f6e0}\ud800y',
    });
    expect(titleOn(texts[0])).toBe('x[U+1F6E0][U+D800]y');
    expect(texts[1]).toContain('lid [U+1F9F0] [U+6F22]  end');
  });

  it('a title of 200 characters stands whole on the first page and visibly shortened at the foot of each', async () => {
    const title = 'Long word '.repeat(20).trim();
    const { texts } = await read(TEMPLATES, A4, { ...JOB, title });
    expect(texts[0]?.join(' ')).toContain(title);
    for (const page of texts)
      expect(page.some((text) => text.endsWith('…') && title.startsWith(text.slice(0, -1)))).toBe(true);
    const unbroken = 'W'.repeat(200);
    expect((await read(TEMPLATES, A4, { ...JOB, title: unbroken })).texts[0]?.join('')).toContain(unbroken);
  });

  it('is drawn in mm, and no line is thinner than a printer shows or cut line outside 0.25 to 0.35 mm', async () => {
    const { pdf, pages } = await read(TEMPLATES);
    for (const page of pages) {
      const content = contentOf(pdf, page);
      expect(content.startsWith('2.834645669 0 0 2.834645669 0 0 cm')).toBe(true);
      const widths = [...content.matchAll(/^([\d.]+) w$/gmu)].map(([, width]) => Number(width));
      expect(widths.every((width) => (width === 0 ? true : width >= 0.1 && width <= 0.35))).toBe(true);
      expect(widths).toContain(0.13);
    }
  });
});

describe('fitting text', () => {
  it('wraps without losing a character and shortens within the room', async () => {
    const pdf = await PDFDocument.create();
    pdf.registerFontkit(fontkit);
    const letters = makeLettering(await pdf.embedFont(font, { subset: true }));
    const text = 'One two three four five supercalifragilisticexpialidocious six';
    const lines = wrap(letters, text, 2, 30);
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    for (const line of lines) expect(letters.width(line, 2)).toBeLessThanOrEqual(30);
    const short = shorten(letters, text, 2, 30);
    expect(short.endsWith('…')).toBe(true);
    expect(letters.width(short, 2)).toBeLessThanOrEqual(30);
    expect(shorten(letters, 'One', 2, 30)).toBe('One');
  });
});
