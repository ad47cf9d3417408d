import { execFile } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { freshFolder } from './helpers/fresh-folder';

/** A rule of the linter, and code that it refuses. */
const refused = {
  'consistent-type-imports': "import { Stats } from 'node:fs';\nexport type A = Stats;",
  eqeqeq: 'export const f = (a: number, b: number) => a == b;',
  'max-params': 'export const f = (a: number, b: number, c: number, d: number, e: number) => a + b + c + d + e;',
  'no-console': 'console.log(3);',
  'no-constant-condition': 'export function f() { if (true) return 3; return 4; }',
  'no-explicit-any': 'export const a: any = 3;',
  'no-floating-promises': 'export function f() { Promise.resolve(3); }',
  'no-misused-promises': 'export const f = () => [1].forEach(async () => { await Promise.resolve(); });',
  'no-unnecessary-type-assertion': 'export const f = (a: string) => (a as string).length;',
  'no-unsafe-assignment': "export const a = JSON.parse('3');",
  'no-unsafe-member-access': 'declare const x: ReturnType<typeof JSON.parse>;\nexport const b: unknown = x.y;',
  'no-unused-vars': 'const a = 3;',
  'no-useless-assignment': "export function f() { let a = 'b'; globalThis.name = a; a = 'c'; }",
  'only-throw-error': 'export function f() { throw 3; }',
  'prefer-const': 'export function f() { let a = 3; return a; }',
  'require-await': 'export async function f() { return 3; }',
  'restrict-template-expressions': 'export const f = (a: { b: number }) => `${a}`;',
  'unbound-method': 'class A { b() { return this; } }\nexport const c = new A().b;',
};
const accepted = 'export const f = ({ a, ...b }: { a: number; c: number }) => b;';

interface Said {
  readonly diagnostics: readonly { readonly code: string; readonly filename: string }[];
}

/** What the linter says of a folder, by file: the rules. */
async function rulesFound(folder: string): Promise<Record<string, string[]>> {
  const args = ['node_modules/oxlint/bin/oxlint', '-c', '.oxlintrc.json', '-f', 'json', folder];
  const { stdout } = await promisify(execFile)(process.execPath, args).catch((failed: { stdout: string }) => failed);
  const found: Record<string, string[]> = {};
  for (const { code, filename } of (JSON.parse(stdout) as Said).diagnostics)
    (found[basename(filename, '.ts')] ??= []).push(code.replace(/^.*\((.*)\)$/u, '$1'));
  return found;
}

it('the linter refuses what it is there for, and nothing else', async () => {
  const folder = freshFolder();
  for (const [rule, code] of Object.entries({ ...refused, accepted })) writeFileSync(join(folder, `${rule}.ts`), code);
  const found = await rulesFound(folder);
  for (const rule of Object.keys(refused)) expect(found[rule], rule).toContain(rule);
  expect(found['accepted']).toBeUndefined();
});
