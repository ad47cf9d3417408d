import type { OutputFile } from '../base/drawing';
import type { Answer, Ask } from './worker';

/** A worker that has been at one job for longer than this is left for a new one when the job changes, ms. */
const PATIENCE = 6000;

type Answered = Extract<Answer, { readonly worked: unknown }>['worked'];

/** What is worked out beside the page, and how the page itself does it where no worker is to be had. */
export interface Business<Asked, Worked, Handed extends Answered> {
  readonly ask: (id: number, asked: Asked) => Ask;
  readonly here: (asked: Asked) => Worked;
  /** What the worker answers, as the page has it. */
  readonly heard: (answer: Handed) => Worked;
  /** How long typing must rest before the page itself works, ms; null for what it does at once, also until its worker has started. */
  readonly rest: number | null;
}

interface FilesAsked {
  readonly done: (files: readonly OutputFile[]) => void;
  readonly failed: (why: Error) => void;
}

/** Works jobs out beside the page, the newest job first: what is asked while it is at work waits, and only the last of it is done. */
export class Planner<Asked, Worked, Handed extends Answered> {
  private worker: Worker | null = null;
  private alone = false;
  private ready = false;
  private count = 0;
  private busy: { readonly id: number; readonly since: number; readonly asked: Asked } | null = null;
  private next: Asked | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly filesAsked = new Map<number, FilesAsked>();

  constructor(
    private readonly business: Business<Asked, Worked, Handed>,
    private readonly take: (worked: Worked, asked: Asked) => void,
  ) {}

  /** Starts the worker, so that it is there once it is needed. */
  start(): void {
    this.begin();
  }

  plan(asked: Asked): void {
    if (this.busy && performance.now() - this.busy.since > PATIENCE && this.filesAsked.size === 0) this.stop();
    if (this.busy) this.next = asked;
    else this.send(asked);
  }

  /** Asks for files of the worker; null where there is none. */
  files(ask: (id: number) => Ask): Promise<readonly OutputFile[]> | null {
    const worker = this.begin();
    if (!worker) return null;
    return new Promise((done, failed) => {
      const id = ++this.count;
      this.filesAsked.set(id, { done, failed });
      worker.postMessage(ask(id));
    });
  }

  /** Lets go of whatever is under way. */
  stop(): void {
    this.worker?.terminate();
    clearTimeout(this.timer);
    [this.worker, this.busy, this.next, this.ready] = [null, null, null, false];
  }

  private send(asked: Asked): void {
    const worker = this.begin();
    if (!worker || (!this.ready && this.business.rest === null)) return this.workHere(asked);
    const id = ++this.count;
    this.busy = { id, since: performance.now(), asked };
    worker.postMessage(this.business.ask(id, asked));
  }

  private workHere(asked: Asked): void {
    const { here, rest } = this.business;
    clearTimeout(this.timer);
    if (rest === null) this.take(here(asked), asked);
    else this.timer = setTimeout(() => this.take(here(asked), asked), rest);
  }

  private begin(): Worker | null {
    if (this.alone) return null;
    this.worker ??= startWorker();
    if (!this.worker) this.alone = true;
    if (this.worker && this.worker.onmessage === null) {
      this.worker.onmessage = (event: MessageEvent<Answer>) => this.heard(event.data);
      this.worker.onerror = (event) => this.broke(event);
    }
    return this.worker;
  }

  private heard(answer: Answer): void {
    if ('ready' in answer) {
      this.ready = true;
      return;
    }
    const files = this.filesAsked.get(answer.id);
    this.filesAsked.delete(answer.id);
    if ('files' in answer) return files?.done(answer.files);
    if ('fault' in answer) return files?.failed(new Error(answer.fault));
    const { busy, next } = this;
    if (busy?.id !== answer.id) return;
    [this.busy, this.next] = [null, null];
    if (next) this.send(next);
    // What one business asks is answered in its own kind.
    this.take(this.business.heard(answer.worked as Handed), busy.asked);
  }

  /** A browser that lets no worker run: the page works by itself. */
  private broke(event: ErrorEvent): void {
    event.preventDefault();
    const asked = this.next;
    this.stop();
    this.alone = true;
    for (const { failed } of this.filesAsked.values())
      failed(new Error('the browser let no worker run; try once more'));
    this.filesAsked.clear();
    if (asked) this.send(asked);
    else this.lost?.();
  }

  /** Called where a job got lost with its worker. */
  lost: (() => void) | null = null;
}

/** The page's own script once more, without a page: it then answers as a worker. Null where the browser lets none run. */
function startWorker(): Worker | null {
  const program = document.getElementById('program')?.textContent ?? '';
  if (program === '') return null;
  const address = URL.createObjectURL(new Blob([program], { type: 'text/javascript' }));
  try {
    // Of a page opened from disk Chromium lets no module be a worker; the program imports nothing, so a plain script does.
    return new Worker(address);
  } catch {
    return null;
  } finally {
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  }
}
