import type { OutputFile } from '../../base/drawing';
import { workPanel, filesOf, type PanelAsked, type PanelWorked } from './panel-work';
import type { Answer, Ask } from './worker';

/** A worker that has been at one job for longer than this is left for a new one when the job changes, ms. */
const PATIENCE = 6000;
/** Where no worker is to be had the page itself works, once typing rests, ms. */
const REST = 400;

interface FilesAsked {
  readonly done: (files: readonly OutputFile[]) => void;
  readonly failed: (why: Error) => void;
}

/** Works panels out beside the page, the newest job first: what is asked while it is at work waits, and only the last of it is done. */
export class Planner {
  private worker: Worker | null = null;
  private alone = false;
  private count = 0;
  private busy: { readonly id: number; readonly since: number } | null = null;
  private next: PanelAsked | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly files = new Map<number, FilesAsked>();

  constructor(private readonly take: (worked: PanelWorked) => void) {}

  plan(asked: PanelAsked): void {
    if (this.busy && performance.now() - this.busy.since > PATIENCE && this.files.size === 0) this.stop();
    if (this.busy) this.next = asked;
    else this.send(asked);
  }

  makeFiles(asked: PanelAsked): Promise<readonly OutputFile[]> {
    const worker = this.begin();
    if (!worker) {
      const { planned } = workPanel(asked);
      return planned ? filesOf(planned) : Promise.reject(new Error('the panel cannot be made as it is'));
    }
    return new Promise((done, failed) => {
      const id = ++this.count;
      this.files.set(id, { done, failed });
      worker.postMessage({ id, want: 'files', asked } satisfies Ask);
    });
  }

  /** Lets go of whatever is under way. */
  stop(): void {
    this.worker?.terminate();
    clearTimeout(this.timer);
    [this.worker, this.busy, this.next] = [null, null, null];
  }

  private send(asked: PanelAsked): void {
    const worker = this.begin();
    if (!worker) return this.workHere(asked);
    const id = ++this.count;
    this.busy = { id, since: performance.now() };
    worker.postMessage({ id, want: 'plan', asked } satisfies Ask);
  }

  private workHere(asked: PanelAsked): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.take(workPanel(asked)), REST);
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
    const files = this.files.get(answer.id);
    this.files.delete(answer.id);
    if ('files' in answer) return files?.done(answer.files);
    if ('fault' in answer) return files?.failed(new Error(answer.fault));
    if (this.busy?.id === answer.id) this.busy = null;
    const { next } = this;
    this.next = null;
    if (next) this.send(next);
    this.take(answer.worked);
  }

  /** A browser that lets no worker run: the page works by itself. */
  private broke(event: ErrorEvent): void {
    event.preventDefault();
    const asked = this.next;
    this.stop();
    this.alone = true;
    for (const { failed } of this.files.values()) failed(new Error('the browser let no worker run; try once more'));
    this.files.clear();
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
