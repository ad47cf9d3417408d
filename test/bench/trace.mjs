// How long a traced outline takes to read, the first time in a process and after. Run by `npm run bench`.
import { build } from 'esbuild';

const made = await build({
  entryPoints: ['test/bench/trace.ts'],
  bundle: true,
  write: false,
  format: 'esm',
  platform: 'node',
});
const { rows } = await import(
  `data:text/javascript;base64,${Buffer.from(made.outputFiles[0].contents).toString('base64')}`
);
for (const { name, sides, holes, first, median } of rows()) {
  console.log(
    `${name}, outline of ${sides} sides with ${holes} holes: read in ${first.toFixed(0)} ms, then ${median.toFixed(1)} ms (wanted: under 100)`,
  );
}
