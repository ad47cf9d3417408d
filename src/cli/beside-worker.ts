import { loadProgram } from './load-program';

loadProgram().program.answer();
