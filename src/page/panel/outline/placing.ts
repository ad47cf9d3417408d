import { MM_PER_INCH, type LengthUnit } from '../../../base/units';
import { changed, nodeAt, type Draft } from '../../draft';

/** A place on the drawing, mm as drawn, y up. */
export type DrawnPlace = readonly [x: number, y: number];

/** What two touched places become. */
export type Placing = 'bend' | 'reference';

/** A place as a job file in `units` has it: to 0.01 mm, or 0.0005 in. */
function placeText([x, y]: DrawnPlace, units: LengthUnit): readonly [string, string] {
  const say = (mm: number): string => String(Number(units === 'mm' ? mm.toFixed(2) : (mm / MM_PER_INCH).toFixed(4)));
  return [say(x), say(y)];
}

const FRESH: Readonly<Record<LengthUnit, string>> = { mm: '30', in: '1-1/4' };

/** The draft with a bend along the line from `a` to `b`; what is not said yet is as usual as may be, to be changed in its fields. */
export function withBend(draft: Draft, [a, b]: readonly [DrawnPlace, DrawnPlace], units: LengthUnit): Draft {
  const there = nodeAt(draft, ['bends']);
  const bends = Array.isArray(there) ? (there as readonly (Draft | string)[]) : [];
  const radius = FRESH[units];
  const bend: Draft = {
    name: freeName(bends),
    line: [placeText(a, units), placeText(b, units)],
    free: 'left',
    angle: '90',
    radius: { from: radius, to: radius },
  };
  return changed(draft, ['bends'], [...bends, bend]);
}

function freeName(bends: readonly (Draft | string)[]): string {
  const taken = bends.map((bend) => (typeof bend === 'object' ? nodeAt(bend, ['name']) : ''));
  let count = bends.length + 1;
  while (taken.includes(`bend ${count}`)) count++;
  return `bend ${count}`;
}

/** The draft scaled by one more length known on the part; a plain factor gives way to it. */
export function withReference(
  draft: Draft,
  { between: [a, b], is }: { readonly between: readonly [DrawnPlace, DrawnPlace]; readonly is: string },
  units: LengthUnit,
): Draft {
  const there = nodeAt(draft, ['outline', 'scale']);
  const references = Array.isArray(there) ? (there as readonly (Draft | string)[]) : [];
  const reference: Draft = { between: [placeText(a, units), placeText(b, units)], is };
  return changed(draft, ['outline', 'scale'], [...references, reference]);
}

/** Two places at a path of the draft, mm; null where they are none yet. */
export function lineAt(
  draft: Draft,
  path: readonly (string | number)[],
  units: LengthUnit,
): readonly [DrawnPlace, DrawnPlace] | null {
  const place = (end: number): DrawnPlace | null => {
    const [x, y] = [0, 1].map((axis) => {
      const text = nodeAt(draft, [...path, end, axis]);
      return typeof text === 'string' && text.trim() !== '' ? Number(text) * (units === 'in' ? MM_PER_INCH : 1) : NaN;
    });
    return x !== undefined && y !== undefined && Number.isFinite(x) && Number.isFinite(y) ? [x, y] : null;
  };
  const [a, b] = [place(0), place(1)];
  return a && b ? [a, b] : null;
}
