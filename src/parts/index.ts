import type { BendPlan } from '../bend/bend-plan';
import type { FixtureLayout } from '../fixture/fixture';
import type { Job } from '../job/job';
import { drawBacking } from './backing-part';
import { checkPart } from './check-part';
import type { Part } from './part';
import { drawSpine } from './spine-part';
import { drawStation } from './station-part';

/** Layout → every piece of board to cut, drawn at 1:1 and checked. Order: spine, stations from A to B, backing stations. */
export function drawParts(layout: FixtureLayout, bend: BendPlan, job: Job): Part[] {
  const notes = { units: job.units, wrap: bend.wrap.chosen };
  const parts: Part[] = [
    { id: 'spine', kind: 'spine', name: 'Spine', stock: job.board.spine.stock, thickness: layout.spine.thickness, drawing: { shapes: drawSpine(layout, bend) } },
    ...layout.stations.map(
      (station): Part => ({
        id: station.name,
        kind: 'station',
        name: `Station ${station.name}`,
        stock: job.board.stations.stock,
        thickness: station.thickness,
        drawing: { shapes: drawStation(station, notes) },
      }),
    ),
    ...layout.backings.map(
      (backing): Part => ({
        id: backing.name,
        kind: 'backing',
        name: `Backing station ${backing.name}`,
        stock: job.board.backing.stock,
        thickness: backing.thickness,
        drawing: { shapes: drawBacking(backing) },
      }),
    ),
  ];
  for (const part of parts) checkPart(part);
  return parts;
}
