import { Fragment, type JSX } from 'preact';
import { toDegrees } from '../base/angle';
import type { SaidFinding } from '../findings/say';
import { formatForce, formatLength, toFractionalInches } from '../base/units';
import { homeOf, labelOf } from '../job/fields/label';
import type { Form } from './work';

/** Section 3: what you must know. */
export function Know({
  form,
  findings,
  stale,
}: {
  form: Form | null;
  findings: readonly SaidFinding[];
  stale: boolean;
}): JSX.Element {
  return (
    <section class="know" aria-labelledby="know">
      <h2 id="know" tabIndex={-1}>
        What you must know
      </h2>
      {form && stale ? <p class="quiet">The last form that could be built; your change is not in it yet.</p> : null}
      {form ? <Numbers form={form} stale={stale} /> : null}
      <Findings findings={findings} />
      <p class="caution">
        <strong>Mind:</strong> a bent sheet is a spring. Stand clear of its end and let it back slowly. Fix every clamp
        before you pull; deburr edges, wear gloves; extract MDF dust and laser fumes. Local codes and licensed practice
        come first.
      </p>
    </section>
  );
}

/** Between the values of two ends, the only place where a line may break. */
const BETWEEN = ' / ';

function Numbers({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  const { bend, layout, job } = form;
  const length = (mm: number): string => showLength(mm, job.units);
  const degrees = (radians: number): string => `${toDegrees(radians).toFixed(1)}°`.replace('-', '−');
  const rows: readonly (readonly [string, string])[] = [
    ['Pull to a wrap of', degrees(bend.wrap.chosen)],
    ['Form radius, A\u00a0/\u00a0B', `${length(bend.form.radiusFrom)} / ${length(bend.form.radiusTo)}`],
    ['After release, A\u00a0/\u00a0B', `${length(bend.finished.radiusFrom)} / ${length(bend.finished.radiusTo)}`],
    ['Wrap needed, A\u00a0/\u00a0B', `${degrees(bend.wrap.from)} / ${degrees(bend.wrap.to)}`],
    ['Twist remaining, A\u00a0/\u00a0B', `${degrees(bend.twist.from)} / ${degrees(bend.twist.to)}`],
    ['Bend lines apart, A\u00a0/\u00a0B', `${length(bend.allowance.from)} / ${length(bend.allowance.to)}`],
    ['Pull at the hands', `${formatForce(bend.pull.handForce, job.units)} at ${length(bend.pull.lever)}`],
    ['Extra metal on the free leg', bend.pull.leverage > 0 ? `${length(bend.pull.leverage)}, trimmed after` : 'none'],
    ['Clamps', `${layout.clamps}, ${layout.clampForce.toFixed(0)} N together`],
    ['Foot behind the spine', length(layout.foot)],
    ...(form.planned.plan.trials
      ? [['Factor from trial strips', form.planned.plan.trials.factor.toFixed(2)] as const]
      : []),
    ['Stations', `${layout.stations.length} and ${layout.backings.length} backing`],
  ];
  return (
    <dl class={stale ? 'stale' : ''} aria-live="polite">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            {value.split(BETWEEN).map((one, index) => (
              <Fragment key={index}>
                {index > 0 ? BETWEEN : null}
                <span class="whole">{one}</span>
              </Fragment>
            ))}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** mm to a tenth; inches to the nearest 1/32, marked where a little is left over. */
export function showLength(mm: number, units: 'mm' | 'in'): string {
  const near = units === 'in' && Math.abs(toFractionalInches(mm).leftover) > 0.05 ? '≈ ' : '';
  return near + formatLength(mm, units);
}

function Findings({ findings }: { findings: readonly SaidFinding[] }): JSX.Element {
  return (
    <div class="findings" id="findings" role="status" aria-live="polite" tabIndex={-1}>
      {findings.length === 0 ? <p class="quiet">Nothing wrong, nothing doubtful.</p> : null}
      <ul>
        {findings.map((finding, index) => (
          <li key={index} class={finding.level}>
            <strong>{finding.level}</strong> {finding.message}
            {finding.allowed === undefined || finding.allowed.length > 80 ? '' : ` (allowed: ${finding.allowed})`}
            {finding.hint === '' ? '' : ` — ${finding.hint}`}{' '}
            {finding.path === '' ? null : (
              <button type="button" class="link" title={finding.path} onClick={() => goTo(finding.path)}>
                {labelOf(finding.path)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Puts the cursor into the field a finding speaks of, or the first one below it, opening what hides it. */
function goTo(path: string): void {
  const entries = [...document.querySelectorAll<HTMLElement>('input[id], select[id]')];
  const found =
    entries.find(({ id }) => id === (homeOf(path) ?? path)) ??
    entries.find(({ id }) => id.startsWith(path)) ??
    entries.find(({ id }) => path.startsWith(id));
  found?.closest('details')?.setAttribute('open', '');
  found?.focus();
  found?.scrollIntoView({ block: 'center' });
}
