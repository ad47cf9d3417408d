import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayFindings } from '../../src/findings/say';
import { parseJob } from '../../src/job/parse';
import {
  changed,
  draftFrom,
  fromAddress,
  jobFileFrom,
  readDraft,
  readDraftFile,
  textAt,
  textToAddress,
  toAddress,
} from '../../src/page/draft';
import { cutFor, isFor, sections } from '../../src/page/field-list';
import { begin, edit, redo, settle, undo } from '../../src/page/history';
import { starters, tables } from '../helpers/starters';

describe('drafts', () => {
  it.each(starters.map((name) => `${name}.yaml`))('%s: fields and back give the same job', (name) => {
    const text = readFileSync(`templates/${name}`, 'utf8');
    expect(parseJob(jobFileFrom(draftFrom(text)), tables).job).toEqual(parseJob(text, tables).job);
  });

  it('the address carries the whole draft', () => {
    for (const name of starters.map((one) => `${one}.yaml`)) {
      const draft = draftFrom(readFileSync(`templates/${name}`, 'utf8'));
      expect(fromAddress(toAddress(draft))).toEqual({ draft, text: jobFileFrom(draft), problem: null });
    }
    expect(fromAddress('#other')).toBeNull();
    expect(fromAddress('#job=%E0%A4%A')).toEqual({
      draft: null,
      problem: expect.stringContaining('cut off') as string,
    });
  });

  it('a panel’s job is opened as one, from a file and from an address', () => {
    const panel = readFileSync('templates/panels/tray.yaml', 'utf8');
    expect(readDraft(panel)).toEqual({ draft: null, panel, problem: null });
    expect(fromAddress(textToAddress(panel))).toEqual({ draft: null, panel, problem: null });
  });

  it('no address, however mangled, throws', () => {
    fc.assert(fc.property(fc.string(), (text) => void fromAddress(`#job=${text}`)));
  });

  it.each([
    ['a key written twice', 'title: a\ntitle: b\n', 2],
    ['a bracket left open', 'title: a\nbend: { angle: 90\n', 3],
    ['an alias', 'title: &x a\nunits: *x\n', 1],
    ['a list', '- a\n- b\n', undefined],
    ['a bare word', 'hello', undefined],
  ])('%s is refused as the command line refuses it, with its line', (_, text, line) => {
    const { draft, problem } = readDraft(text);
    expect(draft).toBeNull();
    const said = sayFindings(parseJob(text, tables).findings, { units: 'mm' }).filter(({ level }) => level === 'error');
    expect(said.length).toBeGreaterThan(0);
    for (const one of said) expect(problem).toContain(one.message);
    if (line !== undefined) {
      expect(said[0]?.line).toBe(line);
      expect(problem).toMatch(new RegExp(`^line ${line}: `, 'u'));
    }
  });

  it('a picture is refused with the place, a job with wrong values is not', () => {
    // PNG (ISO/IEC 15948), 5.2: the signature of every file.
    const { draft, problem } = readDraftFile(Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10));
    expect([draft, problem]).toEqual([null, expect.stringMatching(/^line 1, character 1: .*UTF-8/u)]);
    expect(readDraft('title: a\nbend: { angle: 400, lenght: x }\n').draft).toEqual({
      title: 'a',
      bend: { angle: '400', lenght: 'x' },
    });
  });

  it('a change leaves the rest alone, and undefined takes a thing out', () => {
    const draft = { title: 'a', offcuts: [{ stock: 'x' }, { stock: 'y' }] };
    const after = changed(draft, ['offcuts', 0, 'stock'], 'z');
    expect(textAt(after, ['offcuts', 0, 'stock'])).toBe('z');
    expect(textAt(draft, ['offcuts', 0, 'stock'])).toBe('x');
    expect(changed(after, ['offcuts', 0], undefined)).toEqual({ title: 'a', offcuts: [{ stock: 'y' }] });
    expect(changed({}, ['sheet', 'thickness'], '1.6')).toEqual({ sheet: { thickness: '1.6' } });
  });

  it('numbers become numbers, names stay text', () => {
    expect(
      jobFileFrom({ title: '12', bend: { angle: '90', length: '1-1/2 in', radius: { from: '3', to: '3' } } }),
    ).toBe('title: "12"\nbend:\n  angle: 90\n  length: 1-1/2 in\n  radius: 3\n');
  });
});

describe('the cut block', () => {
  it('keeps what every tool has and drops what was another’s, so that no setting is left that the job reader refuses', () => {
    const draft = { title: 'x', cut: { with: 'router', bit: '6', bridges: 'true', fit: '0.3', gap: '12' } };
    expect(cutFor(draft, 'laser')).toEqual({ with: 'laser', fit: '0.3', gap: '12' });
    expect(cutFor(draft, '')).toEqual({ gap: '12' });
    expect(cutFor({ cut: { with: 'laser', kerf: '0.1' } }, '')).toBeUndefined();
    const shown = (tool: string): string[] =>
      sections.flatMap(({ rows }) =>
        rows.filter(({ field }) => isFor(field, { cut: { with: tool } })).map(({ path }) => path.join('.')),
      );
    expect(shown('laser')).toContain('cut.kerf');
    expect(shown('laser')).not.toContain('cut.bit');
    expect(shown('')).toContain('cut.turn');
  });

  it('bridges are a yes or a no', () => {
    expect(jobFileFrom({ cut: { with: 'router', bridges: 'true' } })).toBe('cut:\n  with: router\n  bridges: true\n');
  });
});

describe('undo and redo', () => {
  it('take back a stretch of typing in one place at once', () => {
    const typed = ['a', 'ab', 'abc'].reduce((history, text) => edit(history, text, 'title'), begin(''));
    expect(undo(typed).present).toBe('');
    expect(redo(undo(typed)).present).toBe('abc');
    const later = edit(settle(typed), 'abcd', 'title');
    expect(undo(later).present).toBe('abc');
    expect(undo(begin('x')).present).toBe('x');
    expect(redo(begin('x')).present).toBe('x');
  });

  it('a change after going back forgets what was ahead', () => {
    const history = edit(undo(edit(edit(begin('a'), 'b', 'p'), 'c', 'q')), 'd', 'r');
    expect(redo(history).present).toBe('d');
    expect(undo(history).present).toBe('b');
  });
});
