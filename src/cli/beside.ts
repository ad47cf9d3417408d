import { MessageChannel, Worker } from 'node:worker_threads';
import type { Beside } from '../output/files';

/** One thing asked of the thread: which, and what it is given. */
export type Asked = {
  readonly [Task in keyof Beside]: { readonly task: Task; readonly given: Parameters<Beside[Task]> };
}[keyof Beside];

/** A thread that makes solids and prints while boards are laid out. It works in the order it is asked; where it fails, all that is still awaited rejects. */
export function startBeside(): Beside {
  const worker = new Worker(new URL('./beside-worker.js', import.meta.url));
  // What is awaited keeps the program going; the thread by itself does not.
  worker.unref();
  const ask = async (asked: Asked): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const { port1, port2 } = new MessageChannel();
      port1.once('message', (made: unknown) => {
        port1.close();
        resolve(made);
      });
      worker.once('error', reject);
      worker.postMessage({ asked, answer: port2 }, [port2]);
    });
  return {
    solids: async (...given) => (await ask({ task: 'solids', given })) as Awaited<ReturnType<Beside['solids']>>,
    templates: async (...given) =>
      (await ask({ task: 'templates', given })) as Awaited<ReturnType<Beside['templates']>>,
    prints: async (...given) => (await ask({ task: 'prints', given })) as Awaited<ReturnType<Beside['prints']>>,
  };
}
