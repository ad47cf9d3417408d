import { spawnSync } from 'node:child_process';
import type fs from 'node:fs';
import { mkdirSync, readdirSync, readFileSync, renameSync as mocked, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { OutputFile } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { storeNew, storeSet } from '../../src/cli/files';
import { EXIT } from '../../src/cli/io';
import { freshFolder, snapshot } from '../helpers/program';

vi.mock('node:fs', async (original) => {
  const real = await original<typeof fs>();
  return { ...real, renameSync: vi.fn(real.renameSync) };
});
const { renameSync: realRename } = await vi.importActual<typeof fs>('node:fs');
const renameSync = vi.mocked(mocked);

const file = (path: string, content: string): OutputFile => ({ path, content, mime: 'text/plain' });
const refused = (message: RegExp): unknown =>
  expect.objectContaining({ code: EXIT.unwritten, message: expect.stringMatching(message) as string });

describe('a set of files', () => {
  let parent = '';
  let folder = '';
  beforeEach(async () => {
    parent = freshFolder();
    folder = join(parent, 'set');
    await storeSet(folder, [file('a.txt', 'old'), file('b/c.txt', 'old')]);
  });

  it('may be read by whoever may read other new folders', () => {
    mkdirSync(join(parent, 'other'));
    expect(statSync(folder).mode).toBe(statSync(join(parent, 'other')).mode);
  });

  it('takes the place of the earlier one whole: files that are no longer made go', async () => {
    await storeSet(folder, [file('a.txt', 'new')]);
    expect(readdirSync(folder).sort()).toEqual(['a.txt', 'bendbuck.json']);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('new');
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('that fails half-way leaves the earlier one as it was', async () => {
    const before = snapshot(parent);
    await expect(storeSet(folder, [file('a', 'new'), file('a/b', 'cannot be')])).rejects.toEqual(
      refused(/Nothing was changed/u),
    );
    expect(snapshot(parent)).toEqual(before);
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('that fails takes away the folders it made on the way', async () => {
    await expect(
      storeSet(join(parent, 'made', 'too', 'set'), [file('a', 'new'), file('a/b', 'cannot be')]),
    ).rejects.toEqual(refused(/Nothing was changed/u));
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('that cannot be put in place leaves the earlier one as it was', async () => {
    const before = snapshot(parent);
    const earlier = renameSync.mock.calls.length;
    renameSync.mockImplementationOnce(realRename).mockImplementationOnce(() => {
      throw Object.assign(new Error('told to fail'), { code: 'EACCES' });
    });
    await expect(storeSet(folder, [file('a.txt', 'new')])).rejects.toEqual(refused(/you may not write there/u));
    expect(renameSync.mock.calls.length - earlier).toBe(3);
    expect(snapshot(parent)).toEqual(before);
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it.each([
    ['null', 'null'],
    ['a list of nothing', '{"madeBy":"bendbuck","files":null}'],
    ['another program’s list', '{"madeBy":"me","files":{}}'],
    ['no JSON', '{'],
  ])('is not known by a list that is %s', async (_, list) => {
    writeFileSync(join(folder, 'bendbuck.json'), list);
    const before = snapshot(parent);
    await expect(storeSet(folder, [file('a.txt', 'new')])).rejects.toEqual(refused(/not made by bendbuck/u));
    expect(snapshot(parent)).toEqual(before);
  });

  it('lists its files with their SHA-256, as sha256sum prints it', () => {
    // FIPS 180-4; printf old | sha256sum (GNU coreutils).
    const sum = 'cba06b5736faf67e54b07b561eae94395e774c517a7d910a54369e1263ccfbd4';
    expect(JSON.parse(readFileSync(join(folder, 'bendbuck.json'), 'utf8'))).toEqual({
      madeBy: 'bendbuck',
      files: { 'a.txt': sum, 'b/c.txt': sum },
    });
  });

  it.each(['../a', '/a', 'a/../b', 'a//b', 'a\\b', '.a', 'a/.b', 'a\0', 'C:a', ''])(
    'has no file called %j',
    async (path) => {
      await expect(storeSet(folder, [file(path, '')])).rejects.toBeInstanceOf(InternalError);
    },
  );
});

describe('Ctrl-C', () => {
  const program = join(freshFolder(), 'store.mjs');
  beforeAll(() => {
    // Each file's content sends the signal when it is asked for, so that it arrives while the set is being written.
    const contents = `
      import { storeSet } from './src/cli/files';
      const [folder, signal, at] = process.argv.slice(2);
      const files = Array.from({ length: 40 }, (_, index) => ({
        path: 'part-' + index,
        mime: 'text/plain',
        get content() {
          if (index === Number(at)) process.kill(process.pid, signal);
          return 'new';
        },
      }));
      await storeSet(folder, files);
    `;
    buildSync({
      stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
      bundle: true,
      platform: 'node',
      format: 'esm',
      outfile: program,
      logLevel: 'error',
    });
  });

  it.each([
    ['SIGINT', 0, 130],
    ['SIGINT', 20, 130],
    ['SIGTERM', 20, 143],
    ['SIGHUP', 20, 129],
  ])('and its like (%s at file %i) leave the earlier set and nothing else', async (signal, at, code) => {
    const parent = freshFolder();
    const folder = join(parent, 'set');
    await storeSet(folder, [file('a.txt', 'old')]);
    const before = snapshot(parent);
    const { status } = spawnSync(process.execPath, [program, folder, signal, String(at)]);
    expect(status).toBe(code);
    expect(snapshot(parent)).toEqual(before);
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('takes away the folders it made on the way, and no others', () => {
    const parent = freshFolder();
    mkdirSync(join(parent, 'mine'));
    const { status } = spawnSync(process.execPath, [
      program,
      join(parent, 'mine', 'made', 'too', 'set'),
      'SIGINT',
      '20',
    ]);
    expect(status).toBe(130);
    expect(readdirSync(parent, { recursive: true })).toEqual(['mine']);
  });

  it('at the last moment leaves one whole set, and nothing beside it', async () => {
    const parent = freshFolder();
    const folder = join(parent, 'set');
    await storeSet(folder, [file('a.txt', 'old')]);
    spawnSync(process.execPath, [program, folder, 'SIGINT', '39']);
    expect(readdirSync(parent)).toEqual(['set']);
    expect([2, 41]).toContain(readdirSync(folder).length);
  });
});

describe('a new file', () => {
  it('is never written over another, nor where there is no folder', async () => {
    const folder = freshFolder();
    const path = join(folder, 'job.yaml');
    await storeNew(path, 'job.yaml', Buffer.from('mine'));
    await expect(storeNew(path, 'job.yaml', Buffer.from('theirs'))).rejects.toEqual(
      refused(/^job\.yaml exists already/u),
    );
    expect(readFileSync(path, 'utf8')).toBe('mine');
    await expect(storeNew(join(folder, 'no', 'job.yaml'), 'no/job.yaml', Buffer.from(''))).rejects.toEqual(
      refused(/^cannot write no\/job\.yaml: there is no such place/u),
    );
  });
});
