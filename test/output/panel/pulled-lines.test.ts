import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import type { Line, Shape, Text } from '../../../src/base/drawing';
import type { Point } from '../../../src/base/polygon';
import { noseLines } from '../../../src/design/pull/nose-lines';
import { bendLines } from '../../../src/drawing/panel/bend-lines';
import { drawPanelBlank } from '../../../src/drawing/panel/blank';
import { textWidth } from '../../../src/drawing/parts/shapes';
import { blankOf } from '../../../src/output/panel/panel-blank';
import { stepWords } from '../../../src/output/panel/step-words';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { panelStarters, planPanelStarter } from '../../helpers/starters';

/** Distance of a place from an endless line, mm; positive on the side of `inside`. */
function beyond([from, to]: readonly [Point, Point], [x, y]: Point, inside: Point): number {
  const off = ([u, v]: Point): number =>
    ((to[0] - from[0]) * (v - from[1]) - (to[1] - from[1]) * (u - from[0])) /
    Math.hypot(to[0] - from[0], to[1] - from[1]);
  return off([x, y]) * Math.sign(off(inside));
}

const middle = ([a, b]: readonly [Point, Point]): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** The drawn line, dashed or not, that a text of these words stands beside, from its first end to its last. */
function namedLines(shapes: readonly Shape[], words: string): (readonly [Point, Point])[] {
  const texts = shapes.filter((shape): shape is Text => shape.kind === 'text' && shape.text === words);
  const lines = shapes.filter((shape): shape is Line => shape.kind === 'line');
  const off = ({ x, y }: Text, { from, to }: Line): number => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const share = Math.max(0, Math.min(1, ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(x - from[0] - share * dx, y - from[1] - share * dy);
  };
  return texts.map((text) => {
    // Beside it and along it: middles' ticks stand square to what they are on.
    const level = lines.filter(
      ({ from, to }) => Math.abs(Math.sin(Math.atan2(to[1] - from[1], to[0] - from[0]) - text.angle)) < 1e-6,
    );
    const near = level.reduce((best, line) => (off(text, line) < off(text, best) ? line : best));
    const way = ([x, y]: Point): number => x * Math.cos(text.angle) + y * Math.sin(text.angle);
    const on = level
      .filter(({ from, to }) =>
        [from, to].every((end) => Math.abs(beyond([near.from, near.to], end, [text.x, text.y])) < 1e-6),
      )
      .flatMap(({ from, to }) => [from, to])
      .sort((a, b) => way(a) - way(b));
    return [at(on, 0), at(on, -1)];
  });
}

/** The lines of the pull, taken from the panel's blank as it is drawn, and held against each bend's plan. */
/** The corners of the room a text takes, its foot's middle being where it stands. */
function roomOf({ x, y, height, angle, text }: Text): Point[] {
  const half = textWidth(text, height) / 2;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const corners = [
    [-half, 0],
    [half, 0],
    [half, height],
    [-half, height],
  ] as const;
  return corners.map(([u, v]): Point => [x + u * cosine - v * sine, y + u * sine + v * cosine]);
}

/** Two rectangles lie apart where one of their sides' directions parts them. */
function apart(a: readonly Point[], b: readonly Point[]): boolean {
  return [a, b].some((one) =>
    [0, 1].some((side) => {
      const [from, to] = [at(one, side), at(one, side + 1)];
      const out = ([x, y]: Point): number => x * (to[1] - from[1]) - y * (to[0] - from[0]);
      const [outA, outB] = [a.map(out), b.map(out)];
      return Math.max(...outA) < Math.min(...outB) || Math.max(...outB) < Math.min(...outA);
    }),
  );
}

describe.each(panelStarters)('the words on the blank of %s', (name) => {
  it.each(['marked', 'other'] as const)('do not lie on one another on its %s face', (face) => {
    const shapes = drawPanelBlank(blankOf(planPanelStarter(name)), { hand: null, face, units: 'mm' });
    const texts = shapes.filter((shape): shape is Text => shape.kind === 'text');
    const clashes = texts.flatMap((one, index) =>
      texts
        .slice(index + 1)
        .filter((other) => !apart(roomOf(one), roomOf(other)))
        .map((other) => [one.text, other.text]),
    );
    expect(texts.length).toBeGreaterThan(2);
    expect(clashes).toEqual([]);
  });
});

describe.each(panelStarters)('the blank of %s', (name) => {
  const planned = planPanelStarter(name);
  const blank = blankOf(planned);
  const faces = (['marked', 'other'] as const).map((face) => ({
    face,
    shapes: drawPanelBlank(blank, { hand: null, face, units: 'mm' }),
  }));
  const words = stepWords(planned, measuresIn('mm'));

  it.each(planned.bends.map((made) => [made.bend.name, made] as const))('%s', (bendName, { bend, step, alone }) => {
    const { pull, form, neutral, section, wrap } = alone.bend;
    // The other face is drawn turned over: its bends are looked at as if their lines were on the marked one.
    const index = planned.panel.bends.indexOf(bend);
    const onFace = at(faces, bend.turn === 'up' ? 0 : 1).shapes;
    const xs = planned.finish.trim?.cut.cut.vertices ?? planned.panel.outline;
    const sum = Math.min(...xs.map(({ x }) => x)) + Math.max(...xs.map(({ x }) => x));
    const unturned = ([x, y]: Point): Point => (bend.turn === 'up' ? [x, y] : [sum - x, y]);
    const plain = bendLines(bend, { held: step.held, pulled: null });
    const [held, free] = step.held === 'base' ? [plain.base, plain.leg] : [plain.leg, plain.base];
    const inside = middle(free);
    const stands = namedLines(onFace, 'FORM STANDS HERE').map(([from, to]) => [unturned(from), unturned(to)] as const);
    const stand = stands.reduce((near, line) =>
      Math.abs(beyond(held, middle(line), inside)) < Math.abs(beyond(held, middle(near), inside)) ? line : near,
    );

    // Where the bend starts: as far behind its own tangent line as the plan says, at both ends.
    for (const place of stand) expect(beyond(held, place, inside)).toBeCloseTo(-pull.early, 9);
    const early = Math.abs(pull.early).toFixed(1);
    const said = at(
      words.filter((one) => one.bend === bendName),
      0,
    ).sentences.join(' ');
    if (Math.abs(pull.early) >= 0.05)
      expect(said).toContain(`FORM STANDS HERE, ${early} mm`.replace(' mm', '\u00a0mm'));

    // The take-off, along the neutral line from there.
    const along = (x: number): number =>
      wrap.chosen *
      (form.radiusA + x * Math.sin(form.halfAngle) + neutral * section.thickness * Math.cos(form.halfAngle));
    const drawn = bendLines(bend, at(blank.bends, index));
    const [endA, endB] = drawn.takeOff ?? [];
    if (!endA || !endB) throw new Error('no take-off line');
    const fan = wrap.chosen * Math.sin(form.halfAngle);
    const chord = fan === 0 ? 1 : Math.sin(fan) / fan;
    for (const place of [endA, endB]) {
      const off = beyond(stand, place, inside);
      expect(off).toBeGreaterThan(Math.min(along(-20), along(form.length + 20)) * chord - 1e-6);
      expect(off).toBeLessThan(Math.max(along(-20), along(form.length + 20)) + 1e-6);
    }

    // A yoke's nose: its gap beyond the take-off, square to it, and as far from where the form stands as the words say.
    const noses = namedLines(onFace, 'YOKE NOSE').map(([from, to]) => [unturned(from), unturned(to)] as const);
    const { yoke } = pull;
    expect(drawn.nose === null).toBe(yoke === null);
    if (!yoke) return;
    const nose = noses.reduce((near, line) =>
      Math.abs(Math.abs(beyond([endA, endB], middle(line), inside)) - yoke.gap) <
      Math.abs(Math.abs(beyond([endA, endB], middle(near), inside)) - yoke.gap)
        ? line
        : near,
    );
    for (const place of nose) expect(Math.abs(beyond([endA, endB], place, held[0]))).toBeCloseTo(yoke.gap, 9);
    const from = noseLines(alone.bend);
    // Read from left to right the line may run from B to A.
    const ahead = (nose[1][0] - nose[0][0]) * (endB[0] - endA[0]) + (nose[1][1] - nose[0][1]) * (endB[1] - endA[1]);
    const farBy = (ahead > 0 ? nose : [nose[1], nose[0]]).map((place) => beyond(stand, place, inside));
    // A ruling's ends lie as far out as the neutral line is long, but for the fan between the two.
    expect(Math.abs(at(farBy, 0) - from.A)).toBeLessThan(0.7);
    expect(Math.abs(at(farBy, 1) - from.B)).toBeLessThan(0.7);
    expect(said).toMatch(/nose along the line YOKE NOSE, [\d.]+/u);
  });
});
