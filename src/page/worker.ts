import type { OutputFile } from '../base/drawing';
import type { Draft } from './draft';
import { handOver, type HandedOver } from './hand-over';
import { filesOf, workPanel, type PanelAsked, type PanelWorked } from './panel/panel-work';
import { faultText, work } from './work';

/** What the page asks of its worker. */
export type Ask =
  | { readonly id: number; readonly want: 'form'; readonly asked: Draft }
  | { readonly id: number; readonly want: 'plan' | 'files'; readonly asked: PanelAsked };

/** What the worker answers. */
export type Answer =
  | { readonly id: null; readonly ready: true }
  | { readonly id: number; readonly worked: HandedOver | PanelWorked }
  | { readonly id: number; readonly files: readonly OutputFile[] }
  | { readonly id: number; readonly fault: string };

/** Answers what the page asks, beside it, so that typing goes on. A panel's last plan is kept for its files. */
export function serve(): void {
  let last: PanelWorked | null = null;
  const planned = (asked: PanelAsked): PanelWorked => {
    if (last === null || JSON.stringify(asked) !== key) {
      last = workPanel(asked);
      key = JSON.stringify(asked);
    }
    return last;
  };
  let key = '';
  const answer = async ({ id, want, asked }: Ask): Promise<Answer> => {
    try {
      if (want === 'form') return { id, worked: handOver(work(asked)) };
      const worked = planned(asked);
      if (want === 'plan') return { id, worked };
      if (!worked.planned) return { id, fault: 'the panel cannot be made as it is' };
      return { id, files: await filesOf(worked.planned) };
    } catch (problem) {
      return { id, fault: faultText(problem) };
    }
  };
  addEventListener('message', (event: MessageEvent<Ask>) => {
    void answer(event.data).then((answered) => postMessage(answered));
  });
  postMessage({ id: null, ready: true } satisfies Answer);
}
