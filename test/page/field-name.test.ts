import { describe, expect, it } from 'vitest';
import { groups, lists } from '../../src/page/field-list';
import { fieldName } from '../../src/page/field-name';
import { pathText } from '../../src/job/path';

describe('what the form calls a place of the job', () => {
  it('is the field’s own label, for every field', () => {
    for (const { path, label } of groups.flatMap(({ fields }) => fields)) expect(fieldName(pathText(path))).toBe(label);
    for (const { key, one, fields } of lists) {
      for (const { name, label } of fields) expect(fieldName(pathText([key, 2, name]))).toBe(`${one} 3: ${label}`);
    }
  });

  it.each([
    ['bend.radius', 'Inside radius at end A, Inside radius at end B'],
    ['bend.legs', 'Held leg, Free leg'],
    ['bend', 'Bend'],
    ['block', 'Finishing block'],
    ['runs', 'Runs'],
    ['trials[0]', 'strip 1'],
    ['runs[1].colour', 'run 2'],
    ['sheet.thickness.from', 'Thickness, or gauge as 18 ga'],
  ])('%s is %s', (path, expected) => {
    expect(fieldName(path)).toBe(expected);
  });

  it('a key the form does not know keeps its path', () => {
    expect(fieldName('paint')).toBe('paint');
    expect(fieldName('["bend.angle"]')).toBe('["bend.angle"]');
  });
});
