import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { exampleIn } from '../../src/job/fields/field';
import { jobFields } from '../../src/job/fields/index';
import { allowedText, panelReferenceTable, referenceTable, unlessSaidText } from '../../src/job/fields/reference';
import { assemblyFields } from '../../src/job/panel/assembly';
import { panelFields, tracedFields } from '../../src/job/panel/fields';
import { fieldAt, fieldsOf, knownKeys, listsOf } from '../../src/job/fields/look';
import { parseJob } from '../../src/job/parse';
import { glossary, wordsTable } from '../../src/tables/words';
import { changed, draftFrom, jobFileFrom } from '../../src/page/draft';
import { tables } from '../helpers/starters';

const field = (path: string) => {
  const found = fieldAt(path.split('.'));
  if (!found) throw new Error(`no field at ${path}`);
  return found;
};

describe('the README’s table of every key', () => {
  it('is what the described fields say (npm run reference writes it)', () => {
    expect(readFileSync('README.md', 'utf8')).toContain(`\n\n${referenceTable(tables)}\n\n`);
  });

  it('has the keys of a panel apart', () => {
    const table = panelReferenceTable(panelFields, [jobFields], tables);
    expect(readFileSync('README.md', 'utf8')).toContain(`\n\n${table}\n\n`);
    const traced = panelReferenceTable(tracedFields, [jobFields], tables);
    expect(readFileSync('README.md', 'utf8')).toContain(`\n\n${traced}\n\n`);
    expect(traced).toContain('`outline.file`');
    const assembly = panelReferenceTable(assemblyFields, [jobFields], tables);
    expect(readFileSync('README.md', 'utf8')).toContain(`\n\n${assembly}\n\n`);
    expect(assembly).toContain('`joins[].outer`');
    expect(table).toContain('`base.corners`');
    expect(table).not.toContain('`sheet.material`');
    // What is made of several is said there as the schema has it.
    expect(table).toContain('| a list of names | none |');
    expect(table).toContain('each with `treat` (mitre, open, lap, dress), `gap`, `rounded`, `block`');
  });

  it('has a row for every field, and none breaks it', () => {
    const rows = referenceTable(tables).split('\n');
    const inLists = listsOf()
      .flatMap(({ list }) => list.kinds)
      .reduce((sum, { fields }) => sum + Object.keys(fields).length, 0);
    expect(rows).toHaveLength(2 + fieldsOf().length + inLists);
    for (const row of rows) expect(row.split('|')).toHaveLength(6);
  });

  it('says bounds and what holds unless said, in both units and by tool', () => {
    expect(allowedText(field('bend.angle'), tables)).toBe('1 to 179°');
    expect(allowedText(field('bend.length'), tables)).toBe('20 to 6000 mm');
    expect(allowedText(field('cut.with'), tables)).toBe('`jigsaw`, `router`, `laser`');
    expect(unlessSaidText(field('bend.angle'), tables)).toBe('required');
    expect(unlessSaidText(field('effort.handForce'), tables)).toBe('by posture');
    expect(unlessSaidText(field('cut.fit'), tables)).toMatch(/^0\.2 mm, laser 0\.1 mm/u);
  });
});

/** Blocks that mean nothing half filled in. */
const BLOCKS: Readonly<Record<string, { readonly path: string[]; readonly fields: Record<string, string> }>> = {
  block: { path: ['block'], fields: { at: '310', length: '100' } },
  machine: { path: ['machine', 'bed'], fields: { width: '900', length: '900' } },
};

describe('what is said of a field holds', () => {
  const base = draftFrom(readFileSync('templates/tapered-curve.yaml', 'utf8'));

  it.each(
    fieldsOf().flatMap(({ path, field }) => {
      const example = exampleIn(field, 'mm');
      return example === '' ? [] : [{ key: path.join('.'), path, example, tool: field.tools?.[0] }];
    }),
  )('the example of $key, $example, is read without a mistake', ({ path, example, tool }) => {
    const cut = tool === undefined || tool === 'jigsaw' ? base : changed(base, ['cut', 'with'], tool);
    const roomy = path[0] === 'paper' && path[1] === 'width' ? changed(cut, ['paper', 'size'], 'roll') : cut;
    const around = BLOCKS[path[0] ?? ''];
    const whole = around ? changed(roomy, around.path, around.fields) : roomy;
    const written = String(parseYaml(example));
    const { findings } = parseJob(jobFileFrom(changed(whole, path, written)), tables);
    expect(findings).toEqual([]);
  });

  it('an example of lengths with their unit is in the job’s', () => {
    const examples = (units: 'mm' | 'in'): string[] =>
      [['bends', 0, 'radius'], ['corners']].map((path) => {
        const found = fieldAt(path, panelFields);
        if (!found) throw new Error(path.join('.'));
        return exampleIn(found, units);
      });
    expect(examples('mm')).toEqual(['{ short: 30 mm, back: 45 mm }', '{ long/short: { treat: mitre, gap: 3 mm } }']);
    expect(examples('in')).toEqual([
      '{ short: 1-1/4 in, back: 1-3/4 in }',
      '{ long/short: { treat: mitre, gap: 1/8 in } }',
    ]);
  });

  it('every typed field has an example', () => {
    const typed = fieldsOf().filter(({ field: { kind } }) => kind.choices === null);
    expect(typed.length).toBeGreaterThan(30);
    expect(typed.filter(({ field: { example } }) => example === undefined).map(({ path }) => path.join('.'))).toEqual(
      [],
    );
  });

  it('keys are known from the description', () => {
    expect(knownKeys(['bend'])).toEqual(['angle', 'length', 'radius', 'radiusOf', 'legs']);
    expect(knownKeys(['offcuts', 3])).toEqual(['stock', 'width', 'length', 'thickness']);
    expect(knownKeys(['bend', 'angle'])).toEqual([]);
  });
});

describe('the README’s glossary', () => {
  it('is what shared/words.json says, each word once (npm run reference writes it)', () => {
    expect(readFileSync('README.md', 'utf8')).toContain(`\n\n${wordsTable()}\n\n`);
    expect(new Set(glossary.map(({ word }) => word)).size).toBe(glossary.length);
    expect(glossary.length).toBeGreaterThan(15);
  });
});
