// Whole panels on the page, in real Chromium: part of check_page.mjs, whose hands it is given. PANELS holds what `make` wrote for each starter panel, by its name.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { unzipSync } from 'fflate';

const FOLDER = 'templates/panels';
const textOf = (name) => readFileSync(join(FOLDER, `${name}.yaml`), 'utf8');

/** Every panel starter, opened as a person does: by the list of starters. */
export const panelStarters = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => basename(name, '.yaml'));

export async function checkPanels({ check, must, fresh, download, seriousOn, soon, coloursIn, panels, phone }) {
  /** A fresh page with a starter panel, worked out. */
  const opened = async (name, options = {}) => {
    const page = await fresh('', options);
    await page.tab.selectOption('#starter', name);
    await page.tab.waitForSelector('.know dl', { timeout: 60_000 });
    return page;
  };
  const figures = (tab) => tab.textContent('.know dl');

  await check('panels: every starter is on the list', async () => {
    const { tab, close } = await fresh('');
    const listed = await tab.$$eval('#starter optgroup:last-child option', (all) => all.map(({ value }) => value));
    // An assembly is worked out by the command line alone.
    const wanted = panelStarters.filter((name) => /^(?:base|outline):/mu.test(textOf(name)));
    must(listed.sort().join() === wanted.sort().join(), `listed: ${listed.join(', ')}`);
    await close();
  });

  for (const name of panelStarters.filter((one) => /^(?:base|outline):/mu.test(textOf(one)))) {
    await check(`panels: ${name}: flat, folded step by step, each bend with its form, nothing fetched`, async () => {
      const { tab, complaints, close } = await opened(name);
      const picture = await tab.waitForSelector('[aria-labelledby=panel-does] :is(form-look, svg)');
      must((await coloursIn(tab, await picture.screenshot())) > 20, 'the picture is empty');
      must((await tab.$$('.flat svg path')).length > 0, 'no flat is drawn');
      await tab.click('text=Look at it full size');
      await tab.waitForSelector('.viewer optgroup[label="Pages of templates.pdf"] option', { state: 'attached' });
      await tab.selectOption('.viewer select', 'page-2');
      must(await soon(async () => (await tab.$$('.stage.print path')).length > 0, 10), 'an empty page');
      await tab.click('.viewer .close');
      const steps = await tab.$$eval('.steps > li', (all) => all.length);
      must(steps > 0, 'no order of work');
      for (let step = 0; step <= steps; step++) {
        await tab.click(`[aria-label=Steps] button >> nth=${step}`);
        const said = await tab.textContent('output[for=fold]');
        must(
          new RegExp(step === steps ? 'every bend made' : step === 0 ? 'flat' : `after step ${step}`).test(said),
          said,
        );
      }
      await tab.focus('#fold');
      await tab.keyboard.press('Home');
      await tab.keyboard.press('ArrowRight');
      must(/pulled/.test(await tab.textContent('output[for=fold]')), 'the slider does not pull');
      for (const bend of await tab.$$eval('[aria-label="Which bend"] button', (all) => all.map((b) => b.textContent))) {
        await tab.click(`[aria-label="Which bend"] button:text-is("${bend}")`);
        must((await tab.$$('section.cut:not(.flat) .parts li')).length > 2, `${bend}: no form`);
      }
      must((await tab.$$('.wrong')).length === 0, 'a field is marked wrong');
      must(tab.workers().length === 1, 'no worker works it out');
      must(complaints.length === 0, complaints.join('; '));
      await close();
    });

    await check(`panels: ${name}: the zip holds byte for byte what make writes`, async () => {
      const { tab, complaints, close } = await opened(name);
      const entries = unzipSync(await download(tab, () => tab.click('button.main')));
      const [job] = readdirSync(join(panels, name));
      const root = join(panels, name, job);
      const wanted = readdirSync(root, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && entry.name !== 'bendbuck.json')
        .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1));
      const beside = ['job.yaml', ...readdirSync(FOLDER).filter((file) => /\.(?:svg|dxf)$/u.test(file))];
      const got = Object.keys(entries).filter((path) => !beside.includes(path));
      must(got.sort().join() === wanted.sort().join(), `other files: ${got.join(', ')}`);
      for (const path of wanted)
        must(readFileSync(join(root, path)).equals(Buffer.from(entries[path])), `${path} differs`);
      must(Buffer.from(entries['job.yaml']).toString() === textOf(name), 'another job');
      must(complaints.length === 0, complaints.join('; '));
      await close();
    });
  }

  await check('panels: a number in a field and the job file itself take effect, and are taken back', async () => {
    const { tab, complaints, close } = await opened('tray');
    const before = await figures(tab);
    await tab.fill('[id="base.corners"]', '[[0, 0], [440, 0], [440, 260], [0, 260]]');
    must(await soon(async () => (await figures(tab)) !== before, 15), 'the field changes nothing');
    must((await tab.inputValue('#job-text')) === textOf('tray').replaceAll('[420', '[440'), 'more of the file changed');
    await tab.click('button:text-is("Undo")');
    must(await soon(async () => (await figures(tab)) === before, 15), 'it is not taken back');
    await tab.$eval('.job-text details', (one) => (one.open = true));
    await tab.fill('#job-text', textOf('tray').replaceAll('leg: 60', 'leg: 70'));
    must(await soon(async () => (await figures(tab)) !== before, 15), 'the text changes nothing');
    must((await tab.inputValue('[id="bends[0].leg"]')) === '70', 'the fields do not follow the text');
    await tab.fill('[id="bends[1].angle"]', 'ninety');
    must(
      await soon(async () => tab.isVisible('[id="bends[1].angle-says"]'), 15),
      'a wrong entry is not told at its field',
    );
    await tab.fill('[id="bends[1].angle"]', '90');
    must(await soon(async () => !(await tab.isVisible('.wrong')), 15), 'it stays wrong');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });

  await check('panels: typing goes on while the panel is worked out', async () => {
    const { tab, close } = await opened('hood-side');
    const longest = await tab.evaluate(async () => {
      const field = document.getElementById('bends[0].leg');
      let worst = 0;
      for (let step = 0; step < 20; step++) {
        field.value = `2-${1 + (step % 7)}/8`;
        const began = performance.now();
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await new Promise((done) => setTimeout(done));
        worst = Math.max(worst, performance.now() - began);
      }
      return worst;
    });
    // No timing but a block: the order of work alone takes several times as long.
    must(longest < 2000, `a letter took ${longest.toFixed(0)} ms`);
    await close();
  });

  await check('panels: a drawing opened, a bend and two lengths placed by touches, a true panel', async () => {
    const { tab, complaints, close } = await fresh('');
    const text = readFileSync(join(FOLDER, 'traced-deflector.svg'));
    await tab.setInputFiles('input[type=file]', { name: 'wing.svg', mimeType: 'image/svg+xml', buffer: text });
    await tab.waitForSelector('svg.drawn');
    const touch = async (x, y) => {
      const [left, top] = await tab.evaluate(
        ([u, v]) => {
          const at = new DOMPoint(u, -v).matrixTransform(document.querySelector('svg.drawn').getScreenCTM());
          return [at.x, at.y];
        },
        [x, y],
      );
      await tab.mouse.click(left, top);
    };
    await touch(20, 70);
    await touch(230, 70);
    await tab.click('text=Give a length');
    for (const [a, b, length] of [
      [[20, 20], [230, 20], '420'],
      [[230, 20], [230, 88], '136'],
    ]) {
      await touch(...a);
      await touch(...b);
      await tab.fill('#known-length', length);
      await tab.keyboard.press('Enter');
    }
    must(await soon(async () => /scaled 2\.000/.test(await tab.textContent('.know')), 30), 'it is not scaled');
    // Loaded again, the drawing is still here.
    await tab.reload();
    await tab.waitForSelector('svg.drawn');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });

  await check(
    'panels: a drawing dropped on the page is opened, over a bend or another panel; a broken one is refused',
    async () => {
      const drop = (tab, name, text) =>
        tab.evaluate(
          ([name, text]) => {
            const dataTransfer = new DataTransfer();
            dataTransfer.items.add(new File([text], name));
            for (const kind of ['dragover', 'drop'])
              document.body.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }));
          },
          [name, text],
        );
      const svg = readFileSync(join(FOLDER, 'traced-deflector.svg'), 'utf8');
      const blank = join(panels, 'tray', readdirSync(join(panels, 'tray'))[0], 'blank');
      const dxf = readFileSync(
        join(
          blank,
          readdirSync(blank).find((name) => name.endsWith('.dxf')),
        ),
        'utf8',
      );
      for (const open of [() => fresh(''), () => opened('bracket')]) {
        const { tab, complaints, close } = await open();
        await drop(tab, 'wing.svg', svg);
        await tab.waitForSelector('svg.drawn');
        must((await tab.$$eval('svg.drawn path', (all) => all.length)) > 0, 'nothing is drawn');
        await drop(tab, 'outline.dxf', dxf);
        must(
          await soon(async () => (await tab.inputValue('[id="outline.file"]')) === 'outline.dxf', 15),
          'the DXF is not opened',
        );
        await drop(tab, 'broken.svg', '<svg><path d="M0 0');
        must(await soon(async () => /is not well-formed/.test(await tab.textContent('body')), 15), 'not refused');
        await tab.click('button:text-is("Undo")');
        await tab.waitForSelector('svg.drawn');
        must((await tab.inputValue('[id="outline.file"]')) === 'outline.dxf', 'what stood before is lost');
        must(complaints.length === 0, complaints.join('; '));
        await close();
      }
    },
  );

  await check('panels: from one bend to a panel and back, what was typed is kept', async () => {
    const { tab, complaints, close } = await fresh('');
    await tab.fill('[id="bend.length"]', '411');
    await tab.selectOption('#starter', 'bracket');
    await tab.waitForSelector('.steps');
    await tab.click('button:text("Back to the one bend")');
    must((await tab.inputValue('[id="bend.length"]')) === '411', 'it is lost');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });

  await check('panels: at the bench, the order of work a step a screen; printed, it is the order of work', async () => {
    const { tab, complaints, close } = await opened('hood-side', phone);
    await tab.click('text=At the bench');
    await tab.waitForSelector('dialog.bench');
    must(/1 of 3/.test(await tab.textContent('dialog.bench')), 'other steps');
    await tab.click('dialog.bench button:text("Next")');
    must(/long: 90/.test(await tab.textContent('dialog.bench h2')), 'not the first bend');
    await tab.click('dialog.bench button:text("Close")');
    await tab.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const printed = await tab.evaluate(() => document.querySelector('.paper').shadowRoot.textContent);
    must(/Bend by bend/.test(printed), 'no order of work');
    must(complaints.length === 0, complaints.join('; '));
    await close();
  });

  for (const [where, options] of [
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
    ['phone', phone],
  ])
    await check(`panels: axe finds nothing serious, ${where}`, async () => {
      const { tab, close } = await opened('traced-deflector', { ...options, bypassCSP: true });
      await tab.$$eval('details', (all) => all.forEach((one) => (one.open = true)));
      const serious = await seriousOn(tab);
      must(serious.length === 0, serious.join('; '));
      await tab.fill('[id="bends[0].angle"]', 'x');
      await tab.waitForSelector('.wrong', { timeout: 30_000 });
      const wrong = await seriousOn(tab);
      must(wrong.length === 0, wrong.join('; '));
      const wide = await tab.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      must(wide <= 0, `the page is ${wide} px wider than its window`);
      await close();
    });
}
