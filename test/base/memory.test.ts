import { describe, expect, it } from 'vitest';
import { afresh, memory } from '../../src/base/memory';

describe('what was worked out', () => {
  it('is given back where the same is asked from the same, compared by value', () => {
    const remember = memory();
    let worked = 0;
    const ask = (what: string, from: unknown): number => remember(what, from, () => ++worked);
    expect([ask('pull', { radius: 38 }), ask('pull', { radius: 38 }), ask('pull', { radius: 39 })]).toEqual([1, 1, 2]);
    expect(ask('foot', { radius: 38 })).toBe(3);
  });

  it('is kept where it is null too', () => {
    const remember = memory();
    expect(remember('pull', 1, () => null)).toBeNull();
    expect(remember('pull', 1, () => 5)).toBeNull();
  });

  it('is not kept by one that works everything out afresh', () => {
    let worked = 0;
    expect([afresh('pull', 1, () => ++worked), afresh('pull', 1, () => ++worked)]).toEqual([1, 2]);
  });
});
