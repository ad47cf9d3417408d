import plainCurveInch from '../../templates/plain-curve-inch.yaml';
import plainCurve from '../../templates/plain-curve.yaml';
import taperedTwoRuns from '../../templates/tapered-two-runs.yaml';
import thickSteel from '../../templates/thick-steel.yaml';

/** The starter jobs, the tapered one first: it shows most of what a form can be. */
export const starters: readonly { readonly name: string; readonly what: string; readonly text: string }[] = [
  { name: 'tapered-two-runs', text: taperedTwoRuns },
  { name: 'plain-curve', text: plainCurve },
  { name: 'plain-curve-inch', text: plainCurveInch },
  { name: 'thick-steel', text: thickSteel },
].map(({ name, text }) => ({ name, text, what: (text.split('\n')[0] ?? '').replace(/^#\s*/u, '') }));
