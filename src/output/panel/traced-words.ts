import type { Measures } from '../shop-sheet/measures';
import type { HowTraced } from './flat-panel';
import { ROUNDING } from '../../base/tolerance';

const FACTOR_DIGITS = 4;
/** So many references leave something over to check them by. */
const LEAVE_OVER = 3;

/** How a traced outline came by its size, for the maker to check: one sentence a line. Nothing for a panel built up. */
export function tracedWords(traced: HowTraced | null, say: Measures): string[] {
  if (!traced) return [];
  const { file, sizes, scale, references, takenOff } = traced;
  const [x, y] = [scale.x, scale.y].map((factor) => factor.toFixed(FACTOR_DIGITS));
  return [
    `Outline: ${file === null ? 'by its corners' : `${file}, ${sizes}`}; scaled ${x === y ? `${x} times` : `${x} times along x, ${y} along y`}.`,
    ...references.map(
      ({ is, comesOut }, index) => `Reference ${index + 1}: ${say.length(is)}, comes out ${say.length(comesOut)}.`,
    ),
    ...(references.length > 0 ? [residualWords(traced)] : []),
    ...takenOff.map(({ bend, A, B }) =>
      Math.max(Math.abs(A), Math.abs(B)) < ROUNDING
        ? `${bend}: the metal was allowed for; nothing is taken off.`
        : `${bend}: ${say.length(A)} taken off at end A and ${say.length(B)} at end B, since metal goes round the bend where the mock-up turns sharper.`,
    ),
  ];
}

function residualWords({ scale: { residual, growth, x, y }, references }: HowTraced): string {
  const uneven = `${(100 * Math.abs(x / y - 1)).toFixed(2)} %`;
  if (references.length < LEAVE_OVER)
    return references.length === 1
      ? 'Residual: none to see, one length scales both ways alike; measure a second across it.'
      : `Residual: 0.00 %, two lengths are met exactly (the two ways differ by ${uneven}); an error in them grows ${growth.toFixed(1)} times at most. A third length would show shear and perspective.`;
  return `Residual: ${(100 * (residual ?? 0)).toFixed(2)} % at the worst reference (the two ways differ by ${uneven}); an error in them grows ${growth.toFixed(1)} times at most.`;
}
