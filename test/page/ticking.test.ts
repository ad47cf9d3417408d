import { describe, expect, it } from 'vitest';
import { html } from '../../src/output/html';
import { caution, list, paragraph } from '../../src/output/shop-sheet/pieces';
import { stepLines } from '../../src/page/bench/step-lines';
import {
  countDone,
  keptAs,
  lineName,
  NOTHING_DONE,
  readTicking,
  ticked,
  writeTicking,
} from '../../src/page/bench/ticks';

describe('ticking off', () => {
  it('a line is ticked, and no longer; others stay as they are', () => {
    const one = ticked(ticked(NOTHING_DONE, lineName('cut', 0)), lineName('cut', 2));
    expect(countDone(one, 'cut', 3)).toBe(2);
    expect(countDone(ticked(one, lineName('cut', 0)), 'cut', 3)).toBe(1);
    expect(countDone(one, 'drill', 3)).toBe(0);
  });

  it('outlasts a reload', () => {
    const ticking = { step: 4, done: ['wrap/1', 'cut/0'] };
    expect(readTicking(writeTicking(ticking))).toEqual(ticking);
  });

  it.each([
    null,
    '',
    '{',
    '3',
    'null',
    '[]',
    '{"step":-1,"done":[]}',
    '{"step":1e99,"done":[]}',
    '{"step":1,"done":"x"}',
  ])('begins anew from what was not kept by us: %s', (text) => expect(readTicking(text)).toEqual(NOTHING_DONE));

  it('leaves out what is no line', () => {
    expect(readTicking('{"step":1,"done":[1,"cut/0",null]}')).toEqual({ step: 1, done: ['cut/0'] });
  });

  it('begins anew for a job with another number', () => {
    expect(keptAs('bend:\n  angle: 90\n')).not.toBe(keptAs('bend:\n  angle: 91\n'));
    expect(keptAs('a')).toBe(keptAs('a'));
  });
});

describe('a step of the shop sheet', () => {
  it('is a line for each entry and paragraph, its cautions apart, nothing lost', () => {
    const { lines, cautions } = stepLines([
      list('Saw.', [html('strong', {}, 'Then '), 'file.']),
      caution('Dust.'),
      paragraph('Sweep up.'),
    ]);
    expect(lines).toEqual([['Saw.'], [html('strong', {}, 'Then '), 'file.'], ['Sweep up.']]);
    expect(cautions).toEqual([caution('Dust.')]);
  });
});
