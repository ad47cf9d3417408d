// The page in real Chromium: node test/outside/check_page.mjs FOLDER [ONLY] [PANELS], where FOLDER holds what `make` wrote for each starter, by its
// name, PANELS the same for the starter panels; ONLY checks whose names hold it are run.
// Each starter loads, every input can be edited, every download is what `make` writes, by keyboard alone, with axe's eyes; nothing is
// fetched from anywhere and nothing complains. Ends with "N passed, N failed".
import { createRequire } from 'node:module';
import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { unzipSync } from 'fflate';
import { chromium } from 'playwright-core';
import { checkPanels } from './page_panels.mjs';

const made = resolve(process.argv[2] ?? 'out');
const page = pathToFileURL(resolve('dist/bendbuck.html')).href;
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const starters = readdirSync('templates')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => basename(name, '.yaml'));
const folder = mkdtempSync(join(tmpdir(), 'page-check-'));
let [passed, failed] = [0, 0];

const only = process.argv[3];

async function check(name, run) {
  if (only && !name.includes(only)) return;
  report(await outcome(name, run));
}

/** The same check of several, side by side as most of their time is waiting, told of in their order. */
async function checkEach(all, nameOf, run) {
  const asked = all.filter((one) => !only || nameOf(one).includes(only));
  const outcomes = await Promise.all(asked.map((one) => outcome(nameOf(one), () => run(one))));
  outcomes.forEach(report);
}

function report({ good, lines }) {
  if (good) passed++;
  else failed++;
  console.log(lines.join('\n'));
}

/** Whether a check holds, and what is to be told of it. */
async function outcome(name, run) {
  const lines = [];
  const began = performance.now();
  try {
    // A browser that stalls on a busy machine gets a second chance, and it is said; a wrong answer gets none.
    await run().catch((problem) => {
      if (!/Timeout .* exceeded/.test(String(problem.message))) throw problem;
      lines.push(`     ${name}: the browser stalled, once more`);
      return run();
    });
    return { good: true, lines: [...lines, `ok   ${name} (${((performance.now() - began) / 1000).toFixed(0)} s)`] };
  } catch (problem) {
    const said = String(problem.message ?? problem)
      .split('\n')
      .slice(0, 6)
      .join(' | ');
    return { good: false, lines: [...lines, `FAIL ${name}: ${said}`] };
  }
}

function must(holds, what) {
  if (!holds) throw new Error(what);
}

const launch = () =>
  chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-quic',
    ],
  });

const browser = await launch();

/** A fresh page that counts every complaint and every request that is not the page's own. */
async function fresh(hash, { newcomer = false, ...options } = {}, from = browser) {
  const context = await from.newContext({ acceptDownloads: true, viewport: { width: 1300, height: 900 }, ...options });
  // Nobody new is shown round, but where that is what is looked at.
  if (!newcomer) await context.addInitScript(() => localStorage.setItem('bendbuck.tour', 'shown'));
  const tab = await context.newPage();
  const complaints = [];
  tab.on(
    'console',
    (message) =>
      ['error', 'warning'].includes(message.type()) &&
      // The software renderer's remark on screenshots.
      !message.text().includes('GPU stall due to ReadPixels') &&
      complaints.push(message.text()),
  );
  tab.on('pageerror', (problem) => complaints.push(problem.message));
  tab.on(
    'request',
    (request) => !/^(?:file|data|blob):/.test(request.url()) && complaints.push(`asked for ${request.url()}`),
  );
  await tab.goto(`${page}${hash}`);
  await tab.waitForSelector('h1');
  return { tab, complaints, close: () => context.close() };
}

const addressOf = (name) => `#job=${encodeURIComponent(readFileSync(`templates/${name}.yaml`, 'utf8'))}`;
const fieldIds = (tab) =>
  tab.$$eval('main input[id]:not([type=range]), main select[id]', (all) => all.map(({ id }) => id));
const byId = (id) => `[id="${id}"]`;

async function download(tab, start) {
  const [saved] = await Promise.all([tab.waitForEvent('download', { timeout: 60_000 }), start()]);
  const path = join(
    folder,
    `${passed}-${failed}-${Math.abs(hashOf(saved.suggestedFilename() + Math.imul(passed, 31)))}-${saved.suggestedFilename()}`,
  );
  await saved.saveAs(path);
  return readFileSync(path);
}

/** Whether something comes to hold within ten seconds, or so many: the page settles after each change, not during it, and has the machine for itself alone never. */
async function soon(holds, seconds = 10) {
  for (let wait = 0; wait < 50 * seconds; wait++) {
    if (await holds()) return true;
    await new Promise((done) => setTimeout(done, 20));
  }
  return false;
}

function hashOf(text) {
  return [...text].reduce((sum, character) => (sum * 31 + character.charCodeAt(0)) | 0, 7);
}

/** The files `make` wrote for a starter, by path. */
function madeFiles(name) {
  const [job] = readdirSync(join(made, name));
  const root = join(made, name, job);
  const paths = readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1));
  return new Map(
    paths.filter((path) => path !== 'bendbuck.json').map((path) => [path, readFileSync(join(root, path))]),
  );
}

/** How many colours a PNG holds. */
function coloursIn(tab, png) {
  return tab.evaluate(
    async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [image.width, image.height];
      const context = canvas.getContext('2d');
      context.drawImage(image, 0, 0);
      return new Set(new Uint32Array(context.getImageData(0, 0, image.width, image.height).data.buffer)).size;
    },
    `data:image/png;base64,${png.toString('base64')}`,
  );
}

for (const name of starters) {
  await check(`${name}: loads without a complaint, nothing fetched`, async () => {
    const { tab, complaints, close } = await fresh(addressOf(name));
    must((await tab.$$('.parts li')).length > 3, 'no part drawings');
    // What is seen of the picture, whichever way it is drawn: far more colours than an empty one has.
    const seen = await (await tab.waitForSelector('form-look, .does > canvas')).screenshot();
    must((await coloursIn(tab, seen)) > 20, 'the picture is empty');
    must((await tab.$$('.wrong')).length === 0, 'a field is marked wrong');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });

  await check(`${name}: the zip holds byte for byte what make writes, and the job`, async () => {
    const { tab, complaints, close } = await fresh(addressOf(name));
    const entries = unzipSync(await download(tab, () => tab.click('button.main')));
    const wanted = madeFiles(name);
    must(
      Object.keys(entries)
        .filter((path) => path !== 'job.yaml')
        .sort()
        .join() === [...wanted.keys()].sort().join(),
      `other files: ${Object.keys(entries).join(', ')}`,
    );
    for (const [path, bytes] of wanted) must(bytes.equals(Buffer.from(entries[path])), `${path} differs`);
    must('job.yaml' in entries, 'no job file');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });
}

await check('every single file taken alone is what make writes', async () => {
  const name = 'tapered-curve';
  const { tab, complaints, close } = await fresh(addressOf(name));
  await tab.click('text=List the files');
  await tab.waitForSelector('.files button');
  const wanted = madeFiles(name);
  const paths = await tab.$$eval('.files button', (all) => all.map((button) => button.dataset.path));
  must(paths.length === wanted.size, `${paths.length} files listed, ${wanted.size} made`);
  must(complaints.length === 0, complaints.join('; '));
  await close();
  // Chromium at times stops saving after ten files in a row: a fresh one for every six.
  for (let from = 0; from < paths.length; from += 6) {
    const other = await launch();
    const part = await fresh(addressOf(name), {}, other);
    await part.tab.click('text=List the files');
    await part.tab.waitForSelector('.files button');
    for (const path of paths.slice(from, from + 6)) {
      must(
        (wanted.get(path) ?? Buffer.alloc(0)).equals(
          await download(part.tab, () => part.tab.click(`.files button[data-path="${path}"]`)),
        ),
        `${path} differs`,
      );
    }
    must(part.complaints.length === 0, part.complaints.join('; '));
    await other.close();
  }
});

await checkEach(
  starters,
  (name) => `${name}: every input can be edited, says what is wrong, and undone`,
  async (name) => {
    const { tab, complaints, close } = await fresh(addressOf(name));
    await tab.$$eval('details', (all) => all.forEach((one) => (one.open = true)));
    for (const id of await fieldIds(tab)) {
      const field = await tab.$(byId(id));
      const before = await field.inputValue();
      const address = await tab.evaluate(() => location.hash);
      if ((await field.evaluate((node) => node.tagName)) === 'SELECT') {
        const other = await field.$$eval(
          'option',
          (all, now) => all.map(({ value }) => value).find((value) => value !== now),
          before,
        );
        await field.selectOption(other);
      } else {
        await field.fill('1/0 furlongs');
        const marked = () =>
          field.evaluate(
            (node) =>
              node.getAttribute('aria-invalid') === 'true' &&
              document.getElementById(node.getAttribute('aria-describedby'))?.textContent !== '',
          );
        must(await soon(marked), `${id} is not marked wrong`);
      }
      must(
        await soon(async () => (await tab.evaluate(() => location.hash)) !== address),
        `${id} does not change the address`,
      );
      await tab.keyboard.press('Control+z');
      must(await soon(async () => (await (await tab.$(byId(id))).inputValue()) === before), `${id} is not undone`);
      await tab.keyboard.press('Control+y');
      must(await soon(async () => (await tab.evaluate(() => location.hash)) !== address), `${id} is not done again`);
      await tab.keyboard.press('Control+z');
      must(
        await soon(async () => (await tab.evaluate(() => location.hash)) === address),
        `${id}: the address is not restored`,
      );
    }
    must(complaints.length === 0, complaints.join('; '));
    await close();
  },
);

await check('a wrong entry keeps the last good form, greyed, and a finding leads to its field', async () => {
  const { tab, close } = await fresh(addressOf('plain-curve'));
  await tab.fill(byId('bend.angle'), '165');
  must(await soon(async () => (await tab.$('.does.stale')) !== null), 'the form is not greyed');
  must(await tab.isDisabled('button.main'), 'files are offered for a wrong job');
  await tab.click('.findings button.link');
  must(
    (await tab.evaluate(() => document.activeElement?.id)) === 'bend.angle',
    'the finding does not lead to its field',
  );
  await close();
});

/** All that a page says to those who look, point or listen: its text, with every fold opened, and what stands in attributes. Choices are left out: boards, screws and starters of either unit are offered. */
function wordsOn(tab) {
  return tab.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    const said = [];
    const walk = (node) => {
      if (node.nodeType === Node.TEXT_NODE) said.push(node.data);
      if (node.nodeType === Node.TEXT_NODE || ['SCRIPT', 'STYLE', 'TEXTAREA', 'OPTION'].includes(node.tagName)) return;
      for (const name of ['title', 'aria-label', 'aria-description', 'placeholder', 'alt'])
        if (node.hasAttribute?.(name)) said.push(node.getAttribute(name));
      if (node.shadowRoot) walk(node.shadowRoot);
      for (const one of node.childNodes) walk(one);
    };
    walk(document.body);
    return said;
  });
}

const inch = readFileSync('templates/plain-curve-inch.yaml', 'utf8');
const metric = readFileSync('templates/tapered-curve.yaml', 'utf8');
const hood = readFileSync('templates/panels/hood-side.yaml', 'utf8');
const tray = readFileSync('templates/panels/tray.yaml', 'utf8');
const inchJobs = [
  inch,
  `${inch}\ncut: { with: router }\n`,
  `${inch.replace('mdf-3/4', 'mdf-1/4')}\ncut: { with: laser }\n`,
  inch.replace(/radius: .*/u, 'radius: 999'),
  inch.replace(/thickness: .*/u, 'thickness: 0.6'),
  hood,
  `${hood}\ncut: { with: router }\n`,
];
const metricJobs = [metric, `${metric}\ncut: { with: laser }\n`, metric.replace(/radius: .*/u, 'radius: 9999'), tray];
/** Texts of jobs, and what none of their pages' words may be. */
const OTHER_UNIT = [
  ...inchJobs.map((text) => ({ text, other: /\bmm\b|\d\s?N\b|\bkg\b/u })),
  ...metricJobs.map((text) => ({ text, other: /\d\s?(?:in|lbf|lb)\b/u })),
];

await checkEach(
  OTHER_UNIT,
  ({ text }) => `says nothing in the other unit: ${/title: (.*)/u.exec(text)[1]}, ${text.length} letters`,
  async ({ text, other }) => {
    const { tab, close } = await fresh(`#job=${encodeURIComponent(text)}`);
    const said = async () => (await wordsOn(tab)).filter((words) => words.trim() !== '');
    must(
      await soon(async () => (await said()).some((words) => /\d\s(?:mm|in)\b/u.test(words)), 30),
      'no measure is said',
    );
    // The panel's answer comes a moment after its fields.
    await tab.waitForSelector('.know dl, .findings', { timeout: 60_000 });
    must((await said()).length > 250, 'hardly a word is said');
    const wrong = (await said()).filter((words) => other.test(words));
    must(wrong.length === 0, wrong.join(' | '));
    await close();
  },
);

await check('a link reproduces the job', async () => {
  const first = await fresh(addressOf('plain-curve-inch'));
  await first.tab.fill(byId('bend.radius.to'), '2-1/4');
  must(
    await soon(async () => (await first.tab.evaluate(() => location.hash)).includes('2-1')),
    'the address lacks the radius',
  );
  const hash = await first.tab.evaluate(() => location.hash);
  const second = await fresh(hash);
  must((await second.tab.inputValue(byId('bend.radius.to'))) === '2-1/4', 'the radius is lost');
  must((await second.tab.textContent('dl')) === (await first.tab.textContent('dl')), 'other numbers');
  await first.close();
  await second.close();
});

await check('what is no job file is refused with its line, and what was here is kept', async () => {
  const { tab, close } = await fresh(addressOf('plain-curve'));
  await tab.fill(byId('title'), 'Kept as it was');
  const hash = await tab.evaluate(() => location.hash);
  const png = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
  for (const [name, buffer, says] of [
    ['doubled.yaml', Buffer.from('title: a\ntitle: b\n'), /doubled\.yaml was not opened: line 2: /],
    ['open.yaml', Buffer.from('title: a\nbend: { angle: 90\n'), /open\.yaml was not opened: line 3: /],
    ['alias.yaml', Buffer.from('title: &x a\nunits: *x\n'), /alias\.yaml was not opened: line 1: /],
    ['picture.yaml', png, /picture\.yaml was not opened: line 1, character 1: .*UTF-8/],
  ]) {
    await tab.setInputFiles('input[type=file]', { name, mimeType: 'text/plain', buffer });
    must(await soon(async () => says.test((await tab.textContent('header')) ?? '')), `${name} is not refused`);
    must((await tab.inputValue(byId('title'))) === 'Kept as it was', `${name} took the old draft away`);
  }
  must((await tab.evaluate(() => location.hash)) === hash, 'the address changed');
  await tab.setInputFiles('input[type=file]', 'templates/thick-steel.yaml');
  must(await soon(async () => (await tab.$('header [role=alert]')) === null), 'the refusal stays');
  await close();
  const bad = await fresh(`#job=${encodeURIComponent('title: a\ntitle: b\n')}`);
  must(/line 2/.test((await bad.tab.textContent('header')) ?? ''), 'a bad address is not told of');
  await bad.close();
});

await check('what is typed is in the address at once: a reload keeps it', async () => {
  const { tab, close } = await fresh(addressOf('plain-curve'));
  await tab.fill(byId('title'), 'Typed and reloaded');
  await tab.evaluate(() => location.reload());
  await tab.waitForSelector('h1');
  must(await soon(async () => (await tab.inputValue(byId('title'))) === 'Typed and reloaded'), 'it is lost');
  await close();
});

await check('files that cannot be made are told of', async () => {
  const { tab, close } = await fresh(addressOf('plain-curve'));
  await tab.evaluate(() => {
    globalThis.TextEncoder = class {
      encode() {
        throw new Error('told to fail');
      }
    };
  });
  await tab.click('button.main');
  must(
    await soon(async () => /No files were made.*told to fail/.test((await tab.textContent('.take')) ?? '')),
    'a failed make is swallowed',
  );
  await close();
});

await check('by keyboard alone, from an empty page to the zip', async () => {
  const { tab, complaints, close } = await fresh('#job=');
  const typed = {
    title: 'Keyboard tray edge',
    'sheet.material': 'aluminium-3003-h14',
    'sheet.thickness': '1.2',
    'bend.angle': '80',
    'bend.length': '400',
    'bend.radius.from': '40',
    'bend.radius.to': '44',
    'bend.legs.held': '40',
    'bend.legs.free': '120',
  };
  const left = new Set(Object.keys(typed));
  for (let step = 0; step < 200; step++) {
    await tab.keyboard.press('Tab');
    const at = await tab.evaluate(() => ({
      id: document.activeElement?.id ?? '',
      tag: document.activeElement?.tagName,
      text: document.activeElement?.textContent,
      choices: [...(document.activeElement?.options ?? [])].map(({ value }) => value),
      chosen: document.activeElement?.selectedIndex ?? -1,
    }));
    if (left.has(at.id)) {
      left.delete(at.id);
      if (at.tag === 'SELECT')
        for (let move = at.chosen; move < at.choices.indexOf(typed[at.id]); move++)
          await tab.keyboard.press('ArrowDown');
      else await tab.keyboard.type(typed[at.id]);
    }
    if (at.tag === 'CANVAS') await tab.keyboard.press('ArrowLeft');
    if (at.text === 'Everything, one zip') break;
  }
  must(left.size === 0, `never reached: ${[...left].join(', ')}`);
  const entries = unzipSync(await download(tab, () => tab.keyboard.press('Enter')));
  must('parts/spine.dxf' in entries, 'no spine in the zip');
  must(complaints.length === 0, complaints.join('; '));
  await close();
});

for (const [where, options] of [
  ['desktop, light', {}],
  ['desktop, dark', { colorScheme: 'dark' }],
  ['phone, light', { viewport: { width: 390, height: 844 } }],
  ['phone, dark', { viewport: { width: 390, height: 844 }, colorScheme: 'dark' }],
]) {
  await check(`axe finds nothing serious: ${where}`, async () => {
    const { tab, close } = await fresh(addressOf('tapered-curve'), { ...options, bypassCSP: true });
    await tab.$$eval('details', (all) => all.forEach((one) => (one.open = true)));
    await tab.fill(byId('effort.safety'), 'strong');
    await tab.evaluate(axe);
    const { violations } = await tab.evaluate(() => globalThis.axe.run());
    const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
    must(
      serious.length === 0,
      serious
        .map(
          ({ id, nodes }) =>
            `${id}: ${nodes
              .slice(0, 3)
              .map((node) => node.html.slice(0, 90))
              .join(' ')}`,
        )
        .join('; '),
    );
    must(await tab.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'the page scrolls sideways');
    await close();
  });
}

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** What axe finds serious on a page as it stands. */
async function seriousOn(tab) {
  await tab.evaluate(axe);
  const { violations } = await tab.evaluate(() => globalThis.axe.run());
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 90)}`);
}

/** The words a drawing shows, with how high they stand on the screen, px, whichever way they run. */
const shownWords = (tab) =>
  tab.$$eval('.stage text', (all) =>
    all
      .filter((text) => text.getAttribute('visibility') !== 'hidden')
      .map((text) => {
        const { left, top, width, height } = text.getBoundingClientRect();
        return { text: text.textContent, x: left + width / 2, y: top + height / 2, high: Math.min(width, height) };
      }),
  );

for (const [where, options] of [
  ['desktop', {}],
  ['phone', PHONE],
  ['phone, dark', { ...PHONE, colorScheme: 'dark' }],
]) {
  await check(`drawings: every one is seen, its words to be read however near, ${where}`, async () => {
    const { tab, complaints, close } = await fresh(addressOf('tapered-curve'), { ...options, bypassCSP: true });
    await tab.click('text=Look at the drawings');
    await tab.waitForSelector('.stage > g');
    // The pages to print come a moment later.
    await tab.waitForSelector('.viewer optgroup[label="Pages of templates.pdf"] option', { state: 'attached' });
    const names = await tab.$$eval('.viewer option', (all) => all.map(({ textContent }) => textContent));
    const wanted = [
      /^Spine$/,
      /^Spine, to cut$/,
      /^Station S1$/,
      /^Backing station/,
      /full size/,
      /^Angle gauge/,
      /^Blank/,
      /^Page 1 of \d+: Read this first$/,
    ];
    for (const name of wanted)
      must(
        names.some((one) => name.test(one)),
        `no drawing ${name}`,
      );
    for (let index = 0; index < names.length; index++) {
      const drawn = await tab.$$eval('.stage path', (all) => all.length);
      must(drawn > 0, `${names[index]} is empty`);
      for (const key of ['+', '+', '-', '-', '-', '0']) await tab.press('.stage', key);
      const isPaper = names[index].startsWith('Page ');
      for (const { text, high } of await shownWords(tab))
        must(isPaper || high >= 9, `${names[index]}: ${text} is ${high} px high`);
      if (index < names.length - 1) await tab.click('[aria-label="The next drawing"]');
    }
    must(await tab.isDisabled('[aria-label="The next drawing"]'), 'there are more drawings than names');
    const serious = await seriousOn(tab);
    must(serious.length === 0, serious.join('; '));
    await tab.keyboard.press('Escape');
    must(await soon(async () => (await tab.$('.viewer')) === null), 'it does not close');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });
}

await check('drawings: moved and drawn nearer by wheel, mouse, keys and two fingers', async () => {
  const { tab, close } = await fresh(addressOf('tapered-curve'), PHONE);
  await tab.click('text=Look at the drawings');
  await tab.waitForSelector('.stage > g');
  const place = () => tab.$eval('.stage > g', (group) => group.getAttribute('transform'));
  const changes = async (what, act) => {
    const before = await place();
    await act();
    must(await soon(async () => (await place()) !== before), `${what} does nothing`);
  };
  const scale = async () => Number(/scale\((.*)\)/.exec(await place())[1]);
  await changes('an arrow key', () => tab.press('.stage', 'ArrowRight'));
  await changes('plus', () => tab.press('.stage', '+'));
  await tab.mouse.move(200, 400);
  await changes('the wheel', () => tab.mouse.wheel(0, -200));
  await changes('dragging', async () => {
    await tab.mouse.down();
    await tab.mouse.move(240, 440, { steps: 3 });
    await tab.mouse.up();
  });
  await tab.tap('.viewer button:has-text("Whole")');
  const before = await scale();
  const touch = await tab.context().newCDPSession(tab);
  const fingers = (type, apart) =>
    touch.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: apart === null ? [] : [200 - apart, 200 + apart].map((x, id) => ({ x, y: 400, id })),
    });
  await fingers('touchStart', 30);
  await fingers('touchMove', 60);
  await fingers('touchMove', 90);
  await fingers('touchEnd', null);
  must(await soon(async () => (await scale()) > 2 * before), `two fingers: ${before} became ${await scale()}`);
  await close();
});

await check('drawings: a dimension tapped, or chosen from the list, is on the clipboard', async () => {
  const { tab, close } = await fresh(addressOf('tapered-curve'), {
    ...PHONE,
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  await tab.click('[aria-label="Look at Spine"]');
  await tab.waitForSelector('.stage text');
  const word = (await shownWords(tab)).find(({ text }) => /^S2 .*±/.test(text));
  await tab.touchscreen.tap(word.x, word.y);
  const held = () => tab.evaluate(() => navigator.clipboard.readText());
  must(await soon(async () => (await held()) === word.text), `the clipboard holds ${await held()}`);
  await tab.tap('.dimensions summary');
  await tab.focus('.dimensions li:last-child button');
  await tab.keyboard.press('Enter');
  const last = await tab.textContent('.dimensions li:last-child button');
  must(await soon(async () => (await held()) === last), `the clipboard holds ${await held()}, not ${last}`);
  await close();
});

await check('bench: one step a screen, ticked off, still so after a reload, fresh for another job', async () => {
  const { tab, complaints, close } = await fresh(addressOf('tapered-curve'), { ...PHONE, bypassCSP: true });
  await tab.click('text=At the bench');
  await tab.waitForSelector('.bench .step h2');
  const heading = () => tab.textContent('.bench h2');
  const titles = await tab.$$eval('.bench option', (all) => all.map(({ textContent }) => textContent));
  must(/Cut/.test(titles[0]) && titles.some((title) => /Pull round/.test(title)), titles.join(', '));
  for (const title of titles) {
    must(await soon(async () => (await heading()) === title), `not at ${title}`);
    must((await tab.$$('.bench .lines input')).length > 0, `${title}: nothing to tick`);
    must(await tab.$eval('.bench .step', (step) => step.scrollWidth <= step.clientWidth), `${title} scrolls sideways`);
    if (title !== titles.at(-1)) await tab.click('.bench button.main');
  }
  const pull = titles.findIndex((title) => /Pull round/.test(title));
  await tab.selectOption('.bench select', String(pull));
  must(await soon(async () => (await heading()) === titles[pull]), 'the list does not lead to the step');
  must(/°/.test(await tab.textContent('.bench dd')), 'no wrap in large figures');
  must((await tab.$('.bench .picture svg path')) !== null, 'no picture');
  must(/stores energy/.test(await tab.textContent('.bench .step')), 'no caution');
  const serious = await seriousOn(tab);
  must(serious.length === 0, serious.join('; '));
  await tab.focus('.bench .lines li:nth-child(2) input');
  await tab.keyboard.press('Space');
  // Chromium hands what a page keeps to its other processes a moment later: a reload within it may not see it.
  await tab.waitForTimeout(1000);
  await tab.reload();
  await tab.waitForSelector('.bench .step h2');
  must(await soon(async () => (await heading()) === titles[pull]), `the step is lost: ${await heading()}`);
  const ticks = await tab.$$eval('.bench .lines input', (all) => all.map(({ checked }) => checked));
  must(ticks[1] === true && ticks.filter(Boolean).length === 1, `ticked: ${ticks.join()}`);
  await tab.keyboard.press('Escape');
  must(await soon(async () => (await tab.$('.bench')) === null), 'it does not close');
  await tab.fill(byId('bend.angle'), '84');
  await tab.click('text=At the bench');
  await tab.waitForSelector('.bench .step h2');
  must((await heading()) === titles[0], 'another job begins at an old step');
  must(complaints.length === 0, complaints.join('; '));
  await close();
});

await check(
  'a job file dropped on the page is opened, anything else is refused in words; the tab says the title',
  async () => {
    const { tab, close } = await fresh(addressOf('plain-curve'));
    const drop = (name, text) =>
      tab.evaluate(
        ([name, text]) => {
          const dataTransfer = new DataTransfer();
          dataTransfer.items.add(new File([text], name));
          document.body.dispatchEvent(new DragEvent('dragover', { dataTransfer, bubbles: true, cancelable: true }));
          document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
        },
        [name, text],
      );
    await drop(
      'my.yaml',
      readFileSync('templates/thick-steel.yaml', 'utf8').replace(/^title:.*$/m, 'title: Dropped guard'),
    );
    must(await soon(async () => (await tab.title()).startsWith('Dropped guard')), `the tab says ${await tab.title()}`);
    must((await tab.inputValue(byId('title'))) === 'Dropped guard', 'the job is not opened');
    await drop('photo.png', 'no job');
    must(
      await soon(async () => /photo\.png was not opened/.test((await tab.textContent('header')) ?? '')),
      'nothing is said',
    );
    must((await tab.inputValue(byId('title'))) === 'Dropped guard', 'the job is lost');
    await close();
  },
);

await check(
  'a job pinned: what was changed, what follows and what it takes stand beside it; the two are swapped',
  async () => {
    const { tab, complaints, close } = await fresh(addressOf('plain-curve'));
    await tab.click('.beside button');
    const rows = () =>
      tab.$$eval('.beside tbody tr:has(td)', (all) =>
        all.map((row) => [...row.children].map((cell) => cell.textContent)),
      );
    must(
      await soon(async () => (await rows()).some(([name]) => name === 'Pages to print')),
      'what it takes is not said',
    );
    must(
      (await rows()).every(([, , now]) => now === 'the same'),
      'a job differs from itself',
    );
    await tab.fill(byId('bend.radius.from'), '60');
    must(
      await soon(async () =>
        (await rows()).some(
          ([name, pinned, now]) => name === 'Inside radius at end A' && pinned === '38.1' && now === '60',
        ),
      ),
      'the change is not shown',
    );
    must(
      (await rows()).some(([name, , now]) => name === 'Form radius, A / B' && now !== 'the same'),
      'what follows is not shown',
    );
    await tab.click('.beside button');
    must((await tab.inputValue(byId('bend.radius.from'))) === '38.1', 'not swapped');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  },
);

await check('a newcomer is shown round once, by mouse or keyboard, and again when asked', async () => {
  const { tab, complaints, close } = await fresh('', { newcomer: true });
  must((await tab.textContent('.tour h2'))?.startsWith('1 of 3'), 'nobody is shown round');
  must((await tab.$$('.tour svg path')).length > 10, 'no picture of a finished part');
  must((await seriousOn(tab)).length === 0, `axe: ${(await seriousOn(tab)).join('; ')}`);
  await tab.click('.tour button.main');
  must(await tab.$eval('section.does', (section) => section.classList.contains('shown-now')), 'the form is not shown');
  await tab.keyboard.press('Tab');
  await tab.keyboard.press('Tab');
  await tab.keyboard.press('Enter');
  must((await tab.textContent('.tour h2'))?.startsWith('3 of 3'), 'the keyboard does not go on');
  await tab.click('.tour button:text("Done")');
  await tab.reload();
  await tab.waitForSelector('h1');
  must((await tab.$('.tour')) === null, 'shown round again unasked');
  await tab.click('nav button:text("Show me round")');
  must((await tab.$('.tour')) !== null, 'not shown round when asked');
  must(complaints.length === 0, complaints.join('; '));
  await close();
});

await check('another unit writes the lengths anew and keeps the part', async () => {
  const { tab, close } = await fresh(addressOf('plain-curve'));
  await tab.selectOption(byId('units'), 'in');
  const said = await Promise.all(
    ['bend.length', 'bend.radius.from', 'sheet.thickness'].map((id) => tab.inputValue(byId(id))),
  );
  must(said.join() === '18,1-1/2,1/32', `the lengths are ${said.join()}`);
  await tab.click('button:text("Undo")');
  must((await tab.inputValue(byId('bend.length'))) === '457.2', 'not one step back');
  await close();
});

await check('a job opened by the command line is followed on disk, and its comments are kept', async () => {
  const path = join(folder, 'followed.yaml');
  const text = readFileSync('templates/plain-curve.yaml', 'utf8');
  writeFileSync(path, text);
  const server = spawn(process.execPath, ['dist/main.js', 'page', path, '--no-open']);
  try {
    const address = await new Promise((done) =>
      server.stdout.on('data', (said) => /http:\S+/.test(said) && done(/http:\S+/.exec(said)[0])),
    );
    const context = await browser.newContext({ acceptDownloads: true });
    const tab = await context.newPage();
    await tab.goto(address);
    await tab.waitForSelector('h1');
    // The page has to have seen the file once before it can tell that it was changed.
    await tab.waitForResponse((response) => response.url().endsWith('/job.yaml'));
    writeFileSync(path, text.replace('457.2', '500'));
    must(await soon(async () => (await tab.inputValue(byId('bend.length'))) === '500'), 'the change is not taken in');
    await tab.fill(byId('bend.length'), '502');
    writeFileSync(path, text.replace('457.2', '510'));
    must(
      await soon(async () => /changed on disk/.test((await tab.textContent('[role=alert]')) ?? '')),
      'a change beside one of one’s own is not told',
    );
    must((await tab.inputValue(byId('bend.length'))) === '502', 'what was typed is lost');
    const saved = await download(tab, () => tab.click('.take button:text("Job file")'));
    must(String(saved) === text.replace('457.2', '502'), `saved otherwise: ${String(saved)}`);
    await context.close();
  } finally {
    server.kill();
  }
});

await check('printed, it is the shop sheet', async () => {
  const { tab, close } = await fresh(addressOf('tapered-curve'));
  await tab.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await tab.emulateMedia({ media: 'print' });
  must(!(await tab.isVisible('main')), 'the page itself is printed');
  const text = await tab.evaluate(() => document.querySelector('.paper').shadowRoot.textContent);
  must(/Step by step/.test(text) && /Rowing-skiff splash coaming/.test(text), 'no shop sheet');
  await close();
});

await checkPanels({
  ...{ check, must, fresh, download, seriousOn, soon, coloursIn },
  panels: resolve(process.argv[4] ?? join(made, 'panels')),
  phone: PHONE,
});

await browser.close();
rmSync(folder, { recursive: true, force: true });
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
