// Test files bundled into one module that needs no vitest: importing it leaves its tests in `globalThis.collectedTests`.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** Loads the tests of these files (in test/) through a bundle written to `outfile`; `plugins` are esbuild's. */
export async function loadTests(files, outfile, plugins = []) {
  await build({
    stdin: {
      contents: [
        ...['helpers/setup.ts', ...files].map((file) => `import './test/${file}';`),
        "import { forgetStarters } from './test/helpers/starters';",
        'globalThis.forgetStarters = forgetStarters;',
      ].join('\n'),
      resolveDir: process.cwd(),
    },
    outfile: resolve(outfile),
    plugins,
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    alias: { vitest: resolve('test/mutants/vitest-in-short.mjs') },
    loader: { '.yaml': 'text', '.ttf': 'binary', '.svg': 'dataurl' },
    logLevel: 'warning',
  });
  globalThis.collectedTests = [];
  await import(pathToFileURL(resolve(outfile)).href);
  return globalThis.collectedTests;
}
