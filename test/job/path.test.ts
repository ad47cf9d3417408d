import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pathFromText, pathText } from '../../src/job/path';

it('prints the way a job is read', () => {
  expect(pathText(['bend', 'radius', 'from'])).toBe('bend.radius.from');
  expect(pathText(['offcuts', 1, 'width'])).toBe('offcuts[1].width');
  expect(pathText([])).toBe('');
  expect(pathText(['bend.angle'])).toBe('["bend.angle"]');
});

it('and back, whatever the keys', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.oneof(fc.nat(50), fc.string({ unit: 'binary' }), fc.constantFrom('a.b', '[0]', '"', '\\', '', '__proto__')),
      ),
      (path) => {
        expect(pathFromText(pathText(path))).toEqual(path);
      },
    ),
  );
});
