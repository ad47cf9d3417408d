import { describe, it } from 'vitest';
import { LONG, lookAtPanels } from './sampled-panels';

describe('random panels, the second half', () => {
  it(
    'fold without crossing themselves and have an order that sampling finds clear, or an error',
    () => lookAtPanels(1),
    LONG,
  );
});
