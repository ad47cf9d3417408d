import { request } from 'node:http';
import { connect, type AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/page';
import { freshFolder } from '../helpers/fresh-folder';
import { bendbuck, start } from '../helpers/program';

const html = readFileSync('dist/bendbuck.html', 'utf8');

describe('the page’s server', () => {
  let server: Awaited<ReturnType<typeof serve>>;
  let port = 0;
  beforeAll(async () => {
    server = await serve(Buffer.from(html), 0);
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
      /default-src 'none'; script-src 'sha256-[^']+'(?: 'sha256-[^']+')*; style-src 'sha256-[^']+'; .*connect-src 'self'; .*frame-ancestors 'none'/u,
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

  it('hands out the one job it was started with, as it stands on disk, and only then', async () => {
    expect((await ask('/job.yaml')).status).toBe(404);
    expect((await ask('/?watch')).status).toBe(404);
    const texts = ['title: A', 'title: B'];
    const watching = await serve(Buffer.from(html), 0, () => {
      const text = texts.shift();
      return text === undefined ? Promise.reject(new Error('gone')) : Promise.resolve(text);
    });
    const { port: own } = watching.address() as AddressInfo;
    const get = async (path: string): Promise<[number, string]> => {
      const answer = await fetch(`http://127.0.0.1:${own}${path}`);
      return [answer.status, await answer.text()];
    };
    expect(await get('/?watch')).toEqual([200, html]);
    expect(await get('/job.yaml')).toEqual([200, 'title: A']);
    expect(await get('/job.yaml')).toEqual([200, 'title: B']);
    expect((await get('/job.yaml'))[0]).toBe(404);
    expect((await get('/job.yaml?of=/etc/passwd'))[0]).toBe(404);
    expect((await get('/?watch=/etc/passwd'))[0]).toBe(404);
    watching.close();
    watching.closeAllConnections();
  });

  it('takes no other method', async () => {
    expect((await ask('/', { method: 'POST' })).status).toBe(405);
    const head = await ask('/', { method: 'HEAD' });
    expect([head.status, head.body]).toEqual([200, '']);
  });

  it('holds the page once and bounds its connections, whatever clients that do not read ask', async () => {
    const request = `GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`;
    const before = process.memoryUsage().arrayBuffers;
    const sockets = Array.from({ length: 300 }, () => connect(port, '127.0.0.1').on('error', () => undefined));
    await Promise.all(
      sockets.map(
        (socket) => new Promise((done) => socket.once('connect', () => socket.write(request.repeat(50), done))),
      ),
    );
    await new Promise((done) => setImmediate(done));
    const open = await new Promise<number>((done) => server.getConnections((_, count) => done(count)));
    expect(open).toBeLessThanOrEqual(32);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(4 * html.length + 32 * 1024 * 1024);
    const waits = [server.timeout, server.headersTimeout, server.requestTimeout];
    expect(waits.every((wait) => wait > 0 && wait <= 10_000)).toBe(true);
    for (const socket of sockets) socket.destroy();
    await expect
      .poll(() =>
        ask('/').then(
          ({ status }) => status,
          () => 0,
        ),
      )
      .toBe(200);
  });

  it('answers once on a connection, and closes it', async () => {
    const socket = connect(port, '127.0.0.1');
    socket.write(`HEAD / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`.repeat(3));
    let said = '';
    socket.on('data', (chunk: Buffer) => (said += chunk.toString()));
    await new Promise((done) => socket.on('close', done));
    expect(said.match(/HTTP\/1\.1 /gu)).toHaveLength(1);
    expect(said).toMatch(/^Connection: close\r$/mu);
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
  it('says where the page is with the job in it, and stops when told', async () => {
    const job = resolve('templates/plain-curve.yaml');
    const child = start(freshFolder(), ['page', job, '--no-open']);
    const said = await new Promise<string>((done) => {
      child.stdout?.once('data', (chunk: Buffer) => done(chunk.toString()));
      child.once('close', (code) => done(`ended with ${code}`));
    });
    const [address = ''] = /http:\/\/127\.0\.0\.1:\d+\/\?watch#job=\S+/u.exec(said) ?? [];
    expect(decodeURIComponent(new URL(address).hash)).toBe(`#job=${readFileSync(job, 'utf8')}`);
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
    const policy = /script-src ([^;]*);/u.exec(html)?.[1] ?? '';
    expect(html.match(/<script/gu)).toHaveLength(policy.split(' ').length);
  });
});
