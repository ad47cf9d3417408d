import { at } from '../../../base/at';
import type { Vertex } from '../../../base/drawing';
import type { Point } from '../../../base/polygon';
import type { Panel } from '../../../panel';
import type { PanelBlank } from '../../../drawing/panel/blank';
import { html, type HtmlElement } from '../../html';
import type { Measures } from '../../shop-sheet/measures';
import { PENCIL } from '../../shop-sheet/flat-sheet';
import { paragraph, table } from '../../shop-sheet/pieces';
import { blankFigure, cornerFigure } from './blank-figure';
import { markingOut, type MarkedLine, type MarkingOut } from './marking-out';
import type { MarkedPlace } from './places';
import { sentences } from '../../sentences';

/** What to cut and to mark on the sheet, by numbers from one corner of a piece; `paths`: the drawings of the same. */
export function cutAndMark(
  blank: PanelBlank,
  {
    say,
    paths,
    pair,
    mass,
  }: { readonly say: Measures; readonly paths: readonly string[]; readonly pair: boolean; readonly mass: number },
): HtmlElement[] {
  const marks = markingOut(blank);
  const { piece } = marks;
  return [
    paragraph(
      sentences(
        `Cut a piece ${say.atLeast(piece.width)} × ${say.atLeast(piece.height)} at least, square at one corner; the blank weighs ${say.mass(mass)}.`,
        'Lay it with the face up that will be marked, the square corner at your left near you.',
        'Every place below is two distances: along the edge near you from that corner, then up from that edge.',
        `The same is drawn in ${paths.join(', ')}, at 1:1.`,
      ),
      ...(pair ? [' For the right panel measure from the square corner at your right: it is the mirror image.'] : []),
    ),
    html(
      'figure',
      {},
      blankFigure(marks, say),
      html(
        'figcaption',
        {},
        'The blank on its piece. Numbers: places of the outline. Letters: pencil lines; dashed where the sheet leaves the form when the pull is done, and where a yoke’s nose lies.',
      ),
    ),
    ...cornerDetails(marks),
    ...rootSteps(marks, say),
    outlineTable(marks, say),
    lineTable(marks, blank.panel, say),
    ...holeTables(marks, say),
    ...trimAndLapLines(marks, say),
    paragraph(
      `Pencil, not a scriber: a scribed line starts a crack. ${
        blank.panel.bends.some(({ turn }) => turn === 'down')
          ? 'Lines of bends that turn down go on the other face, carried round the edge. '
          : ''
      }Write A and B at the ends of each bend. Deburr every edge before you bend.`,
    ),
  ];
}

function cornerDetails(marks: MarkingOut): HtmlElement[] {
  if (marks.roots.length === 0) return [];
  return [
    html(
      'div',
      { class: 'beside' },
      ...marks.roots.map((root) =>
        html(
          'figure',
          {},
          cornerFigure(marks, root),
          html('figcaption', {}, `Enlarged: the corner round hole ${root.name}.`),
        ),
      ),
    ),
  ];
}

function rootSteps({ roots, piece }: MarkingOut, say: Measures): HtmlElement[] {
  if (roots.length === 0) return [];
  return [
    table(
      'Drill first: where the cuts of a corner end',
      ['Hole', 'along', 'up', 'drill'],
      roots.map(({ name, at: middle, diameter }) => {
        const { along, up } = piece.from(middle);
        return [name, say.length(along), say.length(up), say.tool(diameter)];
      }),
    ),
  ];
}

function holeTables({ holes, otherHoles, seams, piece }: MarkingOut, say: Measures): HtmlElement[] {
  const places = (place: Point): string => {
    const { along, up } = piece.from(place);
    return `${say.length(along)}, ${say.length(up)}`;
  };
  const rows = seams.flatMap(({ seam, rows: each, count, pitch }) =>
    each.map((row) => {
      const [first, last] = [at(row, 0), at(row, row.length - 1)];
      return [
        seam.on,
        String(count),
        places([first.x, first.y]),
        places([last.x, last.y]),
        say.length(pitch),
        seam.drill === 'now' ? seam.fastener.drill : 'mark only',
      ];
    }),
  );
  return [
    ...(holes.length > 0
      ? [
          table(
            'Holes of the outline',
            ['Hole', 'along, up', 'across'],
            holes.map(({ name, at: middle, diameter }) => [name, places(middle), say.length(diameter)]),
          ),
        ]
      : []),
    ...(otherHoles > 0 ? [paragraph(`Holes that are not round, ${otherHoles}: trace them from the drawing.`)] : []),
    ...(rows.length > 0
      ? [
          table(
            'Rows of holes along seams',
            ['On', 'holes', 'first: along, up', 'last: along, up', 'apart', 'drill'],
            rows,
          ),
        ]
      : []),
  ];
}

/** Corners nearer than this are one, as a pencil line is wide, mm. */
const WIDE = 0.3;
/** A line with more straight sides than this is a curve, to be traced. */
const MOST_SIDES = 6;

function trimAndLapLines({ trims, seams, piece }: MarkingOut, say: Measures): HtmlElement[] {
  const place = ({ x, y }: Vertex): string => {
    const { along, up } = piece.from([x, y]);
    return `${say.length(along)}, ${say.length(up)}`;
  };
  const rowsOf = (what: string, run: readonly Vertex[]): string[][] => {
    const corners = run.reduce<Vertex[]>((kept, corner) => {
      const last = kept.at(-1);
      return last && Math.hypot(corner.x - last.x, corner.y - last.y) < WIDE ? kept : [...kept, corner];
    }, []);
    const sides = corners.slice(1).map((to, index) => [at(corners, index), to] as const);
    if (sides.length > MOST_SIDES || sides.some(([{ bulge }]) => bulge !== 0))
      return [[`${what}, curved: trace it from the drawing`, place(at(run, 0)), place(at(run, -1))]];
    return sides.map(([from, to], index) => [index === 0 ? what : 'and on from there', place(from), place(to)]);
  };
  const rows = [
    ...trims.flatMap((run) => rowsOf('trim to here once the bend is made', run)),
    ...seams.flatMap(({ seam, lapLine }) => rowsOf(`${seam.on}: lap line, where the other panel’s edge lies`, lapLine)),
  ];
  return rows.length > 0 ? [table('Trim and lap lines', ['what', 'from: along, up', 'to: along, up'], rows)] : [];
}

function outlineTable({ places }: MarkingOut, say: Measures): HtmlElement {
  return table(
    'Outline: cut from place to place',
    ['Place', 'along', 'up', 'on to the next'],
    places.map((place, index) => [
      place.name,
      say.length(place.along),
      say.length(place.up),
      onward(place, at(places, (index + 1) % places.length), say),
    ]),
  );
}

function onward({ then }: MarkedPlace, next: MarkedPlace, say: Measures): string {
  switch (then.kind) {
    case 'straight':
      return `straight to ${next.name}`;
    case 'arc':
      return `arc of radius ${say.length(then.radius)} to ${next.name}`;
    case 'curve':
      return `curve to ${next.name}: trace it from the drawing`;
  }
}

function lineTable({ lines, piece }: MarkingOut, panel: Panel, say: Measures): HtmlElement {
  const place = (ends: MarkedLine['ends'][number]): string => {
    const { along, up } = piece.from(ends);
    return `${say.length(along)}, ${say.length(up)}`;
  };
  return table(
    'Lines to draw',
    ['Line', 'what', 'at A: along, up', 'at B: along, up'],
    lines.map(({ name, what, bend, early, ends }) => [
      name,
      `${at(panel.bends, bend).name}: ${LINE[what]}${early === null ? '' : standWords(early, say)}`,
      place(ends[0]),
      place(ends[1]),
    ]),
  );
}

const LINE = {
  'base tangent': 'tangent line on the base’s side',
  'leg tangent': 'tangent line on the leg’s side',
  'take-off': 'the sheet leaves the form here',
  nose: 'the yoke’s nose lies here',
} as const;

/** Beside the tangent line that the form stands on: how far off it the line is drawn, since the legs bend beyond the form too. */
function standWords(early: number, say: Measures): string {
  if (Math.abs(early) < PENCIL) return ', the form stands here';
  const way = early > 0 ? 'back, toward the held edge' : 'ahead, toward the pulled side';
  return `, drawn ${say.length(Math.abs(early))} ${way}, where the bend really starts: the form stands here`;
}
