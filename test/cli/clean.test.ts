import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { clean, cleanButOurs } from '../../src/cli/clean';
import { run } from '../../src/cli/program';
import { freshFolder } from '../helpers/fresh-folder';
import { bendbuck } from '../helpers/program';

/** ECMA-48: controls of both sets; Unicode Standard Annex #9: what turns the direction of writing. */
const ACTS = /(?![\n\t])[\p{Cc}\u202A-\u202E\u2066-\u2069]/u;
const RESET = '\u001Bc';
const KEYS = ['\\ec', 'a\\u009b2Jb', '\\e[31m\\nerror: all is well', '\\u202egpj.exe', '\\e[1m'];
const JOB =
  KEYS.map((key) => `"${key}": 1\n`).join('') + `title: "${KEYS.join('')}"\nruns: [{ "${KEYS[0]}": "\\ec" }]\n`;

describe('what is printed', () => {
  it('never acts on the terminal, whatever a job holds: check, plan, plan --json, make, trial', async () => {
    for (const args of [['check'], ['plan'], ['plan', '--json'], ['make'], ['trial']]) {
      const { code, out, err } = await bendbuck(freshFolder(), [...args, '-'], JOB);
      expect(code, args.join(' ')).toBe(2);
      expect(out + err).not.toMatch(ACTS);
      expect(out + err).toContain('\\u001b');
    }
  });

  it('is one finding to a line: a key cannot look like a line of its own', async () => {
    const { out } = await bendbuck(freshFolder(), ['check', '-'], JOB);
    for (const line of out.trimEnd().split('\n')) expect(line).toMatch(/^(?:error|warning|note|and| {4})/u);
    expect(out).not.toMatch(/^error: all/mu);
  });

  it('nor does a path, a command or an option', async () => {
    for (const args of [
      [`plan${RESET}`],
      ['plan', `no${RESET}.yaml`],
      ['plan', 'job.yaml', `--${RESET}`],
      ['plan', 'job.yaml', '--units', RESET],
      ['new', RESET],
      ['new', 'plain-curve', `no/${RESET}`],
      ['page', '--port', RESET],
      ['trial', 'job.yaml', '--bent', RESET],
    ]) {
      const { code, out, err } = await bendbuck(freshFolder(), args);
      expect(code).toBeGreaterThan(1);
      expect(out + err, JSON.stringify(args)).not.toMatch(ACTS);
    }
  });

  it('nor the folder the files go to', async () => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'out\u001Bc'), '');
    const { code, err } = await bendbuck(folder, ['make', '-', '--out', 'out\u001Bc'], JOB);
    expect(code).toBe(2);
    expect(err).not.toMatch(ACTS);
  });

  it('on a terminal in colour holds our colours only', async () => {
    let said = '';
    const say = (text: string): void => void (said += text);
    await run(['check', '-'], {
      cwd: '/',
      input: () => Readable.from([Buffer.from(JOB)]),
      out: say,
      err: say,
      width: 80,
      colour: true,
      errColour: true,
      progress: true,
    });
    const ours = '\u001B[31;1merror\u001B[0m';
    expect(said).toContain(ours);
    expect(said.replaceAll(ours, '')).not.toMatch(ACTS);
  });

  it('keeps text, line breaks and JSON as they are', () => {
    const text = 'length 12.50 mm ⌀ 4\t“a”\nε — 長い\n';
    expect(clean(text)).toBe(text);
    const json = JSON.stringify({ name: 'a\u009Bb\u202Ec\u007F' });
    expect(JSON.parse(clean(json))).toEqual(JSON.parse(json));
    expect(cleanButOurs('\r\u001B[Kdrawing … \u001B[2J')).toBe('\r\u001B[Kdrawing … \\u001b[2J');
  });
});

describe('a job that is not text', () => {
  const refusal = async (bytes: Buffer): Promise<string> => {
    const folder = freshFolder();
    writeFileSync(join(folder, 'job.yaml'), bytes);
    const { code, err } = await bendbuck(folder, ['check', 'job.yaml']);
    expect(code).toBe(2);
    return err;
  };

  it.each([
    // “Früh” in ISO 8859-1: ü is FC.
    ['Latin-1', Buffer.from('title: x\n# “\ntitle: Fr\u00FCh', 'latin1'), /line 3, character 10: .*byte FC/u],
    [
      'after characters of many bytes',
      Buffer.concat([Buffer.from('a: “é長”'), Buffer.from([0x80])]),
      /line 1, character 8: .*byte 80/u,
    ],
    ['cut off inside a character', Buffer.from('a: é').subarray(0, 4), /line 1, character 4: .*byte C3/u],
    // PNG (ISO/IEC 15948), 5.2: the first byte of the signature is 137.
    ['a picture', Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), /line 1, character 1: .*byte 89/u],
    ['UTF-16', Buffer.from('\uFEFFtitle: x', 'utf16le'), /UTF-16; save it as UTF-8/u],
  ])('%s: says where', async (_, bytes, message) => {
    expect(await refusal(bytes)).toMatch(message);
  });

  it('numbers beyond all bounds are said once each, and not as a measure', async () => {
    const { out } = await bendbuck(
      freshFolder(),
      ['check', '-'],
      'effort: { handForce: 1e400, safety: 1e400, maxLeverage: 1e400 mm }\nneutral: 1e400\nclamps: { rating: 1e400 N }\n',
    );
    expect(out).not.toMatch(/Infinity|NaN/u);
    for (const path of ['effort.handForce', 'effort.safety', 'effort.maxLeverage', 'neutral', 'clamps.rating'])
      expect(out.match(new RegExp(`^error at line \\d, ${path}:`, 'gmu')), path).toHaveLength(1);
  });
});
