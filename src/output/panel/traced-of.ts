import type { Finding, Staged } from '../../base/findings';
import type { Point } from '../../base/polygon';
import { InternalError } from '../../base/errors';
import { finding } from '../../findings/finding';
import { formatOf } from '../../job/panel/outline';
import type { PanelJob, TracedChoice } from '../../job/panel/read';
import { layOutTraced, type TracedBend, type TracedPanel } from '../../panel';
import { nameEdges, outlineOf, type Outline } from '../../panel/trace/outline';
import { outlineOfCorners, readOutline, type TracedOutline } from '../../panel/trace/read-outline';
import type { Reference, Scale } from '../../panel/trace/scale';
import type { FlatPanel, ReferenceSeen, HowTraced } from './flat-panel';

/** A traced job's outline, from the text of its drawing or its corners → the panel laid out flat. */
export function tracedPanelOf(job: PanelJob, choice: TracedChoice, drawing: string | null): Staged<FlatPanel | null> {
  const read = readChoice(choice, drawing);
  if (!read.value) return { value: null, findings: read.findings };
  const { outline, scale, sizes } = read.value;
  const bends = choice.bends.map((bend) => bendOn(bend, scale, job));
  const short = bends.flatMap(({ name, line: [a, b] }, index) =>
    Math.hypot(b[0] - a[0], b[1] - a[1]) > 0
      ? []
      : [finding('bend-line-short', `bends[${index}].line`, { bend: name })],
  );
  if (short.length > 0) return { value: null, findings: [...read.findings, ...short] };
  const { thickness } = job.sheet;
  const laid = layOutTraced({
    thickness,
    outline: outline.vertices,
    holes: outline.holes,
    mockup: choice.outline.mockup,
    bends,
  });
  const findings = [...read.findings, ...laid.findings.map((found) => asDrawn(found, scale))];
  if (!laid.value) return { value: null, findings };
  const { panel, takenOff } = laid.value;
  const traced: HowTraced = {
    file: choice.outline.file,
    sizes,
    scale,
    references: referencesSeen(choice, scale),
    takenOff,
  };
  return { value: { panel, outline: namedOutline(choice, laid.value, scale), traced }, findings };
}

function readChoice({ outline }: TracedChoice, drawing: string | null): Staged<TracedOutline | null> {
  const { file, corners, part, scale: given, layers, dpi, unit } = outline;
  const scale = typeof given === 'number' ? given : given.map(referenceOf);
  const common = { scale, scalePath: 'outline.scale', ...(part === null ? {} : { part }) };
  if (corners)
    return outlineOfCorners(
      corners.map(([x, y]) => ({ x, y })),
      { ...common, path: 'outline.corners' },
    );
  const format = file === null ? null : formatOf(file);
  if (format === null || drawing === null) throw new InternalError('a traced job came without its drawing');
  return readOutline(drawing, {
    ...common,
    path: 'outline.file',
    format,
    ...(layers === null ? {} : { layers }),
    ...(dpi === null ? {} : { dpi }),
    ...(unit === null ? {} : { unit }),
  });
}

function referenceOf({
  between: [p, q],
  is,
}: {
  readonly between: readonly [Point, Point];
  readonly is: number;
}): Reference {
  return {
    between: [
      { x: p[0], y: p[1] },
      { x: q[0], y: q[1] },
    ],
    is,
  };
}

function referencesSeen({ outline: { scale: given } }: TracedChoice, { x, y }: Scale): ReferenceSeen[] {
  if (typeof given === 'number') return [];
  return given.map(({ between: [p, q], is }) => ({ is, comesOut: Math.hypot(x * (q[0] - p[0]), y * (q[1] - p[1])) }));
}

function bendOn(
  { name, line, free, turn, angle, radius }: TracedChoice['bends'][number],
  scale: Scale,
  job: PanelJob,
): TracedBend {
  return {
    name,
    line: [scaled(line[0], scale), scaled(line[1], scale)],
    free,
    turn,
    angle,
    radius: { A: radius.from, B: radius.to },
    neutral: job.neutral,
  };
}

function scaled([x, y]: Point, scale: Scale): Point {
  return [x * scale.x, y * scale.y];
}

/** A finding whose place lies on the part, told as drawn. */
function asDrawn(found: Finding, { x, y }: Scale): Finding {
  const near = found.values['near'];
  if (found.code !== 'hole-in-bend' || !Array.isArray(near)) return found;
  const [u, v] = near.map(Number);
  return { ...found, path: 'outline', values: { ...found.values, near: [(u ?? NaN) / x, (v ?? NaN) / y] } };
}

function namedOutline({ outline }: TracedChoice, { panel, carried }: TracedPanel, scale: Scale): Outline {
  const plain = outlineOf(panel.outline, panel.holes);
  const places = Object.fromEntries(
    outline.edges.map(({ name, near }) => {
      const [x, y] = carried(scaled(near, scale));
      return [name, { x, y }] as const;
    }),
  );
  return nameEdges(plain, places);
}
