import type { JSX } from 'preact';
import { toDegrees } from '../base/angle';
import { curvatureRadiusAt, radiusAt } from '../base/cone';
import { MM_PER_INCH } from '../base/units';
import type { BendPlan } from '../bend/bend-plan';
import type { Form } from './work';

const WIDTH = 320;
const HEIGHT = 150;
const LEFT = 44;
const BOTTOM = 22;
const STEPS = 40;

/** Radius, wrap needed and twist along the form; and each end in section, on the form and let go. */
export function Plots({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  const { bend, job } = form;
  const inch = job.units === 'in' ? MM_PER_INCH : 1;
  const xs = Array.from({ length: STEPS + 1 }, (_, index) => (bend.length * index) / STEPS);
  const half = bend.section.thickness / 2;
  const ratio = (x: number): number => (curvatureRadiusAt(bend.finished, x) + half) / (curvatureRadiusAt(bend.form, x) + half);
  return (
    <div class={stale ? 'plots stale' : 'plots'}>
      <Plot
        title={`Inside radius, ${job.units}`}
        xs={xs}
        lines={[
          { name: 'form', values: xs.map((x) => radiusAt(bend.form, x) / inch) },
          { name: 'after release', values: xs.map((x) => radiusAt(bend.finished, x) / inch) },
        ]}
      />
      <Plot
        title="Wrap, °"
        xs={xs}
        lines={[
          { name: 'needed', values: xs.map((x) => toDegrees(bend.finishedWrap * ratio(x))) },
          { name: 'chosen', values: xs.map(() => toDegrees(bend.wrap.chosen)) },
        ]}
      />
      <Plot title="Twist remaining, °" xs={xs} lines={[{ name: 'twist', values: xs.map((x) => toDegrees(bend.wrap.chosen / ratio(x) - bend.finishedWrap)) }]} />
      <Section bend={bend} end="A" x={0} />
      <Section bend={bend} end="B" x={bend.length} />
    </div>
  );
}

interface Line {
  readonly name: string;
  readonly values: readonly number[];
}

function Plot({ title, xs, lines }: { title: string; xs: readonly number[]; lines: readonly Line[] }): JSX.Element {
  const all = lines.flatMap(({ values }) => values);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const spare = Math.max((most - least) * 0.15, Math.abs(most) * 0.02, 0.05);
  const [low, high] = [least - spare, most + spare];
  const across = (x: number): number => LEFT + ((WIDTH - LEFT - 8) * x) / (xs.at(-1) ?? 1);
  const up = (value: number): number => HEIGHT - BOTTOM - ((HEIGHT - BOTTOM - 10) * (value - low)) / (high - low);
  const said = lines.map(({ name, values }) => `${name} ${(values[0] ?? 0).toFixed(1)} at end A, ${(values.at(-1) ?? 0).toFixed(1)} at end B`).join('; ');
  return (
    <figure>
      <figcaption>
        {title}{' '}
        {lines.map(({ name }, index) => (
          <span key={name} class={`key line${index}`}>
            {name}
          </span>
        ))}
      </figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={`${title}: ${said}`}>
        {[least, most].map((value, index) => (
          <g key={index}>
            <line class="grid" x1={LEFT} x2={WIDTH - 8} y1={up(value)} y2={up(value)} />
            <text x={LEFT - 5} y={up(value) + 4} text-anchor="end">
              {value.toFixed(1)}
            </text>
          </g>
        ))}
        {lines.map(({ name, values }, index) => (
          <polyline key={name} class={`line${index}`} points={values.map((value, at) => `${across(xs[at] ?? 0).toFixed(1)},${up(value).toFixed(1)}`).join(' ')} />
        ))}
        <text x={LEFT} y={HEIGHT - 6}>
          A
        </text>
        <text x={WIDTH - 8} y={HEIGHT - 6} text-anchor="end">
          B
        </text>
      </svg>
    </figure>
  );
}

/** An end in section: the half-disc, the sheet wrapped on it, and where it comes back to. */
function Section({ bend, end, x }: { bend: BendPlan; end: string; x: number }): JSX.Element {
  const [form, finished] = [radiusAt(bend.form, x), radiusAt(bend.finished, x)];
  const left = end === 'A' ? bend.twist.from : bend.twist.to;
  const after = bend.finishedWrap + left;
  const reach = 2.2 * Math.max(form, finished);
  const leg = 1.1 * Math.max(form, finished);
  const path = (radius: number, wrap: number): string => {
    const [tipX, tipY] = [radius * Math.sin(wrap), radius - radius * Math.cos(wrap)];
    const [endX, endY] = [tipX + leg * Math.cos(wrap), tipY + leg * Math.sin(wrap)];
    return `M${-leg} 0L0 0A${radius} ${radius} 0 ${wrap > Math.PI ? 1 : 0} 0 ${tipX.toFixed(2)} ${(-tipY).toFixed(2)}L${endX.toFixed(2)} ${(-endY).toFixed(2)}`;
  };
  const said = `End ${end}: wrapped ${toDegrees(bend.wrap.chosen).toFixed(1)}° on the form, ${toDegrees(after).toFixed(1)}° let go`;
  return (
    <figure>
      <figcaption>
        End {end} <span class="key line0">on the form</span> <span class="key line1">let go</span>
      </figcaption>
      <svg viewBox={`${-0.8 * reach} ${-1.25 * reach} ${1.9 * reach} ${1.35 * reach}`} role="img" aria-label={said}>
        <path class="disc" d={`M0 0A${form} ${form} 0 0 0 0 ${-2 * form}Z`} />
        <path class="line0" d={path(form, bend.wrap.chosen)} vector-effect="non-scaling-stroke" />
        <path class="line1" d={path(finished, after)} vector-effect="non-scaling-stroke" />
      </svg>
    </figure>
  );
}
