// A whole panel on the page while a leg's length is dragged, in real Chromium: how long a change keeps the page from answering, the panel itself being worked out
// beside it; the same with the processor held to a quarter, as a phone's; how long an answer takes to be shown; and the memory of many changes. Run by `npm run bench`.
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const CHANGES = Number(process.env.BENCH_CHANGES ?? 2000);
const STARTERS = ['hood-side', 'tray'];

if (!existsSync(CHROMIUM)) {
  console.log('SKIPPED: the panel on the page needs Chromium');
} else {
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: [
      ...['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
      ...['--no-first-run', '--enable-precise-memory-info', '--js-flags=--expose-gc'],
    ],
  });
  for (const name of STARTERS) await bench(browser, name);
  await browser.close();
}

async function bench(browser, name) {
  const page = await browser.newPage({ viewport: { width: 1300, height: 900 } });
  await page.addInitScript(() => {
    localStorage.setItem('bendbuck.tour', 'shown');
    globalThis.shown = [];
    // How long the page is at an answer: from its coming to the next turn, the frame's work included.
    const Plain = Worker;
    globalThis.Worker = class extends Plain {
      set onmessage(hear) {
        super.onmessage = (event) => {
          const began = performance.now();
          hear(event);
          setTimeout(() => {
            void document.body.offsetHeight;
            globalThis.shown.push(performance.now() - began);
          });
        };
      }
      get onmessage() {
        return super.onmessage;
      }
    };
  });
  await page.goto(pathToFileURL(resolve('dist/bendbuck.html')).href);
  await page.selectOption('#starter', name);
  await page.waitForSelector('.know dl', { timeout: 60_000 });
  const session = await page.context().newCDPSession(page);
  const drag = (count) =>
    page.evaluate(async (wanted) => {
      const input = document.getElementById('bends[0].leg');
      const begin = input.value;
      const taken = [];
      globalThis.shown.length = 0;
      for (let step = 0; step < wanted; step++) {
        const began = performance.now();
        input.value = `${50 + ((step * 0.1) % 20)} mm`;
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        for (let turn = 0; turn < 20; turn++) await Promise.resolve();
        void document.body.offsetHeight;
        taken.push(performance.now() - began);
        await new Promise((done) => setTimeout(done, 4));
      }
      input.value = begin;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      for (let wait = 0; wait < 100 && globalThis.shown.length === 0; wait++)
        await new Promise((done) => setTimeout(done, 100));
      await new Promise((done) => setTimeout(done, 500));
      return { taken: taken.slice(10).sort((a, b) => a - b), shown: globalThis.shown.slice().sort((a, b) => a - b) };
    }, count);
  const say = (times, share) => (times[Math.floor(share * (times.length - 1))] ?? NaN).toFixed(1);
  const { taken, shown } = await drag(240);
  console.log(
    `panel ${name} on the page, a leg dragged through ${taken.length} values: median ${say(taken, 0.5)} ms, 95 % under ${say(taken, 0.95)} ms (wanted: 16 and 33); ${shown.length} answers shown, median ${say(shown, 0.5)} ms, longest ${say(shown, 1)} ms`,
  );
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const slow = await drag(60);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  console.log(
    `panel ${name}, the processor held to a quarter: median ${say(slow.taken, 0.5)} ms (wanted: 60); answers shown, median ${say(slow.shown, 0.5)} ms`,
  );
  const memory = async () => {
    await session.send('HeapProfiler.collectGarbage');
    return page.evaluate(() => performance.memory.usedJSHeapSize / 1e6);
  };
  await drag(Math.round(CHANGES / 4));
  const before = await memory();
  await drag(CHANGES);
  const after = await memory();
  console.log(`panel ${name}, memory: ${before.toFixed(1)} MB, after ${CHANGES} more changes ${after.toFixed(1)} MB`);
  await page.close();
}
