// The page while a radius is dragged, in real Chromium: every starter, by hand, for a laser and for a router. A change is counted whole: all script, style and layout on
// the page's main thread from the change until its answer stands on the screen and its picture is drawn (Chromium's own sums), and beside it all that thread worked, the
// browser's painting too (processor time); then the same with the processor held to a quarter, as a phone's; the memory of many changes; and how long a frame takes while the
// picture is turned. Run by `npm run bench`.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const CHANGES = Number(process.env.BENCH_CHANGES ?? 2000);
/** Values dragged through, and those of them that only warm it up. */
const [VALUES, SLOW, WARM] = [40, 15, 15];

if (!existsSync(CHROMIUM)) {
  console.log('SKIPPED: the page needs Chromium');
} else {
  const scratch = mkdtempSync(join(tmpdir(), 'bench-'));
  const starters = readdirSync('templates')
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => join('templates', name));
  spawnSync(process.execPath, ['test/outside/for_tool.mjs', scratch, ...starters], { stdio: 'inherit' });
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: [
      ...['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
      ...['--no-first-run', '--enable-precise-memory-info', '--js-flags=--expose-gc'],
    ],
  });
  try {
    const only = process.argv[2] ?? '';
    const jobs = [...starters, ...readdirSync(scratch).map((name) => join(scratch, name))];
    for (const job of jobs.filter((name) => name.includes(only))) await drags(browser, job);
    await memory(browser, 'templates/tapered-curve.yaml');
    await turning(browser, 'templates/tapered-curve.yaml');
  } finally {
    await browser.close();
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** The page with a job, once its picture and its worker are there. */
async function open(browser, job, viewport = { width: 1300, height: 900 }) {
  const page = await browser.newPage({ viewport });
  await page.addInitScript(() => {
    localStorage.setItem('bendbuck.tour', 'shown');
    globalThis.answers = 0;
    const Plain = Worker;
    globalThis.Worker = class extends Plain {
      set onmessage(hear) {
        super.onmessage = (event) => {
          globalThis.answers++;
          hear(event);
        };
      }
      get onmessage() {
        return super.onmessage;
      }
    };
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    /** Types a value and waits until what follows from it is drawn. */
    globalThis.put = async (value) => {
      const input = document.getElementById('bend.radius.to');
      const heard = globalThis.answers;
      input.value = value;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      while (globalThis.answers === heard) await new Promise((done) => setTimeout(done, 1));
      await frame();
      await frame();
      await new Promise((done) => setTimeout(done));
    };
  });
  await page.goto(
    `${pathToFileURL(resolve('dist/bendbuck.html')).href}#job=${encodeURIComponent(readFileSync(job, 'utf8'))}`,
  );
  await page.waitForSelector('form-look canvas');
  await page.waitForFunction(() => globalThis.answers > 0);
  return page;
}

async function drags(browser, job) {
  const page = await open(browser, job);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const worked = async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    const sum = (...names) =>
      metrics.reduce((ms, { name, value }) => ms + (names.includes(name) ? 1000 * value : 0), 0);
    return { own: sum('ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration'), all: sum('ThreadTime') };
  };
  const first = parseFloat(await page.inputValue('[id="bend.radius.to"]'));
  const drag = async (count, from) => {
    const taken = [];
    for (let step = 0; step < count; step++) {
      const value = String(Number((first * (1 + 0.002 * (from + step))).toFixed(3)));
      const before = await worked();
      await page.evaluate((typed) => globalThis.put(typed), value);
      const after = await worked();
      taken.push({ own: after.own - before.own, all: after.all - before.all });
    }
    return taken;
  };
  await drag(WARM, 1);
  const plain = await drag(VALUES, 1 + WARM);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const slow = await drag(SLOW, 1 + WARM + VALUES);
  await page.close();
  const at = (taken, kind, share) => {
    const times = taken.map((one) => one[kind]).sort((a, b) => a - b);
    return times[Math.floor(share * (times.length - 1))].toFixed(1);
  };
  console.log(
    `page ${basename(job, '.yaml')}, a radius dragged through ${plain.length} values: median ${at(plain, 'own', 0.5)} ms, 95 % under ${at(plain, 'own', 0.95)} ms (wanted: 16 and 33), with painting ${at(plain, 'all', 0.5)} ms; held to a quarter ${at(slow, 'own', 0.5)} ms (wanted: 60), with painting ${at(slow, 'all', 0.5)} ms`,
  );
}

/** What many changes leave in memory. */
async function memory(browser, job) {
  const page = await open(browser, job);
  const session = await page.context().newCDPSession(page);
  const many = (count) =>
    page.evaluate(async (wanted) => {
      for (let step = 0; step < wanted; step++) {
        const input = document.getElementById('bend.radius.to');
        input.value = String(45 + ((step * 0.1) % 20));
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await new Promise((done) => setTimeout(done, 6));
      }
      await globalThis.put('50');
    }, count);
  const held = async () => {
    await session.send('HeapProfiler.collectGarbage');
    return page.evaluate(() => performance.memory.usedJSHeapSize / 1e6);
  };
  await many(Math.round(CHANGES / 4));
  const before = await held();
  await many(CHANGES);
  const after = await held();
  await page.close();
  console.log(`page, memory: ${before.toFixed(1)} MB, after ${CHANGES} more changes ${after.toFixed(1)} MB`);
}

/** How long a frame takes while the picture, 800 × 600, is turned; drawn by a processor where there is no graphics card. */
async function turning(browser, job) {
  const page = await open(browser, job);
  const { frames, size } = await page.evaluate(async () => {
    const look = document.querySelector('form-look');
    Object.assign(look.style, { position: 'fixed', left: 0, top: 0, width: '800px', height: '600px', zIndex: 9 });
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    for (let wait = 0; wait < 30; wait++) await frame();
    const frames = [];
    let last = await frame();
    for (let turn = 0; turn < 120; turn++) {
      look.dispatchEvent(new globalThis.KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      const now = await frame();
      frames.push(now - last);
      last = now;
    }
    const canvas = look.querySelector('canvas');
    return { frames: frames.slice(10).sort((a, b) => a - b), size: `${canvas.width} × ${canvas.height}` };
  });
  await page.close();
  const middle = frames[Math.floor(frames.length / 2)];
  console.log(
    `picture turned, ${size}: a frame each ${middle.toFixed(1)} ms in the median, ${(1000 / middle).toFixed(0)} a second, 95 % under ${frames[Math.floor(0.95 * frames.length)].toFixed(1)} ms (wanted: 60 a second)`,
  );
}
