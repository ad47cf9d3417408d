import type { JSX } from 'preact';
import { useContext } from 'preact/hooks';
import { sayParts } from '../output/plan/came-out';
import { names } from '../output/plan/figures';
import { printersFor } from './know';
import { ShownForm } from './shown-form';

/** What the trials that count do to the form, beside where they are entered. */
export function TrialEffect(): JSX.Element | null {
  const form = useContext(ShownForm);
  const plan = form?.planned.plan;
  if (!form || !plan?.trials) return null;
  const { trials, bend } = plan;
  const print = printersFor(form.job.units);
  const { tables } = trials.effect;
  const side = form.job.bend.radiusOf === 'finished' ? 'form' : 'finished';
  const both = ({ from, to }: { readonly from: number; readonly to: number }): string =>
    `${print.length(from)} / ${print.length(to)}`;
  return (
    <div class="effect" role="status" aria-label="What the trials do">
      <p>
        Factor <strong>{print.ratio(trials.factor)}</strong>
        {trials.spread.high > trials.spread.low
          ? `, the trials between ${print.ratio(trials.spread.low)} and ${print.ratio(trials.spread.high)}`
          : ''}
        . {names[side]}, A / B: <strong>{both(bend[side])}</strong>
        {tables ? ` (by the tables ${both(tables[side])})` : ''}; wrap <strong>{print.angle(bend.wrap.chosen)}</strong>
        {tables ? ` (${print.angle(tables.wrap)})` : ''}.
      </p>
      {sayParts(plan, print).map((lines, index) => (
        <ul key={index}>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ))}
    </div>
  );
}
