import { parentPort, type MessagePort } from 'node:worker_threads';
import type { Asked } from './beside';

/** Loaded once it is needed: the solids come first. */
async function done(asked: Asked): Promise<unknown> {
  switch (asked.task) {
    case 'solids':
      return (await import('../output/solids')).solidFiles(...asked.given);
    case 'templates':
      return (await import('../output/pdf/pdf')).writeTemplates(...asked.given);
    case 'prints':
      return (await import('../output/files')).boardPrints(...asked.given);
  }
}

/** Answers, in a thread of its own, all that is asked of it. What is thrown ends the thread, and its starter hears of it. */
export function answer(): void {
  parentPort?.on('message', ({ asked, answer: port }: { readonly asked: Asked; readonly answer: MessagePort }) => {
    void done(asked).then((made) => port.postMessage(made));
  });
}
