import type { JSX } from 'preact';
import { boundsOf } from '../../base/bounds';
import type { SaidFinding } from '../../findings/say';
import type { Block } from '../../job/fields/field';
import { massOf } from '../../output/panel/panel-plan';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { tracedWords } from '../../output/panel/traced-words';
import { measuresIn } from '../../output/shop-sheet/measures';
import { Findings, Mind, showLength } from '../know';
import { at } from '../../base/at';

interface KnowProps {
  readonly planned: BuildablePanel | null;
  readonly findings: readonly SaidFinding[];
  readonly stale: boolean;
  readonly busy: boolean;
  readonly root: Block;
}

/** What one must know of the panel. */
export function PanelKnow({ planned, findings, stale, busy, root }: KnowProps): JSX.Element {
  return (
    <section class="know" aria-labelledby="know">
      <h2 id="know" tabIndex={-1}>
        What you must know
      </h2>
      {planned && stale ? (
        <p class="quiet" role="status">
          {busy
            ? 'Working out the order of work …'
            : 'The last panel that could be made; your change is not in it yet.'}
        </p>
      ) : null}
      {planned ? <Figures planned={planned} stale={stale} /> : null}
      {busy && !planned ? null : <Findings findings={findings} root={root} />}
      <Mind />
    </section>
  );
}

function Figures({ planned, stale }: { planned: BuildablePanel; stale: boolean }): JSX.Element {
  const { job, panel, forms, order, bends } = planned;
  const say = measuresIn(job.units);
  const { minX, maxX, minY, maxY } = boundsOf({
    shapes: [{ kind: 'loop', operation: 'outline', vertices: panel.outline }],
  });
  const hardest = Math.max(...bends.map(({ alone }) => alone.plan.pull.handForce));
  const figures: readonly (readonly [string, string])[] = [
    ['Flat', `${showLength(maxX - minX, job.units)} × ${showLength(maxY - minY, job.units)}`],
    ['Weight of one', say.mass(massOf(planned))],
    ['Bends, in this order', order.map(({ bend }) => at(panel.bends, bend).name).join(', ')],
    ['Forms', forms.map(({ name }) => name).join(', ')],
    ['Hardest pull', say.force(hardest)],
    ['To make', job.panel.pair ? 'two, left and right' : 'one'],
  ];
  return (
    <>
      <dl class={stale ? 'stale' : ''} aria-live="polite">
        {figures.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <ul class="says">
        {tracedWords(planned.flat.traced, say).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
