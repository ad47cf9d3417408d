import { spawnSync } from 'node:child_process';
import type fs from 'node:fs';
import type timers from 'node:timers/promises';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { OutputFile } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { storeNew, storeSet } from '../../src/cli/files';
import { EXIT } from '../../src/cli/io';
import { freshFolder } from '../helpers/fresh-folder';
import { snapshot } from '../helpers/program';

/** What changes the disk, each call let through by a gate that a test may shut. */
interface Gate {
  pass: (call: string, from?: unknown, to?: unknown) => void;
}
const gate = vi.hoisted((): Gate => ({ pass: () => undefined }));
vi.mock('node:fs', async (original) => {
  const real = await original<typeof fs>();
  const gated = <Args extends unknown[], Value>(name: string, call: (...args: Args) => Value) =>
    vi.fn((...args: Args): Value => {
      gate.pass(name, args[0], args[1]);
      return call(...args);
    });
  return {
    ...real,
    mkdirSync: gated('mkdir', real.mkdirSync),
    renameSync: gated('rename', real.renameSync),
    rmSync: gated('rm', real.rmSync),
    rmdirSync: gated('rmdir', real.rmdirSync),
    writeFileSync: gated('write', real.writeFileSync),
  };
});
/** Whether a wait is over at once. */
const patience = vi.hoisted(() => ({ none: false }));
vi.mock('node:timers/promises', async (original) => {
  const real = await original<typeof timers>();
  return { ...real, setTimeout: (ms: number) => real.setTimeout(patience.none ? 0 : ms) };
});
const open = gate.pass;
afterEach(() => {
  gate.pass = open;
  patience.none = false;
});

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
    let renames = 0;
    gate.pass = (name, _, to) => {
      if (name !== 'rename') return;
      renames += 1;
      // First the workplace, then the earlier set out of the way, then this one in; then the earlier one back.
      if (renames === 3 && to === folder) throw Object.assign(new Error('told to fail'), { code: 'EACCES' });
    };
    await expect(storeSet(folder, [file('a.txt', 'new')])).rejects.toEqual(refused(/you may not write there/u));
    expect(renames).toBe(4);
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

describe('what happens while a set is written', () => {
  let parent = '';
  let folder = '';
  /** A file that lets something happen when it is about to be written. */
  const when = (path: string, happens: () => void): OutputFile => ({
    path,
    mime: 'text/plain',
    get content() {
      happens();
      return 'new';
    },
  });
  beforeEach(async () => {
    parent = freshFolder();
    folder = join(parent, 'set');
    await storeSet(folder, [file('a.txt', 'old'), file('b/c.txt', 'old')]);
  });

  it('a file put into the folder, or changed there, is kept and told of', async () => {
    const kept = await storeSet(folder, [
      file('a.txt', 'new'),
      when('d.txt', () => {
        writeFileSync(join(folder, 'b', 'notes.txt'), 'cut twice');
        writeFileSync(join(folder, 'a.txt'), 'mine');
        writeFileSync(join(folder, 'd.txt'), 'mine too');
      }),
    ]);
    expect([...kept].sort()).toEqual(['a.txt.kept', 'b/notes.txt', 'd.txt.kept']);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('new');
    expect(readFileSync(join(folder, 'a.txt.kept'), 'utf8')).toBe('mine');
    expect(readFileSync(join(folder, 'd.txt.kept'), 'utf8')).toBe('mine too');
    expect(readFileSync(join(folder, 'b/notes.txt'), 'utf8')).toBe('cut twice');
    expect(readdirSync(folder).sort()).toEqual(['a.txt', 'a.txt.kept', 'b', 'bendbuck.json', 'd.txt', 'd.txt.kept']);
    expect(readdirSync(parent)).toEqual(['set']);
    await expect(storeSet(folder, [file('a.txt', 'newer')])).rejects.toEqual(refused(/notes\.txt/u));
  });

  it('a file put in at the very last moment is kept', async () => {
    gate.pass = (name, from) => {
      if (name === 'rename' && from === folder) appendFileSync(join(folder, 'late.txt'), 'mine');
    };
    expect(await storeSet(folder, [file('a.txt', 'new')])).toEqual(['late.txt']);
    expect(readFileSync(join(folder, 'late.txt'), 'utf8')).toBe('mine');
  });

  it.each([
    ['all of it', ''],
    ['what was written so far', 'new'],
    ['one file', 'new/a.txt'],
    ['one folder', 'new/b'],
  ])('the place where it is written is taken away, %s: said so, the earlier set stays', async (_, what) => {
    const before = snapshot(folder);
    const files = [
      file('a.txt', 'new'),
      file('b/c.txt', 'new'),
      when('b/d.txt', () => rmSync(join(parent, '.set.bendbuck', what), { recursive: true })),
      file('b/e.txt', 'new'),
    ];
    await expect(storeSet(folder, files)).rejects.toEqual(refused(/was taken away meanwhile.*Nothing was changed/u));
    expect(snapshot(folder)).toEqual(before);
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('two at once: one waits for the other, and both are whole', async () => {
    const sets = ['1', '2', '3'].map((mark) => Array.from({ length: 9 }, (_, index) => file(`f${index}`, mark)));
    await Promise.all(sets.map((files) => storeSet(folder, files)));
    const contents = readdirSync(folder)
      .filter((name) => name !== 'bendbuck.json')
      .map((name) => readFileSync(join(folder, name), 'utf8'));
    expect(contents).toHaveLength(9);
    expect(new Set(contents).size).toBe(1);
    expect(readdirSync(parent)).toEqual(['set']);
  });

  it('two sets at once into a folder that is not there yet', async () => {
    const sets = ['one', 'two'].map((name) => join(parent, 'fresh', name));
    await Promise.all(sets.map((set) => storeSet(set, [file('a.txt', 'new')])));
    expect(readdirSync(join(parent, 'fresh')).sort()).toEqual(['one', 'two']);
  });

  it('one that never ends, or a folder in the way, is told of by its true name', async () => {
    patience.none = true;
    mkdirSync(join(parent, '.set.bendbuck'));
    const writer = { madeBy: 'bendbuck', process: process.ppid, host: hostname(), token: 'other' };
    writeFileSync(join(parent, '.set.bendbuck', 'writer.json'), JSON.stringify(writer));
    await expect(storeSet(folder, [])).rejects.toEqual(
      refused(new RegExp(`Another bendbuck \\(process ${process.ppid} on .*is writing`, 'u')),
    );
    writeFileSync(join(parent, '.set.bendbuck', 'writer.json'), 'mine');
    await expect(storeSet(folder, [])).rejects.toEqual(refused(/is in the way, and was not made by bendbuck/u));
    expect(readFileSync(join(parent, '.set.bendbuck', 'writer.json'), 'utf8')).toBe('mine');
  });
});

describe('a run that is killed', () => {
  const OLD = [file('a.txt', 'old'), file('b/c.txt', 'old'), file('b/d.txt', 'old')];
  const NEW = [file('a.txt', 'new'), file('b/c.txt', 'new'), file('e/f.txt', 'new')];
  const contents = (folder: string): Record<string, string> =>
    Object.fromEntries(
      Object.entries(snapshot(folder)).map(([path, bytes]) => [path, Buffer.from(bytes, 'base64').toString()]),
    );
  const whole = (mark: string, files: readonly OutputFile[]): Record<string, string> =>
    Object.fromEntries(files.map(({ path }) => [path, mark]));

  /** Stores a set as a process that ends at its `last` call to the disk, the maker putting a note into the earlier one; whether it came that far. */
  const killedAt = async (folder: string, last: number): Promise<boolean> => {
    let calls = 0;
    const put = (): void => {
      if (calls < last && existsSync(folder)) appendFileSync(join(folder, 'notes.txt'), 'mine');
    };
    const files = [
      ...NEW.slice(1),
      {
        ...file('a.txt', 'new'),
        get content() {
          put();
          return 'new';
        },
      },
    ];
    gate.pass = () => {
      calls += 1;
      if (calls >= last) throw new Error('killed');
    };
    await storeSet(folder, files).catch(() => undefined);
    gate.pass = open;
    return calls >= last;
  };

  it('at any of its calls to the disk leaves one whole set after the next, nothing hidden, and what the maker put there', async () => {
    let [killed, noted] = [0, 0];
    for (let last = 1; ; last += 1) {
      const parent = freshFolder();
      const folder = join(parent, 'set');
      await storeSet(folder, OLD);
      if (!(await killedAt(folder, last))) break;
      killed += 1;
      // The next run is another process: what this one holds is not known to it.
      vi.resetModules();
      const { putInOrder, storeSet: storeNext } = await import('../../src/cli/files');
      putInOrder(parent);
      expect(readdirSync(parent), `call ${last}`).toEqual(['set']);
      const { 'bendbuck.json': list, 'notes.txt': notes, ...files } = contents(folder);
      expect([whole('old', OLD), whole('new', NEW)], `call ${last}`).toContainEqual(files);
      for (const one of Object.keys(files)) expect(list, `call ${last}`).toContain(JSON.stringify(one));
      if (notes !== undefined) {
        noted += 1;
        expect(notes).toBe('mine');
        rmSync(join(folder, 'notes.txt'));
      }
      await storeNext(folder, [file('g.txt', 'next')]);
      expect(readdirSync(folder).sort()).toEqual(['bendbuck.json', 'g.txt']);
      expect(readdirSync(parent)).toEqual(['set']);
    }
    expect(killed).toBeGreaterThan(20);
    expect(killed - noted).toBeLessThan(12); // those that died before the note was put there
  });

  it('leaves nothing where there was no set before', async () => {
    for (let last = 2; last < 12; last += 3) {
      const parent = freshFolder();
      await killedAt(join(parent, 'set'), last);
      vi.resetModules();
      (await import('../../src/cli/files')).putInOrder(parent);
      expect(readdirSync(parent)).toEqual([]);
    }
  });

  it('a hidden folder of another, or one whose writer still runs, is left alone', async () => {
    const parent = freshFolder();
    const other = join(parent, '.mine.bendbuck');
    const running = join(parent, '.set.bendbuck');
    for (const folder of [other, running]) mkdirSync(folder);
    writeFileSync(join(other, 'thesis.txt'), 'mine');
    const writer = { madeBy: 'bendbuck', process: process.ppid, host: hostname(), token: 'other' };
    writeFileSync(join(running, 'writer.json'), JSON.stringify(writer));
    const before = snapshot(parent);
    await storeSet(join(parent, 'another'), [file('a.txt', 'new')]);
    expect(snapshot(parent)).toMatchObject(before);
  });
});

describe('Ctrl-C', () => {
  const program = join(freshFolder(), 'store.mjs');
  beforeAll(() => {
    // Each file's content sends the signal when it is asked for, so that it arrives while the set is being written.
    const contents = `
      import fs from 'node:fs';
      import { syncBuiltinESMExports } from 'node:module';
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
      // Or while the new set takes the place of the earlier one, which nothing interrupts.
      const rename = fs.renameSync;
      let renames = 0;
      fs.renameSync = (...paths) => {
        renames += 1;
        if (renames === 3 && at === 'late') process.kill(process.pid, signal);
        rename(...paths);
      };
      syncBuiltinESMExports();
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

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ])(
    'and its like (%s) in the middle of taking the earlier one’s place still end the run, the new set whole',
    async (signal, code) => {
      const parent = freshFolder();
      const folder = join(parent, 'set');
      await storeSet(folder, [file('a.txt', 'old')]);
      expect(spawnSync(process.execPath, [program, folder, signal, 'late']).status).toBe(code);
      expect(readdirSync(parent)).toEqual(['set']);
      expect(readdirSync(folder)).toHaveLength(41);
    },
  );

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
