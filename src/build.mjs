// Bundles the command line into dist/ and the page into one self-contained dist/bendbuck.html. So that `plan` starts fast, heavy parts of
// the command line stay behind dynamic import(), and what it needs compiled is kept.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { build } from 'esbuild';
import { notices } from './notices.mjs';

/** The typeface of the printed drawings. */
const FONT = 'DejaVuSansCondensed.ttf';
/** Jobs whose planning shows what every start needs compiled: one bend, one along a taper, and a panel. */
const PLANNED = ['plain-curve', 'tapered-curve', 'panels/tray'].map((name) => `templates/${name}.yaml`);
const loader = { '.yaml': 'text', '.ttf': 'binary', '.svg': 'dataurl' };
const common = {
  bundle: true,
  format: 'esm',
  minify: true,
  metafile: true,
  legalComments: 'none',
  logLevel: 'warning',
  loader,
};

/**
 * What the start of every command need not pay for: a library that starts programs, of which the reader of command lines has need only for
 * commands that are programs of their own, and we have none.
 */
const noPrograms = {
  name: 'no-programs',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^(node:)?child_process$/ }, ({ path, importer }) =>
      importer.includes('commander') ? { path, namespace: 'no-programs' } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'no-programs' }, () => ({ contents: 'module.exports = {};' }));
  },
};

const forNode = { ...common, write: false, outdir: 'dist', platform: 'node', target: 'node20' };

/** What writes PDF is half of all that is bundled, and `plan` has no use for it: a file for each, read where it is needed. */
const apart = new Map();
const inputs = [];
for (const name of ['@cantoo/pdf-lib', 'fontkit']) {
  const { outputFiles, metafile } = await build({
    ...forNode,
    format: 'cjs',
    entryPoints: { [basename(name)]: name },
    entryNames: '[name]-[hash]',
    outExtension: { '.js': '.cjs' },
  });
  apart.set(name, outputFiles[0]);
  inputs.push(...Object.keys(metafile.inputs));
}
const readApart = {
  name: 'read-apart',
  setup: ({ onResolve }) =>
    onResolve({ filter: /^[@a-z]/ }, ({ path }) =>
      apart.has(path) ? { path: `./${basename(apart.get(path).path)}`, external: true } : undefined,
    ),
};

// One file, named by what it holds: a start reads it with what was kept of it compiled, which belongs to these very bytes.
const bundle = await build({
  ...forNode,
  format: 'cjs',
  plugins: [noPrograms, readApart],
  // The modules made for browsers: those made for node come as one file each with a wrapper, all run at the start.
  alias: { yaml: resolve('node_modules/yaml/browser/index.js') },
  entryPoints: { program: 'src/cli/start.ts' },
  entryNames: '[name]-[hash]',
  outExtension: { '.js': '.cjs' },
  define: { 'import.meta.url': '__here' },
  // A function, which the loader calls: a program so long is better not copied to put one round it.
  banner: {
    js: "(function (module, exports, require, __filename) { const __here = require('node:url').pathToFileURL(__filename).href;",
  },
  footer: { js: '})' },
});
const [program] = bundle.outputFiles;

/** What loads the program: for the command line, for the thread beside it, and for the build itself. */
const starters = await build({
  ...forNode,
  entryPoints: ['main', 'beside-worker', 'keep-compiled'].map((name) => `src/cli/${name}.ts`),
  define: { PROGRAM: JSON.stringify(`./${basename(program.path)}`), BUILT_BY: JSON.stringify(process.version) },
});
const [main, besideWorker, keepCompiled] = starters.outputFiles;

const forPage = {
  ...common,
  write: false,
  outdir: 'dist',
  // A plain script: the page's worker, which is it once more, may be no module where the page is opened from disk.
  format: 'iife',
  platform: 'browser',
  target: 'es2022',
  jsx: 'automatic',
  jsxImportSource: 'preact',
};
/** A script to stand inside the page; nothing in it may look like its own end. */
inputs.push(...Object.keys(bundle.metafile.inputs));
const inline = async (entry) => {
  const made = await build({ ...forPage, entryPoints: [entry] });
  inputs.push(...Object.keys(made.metafile.inputs));
  return made.outputFiles[0].text.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
};
// The 3-D view is large: a script of its own, which the browser comes to when the numbers stand.
const [script, look] = [await inline('src/page/main.tsx'), await inline('src/page/look/element.ts')];
const style = readFileSync('src/page/style.css', 'utf8');
const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
// The one worker is the page's own script once more, from a blob of the page.
const policy = `default-src 'none'; script-src ${hash(script)} ${hash(look)}; style-src ${hash(style)}; img-src data:; connect-src 'self'; worker-src blob:; base-uri 'none'; form-action 'none'`;
const parts = { POLICY: policy, STYLE: style, SCRIPT: script, LOOK: look };
const html = readFileSync('src/page/index.html', 'utf8').replaceAll(
  /%(POLICY|STYLE|SCRIPT|LOOK)%/g,
  (_, name) => parts[name],
);

// Everything is made before anything is replaced, and what an earlier build left is taken away last: a program that is running keeps its files.
const files = new Map([
  ...[...apart.values(), program, besideWorker, main].map(({ path, contents }) => [basename(path), contents]),
  ['bendbuck.html', html],
  [FONT, readFileSync(`node_modules/dejavu-fonts-ttf/ttf/${FONT}`)],
  ['NOTICES.txt', notices(inputs)],
]);
mkdirSync('dist', { recursive: true });
for (const [name, contents] of files) {
  writeFileSync(`dist/${name}`, contents);
  if (name === basename(program.path)) keepWhatCompiles();
}
chmodSync('dist/main.js', 0o755);
const compiled = `${basename(program.path)}.compiled`;
for (const name of readdirSync('dist'))
  if (name !== compiled && !files.has(name)) rmSync(`dist/${name}`, { recursive: true });

/** A process of its own plans these jobs and keeps what is compiled on the way. */
function keepWhatCompiles() {
  execFileSync(process.execPath, ['--input-type=module', '-', program.path, ...PLANNED], { input: keepCompiled.text });
}
