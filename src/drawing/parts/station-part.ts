import { at } from '../../base/at';
import makerjs from 'makerjs';
import type { Circle, Shape } from '../../base/drawing';
import type { LengthUnit } from '../../base/units';
import type { Station } from '../../design/fixture/fixture';
import type { Contact } from '../../design/form/contact';
import type { Tab } from '../../design/built/tabs';
import type { Dowel } from '../../design/joints/joints';
import { labelLength } from './lengths';
import { loopsOf } from './model';
import { circle, label, mark, widthBeside } from './shapes';
import { tabbedEdge } from './tabbed-edge';

/** Length of the two strokes that point at a compass point, and of the ticks for the wrap, mm. */
const TICK = 4;

/** From one line of a label to the next, as a share of its height. */
const LINE_PITCH = 1.5;
/** Clear of edges and screw lines, mm. */
const MARGIN = 2;

/** What a station's drawing says beside its own numbers. */
export interface StationNotes {
  readonly units: LengthUnit;
  /** Chosen wrap, radians: marked on the round edge from either end, since the form serves both hands. */
  readonly wrap: number;
}

/** One half-disc as cut: a station, or one layer of it; mm. */
export interface HalfDisc extends Pick<Contact, 'contact' | 'radius'> {
  readonly name: string;
  readonly screws: Station['screws'];
  /** What stands out behind the diameter: the whole width into a groove, tabs through slots, or nothing. */
  readonly behind: { readonly depth: number; readonly relief: number; readonly tabs: readonly Tab[] | 'whole' };
  readonly dowels: readonly Dowel[];
}

/**
 * A half-disc at 1:1, seen on its contact face: straight edge along x with the compass point at the origin, round edge up.
 * Marks: compass point, centre line and screw lines (as deep as their pilots), and where the sheet leaves the edge at the chosen wrap.
 */
export function drawHalfDisc(disc: HalfDisc, notes: StationNotes): Shape[] {
  const { radius, screws, behind, dowels } = disc;
  const tabs = behind.tabs === 'whole' ? [{ offset: 0, width: 2 * radius }] : behind.tabs;
  const model: makerjs.IModel = {
    paths: { round: new makerjs.paths.Arc([0, 0], radius, 0, 180) },
    models: {
      straight: new makerjs.models.ConnectTheDots(false, tabbedEdge(radius, tabs, behind.depth, behind.relief)),
    },
  };
  const holes = dowels.map(({ offset, depth, diameter }) => circle('hole', offset, depth, diameter));
  return [
    ...loopsOf(model, 'outline'),
    ...holes,
    ...compassPoint(),
    ...screws.map((screw) => mark([screw.offset, 0], [screw.offset, screw.pilotDepth])),
    ...(screws.some((screw) => screw.offset === 0) ? [] : [mark([0, radius - TICK], [0, radius])]),
    ...wrapTicks(radius, notes.wrap),
    ...discLabels(disc, holes, notes.units),
  ];
}

function compassPoint(): Shape[] {
  return [-1, 1].map((side) => mark([0, 0], [side * TICK * Math.SQRT1_2, TICK * Math.SQRT1_2]));
}

/** The wrap is counted from the end of the straight edge that stands on the sheet: either one. */
function wrapTicks(radius: number, wrap: number): Shape[] {
  const at = (angle: number): Shape => {
    const [x, y] = [Math.cos(angle), Math.sin(angle)];
    return mark([(radius - TICK) * x, (radius - TICK) * y], [radius * x, radius * y]);
  };
  return Math.abs(wrap - Math.PI / 2) < 1e-6 ? [] : [at(wrap), at(Math.PI - wrap)];
}

function discLabels(disc: HalfDisc, holes: readonly Circle[], units: LengthUnit): Shape[] {
  const { radius, name, contact } = disc;
  const end = contact;
  // The last says the same in fewer letters, for want of room.
  const lines = [[name], [`R ${labelLength(radius, units)}`], ['CONTACT FACE'], [`TO END ${end}`, `TO ${end}`]];
  const room = labelRoom(disc);
  const height = Math.max(1.8, Math.min(7, radius / 9));
  const top = radius * 0.74;
  return lines.flatMap((line, index) => {
    const base = top - index * LINE_PITCH * height - height;
    const chord = 2 * Math.sqrt(radius ** 2 - (base + 1.25 * height) ** 2) - 2 * MARGIN;
    const tallest = index === 0 ? 1.25 * height : height;
    const beside = (width: number): number =>
      widthBeside(holes, { x: room.middle, low: base, high: base + tallest, width });
    const written = line.map((words) =>
      label(words, {
        x: room.middle,
        y: base,
        width: beside(room.width),
        tallest,
        angle: 0,
        most: beside(chord - 2 * Math.abs(room.middle)),
      }),
    );
    return written.find((shapes) => shapes.length > 0) ?? [];
  });
}

/** Between two screw lines, clear of both; over a single screw in the middle, which only small stations have. */
function labelRoom({ radius, screws }: HalfDisc): { middle: number; width: number } {
  const offsets = screws.map((screw) => screw.offset);
  if (offsets.length === 1) return { middle: 0, width: 1.2 * radius - 2 * MARGIN };
  const [low, high] = offsets.length === 3 ? [at(offsets, 1), at(offsets, 2)] : [at(offsets, 0), at(offsets, 1)];
  return { middle: (low + high) / 2, width: high - low - 2 * MARGIN };
}
