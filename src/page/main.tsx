import { render } from 'preact';
import { serve } from './worker';
import { Whole } from './whole';

/** Whether this script runs as the page's worker, where there is no page. */
const isWorker = typeof document === 'undefined';

if (isWorker) serve();
else {
  const root = document.getElementById('app');
  if (root) render(<Whole />, root);
}
