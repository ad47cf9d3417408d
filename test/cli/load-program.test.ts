import { execFileSync } from 'node:child_process';
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../helpers/fresh-folder';

const planned = (dist: string): string =>
  execFileSync(process.execPath, [join(dist, 'main.js'), 'plan', 'templates/plain-curve.yaml'], { encoding: 'utf8' });

describe('what the build keeps compiled', () => {
  const [file = ''] = readdirSync('dist').filter((name) => name.endsWith('.cjs'));
  const kept = `${file}.compiled`;

  it('is taken by the V8 that made it, and what another made is refused', () => {
    const source = `(function (module, exports, require, __filename) {${readFileSync(join('dist', file), 'latin1')}\n})`;
    const cachedData = readFileSync(join('dist', kept));
    expect(new Script(source, { cachedData }).cachedDataRejected).toBe(false);
    // The second four bytes say which V8 it is.
    cachedData[4] = 255 - (cachedData[4] ?? NaN);
    expect(new Script(source, { cachedData }).cachedDataRejected).toBe(true);
  });

  it('changes nothing but the time: another’s, or none, plans the same', () => {
    const dist = join(freshFolder(), 'dist');
    cpSync('dist', dist, { recursive: true });
    writeFileSync(join(dist, '../package.json'), '{"type":"module"}');
    writeFileSync(join(dist, kept), 'compiled elsewhere');
    expect(planned(dist)).toBe(planned('dist'));
  });
});
