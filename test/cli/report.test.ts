import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { finding } from '../../src/findings/finding';
import { startProgress } from '../../src/cli/progress';
import { printFindings } from '../../src/cli/report';

describe('findings in words', () => {
  it('say the level, line, path, message, what was got, what is allowed and what to try', () => {
    const text = printFindings(
      [{ ...finding('bad-value', 'units', { got: '“cubit”', near: null, allowed: ['mm', 'in'] }), line: 3 }],
      'mm',
      false,
    );
    expect(text).toBe(
      'error at line 3, units: units cannot be “cubit” [bad-value]\n    got:     “cubit”\n    allowed: mm, in\n    try:     write one of mm, in\n',
    );
  });

  it('leave out what there is none of', () => {
    expect(printFindings([finding('one-strip', '')], 'mm', false)).toBe(
      'note: one strip says nothing of how far the sheet and your measuring vary [one-strip]\n    try:     bend two more, from elsewhere on the sheet\n',
    );
  });

  it('are coloured only where the terminal shows colour', () => {
    const findings = [
      finding('missing', 'bend', { holds: [] }),
      finding('twist', '', { twist: 1 }),
      finding('one-strip', ''),
    ];
    expect(printFindings(findings, 'mm', false)).not.toContain('\u001B');
    expect(printFindings(findings, 'mm', true).split('\u001B[')).toHaveLength(1 + 6);
  });
});

describe('the line of progress', () => {
  const begin = (progress: boolean): { said: string[]; line: ReturnType<typeof startProgress> } => {
    const said: string[] = [];
    const io = {
      cwd: '/',
      input: () => Readable.from([]),
      out: () => undefined,
      err: (text: string) => void said.push(text),
      width: 80,
      colour: false,
      errColour: false,
      progress,
    };
    return { said, line: startProgress(io, 'working') };
  };

  it('stands there while the work runs, and is erased once', () => {
    const { said, line } = begin(true);
    line.say('drawing');
    line.stop();
    line.stop();
    // ECMA-48: CSI K erases to the end of the line.
    expect(said).toEqual(['\r\u001B[Kworking …', '\r\u001B[Kdrawing …', '\r\u001B[K']);
  });

  it('says nothing where there is no terminal', () => {
    const { said, line } = begin(false);
    line.say('drawing');
    line.stop();
    expect(said).toEqual([]);
  });
});
