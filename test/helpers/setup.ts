import fc from 'fast-check';
import { afterAll, afterEach } from 'vitest';
import { breathe } from './breathe';
import { removeFreshFolders } from './fresh-folder';

// A fixed start for every property test: the same jobs on every run and machine. SEED=… npm test tries others.
fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20261125) });

// Said for every file of tests: what loads only once for many of them could say it for the first alone.
afterAll(removeFreshFolders);
afterEach(breathe);
