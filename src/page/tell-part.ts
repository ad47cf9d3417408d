import { formatForce, formatLength } from '../base/units';
import type { Form } from './work';

const NAMES = { nose: 'Yoke’s nose', 'outer member': 'Yoke’s outer member', handle: 'Yoke’s handle' } as const;
const YOKE = { nose: 'nose', 'outer member': 'outer', handle: 'handle' } as const;

/** What a touched part of the picture is: its name, its size, what holds it. */
export function tellPart(name: string, { job, bend, layout }: Form): string {
  const say = (length: number): string => formatLength(length, job.units);
  const station = layout.stations.find((one) => one.name === name);
  if (station)
    return `Station ${name}: radius ${say(station.radius)}, ${say(station.thickness)} thick, ${screws(station.screws)}.`;
  const backing = layout.backings.find((one) => one.name === name);
  if (backing)
    return `Backing station ${name}: ${say(backing.width)} high, foot ${say(backing.depth)} deep, ${say(backing.thickness)} thick, ${screws(backing.screws)}.`;
  switch (name) {
    case 'spine':
      return `Spine: ${say(layout.spine.length + 2 * layout.spine.ears)} long, ${say(layout.spine.thickness)} thick, ${layout.clampHoles.length} clamp holes.`;
    case 'sheet':
      return `Sheet: ${bend.metal.name}, ${formatLength(bend.section.thickness, job.units, 2)} thick, ${say(bend.length)} along the bend.`;
    case 'nose':
    case 'outer member':
    case 'handle':
      return bend.pull.yoke ? `${NAMES[name]}: ${bend.pull.yoke[YOKE[name]].name}.` : '';
    case 'plank':
      return 'Plank, under form and held leg, so that the yoke has room.';
    case 'bench':
      return 'The bench.';
    default:
      return name.startsWith('clamp') ? `Clamp, done up to about ${formatForce(job.clamps.rating, job.units)}.` : '';
  }
}

function screws(driven: readonly { readonly kind: { readonly name: string }; readonly lengthName: string }[]): string {
  const [first] = driven;
  if (!first) return 'no screws';
  return `${driven.length} × ${first.kind.name} ${first.lengthName}`;
}
