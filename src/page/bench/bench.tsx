import type { JSX } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { HtmlElement } from '../../output/html';
import { htmlNode } from '../drawing/to-node';
import type { BenchStep } from './bench-steps';
import { useTicking } from './kept-ticks';
import { useStayAwake } from './stay-awake';
import { countDone, lineName, ticked, type Ticking } from './ticks';

/** At the bench: the shop sheet one step a screen, ticked off line by line, the screen kept awake. */
export function Bench({
  make,
  of,
  text,
  close,
}: {
  make: () => readonly BenchStep[];
  of: unknown;
  text: string;
  close: () => void;
}): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const steps = useMemo(make, [of]);
  const [ticking, keep] = useTicking(text);
  const awake = useStayAwake();
  const at = Math.min(ticking.step, steps.length - 1);
  const step = steps[at];
  useEffect(() => dialog.current?.showModal(), []);
  useEffect(() => {
    // Each step is read from its head.
    heading.current?.focus();
    heading.current?.closest('.step')?.scrollTo(0, 0);
  }, [at]);
  const go = (to: number): void => keep({ ...ticking, step: Math.max(0, Math.min(steps.length - 1, to)) });
  return (
    <dialog ref={dialog} class="bench" aria-label="At the bench" onClose={close}>
      <div class="bar">
        <select aria-label="Step" value={String(at)} onChange={(event) => go(Number(event.currentTarget.value))}>
          {steps.map(({ id, title, lines }, index) => (
            <option key={id} value={String(index)}>
              {`${index + 1}. ${title}${countDone(ticking, id, lines.length) === lines.length ? ' ✓' : ''}`}
            </option>
          ))}
        </select>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {step ? (
        <div class="step" key={step.id}>
          <h2 ref={heading} tabIndex={-1}>
            {at + 1}. {step.title}
          </h2>
          <StepBody step={step} ticking={ticking} keep={keep} />
        </div>
      ) : null}
      <div class="bar">
        <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
          ‹ Back
        </button>
        <span class="quiet">
          {at + 1} of {steps.length}
          {awake ? '' : '; the screen may go dark'}
        </span>
        <button type="button" class="main" disabled={at >= steps.length - 1} onClick={() => go(at + 1)}>
          Next ›
        </button>
      </div>
    </dialog>
  );
}

interface BodyProps {
  readonly step: BenchStep;
  readonly ticking: Ticking;
  readonly keep: (next: Ticking) => void;
}

function StepBody({ step, ticking, keep }: BodyProps): JSX.Element {
  const picture = useMemo(() => step.picture?.() ?? null, [step]);
  return (
    <>
      {step.cautions.map(htmlNode)}
      {step.figures.length === 0 ? null : (
        <dl>
          {step.figures.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
      {picture ? <Picture figure={picture} /> : null}
      <ul class="lines">
        {step.lines.map((line, index) => {
          const name = lineName(step.id, index);
          return (
            <li key={name}>
              <label>
                <input
                  type="checkbox"
                  checked={ticking.done.includes(name)}
                  onChange={() => keep(ticked(ticking, name))}
                />
                <span>{line.map(htmlNode)}</span>
              </label>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** A picture of the shop sheet: ink on paper, its caption below. */
function Picture({ figure }: { figure: HtmlElement }): JSX.Element {
  return (
    <div class="picture">
      {figure.children.map((child) =>
        typeof child !== 'string' && 'tag' in child ? (
          <p class="quiet">{child.children.map(htmlNode)}</p>
        ) : (
          htmlNode(child)
        ),
      )}
    </div>
  );
}
