// Jobs for a router and for a laser, made from other jobs: node test/outside/for_tool.mjs FOLDER JOB.yaml …
// Writes FOLDER/<job>-router.yaml, with bridges, and FOLDER/<job>-laser.yaml, on a board that is stacked; all else, comments too, stays as it is.

import { readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseDocument } from 'yaml';

/** A thin board of the job's own system, and four layers to a station, or three. */
const THIN = { mm: 'mdf-6', in: 'mdf-1/4' };

const VARIANTS = {
  router: (job) => job.set('cut', job.createNode({ with: 'router', bridges: true }, { flow: true })),
  laser: (job) => {
    job.set('board', job.createNode({ stock: THIN[job.get('units')] }, { flow: true }));
    job.set('cut', job.createNode({ with: 'laser' }, { flow: true }));
  },
};

const [folder, ...paths] = process.argv.slice(2);
if (!folder || paths.length === 0) {
  console.error('usage: node test/outside/for_tool.mjs FOLDER JOB.yaml …');
  process.exit(2);
}
for (const path of paths) {
  for (const [tool, change] of Object.entries(VARIANTS)) {
    const job = parseDocument(readFileSync(path, 'utf8'));
    change(job);
    writeFileSync(join(folder, `${basename(path, '.yaml')}-${tool}.yaml`), String(job));
  }
}
