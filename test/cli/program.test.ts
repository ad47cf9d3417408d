import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/output/plan/plan';
import { freshFolder } from '../helpers/fresh-folder';
import { bendbuck, snapshot, spawned, start } from '../helpers/program';

const STARTER = readFileSync('templates/plain-curve.yaml', 'utf8');
const FOLDER = 'workshop-shelf-front-edge';

/** A folder with the starter job in it, changed as told. */
function withJob(change: (text: string) => string = (text) => text): string {
  const folder = freshFolder();
  writeFileSync(join(folder, 'job.yaml'), change(STARTER));
  return folder;
}

describe('new', () => {
  it('lists the starters with what each is', async () => {
    const { code, out } = await bendbuck(freshFolder(), ['new']);
    expect(code).toBe(0);
    expect(out).toMatch(/tapered-curve +A splash coaming/u);
  });

  it('copies a starter, and never over a file', async () => {
    const folder = freshFolder();
    expect((await bendbuck(folder, ['new', 'plain-curve', 'mine.yaml'])).code).toBe(0);
    expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe(STARTER);
    writeFileSync(join(folder, 'mine.yaml'), 'precious');
    expect(await bendbuck(folder, ['new', 'plain-curve', 'mine.yaml'])).toMatchObject({
      code: 3,
      err: expect.stringContaining('exists already') as string,
    });
    expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe('precious');
  });

  it('does not know other starters, and says which is near', async () => {
    expect(await bendbuck(freshFolder(), ['new', 'plane-curve'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('did you mean plain-curve') as string,
    });
    expect((await bendbuck(freshFolder(), ['new', '../package.json'])).code).toBe(2);
    expect(await bendbuck(freshFolder(), ['new', 'plain-curve', 'no/such/job.yaml'])).toMatchObject({
      code: 3,
      err: expect.stringContaining('there is no such place') as string,
    });
  });
});

describe('the built program', () => {
  it.each([
    ['what was asked for', ['plan', 'job.yaml'], 0],
    ['standard input', ['check', '-'], 0],
    ['a wrong command line', ['plan'], 2],
    ['no such file', ['plan', 'nothing.yaml'], 2],
    ['the starters', ['new'], 0],
  ])('says and returns the same as run in this process: %s', async (_, args, code) => {
    const folder = withJob();
    const built = spawned(folder, args, STARTER);
    expect(built).toEqual(await bendbuck(folder, args, STARTER));
    expect(built.code).toBe(code);
    expect(built.out + built.err).not.toBe('');
  });

  it('makes the same files, solids and prints on a thread of their own', async () => {
    const [built, here] = [withJob(), withJob()];
    expect(spawned(built, ['make', 'job.yaml']).code).toBe(0);
    expect((await bendbuck(here, ['make', 'job.yaml'])).code).toBe(0);
    const files = snapshot(join(built, 'out'));
    expect(Object.keys(files)).toContain(join(FOLDER, 'solids/form.3mf'));
    expect(files).toEqual(snapshot(join(here, 'out')));
  });
});

describe('check and plan', () => {
  it('check says so when all is well', async () => {
    expect(await bendbuck(withJob(), ['check', 'job.yaml'])).toMatchObject({
      code: 0,
      out: 'Nothing wrong, nothing doubtful.\n',
    });
  });

  it('plan prints a table, without colour in a pipe', async () => {
    const { code, out } = await bendbuck(withJob(), ['plan', 'job.yaml']);
    expect(code).toBe(0);
    expect(out).toContain('Leaves the form at a wrap of');
    expect(out).not.toContain('\u001B');
  });

  it('plan --json prints nothing but the plan, names as in the design', async () => {
    const { code, out, err } = await bendbuck(withJob(), ['plan', 'job.yaml', '--json']);
    expect([code, err]).toEqual([0, '']);
    const plan = JSON.parse(out) as Plan;
    expect(Object.keys(plan)).toEqual(
      expect.arrayContaining([
        'title',
        'sheet',
        'bend',
        'runs',
        'effort',
        'stations',
        'spine',
        'backings',
        'blank',
        'findings',
      ]),
    );
    expect(Object.keys(plan.bend ?? {})).toEqual(
      expect.arrayContaining([
        'angle',
        'length',
        'finished',
        'form',
        'wrap',
        'twist',
        'neutral',
        'allowance',
        'fan',
        'strain',
      ]),
    );
    expect(Object.keys(plan.effort ?? {})).toEqual(
      expect.arrayContaining([
        'moment',
        'lever',
        'handForce',
        'leverNeeded',
        'leverage',
        'clampForce',
        'clamps',
        'foot',
        'safety',
      ]),
    );
    expect(Object.keys(plan.stations[0] ?? {})).toEqual(
      expect.arrayContaining(['name', 'at', 'thickness', 'contact', 'radius', 'farRadius', 'bevel', 'screws']),
    );
    expect(Object.keys(plan.stations[0]?.screws[0] ?? {})).toEqual(
      expect.arrayContaining(['offset', 'size', 'length', 'pilot']),
    );
    expect(Object.keys(plan.spine ?? {})).toEqual(
      expect.arrayContaining(['length', 'thickness', 'widthFrom', 'widthTo', 'clampHoles', 'screwHoles']),
    );
    expect(Object.keys(plan.spine?.screwHoles[0] ?? {})).toEqual(
      expect.arrayContaining(['at', 'offset', 'diameter', 'countersink', 'side', 'holds']),
    );
    expect(plan.bend?.angle).toBeCloseTo(90, 10);
  });

  it('reads a job from standard input', async () => {
    expect(await bendbuck(freshFolder(), ['check', '-'], STARTER)).toMatchObject({ code: 0 });
  });

  it('reads a job from a pipe that is named like a file, and leaves off after far more than a job', () => {
    const main = resolve('dist/main.js');
    const shell = (command: string): string =>
      execFileSync('bash', ['-c', command], {
        cwd: withJob(),
        encoding: 'utf8',
        env: { ...process.env, NODE: process.execPath, MAIN: main },
      });
    expect(shell('"$NODE" "$MAIN" check <(cat job.yaml)')).toBe('Nothing wrong, nothing doubtful.\n');
    expect(shell('"$NODE" "$MAIN" check /dev/zero || test $? -eq 2')).toMatch(/job-too-long/u);
  });

  it('a long text is too long, whatever characters it is cut off between', async () => {
    const folder = freshFolder();
    for (const start of ['#', '# ']) {
      writeFileSync(join(folder, 'job.yaml'), start + 'é'.repeat(600_000));
      expect(await bendbuck(folder, ['check', 'job.yaml'])).toMatchObject({
        code: 2,
        out: expect.stringContaining('job-too-long') as string,
      });
    }
  });

  it('a reader that goes away is no fault, on stdout or stderr', () => {
    const shell = (command: string): string =>
      execFileSync('bash', ['-c', `${command}; echo "\${PIPESTATUS[0]}"`], {
        cwd: withJob(),
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'ignore'],
        env: { ...process.env, NODE: process.execPath, MAIN: resolve('dist/main.js') },
      });
    expect(shell('"$NODE" "$MAIN" plan job.yaml --json | true')).toBe('0\n');
    expect(shell('"$NODE" "$MAIN" plan nothing.yaml 2>&1 >/dev/null | true')).toBe('2\n');
  });

  it('a disk that takes nothing more is said, and exits 3', () => {
    const { status, stderr } = spawnSync(
      'bash',
      ['-c', '"$0" "$1" plan job.yaml >/dev/full', process.execPath, resolve('dist/main.js')],
      { cwd: withJob(), encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([3, 'cannot write what was to be printed (ENOSPC)\n']);
  });

  it('prints the findings and exits 2 where the job is impossible, --json too', async () => {
    const folder = withJob((text) => text.replace('angle: 90', 'angle: 168'));
    expect(await bendbuck(folder, ['plan', 'job.yaml'])).toMatchObject({
      code: 2,
      out: expect.stringMatching(/error at line \d+, bend\.angle: .*half-disc/u) as string,
    });
    const { code, out } = await bendbuck(folder, ['plan', 'job.yaml', '--json']);
    expect(code).toBe(2);
    const plan = JSON.parse(out) as Plan;
    expect(plan.findings.map((finding) => finding.code)).toContain('wrap-too-far');
    expect(plan.bend?.wrap.chosen).toBeGreaterThan(170);
    expect(plan.spine).toBeNull();
  });

  it('a job that cannot be read at all still gives JSON', async () => {
    const { code, out } = await bendbuck(freshFolder(), ['plan', '-', '--json'], 'title: [');
    expect(code).toBe(2);
    expect((JSON.parse(out) as Plan).findings[0]).toMatchObject({ code: 'unreadable', line: 1 });
  });
});

describe('bad command lines', () => {
  it.each([
    [['plan'], /missing required argument/u],
    [['plan', 'job.yaml', '--units', 'cubits'], /Allowed choices are mm, in/u],
    [['bend', 'job.yaml'], /unknown command/u],
    [['plan', 'nothing.yaml'], /there is no such file/u],
    [['plan', '.'], /this is a folder/u],
  ])('%j exits 2', async (args, message) => {
    const { code, err } = await bendbuck(withJob(), args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  it('a file that is not text exits 2', async () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'job.yaml'), Buffer.from([0xff, 0xfe, 0x80, 0x00]));
    expect(await bendbuck(folder, ['plan', 'job.yaml'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('UTF-8') as string,
    });
  });

  it('schema prints a JSON Schema', async () => {
    const { code, out } = await bendbuck(freshFolder(), ['schema']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
      else: { else: { else: { additionalProperties: false, properties: { bend: {} } } } },
    });
  });
});

describe('make', () => {
  it('writes a folder named after the title, the same bytes each time', async () => {
    const folder = withJob();
    const { code, out } = await bendbuck(folder, ['make', 'job.yaml']);
    expect(code).toBe(0);
    expect(out).toContain(join('out', FOLDER));
    // What to open first and why; all names only where they are asked for.
    expect(out.trim().split('\n').length).toBeLessThan(8);
    for (const name of ['shop-sheet.html', 'templates.pdf'])
      expect(out).toMatch(new RegExp(`^ {2}out/${FOLDER}/${name} +\\S.*$`, 'mu'));
    const first = snapshot(join(folder, 'out'));
    expect(Object.keys(first)).toContain(join(FOLDER, 'parts/spine.dxf'));
    expect(Object.values(first).some((bytes) => Buffer.from(bytes, 'base64').includes(folder))).toBe(false);
    const listed = await bendbuck(folder, ['make', 'job.yaml', '--list']);
    expect(listed.code).toBe(0);
    for (const path of Object.keys(first).filter((one) => !one.endsWith('bendbuck.json')))
      expect(listed.out).toContain(`\n  ${path.slice(FOLDER.length + 1)}\n`);
    expect(snapshot(join(folder, 'out'))).toEqual(first);
    expect(readdirSync(join(folder, 'out'))).toEqual([FOLDER]);
  });

  it.each([
    ['an unknown metal', 'unknown-metal', (text: string) => text.replace('steel-cold-rolled-cs', 'unobtainium')],
    ['a negative length', 'out-of-range', (text: string) => text.replace('length: 457.2', 'length: -3')],
    ['an absurd length', 'out-of-range', (text: string) => text.replace('length: 457.2', 'length: 99999999')],
    [
      'a taper as steep as its length',
      'taper-too-steep',
      (text: string) => text.replace('radius: 38.1', 'radius: { from: 20, to: 477.2 }'),
    ],
    [
      'a form that would not set the sheet',
      'would-not-set',
      (text: string) => text.replace('radius: 38.1', 'radius: 2000\n  radiusOf: form'),
    ],
    ['a wrap over 170°', 'wrap-too-far', (text: string) => text.replace('angle: 90', 'angle: 176')],
    ['runs, as they once were', 'runs-gone', (text: string) => `${text}runs: [{ name: a, from: 0, to: 200 }]\n`],
    [
      'a radius too small for screws',
      'radius-too-small-for-screws',
      (text: string) => text.replace('radius: 38.1', 'radius: 14'),
    ],
    [
      'a radius too small for clamps',
      'no-room-for-clamps',
      (text: string) => `${text.replace('radius: 38.1', 'radius: 8')}stations: { maxSag: 5 }\n`,
    ],
    ['NaN', 'wrong-kind', (text: string) => text.replace('length: 457.2', 'length: .nan')],
    ['a title with slashes', 'title-with-slash', (text: string) => text.replace('Workshop', '../../Workshop')],
    [
      'a title with control characters',
      'control-characters',
      (text: string) => text.replace('Workshop shelf front edge', '"a\\u0000b"'),
    ],
    ['10 MB of YAML', 'job-too-long', (text: string) => text + '# padding\n'.repeat(1_000_000)],
    ['an alias bomb', 'yaml-alias', () => 'a: &a [1]\nb: &b [*a, *a]\nc: [*b, *b]\n'],
  ])('%s: exit 2, a clear error, no file touched', async (_, finding, change) => {
    const folder = withJob(change);
    const before = snapshot(folder);
    const { code, err } = await bendbuck(folder, ['make', 'job.yaml']);
    expect(code).toBe(2);
    expect(err).toMatch(new RegExp(`^error.*\\[${finding}\\]$`, 'mu'));
    expect(err).toContain('Nothing was written');
    expect(snapshot(folder)).toEqual(before);
    expect(readdirSync(folder)).toEqual(['job.yaml']);
  });

  it.each([
    ['a file where the output folder should be', (folder: string) => writeFileSync(join(folder, 'out'), 'mine')],
    [
      'a file where the job’s folder should be',
      (folder: string) => (mkdirSync(join(folder, 'out')), writeFileSync(join(folder, 'out', FOLDER), 'mine')),
    ],
    [
      'a folder that is not ours',
      (folder: string) => (
        mkdirSync(join(folder, 'out', FOLDER), { recursive: true }),
        writeFileSync(join(folder, 'out', FOLDER, 'thesis.txt'), 'mine')
      ),
    ],
    [
      'a folder with a false list',
      (folder: string) => (
        mkdirSync(join(folder, 'out', FOLDER), { recursive: true }),
        writeFileSync(join(folder, 'out', FOLDER, 'bendbuck.json'), '{"madeBy":"bendbuck"')
      ),
    ],
    [
      'a link in place of the job’s folder',
      (folder: string) => (
        mkdirSync(join(folder, 'out')),
        mkdirSync(join(folder, 'elsewhere')),
        symlinkSync(join(folder, 'elsewhere'), join(folder, 'out', FOLDER))
      ),
    ],
  ])('%s: exit 3, nothing touched', async (_, prepare) => {
    const folder = withJob();
    prepare(folder);
    const before = [snapshot(folder), readdirSync(folder, { recursive: true })];
    const { code, err } = await bendbuck(folder, ['make', 'job.yaml']);
    expect(code).toBe(3);
    expect(err).toMatch(/left as it is|Nothing was changed/u);
    expect([snapshot(folder), readdirSync(folder, { recursive: true })]).toEqual(before);
  });

  it.each(['/dev/null/deeper', '/proc/nowhere'])(
    'an output folder that cannot be written (%s): exit 3',
    async (out) => {
      expect(await bendbuck(withJob(), ['make', 'job.yaml', '--out', out])).toMatchObject({
        code: 3,
        err: expect.stringContaining('cannot write') as string,
      });
    },
  );

  it('never loses what the maker added to a folder of ours, or changed in it', async () => {
    const folder = withJob();
    expect((await bendbuck(folder, ['make', 'job.yaml'])).code).toBe(0);
    writeFileSync(join(folder, 'out', FOLDER, 'notes.txt'), 'cut twice');
    expect(await bendbuck(folder, ['make', 'job.yaml'])).toMatchObject({
      code: 3,
      err: expect.stringContaining('notes.txt') as string,
    });
    expect(readFileSync(join(folder, 'out', FOLDER, 'notes.txt'), 'utf8')).toBe('cut twice');
    const other = withJob();
    expect((await bendbuck(other, ['make', 'job.yaml'])).code).toBe(0);
    writeFileSync(join(other, 'out', FOLDER, 'parts/spine.svg'), 'redrawn');
    expect(await bendbuck(other, ['make', 'job.yaml'])).toMatchObject({
      code: 3,
      err: expect.stringContaining('parts/spine.svg') as string,
    });
    expect(readFileSync(join(other, 'out', FOLDER, 'parts/spine.svg'), 'utf8')).toBe('redrawn');
  });

  it('replaces its own unchanged folder when the job has changed', async () => {
    const folder = withJob();
    expect((await bendbuck(folder, ['make', 'job.yaml'])).code).toBe(0);
    const before = snapshot(join(folder, 'out'));
    writeFileSync(join(folder, 'job.yaml'), STARTER.replace('radius: 38.1', 'radius: 60'));
    expect((await bendbuck(folder, ['make', 'job.yaml'])).code).toBe(0);
    const after = snapshot(join(folder, 'out'));
    expect(after[join(FOLDER, 'parts/S1.dxf')]).not.toBe(before[join(FOLDER, 'parts/S1.dxf')]);
    expect(readdirSync(join(folder, 'out'))).toEqual([FOLDER]);
  });

  it('stopped at any moment, leaves a whole set or nothing at all', async () => {
    // Once it writes, again and again: an impatient hand.
    for (const wait of [5, 200, 'until it writes', 'until it writes'] as const) {
      const folder = withJob();
      const child = start(folder, ['make', 'job.yaml']);
      const out = join(folder, 'out');
      const writes = (): boolean => existsSync(out) && readdirSync(out).length > 0;
      const watch =
        wait === 'until it writes'
          ? setInterval(() => writes() && child.kill('SIGINT'), 1)
          : setTimeout(() => child.kill('SIGINT'), wait);
      const [code, signal] = await new Promise<readonly [number | null, string | null]>((done) =>
        child.on('close', (...how) => done(how)),
      );
      clearInterval(watch);
      // Too late to stop it, or as a shell tells of SIGINT: by the signal itself, or as 128 + 2 (POSIX Shell Command Language 2.8.2).
      expect(signal === 'SIGINT' || code === 0 || code === 130).toBe(true);
      const whole = existsSync(join(out, FOLDER, 'bendbuck.json'));
      if (code === 0) expect(whole).toBe(true);
      expect(readdirSync(folder)).toEqual(whole ? ['job.yaml', 'out'] : ['job.yaml']);
      if (whole) expect(readdirSync(out)).toEqual([FOLDER]);
    }
  });

  it('on a terminal says how far it is, and Ctrl-C there ends it in the middle of laying out', async () => {
    // 60 stations: laid out in seconds. script(1) of util-linux gives a terminal, whose Ctrl-C is the real one, and hands on the exit code.
    const folder = withJob((text) =>
      text.replace('length: 457.2', 'length: 2300').concat('stations: { maxSpan: 22 }\nclamps: { kind: f-heavy }\n'),
    );
    const child = spawn('script', ['-qec', '"$NODE" "$MAIN" make job.yaml', '/dev/null'], {
      cwd: folder,
      env: { ...process.env, TERM: 'xterm', NODE: process.execPath, MAIN: resolve('dist/main.js') },
    });
    let said = '';
    let pressed = false;
    child.stdin.on('error', () => undefined); // the terminal may be gone before the key arrives: the exit code tells
    child.stdout.on('data', (text: Buffer) => {
      said += String(text);
      if (pressed || !/laying parts out on boards, [1-9]/u.test(said)) return;
      pressed = true;
      child.stdin.write('\u0003');
    });
    const code = await new Promise((done) => child.on('close', done));
    expect(said).toMatch(/laying parts out on boards, \d+ % …/u);
    expect(said).not.toMatch(/100 %|writing/u);
    expect(code).toBe(130);
    expect(readdirSync(folder)).toEqual(['job.yaml']);
  });
});
