import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { drawPanel } from '../../output/panel/picture';
import type { BuildablePanel } from '../../output/panel/plan-panel';
import { stepWords } from '../../output/panel/step-words';
import { drawFigure } from '../../output/shop-sheet/figure';
import { measuresIn } from '../../output/shop-sheet/measures';
import { toNode } from '../drawing/to-node';
import { LookAt, useLook } from '../look-at';
import { useDark } from '../view';
import { LET_GO, panelScene } from './panel-scene';
import { at } from '../../base/at';

interface FoldProps {
  readonly planned: BuildablePanel;
  readonly stale: boolean;
  /** How many steps are made; a fraction is a step under way. */
  readonly progress: number;
  readonly go: (to: number) => void;
}

/** How long a step takes when played, ms. */
const STEP = 1800;
const PAPER = { width: 150, height: 90 };
const PLACES = [
  ['corner', 'All'],
  ['front', 'Back'],
  ['end', 'Side'],
  ['top', 'Top'],
] as const;

/** The panel folded: flat, after every step, and on the way, the form of the step standing on it. */
export function FoldView({ planned, stale, progress, go }: FoldProps): JSX.Element {
  const { panel, order, job } = planned;
  const dark = useDark();
  const deep = useLook();
  const count = order.length;
  const done = Math.floor(progress);
  const share = progress - done;
  const scene = useMemo(() => (deep ? panelScene(planned, { done, share }) : null), [deep, planned, done, share]);
  const lengthwise = useMemo(() => rangeOf(panel.outline.map(({ x }) => x)), [panel]);
  const { playing, toggle } = usePlay(progress, count, go);
  const says = sayProgress(planned, progress);
  return (
    <section class={stale ? 'does stale' : 'does'} aria-labelledby="panel-does">
      <h2 id="panel-does" tabIndex={-1}>
        Flat and folded
      </h2>
      {scene ? (
        <LookAt
          scene={scene}
          dark={dark}
          units={job.units}
          from={lengthwise.from}
          length={lengthwise.to - lengthwise.from}
          tell={(name) => name}
          says={`The panel, ${says}.`}
          groups={['sheet', 'boards']}
          places={PLACES}
        />
      ) : (
        <Painted planned={planned} done={Math.round(progress)} says={says} />
      )}
      <div class="pull">
        <label for="fold">Fold it</label>
        <input
          id="fold"
          type="range"
          min="0"
          max={String(count)}
          step="0.02"
          value={progress}
          onInput={(event) => go(Number(event.currentTarget.value))}
          aria-valuetext={says}
        />
        <output for="fold">{says}</output>
      </div>
      <div class="look-tools" role="group" aria-label="Steps">
        <button type="button" aria-pressed={progress === 0} onClick={() => go(0)}>
          flat
        </button>
        {order.map(({ bend }, index) => (
          <button key={bend} type="button" aria-pressed={progress === index + 1} onClick={() => go(index + 1)}>
            {index + 1}. {at(panel.bends, bend).name}
          </button>
        ))}
        <button type="button" onClick={toggle}>
          {playing ? 'Stop' : 'Play'}
        </button>
      </div>
    </section>
  );
}

function rangeOf(values: readonly number[]): { readonly from: number; readonly to: number } {
  return { from: Math.min(...values), to: Math.max(...values) };
}

/** Where the work is, in words. */
function sayProgress(planned: BuildablePanel, progress: number): string {
  const { order, panel, job } = planned;
  const done = Math.floor(progress);
  const name = (index: number): string => panel.bends[order[index]?.bend ?? -1]?.name ?? '';
  const share = progress - done;
  if (done >= order.length) return 'every bend made';
  const step = stepWords(planned, measuresIn(job.units))[done];
  if (share > 0)
    return `step ${done + 1}, ${name(done)}: ${share > LET_GO ? 'let go' : `pulled ${Math.round((100 * share) / LET_GO)} %`}`;
  return `${done === 0 ? 'flat' : `after step ${done}`}; next ${name(done)}, ${step?.title ?? ''}`;
}

/** The same as on the printed sheet, where the browser draws nothing in three dimensions. */
function Painted({ planned, done, says }: { planned: BuildablePanel; done: number; says: string }): JSX.Element {
  const figure = useMemo(() => {
    const made = planned.panel.bends.map((_, index) => planned.order.slice(0, done).some(({ bend }) => bend === index));
    return toNode(drawFigure(drawPanel(planned.panel, made, PAPER), `The panel, ${says}`));
  }, [planned, done]);
  return <div class="painted on-white">{figure}</div>;
}

/** Plays the steps one after another, from the start where all are made. */
function usePlay(progress: number, count: number, go: (to: number) => void): { playing: boolean; toggle: () => void } {
  const [playing, setPlaying] = useState(false);
  const now = useRef(progress);
  now.current = progress;
  useEffect(() => {
    if (!playing) return undefined;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    let last = performance.now();
    const begun = now.current >= count ? 0 : now.current;
    now.current = begun;
    if (still) go(begun);
    const turn = (time: number): void => {
      // Who wants no motion gets each step whole.
      const next = still
        ? time - last > STEP
          ? Math.floor(now.current) + 1
          : now.current
        : now.current + (time - last) / STEP;
      if (!still || next !== now.current) last = time;
      const to = Math.min(count, next);
      if (to !== now.current) go(to);
      now.current = to;
      if (to >= count) setPlaying(false);
      else frame = requestAnimationFrame(turn);
    };
    let frame = requestAnimationFrame(turn);
    return () => cancelAnimationFrame(frame);
  }, [playing, count]);
  return { playing, toggle: () => setPlaying(!playing) };
}
