import type { JSX, TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { toDegrees } from '../base/angle';
import { formatForce } from '../base/units';
import { tackleOf } from '../output/picture/tackle';
import { buildModel } from '../output/picture/model';
import { legTurn, pulledBy, type SheetState } from '../output/picture/wrapped-sheet';
import { stretchOf, type Stretch } from '../output/picture/paint';
import { drawScene, type Eye } from './canvas';
import { useShown } from './in-sight';
import { sceneOf } from './look/scene';
import { LookAt, useLook } from './look-at';
import { tellPart } from './tell-part';
import { tables, type Form } from './work';

const FIRST: Eye = { turn: -0.75, height: 0.65 };
/** The slider's last tenth is the letting go. */
const LET_GO = 0.9;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-0.1, 0],
  ArrowRight: [0.1, 0],
  ArrowUp: [0, 0.1],
  ArrowDown: [0, -0.1],
};

/** Section 2: what it does. The form with the sheet on it, pulled round by a slider and let go at its end; drag or arrow keys turn it. */
export function View({ form: newest, stale }: { form: Form; stale: boolean }): JSX.Element {
  const holder = useRef<HTMLElement>(null);
  const form = useShown(holder, newest);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [eye, setEye] = useState(FIRST);
  const [pull, setPull] = useState(0.28);
  const dark = useDark();
  const { bend, layout, job } = form;
  const { joints } = form.planned;
  const released = pull > LET_GO;
  const state = useMemo(() => stateAt(bend, pull), [bend, pull]);
  const force = formatForce(bend.pull.handForce, job.units);
  const model = useMemo(
    () => buildModel(layout, bend, state, { joints, tackle: tackleOf(bend, layout, tables.rules) }),
    [joints, bend, layout, state],
  );

  const deep = useLook();
  const scene = useMemo(() => {
    const path = released ? null : { path: stretchOf(model.pull, arrowAt(pull / LET_GO)), text: `pull ${force}` };
    return deep ? sceneOf(model, bend.section.thickness, path) : null;
  }, [deep, model, bend, released, pull, force]);

  useEffect(() => {
    const target = canvas.current;
    if (!target) return undefined;
    const draw = (): void =>
      drawScene(target, {
        model,
        eye,
        pull: released ? null : { stretch: arrowAt(pull / LET_GO), text: `pull ${force}` },
        dark,
      });
    draw();
    const observer = new ResizeObserver(draw);
    observer.observe(target);
    return () => observer.disconnect();
  }, [model, eye, dark, force, released, pull, deep]);

  const turnBy = (dx: number, dy: number): void =>
    setEye(({ turn, height }) => ({ turn: turn - dx, height: Math.max(-0.2, Math.min(1.5, height + dy)) }));
  const drag = (event: TargetedPointerEvent<HTMLCanvasElement>): void => {
    if (event.buttons !== 1) return;
    turnBy(event.movementX / 150, event.movementY / 150);
  };
  const key = (event: TargetedKeyboardEvent<HTMLCanvasElement>): void => {
    const step = ARROWS[event.key];
    if (!step) return;
    event.preventDefault();
    turnBy(...step);
  };
  const says = sayState(bend, state);
  const shows = `The form with ${layout.stations.length} stations and ${layout.backings.length} backing stations, the sheet ${says}${released ? '' : `, the free leg pulled up with ${force}`}.`;
  return (
    <section class={stale ? 'does stale' : 'does'} aria-labelledby="does" ref={holder}>
      <h2 id="does" tabIndex={-1}>
        What it does
      </h2>
      {scene ? (
        <LookAt
          scene={scene}
          dark={dark}
          units={job.units}
          length={bend.length}
          tell={(name) => tellPart(name, form)}
          says={shows}
        />
      ) : (
        <canvas
          ref={canvas}
          tabIndex={0}
          role="img"
          aria-label={`${shows} Arrow keys turn it.`}
          onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
          onPointerMove={drag}
          onKeyDown={key}
        />
      )}
      <div class="pull">
        <label for="pull">Pull the sheet</label>
        <input
          id="pull"
          type="range"
          min="0"
          max="1"
          step="0.01"
          value={pull}
          onInput={(event) => setPull(Number(event.currentTarget.value))}
          aria-valuetext={says}
        />
        <output for="pull">{says}</output>
        <button type="button" onClick={() => setPull(LET_GO)}>
          wrap
        </button>
        <button type="button" onClick={() => setPull(1)}>
          let go
        </button>
      </div>
    </section>
  );
}

/** How the sheet lies with the slider there: pulled, by the angle of the leg; in the slider's last tenth let go. */
function stateAt(bend: Form['bend'], pull: number): SheetState {
  if (pull <= LET_GO) return pulledBy(bend, pull / LET_GO);
  return { kind: 'released', opened: (pull - LET_GO) / (1 - LET_GO) };
}

function sayState(bend: Form['bend'], state: SheetState): string {
  if (state.kind === 'released')
    return state.opened === 1 ? `let go: ${toDegrees(bend.angle).toFixed(1)}° from flat` : 'let go: it opens';
  const degrees = (angle: number, decimals: number): string => `${toDegrees(angle).toFixed(decimals)}°`;
  return `wrapped ${degrees(state.wrap, 0)} of ${degrees(bend.wrap.chosen, 1)}, the leg at ${degrees(legTurn(bend, state), 0)}`;
}

/** The arrow of the pull: from where the hands are, a third of the way on; at the end, how they came there. */
function arrowAt(share: number): Stretch {
  const from = Math.min(share, 0.8);
  return { from, to: Math.min(1, from + 0.33) };
}

/** Whether the page is shown dark. */
export function useDark(): boolean {
  const query = '(prefers-color-scheme: dark)';
  const [dark, setDark] = useState(() => matchMedia(query).matches);
  useEffect(() => {
    const watch = matchMedia(query);
    const set = (): void => setDark(watch.matches);
    watch.addEventListener('change', set);
    return () => watch.removeEventListener('change', set);
  }, []);
  return dark;
}
