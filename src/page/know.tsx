import { Fragment, type JSX } from 'preact';
import type { SaidFinding } from '../findings/say';
import { formatForce, formatLength, toFractionalInches, type LengthUnit } from '../base/units';
import { keyFigures, nameOf, sayFigure, type Printers } from '../output/plan/figures';
import type { Plan } from '../output/plan/plan';
import { pullDetails } from '../output/plan/pull-details';
import type { Block } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
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
      <Mind />
    </section>
  );
}

/** What one must mind with every bend. */
export function Mind(): JSX.Element {
  return (
    <p class="caution">
      <strong>Mind:</strong> a bent sheet is a spring. Stand clear of its end and let it back slowly. Fix every clamp
      before you pull; deburr edges, wear gloves; extract MDF dust and laser fumes. Local codes and licensed practice
      come first.
    </p>
  );
}

/** Between the values of two ends, the only place where a line may break. */
const BETWEEN = ' / ';

interface NumbersProps {
  readonly form: Form;
  readonly stale: boolean;
  /** The bend whose pull and hold are told, where the form serves others too; else the form's own. */
  readonly pulled?: Plan | undefined;
}

/** The key figures of a form, and every number of its pull and hold. */
export function Numbers({ form, stale, pulled = form.planned.plan }: NumbersProps): JSX.Element {
  const { bend, pull, effort, hold } = pulled;
  const plan = { ...form.planned.plan, bend, pull, effort, hold };
  const figures = keyFigures(plan).filter(({ minor }) => !minor);
  const print = printersFor(form.job.units);
  const details = pullDetails(plan);
  return (
    <>
      <dl class={stale ? 'stale' : ''} aria-live="polite">
        {figures.map((figure) => (
          <div key={figure.id} title={`${figure.why}.`}>
            <dt>{nameOf(figure).replace(' / ', '\u00a0/\u00a0')}</dt>
            <dd>
              {sayFigure(figure, print)
                .split(BETWEEN)
                .map((one, index) => (
                  <Fragment key={index}>
                    {index > 0 ? BETWEEN : null}
                    <span class="whole">{one}</span>
                  </Fragment>
                ))}
            </dd>
          </div>
        ))}
      </dl>
      <details class={stale ? 'pull-details stale' : 'pull-details'}>
        <summary>Pull and hold, every number</summary>
        <dl>
          {details.map((detail) => (
            <div key={detail.id}>
              <dt>{nameOf(detail).replace(' / ', '\u00a0/\u00a0')}</dt>
              <dd>{sayFigure(detail, print)}</dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}

/** Numbers as the page prints them: mm to a tenth, inches to the nearest 1/32, degrees to a tenth. */
export function printersFor(units: LengthUnit): Printers {
  return {
    length: (mm) => showLength(mm, units),
    angle: (degrees) => `${degrees.toFixed(1).replace(/^-0\.0$/u, '0.0')}°`.replace('-', '−'),
    force: (newtons) => formatForce(newtons, units),
    share: (share) => `${(100 * share).toFixed(1)} %`,
    ratio: (ratio) => ratio.toFixed(2),
  };
}

/** mm to a tenth; inches to the nearest 1/32, marked where a little is left over. */
export function showLength(mm: number, units: 'mm' | 'in'): string {
  const near = units === 'in' && Math.abs(toFractionalInches(mm).leftover) > 0.05 ? '≈ ' : '';
  return near + formatLength(mm, units);
}

/** What was found, each with the way to its field. */
export function Findings({
  findings,
  root = jobFields,
  id = 'findings',
}: {
  findings: readonly SaidFinding[];
  root?: Block;
  id?: string;
}): JSX.Element {
  return (
    <div class="findings" id={id} role="status" aria-live="polite" tabIndex={-1}>
      {findings.length === 0 ? <p class="quiet">Nothing wrong, nothing doubtful.</p> : null}
      <ul>
        {findings.map((finding, index) => (
          <li key={index} class={finding.level}>
            <strong>{finding.level}</strong> {finding.message}
            {finding.allowed === undefined || finding.allowed.length > 80 ? '' : ` (allowed: ${finding.allowed})`}
            {finding.hint === '' ? '' : ` — ${finding.hint}`}{' '}
            {finding.path === '' ? null : (
              <button type="button" class="link" title={finding.path} onClick={() => goTo(finding.path, root)}>
                {labelOf(finding.path, root)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Puts the cursor into the field a finding speaks of, or the first one below it, opening what hides it. */
function goTo(path: string, root: Block): void {
  const entries = [...document.querySelectorAll<HTMLElement>('input[id], select[id]')];
  const found =
    entries.find(({ id }) => id === (homeOf(path, root) ?? path)) ??
    entries.find(({ id }) => id.startsWith(path)) ??
    entries.find(({ id }) => path.startsWith(id));
  found?.closest('details')?.setAttribute('open', '');
  found?.focus();
  found?.scrollIntoView({ block: 'center' });
}
