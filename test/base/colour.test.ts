import { describe, expect, it } from 'vitest';
import { parseColour } from '../../src/base/colour';

describe('a colour as people write it', () => {
  it.each([
    ['red', '#ff0000'],
    [' Magenta ', '#ff00ff'],
    ['#00708C', '#00708c'],
    ['#123456', '#123456'],
    ['#12345', null],
    ['#1234567', null],
    ['x#123456', null],
    ['123456', null],
    ['#12345g', null],
    ['orange', null],
    ['toString', null],
    ['', null],
  ])('%s is %s', (text, expected) => {
    expect(parseColour(text)).toBe(expected);
  });
});
