import { parentPort, workerData } from 'node:worker_threads';
import { solidFiles, type Form } from '../output/solids';

const { form, title } = workerData as { readonly form: Form; readonly title: string };
parentPort?.postMessage(solidFiles(form, title));
