import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import { inUnits } from '../../src/page/convert-units';
import { changed, draftFrom, jobFileFrom, textAt } from '../../src/page/draft';
import { starters, tables } from '../helpers/starters';

const draftOf = (name: string) => draftFrom(readFileSync(`templates/${name}.yaml`, 'utf8'));
const bendOf = (text: string) => {
  const { job, findings } = parseJob(text, tables);
  if (!job) throw new Error(JSON.stringify(findings));
  return job;
};

describe('a job in the other unit', () => {
  it('has its bare lengths written anew: fractions where they are ones, else decimals', () => {
    const inches = inUnits(draftOf('plain-curve'), 'mm', 'in');
    expect(textAt(inches, ['units'])).toBe('in');
    expect(textAt(inches, ['bend', 'length'])).toBe('18');
    expect(textAt(inches, ['bend', 'radius', 'from'])).toBe('1-1/2');
    expect(textAt(inches, ['sheet', 'thickness'])).toBe('1/32');
    const odd = inUnits(changed(draftOf('plain-curve'), ['bend', 'length'], '457'), 'mm', 'in');
    expect(textAt(odd, ['bend', 'length'])).toBe('17.99213');
  });

  it('has its bare forces written anew: newtons beside mm, pounds beside inches', () => {
    const newtons = changed(draftOf('plain-curve'), ['effort', 'handForce'], '200');
    const pounds = inUnits(newtons, 'mm', 'in');
    expect(textAt(pounds, ['effort', 'handForce'])).toBe('44.962');
    expect(textAt(inUnits(pounds, 'in', 'mm'), ['effort', 'handForce'])).toBe('200.001');
    const said = changed(draftOf('plain-curve'), ['clamps', 'rating'], '900 N');
    expect(textAt(inUnits(said, 'mm', 'in'), ['clamps', 'rating'])).toBe('900 N');
    const read = bendOf(jobFileFrom(changed(draftOf('plain-curve-inch'), ['effort', 'handForce'], '45')));
    expect(read.effort.handForce).toBeCloseTo(45 * 0.45359237 * 9.80665, 9);
  });

  it('keeps what says its own unit, a gauge, and what is no length', () => {
    const typed = changed(
      changed(draftOf('plain-curve'), ['bend', 'length'], '18 in'),
      ['sheet', 'thickness'],
      '20 ga',
    );
    const inches = inUnits(changed(typed, ['bend', 'legs', 'held'], 'two'), 'mm', 'in');
    expect(textAt(inches, ['bend', 'length'])).toBe('18 in');
    expect(textAt(inches, ['sheet', 'thickness'])).toBe('20 ga');
    expect(textAt(inches, ['bend', 'legs', 'held'])).toBe('two');
    expect(textAt(inches, ['bend', 'angle'])).toBe('90');
  });

  it.each(starters)('%s: there and back is the same part, within what a line is wide', (name) => {
    const draft = draftOf(name);
    const own = textAt(draft, ['units']) === 'in' ? 'in' : 'mm';
    const other = own === 'in' ? 'mm' : 'in';
    const there = inUnits(draft, own, other);
    for (const text of [jobFileFrom(there), jobFileFrom(inUnits(there, other, own))]) {
      const [was, is] = [bendOf(jobFileFrom(draft)), bendOf(text)];
      expect(is.bend.length).toBeCloseTo(was.bend.length, 3);
      expect(is.bend.radius.from).toBeCloseTo(was.bend.radius.from, 3);
      expect(is.bend.radius.to).toBeCloseTo(was.bend.radius.to, 3);
      expect(is.bend.legs.free).toBeCloseTo(was.bend.legs.free, 3);
      expect(is.sheet.thickness).toBeCloseTo(was.sheet.thickness, 3);
    }
  });
});
