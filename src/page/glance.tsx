import type { JSX } from 'preact';
import type { SaidFinding } from '../findings/say';
import { figureIn, keyFigures, sayFigure, type FigureId } from '../output/plan/figures';
import { useInSight } from './in-sight';
import { printersFor } from './know';
import type { Form } from './work';

/** On a narrow screen: the key figures in one line that stays in sight while a field is edited, and the way from fields to results and back. */
export function Glance({
  form,
  findings,
  stale,
}: {
  form: Form | null;
  findings: readonly SaidFinding[];
  stale: boolean;
}): JSX.Element {
  const editing = useInSight('bending');
  const worst = worstOf(findings);
  return (
    <div class={stale ? 'glance stale' : 'glance'} role="region" aria-label="At a glance">
      {form ? (
        <>
          <Short name="wrap" form={form} id="wrap" /> <Short name="pull" form={form} id="pull" />
        </>
      ) : null}{' '}
      <button type="button" class={`link ${worst ?? 'quiet'}`} onClick={() => jumpTo('findings')}>
        {countText(findings)}
      </button>{' '}
      <button type="button" onClick={() => jumpTo(editing ? (form ? 'does' : 'know') : 'bending')}>
        {editing ? 'Results ↓' : 'Fields ↑'}
      </button>
    </div>
  );
}

/** The worst level among findings; none where there are none. */
export function worstOf(findings: readonly SaidFinding[]): SaidFinding['level'] | undefined {
  return (['error', 'warning', 'note'] as const).find((level) => findings.some((finding) => finding.level === level));
}

/** A key figure by its first amount alone. */
function Short({ name, form, id }: { name: string; form: Form; id: FigureId }): JSX.Element | null {
  const figure = figureIn(keyFigures(form.planned.plan), id);
  if (!figure) return null;
  const value = sayFigure({ ...figure, words: (first = '') => first }, printersFor(form.job.units));
  return (
    <span class="figure">
      <span class="quiet">{name}</span> <strong>{value}</strong>
    </span>
  );
}

/** `1 error, 2 warnings`. */
export function countText(findings: readonly SaidFinding[]): string {
  const counts = (['error', 'warning', 'note'] as const).map(
    (level) => [level, findings.filter((finding) => finding.level === level).length] as const,
  );
  const said = counts.flatMap(([level, count]) => (count === 0 ? [] : [`${count} ${level}${count === 1 ? '' : 's'}`]));
  return said.length === 0 ? 'no findings' : said.join(', ');
}

/** Scrolls to a place and takes the keyboard there; the address, which is the job's, is left alone. */
export function jumpTo(id: string): void {
  const target = document.getElementById(id);
  target?.focus({ preventScroll: true });
  target?.scrollIntoView();
}
