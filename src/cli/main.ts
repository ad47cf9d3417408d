#!/usr/bin/env node
import { loadProgram } from './load-program';

process.exitCode = await loadProgram().program.start(process.argv.slice(2));
