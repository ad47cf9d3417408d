import { at } from '../../base/at';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { movedBy, stay, type Place3 } from '../../base/space';
import { foldPanel, frameMotion, zoneEnds, zonePlace, type Folded, type Panel } from '../../panel';
import { drawIsometric, type Picture } from '../picture/isometric';
import { CURVE_FACETS, type Body, type Edge, type Face } from '../picture/solid';
import { normalOf } from '../picture/vector';

/** Chords may stray so far from the outlines in a picture, mm. */
export const PICTURE_STRAY = 0.5;

/** The panel with some of its bends made, from above the marked face, as large as fits (mm on paper). */
export function drawPanel(
  panel: Panel,
  made: readonly boolean[],
  room: { readonly width: number; readonly height: number },
): Picture {
  const folded = foldPanel(
    panel,
    panel.bends.map(({ finished, wrap }, index) => ({ cone: finished, wrap: made[index] === true ? wrap : 0 })),
  );
  const bodies = panelBodies(panel, folded, { made, carry: (place) => place });
  return drawIsometric(
    { bodies, tags: [], chordError: PICTURE_STRAY, bench: 0, pull: [] },
    { ...room, end: 'B', face: 'back', tags: [], arrow: null },
  );
}

/** What has been bent, and where the panel stands. */
export interface Carried {
  readonly made: readonly boolean[];
  readonly carry: (place: Place3) => Place3;
}

/** The pieces of a folded panel: its faces, and its bends flat or in facets. */
export function panelBodies(panel: Panel, folded: Folded, { made, carry }: Carried): Body[] {
  return [
    ...panel.faces.map((face, index) =>
      piece(
        face.name,
        flat(face.outline, (place) => carry(movedBy(at(folded.motions, index), place))),
      ),
    ),
    ...panel.bends.flatMap((_, index) => zoneBodies(panel, folded, { index, made: made[index] === true, carry })),
  ];
}

function zoneBodies(
  panel: Panel,
  { motions }: Folded,
  { index, made, carry }: { readonly index: number; readonly made: boolean; readonly carry: Carried['carry'] },
): Body[] {
  const bend = at(panel.bends, index);
  const home = motions[bend.base] ?? stay;
  if (!made)
    return [
      piece(
        bend.name,
        flat(bend.zone, (place) => carry(movedBy(home, place))),
      ),
    ];
  const frame = frameMotion(bend);
  const ends = zoneEnds(bend);
  const ruling = (wrap: number): readonly [Place3, Place3] => {
    const [from, to] = ends(wrap);
    const place = (x: number): Place3 =>
      carry(movedBy(home, movedBy(frame, zonePlace(bend.finished, bend.thickness, { x, wrap, inward: 0 }))));
    return [place(from), place(to)];
  };
  const count = CURVE_FACETS / 2;
  const rulings = Array.from({ length: count + 1 }, (_, step) => ruling((bend.wrap * step) / count));
  const outlines = rulings.slice(1).map(([c, d], step): Place3[] => {
    const [a, b] = at(rulings, step);
    return [a, b, d, c];
  });
  const normals = outlines.map(normalOf);
  return outlines.map((outline, step) => {
    const [before, after]: [Edge, Edge] = [normals[step - 1] ?? 'sharp', normals[step + 1] ?? 'sharp'];
    return piece(bend.name, outline, [before, 'sharp', after, 'sharp']);
  });
}

function flat(outline: readonly Vertex[], carry: (place: Place3) => Place3): Place3[] {
  return flattenLoop(outline, PICTURE_STRAY).map(([x, y]) => carry([x, y, 0]));
}

function piece(name: string, outline: readonly Place3[], edges?: readonly Edge[]): Body {
  const face: Face = {
    outline,
    normal: normalOf(outline),
    edges: edges ?? outline.map(() => 'sharp' as const),
    marks: [],
  };
  return { kind: 'sheet', name, open: true, faces: [face] };
}
