import { loadProgram } from './load-program';

await loadProgram().program.answer();
