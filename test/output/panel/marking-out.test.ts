import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { distanceTo, sideBetween } from '../../../src/base/side';
import { sidesOf } from '../../../src/base/arc';
import { blankOf } from '../../../src/output/panel/panel-blank';
import type { BuildablePanel } from '../../../src/output/panel/plan-panel';
import { rowsOf } from '../../helpers/sheet-rows';
import { writeWorkSheet } from '../../../src/output/panel/sheet/work-sheet';
import { panelStarters, planPanelStarter, tables } from '../../helpers/starters';
import { apart, bent, INCH, lean, seenFrom, type Flat, type PrintedBend } from './by-hand';

/** The blank marked out and bent by what the order of work says in words and tables, as someone with a rule would: nothing else is read. */

/** All lengths in a cell, mm: `4.892 in (4-29/32), 5.285 in (5-9/32)` or `108.1 mm, 228.8 mm`. */
function lengths(cell: string): number[] {
  return [...cell.matchAll(/(-?\d+(?:\.\d+)?) (in|mm)/gu)].map(
    ([, value, unit]) => Number(value) * (unit === 'in' ? INCH : 1),
  );
}

function pair(cell: string): Flat {
  const [along, up] = lengths(cell);
  if (along === undefined || up === undefined) throw new Error(`no place in ${cell}`);
  return [along, up];
}

/** What is marked out does not hang on how the forms' pieces lie on their boards. */
const noBoards = { blanks: [], pieces: { forms: [], parts: [], blocks: [], boards: [] }, tables };

interface Printed {
  readonly places: readonly { readonly name: string; readonly flat: Flat; readonly then: string }[];
  readonly bends: readonly PrintedBend[];
}

function printed(planned: BuildablePanel): Printed {
  const sheet = writeWorkSheet(planned, noBoards);
  const lines = rowsOf(sheet, 'Lines to draw');
  const ends = (name: string, side: string): readonly [Flat, Flat] => {
    const row = lines.find(([, what = '']) => what.startsWith(`${name}: tangent line on the ${side}’s side`));
    if (!row) throw new Error(`no line ${name} ${side}`);
    return [pair(at(row, 2)), pair(at(row, 3))];
  };
  /** The line the form stands on is drawn beside the bend's own tangent line, and says by how much: what it is reckoned from is moved back by that. */
  const tangent = (name: string, side: string): readonly [Flat, Flat] => {
    const [from, to] = ends(name, side);
    const words = lines
      .map(([, what = '']) => what)
      .find((what) => what.startsWith(`${name}: tangent line on the ${side}`));
    const said = /, drawn (.*?) (ahead|back),/u.exec(words?.replaceAll('\u00a0', ' ') ?? '');
    if (!said) return [from, to];
    const by = at(lengths(at(said, 1)), 0) * (said[2] === 'ahead' ? -1 : 1);
    const [other] = ends(name, side === 'base' ? 'leg' : 'base');
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const size = Math.hypot(dx, dy) * Math.sign(dx * (other[1] - from[1]) - dy * (other[0] - from[0]));
    const moved = ([x, y]: Flat): Flat => [x - (by * dy) / size, y + (by * dx) / size];
    return [moved(from), moved(to)];
  };
  return {
    places: rowsOf(sheet, 'Outline').map(([name = '', along = '', up = '', then = '']) => ({
      name,
      flat: [at(lengths(along), 0), at(lengths(up), 0)],
      then,
    })),
    bends: rowsOf(sheet, 'Bends, as they are when let go').map(([name = '', angle = '', radii = '']): PrintedBend => {
      const [from, to] = pair(radii);
      return {
        name,
        angle: Number.parseFloat(angle),
        turn: angle.endsWith('down') ? 'down' : 'up',
        baseLine: tangent(name, 'base'),
        legLine: tangent(name, 'leg'),
        finished: { from, to },
      };
    }),
  };
}

describe.each(panelStarters)('%s, marked out by its order of work', (name) => {
  const planned = planPanelStarter(name);
  // What is cut: the panel with what is left on for the pull.
  const outline = planned.finish.trim?.cut.cut.vertices ?? planned.panel.outline;
  const { minX, minY } = outline.reduce(
    (box, { x, y }) => ({ minX: Math.min(box.minX, x), minY: Math.min(box.minY, y) }),
    { minX: Infinity, minY: Infinity },
  );
  const { places } = printed(planned);
  // Thousandths of an inch, or tenths of a mm.
  const rounding = planned.job.units === 'in' ? 0.0005 * INCH : 0.05;
  const onBlank = ({ flat: [along, up] }: { readonly flat: Flat }): { readonly x: number; readonly y: number } => ({
    x: along + minX,
    y: up + minY,
  });

  it('every printed place lies on the outline', () => {
    const sides = sidesOf(outline)
      .filter(([from, to]) => Math.hypot(from.x - to.x, from.y - to.y) > 1e-9)
      .map(([from, to]) => sideBetween(from, to));
    for (const place of places) {
      const off = Math.min(...sides.map((side) => distanceTo(side, onBlank(place))));
      expect(off, place.name).toBeLessThan(Math.SQRT2 * rounding + 0.01);
    }
  });

  it('every corner of the outline lies on what is printed: straight where it says so, near the chord where a curve is traced', () => {
    const chords = places.map((place, index) => {
      const next = at(places, (index + 1) % places.length);
      return {
        side: sideBetween({ ...onBlank(place), bulge: 0 }, onBlank(next)),
        play: place.then.startsWith('straight') ? 0.1 : 1.5,
      };
    });
    for (const corner of outline) {
      const over = Math.min(...chords.map(({ side, play }) => distanceTo(side, corner) - play));
      expect(over, `${corner.x} ${corner.y}`).toBeLessThan(Math.SQRT2 * rounding);
    }
  });

  it('says how it goes on to a place that is printed', () => {
    for (const [index, { then }] of places.entries()) {
      expect(then).toMatch(new RegExp(`to ${at(places, (index + 1) % places.length).name}(?:: |$)`, 'u'));
    }
  });
});

/** The leg's line from opposite end A of the base line: at the corner, here the end A of `long`, it is drawn on to the mitre. */
function asLongAsBase(bend: PrintedBend): PrintedBend {
  const [from, to] = bend.legLine;
  const [[a, b], drawn] = [bend.baseLine, Math.hypot(to[0] - from[0], to[1] - from[1])];
  const share = Math.hypot(b[0] - a[0], b[1] - a[1]) / drawn;
  if (bend.name !== 'long') return bend;
  const start: Flat = [to[0] - share * (to[0] - from[0]), to[1] - share * (to[1] - from[1])];
  return { ...bend, legLine: [start, to] };
}

describe('hood side, bent by its order of work', () => {
  const planned = planPanelStarter('hood-side');
  const sheet = writeWorkSheet(planned, noBoards);
  const { bends: drawn } = printed(planned);
  const bends = drawn.map(asLongAsBase);
  const thickness = at(lengths(/, (0\.\d+.in): twice/u.exec(sheet)?.[1]?.replace('\u00a0', ' ') ?? ''), 0);

  it('is of 18 gauge', () => {
    // Manufacturers' standard gauge for sheet steel: 0.0478 in.
    expect(thickness / INCH).toBeCloseTo(0.048, 3);
  });

  it('both legs stand square to the base', () => {
    expect(bends.map(({ name }) => name).sort()).toEqual(['long', 'short']);
    // Half a thousandth at either end of 9 in.
    for (const bend of bends) expect(Math.abs(lean(bend, thickness)), bend.name).toBeLessThan(5e-4);
  });

  const named = (name: string): PrintedBend =>
    at(
      bends.filter((bend) => bend.name === name),
      0,
    );
  const [long, short] = [named('long'), named('short')];
  const corner = long.baseLine[0];
  /** Thousandths of an inch, along and up, and again where the place is measured from. */
  const near = 0.002;

  /** The lines that legs are trimmed to, corner by corner, as one reads them row after row. */
  const trims = rowsOf(sheet, 'Trim and lap lines').reduce<Flat[][]>((lines, [what = '', from = '', to = '']) => {
    if (what.startsWith('trim to here')) return [...lines, [pair(from), pair(to)]];
    if (what === 'and on from there') return [...lines.slice(0, -1), [...at(lines, -1), pair(to)]];
    return lines;
  }, []);
  /** Where one of them has the rim's two ends, by the bend it belongs to: 2-1/2 in beyond its leg line. */
  const rimOf = (bend: PrintedBend): Flat[] => {
    const side = Math.sign(seenFrom(bend.baseLine, bend.legLine[0], 1)[1]);
    const beyond = (flat: Flat): number => seenFrom(bend.legLine, flat, side)[1] / INCH - 2.5;
    const away = ([x, y]: Flat): number => Math.hypot(x - corner[0], y - corner[1]);
    return trims
      .flatMap((line) => line.filter((flat) => Math.abs(beyond(flat)) < near))
      .sort((a, b) => away(a) - away(b));
  };

  it('the base is 22 in by 9 in, the rims 1/8 in apart at the corner once both legs are trimmed', () => {
    const size = ({ baseLine: [a, b] }: PrintedBend): number => Math.hypot(b[0] - a[0], b[1] - a[1]) / INCH;
    expect(size(long)).toBeCloseTo(22, 2);
    expect(size(short)).toBeCloseTo(9, 2);
    const rim = (bend: PrintedBend) => bent(bend, thickness, at(rimOf(bend), 0));
    expect(Math.abs(apart(rim(long), rim(short)) / INCH - 1 / 8)).toBeLessThan(0.003);
  });

  it.each(['long', 'short'])('%s is trimmed to a rim that stands as high as its radii make it', (name) => {
    const bend = named(name);
    const rim = rimOf(bend);
    expect(rim).toHaveLength(2);
    // Inside radii of the job, in: 1-1/4 at the corner to 1-3/4, 1-1/2. The flats of base and leg, and so the neutral surface's planes, meet in a line that
    // leaves the tangent lines by γ, tan γ = sin β·tan(ψ/2); a place d beyond the leg line stands (tan(ψ/2)·(R + t/2·cos β) + d)·cos γ above the base.
    const [small, large, length] = name === 'long' ? [1.25, 1.75, 22] : [1.25, 1.5, 9];
    const sine = (large - small) / length;
    const cosine = Math.sqrt(1 - sine * sine);
    const half = Math.asin(Math.SQRT1_2 / cosine);
    const level = Math.cos(Math.atan(sine * Math.tan(half)));
    // From the leg line's end away from the corner: toward it the line is drawn on to the mitre.
    const [start, end] = name === 'long' ? bend.legLine : [bend.legLine[1], bend.legLine[0]];
    for (const flat of rim) {
      const toward = length - seenFrom([end, start], flat, 1)[0] / INCH;
      const setback = Math.tan(half) * (small + sine * toward + ((thickness / INCH) * cosine) / 2);
      expect(bent(bend, thickness, flat)[2] / INCH).toBeCloseTo((setback + 2.5) * level, 2);
    }
  });

  it('the seam’s holes are marked on the middle of its lap, 5/8 in from top edge and ends, and the lap line is its lap in', () => {
    const [row] = rowsOf(sheet, 'Rows of holes along seams');
    const [on, count, first = '', last = '', apartBy = '', drill] = row ?? [];
    expect([on, count, drill]).toEqual(['top', '7', 'mark only']);
    // Along the long edge's base line from the corner, and up from it.
    const seen = (flat: Flat): number[] => seenFrom(long.baseLine, flat, 1).map((mm) => mm / INCH);
    const [along = NaN, up = NaN] = seen(pair(first));
    expect(Math.abs(along - (22 - 5 / 8))).toBeLessThan(near);
    expect(Math.abs(up - (9 - 5 / 8))).toBeLessThan(near);
    const [lastAlong = NaN, lastUp = NaN] = seen(pair(last));
    expect(Math.abs(lastAlong - 5 / 8)).toBeLessThan(near);
    expect(Math.abs(lastUp - (9 - 5 / 8))).toBeLessThan(near);
    expect(Math.abs(at(lengths(apartBy), 0) / INCH - (22 - 5 / 4) / 6)).toBeLessThan(near);
    const lap = rowsOf(sheet, 'Trim and lap lines').find(([what = '']) => what.startsWith('top: lap line'));
    for (const end of [1, 2])
      expect(Math.abs((seen(pair(at(lap ?? [], end)))[1] ?? NaN) - (9 - 5 / 4))).toBeLessThan(near);
  });
});

it('a place is numbered once, and every line has a letter of its own', () => {
  const planned = planPanelStarter('tray');
  const names = printed(planned).places.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(blankOf(planned).bends).toHaveLength(3);
  const letters = rowsOf(writeWorkSheet(planned, noBoards), 'Lines to draw').map(([letter]) => letter);
  // Both tangent lines, take-off and nose of three bends.
  expect(letters.join('')).toBe('abcdefghijkl');
});
