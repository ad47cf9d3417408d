import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import { loadTables } from '../../src/tables/bundled';

const tables = loadTables();
const job = (units: string, paper = ''): string => `title: Hatch trim
units: ${units}
sheet: { material: aluminium-3003-h14, thickness: 1.6 mm }
bend: { angle: 90, length: 400 mm, radius: 40 mm, legs: { held: 30 mm, free: 150 mm } }
${paper}
`;

describe('the paper block', () => {
  it('is A4 for jobs in mm and letter for jobs in inches unless said', () => {
    expect(parseJob(job('mm'), tables).job?.paper).toEqual({
      size: 'A4',
      orientation: 'auto',
      width: null,
      margin: 7,
      overlap: 10,
      blanks: 'left',
    });
    expect(parseJob(job('in'), tables).job?.paper.size).toBe('letter');
  });

  it('takes sizes, a roll with its width, margin and overlap in the job’s unit', () => {
    expect(
      parseJob(job('in', 'paper: { size: roll, width: 24, margin: 1/4, overlap: 1/2 in }'), tables).job?.paper,
    ).toEqual({
      size: 'roll',
      orientation: 'auto',
      width: 609.6,
      margin: 6.35,
      overlap: 12.7,
      blanks: 'left',
    });
    expect(parseJob(job('mm', 'paper: { size: A3, orientation: landscape }'), tables).job?.paper).toMatchObject({
      size: 'A3',
      orientation: 'landscape',
    });
  });

  it.each([
    ['paper: { size: roll }', 'roll-without-width', 'paper.width'],
    ['paper: { size: A4, width: 610 }', 'width-without-roll', 'paper.width'],
    ['paper: { margin: 80 }', 'out-of-range', 'paper.margin'],
    ['paper: { overlap: 1 }', 'out-of-range', 'paper.overlap'],
    ['paper: { size: a4 }', 'bad-value', 'paper.size'],
    ['paper: { sise: A4 }', 'unknown-key', 'paper.sise'],
  ])('%s is refused as %s', (paper, code, path) => {
    const { job: read, findings } = parseJob(job('mm', paper), tables);
    expect(read).toBeNull();
    expect(findings.map((finding) => [finding.code, finding.path])).toEqual([[code, path]]);
  });
});
