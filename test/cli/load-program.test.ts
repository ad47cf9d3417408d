import { execFileSync } from 'node:child_process';
import { cpSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../helpers/fresh-folder';

const planned = (dist: string): string =>
  execFileSync(process.execPath, [join(dist, 'main.js'), 'plan', 'templates/plain-curve.yaml'], { encoding: 'utf8' });

describe('what the build keeps compiled', () => {
  const [file = ''] = readdirSync('dist').filter((name) => /^program-.*\.cjs$/u.test(name));
  const kept = `${file}.compiled`;

  it('is taken by the V8 that made it, and what another made is refused', () => {
    // The flag that the program sets is among what V8 goes by; it is set in a process of its own here.
    const look = `
      const { readFileSync } = require('fs');
      require('v8').setFlagsFromString('--interrupt-budget=500000');
      const source = readFileSync(process.argv[1], 'latin1');
      const cachedData = readFileSync(process.argv[1] + '.compiled');
      const refused = () => new (require('vm').Script)(source, { cachedData }).cachedDataRejected;
      const own = refused();
      cachedData[4] = 255 - cachedData[4]; // the second four bytes say which V8 it is
      console.log(own, refused());`;
    const said = execFileSync(process.execPath, ['-e', look, join('dist', file)], { encoding: 'utf8' });
    expect(said).toBe('false true\n');
  });

  it('changes nothing but the time: another’s, or none, plans the same', () => {
    const dist = join(freshFolder(), 'dist');
    cpSync('dist', dist, { recursive: true });
    writeFileSync(join(dist, '../package.json'), '{"type":"module"}');
    writeFileSync(join(dist, kept), 'compiled elsewhere');
    expect(planned(dist)).toBe(planned('dist'));
  });
});
