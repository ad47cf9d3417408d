import { parentPort, type MessagePort } from 'node:worker_threads';
import { solidFiles } from '../output/solids';
import type { Asked } from './beside';

/** Loaded once it is needed: the solids come first. */
async function done(asked: Asked): Promise<unknown> {
  switch (asked.task) {
    case 'solids':
      return solidFiles(...asked.given);
    case 'templates':
      return (await import('../output/pdf/pdf')).writeTemplates(...asked.given);
    case 'prints':
      return (await import('../output/files')).boardPrints(...asked.given);
  }
}

// What is thrown ends this thread, and its starter hears of it.
parentPort?.on('message', ({ asked, answer }: { readonly asked: Asked; readonly answer: MessagePort }) => {
  void done(asked).then((made) => answer.postMessage(made));
});
