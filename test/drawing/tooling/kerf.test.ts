import { Clipper, EndType, FillRule, JoinType, type PathD, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Loop } from '../../../src/base/drawing';
import { flattenLoop } from '../../../src/base/flatten';
import { parseJob } from '../../../src/job/parse';
import { drawParts } from '../../../src/drawing/parts';
import { drawPieces } from '../../../src/output/pieces';
import { planJob, type Buildable } from '../../../src/output/pipeline';
import { tablesIn } from '../../../src/tables/tables';
import { loopsUnder } from '../../helpers/as-cut';
import { cutWith } from '../../helpers/for-tool';
import { jobText, randomJobs, shared } from '../../helpers/random-jobs';
import { planStarter, starters, tables, tryStarter } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

/** Chords of the judge's own polygons stray by this, a fifth of what the tolerance allows, mm. */
const CHORD_ERROR = 2e-5;
const DECIMALS = 7;

function wanted({ bend, layout, joints, job }: Buildable): ReturnType<typeof drawParts> {
  return drawParts({ layout, bend, job, joints }, tablesIn(tables, job.units));
}

const pathOf = ({ vertices }: Loop): PathD => flattenLoop(vertices, CHORD_ERROR).map(([x, y]) => ({ x, y }));
const lengthOf = (path: PathD): number =>
  path.reduce(
    (sum, { x, y }, index) => sum + Math.hypot(x - (path.at(index - 1)?.x ?? x), y - (path.at(index - 1)?.y ?? y)),
    0,
  );

const known = new Map<string, number>();

/** Where our moved loop and clipper2-ts's own offset of the loop wanted differ, mm² for each mm of outline; loops alike but for their place are asked about once. */
function difference(nominal: Loop, drawn: Loop, by: number): number {
  const [origin] = nominal.vertices;
  if (!origin) throw new Error('a loop of no corners');
  const atOrigin = ({ vertices, ...rest }: Loop): Loop => ({
    ...rest,
    vertices: vertices.map(({ x, y, bulge }) => ({
      x: rounded(x - origin.x),
      y: rounded(y - origin.y),
      bulge,
    })),
  });
  const [wanted, moved] = [atOrigin(nominal), atOrigin(drawn)];
  const key = JSON.stringify([wanted.vertices, moved.vertices, by]);
  const found = known.get(key) ?? differenceAtOrigin(wanted, moved, by);
  known.set(key, found);
  return found;
}

/** As finely as clipper2-ts is told to look, mm. */
const rounded = (value: number): number => Number(value.toFixed(DECIMALS));

function differenceAtOrigin(nominal: Loop, drawn: Loop, by: number): number {
  const theirs: PathsD = Clipper.inflatePathsD(
    [pathOf(nominal)],
    by,
    JoinType.Round,
    EndType.Polygon,
    2,
    DECIMALS,
    CHORD_ERROR,
  );
  const apart = Clipper.xorD(theirs, [pathOf(drawn)], FillRule.NonZero, DECIMALS);
  return apart.reduce((sum, path) => sum + Math.abs(Clipper.areaD(path)), 0) / lengthOf(pathOf(nominal));
}

describe('a laser’s drawings', () => {
  for (const name of starters) {
    for (const kerf of [0.1, 0.2, 0.5]) {
      it(`${name}: lines lie half of ${kerf} mm outside outlines, inside holes and slots (clipper2-ts)`, () => {
        const planned = planStarter(name, (text) =>
          cutWith('laser')(text).replace('with: laser', `with: laser\n  kerf: ${kerf} mm`),
        );
        const drawn = drawPieces(planned, tables);
        let loops = 0;
        for (const { id, drawing } of wanted(planned)) {
          const moved = drawn.find((part) => part.id === id)?.drawing as Drawing;
          for (const operation of ['outline', 'hole'] as const) {
            const [before, after] = [loopsUnder(drawing, operation), loopsUnder(moved, operation)];
            expect(after.length).toBe(before.length);
            for (const [index, loop] of before.entries()) {
              expect(
                difference(loop, after[index] as Loop, operation === 'outline' ? kerf / 2 : -kerf / 2),
                `${id}, ${operation} ${index}`,
              ).toBeLessThan(1e-4);
              loops++;
            }
          }
        }
        expect(loops).toBeGreaterThan(50);
      });
    }
  }

  it('say so where the beam is too wide for what it must cut, and draw nothing', () => {
    const planned = tryStarter('tapered-curve', (text) =>
      cutWith('laser')(text).replace('with: laser', 'with: laser\n  kerf: 2\n  dowel: 3'),
    );
    expect(planned.plan.findings).toContainEqual(
      expect.objectContaining({ code: 'kerf-too-wide', level: 'error', path: 'cut.kerf' }),
    );
  });

  it('come out, or a finding says why not, whatever the kerf and the fit: 600 random jobs', () => {
    let [built, refused] = [0, 0];
    fc.assert(
      fc.property(
        randomJobs,
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 0, max: 20 }),
        fc.constantFrom('mdf-3', 'mdf-6'),
        (random, kerf, fit, stock) => {
          const data = {
            ...(JSON.parse(jobText(random, 'mm')) as object),
            cut: { with: 'laser', kerf: kerf / 20, fit: fit / 20, dowel: 3 },
            board: { stock },
          };
          const { job } = parseJob(JSON.stringify(data), tables);
          if (!job) return;
          const planned = planJob(shared(job, random), tables);
          if (planned.plan.findings.some(({ code }) => code === 'kerf-too-wide')) refused++;
          if (!planned.buildable) return;
          drawPieces(planned, tables);
          built++;
        },
      ),
      { numRuns: cases(600) },
    );
    expect(built).toBeGreaterThan(cases(20));
    expect(refused).toBeGreaterThan(0);
  });
});
