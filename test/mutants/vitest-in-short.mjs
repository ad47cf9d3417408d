// As much of vitest as the quick tests use, in one warm process: tests are collected once and run again for every mutant. `expect` is vitest's own.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
import * as chai from 'chai';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0 }, expect);
globalThis[GLOBAL_EXPECT] = expect;

/** Tests in the order they are written: a name of its own each, and what to run. */
export const tests = (globalThis.collectedTests ??= []);
const around = [];

export function describe(name, body) {
  around.push(name);
  body();
  around.pop();
}

export function it(name, run) {
  const said = [...around, name].join(' › ');
  const twins = tests.filter((test) => test.name === said).length;
  tests.push({ name: said, id: twins === 0 ? said : `${said} (${twins + 1})`, run });
}

/** What is to be done when a file's tests are over, or after each of them: never, in a process that goes on with them and reports to nobody. */
export const afterAll = () => undefined;
export const afterEach = () => undefined;

/** One test or group for each case, told apart by its place among them. */
function each(declare) {
  return (cases) => (name, run) => {
    for (const [index, one] of cases.entries()) {
      const values = Array.isArray(one) ? one : [one];
      declare(`${name} #${index}`, () => run(...values));
    }
  };
}
describe.each = each(describe);
it.each = each(it);
