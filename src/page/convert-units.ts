import {
  bareForce,
  MM_PER_INCH,
  NEWTONS_PER,
  parseForce,
  parseLength,
  toFractionalInches,
  type LengthUnit,
} from '../base/units';
import type { Block } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
import { fieldAt } from '../job/fields/look';
import { changed, type Draft, type DraftPath } from './draft';

/** A fraction of an inch says a length where it is it to this, mm. */
const EXACT = 1e-4;

/**
 * The draft in another unit: lengths and forces that carry none are written anew, so that the part stays what it is; what says its own unit, a gauge or a board's name
 * is left as typed. A fraction stays exact; other inches are given to 0.00001, mm to 0.0001.
 */
export function inUnits(draft: Draft, from: LengthUnit, to: LengthUnit, root: Block = jobFields): Draft {
  const whole = from === to ? draft : converted(draft, [], { from, to, root });
  return changed(typeof whole === 'string' ? {} : whole, ['units'], to);
}

interface Units {
  readonly from: LengthUnit;
  readonly to: LengthUnit;
  readonly root: Block;
}

function converted(node: Draft | string, path: DraftPath, units: Units): Draft | string {
  if (typeof node === 'string') {
    if (fieldAt(path, units.root)?.kind.name === 'force') return forceRewritten(node, units);
    return isLength(path, units.root) ? rewritten(node, units) : node;
  }
  if (Array.isArray(node))
    return (node as readonly (Draft | string)[]).map((entry, index) => converted(entry, [...path, index], units));
  return Object.fromEntries(
    Object.entries(node as Readonly<Record<string, Draft | string>>).map(([key, entry]) => [
      key,
      converted(entry, [...path, key], units),
    ]),
  );
}

/** What is written as a list or block of its own holds lengths, but where it is a mere factor. */
function isLength(path: DraftPath, root: Block): boolean {
  const kind = fieldAt(path, root)?.kind.name;
  if (kind) return kind === 'length' || kind === 'thickness' || (kind === 'structure' && !isFactor(path));
  return path.some((_, depth) => fieldAt(path.slice(0, depth), root)?.kind.name === 'structure');
}

function isFactor(path: DraftPath): boolean {
  return path.at(-1) === 'scale';
}

/** A text without a unit reads otherwise in the other unit: that is how one is known. */
function rewritten(text: string, { from, to }: Units): string {
  const [here, there] = [parseLength(text, from), parseLength(text, to)];
  if (!here.ok || !('mm' in here) || !there.ok || !('mm' in there) || here.mm === there.mm) return text;
  if (to === 'mm') return plain(here.mm, 4);
  const { text: fraction, leftover } = toFractionalInches(here.mm, 64);
  return Math.abs(leftover) < EXACT ? fraction : plain(here.mm / MM_PER_INCH, 5);
}

/** The same of a force: N beside mm, lbf beside inches. */
function forceRewritten(text: string, { from, to }: Units): string {
  const [here, there] = [parseForce(text, from), parseForce(text, to)];
  return here === null || here === there ? text : plain(here / NEWTONS_PER[bareForce[to]], 3);
}

function plain(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
