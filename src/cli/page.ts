import { spawn } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { join } from 'node:path';
import { InternalError } from '../base/errors';
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
  const text = job === undefined ? null : await readJobFile(io, job);
  const watched = job === undefined || job === '-' ? null : () => readJobFile(io, job);
  const server = await serve(await readFile(join(packageFolder(), 'dist/bendbuck.html')), port, watched);
  const search = watched ? WATCH : '';
  const hash = text === null ? '' : `#job=${encodeURIComponent(text)}`;
  const address = `http://127.0.0.1:${portOf(server)}/${search}${hash}`;
  const stopped = new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const)
      process.once(signal, () => server.close(() => done()).closeAllConnections());
  });
  io.out(`The page is at ${address}\nIt is served to this machine only. Ctrl-C stops it.\n`);
  if (options.open) openBrowser(address);
  await stopped;
  return EXIT.done;
}

/** Tells the page that its server hands out the job as it stands on disk, and where. */
const WATCH = '?watch';
const JOB = '/job.yaml';

/** A page for one person at one machine: as many connections as a few browsers have open. */
const MOST_CONNECTIONS = 32;
/** How long a connection may take to ask, or be given nothing because it does not read, ms. */
const PATIENCE = 10_000;
/** How long a connection may last, however it dribbles, ms. */
const LONGEST = 60_000;

/**
 * A server of one page: loopback only, by its own name only, nothing of a request ever reaches the disk. The page is held once, whoever asks;
 * a connection gets one answer, and what does not read is let go. `job` reads the one job file the page was opened with, for it to follow; null where there is none.
 */
export async function serve(
  html: Uint8Array,
  port: number,
  job: (() => Promise<string>) | null = null,
): Promise<Server> {
  const page = Buffer.from(html);
  const policy =
    /http-equiv="Content-Security-Policy" content="([^"]*)"/u.exec(page.toString('latin1', 0, 4096))?.[1] ??
    "default-src 'none'";
  const server = createServer(
    { headersTimeout: PATIENCE, requestTimeout: PATIENCE, connectionsCheckingInterval: PATIENCE / 4 },
    (request, response) => void answer(request, response, { page, policy, port: portOf(server), job }),
  );
  server.maxConnections = MOST_CONNECTIONS;
  server.setTimeout(PATIENCE, (socket) => socket.destroy());
  server.on('connection', (socket) => {
    const end = setTimeout(() => socket.destroy(), LONGEST);
    socket.once('close', () => clearTimeout(end));
  });
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

function portOf(server: Server): number {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new InternalError('the server listens on no port');
  return address.port;
}

interface Served {
  readonly page: Buffer;
  readonly policy: string;
  readonly port: number;
  readonly job: (() => Promise<string>) | null;
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  { page, policy, port, job }: Served,
): Promise<void> {
  request.resume();
  const say = (status: number, body: string | Buffer, extra: Readonly<Record<string, string>> = {}): void => {
    response.writeHead(status, {
      'Content-Type': `${body === page ? 'text/html' : 'text/plain'}; charset=utf-8`,
      'Content-Length': Buffer.byteLength(body),
      'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Cache-Control': 'no-store',
      Connection: 'close',
      ...extra,
    });
    response.end(request.method === 'HEAD' ? undefined : body);
  };
  // A page of another site that had its name point here would come with its own name.
  if (request.headers.host !== `127.0.0.1:${port}` && request.headers.host !== `localhost:${port}`)
    return say(421, 'This server answers to its own address only.\n');
  if (request.method !== 'GET' && request.method !== 'HEAD') return say(405, 'Only GET.\n', { Allow: 'GET, HEAD' });
  if (job && request.url === JOB) {
    const text = await job().catch(() => null);
    return text === null ? say(404, 'The job cannot be read now.\n') : say(200, text);
  }
  if (request.url !== '/' && !(job && request.url === `/${WATCH}`)) return say(404, 'There is one page here, at /.\n');
  return say(200, page);
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
