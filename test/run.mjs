// The tests, and the types beside them: node test/run.mjs [OPTION…], the options vitest's. What the types' check has to say is printed when the tests are done.
import { spawn } from 'node:child_process';

/** Exit code and, where it was kept, what was said. */
function run(program, args, stdio) {
  const child = spawn(process.execPath, [program, ...args], { stdio });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (text) => (said += text));
  return new Promise((done) => child.on('close', (code) => done({ code, said })));
}

const types = run('node_modules/typescript/bin/tsc', ['--noEmit'], ['ignore', 'pipe', 'pipe']);
const tests = await run('node_modules/vitest/vitest.mjs', ['run', ...process.argv.slice(2)], 'inherit');
const { code, said } = await types;
process.stdout.write(code === 0 ? '' : `${said}The types are wrong: see above.\n`);
process.exitCode = tests.code === 0 && code === 0 ? 0 : 1;
