import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { SaidFinding } from '../../findings/say';
import type { Block } from '../../job/fields/field';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { FlatView } from './flat-view';
import { FoldView } from './fold-view';
import { OrderOfWork } from './order-of-work';
import { PanelKnow } from './panel-know';
import { PickedForm } from './picked-form';

interface ShowsProps {
  readonly planned: BuildablePanel | null;
  readonly findings: readonly SaidFinding[];
  readonly stale: boolean;
  readonly busy: boolean;
  readonly root: Block;
}

/** What becomes of a panel's job: folded step by step, what to know, flat, the order of work, and the form of the bend that is picked. */
export function PanelShows({ planned, findings, stale, busy, root }: ShowsProps): JSX.Element {
  const [at, setAt] = useState<number | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const know = <PanelKnow planned={planned} findings={findings} stale={stale} busy={busy} root={root} />;
  if (!planned)
    return (
      <>
        <section class="does" aria-labelledby="panel-does">
          <h2 id="panel-does" tabIndex={-1}>
            What it does
          </h2>
          <p role="status">
            {busy
              ? 'Working out the flat, the order of work and the forms …'
              : 'Here the panel will stand, flat and folded, once nothing is wrong in its job.'}
          </p>
        </section>
        {know}
      </>
    );
  const progress = Math.min(at ?? planned.order.length, planned.order.length);
  const choose = (bend: string): void => setPicked(bend);
  return (
    <>
      <FoldView planned={planned} stale={stale} progress={progress} go={setAt} />
      {know}
      <FlatView planned={planned} stale={stale} />
      <OrderOfWork planned={planned} stale={stale} progress={progress} go={setAt} pick={choose} />
      <PickedForm planned={planned} stale={stale} picked={picked} pick={choose} />
    </>
  );
}
