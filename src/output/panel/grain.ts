import { at } from '../../base/at';
import { toDegrees } from '../../base/angle';
import type { Measures } from '../shop-sheet/measures';
import type { BuildablePanel } from './plan-panel';

/** The angle between the grain and a bend's base line, radians from 0 (the grain runs along the bend) to a quarter turn (across it). */
export interface GrainAngle {
  readonly bend: string;
  readonly angle: number;
}

/** Below this the grain counts as running along a bend, radians: common practice asks for 45° at least where the bend is tight. */
const ALONG = Math.PI / 6;

/** How the grain of the sheet, which runs along its length, crosses each bend as the first blank is laid out on it; null where the job names no sheet. */
function grainAngles({ finish: { metal }, panel }: Pick<BuildablePanel, 'finish' | 'panel'>): GrainAngle[] | null {
  const placement = metal?.layout.sheets.flatMap(({ placements }) => placements)[0];
  if (!placement) return null;
  return panel.bends.map(({ name, frame: { along } }) => {
    const onSheet = Math.atan2(along[1], along[0]) + placement.angle;
    return { bend: name, angle: Math.acos(Math.min(1, Math.abs(Math.cos(onSheet)))) };
  });
}

/** The grain against the bend lines, for whoever lays the blank on the sheet. */
export function grainWords(planned: Pick<BuildablePanel, 'finish' | 'panel'>, say: Measures): string {
  const angles = grainAngles(planned);
  const rule = 'A bend across the grain takes more before it cracks than one along it';
  if (!angles)
    return `${rule}: rolled sheet has its grain along its length. Lay the blank so that ${listed(planned.panel.bends.map(({ name }) => name))} cross it where you can, the tightest first.`;
  const each = angles.map(({ bend, angle }) => `${bend} at ${say.angle(angle)}`);
  const along = angles.filter(({ angle }) => angle < ALONG).map(({ bend }) => bend);
  return `The grain runs along the sheet’s length and meets the bends so: ${listed(each)} (90° is across the bend). ${rule}${
    along.length > 0 ? `; ${listed(along)} ${along.length > 1 ? 'run' : 'runs'} along it: look for cracks outside` : ''
  }.`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? at([...words, ''], 0) : `${words.slice(0, -1).join(', ')} and ${at(words, -1)}`;
}

/** In degrees, for the plan. */
export function grainDegrees(
  planned: Pick<BuildablePanel, 'finish' | 'panel'>,
): Readonly<Record<string, number>> | null {
  const angles = grainAngles(planned);
  return angles && Object.fromEntries(angles.map(({ bend, angle }) => [bend, toDegrees(angle)]));
}
