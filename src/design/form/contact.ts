import type { End } from '../../base/ends';
import { radiusAtCentre, type Cone } from '../../base/cone';

/** A square-edged board standing across the centre line: which face touches the cone and with what radii, mm. */
export interface Contact {
  readonly contact: End;
  /** Cone radius at the contact face: what the board is cut to. */
  readonly radius: number;
  /** Cone radius at the other face. */
  readonly farRadius: number;
}

/**
 * How a board between `low` and `high` along the centre line (mm) meets the cone: only its smaller-radius face
 * can touch, else it would stand proud. On a cylinder both do and `from` is named. Design section 2, "Thick stations".
 */
export function contactOf(cone: Cone, low: number, high: number): Contact {
  const [atLow, atHigh] = [radiusAtCentre(cone, low), radiusAtCentre(cone, high)];
  return cone.halfAngle >= 0
    ? { contact: 'A', radius: atLow, farRadius: atHigh }
    : { contact: 'B', radius: atHigh, farRadius: atLow };
}
