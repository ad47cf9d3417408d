// Writes the README's tables: of every key of a job file and of a panel's, as described in src/job, and of the words, from shared/words.json.
import { readFileSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const entry = `
  export { panelReferenceTable, referenceTable } from './src/job/fields/reference';
  export { jobFields } from './src/job/fields/index';
  export { panelFields, tracedFields } from './src/job/panel/fields';
  export { assemblyFields } from './src/job/panel/assembly';
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
const {
  panelReferenceTable,
  referenceTable,
  jobFields,
  panelFields,
  tracedFields,
  assemblyFields,
  wordsTable,
  loadTables,
} = await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);

const readme = readFileSync('README.md', 'utf8');
const tables = loadTables();
const keyed = put(readme, 'every key', referenceTable(tables));
const panelled = put(keyed, 'a panel’s keys', panelReferenceTable(panelFields, [jobFields], tables));
const traced = put(panelled, 'a traced panel’s keys', panelReferenceTable(tracedFields, [jobFields], tables));
const assembled = put(traced, 'an assembly’s keys', panelReferenceTable(assemblyFields, [jobFields], tables));
writeFileSync('README.md', put(assembled, 'words', wordsTable()));

/** The text with a table between the two marks that name it. */
function put(text, name, table) {
  const [begin, end] = [`<!-- ${name}: written by \`npm run reference\` -->`, `<!-- ${name}: end -->`];
  const [before, after] = [text.indexOf(begin) + begin.length, text.indexOf(end)];
  if (after < before) throw new Error(`README.md has lost the marks between which “${name}” stands`);
  return `${text.slice(0, before)}\n\n${table}\n\n${text.slice(after)}`;
}
