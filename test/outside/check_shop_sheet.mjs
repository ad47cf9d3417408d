// Shop sheets in a real browser: node test/outside/check_shop_sheet.mjs FILES [PICTURES]
// Every shop-sheet.html, order-of-work.html and assembly.html under FILES, and a sheet of a job full of hostile text, is opened in Chromium: no console message, no request,
// nothing wider than the page on letter, A4 or a phone, printed to PDF with every word on the paper, none too small to read, and table heads repeated.
// With PICTURES, screenshots and PDFs are kept there. Ends with "N passed, N failed".

import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const MM = 96 / 25.4;
/** Least height of a word’s box, pt: capitals of 1.3 mm, what a small face is printed in. */
const LEAST = 5;
const MARGIN = 12; // mm, as in the sheet's own @page rule
const PAPERS = [
  { name: 'letter', width: 215.9, height: 279.4 }, // ANSI/ASME Y14.1 size A
  { name: 'A4', width: 210, height: 297 }, // ISO 216
];

const [files, pictures] = process.argv.slice(2);
if (!files) {
  console.error('usage: node test/outside/check_shop_sheet.mjs FILES [PICTURES]');
  process.exit(2);
}
/** Tables that are made longer than a page, by how their captions begin, and a word of their heads that stands nowhere else. */
const LONG_TABLES = { Holes: 'Countersink:', 'Outline: cut': 'Place', Panels: 'made' };
const scratch = mkdtempSync(join(tmpdir(), 'shop-sheet-'));
const keep = pictures ? resolve(pictures) : scratch;
mkdirSync(keep, { recursive: true });

let passed = 0;
let failed = 0;
function check(what, problems) {
  if (problems.length === 0) passed++;
  else {
    failed++;
    console.log(`FAILED: ${what}\n  ${problems.slice(0, 8).join('\n  ')}`);
  }
}

/** A starter whose title is hostile, in both units: the widest sheet there is. */
function makeHostile() {
  const words = `<script>alert(1)<!--"'&\u05e7\u05e9\u05ea`;
  const text = readFileSync('templates/tapered-curve.yaml', 'utf8').replace(
    /^title:.*$/mu,
    () => `title: ${JSON.stringify(words.padEnd(200, 'W'))}`,
  );
  const job = join(scratch, 'hostile.yaml');
  writeFileSync(job, text);
  execFileSync('node', ['dist/main.js', 'make', job, '--out', join(scratch, 'hostile'), '--units', 'both'], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return join(scratch, 'hostile');
}

function sheetsUnder(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => ['shop-sheet.html', 'order-of-work.html', 'assembly.html'].includes(basename(path)))
    .map((path) => join(folder, path))
    .sort();
}

/** Elements that stick out of the page, or whose content sticks out of them. */
function tooWide() {
  const room = document.documentElement.clientWidth + 0.5;
  return [...document.querySelectorAll('body *')].flatMap((element) => {
    const box = element.getBoundingClientRect();
    const svg = element.closest('svg');
    // What lies in a picture is cut off at its edge, a picture within a picture too.
    if (element.parentElement?.closest('svg')) return [];
    const scrolls =
      getComputedStyle(element).overflowX === 'auto' ||
      (element.parentElement?.closest('table') && getComputedStyle(element.closest('table')).overflowX === 'auto');
    if (scrolls) return [];
    const out =
      box.right > room || box.left < -0.5
        ? [
            `<${element.localName}> from ${box.left.toFixed(1)} to ${box.right.toFixed(1)} of ${room.toFixed(0)} px: ${element.textContent.slice(0, 40)}`,
          ]
        : [];
    const cut =
      element.scrollWidth > element.clientWidth + 1 &&
      getComputedStyle(element).display !== 'inline' &&
      element.clientWidth > 0 &&
      !svg
        ? [`<${element.localName}> clips its content: ${element.textContent.slice(0, 40)}`]
        : [];
    return [...out, ...cut];
  });
}

/** Words of a PDF with their boxes, by poppler's pdftotext. */
function wordsOf(pdf) {
  const text = execFileSync('pdftotext', ['-bbox', pdf, '-'], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const pages = text.split('<page ').slice(1);
  return pages.map((page) => {
    const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/u.exec(page) ?? [];
    const words = [
      ...page.matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/gu),
    ].map((match) => ({ box: match.slice(1, 5).map(Number), text: match[5] }));
    return { width: Number(width), height: Number(height), words };
  });
}

const unentity = (text) =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');
const letters = (text) => [...text.replaceAll(/[^0-9A-Za-z±−°]/gu, '')].sort().join('');

/** A picture to look at, where pictures are asked for. */
async function picture(page, name) {
  if (pictures) await page.screenshot({ path: join(keep, `${name}.png`), fullPage: true });
}

async function checkSheet(browser, path, name) {
  const context = await browser.newContext();
  const page = await context.newPage();
  const [said, asked] = [[], []];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => asked.push(request.url()));
  page.on('dialog', (dialog) => (said.push(`dialog: ${dialog.message()}`), dialog.dismiss()));
  const url = pathToFileURL(resolve(path)).href;
  await page.goto(url);
  check(`${name}: no console message`, said);
  check(
    `${name}: no request but the file`,
    asked.filter((one) => one !== url),
  );

  await page.setViewportSize({ width: 390, height: 844 });
  check(`${name}: fits a phone`, await page.evaluate(tooWide));
  await picture(page, `${name}-phone`);
  await page.setViewportSize({ width: 1000, height: 800 });
  check(`${name}: fits a screen`, await page.evaluate(tooWide));
  await picture(page, `${name}-screen`);

  for (const paper of PAPERS) {
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({
      width: Math.floor((paper.width - 2 * MARGIN) * MM),
      height: Math.floor((paper.height - 2 * MARGIN) * MM),
    });
    check(`${name}: nothing wider than ${paper.name}`, await page.evaluate(tooWide));
    const pdf = join(keep, `${name}-${paper.name}.pdf`);
    await page.pdf({ path: pdf, width: `${paper.width}mm`, height: `${paper.height}mm`, preferCSSPageSize: false });
    const pages = wordsOf(pdf);
    check(
      `${name}: PDF pages are ${paper.name}`,
      pages
        .filter(
          (one) =>
            Math.abs(one.width - (paper.width / 25.4) * 72) > 1 ||
            Math.abs(one.height - (paper.height / 25.4) * 72) > 1,
        )
        .map((one) => `${one.width} × ${one.height} pt`),
    );
    const edge = (MARGIN / 25.4) * 72 - 2;
    check(
      `${name}: every word inside the margins on ${paper.name}`,
      pages.flatMap((one, index) =>
        one.words
          .filter(
            ({ box: [left, top, right, bottom] }) =>
              left < edge || right > one.width - edge || top < edge || bottom > one.height - edge,
          )
          .map((word) => `page ${index + 1}: ${word.text}`),
      ),
    );
    const cells = await page.evaluate(() =>
      [...document.querySelectorAll('td, tbody th')].map((cell) => cell.textContent),
    );
    const printed = letters(pages.map((one) => one.words.map((word) => unentity(word.text)).join('')).join(''));
    check(
      `${name}: as many of each letter and digit on ${paper.name} as in the tables, at least`,
      missing(letters(cells.join('')), printed),
    );
    check(
      `${name}: nothing too small to read on ${paper.name}`,
      pages.flatMap((one, index) =>
        one.words
          .filter(
            ({ box: [left, top, right, bottom], text }) =>
              text.length > 3 && Math.min(right - left, bottom - top) < LEAST,
          )
          .map((word) => `page ${index + 1}: ${word.text}`),
      ),
    );
    check(
      `${name}: no page left nearly empty on ${paper.name}`,
      pages.flatMap((one, index) => (one.words.length < 20 ? [`page ${index + 1} has ${one.words.length} words`] : [])),
    );
  }

  // A table longer than a page: its head is printed again.
  const stretched = await page.evaluate((captions) => {
    const table = [...document.querySelectorAll('table')].find((one) =>
      captions.some((caption) => one.caption?.textContent.startsWith(caption)),
    );
    const body = table?.tBodies[0];
    for (let count = 0; body && count < 90; count++) body.append(body.rows[0].cloneNode(true));
    return table?.tHead?.textContent ?? '';
  }, Object.keys(LONG_TABLES));
  const long = join(scratch, `${name}-long.pdf`);
  await page.pdf({ path: long, format: 'A4' });
  const [, mark] = Object.entries(LONG_TABLES).find(([, word]) => stretched.includes(word)) ?? [];
  const heads = wordsOf(long).filter((one) => one.words.some((word) => word.text === mark)).length;
  check(`${name}: table heads repeated`, heads >= 3 ? [] : [`a table over 3 pages has its head on ${heads}`]);
  await context.close();
}

function missing(wanted, printed) {
  const counts = (text) => [...text].reduce((held, letter) => held.set(letter, (held.get(letter) ?? 0) + 1), new Map());
  const there = counts(printed);
  return [...counts(wanted)]
    .filter(([letter, number]) => (there.get(letter) ?? 0) < number)
    .map(([letter, number]) => `${letter}: ${number} in the tables, ${there.get(letter) ?? 0} on paper`);
}

if (!existsSync(CHROMIUM)) {
  console.error(`no browser at ${CHROMIUM}`);
  process.exit(2);
}
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
try {
  const sheets = [
    ...sheetsUnder(files).map((path) => ({
      path,
      name: relative(files, path)
        .replace(/(?:shop-sheet)?\.html$/u, '')
        .replaceAll('/', '-')
        .replace(/-$/u, ''),
    })),
    ...sheetsUnder(makeHostile()).map((path) => ({ path, name: 'hostile' })),
  ];
  check('there are sheets to check', sheets.length > 1 ? [] : ['none found']);
  for (const { path, name } of sheets) await checkSheet(browser, path, name);
} finally {
  await browser.close();
  rmSync(scratch, { recursive: true, force: true });
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
