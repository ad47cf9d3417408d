import type { JSX, TargetedKeyboardEvent, TargetedPointerEvent, TargetedWheelEvent } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ViewedDrawing } from './all-drawings';
import { meant, shownWords, wordsOf } from './legible';
import {
  isBetterTurned,
  kept,
  moved,
  pinched,
  turnedSize,
  whole,
  zoomed,
  type Place,
  type Point,
  type Size,
} from './pan';
import { toNode } from './to-node';

/** One key press or click nearer, and how far an arrow key moves, px. */
export const NEARER = 1.3;
const STEP = 60;
/** A finger that went no farther than this, px, tapped; and how far from a dimension it still means it. */
const TAP = 6;
const REACH = 24;

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: [STEP, 0],
  ArrowRight: [-STEP, 0],
  ArrowUp: [0, STEP],
  ArrowDown: [0, -STEP],
};

/** What the buttons around a stage ask of it. */
export interface StageHandle {
  readonly nearer: (factor: number) => void;
  readonly whole: () => void;
  readonly turn: () => void;
}

/** What a stage shows; `tapped` is given the words of a dimension that was tapped. */
interface StageProps {
  readonly view: ViewedDrawing;
  readonly handle: { current: StageHandle | null };
  readonly tapped: (text: string) => void;
}

/** How the drawing lies: null until it is asked otherwise, when it is shown whole, turned where that is better. */
interface Lie {
  readonly place: Place | null;
  readonly turned: boolean | null;
}

const AS_IT_FITS: Lie = { place: null, turned: null };

/** A drawing to move and draw nearer by wheel, pinch and keys, its words never too small to read. */
export function Stage({ view, handle, tapped }: StageProps): JSX.Element {
  const holder = useRef<SVGSVGElement>(null);
  const frame = useFrame(holder);
  const [lie, setLie] = useState(AS_IT_FITS);
  const fingers = useRef(new Map<number, Point>());
  const travelled = useRef(0);
  const words = useMemo(() => wordsOf(view.elements), [view]);
  const nodes = useMemo(() => view.elements.map(toNode), [view]);
  // Paper is read upright.
  const turned = lie.turned ?? (view.letters !== 'print' && isBetterTurned(view.size, frame));
  const size = turned ? turnedSize(view.size) : view.size;
  const place = lie.place ?? whole(size, frame);
  const shown = useMemo(
    () => shownWords(words, { place, size: view.size, turned, letters: view.letters }),
    [words, place.scale, place.x, place.y, view, turned],
  );

  useLayoutEffect(() => setLie(AS_IT_FITS), [view]);
  useLayoutEffect(() => {
    const texts = holder.current?.querySelectorAll('text') ?? [];
    for (const [index, text] of [...texts].entries()) {
      const one = shown[index];
      if (!one) continue;
      text.setAttribute('font-size', one.size.toFixed(3));
      text.setAttribute('visibility', one.hasRoom ? 'visible' : 'hidden');
    }
  }, [shown]);

  const put = (change: (place: Place) => Place): void =>
    setLie((held) => ({ ...held, place: kept(change(held.place ?? place), size, frame) }));
  const centre: Point = [frame.width / 2, frame.height / 2];
  handle.current = {
    nearer: (factor) => put((held) => zoomed(held, factor, centre)),
    whole: () => setLie({ place: null, turned }),
    turn: () => setLie({ place: null, turned: !turned }),
  };

  const wheel = (event: TargetedWheelEvent<SVGSVGElement>): void => {
    event.preventDefault();
    const at = within(event);
    // A wheel that counts lines moves about 16 px a line.
    const turns = event.deltaY * (event.deltaMode === 1 ? 16 : 1);
    put((held) => zoomed(held, Math.exp(-Math.max(-300, Math.min(300, turns)) / 400), at));
  };
  const down = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    if (fingers.current.size === 0) travelled.current = 0;
    fingers.current.set(event.pointerId, within(event));
    // Two fingers never tap.
    if (fingers.current.size > 1) travelled.current = Infinity;
  };
  const move = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    const [before, now] = [fingers.current.get(event.pointerId), within(event)];
    if (!before) return;
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    const by: Point = [now[0] - before[0], now[1] - before[1]];
    travelled.current += Math.hypot(...by);
    fingers.current.set(event.pointerId, now);
    put((held) => (other ? pinched(held, [before, other], [now, other]) : moved(held, by)));
  };
  const up = (event: TargetedPointerEvent<SVGSVGElement>): void => {
    const last = fingers.current.size === 1 && fingers.current.has(event.pointerId);
    fingers.current.delete(event.pointerId);
    const word = last && travelled.current <= TAP ? meant(shown, within(event), REACH) : null;
    if (word) tapped(word.text);
  };
  const key = (event: TargetedKeyboardEvent<SVGSVGElement>): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow) put((held) => moved(held, arrow));
    else if (event.key === '+' || event.key === '=') handle.current?.nearer(NEARER);
    else if (event.key === '-') handle.current?.nearer(1 / NEARER);
    else if (event.key === 'Home' || event.key === '0') handle.current?.whole();
    else if (event.key.toLowerCase() === 't') handle.current?.turn();
    else return;
    event.preventDefault();
  };
  return (
    <svg
      ref={holder}
      class={view.letters === 'print' ? 'stage print' : 'stage'}
      tabindex={0}
      role="img"
      aria-label={`${view.name}. Arrow keys move it, plus and minus draw nearer and away, Home shows all, T turns it.`}
      onWheel={wheel}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={(event) => fingers.current.delete(event.pointerId)}
      onKeyDown={key}
    >
      <g key={view.id} transform={`translate(${place.x} ${place.y}) scale(${place.scale})`}>
        <g transform={turned ? `translate(${view.size.height} 0) rotate(90)` : undefined}>{nodes}</g>
      </g>
    </svg>
  );
}

/** Where on the stage something happened, px. */
function within(event: { readonly clientX: number; readonly clientY: number; readonly currentTarget: Element }): Point {
  const { left, top } = event.currentTarget.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}

/** The size of an element on the screen, px. */
function useFrame(holder: { readonly current: Element | null }): Size {
  const [frame, setFrame] = useState<Size>({ width: 300, height: 300 });
  useLayoutEffect(() => {
    const target = holder.current;
    if (!target) return undefined;
    const measure = (): void => {
      const { width, height } = target.getBoundingClientRect();
      if (width > 0 && height > 0) setFrame({ width, height });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [holder]);
  return frame;
}
