// The README's two pictures of the page, taken anew from dist/bendbuck.html by the Chromium that is installed: `npm run screenshots`.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const SIZE = { width: 1120, height: 660 };

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-background-networking', '--no-first-run'],
});
const page = await browser.newPage({ viewport: SIZE });
await page.addInitScript(() => localStorage.setItem('bendbuck.tour', 'shown'));

/** The page with a starter, once its numbers and its picture stand. */
async function show(starter) {
  await page.goto(pathToFileURL(resolve('dist/bendbuck.html')).href);
  await page.selectOption('#starter', starter);
  await page.waitForSelector('.know dl', { timeout: 120_000 });
  await page.waitForSelector('form-look', { timeout: 30_000 });
  await page.waitForTimeout(1500);
}

await show('tapered-curve');
await page.screenshot({ path: 'shared/pictures/page-one-bend.png' });
await show('hood-side');
await page.click('[aria-label=Steps] button >> nth=1');
await page.evaluate(() => globalThis.scrollTo(0, 0));
await page.waitForTimeout(1000);
await page.screenshot({ path: 'shared/pictures/page-panel.png' });
await browser.close();
