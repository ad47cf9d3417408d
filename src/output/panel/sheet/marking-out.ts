import { at } from '../../../base/at';
import type { Vertex } from '../../../base/drawing';
import type { Point } from '../../../base/polygon';
import { bendLines, markedLines, type FlatLine } from '../../../drawing/panel/bend-lines';
import type { PanelBlank } from '../../../drawing/panel/blank';
import type { SeamLayout } from '../../../panel/seams/seam';
import { asCircle } from '../../../panel/trace/outline';
import { outlinePlaces, pieceFor, type MarkedPlace, type Piece } from './places';

/** A line to draw with a pencil: a letter that no other has, and what it is. */
export interface MarkedLine {
  readonly name: string;
  readonly what: 'base tangent' | 'leg tangent' | 'take-off' | 'nose';
  /** Number of its bend. */
  readonly bend: number;
  /** Of the tangent line the form stands on: how far behind it, toward the held edge, the line is drawn, mm; null for every other line. */
  readonly early: number | null;
  readonly ends: FlatLine;
}

/** A hole to drill: its middle and diameter, mm. */
export interface MarkedHole {
  readonly name: string;
  readonly at: Point;
  readonly diameter: number;
}

/** Everything there is to mark on a blank before it is cut, on the flat. */
export interface MarkingOut {
  readonly outline: readonly Vertex[];
  readonly piece: Piece;
  readonly places: readonly MarkedPlace[];
  readonly lines: readonly MarkedLine[];
  readonly roots: readonly MarkedHole[];
  /** Holes that the outline came with: round ones, and how many others there are. */
  readonly holes: readonly MarkedHole[];
  readonly otherHoles: number;
  readonly seams: readonly SeamLayout[];
  /** Lines to trim to once a bend is made. */
  readonly trims: readonly (readonly Vertex[])[];
}

/** What is marked on a blank, measured from the piece's lower left corner, the marked face up. */
export function markingOut({ panel, bends, trim, seams }: PanelBlank): MarkingOut {
  const outline = trim?.cut.vertices ?? panel.outline;
  const piece = pieceFor(outline);
  const lines = panel.bends.flatMap((bend, index): Omit<MarkedLine, 'name'>[] => {
    const made = at(bends, index);
    const lines = bendLines(bend, made);
    const [base, leg] = markedLines(lines, made.held);
    const early = made.pulled ? made.pulled.early : null;
    return [
      { what: 'base tangent', bend: index, early: made.held === 'base' ? early : null, ends: base },
      { what: 'leg tangent', bend: index, early: made.held === 'leg' ? early : null, ends: leg },
      ...(lines.takeOff ? [{ what: 'take-off', bend: index, early: null, ends: lines.takeOff } as const] : []),
      ...(lines.nose ? [{ what: 'nose', bend: index, early: null, ends: lines.nose } as const] : []),
    ];
  });
  const tangents = panel.bends.flatMap((bend, index) => {
    const { base, leg } = bendLines(bend, at(bends, index));
    return [...base, ...leg];
  });
  const round = panel.holes.flatMap((hole) => asCircle(hole) ?? []);
  return {
    outline,
    piece,
    places: outlinePlaces(outline, piece, tangents),
    lines: lines.map((line, index) => ({ ...line, name: letters(index) })),
    roots: panel.corners
      .flatMap(({ root }) => (root ? [root] : []))
      .map((root, index) => ({ name: `H${index + 1}`, ...root })),
    holes: round.map(({ x, y, radius }, index) => ({ name: `D${index + 1}`, at: [x, y], diameter: 2 * radius })),
    otherHoles: panel.holes.length - round.length,
    seams,
    trims: trim?.trim ?? [],
  };
}

/** a … z, then aa, ab …. */
function letters(index: number): string {
  const letter = String.fromCharCode('a'.charCodeAt(0) + (index % 26));
  return index < 26 ? letter : letters(Math.floor(index / 26) - 1) + letter;
}
