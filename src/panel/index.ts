/**
 * The whole panel: several bends on one outline, worked out flat and in space. Pure geometry, mm and radians; nothing here knows of a job file.
 *
 * 1. `flat/` – the model ({@link Panel}: faces, bends, corners, net outline) and the built-up way into it ({@link buildUp} from {@link BuiltUp}). Coordinates
 *    lie on the neutral surface, seen on the marked face; `up` counts out of that face, 0 in the middle of the sheet. A {@link Bend} runs from end A to
 *    end B of its base line; between base line and leg line lies its zone, the developed cone. {@link flatAt} and {@link bentAt} go from ruling and wrap to
 *    the flat and back, {@link flatOnLeg} from the leg's own coordinates.
 * 2. `traced/` – the other way into it: {@link layOutTraced} cuts a traced outline along its bend lines and takes off what a mock-up did not allow for.
 * 3. `corner/` – where two bends meet: the dart ({@link sharpDart}, `dartAngle`), the mitre as the curve in which the two inside surfaces cross, open, lapped
 *    and dressed corners. `buildUp` uses it; what it found stands in `panel.corners`.
 * 4. `fold/` – {@link foldPanel} gives every face one rigid motion into the space of the base, for bends wrapped as they are to be finished or anywhere between
 *    (`Wrapped`: a cone, its own or the form's, and how far). {@link toSpace} and {@link toSheet} carry places there and back, {@link pieceFinder} says
 *    which face or zone a place of the flat is on.
 * 5. `form/` – {@link handOf}, {@link smallEnd}: which way up a form stands; {@link formPlacement}: the proper motion that brings it there, base or leg held;
 *    {@link shareForms}: bends that can share a form by their radii.
 *
 * 6. `order/` – {@link findOrder}: which bend first, which side held, on which form ({@link BendWork} per bend: the forms that would do as bodies, the pulled wrap,
 *    hand force, yoke), so that nothing strikes anything on the way, the form comes off and the clamps reach; {@link orderSearch} is the same one look at a
 *    time, for a page that shows progress. No order: `misses`, the nearest first. {@link selfCrossing}: two pieces of the finished panel that lie in one another.
 *
 * Everything that may go wrong with a job comes back as findings beside a null.
 */
export type { Bend, BendFrame } from './flat/bend';
export { bentAt, fanOf, flatAt, flatOnLeg, onLeg } from './flat/bend';
export type { BendSpec, BuiltUp, CornerSpec, Measured } from './flat/built-up';
export { plainBend, plainCorner } from './flat/built-up';
export { buildUp } from './flat/build-up';
export type { Corner, CornerTreat, Face, Panel } from './flat/panel';
export { cornerTreats } from './flat/panel';
export type { Mockup, TakenOff, Traced, TracedBend } from './traced/traced';
export type { TracedPanel } from './traced/lay-out';
export { layOutTraced } from './traced/lay-out';
export type { CornerBlock, CornerBlockLayer } from './corner/corner-block';
export { cornerBlock } from './corner/corner-block';
export { dartAngle, meetingSlant, rimShrink, sharpDart } from './corner/dart';
export type { Wrapped } from './fold/bend-motion';
export type { Folded, Piece, SheetPlace } from './fold/fold';
export { finishedWraps, foldPanel, pieceFinder, toSheet, toSpace } from './fold/fold';
export type { Hand, HeldSide } from './form/hand';
export { formPlacement, handOf, heldFrame, smallEnd } from './form/hand';
export type { FormNeed, FormOffer, SharedForm, Stretch } from './form/share-forms';
export { fromSmallEnd, nearestStretch, ownForm, shareForms, withStretch } from './form/share-forms';
export type {
  BenchEdge,
  BendWork,
  ClampBody,
  FormBody,
  FormOff,
  FormUse,
  LeftMetal,
  OfferedUse,
  Pulling,
  ShopBodies,
  Step,
  Strike,
  YokeBody,
} from './order/work';
export { settledUse } from './order/work';
export type { FoundOrder, OrderGiven } from './order/find-order';
export { findOrder, orderSearch } from './order/find-order';
export { tryBend } from './order/try-bend';
export { selfCrossing } from './order/self-crossing';
export { orderFindings } from './order/order-findings';
export { zoneEnds } from './order/metal';
export { frameMotion, zonePlace } from './fold/bend-motion';
