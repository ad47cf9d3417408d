#!/usr/bin/env node
import { run } from './program';

// A reader that goes away (`bendbuck plan job | head`) is no fault of ours.
process.stdout.on('error', (problem: NodeJS.ErrnoException) => {
  if (problem.code !== 'EPIPE') throw problem;
});

process.exitCode = await run(process.argv.slice(2), {
  cwd: process.cwd(),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  colour: process.stdout.isTTY && !process.env['NO_COLOR'] && process.env['TERM'] !== 'dumb',
  progress: process.stderr.isTTY,
});
