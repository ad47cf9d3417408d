import { describe, expect, it } from 'vitest';
import { angleFromWrap, radiusAtCentre } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import type { FixtureLayout } from '../../../src/design/fixture/fixture';
import { buildModel } from '../../../src/output/picture/model';
import { CURVE_FACETS, type Body, type Face } from '../../../src/output/picture/solid';
import { cross, dot, subtract, type Point3 } from '../../../src/output/picture/vector';
import { handPoint, pulledBy, type SheetState } from '../../../src/output/picture/wrapped-sheet';
import { cutWith } from '../../helpers/for-tool';
import { planStarter, starters } from '../../helpers/starters';

function form(name: string): { bend: BendPlan; layout: FixtureLayout } {
  const { bend, layout } = planStarter(name);
  if (!bend || !layout) throw new Error(`${name} cannot be built`);
  return { bend, layout };
}

/** Area vector of a flat polygon by fanning triangles. */
function faceArea({ outline }: Face): number {
  const [first] = outline as [Point3];
  const sum = outline.slice(1, -1).reduce<Point3>(
    (total, point, index) => {
      const c = cross(subtract(point, first), subtract(outline[index + 2] as Point3, first));
      return [total[0] + c[0] / 2, total[1] + c[1] / 2, total[2] + c[2] / 2];
    },
    [0, 0, 0],
  );
  return Math.hypot(...sum);
}

/** Divergence theorem: one third of the sum of area times distance along the outward normal. Wrong or inward normals give a wrong volume. */
function volume(body: Body): number {
  return body.faces.reduce((sum, face) => sum + (faceArea(face) * dot(face.normal, face.outline[0] as Point3)) / 3, 0);
}

const sheetOf = (bend: BendPlan, layout: FixtureLayout, state: SheetState): Body[] =>
  buildModel(layout, bend, state).bodies.filter((body) => body.kind === 'sheet');

describe.each(starters)('the model of %s', (name) => {
  const { bend, layout } = form(name);
  const { bodies } = buildModel(layout, bend, null);
  const states: SheetState[] = [0, 0.1, 0.3, 0.7, 1].map((share) => pulledBy(bend, share));

  it('has every board of the layout, each with the volume of its plan numbers', () => {
    const named = new Map(bodies.map((body) => [body.name, body]));
    expect(bodies.map((body) => body.name)).toEqual([
      'spine',
      ...layout.stations.map((station) => station.name),
      ...layout.backings.map((backing) => backing.name),
    ]);
    const { length, thickness, ears } = layout.spine;
    const mean = bend.form.radiusA + bend.form.radiusB;
    expect(volume(named.get('spine') as Body) / ((length + 2 * ears) * thickness * mean)).toBeCloseTo(1, 9);
    for (const station of layout.stations) {
      const polygon = (CURVE_FACETS * station.radius ** 2 * Math.sin(Math.PI / CURVE_FACETS)) / 2;
      expect(volume(named.get(station.name) as Body) / (polygon * station.thickness)).toBeCloseTo(1, 9);
      expect(polygon / ((Math.PI * station.radius ** 2) / 2)).toBeGreaterThan(0.997);
    }
    for (const backing of layout.backings)
      expect(volume(named.get(backing.name) as Body) / (backing.width * backing.depth * backing.thickness)).toBeCloseTo(
        1,
        9,
      );
  });

  it('steps a laser’s stations along the cone layer by layer, and shows their tabs on the spine’s back', () => {
    const stacked = planStarter(name, cutWith('laser'));
    if (!stacked.bend || !stacked.layout || !stacked.joints) throw new Error('cannot be built');
    const { form: cone } = stacked.bend;
    const model = buildModel(stacked.layout, stacked.bend, null, { joints: stacked.joints });
    const layers = model.bodies.filter(({ kind }) => kind === 'station');
    expect(layers.length).toBe(3 * stacked.layout.stations.length);
    const tallest = layers.map((body) =>
      Math.max(...body.faces.flatMap(({ outline }) => outline.map(([, ahead]) => ahead))),
    );
    const expected = stacked.layout.stations
      .flatMap(({ at, thickness }) =>
        [0, 1, 2].map((layer) => at - thickness / 2 + ((layer + (cone.halfAngle < 0 ? 1 : 0)) * thickness) / 3),
      )
      .map((s) => radiusAtCentre(cone, s));
    for (const [index, radius] of expected.entries()) expect(tallest[index]).toBeCloseTo(radius, 6);
    const back = model.bodies[0]?.faces[1]?.marks ?? [];
    expect(back.filter(({ kind }) => kind === 'tab').length).toBeGreaterThanOrEqual(stacked.layout.stations.length);
  });

  it('marks every clamp hole and every screw head of the plan on the face it is driven from', () => {
    const marks = bodies[0]?.faces.slice(0, 2).map((face) => face.marks.map((mark) => mark.kind)) ?? [];
    const heads = (boards: readonly { screws: readonly unknown[] }[]): number =>
      boards.reduce((sum, board) => sum + board.screws.length, 0);
    expect(marks[0]?.filter((kind) => kind === 'screw-head')).toHaveLength(heads(layout.backings));
    expect(marks[1]?.filter((kind) => kind === 'screw-head')).toHaveLength(heads(layout.stations));
    for (const face of marks)
      expect(face.filter((kind) => kind === 'clamp-hole')).toHaveLength(layout.clampHoles.length);
  });

  it('stands on the sheet: no board below it, both long edges of the spine in its plane or above', () => {
    const heights = bodies.flatMap((body) => body.faces.flatMap((face) => face.outline.map(([, , z]) => z)));
    expect(Math.min(...heights)).toBeGreaterThan(-1e-9);
    const [low] = bodies[0]?.faces ?? [];
    expect(low?.outline.filter(([, , z]) => Math.abs(z) < 1e-9)).toHaveLength(2);
  });

  it('names the held leg on it, at both ends, and the free leg on it, wherever the sheet is', () => {
    for (const state of [...states, { kind: 'released' } as const]) {
      const { bodies: all, tags } = buildModel(layout, bend, state);
      const at = (kind: string): Point3[] => tags.filter((tag) => tag.kind === kind).map((tag) => tag.at);
      expect(at('held leg').map(([x]) => x)).toEqual([0, bend.length]);
      for (const [, y, z] of at('held leg')) expect([y < 0 && y > -bend.legs.held, z]).toEqual([true, 0]);
      const [place] = at('free leg');
      if (!place) throw new Error('no free leg');
      // Inside one of the leg's flat pieces: in its plane, and on the inner side of every edge.
      const lies = ({ outline, normal }: Face): boolean =>
        Math.abs(dot(normal, subtract(place, outline[0] as Point3))) < 1e-6 &&
        outline.every((corner, index) => {
          const next = outline[(index + 1) % outline.length] as Point3;
          return dot(cross(subtract(next, corner), subtract(place, corner)), normal) < 1e-6;
        });
      expect(all.filter(({ kind, faces }) => kind === 'sheet' && faces.some(lies)).length).toBeGreaterThan(0);
    }
    expect(buildModel(layout, bend, null).tags.filter(({ kind }) => kind.endsWith('leg'))).toEqual([]);
  });

  it('keeps the sheet’s area at every wrap, to what facets take off a curve', () => {
    const flat = sheetOf(bend, layout, pulledBy(bend, 0));
    for (const body of flat) for (const [, , z] of body.faces[0]?.outline ?? []) expect(Math.abs(z)).toBeLessThan(1e-9);
    const total = (pieces: readonly Body[]): number =>
      pieces.reduce((sum, body) => sum + body.faces.reduce((area, face) => area + faceArea(face), 0), 0);
    // Inside face against neutral surface: over the bend the inside is shorter by K·t over the radius.
    const bendArea = total(flat) - bend.length * (bend.legs.held + bend.pull.edge);
    const shorter = (bend.neutral * bend.section.thickness) / Math.min(bend.form.radiusA, bend.form.radiusB);
    for (const state of states)
      expect(Math.abs(total(sheetOf(bend, layout, state)) - total(flat))).toBeLessThan(bendArea * (shorter + 0.003));
    // The plan's blank is developed from the finished bend, this from the form: the same arc lengths at mid-surface, so nearly the same area.
    const outline = planStarter(name).plan.blank?.outline ?? [];
    const blank = outline.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = outline[(index + 1) % outline.length] ?? [x, y];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0);
    expect(Math.abs(total(flat) / blank - 1)).toBeLessThan(0.005);
  });

  it('turns the free leg by the angle between the legs’ planes: at every wrap, and after release by the job’s', () => {
    const turned = (state: SheetState): number => {
      const pieces = sheetOf(bend, layout, state);
      const [held, free] = [pieces[0]?.faces[0]?.normal, pieces.at(-1)?.faces[0]?.normal] as [Point3, Point3];
      return Math.atan2(Math.hypot(...cross(held, free)), dot(held, free));
    };
    // A taper's leg bends about lines that do not all meet in its apex: the planes then differ by hundredths of a degree.
    const digits = bend.form.halfAngle === 0 ? 9 : 2.5;
    for (const [index, share] of [0, 0.1, 0.3, 0.7, 1].entries())
      expect(turned(states[index] as SheetState)).toBeCloseTo(
        angleFromWrap(share * bend.pull.gaugeWrap, bend.form.halfAngle),
        digits,
      );
    expect(turned({ kind: 'on-form', wrap: bend.wrap.chosen })).toBeCloseTo(
      (bend.pull.legAngle.A + bend.pull.legAngle.B) / 2,
      digits,
    );
    expect(turned({ kind: 'released' })).toBeCloseTo(bend.angle, digits);
  });

  it('keeps every board on the inner side of the sheet, at every wrap and after release', () => {
    const chord = buildModel(layout, bend, null).chordError;
    for (const state of [...states, { kind: 'released' } as const]) {
      const corners = buildModel(layout, bend, state)
        .bodies.filter(({ kind }) => kind !== 'sheet')
        .flatMap((body) => body.faces.flatMap((face) => face.outline));
      for (const { faces } of sheetOf(bend, layout, state)) {
        for (const face of faces)
          expect(
            Math.max(...corners.map((corner) => dot(face.normal, subtract(corner, face.outline[0] as Point3)))),
          ).toBeLessThan(chord);
      }
    }
  });

  it('holds the hands at the lever: flat, as far from the tangent line as bend and lever are long', () => {
    const middle = bend.length / 2;
    const [, y, z] = handPoint(bend, pulledBy(bend, 0), 0);
    expect(z).toBeCloseTo(0, 9);
    const arc =
      bend.wrap.chosen * (bend.form.radiusA + bend.neutral * bend.section.thickness * Math.cos(bend.form.halfAngle));
    expect(Math.abs(y - arc - bend.pull.lever)).toBeLessThan(0.002 * bend.pull.lever);
    expect(handPoint(bend, pulledBy(bend, 1), middle)[2]).toBeGreaterThan(
      handPoint(bend, pulledBy(bend, 0), middle)[2],
    );
  });
});
