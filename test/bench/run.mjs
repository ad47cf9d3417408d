// Timings as ratios within one run: process against process, in turn, on this machine. `npm run bench` builds first.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';

const PAIRS = 15;
/** Jobs planned, and how many times bare node each may take. */
const JOBS = [
  ['templates/plain-curve.yaml', 3],
  ['templates/tapered-curve.yaml', 3],
  ['templates/panels/tray.yaml', 4],
];

/** One run of node with these arguments: wall time in ms and what it printed. */
function time(args) {
  const began = performance.now();
  const { status, stdout } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
  return { ms: performance.now() - began, stdout };
}

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

const bare = ['-e', '0'];

for (const [job, wanted] of JOBS) {
  const plan = ['dist/main.js', 'plan', job];
  time(plan);
  time(bare);
  const pairs = Array.from({ length: PAIRS }, () => ({ plan: time(plan), bare: time(bare) }));
  const ratio = median(pairs.map((pair) => pair.plan.ms / pair.bare.ms));
  const checksum = createHash('sha256').update(pairs[0].plan.stdout).digest('hex').slice(0, 12);
  console.log(`plan ${job}: median ${median(pairs.map(({ plan: { ms } }) => ms)).toFixed(0)} ms`);
  console.log(`bare node -e 0: median ${median(pairs.map(({ bare: { ms } }) => ms)).toFixed(0)} ms`);
  console.log(`ratio, pair by pair: median ${ratio.toFixed(2)} (wanted: under ${wanted}); output ${checksum}`);
}

await import('./trace.mjs');
await import('./nest.mjs');
await import('./make.mjs');
await import('./page.mjs');
await import('./page-panel.mjs');
