import { describe, expect, it } from 'vitest';
import { homeOf, labelOf } from '../../src/job/fields/label';
import { fieldsOf, listsOf } from '../../src/job/fields/look';
import { pathText } from '../../src/job/path';

describe('what the form calls a place of the job', () => {
  it('is the field’s own label, for every field', () => {
    const [fields, lists] = [fieldsOf(), listsOf()];
    expect(fields.length).toBeGreaterThan(40);
    for (const { path, field } of fields) expect(labelOf(pathText(path))).toBe(field.label);
    expect(lists.map(({ path }) => pathText(path))).toEqual(['trials', 'offcuts']);
    for (const { path, list } of lists) {
      for (const { one, key: under, fields } of list.kinds)
        for (const [key, field] of Object.entries(fields))
          expect(labelOf(pathText([...path, 2, ...(under === null ? [] : [under]), key]))).toBe(
            `${one} 3: ${field.node === 'field' ? field.label : 'no field'}`,
          );
    }
  });

  it('no two fields have one label, and every field is in a part of the form', () => {
    const labels = fieldsOf().map(({ field }) => field.label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(fieldsOf().filter(({ group }) => group === undefined)).toEqual([]);
  });

  it.each([
    ['bend.radius', 'Inside radius at end A, Inside radius at end B'],
    ['bend.legs', 'Held leg, Free leg'],
    ['bend', 'Bend'],
    ['block', 'Finishing block'],
    ['offcuts', 'Offcuts to use first'],
    ['trials[0]', 'strip 1'],
    ['trials[1].part', 'finished part 2'],
    ['trials[1].part.wrap', 'finished part 2: wrap it was pulled to'],
    ['offcuts[1].colour', 'offcut 2'],
    ['sheet.thickness.from', 'Thickness, or gauge as 18 ga'],
    ['paint', 'paint'],
    ['["bend.angle"]', '["bend.angle"]'],
  ])('%s is %s', (path, expected) => {
    expect(labelOf(path)).toBe(expected);
  });

  it.each([
    ['bend.angle', 'bend.angle'],
    ['sheet.thickness.from', 'sheet.thickness'],
    ['bend.radius', 'bend.radius.from'],
    ['bend', 'bend.angle'],
    ['board.spine', 'board.spine.stock'],
    ['offcuts[1]', 'offcuts[1].stock'],
    ['trials[0].bent', 'trials[0].bent'],
    ['trials[0].part', 'trials[0].part.at'],
    ['offcuts', null],
    ['paint', null],
    ['', null],
  ])('what is found at %s is shown at %s', (path, expected) => {
    expect(homeOf(path)).toBe(expected);
  });
});
