import type { JSX } from 'preact';

interface JobTextProps {
  readonly text: string;
  readonly change: (text: string) => void;
  readonly settle: () => void;
}

/** The job file itself, to be read and changed as it stands; what is typed here takes effect at once. */
export function JobText({ text, change, settle }: JobTextProps): JSX.Element {
  return (
    <section class="job-text" aria-labelledby="job-text-name">
      <details>
        <summary>
          <h2 id="job-text-name">The job file itself</h2>
        </summary>
        <textarea
          id="job-text"
          aria-labelledby="job-text-name"
          rows={Math.min(40, text.split('\n').length + 1)}
          value={text}
          onInput={(event) => change(event.currentTarget.value)}
          onBlur={settle}
          autocomplete="off"
          spellcheck={false}
          wrap="off"
        />
      </details>
    </section>
  );
}
