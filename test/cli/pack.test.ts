import { execFileSync, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { freshFolder } from '../helpers/fresh-folder';

const folder = freshFolder();
const npm = (args: readonly string[], cwd = folder): string =>
  execFileSync('npm', args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
const bendbuck = join(folder, 'node_modules/.bin/bendbuck');
const run = (...args: string[]): string => execFileSync(bendbuck, args, { cwd: folder, encoding: 'utf8' });
const installed = (path: string): string => readFileSync(join(folder, 'node_modules/bendbuck', path), 'utf8');

describe('the package, installed in an empty folder without a network', () => {
  // What is packed was built before the tests.
  beforeAll(() => {
    const [packed] = JSON.parse(
      npm(['pack', '--ignore-scripts', '--json', '--pack-destination', folder], resolve('.')),
    ) as {
      filename: string;
    }[];
    npm(['install', '--offline', '--no-audit', '--no-fund', `./${packed?.filename}`]);
  });

  it('brings everything it needs', () => {
    expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual(['bendbuck']);
  });

  it('copies a starter and makes it', () => {
    run('new', 'plain-curve', 'mine.yaml');
    expect(run('make', 'mine.yaml')).toContain('Wrote ');
    const [made = ''] = readdirSync(join(folder, 'out'));
    const files = readdirSync(join(folder, 'out', made));
    for (const name of ['templates.pdf', 'shop-sheet.html', 'plan.json', 'parts']) expect(files).toContain(name);
  });

  it('serves the page', async () => {
    const child = spawn(bendbuck, ['page', 'mine.yaml', '--no-open'], { cwd: folder });
    try {
      const said = await new Promise<string>((done) =>
        child.stdout.once('data', (chunk: Buffer) => done(String(chunk))),
      );
      const answer = await fetch(/http:\S+/u.exec(said)?.[0] ?? '');
      expect(answer.status).toBe(200);
      expect(await answer.text()).toBe(installed('dist/bendbuck.html'));
    } finally {
      child.kill('SIGTERM');
    }
  });

  it('names everything bundled with its licence, and the README says where', () => {
    const notices = installed('dist/NOTICES.txt');
    const named = [...notices.matchAll(/^-{78}\n(\S+) \S+ \((.+)\)$/gmu)].map(([, name, licence]) => ({
      name,
      licence,
    }));
    // What the sources import by name, and the typeface.
    const sources = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter(
      // The panel is no command's part yet.
      (path) => /\.tsx?$/u.test(path) && !path.startsWith('panel'),
    );
    const imported = sources.flatMap((path) =>
      [
        ...readFileSync(join('src', path), 'utf8').matchAll(
          /^import (?!type)[^;]*?from '((?:@[^/']+\/)?[a-z][^/']*)/gmu,
        ),
      ].map(([, name = '']) => name),
    );
    const packages = [...new Set(imported)].filter((name) => !name.startsWith('node:'));
    expect(packages.length).toBeGreaterThan(8);
    expect(named.map(({ name }) => name)).toEqual(expect.arrayContaining(packages));
    for (const { name, licence = '' } of named)
      expect(licence, name).toMatch(
        /^(?:MIT|ISC|0BSD|BSD-[23]-Clause|BSL-1\.0|Apache-2\.0|SEE LICENSE IN README\.md AND LICENSE)$/u,
      );
    expect(notices).toContain('Bitstream');
    expect(notices).toContain('Hershey');
    const readme = installed('README.md');
    expect(readme.slice(readme.lastIndexOf('\n## '))).toMatch(/^\n## Licence\n[\s\S]*dist\/NOTICES\.txt/u);
    expect(installed('LICENSE')).toContain('MIT License');
  });
});
