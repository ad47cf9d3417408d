import type { JSX, TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { toDegrees } from '../base/angle';
import { buildModel, type Model } from '../picture/model';
import { paintOrder } from '../picture/paint-order';
import { project } from '../picture/isometric';
import type { BodyKind } from '../picture/solid';
import { dot, type Point3 } from '../picture/vector';
import type { Form } from './work';

/** Where the eye stands: turn about the upright, and height above the bench, radians. */
interface Eye {
  readonly turn: number;
  readonly height: number;
}

const FIRST: Eye = { turn: -0.75, height: 0.65 };
/** The slider's last tenth is the letting go. */
const LET_GO = 0.9;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] };

/** Section 2: what it does. The form with the sheet on it, pulled round by a slider and let go at its end; drag or arrow keys turn it. */
export function View({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [eye, setEye] = useState(FIRST);
  const [pull, setPull] = useState(0.28);
  const dark = useDark();
  const { bend, layout } = form;
  const released = pull > LET_GO;
  const wrap = bend.wrap.chosen * Math.min(1, pull / LET_GO);
  const model = useMemo(() => buildModel(layout, bend, released ? { kind: 'released' } : { kind: 'on-form', wrap }), [bend, layout, released, wrap]);

  useEffect(() => {
    const target = canvas.current;
    if (!target) return undefined;
    const draw = (): void => paint(target, model, eye, dark);
    draw();
    const observer = new ResizeObserver(draw);
    observer.observe(target);
    return () => observer.disconnect();
  }, [model, eye, dark]);

  const turnBy = (dx: number, dy: number): void => setEye(({ turn, height }) => ({ turn: turn - dx, height: Math.max(-0.2, Math.min(1.5, height + dy)) }));
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
  const says = released ? `let go: ${toDegrees(bend.angle).toFixed(1)}° between the legs` : `wrapped ${toDegrees(wrap).toFixed(0)}° of ${toDegrees(bend.wrap.chosen).toFixed(1)}°`;
  return (
    <section class={stale ? 'does stale' : 'does'} aria-labelledby="does">
      <h2 id="does">What it does</h2>
      <canvas
        ref={canvas}
        tabIndex={0}
        role="img"
        aria-label={`The form with ${layout.stations.length} stations and ${layout.backings.length} backing stations, the sheet ${says}. Arrow keys turn it.`}
        onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={drag}
        onKeyDown={key}
      />
      <div class="pull">
        <label for="pull">Pull the sheet</label>
        <input id="pull" type="range" min="0" max="1" step="0.01" value={pull} onInput={(event) => setPull(Number(event.currentTarget.value))} aria-valuetext={says} />
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

/** Hue, saturation and the lightness between which each body is shaded; ours. */
const BODY: Readonly<Record<BodyKind | 'outside', readonly [hue: number, saturation: number, from: number, to: number]>> = {
  spine: [34, 38, 45, 74],
  station: [38, 55, 52, 84],
  backing: [30, 34, 42, 70],
  sheet: [204, 14, 58, 88],
  outside: [204, 14, 48, 76],
};

function paint(canvas: HTMLCanvasElement, model: Model, { turn, height }: Eye, dark: boolean): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const ratio = devicePixelRatio || 1;
  const [width, tall] = [canvas.clientWidth, canvas.clientHeight];
  if (canvas.width !== Math.round(width * ratio) || canvas.height !== Math.round(tall * ratio)) [canvas.width, canvas.height] = [Math.round(width * ratio), Math.round(tall * ratio)];
  const eye: Point3 = [Math.sin(turn) * Math.cos(height), Math.cos(turn) * Math.cos(height), Math.sin(height)];
  const onCanvas = fit(model, eye, width, tall);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, tall);
  context.lineJoin = 'round';
  for (const body of paintOrder(model.bodies, eye, model.chordError)) {
    for (const face of body.faces) {
      const toward = dot(face.normal, eye);
      if (!body.open && toward <= 0) continue;
      const [hue, saturation, from, to] = BODY[body.kind === 'sheet' && toward > 0 ? 'outside' : body.kind];
      const light = 0.35 + 0.65 * Math.abs(0.55 * toward + 0.45 * face.normal[2] * Math.sign(toward || 1));
      const colour = `hsl(${hue} ${saturation}% ${(from + (to - from) * Math.max(0, Math.min(1, light))) * (dark ? 0.82 : 1)}%)`;
      trace(context, face.outline.map(onCanvas), true);
      context.fillStyle = colour;
      context.strokeStyle = colour;
      context.lineWidth = 0.6;
      // The sheet lets the form under it be seen.
      context.globalAlpha = body.open ? 0.82 : 1;
      context.fill();
      if (!body.open) context.stroke();
      context.globalAlpha = 1;
      context.lineWidth = 1;
      context.strokeStyle = dark ? '#0c0c0c' : '#3a332a';
      face.edges.forEach((edge, index) => {
        if (edge !== 'sharp' && dot(edge, eye) > 0 === toward > 0) return;
        const [a, b] = [face.outline[index], face.outline[(index + 1) % face.outline.length]];
        if (!a || !b) return;
        trace(context, [onCanvas(a), onCanvas(b)], false);
        context.stroke();
      });
      for (const { closed, points, kind } of face.marks) {
        trace(context, points.map(onCanvas), closed);
        if (closed) {
          context.fillStyle = kind === 'screw-head' ? '#9a9a9a' : '#33281c';
          context.fill();
        }
        context.stroke();
      }
    }
  }
  writeTags(context, model, onCanvas, eye[1] > 0 ? FRONT_TAGS : BACK_TAGS, dark);
}

/** Points to the canvas: the model's middle in its middle, at a size that does not change as it is turned. */
function fit(model: Model, eye: Point3, width: number, height: number): (point: Point3) => readonly [number, number] {
  const points = [...model.bodies.filter((body) => !body.open).flatMap((body) => body.faces.flatMap((face) => face.outline)), ...model.pull];
  const bound = (axis: 0 | 1 | 2, pick: (...values: number[]) => number): number => points.reduce((held, point) => pick(held, point[axis]), points[0]?.[axis] ?? 0);
  const low: Point3 = [bound(0, Math.min), bound(1, Math.min), bound(2, Math.min)];
  const high: Point3 = [bound(0, Math.max), bound(1, Math.max), bound(2, Math.max)];
  const [middleX, middleY] = project([(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2], eye);
  const reach = Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  const scale = Math.min(width, 1.5 * height) / reach;
  return (point) => {
    const [x, y] = project(point, eye);
    return [width / 2 + (x - middleX) * scale, height / 2 - (y - middleY) * scale];
  };
}

function trace(context: CanvasRenderingContext2D, points: readonly (readonly [number, number])[], closed: boolean): void {
  context.beginPath();
  points.forEach(([x, y], index) => (index === 0 ? context.moveTo(x, y) : context.lineTo(x, y)));
  if (closed) context.closePath();
}

/** What is named from the front, and from behind: only what can be seen from there. */
const FRONT_TAGS: readonly string[] = ['end', 'station'];
const BACK_TAGS: readonly string[] = ['end', 'backing', 'foot', 'clamp'];

function writeTags(context: CanvasRenderingContext2D, model: Model, onCanvas: (point: Point3) => readonly [number, number], named: readonly string[], dark: boolean): void {
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  for (const { kind, text, at } of model.tags.filter((tag) => named.includes(tag.kind))) {
    const [x, y] = onCanvas(at);
    context.font = kind === 'end' ? 'bold 22px sans-serif' : '12px sans-serif';
    context.lineWidth = 3;
    context.strokeStyle = dark ? '#1b1d1f' : '#ffffff';
    context.fillStyle = dark ? '#f2efe8' : '#1d1a16';
    context.strokeText(text, x, y);
    context.fillText(text, x, y);
  }
}
