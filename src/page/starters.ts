import bracket from '../../templates/panels/bracket.yaml';
import coaming from '../../templates/panels/coaming.yaml';
import hoodSide from '../../templates/panels/hood-side.yaml';
import tray from '../../templates/panels/tray.yaml';
import plainCurveInch from '../../templates/plain-curve-inch.yaml';
import plainCurve from '../../templates/plain-curve.yaml';
import taperedCurve from '../../templates/tapered-curve.yaml';
import thickSteel from '../../templates/thick-steel.yaml';

import deflectorDrawing from '../../templates/panels/traced-deflector.svg';
import deflector from '../../templates/panels/traced-deflector.yaml';
import { textOfAddress } from './data-address';
import type { OpenedDrawing } from './draft';

export interface Starter {
  readonly name: string;
  readonly what: string;
  readonly text: string;
  /** The drawing that its outline names; null where it names none. */
  readonly drawing: OpenedDrawing | null;
}

/** The starter jobs of one bend, the tapered one first: it shows most of what a form can be. */
export const starters: readonly Starter[] = [
  { name: 'tapered-curve', text: taperedCurve },
  { name: 'plain-curve', text: plainCurve },
  { name: 'plain-curve-inch', text: plainCurveInch },
  { name: 'thick-steel', text: thickSteel },
].map((one) => described(one));

/** Those of whole panels. */
export const panelStarters: readonly Starter[] = [
  { name: 'hood-side', text: hoodSide },
  { name: 'tray', text: tray },
  { name: 'bracket', text: bracket },
  { name: 'coaming', text: coaming },
  {
    name: 'traced-deflector',
    text: deflector,
    drawing: { name: 'traced-deflector.svg', text: textOfAddress(deflectorDrawing) },
  },
].map((one) => described(one));

/** A starter says what it is in its first line. */
function described({ name, text, drawing = null }: Pick<Starter, 'name' | 'text'> & Partial<Starter>): Starter {
  return { name, text, drawing, what: (text.split('\n')[0] ?? '').replace(/^#\s*/u, '') };
}
