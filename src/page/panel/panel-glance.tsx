import type { JSX } from 'preact';
import type { SaidFinding } from '../../findings/say';
import { countText, jumpTo, worstOf } from '../glance';
import { useInSight } from '../in-sight';
import type { BuildablePanel } from '../../output/panel/plan-panel';

interface GlanceProps {
  readonly planned: BuildablePanel | null;
  readonly findings: readonly SaidFinding[];
  readonly stale: boolean;
  readonly busy: boolean;
}

/** On a narrow screen: how many bends and forms, in a line that stays in sight while a field is edited, and the way to the results and back. */
export function PanelGlance({ planned, findings, stale, busy }: GlanceProps): JSX.Element {
  const editing = useInSight('bending');
  return (
    <div class={stale ? 'glance stale' : 'glance'} role="region" aria-label="At a glance">
      {planned ? (
        <>
          <Short name="bends" value={planned.order.length} /> <Short name="forms" value={planned.forms.length} />
        </>
      ) : null}{' '}
      <button type="button" class={`link ${worstOf(findings) ?? 'quiet'}`} onClick={() => jumpTo('findings')}>
        {busy ? 'working …' : countText(findings)}
      </button>{' '}
      <button type="button" onClick={() => jumpTo(editing ? 'panel-does' : 'bending')}>
        {editing ? 'Results ↓' : 'Fields ↑'}
      </button>
    </div>
  );
}

function Short({ name, value }: { name: string; value: number }): JSX.Element {
  return (
    <span class="figure">
      <span class="quiet">{name}</span> <strong>{value}</strong>
    </span>
  );
}
