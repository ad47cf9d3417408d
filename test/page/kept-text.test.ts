import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import { inUnits } from '../../src/page/convert-units';
import { changed, draftFrom, jobFileFrom, type Draft } from '../../src/page/draft';
import { keptText } from '../../src/page/files/kept-text';
import { starters, tables } from '../helpers/starters';

const textOf = (name: string): string => readFileSync(`templates/${name}.yaml`, 'utf8');
const kept = (text: string, draft: Draft): string => keptText(text, draft, jobFileFrom(draft));
const comments = (text: string): string[] => text.match(/#[^\n]*/gu) ?? [];

describe('a job file saved back', () => {
  it.each(starters)('%s: says the same job, every comment kept, and nothing changed keeps every line', (name) => {
    const text = textOf(name);
    const draft = draftFrom(text);
    expect(kept(text, draft).trim().split(/\s+/u)).toEqual(text.trim().split(/\s+/u));
    const other = changed(changed(draft, ['bend', 'length'], '512'), ['effort', 'hands'], '250 N');
    expect(comments(kept(text, other))).toEqual(comments(text));
    expect(parseJob(kept(text, other), tables).job).toEqual(parseJob(jobFileFrom(other), tables).job);
  });

  it('writes one value for two ends as it was, and as two once they differ', () => {
    const text = 'title: A # mine\nbend:\n  radius: 38.1 # as the mock-up\n  length: 400\n';
    const draft = draftFrom(text);
    expect(kept(text, changed(draft, ['bend', 'length'], '401'))).toBe(
      'title: A # mine\nbend:\n  radius: 38.1 # as the mock-up\n  length: 401\n',
    );
    const tapered = kept(text, changed(draft, ['bend', 'radius', 'to'], '50'));
    expect(parseJob(tapered, tables).findings).toEqual(
      parseJob(jobFileFrom(changed(draft, ['bend', 'radius', 'to'], '50')), tables).findings.map(
        (finding) => expect.objectContaining({ code: finding.code, path: finding.path }) as unknown,
      ),
    );
    expect(tapered).toContain('# mine');
    expect(draftFrom(tapered)).toEqual(changed(draft, ['bend', 'radius', 'to'], '50'));
  });

  it('takes out what was emptied, and a whole other unit goes through', () => {
    const text = textOf('plain-curve');
    const draft = draftFrom(text);
    expect(draftFrom(kept(text, changed(draft, ['title'], undefined)))).toEqual(changed(draft, ['title'], undefined));
    const inches = inUnits(draft, 'mm', 'in');
    expect(draftFrom(kept(text, inches))).toEqual(inches);
    expect(comments(kept(text, inches))).toEqual(comments(text));
  });

  it('that cannot be taken apart is written anew', () => {
    const draft = draftFrom(textOf('plain-curve'));
    expect(kept('title: [', draft)).toBe(jobFileFrom(draft));
    expect(kept('', draft)).toBe(jobFileFrom(draft));
  });
});
