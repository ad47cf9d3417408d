// The page in Firefox: a smoke run. node --experimental-websocket test/outside/check_firefox.mjs FOLDER, where FOLDER holds what `make` wrote for each starter.
// Every starter is opened, worked out, edited and taken back; plan.json is what the command line writes, byte for byte.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { startFirefox } from './bidi.mjs';

const made = resolve(process.argv[2] ?? 'out');
const page = pathToFileURL(resolve('dist/bendbuck.html')).href;
const starters = readdirSync('templates')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => basename(name, '.yaml'));
let [passed, failed] = [0, 0];

const firefox = await startFirefox(process.env.FIREFOX ?? '/usr/bin/firefox-esr');

async function check(name, run) {
  try {
    firefox.complaints.length = 0;
    await run();
    must(firefox.complaints.length === 0, firefox.complaints.join('; '));
    passed++;
    console.log(`ok   ${name}`);
  } catch (problem) {
    failed++;
    console.log(`FAIL ${name}: ${problem.message}`);
  }
}

function must(holds, what) {
  if (!holds) throw new Error(what);
}

/** Whether an expression comes to be true within ten seconds. */
const soon = async (expression) => {
  for (let wait = 0; wait < 200; wait++) {
    if (await firefox.value(expression)) return true;
    await new Promise((done) => setTimeout(done, 50));
  }
  return false;
};

const open = async (name) => {
  const job = readFileSync(`templates/${name}.yaml`, 'utf8');
  await firefox.open('about:blank');
  await firefox.open(`${page}#job=${encodeURIComponent(job)}`);
  must(await soon(`document.querySelector('.know dl') !== null`), 'no numbers');
};
const typed = (id, text) => `(() => {
  const field = document.getElementById(${JSON.stringify(id)});
  field.value = ${JSON.stringify(text)};
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  field.dispatchEvent(new Event('change', { bubbles: true }));
})()`;
const press = (words) =>
  `[...document.querySelectorAll('button')].find((button) => button.textContent.trim() === ${JSON.stringify(words)}).click()`;
const figures = `document.querySelector('.know dl').textContent`;

for (const name of starters) {
  await check(`${name}: worked out, drawn, changed, and taken back`, async () => {
    await open(name);
    must((await firefox.value(`document.querySelectorAll('.cut .parts svg').length`)) > 2, 'no drawings');
    must(
      await firefox.value(
        `[...document.querySelectorAll('.does canvas, .does form-look')].some((seen) => seen.clientHeight > 100)`,
      ),
      'no picture',
    );
    const before = await firefox.value(figures);
    await firefox.value(typed('bend.angle', '60'));
    must(await soon(`${figures} !== ${JSON.stringify(before)}`), 'an edit changes nothing');
    await firefox.value(typed('bend.angle', 'sixty'));
    must(await soon(`document.getElementById('bend.angle-says') !== null`), 'a wrong entry is not told');
    await firefox.value(press('Undo'));
    must(await soon(`${figures} === ${JSON.stringify(before)}`), 'it is not taken back');
  });

  await check(`${name}: plan.json is what make writes`, async () => {
    await open(name);
    // The page's own worker is none of what is taken away.
    await firefox.value(
      `void ((plain) => (URL.createObjectURL = (blob) => blob.type === 'text/javascript' ? plain.call(URL, blob) : ((window.taken = blob), 'data:,')))(URL.createObjectURL)`,
    );
    await firefox.value(press('List the files'));
    must(await soon(`document.querySelector('[data-path="plan.json"]') !== null`), 'no list of files');
    await firefox.value(`document.querySelector('[data-path="plan.json"]').click()`);
    const [job] = readdirSync(join(made, name));
    const wanted = readFileSync(join(made, name, job, 'plan.json'), 'utf8');
    must((await firefox.value(`window.taken.text()`)) === wanted, 'it differs');
  });
}

await check('drawings open, and close by the keyboard', async () => {
  await open('plain-curve');
  await firefox.value(press('Look at the drawings'));
  must(await soon(`document.querySelector('dialog[open] svg, [role=dialog] svg') !== null`), 'no drawing is shown');
  await firefox.keys([
    { type: 'keyDown', value: '\uE00C' },
    { type: 'keyUp', value: '\uE00C' },
  ]);
  must(await soon(`document.querySelector('dialog[open], [role=dialog]') === null`), 'Escape does not close it');
});

await check('at the bench: steps, one a screen', async () => {
  await open('plain-curve');
  await firefox.value(press('At the bench'));
  must(await soon(`/1 of \\d+/.test(document.body.innerText)`), 'no first step');
});

await check('a whole panel: worked out beside the page, folded, changed, and taken back', async () => {
  const job = readFileSync('templates/panels/tray.yaml', 'utf8');
  await firefox.open('about:blank');
  await firefox.open(`${page}#job=${encodeURIComponent(job)}`);
  must(await soon(`document.querySelector('.steps') !== null`), 'no order of work');
  must((await firefox.value(`document.querySelectorAll('.steps > li').length`)) === 3, 'not three steps');
  must((await firefox.value(`document.querySelectorAll('.flat svg path').length`)) > 0, 'no flat');
  must(
    await firefox.value(
      `[...document.querySelectorAll('.does form-look, .painted svg')].some((seen) => seen.clientHeight > 100)`,
    ),
    'no picture',
  );
  const before = await firefox.value(figures);
  await firefox.value(typed('base.corners', '[[0, 0], [440, 0], [440, 260], [0, 260]]'));
  must(await soon(`${figures} !== ${JSON.stringify(before)}`), 'an edit changes nothing');
  await firefox.value(press('Undo'));
  must(await soon(`${figures} === ${JSON.stringify(before)}`), 'it is not taken back');
});

await firefox.stop();
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
