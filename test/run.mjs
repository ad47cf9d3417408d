// The tests, and beside them the types, then the lint: node test/run.mjs [OPTION…], the options vitest's. What those have to say is printed when the tests are done.
import { spawn } from 'node:child_process';

/** Exit code and, where it was kept, what was said. */
function run(program, args, stdio) {
  const child = spawn(process.execPath, [program, ...args], { stdio });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (text) => (said += text));
  return new Promise((done) => child.on('close', (code) => done({ code, said })));
}

async function lookAtSources() {
  const quiet = ['ignore', 'pipe', 'pipe'];
  const types = await run('node_modules/typescript/bin/tsc', ['--noEmit'], quiet);
  const lint = await run('node_modules/oxlint/bin/oxlint', [], quiet);
  return [
    { ...types, name: 'types' },
    { ...lint, name: 'lint' },
  ];
}

const sources = lookAtSources();
const tests = await run('node_modules/vitest/vitest.mjs', ['run', ...process.argv.slice(2)], 'inherit');
let isGood = tests.code === 0;
for (const { name, code, said } of await sources) {
  if (code === 0) continue;
  isGood = false;
  process.stdout.write(`${said}FAILED: ${name}, see above.\n`);
}
process.exitCode = isGood ? 0 : 1;
