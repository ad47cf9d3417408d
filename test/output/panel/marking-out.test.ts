import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { distanceTo, sideBetween } from '../../../src/base/side';
import { sidesOf } from '../../../src/base/arc';
import { blankOf } from '../../../src/output/panel/panel-blank';
import type { BuildablePanel } from '../../../src/output/panel/plan-panel';
import { rowsOf } from '../../helpers/sheet-rows';
import { writeWorkSheet } from '../../../src/output/panel/sheet/work-sheet';
import { panelStarters, planPanelStarter, tables } from '../../helpers/starters';
import { apart, bent, INCH, lean, rimCorner, type Flat, type PrintedBend } from './by-hand';

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
const noBoards = { blanks: [], pieces: { forms: [], parts: [], boards: [] }, tables };

interface Printed {
  readonly places: readonly { readonly name: string; readonly flat: Flat; readonly then: string }[];
  readonly bends: readonly PrintedBend[];
}

function printed(planned: BuildablePanel): Printed {
  const sheet = writeWorkSheet(planned, noBoards);
  const lines = rowsOf(sheet, 'Lines to draw');
  const ends = (name: string, side: string): readonly [Flat, Flat] => {
    const row = lines.find(([, what]) => what === `${name}: tangent line on the ${side}’s side`);
    if (!row) throw new Error(`no line ${name} ${side}`);
    return [pair(at(row, 2)), pair(at(row, 3))];
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
        baseLine: ends(name, 'base'),
        legLine: ends(name, 'leg'),
        finished: { from, to },
      };
    }),
  };
}

describe.each(panelStarters)('%s, marked out by its order of work', (name) => {
  const planned = planPanelStarter(name);
  const { outline } = planned.panel;
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
  const { places, bends: drawn } = printed(planned);
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

  it('the base is 22 in by 9 in, the rims 1/8 in apart at the corner', () => {
    const [long, short] = ['long', 'short'].map((name) =>
      at(
        bends.filter((bend) => bend.name === name),
        0,
      ),
    );
    if (!long || !short) throw new Error('two bends');
    const size = ({ baseLine: [a, b] }: PrintedBend): number => Math.hypot(b[0] - a[0], b[1] - a[1]) / INCH;
    expect(size(long)).toBeCloseTo(22, 2);
    expect(size(short)).toBeCloseTo(9, 2);
    const corner = long.baseLine[0];
    const rim = (bend: PrintedBend) =>
      bent(
        bend,
        thickness,
        rimCorner(
          bend,
          places.map(({ flat }) => flat),
          { wide: 2.5 * INCH, corner, within: 0.05 },
        ),
      );
    expect(Math.abs(apart(rim(long), rim(short)) / INCH - 1 / 8)).toBeLessThan(0.003);
  });
});

it('a place is numbered once, and every line has a letter of its own', () => {
  const planned = planPanelStarter('tray');
  const names = printed(planned).places.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(blankOf(planned).bends).toHaveLength(3);
  const letters = rowsOf(writeWorkSheet(planned, noBoards), 'Lines to draw').map(([letter]) => letter);
  expect(letters).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i']);
});
