// Writes the README's table of every key of a job file, from the fields as they are described in src/job/fields.
import { readFileSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const entry = `
  export { referenceTable } from './src/job/fields/reference';
  export { loadTables } from './src/tables/bundled';
`;
const { outputFiles } = await build({
  stdin: { contents: entry, resolveDir: '.', loader: 'ts' },
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const { referenceTable, loadTables } = await import(
  `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`
);

const [begin, end] = ['<!-- every key: written by `npm run reference` -->', '<!-- every key: end -->'];
const readme = readFileSync('README.md', 'utf8');
const [before, after] = [readme.indexOf(begin) + begin.length, readme.indexOf(end)];
if (after < before) throw new Error('README.md has lost the marks between which the table stands');
writeFileSync('README.md', `${readme.slice(0, before)}\n\n${referenceTable(loadTables())}\n\n${readme.slice(after)}`);
