import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/helpers/build.ts'],
    setupFiles: ['test/helpers/setup.ts'],
    passWithNoTests: false,
    testTimeout: 180_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
    reporters: ['default', './test/helpers/groups-reporter.ts'],
  },
});
