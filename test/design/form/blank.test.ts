import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import { developBlank } from '../../../src/design/form/blank';
import { sizeBlank } from '../../../src/design/form/blank-size';
import { contactOf } from '../../../src/design/form/contact';
import { startRadius, toBent, toFlat, toSpace } from '../../../src/design/form/development';
import { planStarter } from '../../helpers/starters';

/** Blanks by hand: a cylinder's rectangle, and a cone's sector about its apex. */

const { bend } = planStarter('plain-curve');
const blankOf = (to: number, more: object = {}) => {
  const finished = coneThrough(40, to, 100);
  return {
    ...bend,
    length: 100,
    finished,
    finishedWrap: Math.PI / 2,
    fan: (Math.PI / 2) * Math.sin(finished.halfAngle),
    neutral: 0.5,
    section: { ...bend.section, thickness: 2 },
    metal: { ...bend.metal, density: 8000 },
    legs: { held: 30, free: 60 },
    // The form stands 3 mm before the held tangent line: its mark is drawn there.
    pull: { ...bend.pull, edge: 85, leverage: 25, early: 3 },
    ...more,
  };
};
const near = (point: readonly number[], expected: readonly number[]): void => {
  expect(point).toHaveLength(expected.length);
  point.forEach((value, index) => expect(value).toBeCloseTo(expected[index] ?? NaN, 9));
};

describe('the blank', () => {
  it('of a cylinder is a rectangle: leg, arc along the neutral line, leg and leverage', () => {
    const arc = (Math.PI / 2) * 41;
    const { outline, tangents, trims } = developBlank(blankOf(40));
    const corners = [
      [0, -30],
      [100, -30],
      [100, 0],
      [100, arc],
      [100, arc + 85],
      [0, arc + 85],
      [0, arc],
      [0, 0],
    ];
    expect(outline).toHaveLength(corners.length);
    outline.forEach(({ x, y, bulge }, index) => near([x, y, bulge], [...(corners[index] ?? []), 0]));
    const lines = [...tangents, ...trims].flat();
    const expected = [
      [0, -3],
      [100, -3],
      [0, arc],
      [100, arc],
      [0, arc + 60],
      [100, arc + 60],
    ];
    expect(lines).toHaveLength(expected.length);
    lines.forEach((point, index) => near(point, expected[index] ?? []));
    expect(developBlank(blankOf(40, { pull: { ...bend.pull, edge: 60, leverage: 0 } })).trims).toEqual([]);
    const { mass, width, height } = sizeBlank(blankOf(40));
    expect(width).toBeCloseTo(100, 9);
    expect(height).toBeCloseTo(115 + arc, 9);
    // 8,000 kg/m³, 2 mm thick.
    expect(mass).toBeCloseTo(100 * (115 + arc) * 2 * 8e-6, 12);
  });

  it('of a cone is a sector: the free tangent line turned by ψ·sin β about the apex, arcs round it', () => {
    // sin β = ½: cos β = √¾; the neutral line at A is at 40 + 1·cos β, its slant from the apex twice that.
    const slant = 2 * (40 + Math.sqrt(0.75));
    const turn = Math.PI / 4;
    const { outline } = developBlank(blankOf(90));
    const at = (from: number): readonly number[] => [
      -slant + (slant + from) * Math.cos(turn),
      (slant + from) * Math.sin(turn),
    ];
    const beyond = (from: number): readonly number[] => [
      (at(from)[0] ?? NaN) - 85 * Math.sin(turn),
      (at(from)[1] ?? NaN) + 85 * Math.cos(turn),
    ];
    const bulge = Math.tan(turn / 4);
    const corners = [
      [0, -30, 0],
      [100, -30, 0],
      [100, 0, bulge],
      [...at(100), 0],
      [...beyond(100), 0],
      [...beyond(0), 0],
      [...at(0), -bulge],
      [0, 0, 0],
    ];
    expect(outline).toHaveLength(corners.length);
    outline.forEach(({ x, y, bulge: arc }, index) => near([x, y, arc], corners[index] ?? []));
    // Two legs, and between them a quarter … ring of π/4: area = turn/2·((s + 100)² − s²).
    const area = 100 * 115 + (turn / 2) * ((slant + 100) ** 2 - slant ** 2);
    expect(sizeBlank(blankOf(90)).mass).toBeCloseTo(area * 2 * 8e-6, 9);
  });
});

describe('places on the bent sheet', () => {
  const surface = { cone: coneThrough(40, 90, 100), offset: 1 };
  const cosine = Math.sqrt(0.75);

  it('in space: along the centre line, aside, up; the surface square to its own offset', () => {
    near([startRadius(surface)], [40 + cosine]);
    near(toSpace(surface, { x: 20, wrap: 0 }), [20 * cosine - 0.5, 0, -(50 + cosine)]);
    near(toSpace(surface, { x: 0, wrap: Math.PI / 2 }), [-0.5, 40 + cosine, 0]);
  });

  it('flat and back again, at no wrap as well', () => {
    for (const place of [
      { x: 20, wrap: 0 },
      { x: 0, wrap: 1 },
      { x: 70, wrap: 1e-11 },
    ]) {
      const back = toBent(surface, toFlat(surface, place));
      near([back.x, back.wrap], [place.x, place.wrap]);
    }
    near(toFlat({ cone: coneThrough(40, 40, 100), offset: 1 }, { x: 20, wrap: 2 }), [20, 82]);
    const flat = toBent({ cone: coneThrough(40, 40, 100), offset: 1 }, [20, 82]);
    near([flat.x, flat.wrap], [20, 2]);
  });
});

describe('a station on the cone', () => {
  it('touches with its smaller face, cut to the radius there: tan β a mm along the centre line', () => {
    const grows = coneThrough(40, 90, 100);
    const tangent = 1 / Math.sqrt(3);
    expect(contactOf(grows, 10, 28).contact).toBe('A');
    near([contactOf(grows, 10, 28).radius, contactOf(grows, 10, 28).farRadius], [40 + 10 * tangent, 40 + 28 * tangent]);
    const falls = contactOf(coneThrough(90, 40, 100), 10, 28);
    expect(falls.contact).toBe('B');
    near([falls.radius, falls.farRadius], [90 - 28 * tangent, 90 - 10 * tangent]);
    expect(contactOf(coneThrough(50, 50, 100), 0, 18)).toEqual({ contact: 'A', radius: 50, farRadius: 50 });
  });
});
