import { at } from '../../base/at';
import { developBlank } from '../../design/form/blank';
import type { Point } from '../../base/polygon';
import { html, type HtmlElement } from '../html';
import { paragraph, table } from './pieces';
import type { Shop } from './shop';
import { sentences } from '../sentences';

/** Corners of the flat sheet and the lines to mark on it, measured from the held leg's edge and its corner at A. */
export function flatSheet({ bend, say, ofPanel }: Shop): HtmlElement[] {
  if (ofPanel)
    return [
      paragraph(
        sentences(
          'This form bends one edge of a panel.',
          'What to cut, the lines to mark and the order of the bends stand in order-of-work.html; the blank is drawn in “blank”, and at 1:1 for paper in the panel’s templates.pdf.',
        ),
      ),
    ];
  const { outline, tangents, trims } = developBlank(bend);
  const { held } = bend.legs;
  const corners = outline.map(({ x, y }): Point => [x, y + held]);
  const corner = (index: number): Point => at(corners, index);
  const up = ([x, y]: Point): Point => [x, y + held];
  const [ofHeld, ofFree] = [at(tangents, 0), at(tangents, 1)];
  const rows: (readonly [string, Point, Point])[] = [
    ['edge of the held leg', corner(0), corner(1)],
    ['mark of the held leg’s tangent line: the form’s edge stands here', up(ofHeld[0]), up(ofHeld[1])],
    ['tangent line of the free leg: bent to here', up(ofFree[0]), up(ofFree[1])],
    ...trims.map(([a, b]): readonly [string, Point, Point] => ['trim line, after bending', up(a), up(b)]),
    ['edge of the free leg, leverage included', corner(5), corner(4)],
  ];
  const place = ([x, y]: Point): string => `${say.length(x)}, ${say.length(y)}`;
  const widths = corners.map(([x]) => x);
  const heights = corners.map(([, y]) => y);
  const size = (values: number[]): string => say.atLeast(Math.max(...values) - Math.min(...values));
  return [
    paragraph(
      `Cut from a piece of at least ${size(widths)} × ${size(heights)}. Lay the edge of the held leg along the bottom, end A on the left, the face that will be inside the bend up. `,
      'Each place is given as two distances: along the held leg’s edge from its corner at A (minus: beyond it), then up from that edge.',
    ),
    table(
      'Flat sheet: lines and where they end',
      ['Line', 'At A: along, up', 'At B: along, up'],
      rows.map(([name, a, b]) => [name, place(a), place(b)]),
    ),
    ...earlyWords({ bend, say }),
    paragraph(
      `Between the two tangent lines the sheet is bent: ${say.length(bend.allowance.A)} of arc at A, ${say.length(bend.allowance.B)} at B.`,
      ...(bend.fan === 0
        ? [' The two lines are parallel.']
        : [
            ` The two lines open by ${say.angle(Math.abs(bend.fan))} toward end ${bend.fan > 0 ? 'B' : 'A'}; the short edges between them are slight arcs, within what a file takes off.`,
          ]),
    ),
    html('p', {}, 'For the other hand mark the mirror image: end A on the right.'),
  ];
}

/** Finer than this no pencil line is, mm. */
export const PENCIL = 0.05;

/** Why the held leg's mark is not on the bend's own tangent line, where it is not. */
function earlyWords({ bend: { pull, legs }, say }: Pick<Shop, 'bend' | 'say'>): HtmlElement[] {
  if (Math.abs(pull.early) < PENCIL) return [];
  const way = pull.early > 0 ? 'early, behind' : 'late, ahead of';
  return [
    paragraph(
      sentences(
        `The legs bend a little beyond the form too, so the bend starts ${say.length(Math.abs(pull.early))} ${way} the tangent line it is reckoned from (${say.length(legs.held)} from the held edge): the held leg’s mark is moved by that much, and the form stands on it.`,
        'The finished legs come out as asked.',
      ),
    ),
  ];
}
