import type { JSX } from 'preact';

/** A file that was not taken, and why; nothing where there is nothing to say. */
export function RefusedFile({ why, close }: { why: string; close: () => void }): JSX.Element | null {
  if (why === '') return null;
  return (
    <p class="refused" role="alert">
      {why}. What was here is kept.{' '}
      <button type="button" class="link" onClick={close}>
        Close
      </button>
    </p>
  );
}

/** The job's file has changed beside the page: whose text is to hold. */
export function ChangedOnDisk({ take, keep }: { take: () => void; keep: () => void }): JSX.Element {
  return (
    <p class="refused" role="alert">
      The job file has been changed on disk.{' '}
      <button type="button" onClick={take}>
        Take it, my changes go
      </button>{' '}
      <button type="button" class="link" onClick={keep}>
        Keep mine
      </button>
    </p>
  );
}

/** A fault of ours, never swallowed; nothing where there is none. */
export function Fault({ fault }: { fault: string }): JSX.Element | null {
  if (fault === '') return null;
  return (
    <p class="refused" role="alert">
      {fault}
    </p>
  );
}
