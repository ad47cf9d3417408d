import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseFile, type ParsedFile } from '../../../src/job/parse';
import { inUnits } from '../../../src/page/convert-units';
import { changed, nodeAt } from '../../../src/page/draft';
import { countedText, openPanelText, withDraft, withField, withText } from '../../../src/page/panel/panel-draft';
import { rootOf } from '../../../src/page/panel/panel-root';
import { lineOf, valueOf } from '../../../src/page/structured';
import { panelStarters, tables } from '../../helpers/starters';

const textOf = (name: string): string => readFileSync(`templates/panels/${name}.yaml`, 'utf8');
const jobOf = (text: string): ParsedFile['job'] => parseFile(text, tables).job;

describe('a panel’s job on the page', () => {
  it('one number changed touches nothing else of the text', () => {
    const held = openPanelText(textOf('hood-side'));
    const { text } = withField(held, ['bends', 0, 'angle'], '88');
    expect(text).toBe(textOf('hood-side').replace('angle: 90', 'angle: 88'));
    const radius = withField(held, ['bends', 0, 'radius'], changed({ short: '1-1/4', back: '1-3/4' }, ['back'], '2'));
    expect(radius.text).toBe(textOf('hood-side').replace('back: 1-3/4 }', 'back: 2 }'));
    const corner = valueOf('[[0, 0], [22, 0], [22, 9.5], [0, 9]]');
    expect(withField(held, ['base', 'corners'], corner).text).toBe(textOf('hood-side').replace('[22, 9]', '[22, 9.5]'));
  });

  it('what is typed letter by letter stays as typed: the fields are no echo of the file', () => {
    let held = openPanelText(textOf('tray'));
    for (const typed of ['9', '90', '90.', '90.0', '90.05']) {
      held = withField(held, ['bends', 0, 'angle'], typed);
      expect(nodeAt(held.draft, ['bends', 0, 'angle'])).toBe(typed);
    }
    expect(held.text).toContain('{ on: left, angle: 90.05,');
  });

  it.each(panelStarters)('%s: a bend taken out and one put in says the job it looks like, comments kept', (name) => {
    const held = openPanelText(textOf(name));
    const bends = nodeAt(held.draft, ['bends']);
    const [first] = Array.isArray(bends) ? (bends as readonly (typeof held.draft)[]) : [];
    const fewer = withField(held, ['bends', 0], undefined);
    const wanted = Array.isArray(bends) && bends.length > 1 ? [] : ['too-few'];
    expect(parseFile(fewer.text, tables).findings.map(({ code }) => code)).toEqual(wanted);
    expect(fewer.text).toContain(textOf(name).split('\n')[0] ?? '');
    const again = withField(fewer, ['bends'], [first ?? {}, ...(nodeAt(fewer.draft, ['bends']) as [])]);
    expect(jobOf(again.text)).toEqual(jobOf(held.text));
  });

  it('a bend that is still being filled in does not count', () => {
    const held = openPanelText(textOf('bracket'));
    const begun = withField(held, ['bends', 2], {});
    expect(jobOf(countedText(begun))).toEqual(jobOf(held.text));
    const whole = withField(begun, ['bends', 2], { on: 'left', angle: '90', radius: '20' });
    expect(parseFile(countedText(whole), tables).findings).toEqual([
      expect.objectContaining({ code: 'leg-or-height', path: 'bends[2]' }) as unknown,
    ]);
  });

  it.each(panelStarters)('%s: in the other unit it is the same panel', (name) => {
    const held = openPanelText(textOf(name));
    const root = rootOf(held.draft);
    const [from, to] = nodeAt(held.draft, ['units']) === 'in' ? (['in', 'mm'] as const) : (['mm', 'in'] as const);
    const other = withDraft(held, inUnits(held.draft, from, to, root));
    const [was, is] = [held.text, other.text].map((text) => {
      const parsed = parseFile(text, tables);
      if (parsed.kind !== 'panel' || !parsed.job) throw new Error(JSON.stringify(parsed.findings));
      return parsed.job;
    });
    expect(is?.units).toBe(to);
    // Inches are given to 0.00001 in, 0.00025 mm.
    const lengths = (job: unknown): number[] =>
      JSON.stringify(job)
        .match(/-?\d+(?:\.\d+)?/gu)
        ?.map(Number) ?? [];
    // What is left to the program is round in either unit: only what the file says is compared.
    const shape = ({ panel }: NonNullable<typeof was>): unknown =>
      panel.kind === 'traced' ? [panel.outline, panel.bends] : [panel.base, panel.bends, panel.corners];
    const [before, after] = [was, is].map((job) => (job ? lengths(shape(job)) : []));
    if (!before || !after) throw new Error('no lengths');
    expect(before.length).toBeGreaterThan(8);
    expect(after.length).toBe(before.length);
    before.forEach((value, index) => expect(Math.abs((after[index] ?? NaN) - value)).toBeLessThan(3e-4));
  });

  it('a text that cannot be taken apart leaves the fields as they were', () => {
    const held = openPanelText(textOf('tray'));
    expect(withText(held, 'title: [').draft).toEqual(held.draft);
    expect(withText(held, textOf('bracket')).draft).toEqual(openPanelText(textOf('bracket')).draft);
  });
});

describe('lists and blocks in one line', () => {
  it('are written and read as the file has them', () => {
    const corners = '[[0, 0], [22, 0], [22, 9], [0, 9]]';
    expect(lineOf(valueOf(corners))).toBe(corners);
    expect(valueOf('{ short: 1-1/4, back: 45 mm }')).toEqual({ short: '1-1/4', back: '45 mm' });
    expect(lineOf({ short: '1-1/4', back: '45 mm' })).toBe('{ short: 1-1/4, back: 45 mm }');
    expect(valueOf('[[0, 0], [22')).toBe('[[0, 0], [22');
    expect(valueOf('30')).toBe('30');
  });

  it('no text, however mangled, throws', () => {
    fc.assert(fc.property(fc.string(), (text) => void lineOf(valueOf(`[${text}`))));
  });
});
