import { Worker } from 'node:worker_threads';
import type { OutputFile } from '../base/drawing';
import type { Form } from '../output/solids';

/** The form's solids, made on a thread of their own while the boards are laid out. Rejects where that thread fails. */
export function solidsBeside(form: Form, title: string): Promise<OutputFile[]> {
  const worker = new Worker(new URL('./solids-worker.js', import.meta.url), { workerData: { form, title } });
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
  });
}
