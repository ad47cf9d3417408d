import { expect, it } from 'vitest';
import { measuresIn } from '../../../src/output/shop-sheet/measures';

const plain = (text: string): string => text.replace(/\s/gu, ' ');

it('strengths and moduli are never said with an exponent', () => {
  // 1 ksi is 6.894757 MPa: a steel's modulus, MDF's, and a steel's yield.
  expect(plain(measuresIn('in').stress(203400))).toBe('29500 ksi');
  expect(plain(measuresIn('in').stress(2400))).toBe('348 ksi');
  expect(plain(measuresIn('in').stress(206.8))).toBe('30 ksi');
  expect(plain(measuresIn('mm').stress(203400))).toBe('203400 MPa');
});
