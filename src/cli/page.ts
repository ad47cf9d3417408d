import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import { readJobFile } from './job-file';
import { packageFolder } from './package-folder';

export interface PageOptions {
  readonly port: string;
  readonly open: boolean;
}

/** `page`: serves the page on this machine only, until it is stopped, and opens it with the job in its address. */
export async function page(io: Io, job: string | undefined, options: PageOptions): Promise<ExitCode> {
  const port = Number(options.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Stop(`--port takes a number from 0 to 65535, not ${JSON.stringify(options.port)}`, EXIT.wrong);
  const hash = job === undefined ? '' : `#job=${encodeURIComponent(await readJobFile(io, job))}`;
  const server = await serve(await readFile(join(packageFolder(), 'dist/bendbuck.html'), 'utf8'), port);
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const stopped = new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const)
      process.once(signal, () => server.close(() => done()).closeAllConnections());
  });
  io.out(`The page is at ${address}\nIt is served to this machine only. Ctrl-C stops it.\n`);
  if (options.open) openBrowser(address + hash);
  await stopped;
  return EXIT.done;
}

/** A server of one page: loopback only, by its own name only, nothing of a request ever reaches the disk. */
export async function serve(html: string, port: number): Promise<Server> {
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/u.exec(html)?.[1] ?? "default-src 'none'";
  const server = createServer((request, response) =>
    answer(request, response, html, policy, (server.address() as AddressInfo).port),
  );
  await new Promise<void>((done, fail) => {
    server.once('error', (problem: NodeJS.ErrnoException) =>
      fail(
        new Stop(
          `port ${port} cannot be used (${problem.code ?? problem.message}); choose another with --port`,
          EXIT.unwritten,
        ),
      ),
    );
    server.listen(port, '127.0.0.1', done);
  });
  return server;
}

function answer(request: IncomingMessage, response: ServerResponse, html: string, policy: string, port: number): void {
  request.resume();
  const say = (
    status: number,
    body: string,
    type = 'text/plain; charset=utf-8',
    extra: Readonly<Record<string, string>> = {},
  ): void => {
    response.writeHead(status, {
      'Content-Type': type,
      'Content-Length': Buffer.byteLength(body),
      'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Cache-Control': 'no-store',
      ...extra,
    });
    response.end(request.method === 'HEAD' ? undefined : body);
  };
  // A page of another site that had its name point here would come with its own name.
  if (request.headers.host !== `127.0.0.1:${port}` && request.headers.host !== `localhost:${port}`)
    return say(421, 'This server answers to its own address only.\n');
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return say(405, 'Only GET.\n', undefined, { Allow: 'GET, HEAD' });
  if (request.url !== '/') return say(404, 'There is one page here, at /.\n');
  return say(200, html, 'text/html; charset=utf-8');
}

/** Opens the system's browser; where that cannot be done the printed address serves as well. */
function openBrowser(address: string): void {
  const [command, ...args] =
    process.platform === 'win32'
      ? ['rundll32', 'url.dll,FileProtocolHandler', address]
      : [process.platform === 'darwin' ? 'open' : 'xdg-open', address];
  spawn(command ?? '', args, { stdio: 'ignore', detached: true })
    .on('error', () => undefined)
    .unref();
}
