import { unzipSync, strFromU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { drawParts } from '../../../src/drawing/parts';
import type { Buildable } from '../../../src/output/pipeline';
import { bendMesh, formMeshes, meshVolume, solidFiles, type Form, type Mesh } from '../../../src/output/solids';
import { Extruder } from '../../../src/output/solids/extrude';
import { cutWith } from '../../helpers/for-tool';
import { asText } from '../../helpers/laid-out';
import { planStarter, starters, tables } from '../../helpers/starters';

function formOf({ layout, bend, joints, job }: Buildable): Form {
  return { parts: drawParts({ layout, bend, job, joints }, tables), layout, bend, joints };
}

/** Every side of every triangle is run along once each way: what "watertight" means (3MF Core Specification, 4.1.3.1). */
function openSides({ triangles }: Mesh): string[] {
  const sides = new Map<string, number>();
  for (let index = 0; index < triangles.length; index += 3) {
    const corners = triangles.slice(index, index + 3);
    for (const [turn, corner] of corners.entries()) {
      const side = `${corner} ${corners[(turn + 1) % 3]}`;
      sides.set(side, (sides.get(side) ?? 0) + 1);
    }
  }
  return [...sides].flatMap(([side, count]) => {
    const back = side.split(' ').reverse().join(' ');
    return count === 1 && sides.get(back) === 1 ? [] : [side];
  });
}

/** Chords lie inside their arc: of a round of 30 mm, 0.002 mm off at most, they leave out less than 1 in 10 000 of what it encloses. */
const ROUNDS = 1e-4;

describe.each(
  starters.flatMap((name) => (['jigsaw', 'router', 'laser'] as const).map((tool) => [name, tool] as const)),
)('solids of %s cut with a %s', (name, tool) => {
  const planned = planStarter(name, cutWith(tool));
  const form = formOf(planned);
  const { plan } = planned;
  const meshes = formMeshes(form);

  it('are closed, each board one, turned outward', () => {
    const boards = form.parts.filter(({ kind }) => kind !== 'test');
    expect(meshes.map(({ name: board }) => board)).toEqual(boards.map(({ id }) => id));
    for (const mesh of meshes) {
      expect(openSides(mesh), mesh.name).toEqual([]);
      expect(meshVolume(mesh), mesh.name).toBeGreaterThan(0);
    }
  });

  it('have the volumes of the plan’s numbers: half discs and what stands behind them, a trapezium less its openings', () => {
    const { cut, spine } = plan;
    if (!spine || !cut) throw new Error('no spine');
    const stacks = cut.with === 'laser' ? cut.boards : [];
    const volumeOf = (wanted: string): number =>
      meshes
        .filter(({ name: board }) => board.replace(/-\d+$/u, '') === wanted)
        .reduce((sum, mesh) => sum + meshVolume(mesh), 0);
    const near = (found: number, wanted: number, what: string): void => {
      expect(Math.abs(found / wanted - 1), `${what}: ${found} for ${wanted}`).toBeLessThan(ROUNDS);
    };
    for (const { name: station, radius, thickness } of plan.stations) {
      const stack = stacks.find((board) => board.name === station);
      const radii = stack ? stack.layers.map((layer) => layer.radius) : [radius];
      const behind = cut.with === 'router' ? 2 * radius * cut.grooveDepth : 0;
      const tabs = cut.with === 'laser' ? (stack?.tabs ?? []) : [];
      const reach = cut.with === 'laser' ? cut.tabLength : 0;
      const relief = cut.with === 'laser' ? cut.relief : 0;
      const dowels = (stack?.dowels ?? []).reduce((sum, { diameter }) => sum + (Math.PI * diameter ** 2) / 4, 0);
      const tabbed = tabs.reduce((sum, { width }) => sum + width * reach - 2 * relief ** 2, 0);
      const wanted = radii.reduce(
        (sum, r) => sum + (((Math.PI * r ** 2) / 2 + behind + tabbed - dowels) * thickness) / radii.length,
        0,
      );
      near(volumeOf(station), wanted, station);
    }
    if (cut.with === 'laser') return;
    const length = spine.length + 2 * spine.ears;
    const round = (diameter: number): number => (Math.PI * diameter ** 2) / 4;
    const holes = [...spine.clampHoles, ...spine.screwHoles].reduce((sum, { diameter }) => sum + round(diameter), 0);
    const solid = ((spine.widthFrom + spine.widthTo) / 2) * length - holes;
    // Of a straight spine: a groove is as wide as the spine, and ends where the spine does; its screws' holes are taken off already.
    const straight = spine.widthFrom === spine.widthTo;
    if (cut.with === 'jigsaw') near(volumeOf('spine'), solid * spine.thickness, 'spine');
    else if (straight) {
      const [start, end] = [-spine.ears, spine.length + spine.ears];
      const grooves = cut.grooves.reduce((sum, { holds, low, high }) => {
        const screws = spine.screwHoles.filter((hole) => hole.holds === holds);
        const inside = screws.reduce((area, { diameter }) => area + round(diameter), 0);
        return sum + (Math.min(end, high) - Math.max(start, low)) * spine.widthFrom - inside;
      }, 0);
      near(volumeOf('spine'), solid * spine.thickness - grooves * cut.grooveDepth, 'spine');
    }
  });
});

describe.each(starters)('the finished bend of %s', (name) => {
  const planned = planStarter(name);
  const { bend } = formOf(planned);
  const mesh = bendMesh(bend);

  it('is closed, and has the volume of its legs and of the shell between two parallel cones', () => {
    expect(openSides(mesh)).toEqual([]);
    const { finished, finishedWrap, legs, length, section } = bend;
    const t = section.thickness;
    // The parallel face at height h is wound about a radius R + h·cos β, square to the centre line, along a ruling of the bend's length.
    const middle = (finished.radiusA + finished.radiusB) / 2 + (t * Math.cos(finished.halfAngle)) / 2;
    const wanted = length * t * (legs.held + legs.free + finishedWrap * middle);
    expect(Math.abs(meshVolume(mesh) / wanted - 1)).toBeLessThan(ROUNDS);
  });
});

describe('extruded boards', () => {
  const square = (low: number, high: number): [number, number][] => [
    [low, low],
    [high, low],
    [high, high],
    [low, high],
  ];
  const board = { name: '', colour: '#000000', low: 0, high: 3, floor: 2, pockets: [] };
  const stays = (point: readonly [number, number, number]): readonly [number, number, number] => point;

  it('keep corners in the midst of a side, holes, and pockets that run out of the edge', () => {
    const outline: [number, number][] = [
      [0, 0],
      [4, 0],
      [10, 0],
      [10, 5],
      [10, 10],
      [0, 10],
    ];
    const pocket: [number, number][] = [
      [-1, 4],
      [11, 4],
      [11, 7],
      [-1, 7],
    ];
    const mesh = new Extruder().extrude(
      { ...board, loops: [outline, square(5, 6), square(1, 2)], pockets: [pocket] },
      stays,
    );
    expect(openSides(mesh)).toEqual([]);
    expect(meshVolume(mesh)).toBeCloseTo((100 - 1 - 1) * 3 - (30 - 1) * 1, 9);
  });

  it('come out the right way round whichever hand they are placed with', () => {
    const mirrored = new Extruder().extrude({ ...board, loops: [square(0, 2)] }, ([x, y, z]) => [-x, y, z]);
    expect(meshVolume(mirrored)).toBeCloseTo(12, 9);
    expect(openSides(mirrored)).toEqual([]);
  });
});

describe('3-D files', () => {
  const form = formOf(planStarter('plain-curve'));
  const files = solidFiles(form, 'A <b> & "c"');

  it('are the same bytes each time', () => {
    expect(asText(solidFiles(form, 'A <b> & "c"'))).toEqual(asText(files));
    expect(files.map(({ path }) => path)).toEqual([
      'solids/form.3mf',
      ...['spine', 'S1', 'S2', 'S3', 'S4', 'BS1'].map((board) => `solids/form/${board}.stl`),
      'solids/bend.3mf',
      'solids/bend.stl',
    ]);
  });

  it('3MF: millimetres, one object a board, names escaped, each with a colour (3MF Core Specification 1.3)', () => {
    const content = files[0]?.content;
    if (!(content instanceof Uint8Array)) throw new Error('no bytes');
    const model = strFromU8(unzipSync(content)['3D/3dmodel.model'] ?? new Uint8Array());
    expect(model).toContain('<model unit="millimeter"');
    expect(model).toContain('A &lt;b&gt; &amp; &quot;c&quot;: form');
    const names = [...model.matchAll(/<object id="\d+" type="model" name="([^"]*)" pid="1" pindex="(\d)">/gu)];
    expect(names.map(([, board]) => board)).toEqual(formMeshes(form).map(({ name }) => name));
    expect(new Set(names.map(([, , colour]) => colour)).size).toBe(3);
  });

  it('STL: binary, 84 bytes and 50 for each triangle', () => {
    const content = files[1]?.content;
    if (!(content instanceof Uint8Array)) throw new Error('no bytes');
    const triangles = (formMeshes(form)[0]?.triangles.length ?? NaN) / 3;
    expect(content.length).toBe(84 + 50 * triangles);
    expect(new DataView(content.buffer).getUint32(80, true)).toBe(triangles);
  });
});
