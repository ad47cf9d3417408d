import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/output/plan/plan';
import { freshFolder } from '../helpers/fresh-folder';
import { bendbuck } from '../helpers/program';

const TAPERED = readFileSync('templates/tapered-curve.yaml', 'utf8');
const INCH = readFileSync('templates/plain-curve-inch.yaml', 'utf8');

function withJob(text: string): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'job.yaml'), text);
  return folder;
}

/** The block printed for the job file. */
const blockIn = (out: string): string => /^trials:\n(?: {2}- .*\n)+/mu.exec(out)?.[0] ?? '';

const strips = [
  '--radius',
  '40',
  '--bent',
  '95',
  '--left',
  '82.5',
  '--width',
  '20',
  '--radius',
  '1-9/16 in',
  '--bent',
  '95°',
  '--left',
  '81',
];

describe('trial', () => {
  it('without strips says what to cut, bend and measure, and writes nothing', async () => {
    const folder = withJob(TAPERED);
    const { code, out, err } = await bendbuck(folder, ['trial', 'job.yaml']);
    expect([code, err]).toEqual([0, '']);
    // 8 × 1.6 mm = 12.8 is less than a strip that can be handled; the form's radii are about 33 and 41 mm.
    expect(out).toMatch(/15\.00 mm wide \(at least 8 times the thickness\)/u);
    expect(out).toMatch(/disc of radius 3[5-8]\.00 mm/u);
    expect(out).toMatch(/bendbuck trial JOB --radius 3[5-8] --bent \d+ --left \d+ --width 15/u);
    expect(readdirSync(folder)).toEqual(['job.yaml']);
  });

  it('what it proposes to type can be typed', async () => {
    const folder = withJob(INCH);
    const advice = (await bendbuck(folder, ['trial', 'job.yaml'])).out;
    const options = /bendbuck trial JOB (.*)/u.exec(advice)?.[1]?.split(' ') ?? [];
    expect(options).toHaveLength(8);
    const { code, out } = await bendbuck(folder, ['trial', 'job.yaml', ...options]);
    expect(code).toBe(0);
    // Angles in whole degrees of some 15° of springback: near the tables' own factor.
    const factor = Number(/Factor from trials +([\d.]+)/u.exec(out)?.[1]);
    expect(Math.abs(factor - 1)).toBeLessThan(0.1);
  });

  it('fits the strips given, shows the spread and what it does, and a block that makes plan use the same factor', async () => {
    const folder = withJob(TAPERED);
    const { code, out, err } = await bendbuck(folder, ['trial', 'job.yaml', ...strips]);
    expect([code, err]).toEqual([0, '']);
    expect(blockIn(out)).toBe(
      'trials:\n  - { radius: 40, bent: 95, left: 82.5, width: 20 }\n  - { radius: 39.6875, bent: 95, left: 81 }\n',
    );
    expect(readdirSync(folder)).toEqual(['job.yaml']);

    writeFileSync(join(folder, 'pasted.yaml'), `${TAPERED}\n${blockIn(out)}`);
    const plan = JSON.parse((await bendbuck(folder, ['plan', 'pasted.yaml', '--json'])).out) as Plan;
    const { factor = NaN } = plan.sheet ?? {};
    expect(out).toMatch(new RegExp(`^ *Factor from trials +${factor.toFixed(3)}$`, 'mu'));
    expect(out).toContain(`${plan.trials?.spread.low.toFixed(3)} to ${plan.trials?.spread.high.toFixed(3)}`);
    const [low, now, high] = [
      plan.trials?.effect.low?.form.from,
      plan.bend?.form.from,
      plan.trials?.effect.high?.form.from,
    ].map((value) => `${value?.toFixed(2)} mm`);
    expect(out).toMatch(new RegExp(`Form radius, end A +[\\d.]+ mm +${low} +${now} +${high}`, 'u'));
    expect((await bendbuck(folder, ['plan', 'pasted.yaml'])).out).toMatch(
      new RegExp(`from trials +${factor.toFixed(3)}\n`, 'u'),
    );
    // The job's own strips, fitted without any given.
    expect((await bendbuck(folder, ['trial', 'pasted.yaml'])).out.replace(/\n(?:note|warning)[\s\S]*/u, '')).toBe(
      out.replace(/\n(?:note|warning)[\s\S]*/u, ''),
    );
  });

  it('adds strips given to those of the job, in inches for a job in inches', async () => {
    const folder = withJob(`${INCH}\ntrials: [{ radius: 1-1/4, bent: 105, left: 90 }]\n`);
    const { code, out } = await bendbuck(folder, [
      'trial',
      'job.yaml',
      '--radius',
      '1-3/8',
      '--bent',
      '100',
      '--left',
      '84.5 deg',
      '--width',
      '5/8',
    ]);
    expect(code).toBe(0);
    expect(blockIn(out)).toBe(
      'trials:\n  - { radius: 1.25, bent: 105, left: 90 }\n  - { radius: 1.375, bent: 100, left: 84.5, width: 0.625 }\n',
    );
  });

  it('takes a finished part: says what came out, what to do about the form and the pull, and a block with the form’s radius in it', async () => {
    const folder = withJob(TAPERED);
    const part = ['--part-at', '0', '--part-radius', '40', '--part-angle', '86.5', '--part-wrap', '92'];
    const { code, out, err } = await bendbuck(folder, ['trial', 'job.yaml', ...part]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /off a form of 32\.\d\d mm: radius 40\.00 mm \(reckoned 38\.00 mm\), angle 86\.5° \(reckoned 9\d\.\d°\)/u,
    );
    expect(out).toMatch(/Recut the form there 1\.\d\d mm smaller, to 31\.\d\d mm\./u);
    expect(out).toMatch(/On the form as it is: pull \d\.\d° further than before, to 9\d\.\d° of wrap\./u);
    expect(out).toMatch(/Good to: radius ± 0\.80 mm; angle ± 1\.0°/u);
    const block = blockIn(out);
    expect(block).toMatch(
      /^trials:\n {2}- \{ part: \{ at: 0, radius: 40, angle: 86\.5, wrap: 92, form: 32\.\d+ \} \}\n$/u,
    );
    // Pasted, the plan has the same fit, though its form is another now.
    writeFileSync(join(folder, 'pasted.yaml'), `${TAPERED}\n${block}`);
    const plan = JSON.parse((await bendbuck(folder, ['plan', 'pasted.yaml', '--json'])).out) as Plan;
    expect(out).toMatch(new RegExp(`^ *Factor from trials +${plan.sheet?.factor.toFixed(3)}$`, 'mu'));
    expect(plan.findings.map((found) => found.code)).not.toContain('part-form-taken');
    expect((await bendbuck(folder, ['plan', 'pasted.yaml'])).out).toContain('What came out');
  });

  it.each([
    [['--part-radius', '40'], /--part-radius stands before any --part-at/u],
    [['--radius', '40', '--bent', '95', '--left', '84', '--part-angle', '80'], /stands before any --part-at/u],
    [['--part-at', '0', '--part-radius', '4', '--part-radius', '5'], /part 1 has two --part-radius/u],
    [['--part-at', '0', '--part-angle', 'square'], /--part-angle should be a number of degrees/u],
  ])('%j is no command line: exit 2', async (options, message) => {
    const { code, err } = await bendbuck(withJob(TAPERED), ['trial', 'job.yaml', ...options]);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  it('names the options of a part that is refused', async () => {
    const options = ['--part-at', '700', '--part-angle', '88'];
    const { code, out } = await bendbuck(withJob(TAPERED), ['trial', 'job.yaml', ...options]);
    expect(code).toBe(2);
    expect(out).toMatch(/error at part 1, --part-at: .*\[part-outside-bend\]/u);
    expect(out).toMatch(/error at part 1, --part-wrap: .*\[part-lacks-wrap\]/u);
    expect(blockIn(out)).toBe('');
  });

  it.each([
    [['--bent', '95'], /stands before any --radius/u],
    [['--radius', '40', '--bent', '95'], /strip 1 lacks --left/u],
    [['--radius', '40', '--bent', '95', '--left', '80', '--left', '81'], /two --left/u],
    [['--radius', '40', '--bent', 'ninety', '--left', '80'], /--bent should be a number of degrees/u],
    [['--radius', '40', '--bent', '1e99', '--left', '80'], /--bent should be a number of degrees/u],
    [['--radius'], /argument missing/u],
    [['--disc', '40'], /unknown option/u],
  ])('%j is no command line: exit 2', async (options, message) => {
    const { code, out, err } = await bendbuck(withJob(TAPERED), ['trial', 'job.yaml', ...options]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });

  it.each([
    [
      'a strip that kept its bend',
      ['--radius', '40', '--bent', '95', '--left', '95'],
      /error at strip 1, --left: .*every sheet springs back.*\[no-springback\]/u,
    ],
    ['one that came back flat', ['--radius', '40', '--bent', '95', '--left', '0'], /\[strip-came-back-flat\]/u],
    [
      'one too narrow',
      ['--radius', '40', '--bent', '95', '--left', '80', '--width', '12.5'],
      /error at strip 1, --width: .*7\.81 times its thickness.*\[strip-too-narrow\]/u,
    ],
    [
      'one of another sheet',
      ['--radius', '40', '--bent', '95', '--left', '82', '--radius', '40', '--bent', '90', '--left', '40'],
      /error at strip 2: .*times as strong as the tables have it.*\[trial-contradicts-sheet\]/u,
    ],
    [
      'a radius that is none',
      ['--radius', 'forty', '--bent', '95', '--left', '80'],
      /error at strip 1, --radius: .*\[bad-length\]/u,
    ],
    [
      'angles out of reach',
      ['--radius', '40', '--bent', '300', '--left', '-4'],
      /error at strip 1, --bent: [\s\S]*error at strip 1, --left: /u,
    ],
  ])('%s: exit 2 with the reason, no block to paste', async (_, options, message) => {
    const folder = withJob(TAPERED);
    const { code, out } = await bendbuck(folder, ['trial', 'job.yaml', ...options]);
    expect(code).toBe(2);
    expect(out).toMatch(message);
    expect(blockIn(out)).toBe('');
    expect(readdirSync(folder)).toEqual(['job.yaml']);
  });

  it('a bad strip in the job stops make with its line', async () => {
    const folder = withJob(
      `${TAPERED}\ntrials:\n  - { radius: 40, bent: 95, left: 82 }\n  - { radius: 40, bent: 95, left: 96 }\n`,
    );
    const line = TAPERED.split('\n').length + 3;
    expect(await bendbuck(folder, ['make', 'job.yaml'])).toMatchObject({
      code: 2,
      err: expect.stringContaining(`line ${line}, trials[1].left`) as string,
    });
    expect(readdirSync(folder)).toEqual(['job.yaml']);
  });

  it('a job that cannot be read says why', async () => {
    expect(await bendbuck(withJob(TAPERED.replace('aluminium', 'aluminum')), ['trial', 'job.yaml'])).toMatchObject({
      code: 2,
      out: expect.stringContaining('unknown-metal') as string,
    });
    expect((await bendbuck(freshFolder(), ['trial', '-'], TAPERED)).code).toBe(0);
  });
});
