// Speaks WebDriver BiDi with a Firefox of its own, over node's own WebSocket (node --experimental-websocket): as much of it as the checks need.
// Source: W3C, WebDriver BiDi.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** How long an answer may take on a busy machine, ms. */
const PATIENCE = 60_000;

/** Starts a headless Firefox; `complaints` gathers what pages log as errors. */
export async function startFirefox(program) {
  const profile = mkdtempSync(join(tmpdir(), 'firefox-'));
  const browser = spawn(program, ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port=0'], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const address = await new Promise((done, fail) => {
    const timer = setTimeout(() => fail(new Error('Firefox does not answer')), PATIENCE);
    browser.stderr.on('data', (said) => {
      const [, found] = /WebDriver BiDi listening on (ws:\S+)/.exec(String(said)) ?? [];
      if (found === undefined) return;
      clearTimeout(timer);
      done(found);
    });
    browser.once('error', fail);
  });
  const socket = new WebSocket(`${address}/session`);
  await new Promise((done, fail) => {
    socket.onopen = done;
    socket.onerror = () => fail(new Error('Firefox takes no connection'));
  });
  const waiting = new Map();
  const complaints = [];
  socket.onmessage = ({ data }) => {
    const message = JSON.parse(data);
    if (message.method === 'log.entryAdded' && message.params.level === 'error') complaints.push(message.params.text);
    const answer = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.type === 'error') answer?.fail(new Error(`${message.error}: ${message.message}`));
    else answer?.done(message.result);
  };
  let last = 0;
  const send = (method, params) =>
    new Promise((done, fail) => {
      const id = ++last;
      const timer = setTimeout(() => fail(new Error(`${method} is not answered`)), PATIENCE);
      waiting.set(id, { done: (result) => (clearTimeout(timer), done(result)), fail });
      socket.send(JSON.stringify({ id, method, params }));
    });
  await send('session.new', { capabilities: {} });
  await send('session.subscribe', { events: ['log.entryAdded'] });
  const { context } = await send('browsingContext.create', { type: 'tab' });
  return {
    complaints,
    open: (url) => send('browsingContext.navigate', { context, url, wait: 'complete' }),
    /** What an expression in the page comes to, through JSON; promises are waited for. */
    async value(expression) {
      const { type, result, exceptionDetails } = await send('script.evaluate', {
        expression: `(async () => JSON.stringify(await (${expression})) ?? 'null')()`,
        target: { context },
        awaitPromise: true,
      });
      if (type === 'exception') throw new Error(exceptionDetails.text);
      return JSON.parse(result.value);
    },
    keys: (actions) => send('input.performActions', { context, actions: [{ type: 'key', id: 'keyboard', actions }] }),
    async stop() {
      socket.close();
      browser.kill();
      await new Promise((done) => (browser.exitCode === null ? browser.once('exit', done) : done()));
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
