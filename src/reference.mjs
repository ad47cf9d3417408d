// Writes the README's tables: of every key of a job file, as described in src/job/fields, and of the words, from shared/words.json.
import { readFileSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const entry = `
  export { referenceTable } from './src/job/fields/reference';
  export { wordsTable } from './src/tables/words';
  export { loadTables } from './src/tables/bundled';
`;
const { outputFiles } = await build({
  stdin: { contents: entry, resolveDir: '.', loader: 'ts' },
  bundle: true,
  format: 'esm',
  platform: 'node',
  write: false,
});
const { referenceTable, wordsTable, loadTables } = await import(
  `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`
);

const readme = readFileSync('README.md', 'utf8');
const whole = put(put(readme, 'every key', referenceTable(loadTables())), 'words', wordsTable());
writeFileSync('README.md', whole);

/** The text with a table between the two marks that name it. */
function put(text, name, table) {
  const [begin, end] = [`<!-- ${name}: written by \`npm run reference\` -->`, `<!-- ${name}: end -->`];
  const [before, after] = [text.indexOf(begin) + begin.length, text.indexOf(end)];
  if (after < before) throw new Error(`README.md has lost the marks between which “${name}” stands`);
  return `${text.slice(0, before)}\n\n${table}\n\n${text.slice(after)}`;
}
