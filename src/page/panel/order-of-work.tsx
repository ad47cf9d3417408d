import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { stepWords } from '../../output/panel/step-words';
import { measuresIn } from '../../output/shop-sheet/measures';

interface OrderProps {
  readonly planned: BuildablePanel;
  readonly stale: boolean;
  readonly progress: number;
  readonly go: (to: number) => void;
  readonly pick: (bend: string) => void;
}

/** The order of work, as the printed sheet says it; each step can be shown, and its form looked at. */
export function OrderOfWork({ planned, stale, progress, go, pick }: OrderProps): JSX.Element {
  const steps = useMemo(() => stepWords(planned, measuresIn(planned.job.units)), [planned]);
  return (
    <section class={stale ? 'order stale' : 'order'} aria-labelledby="order">
      <h2 id="order">The order of work</h2>
      <ol class="steps">
        {steps.map(({ number, bend, title, sentences }) => (
          <li key={bend} class={progress > number - 1 && progress <= number ? 'now' : ''}>
            <h3>
              {bend}: {title}
            </h3>
            <p class="look-tools">
              <button type="button" onClick={() => go(number - 1)} aria-label={`Before step ${number}, ${bend}`}>
                Before
              </button>
              <button type="button" onClick={() => go(number)} aria-label={`After step ${number}, ${bend}`}>
                After
              </button>
              <button
                type="button"
                aria-label={`See its form, ${bend}`}
                onClick={() => {
                  pick(bend);
                  document.getElementById('picked')?.scrollIntoView();
                }}
              >
                See its form
              </button>
            </p>
            <ul>
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  );
}
