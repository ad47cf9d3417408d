import { at } from '../../base/at';
import { radiusAtCentre } from '../../base/cone';
import type { Point } from '../../base/polygon';
import type { BendPlan, Yoke } from '../../design/bend/bend-plan';
import type { FixtureLayout } from '../../design/fixture/fixture';
import { heldAtClamps } from '../../design/fixture/held-at-clamps';
import { plankFor, type Plank } from '../../design/fixture/plank';
import { throatFor } from '../../design/fixture/throat';
import { wedgeTop } from '../../design/pull/nose';
import { handlePlaces, yokeFrom } from '../../design/pull/yoke-parts';
import { onBench } from './frame';
import { prism, type Body, type BodyKind } from './solid';
import type { ShopRules } from '../../tables/tables';
import type { Point3 } from './vector';
import { onLeg, type SheetState } from './wrapped-sheet';

/** What the form is held and the leg is pulled with, and what is shown of it. */
export interface Tackle {
  /** Under form and held leg; null where they stand on the bench. */
  readonly plank: Plank | null;
  /** How far in the clamps reach, mm; null to leave them out. */
  readonly throat: number | null;
}

/** All that belongs to the bend's set-up. */
export function tackleOf(bend: BendPlan, layout: FixtureLayout, rules: ShopRules): Tackle {
  const plank = plankFor(bend, layout, rules);
  return { plank, throat: throatFor(layout, heldAtClamps(layout, bend), plank).reach };
}

/** From one corner of a box to the other. */
type Span = readonly [number, number];

/** A clamp's bar and arms, a diagram of one: mm. */
const BAR = { wide: 8, deep: 22, below: 40 } as const;
/** How far a clamp's upper arm comes out in front of the spine. */
const NOSE = 6;

/** Yoke (while the sheet is pulled), plank and clamps, on the bench as the picture has it. */
export function buildTackle(
  layout: FixtureLayout,
  bend: BendPlan,
  state: SheetState,
  { plank, throat }: Tackle,
): Body[] {
  const { yoke } = bend.pull;
  const pulled = state.kind === 'on-form';
  return [
    ...(plank ? [plankBody(plank, layout, bend)] : []),
    ...(yoke && pulled ? yokeBodies(bend, state, yoke) : []),
    ...(throat !== null && pulled ? clampBodies(layout, bend, { plank, throat }) : []),
  ];
}

function plankBody({ thickness, length, ahead, behind }: Plank, { spine }: FixtureLayout, bend: BendPlan): Body {
  const top = -bend.section.thickness;
  const place = (along: number, forward: number, up: number): Point3 => [along, forward, up];
  return box('plank', 'plank', place, [
    [-spine.ears, length - spine.ears],
    [-behind, ahead],
    [top - thickness, top],
  ]);
}

/** A steel angle on the inside face, its far flange up; the outer member and its handles under the outside one. */
function yokeBodies(bend: BendPlan, state: SheetState, yoke: Yoke): Body[] {
  const { nose, outer, handle, gap } = yoke;
  const place = onLeg(bend, state);
  const under = -bend.section.thickness;
  const from = yokeFrom(bend);
  const along: Span = [from, from + yoke.length];
  const low = under - outer.depth;
  return [
    ...handlePlaces(yoke).map((middle) =>
      box('yoke', 'handle', place, [
        [from + middle - handle.width / 2, from + middle + handle.width / 2],
        [gap, bend.pull.lever + gap],
        [low - handle.depth, low],
      ]),
    ),
    box('yoke', 'outer member', place, [along, [gap, gap + outer.width], [low, under]]),
    flange(yoke, place, along),
    box('yoke', 'nose', place, [
      along,
      [gap + nose.width - nose.thickness, gap + nose.width],
      [nose.thickness, nose.depth],
    ]),
  ];
}

/** Each reaching in from behind: its bar, and its arm to the lower edge of a hole or over an ear. */
function clampBodies(layout: FixtureLayout, bend: BendPlan, { plank, throat }: Tackle): Body[] {
  const { spine } = layout;
  const ends = spine.ears > 0 ? [-spine.ears / 2, spine.length + spine.ears / 2] : [];
  const bears = [
    ...layout.clampHoles.map((hole) => ({ at: hole.at, up: -hole.diameter / 2, through: true })),
    ...ends.map((end) => ({ at: end, up: radiusAtCentre(bend.form, end), through: false })),
  ];
  const bench = -bend.section.thickness - (plank?.thickness ?? 0) - BAR.below;
  return bears.flatMap(({ at: along, up, through }, index) => {
    const name = `clamp ${through ? `C${index + 1}` : index - layout.clampHoles.length === 0 ? 'ear A' : 'ear B'}`;
    const [x, , z] = onBench(bend.form, { along, ahead: 0, up });
    const place = (off: number, ahead: number, high: number): Point3 => [x + off, ahead, high];
    const across: Span = [-BAR.wide / 2, BAR.wide / 2];
    const rear = -Math.max(throat ?? 0, spine.thickness);
    const arm: Span = [z, z + BAR.wide];
    return [
      box('clamp', name, place, [across, [rear - BAR.deep, rear], [bench, z + BAR.wide]]),
      box('clamp', name, place, [across, [rear, through ? -spine.thickness : NOSE], arm]),
      ...(through ? [box('clamp', name, place, [across, [0, NOSE], arm])] : []),
    ];
  });
}

/** The nose's flange on the sheet, a wedge toward the form. */
function flange(
  { nose, wedge, gap }: Yoke,
  place: (along: number, out: number, up: number) => Point3,
  along: Span,
): Body {
  const section: Point[] = [...wedgeTop(nose, wedge), [nose.width, nose.thickness], [nose.width, 0], [0, 0]];
  const face = (x: number): Point3[] => section.map(([out, up]) => place(x, gap + out, up));
  return prism('yoke', 'nose', [face(at(along, 0)), face(at(along, 1))]);
}

/** A box by what it spans along, out and up, placed by a rigid rule. */
function box(
  kind: BodyKind,
  name: string,
  place: (along: number, out: number, up: number) => Point3,
  [along, out, up]: readonly [Span, Span, Span],
): Body {
  const face = (height: number): Point3[] => [
    place(at(along, 0), at(out, 0), height),
    place(at(along, 1), at(out, 0), height),
    place(at(along, 1), at(out, 1), height),
    place(at(along, 0), at(out, 1), height),
  ];
  return prism(kind, name, [face(at(up, 0)), face(at(up, 1))]);
}
