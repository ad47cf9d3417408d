import { at } from '../base/at';
import type { JSX } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { toDegrees } from '../base/angle';
import { midRadiusAt, radiusAt } from '../base/cone';
import type { End } from '../base/ends';
import type { LengthUnit } from '../base/units';
import type { BendPlan, LegPiece } from '../design/bend/bend-plan';
import { legShape } from '../design/pull/leg-shape';
import { useShown } from './in-sight';
import { showLength } from './know';
import { lengthTicks, ticks } from './ticks';
import type { Form } from './work';

const WIDTH = 320;
const HEIGHT = 190;
/** Room for the values, for the two lines under the axis, and right and above. */
const LEFT = 46;
const BOTTOM = 40;
const RIGHT = 12;
const TOP = 10;
const STEPS = 40;
/** About as many values as can be read along each axis. */
const ACROSS = 4;
const UP = 5;

/** Radius, wrap needed and twist along the form; and each end in section, on the form and let go. */
export function Plots({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  const holder = useRef<HTMLElement>(null);
  const shown = useShown(holder, form);
  const drawn = useMemo(() => <AllPlots form={shown} />, [shown]);
  return (
    <section class={stale ? 'plots stale' : 'plots'} aria-labelledby="plots" ref={holder}>
      <h2 id="plots">Along the form</h2>
      {drawn}
    </section>
  );
}

function AllPlots({ form: { bend, job } }: { form: Form }): JSX.Element {
  const xs = Array.from({ length: STEPS + 1 }, (_, index) => (bend.length * index) / STEPS);
  const { thickness } = bend.section;
  const ratio = (x: number): number => midRadiusAt(bend.finished, thickness, x) / midRadiusAt(bend.form, thickness, x);
  const shared = { xs, units: job.units };
  return (
    <>
      <Plot
        {...shared}
        title="Inside radius"
        unit="length"
        lines={[
          { name: 'form', values: xs.map((x) => radiusAt(bend.form, x)) },
          { name: 'after release', values: xs.map((x) => radiusAt(bend.finished, x)) },
        ]}
      />
      <Plot
        {...shared}
        title="Wrap"
        unit="degrees"
        lines={[
          { name: 'needed', values: xs.map((x) => toDegrees((bend.finishedWrap - tailAt(bend, x)) * ratio(x))) },
          { name: 'chosen', values: xs.map(() => toDegrees(bend.wrap.chosen)) },
        ]}
      />
      <Plot
        {...shared}
        title="Twist remaining"
        unit="degrees"
        lines={[
          {
            name: 'at the chosen wrap',
            values: xs.map((x) => toDegrees(bend.wrap.chosen / ratio(x) + tailAt(bend, x) - bend.finishedWrap)),
          },
        ]}
      />
      <Section bend={bend} end="A" x={0} />
      <Section bend={bend} end="B" x={bend.length} />
    </>
  );
}

interface Line {
  readonly name: string;
  /** mm or degrees, as the plot's unit says. */
  readonly values: readonly number[];
}

interface PlotProps {
  readonly title: string;
  readonly unit: 'length' | 'degrees';
  readonly units: LengthUnit;
  /** Places along the tangent line from end A, mm. */
  readonly xs: readonly number[];
  readonly lines: readonly Line[];
}

/** One quantity along the form, on axes with round values. */
function Plot({ title, unit, units, xs, lines }: PlotProps): JSX.Element {
  const all = lines.flatMap(({ values }) => values);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const spare = Math.max((most - least) * 0.15, Math.abs(most) * 0.02, unit === 'degrees' ? 0.6 : 0.05);
  const [low, high] = [least - spare, most + spare];
  const length = at(xs, -1);
  const across = (x: number): number => LEFT + ((WIDTH - LEFT - RIGHT) * x) / length;
  const up = (value: number): number => HEIGHT - BOTTOM - ((HEIGHT - BOTTOM - TOP) * (value - low)) / (high - low);
  const say = (value: number): string => (unit === 'length' ? showLength(value, units) : `${value.toFixed(1)}°`);
  const said = lines
    .map(({ name, values }) => `${name} ${say(at(values, 0))} at end A, ${say(at(values, -1))} at end B`)
    .join('; ');
  return (
    <figure>
      <figcaption>
        {title}, {unit === 'length' ? units : '°'}
        <Keys names={lines.map(({ name }) => name)} />
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={`${title}: ${said}`}>
        {(unit === 'length' ? lengthTicks(low, high, UP, units) : ticks(low, high, UP)).map(({ value, text }) => (
          <g key={text}>
            <line
              class={value === 0 ? 'grid zero' : 'grid'}
              x1={LEFT}
              x2={WIDTH - RIGHT}
              y1={up(value)}
              y2={up(value)}
            />
            <text x={LEFT - 5} y={up(value) + 4} text-anchor="end">
              {text}
            </text>
          </g>
        ))}
        {lengthTicks(0, length, ACROSS, units).map(({ value, text }) => (
          <g key={text}>
            <line class="grid" x1={across(value)} x2={across(value)} y1={TOP} y2={HEIGHT - BOTTOM + 4} />
            <text x={across(value)} y={HEIGHT - BOTTOM + 17} text-anchor="middle">
              {text}
            </text>
          </g>
        ))}
        {lines.map(({ name, values }, index) => (
          <polyline
            key={name}
            class={`line${index}`}
            points={values
              .map((value, place) => `${across(at(xs, place)).toFixed(1)},${up(value).toFixed(1)}`)
              .join(' ')}
          />
        ))}
        <text class="end" x={LEFT} y={HEIGHT - 5} text-anchor="middle">
          A
        </text>
        <text x={(LEFT + WIDTH - RIGHT) / 2} y={HEIGHT - 5} text-anchor="middle">
          along the tangent line, {units}
        </text>
        <text class="end" x={WIDTH - RIGHT} y={HEIGHT - 5} text-anchor="middle">
          B
        </text>
      </svg>
    </figure>
  );
}

/** What each line stands for, beside a piece of it. */
function Keys({ names }: { names: readonly string[] }): JSX.Element {
  return (
    <span class="keys">
      {names.map((name, index) => (
        <span key={index} class={`key line${index}`}>
          {name}
        </span>
      ))}
    </span>
  );
}

/** What stays of both legs' turns beyond the form, as wrap, radians; between the ends in proportion. */
function tailAt({ pull, finished, length }: BendPlan, x: number): number {
  const at = (end: End): number => (pull.legs[end].stays + pull.held[end]) / Math.cos(finished.halfAngle);
  return at('A') + ((at('B') - at('A')) * x) / length;
}

/** An end in section: the half-disc, the sheet pulled round it, what comes out, and the round bend that was wanted. */
function Section({ bend, end, x }: { bend: BendPlan; end: End; x: number }): JSX.Element {
  const form = radiusAt(bend.form, x);
  const leg = bend.pull.legs[end];
  const ideal = midRadiusAt(bend.finished, bend.section.thickness, x);
  const reach = 2.2 * Math.max(form, ideal);
  const onForm = [
    { x: -reach, y: 0 },
    ...pulledLine(midRadiusAt(bend.form, bend.section.thickness, x), bend.wrap.chosen, leg.pieces, reach),
  ];
  const out = legShape(bend, end, leg, bend.pull.bearing).line;
  const tip = { x: ideal * Math.sin(bend.angle), y: ideal * (1 - Math.cos(bend.angle)) };
  const [wrapped, pulled, letGo] = [bend.wrap.chosen, bend.pull.legAngle[end], bend.angle + bend.twist[end]].map(
    (angle) => toDegrees(angle).toFixed(1),
  );
  const said = `End ${end}: wrapped ${wrapped}° on the form, the leg pulled to ${pulled}°, ${letGo}° let go`;
  return (
    <figure>
      <figcaption>
        End {end}
        <Keys names={[`on the form ${wrapped}°, leg ${pulled}°`, `let go ${letGo}°`]} />
      </figcaption>
      <svg viewBox={`${-0.8 * reach} ${-1.25 * reach} ${1.9 * reach} ${1.35 * reach}`} role="img" aria-label={said}>
        <path class="disc" d={`M0 0A${form} ${form} 0 0 0 0 ${-2 * form}Z`} />
        <path
          class="ideal"
          d={`M${-reach} 0L0 0A${ideal} ${ideal} 0 ${bend.angle > Math.PI ? 1 : 0} 0 ${tip.x.toFixed(2)} ${(-tip.y).toFixed(2)}L${(tip.x + reach * Math.cos(bend.angle)).toFixed(2)} ${(-tip.y - reach * Math.sin(bend.angle)).toFixed(2)}`}
          vector-effect="non-scaling-stroke"
        />
        <path class="line0" d={pathOf(onForm)} vector-effect="non-scaling-stroke" />
        <path class="line1" d={pathOf(out)} vector-effect="non-scaling-stroke" />
      </svg>
    </figure>
  );
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** The sheet's middle from the held tangent line round the form and along its pulled leg, at least `least` mm of it. */
function pulledLine(radius: number, wrap: number, pieces: readonly LegPiece[], least: number): Place[] {
  const arc = Array.from({ length: STEPS }, () => ({ length: (radius * wrap) / STEPS, loaded: wrap / STEPS }));
  let [x, y, heading] = [0, 0, 0];
  const line = [{ x, y }];
  for (const { length, loaded } of [...arc, ...pieces, { length: least, loaded: 0 }]) {
    x += length * Math.cos(heading + loaded / 2);
    y += length * Math.sin(heading + loaded / 2);
    heading += loaded;
    line.push({ x, y });
  }
  return line;
}

function pathOf(line: readonly Place[]): string {
  return line.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(2)} ${(-y).toFixed(2)}`).join('');
}
