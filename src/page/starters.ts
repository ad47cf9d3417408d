import bracket from '../../templates/panels/bracket.yaml';
import hoodSide from '../../templates/panels/hood-side.yaml';
import tray from '../../templates/panels/tray.yaml';
import plainCurveInch from '../../templates/plain-curve-inch.yaml';
import plainCurve from '../../templates/plain-curve.yaml';
import taperedTwoRuns from '../../templates/tapered-two-runs.yaml';
import thickSteel from '../../templates/thick-steel.yaml';

export interface Starter {
  readonly name: string;
  readonly what: string;
  readonly text: string;
}

/** The starter jobs of one bend, the tapered one first: it shows most of what a form can be. */
export const starters: readonly Starter[] = [
  { name: 'tapered-two-runs', text: taperedTwoRuns },
  { name: 'plain-curve', text: plainCurve },
  { name: 'plain-curve-inch', text: plainCurveInch },
  { name: 'thick-steel', text: thickSteel },
].map(described);

/** Those of whole panels. */
export const panelStarters: readonly Starter[] = [
  { name: 'hood-side', text: hoodSide },
  { name: 'tray', text: tray },
  { name: 'bracket', text: bracket },
].map(described);

/** A starter says what it is in its first line. */
function described({ name, text }: { readonly name: string; readonly text: string }): Starter {
  return { name, text, what: (text.split('\n')[0] ?? '').replace(/^#\s*/u, '') };
}
