import { formatLength } from '../base/units';
import type { Form } from './work';

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
    case 'bench':
      return 'The bench.';
    default:
      return '';
  }
}

function screws(driven: readonly { readonly kind: { readonly name: string }; readonly lengthName: string }[]): string {
  const [first] = driven;
  if (!first) return 'no screws';
  return `${driven.length} × ${first.kind.name} ${first.lengthName}`;
}
