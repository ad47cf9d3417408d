import fc from 'fast-check';
import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import { radiusAtCentre } from '../../../src/base/cone';
import { parseJob } from '../../../src/job/parse';
import { drawPieces } from '../../../src/output/pieces';
import { planJob, type Buildable } from '../../../src/output/pipeline';
import { assemble, type Assembled, type Box } from '../../helpers/assemble';
import { cutWith, tools } from '../../helpers/for-tool';
import { jobText, randomJobs, shared } from '../../helpers/random-jobs';
import { planStarter, starters, tables } from '../../helpers/starters';
import { cases, FULL } from '../../helpers/cases';

/** How far a contact face may be off the cone, mm. */
const OFF_CONE = 0.01;
/** Two parts share no more than this in any level cut, mm²: the fillets a round beam leaves, and rounding. */
const SHARED = 1e-3;

function expectAssembled(planned: Buildable): void {
  if (!planned.bend || !planned.layout) throw new Error(JSON.stringify(planned.plan.findings));
  const { form } = planned.bend;
  const assembled = assemble(planned, drawPieces(planned, tables));
  for (const { id, s, radius, centre } of assembled.contacts) {
    const off = Math.abs(radius - radiusAtCentre(form, s)) + Math.hypot(centre.up, centre.ahead);
    expect(off, `${id}: contact face ${off.toFixed(4)} mm off the cone`).toBeLessThanOrEqual(OFF_CONE);
  }
  expect(assembled.contacts.length).toBe(planned.layout.stations.length * planned.layout.layers.stations);
  expectApart(assembled, heights(planned));
}

/** Level cuts through everything that matters: edges of tabs, screws and boards, just inside and outside of each, and between. */
function heights({ layout, joints }: Buildable): number[] {
  const tabs =
    joints?.with === 'laser'
      ? joints.boards.flatMap((board) =>
          board.tabs.flatMap(({ offset, width }) => [offset - width / 2, offset + width / 2]),
        )
      : [];
  const half = (layout?.stations ?? []).map(({ radius }) => radius);
  const edges = [...new Set([0, ...tabs, ...half, ...half.map((radius) => -radius)])];
  return edges.flatMap((edge) => [edge - 0.3, edge - 0.03, edge + 0.03, edge + 0.3]);
}

/** No two parts share wood, in any level cut: by polygon-clipping (MIT), which nothing of ours uses. */
function expectApart({ placed }: Assembled, levels: readonly number[]): void {
  for (const up of levels) {
    const cuts = placed.map(({ id, cut }) => ({ id, boxes: cut(up) })).filter(({ boxes }) => boxes.length > 0);
    for (const [index, a] of cuts.entries()) {
      for (const b of cuts.slice(index + 1)) {
        const near = a.boxes.flatMap((box) =>
          b.boxes.filter((other) => overlap(box, other)).map((other) => [box, other] as const),
        );
        if (near.length === 0) continue;
        const shared = near.reduce(
          (sum, [p, q]) => sum + areaOf(polygonClipping.intersection([ringOf(p)], [ringOf(q)])),
          0,
        );
        expect(shared, `${a.id} and ${b.id} at height ${up}`).toBeLessThanOrEqual(SHARED);
      }
    }
  }
}

const overlap = (a: Box, b: Box): boolean =>
  a.s[0] < b.s[1] && b.s[0] < a.s[1] && a.ahead[0] < b.ahead[1] && b.ahead[0] < a.ahead[1];

function ringOf({ s, ahead }: Box): [number, number][] {
  return [
    [s[0], ahead[0]],
    [s[1], ahead[0]],
    [s[1], ahead[1]],
    [s[0], ahead[1]],
  ];
}

function areaOf(polygons: ReturnType<typeof polygonClipping.intersection>): number {
  const ringArea = (ring: readonly (readonly [number, number])[]): number =>
    Math.abs(
      ring.reduce(
        (sum, [x, y], index) =>
          sum + x * (ring[(index + 1) % ring.length]?.[1] ?? y) - (ring[(index + 1) % ring.length]?.[0] ?? x) * y,
        0,
      ),
    ) / 2;
  return polygons.reduce(
    (sum, rings) => sum + rings.reduce((area, ring, index) => area + (index === 0 ? 1 : -1) * ringArea(ring), 0),
    0,
  );
}

describe('a form put together from its drawings', () => {
  for (const name of starters) {
    for (const tool of Object.keys(tools) as (keyof typeof tools)[]) {
      it(`${name}, ${tool}: every contact face on the cone, no two parts in one place`, () => {
        expectAssembled(planStarter(name, cutWith(tool)));
      });
    }
  }

  it('the same for random jobs, whatever cuts them', () => {
    const cuts = [
      { with: 'router', bit: 3 },
      { with: 'router', fit: 0, groove: 4 },
      { with: 'laser' },
      { with: 'laser', layers: 2, kerf: 0.1, fit: 0.03 },
    ];
    const built = cuts.map(() => 0);
    fc.assert(
      fc.property(
        randomJobs,
        fc.nat(cuts.length - 1),
        fc.constantFrom(null, 'mdf-6', 'mdf-4'),
        (random, which, thin) => {
          const data = {
            ...(JSON.parse(jobText(random, 'mm')) as object),
            cut: cuts[which],
            ...(thin && cuts[which]?.with === 'laser' ? { board: { stock: thin } } : {}),
          };
          const { job } = parseJob(JSON.stringify(data), tables);
          if (!job) return;
          const planned = planJob(shared(job, random), tables);
          if (!planned.buildable) return;
          expectAssembled(planned);
          built[which] = (built[which] ?? 0) + 1;
        },
      ),
      { numRuns: cases(400) },
    );
    for (const count of built) expect(count).toBeGreaterThan(FULL ? 5 : 0);
  });
});
