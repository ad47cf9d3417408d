import { defineConfig } from 'vitest/config';

/** The quick tests that judge sums and rules: what the mutants are tried against. */
export default defineConfig({
  test: {
    include: ['test/{base,design,truth}/**/*.test.ts'],
    // What takes ten seconds and more in a file: forms put together, machines' beds, offsets against clipper2-ts.
    exclude: ['test/design/joints/assembled.test.ts', 'test/design/fixture/bed.test.ts', 'test/base/offset.test.ts'],
    setupFiles: ['test/helpers/setup.ts'],
    testTimeout: 120_000,
  },
});
