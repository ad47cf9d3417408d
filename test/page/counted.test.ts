import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { listsOf } from '../../src/job/fields/look';
import { countedOf, isWhole } from '../../src/page/counted';
import { changed, draftFrom, fromAddress, nodeAt, toAddress, type Draft, type DraftPath } from '../../src/page/draft';
import { freshEntry } from '../../src/page/field-list';
import { work } from '../../src/page/work';

const base = draftFrom(readFileSync('templates/plain-curve.yaml', 'utf8'));
const [trials] = listsOf().filter(({ path }) => path[0] === 'trials');
if (!trials) throw new Error('no trials');
const [strip, part] = trials.list.kinds;
if (!strip || !part) throw new Error('two kinds');

const fill = (draft: Draft, ...values: readonly (readonly [DraftPath, string])[]): Draft =>
  values.reduce((held, [path, value]) => changed(held, path, value), draft);
const added = (kind: typeof strip, draft = base, index = 0): Draft =>
  changed(draft, ['trials', index], freshEntry(kind, draft, index));
const codes = (draft: Draft): string[] => work(draft).findings.map(({ code, path }) => `${code} ${path}`);

describe('a new trial on the page', () => {
  it.each([
    ['strip', strip],
    ['finished part', part],
  ] as const)('a %s just added changes nothing, and the address keeps it', (_, kind) => {
    const draft = added(kind);
    expect(isWhole(trials, draft, 0)).toBe(false);
    expect(work(draft).text).toBe(work(base).text);
    expect(work(draft).form?.planned.plan.bend).toEqual(work(base).form?.planned.plan.bend);
    expect(codes(draft)).toEqual(codes(base));
    expect(fromAddress(toAddress(draft))?.draft).toEqual(draft);
  });

  it('counts once it is whole, and not at any key before', () => {
    const typed: readonly (readonly [DraftPath, string])[] = [
      [['trials', 0, 'bent'], '9'],
      [['trials', 0, 'bent'], '95'],
      [['trials', 0, 'left'], '8'],
      [['trials', 0, 'left'], '84'],
    ];
    let draft = added(strip);
    for (const one of typed) {
      draft = fill(draft, one);
      // Half a number is a contradiction for a moment: told, and left out; the form stays.
      expect(work(draft).form?.planned.plan.bend?.angle).toBe(work(base).form?.planned.plan.bend?.angle);
    }
    expect(work(draft).form?.planned.plan.sheet.factor).not.toBe(1);
    const half = fill(added(strip), [['trials', 0, 'bent'], '95'], [['trials', 0, 'left'], '8']);
    expect(codes(half)).toContain('trial-contradicts-sheet trials[0]');
    expect(work(half).form?.planned.plan.sheet.factor).toBe(1);
    expect(work(half).text).toBe(work(base).text);
  });

  it('a finished part counts by its radius, and by its angle with the wrap', () => {
    const at = (key: string): DraftPath => ['trials', 0, 'part', key];
    const draft = added(part);
    const whole = (...values: readonly (readonly [string, string])[]): boolean =>
      isWhole(trials, fill(draft, ...values.map(([key, value]) => [at(key), value] as const)), 0);
    expect(whole()).toBe(false);
    expect(whole(['radius', '40'])).toBe(true);
    expect(whole(['angle', '88'])).toBe(false);
    expect(whole(['radius', '40'], ['angle', '88'])).toBe(false);
    expect(whole(['angle', '88'], ['wrap', '95'])).toBe(true);
    expect(whole(['radius', '40'], ['at', ' '])).toBe(false);
  });

  it('what is found of a later one is told beside it, not beside one that does not count', () => {
    const two = fill(added(strip, added(strip), 1), [['trials', 1, 'bent'], '95'], [['trials', 1, 'left'], '95']);
    expect(codes(two)).toContain('no-springback trials[1].left');
    const three = fill(added(part, two, 2), [['trials', 2, 'part', 'radius'], '40']);
    expect(codes(three)).toEqual(
      expect.arrayContaining(['no-springback trials[1].left', 'part-form-taken trials[2].part.form']),
    );
    expect(work(three).form?.planned.plan.trials?.parts).toHaveLength(1);
  });

  it('other lists keep what is typed, whole or not', () => {
    const draft = changed(base, ['offcuts', 0], { stock: 'mdf-18', width: '300' });
    expect(countedOf(draft).draft).toEqual(draft);
    expect(nodeAt(countedOf(added(strip)).draft, ['trials'])).toBeUndefined();
  });

  it('an error elsewhere still stands in the way', () => {
    const draft = changed(added(strip), ['bend', 'angle'], '200');
    expect(work(draft).form).toBeNull();
  });
});
