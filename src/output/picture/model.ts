import { centreLength, radiusAtCentre } from '../../base/cone';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { Joints } from '../../design/joints/joints';
import { onBench } from './frame';
import { CURVE_FACETS, moveBody, type Body } from './solid';
import type { Point3 } from './vector';
import { buildWood } from './wood';
import { buildSheet, formShift, freeLegPoint, handPoint, pulledBy, type SheetState } from './wrapped-sheet';
import { buildTackle, type Tackle } from './tackle';

/** A word that belongs to a place of the model. */
export interface Tag {
  readonly kind: 'end' | 'station' | 'backing' | 'foot' | 'clamp' | 'held leg' | 'free leg';
  readonly text: string;
  readonly at: Point3;
}

/**
 * The assembled form with the sheet on it, in mm: x along the tangent line from end A, y ahead of the spine, z up from the
 * sheet's inside face. No projection, no colours: the shop sheet and the page both draw from this.
 */
export interface Model {
  readonly bodies: readonly Body[];
  readonly tags: readonly Tag[];
  /** How far the flat facets of a curve stray from it at most, mm. */
  readonly chordError: number;
  /** How far below the inside of the flat sheet the bench is: the sheet and, under a yoke, the plank. */
  readonly bench: number;
  /** The way of the hands from flat to the chosen wrap, at the middle of the free leg's edge. */
  readonly pull: readonly Point3[];
}

const PULL_STEPS = 60;
/** How far past the ends their letters stand, mm. */
const END_TAG = 22;

/** What stands on the bench besides boards and sheet, and the stations layer by layer. */
export interface Standing {
  /** Stations step layer by layer and tabs show on the spine's back. */
  readonly joints?: Joints | null;
  /** Yoke, plank and clamps; none where not given. */
  readonly tackle?: Tackle | null;
}

/**
 * Layout and bend → the model, with the sheet at `state`, or without it where `state` is null. Where the held leg has bent up behind the
 * form, once the sheet is let go, the form is shifted by as much as the bend.
 */
export function buildModel(
  layout: FixtureLayout,
  bend: BendPlan,
  state: SheetState | null,
  { joints = null, tackle = null }: Standing = {},
): Model {
  const largest = Math.max(bend.finished.radiusA, bend.finished.radiusB, bend.form.radiusA, bend.form.radiusB);
  const wood = buildWood(layout, bend, joints);
  const tags = buildTags(layout, bend);
  const up = state?.kind === 'released' ? formShift(bend, state) : null;
  return {
    bodies: [
      ...(up ? wood.map((body) => moveBody(body, up)) : wood),
      ...(state && tackle ? buildTackle(layout, bend, state, tackle) : []),
      ...(state ? buildSheet(bend, state) : []),
    ],
    tags: [...(up ? tags.map((tag) => ({ ...tag, at: up(tag.at) })) : tags), ...(state ? legTags(bend, state) : [])],
    chordError: largest * (1 - Math.cos(Math.PI / CURVE_FACETS / 2)),
    bench: bend.section.thickness + (tackle?.plank?.thickness ?? 0),
    pull: pullPath(bend),
  };
}

function pullPath(bend: BendPlan): Point3[] {
  return Array.from({ length: PULL_STEPS + 1 }, (_, index) =>
    handPoint(bend, pulledBy(bend, index / PULL_STEPS), bend.length / 2),
  );
}

function buildTags(layout: FixtureLayout, bend: BendPlan): Tag[] {
  const { thickness } = layout.spine;
  const place = (along: number, ahead: number, up: number): Point3 => onBench(bend.form, { along, ahead, up });
  const top = (along: number): number => radiusAtCentre(bend.form, along);
  const length = centreLength(bend.form);
  const beyond = (at: number): number => layout.spine.ears + END_TAG + top(at) / 2;
  return [
    { kind: 'end', text: 'A', at: place(-beyond(0), -thickness / 2, 0) },
    { kind: 'end', text: 'B', at: place(length + beyond(length), -thickness / 2, 0) },
    ...layout.stations.map(({ name, at }): Tag => ({ kind: 'station', text: name, at: place(at, 0, top(at)) })),
    ...layout.backings.map(({ name, at, depth, width }): Tag => ({
      kind: 'backing',
      text: name,
      at: place(at, -thickness - depth * 0.6, width / 2),
    })),
    ...layout.backings.map(({ at, depth, width }): Tag => ({
      kind: 'foot',
      text: 'foot',
      at: place(at, -thickness - depth, -width / 2),
    })),
    ...layout.clampHoles.map(({ at, diameter }, index): Tag => ({
      kind: 'clamp',
      text: `C${index + 1}`,
      at: place(at, -thickness / 2, diameter / 2),
    })),
  ];
}

/** The held leg, mostly under the wood, is named at both its ends, of which one is in sight; the free leg aside from the pull and clear of the stations. */
function legTags(bend: BendPlan, state: SheetState): Tag[] {
  const { length, legs } = bend;
  return [
    ...[0, length].map((x): Tag => ({ kind: 'held leg', text: 'held leg', at: [x, -0.75 * legs.held, 0] })),
    { kind: 'free leg', text: 'free leg', at: freeLegPoint(bend, state, 0.28 * length, 0.7 * legs.free) },
  ];
}
