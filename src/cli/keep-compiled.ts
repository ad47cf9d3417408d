import { writeFileSync } from 'node:fs';
import { loadProgram } from './load-program';

// Run by the build: plans the jobs named, as every start does, and keeps beside the program what was compiled on the way.
const [file = '', ...jobs] = process.argv.slice(2);
const { program, compiled } = loadProgram(file);
const nowhere = { cwd: process.cwd(), out: () => {}, err: () => {}, width: Infinity };
for (const job of jobs) {
  const code = await program.run(['plan', job], {
    ...nowhere,
    input: () => process.stdin,
    colour: false,
    errColour: false,
    progress: false,
  });
  if (code !== 0) throw new Error(`${job} could not be planned: ${code}`);
}
writeFileSync(`${file}.compiled`, compiled());
