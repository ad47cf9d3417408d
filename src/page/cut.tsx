import type { JSX, VNode } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { boundsOf } from '../base/bounds';
import type { Part } from '../drawing/parts/part';
import { coloursFor } from '../output/colour';
import { drawingGroups } from '../output/svg';
import { allDrawings, templatePages } from './drawing/all-drawings';
import { toNode } from './drawing/to-node';
import { Viewer } from './drawing/viewer';
import { useSeen, useShown } from './in-sight';
import { showLength } from './know';
import type { Form } from './work';

/** Blank border round a drawing, mm. */
const MARGIN = 5;

/** Section 4: what you cut. Each part's own drawing, from the same tree as the file that is taken away, at a size to read it. */
export function Cut({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  const holder = useRef<HTMLElement>(null);
  const shown = useShown(holder, form);
  const [looked, setLooked] = useState<string | null>(null);
  const drawn = useMemo(() => <PartDrawings form={shown} look={setLooked} />, [shown]);
  return (
    <section class={stale ? 'cut stale' : 'cut'} aria-labelledby="cut" ref={holder}>
      <h2 id="cut">What you cut</h2>
      <p>
        <button type="button" onClick={() => setLooked('spine')}>
          Look at the drawings
        </button>{' '}
        <span class="quiet">with dimensions; the boards, the blank, the gauges and the pages to print too</span>
      </p>
      {drawn}
      {looked === null ? null : (
        <Viewer
          make={() => allDrawings(form)}
          later={() => templatePages(form)}
          of={form}
          first={looked}
          close={() => setLooked(null)}
        />
      )}
    </section>
  );
}

function PartDrawings({ form, look }: { form: Form; look: (id: string) => void }): JSX.Element {
  const colours = coloursFor(form.job.cut.colours).svg;
  return (
    <ul class="parts">
      {form.parts.map((part) => (
        <PartDrawing key={part.id} part={part} units={form.job.units} colours={colours} look={() => look(part.id)} />
      ))}
    </ul>
  );
}

function PartDrawing({
  part,
  units,
  colours,
  look,
}: {
  part: Part;
  units: 'mm' | 'in';
  colours: ReturnType<typeof coloursFor>['svg'];
  look: () => void;
}): JSX.Element {
  const bounds = boundsOf(part.drawing);
  const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const holder = useRef<SVGSVGElement>(null);
  const seen = useSeen(holder);
  const last = useRef<{ readonly part: Part; readonly nodes: readonly VNode[] } | null>(null);
  if (!last.current || (seen && last.current.part !== part))
    last.current = { part, nodes: drawingGroups(part.drawing, bounds, MARGIN, colours).map(toNode) };
  const drawn = last.current.nodes;
  const size = `${showLength(width, units)} × ${showLength(height, units)}, ${showLength(part.thickness, units)} thick`;
  return (
    <li class={part.kind}>
      <svg
        ref={holder}
        viewBox={`0 0 ${width + 2 * MARGIN} ${height + 2 * MARGIN}`}
        role="img"
        aria-label={`Drawing of ${part.name}, ${size}`}
      >
        {drawn}
      </svg>
      <span class="name">{part.name}</span> <span class="size">{size}</span>{' '}
      <button type="button" class="link" aria-label={`Look at ${part.name}`} onClick={look}>
        Look
      </button>
    </li>
  );
}
