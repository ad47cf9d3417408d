import fc from 'fast-check';

// A fixed start for every property test: the same jobs on every run and machine. SEED=… npm test tries others.
fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20261125) });
