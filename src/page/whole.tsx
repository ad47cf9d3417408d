import type { JSX } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import { Page } from './page';
import { faultText } from './work';

/** The page, or, where showing it fails, why, and the way on: the job stays in the address. */
export function Whole(): JSX.Element {
  const caught: readonly [unknown, () => void] = useErrorBoundary();
  const [problem, again] = caught;
  if (problem === undefined) return <Page />;
  return (
    <main>
      <div class="refused" role="alert">
        <p>{faultText(problem)} The job is in this page’s address; copy it before you go on.</p>
        <button type="button" onClick={again}>
          Try again
        </button>
      </div>
    </main>
  );
}
