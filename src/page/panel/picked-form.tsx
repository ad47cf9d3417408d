import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { drawPieces } from '../../output/pieces';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { Cut } from '../cut';
import { Numbers } from '../know';
import { Plots } from '../plots';
import { View } from '../view';
import { tables, type Form } from '../work';
import { at } from '../../base/at';

interface PickedProps {
  readonly planned: BuildablePanel;
  readonly stale: boolean;
  readonly picked: string | null;
  readonly pick: (bend: string) => void;
}

/** The form of one bend, shown as a job of its own would be. */
export function PickedForm({ planned, stale, picked, pick }: PickedProps): JSX.Element {
  const { order, panel, forms } = planned;
  const names = order.map(({ bend }) => at(panel.bends, bend).name);
  const step = order[Math.max(0, names.indexOf(picked ?? ''))];
  const made = forms.find(({ name }) => name === step?.use.body.name);
  const form = useMemo((): Form | null => {
    if (!made) return null;
    const { job, bend, layout } = made.planned;
    return { job, planned: made.planned, bend, layout, parts: drawPieces(made.planned, tables) };
  }, [made]);
  const chosen = panel.bends[step?.bend ?? -1]?.name ?? '';
  return (
    <>
      <section class={stale ? 'picked stale' : 'picked'} aria-labelledby="picked">
        <h2 id="picked" tabIndex={-1}>
          A bend and its form
        </h2>
        <div class="look-tools" role="group" aria-label="Which bend">
          {names.map((name) => (
            <button key={name} type="button" aria-pressed={name === chosen} onClick={() => pick(name)}>
              {name}
            </button>
          ))}
        </div>
        {made ? (
          <p class="quiet">
            Form {made.name}
            {made.runs.length > 1 ? `, for ${made.runs.map(({ name }) => name).join(', ')}` : ''}.
          </p>
        ) : null}
      </section>
      {form ? (
        <>
          <View form={form} stale={stale} />
          <section class="know" aria-labelledby="form-numbers">
            <h2 id="form-numbers">Its numbers</h2>
            <Numbers form={form} stale={stale} pulled={step && planned.bends[step.bend]?.alone.plan} />
          </section>
          <Plots form={form} stale={stale} />
          <Cut form={form} stale={stale} />
        </>
      ) : null}
    </>
  );
}
