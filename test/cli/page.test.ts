import { request } from 'node:http';
import { connect, type AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/page';
import { bendbuck, freshFolder, start } from '../helpers/program';

const html = readFileSync('dist/bendbuck.html', 'utf8');

describe('the page’s server', () => {
  let server: Awaited<ReturnType<typeof serve>>;
  let port = 0;
  beforeAll(async () => {
    server = await serve(html, 0);
    port = (server.address() as AddressInfo).port;
  });
  afterAll(() => {
    server.close();
    server.closeAllConnections();
  });

  const ask = (
    path: string,
    options: { method?: string; host?: string } = {},
  ): Promise<{ status: number; body: string; headers: Record<string, unknown> }> =>
    new Promise((done, fail) => {
      const sent = request(
        {
          host: '127.0.0.1',
          port,
          path,
          method: options.method ?? 'GET',
          headers: { Host: options.host ?? `127.0.0.1:${port}` },
        },
        (response) => {
          let body = '';
          response.on('data', (chunk: Buffer) => (body += chunk.toString()));
          response.on('end', () => done({ status: response.statusCode ?? 0, body, headers: response.headers }));
        },
      );
      sent.on('error', fail);
      sent.end();
    });

  it('listens on loopback only', () => {
    expect((server.address() as AddressInfo).address).toBe('127.0.0.1');
  });

  it('gives the page, under a strict policy, to its own name only', async () => {
    const answer = await ask('/');
    expect(answer.status).toBe(200);
    expect(answer.body).toBe(html);
    expect(answer.headers['content-security-policy']).toMatch(
      /default-src 'none'; script-src 'sha256-[^']+'; style-src 'sha256-[^']+'; .*frame-ancestors 'none'/u,
    );
    expect(answer.headers['content-security-policy']).not.toMatch(/unsafe|https?:|\*/u);
    expect((await ask('/', { host: `localhost:${port}` })).status).toBe(200);
    for (const host of ['evil.example', `evil.example:${port}`, '127.0.0.1', `127.0.0.1:${port + 1}`])
      expect((await ask('/', { host })).status, host).toBe(421);
  });

  it.each([
    '/..%2f..%2fetc/passwd',
    '/../../package.json',
    '/%00',
    '/package.json',
    '//',
    '/?file=/etc/passwd',
    '/bendbuck.html',
  ])('%s reaches nothing', async (path) => {
    const answer = await ask(path);
    expect(answer.status).toBe(404);
    expect(answer.body).not.toMatch(/root:|"name"/u);
  });

  it('takes no other method', async () => {
    expect((await ask('/', { method: 'POST' })).status).toBe(405);
    const head = await ask('/', { method: 'HEAD' });
    expect([head.status, head.body]).toEqual([200, '']);
  });

  it('survives what is not HTTP', async () => {
    await new Promise<void>((done) => {
      const socket = connect(port, '127.0.0.1', () => socket.end('\u0000\u0001 nonsense\r\n\r\n'));
      socket.resume();
      socket.on('error', () => undefined);
      socket.on('close', () => done());
    });
    expect((await ask('/')).status).toBe(200);
  });
});

describe('the page command', () => {
  it('says where the page is and stops when told', async () => {
    const child = start(freshFolder(), ['page', '--no-open']);
    const said = await new Promise<string>((done) => {
      child.stdout?.once('data', (chunk: Buffer) => done(chunk.toString()));
      child.once('close', (code) => done(`ended with ${code}`));
    });
    expect(said).toMatch(/http:\/\/127\.0\.0\.1:\d+\//u);
    child.kill('SIGINT');
    expect(await new Promise((done) => child.on('close', done))).toBe(0);
  });

  it('refuses a port that is none, and a job that is not there', async () => {
    expect((await bendbuck(freshFolder(), ['page', '--no-open', '--port', 'x'])).code).toBe(2);
    expect((await bendbuck(freshFolder(), ['page', 'nothing.yaml', '--no-open'])).code).toBe(2);
  });
});

describe('the page file', () => {
  it('is whole in itself: no address of anything else', () => {
    const outside = html.replaceAll(/<script[\s\S]*<\/script>/gu, '').match(/(?:src|href)="(?!data:)[^"]*"/gu) ?? [];
    expect(outside).toEqual([]);
    expect(html.match(/<script/gu)).toHaveLength(1);
  });
});
