import { defineConfig } from 'vitest/config';

/** The quick tests that judge sums and rules: what the mutants are tried against. */
export default defineConfig({
  test: {
    include: ['test/{base,design,truth,job}/**/*.test.ts', 'test/random-jobs.test.ts'],
    setupFiles: ['test/helpers/setup.ts'],
    testTimeout: 60_000,
  },
});
