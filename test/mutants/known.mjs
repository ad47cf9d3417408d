// Mutants that once lived, or that StrykerJS does not make (it changes no numbers), each put into the source by hand: `node test/mutants/known.mjs`
// says which test kills each, and fails where one lives.
import { mkdirSync, readFileSync } from 'node:fs';
import { loadTests } from './bundle.mjs';

const KNOWN = [
  [
    'setback without cos β',
    'design/bend/allowance.ts',
    '(radius + thickness * Math.cos(halfAngle))',
    '(radius + thickness)',
  ],
  ['allowance without cos β', 'design/bend/allowance.ts', ' * thickness * Math.cos(halfAngle))', ' * thickness)'],
  ['twist limit 1° → 3°', 'design/pull/check.ts', 'VISIBLE_TWIST = 1;', 'VISIBLE_TWIST = 3;'],
  ['mostly springback 0.5 → 0.9', 'design/bend/limits.ts', 'MOSTLY_SPRINGBACK = 0.5', 'MOSTLY_SPRINGBACK = 0.9'],
  ['opening without fit/2', 'design/joints/opening.ts', 'low: low - fit / 2, high: high + fit / 2', 'low, high'],
  ['offcut play doubled', 'design/fixture/board-fit.ts', 'return cut.fit / 2 /', 'return cut.fit /'],
  ['wood under the heads dropped', 'design/joints/router.ts', ' - tools.underHead', ''],
  ['relief angle π/9 → π/3', 'drawing/tooling/relief-cuts.ts', 'GENTLE = Math.PI / 9', 'GENTLE = Math.PI / 3'],
  ['< bit at its own size', 'design/joints/router.ts', 'diameter < bit)', 'diameter <= bit)'],
  ['> thickest at its own size', 'design/joints/index.ts', 'thickness > tables', 'thickness >= tables'],
  ['would-crack removed', 'design/bend/limits.ts', 'if (ratio >= smallest) return [];', 'return [];'],
];
const FILES = ['design/boundaries.test.ts'];

/** The source with one text replaced; the text must be there. */
const changed = (file, from, to) => ({
  name: 'one mutant',
  setup: ({ onLoad }) =>
    onLoad({ filter: new RegExp(`src/${file}$`) }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      if (!text.includes(from)) throw new Error(`${file} has no “${from}” any more`);
      return { contents: text.replace(from, to), loader: 'ts' };
    }),
});

/** The first test that fails; null where none does. */
async function killerOf(tests) {
  for (const { name, run } of tests) {
    try {
      await run();
    } catch {
      return name;
    }
  }
  return null;
}

mkdirSync('out', { recursive: true });
const sound = await killerOf(await loadTests(FILES, 'out/known-0.mjs'));
if (sound) throw new Error(`fails without any mutant: ${sound}`);
for (const [index, [name, file, from, to]] of KNOWN.entries()) {
  const killer = await killerOf(await loadTests(FILES, `out/known-${index + 1}.mjs`, [changed(file, from, to)]));
  console.log(killer ? `killed  ${name}: ${killer}` : `LIVES   ${name}`);
  if (!killer) process.exitCode = 1;
}
