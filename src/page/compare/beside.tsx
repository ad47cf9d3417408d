import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Draft } from '../draft';
import { printersFor } from '../know';
import { work, type Form } from '../work';
import { differences } from './differences';
import { figureRows } from './figure-rows';
import { sayTakes, takesOf, type Takes } from './takes';

export interface BesideProps {
  readonly pinned: Draft | null;
  readonly draft: Draft;
  readonly form: Form | null;
  readonly stale: boolean;
  readonly pin: (draft: Draft | null) => void;
  /** What is pinned becomes the job, and the job is pinned. */
  readonly swap: () => void;
}

/** A job pinned, and the one on the page beside it: what differs in the fields, what follows in the figures and in what it takes. */
export function Beside({ pinned, draft, form, stale, pin, swap }: BesideProps): JSX.Element {
  return (
    <section class="beside" aria-labelledby="beside">
      <h2 id="beside" tabIndex={-1}>
        Beside another
      </h2>
      {pinned === null ? (
        <p>
          <button type="button" disabled={!form || stale} onClick={() => pin(draft)}>
            Pin this job
          </button>{' '}
          <span class="quiet">
            Then change the metal, a radius, a board or the tool, and see here what becomes of it.
          </span>
        </p>
      ) : (
        <>
          <p>
            <button type="button" onClick={swap}>
              Swap the two
            </button>{' '}
            <button type="button" disabled={!form || stale} onClick={() => pin(draft)}>
              Pin this one instead
            </button>{' '}
            <button type="button" onClick={() => pin(null)}>
              Unpin
            </button>
          </p>
          <Table pinned={pinned} draft={draft} form={form} stale={stale} />
        </>
      )}
    </section>
  );
}

interface Row {
  readonly name: string;
  readonly why?: string;
  readonly pinned: string;
  readonly now: string;
}

function Table({
  pinned,
  draft,
  form,
  stale,
}: Pick<BesideProps, 'draft' | 'form' | 'stale'> & { readonly pinned: Draft }): JSX.Element {
  const before = useMemo(() => work(pinned).form, [pinned]);
  const fields = useMemo(() => differences(pinned, draft), [pinned, draft]);
  const [takesBefore, takesNow] = [useTakes(before), useTakes(stale ? null : form)];
  if (!before || !form) return <p class="quiet">One of the two has no form yet.</p>;
  const units = form.job.units;
  const figures = figureRows(before.planned.plan, form.planned.plan, printersFor(units));
  return (
    <div class={stale ? 'scrolls stale' : 'scrolls'} tabIndex={0} role="region" aria-label="The two jobs, row by row">
      <table>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Pinned</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <Rows title="What you changed" rows={fields.map((field) => ({ ...field, name: field.label }))} />
        <Rows title="What follows" rows={figures} />
        <Rows title="What it takes" rows={takesRows(takesBefore, takesNow, units)} />
      </table>
    </div>
  );
}

function takesRows(before: Takes | null, now: Takes | null, units: Form['job']['units']): Row[] {
  const said = before ? sayTakes(before, units) : [];
  const newer = now ? new Map(sayTakes(now, units)) : null;
  return said.map(([name, pinned]) => ({ name, pinned, now: newer?.get(name) ?? '…' }));
}

function Rows({ title, rows }: { readonly title: string; readonly rows: readonly Row[] }): JSX.Element {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3}>
          {title}
          {rows.every(({ pinned, now }) => pinned === now) ? ': nothing' : ''}
        </th>
      </tr>
      {rows.map(({ name, why, pinned, now }) => (
        <tr key={name} class={pinned === now ? 'alike' : 'differs'} title={why}>
          <th scope="row">{name}</th>
          <td>{pinned === '' ? '–' : pinned}</td>
          <td>{pinned === now ? 'the same' : now === '' ? '–' : now}</td>
        </tr>
      ))}
    </tbody>
  );
}

/** How long typing must pause before boards are laid out and pages counted, ms. */
const PAUSE = 500;

/** What a form takes, once the typing has paused; null until then. */
function useTakes(form: Form | null): Takes | null {
  const [known, setKnown] = useState<{ readonly of: Form; readonly takes: Takes } | null>(null);
  useEffect(() => {
    if (!form) return undefined;
    let over = false;
    const timer = setTimeout(() => {
      void takesOf(form).then((takes) => {
        if (!over) setKnown({ of: form, takes });
      });
    }, PAUSE);
    return () => {
      over = true;
      clearTimeout(timer);
    };
  }, [form]);
  return known && known.of === form ? known.takes : null;
}
