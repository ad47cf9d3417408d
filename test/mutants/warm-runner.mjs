// A test runner for StrykerJS: loads the quick tests once (bundled, one process) and for every mutant runs those that reach it, the fastest
// first, to the first that fails. vitest's own runner loads every file anew for every mutant: some seconds each instead of some tenths.
import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { relative } from 'node:path';
import { runInThisContext } from 'node:vm';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import { determineHitLimitReached, toMutantRunResult } from '@stryker-mutator/api/test-runner';
import { loadTests } from './bundle.mjs';

/** Files of tests, in test/; MUTANTS_TESTS=design/pull takes those whose path it matches. */
const WANTED = new RegExp(process.env.MUTANTS_TESTS ?? '');
const QUICK = /^(base|design|truth)\/.*\.test\.ts$/;
/** What takes ten seconds and more in a file: forms put together, machines' beds. */
const SLOW = ['design/joints/assembled.test.ts', 'design/fixture/bed.test.ts'];
/** Tests by random jobs and by many whole plans, of a second and more each: what they judge, quicker tests judge at single places. */
const SLOW_TESTS = new RegExp(
  [
    'ends after counted work',
    'covers the same area',
    'where dumbbells part',
    'finished angle’s parts still close',
    'Simpson’s rule',
    'just where (an end|more than half)',
    'finished radius within',
    'larger everywhere',
    'same either way round',
    'does so for any sheet',
    'not pulled square',
    'cut free #[1-9]',
  ].join('|'),
);

/** A share of the mutants, the same on every run of a seed (MUTANTS_SHARE=0.25 MUTANTS_SEED=1 npm run mutants); the others are told as errors. */
const SHARE = Number(process.env.MUTANTS_SHARE ?? 1);
const SEED = process.env.MUTANTS_SEED ?? '1';
const sampled = ({ replacement, location }, file) => {
  const text = JSON.stringify([SEED, relative('.', file), location, replacement]);
  return createHash('sha256').update(text).digest().readUInt32BE(0) / 2 ** 32 < SHARE;
};

class WarmRunner {
  /**
   * Nothing is ever loaded anew: a mutant that also runs while files load is only switched on for the tests (`ignoreStatic`), and without this StrykerJS
   * would start the process again before and after each of them.
   */
  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    process.env.BENDBUCK_SHARE ??= '0.03';
    const files = readdirSync('test', { recursive: true }).filter(
      (file) => QUICK.test(file) && WANTED.test(file) && !SLOW.includes(file),
    );
    this.tests = (await loadTests(files.sort(), 'out/mutants-bundle.mjs')).filter(({ name }) => !SLOW_TESTS.test(name));
  }

  async dryRun() {
    const space = (globalThis.__stryker__ ??= {});
    const results = [];
    for (const test of this.tests) {
      space.currentTestId = test.id;
      // What one test works out the next would only look up, and not seem to reach.
      globalThis.forgetStarters();
      const result = await runTest(test);
      test.took = result.timeSpentMs;
      results.push(result);
      space.currentTestId = undefined;
    }
    return { status: 'complete', tests: results, mutantCoverage: space.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, sandboxFileName }) {
    if (!sampled(activeMutant, sandboxFileName)) return { status: 'error', errorMessage: 'not in the sample' };
    const space = globalThis.__stryker__ ?? {};
    const reaching = testFilter ? new Set(testFilter) : null;
    const chosen = this.tests.filter(({ id }) => reaching?.has(id) ?? true);
    Object.assign(space, { activeMutant: activeMutant.id, hitLimit, hitCount: 0 });
    globalThis.forgetStarters();
    const results = [];
    for (const test of chosen.sort((a, b) => worth(b) - worth(a))) {
      const result = await runTest(test);
      results.push(result);
      test.tried = (test.tried ?? 0) + 1;
      if (result.status === 1) {
        test.kills = (test.kills ?? 0) + 1;
        break;
      }
    }
    const timeout = determineHitLimitReached(space.hitCount, hitLimit);
    Object.assign(space, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined });
    if (results.some(({ hung }) => hung)) return { status: 'timeout', reason: 'a test hung' };
    return timeout ?? toMutantRunResult({ status: 'complete', tests: results });
  }
}

/** What a test is likely to find in the time it takes, by what it found so far. */
const worth = ({ took, kills = 0, tried = 0 }) => (kills + 1) / (tried + 2) / (took ?? 1);

/** Runs one test; status as StrykerJS counts it (0 passed, 1 failed). One that runs much longer than before hangs, and is cut short. */
async function runTest({ id, name, run, took }) {
  const start = performance.now();
  const done = (more) => ({ id, name, timeSpentMs: performance.now() - start, ...more });
  try {
    globalThis.runNow = run;
    const timeout = took === undefined ? 300_000 : Math.ceil(5 * took + 3000);
    await runInThisContext('runNow()', { timeout });
    return done({ status: 0 });
  } catch (failure) {
    return done({
      status: 1,
      failureMessage: String(failure).slice(0, 300),
      hung: failure?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT',
    });
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'warm', WarmRunner)];
