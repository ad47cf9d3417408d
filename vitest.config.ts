import { defineConfig } from 'vitest/config';

/** Tests that put stand-ins in place of modules: each in a world of its own. All others share what is loaded once for each worker. */
const standIns = ['test/cli/files.test.ts', 'test/tables/tables.test.ts'];

export default defineConfig({
  test: {
    globalSetup: ['test/helpers/build.ts'],
    passWithNoTests: false,
    maxWorkers: 2,
    execArgv: ['--max-semi-space-size=64'], // MB: less tidying up of memory
    reporters: ['default', './test/helpers/groups-reporter.ts'],
    projects: [
      { extends: true, test: { name: 'shared', include: ['test/**/*.test.ts'], exclude: standIns, isolate: false } },
      { extends: true, test: { name: 'alone', include: standIns } },
    ],
    setupFiles: ['test/helpers/setup.ts'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
  },
});
