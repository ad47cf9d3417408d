import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { boundsOf } from '../base/bounds';
import type { Part } from '../parts/part';
import { writeSvg } from '../write/svg';
import { showLength } from './know';
import type { Form } from './work';

/** Section 4: what you cut. Each part's own drawing, the very file that is taken away, at a size to read it. */
export function Cut({ form, stale }: { form: Form; stale: boolean }): JSX.Element {
  return (
    <section class={stale ? 'cut stale' : 'cut'} aria-labelledby="cut">
      <h2 id="cut">What you cut</h2>
      <ul class="parts">
        {form.parts.map((part) => (
          <PartDrawing key={part.id} part={part} units={form.job.units} />
        ))}
      </ul>
    </section>
  );
}

function PartDrawing({ part, units }: { part: Part; units: 'mm' | 'in' }): JSX.Element {
  const source = useMemo(() => `data:image/svg+xml,${encodeURIComponent(writeSvg(part.drawing, { title: part.name }))}`, [part]);
  const { minX, minY, maxX, maxY } = boundsOf(part.drawing);
  const size = `${showLength(maxX - minX, units)} × ${showLength(maxY - minY, units)}, ${showLength(part.thickness, units)} thick`;
  return (
    <li class={part.kind}>
      <img src={source} alt={`Drawing of ${part.name}, ${size}`} />
      <span class="name">{part.name}</span> <span class="size">{size}</span>
    </li>
  );
}
