import { at } from '../../base/at';
import { DEGREE, toDegrees } from '../../base/angle';
import { angleFromWrap, radiusAt, type Cone } from '../../base/cone';
import type { Shape, Text } from '../../base/drawing';
import { setback } from '../../design/bend/allowance';
import { label } from '../parts/shapes';
import { corner, outline } from '../../base/outline';
import { stackFirst, stackLines } from './room';
import { ROUNDING } from '../../base/tolerance';

type Place = readonly [number, number];

/** Length of leg the gauge lies against, mm: enough to see a quarter of a degree as 0.4 mm of light. */
const CONTACT = 90;
/** Length of the edge on the bench, mm. */
const FOOT = 90;
/** Width of card along the leg and of the stem, mm. */
const BODY = 45;
/** The point of the wedge is cut off this far from where its edges would meet, mm; further where it would be thinner than {@link THINNEST}. */
const TIP = 8;
const THINNEST = 3;
/** Left free between the sheet's bend and the gauge, mm. */
const CLEAR = 5;
/** Below this the wedge is a plain triangle, high enough as it is. */
const PLAIN_WEDGE = 50 * DEGREE;
/** From here on the leg leans back far enough for an arm over it to be shorter than a wedge. */
const LEANS_BACK = 95 * DEGREE;
/** A gauge that serves the larger end as well as the smaller may be longer by this, mm. */
const SPARE = 30;
/** Legs whose planes meet nearer than this to the direction of the tangent line: held square to it by eye, radians. */
const BY_EYE = 0.5 * DEGREE;
const LETTERS = 5;
/** A gauge lower than this has room for its name only, mm. */
const LOW_GAUGE = 40;

/** A state of the sheet the gauge is made for. */
export interface GaugedBend {
  /** As lettered on it: `FINISHED`, `WHILE PULLED`. */
  readonly state: string;
  readonly cone: Cone;
  /** Wrap about the centre line, radians. */
  readonly wrap: number;
  /** Of the sheet, mm. */
  readonly thickness: number;
}

/** How the gauge is held to the sheet. */
export interface GaugeHold {
  /** Angle between the legs' planes, radians. */
  readonly angle: number;
  /** From the held tangent line to the line in which the legs' outside planes meet, radians, positive where they part toward B. */
  readonly skew: number;
  /** The end near which it must be used where it is too short for the other; null where it serves all along. */
  readonly near: 'A' | 'B' | null;
}

/**
 * How an angle gauge is held. The two outside planes meet in a line that runs tan⁻¹(sin β·tan(ψ/2)) off the tangent line
 * (both planes pass through the cone's apex, and the setback grows with R); square to it the planes make their true angle.
 */
export function holdOf({ cone, wrap, thickness }: GaugedBend): GaugeHold {
  const [atA, atB] = setbacks(cone, wrap, thickness);
  return {
    angle: angleFromWrap(wrap, cone.halfAngle),
    skew: Math.atan(Math.sin(cone.halfAngle) * Math.tan(wrap / 2)),
    near: Math.abs(atA - atB) <= SPARE ? null : atA < atB ? 'A' : 'B',
  };
}

function setbacks(cone: Cone, wrap: number, thickness: number): readonly [number, number] {
  return [
    setback(wrap, radiusAt(cone, 0), thickness, cone.halfAngle),
    setback(wrap, radiusAt(cone, cone.length), thickness, cone.halfAngle),
  ];
}

/**
 * A gauge for the angle between the legs' planes, 1:1: its lower edge, along x, stands on the bench in front of the bend and its
 * other edge lies against the outside of the free leg. Both edges' lines pass through the origin, where the outside planes
 * meet; the gauge itself keeps clear of it. Where the leg leans back over the bend, an arm reaches over the leg. Valid to 170°.
 */
export function drawAngleGauge(gauged: GaugedBend): Shape[] {
  const hold = holdOf(gauged);
  const points = gaugeCorners(gauged, hold);
  const high = Math.max(...points.map(([, y]) => y));
  return [outline(points.map((point) => corner(point))), ...gaugeLabels(points, hold, gauged.state, high)];
}

/** Counter-clockwise from the rear of the bench edge. */
function gaugeCorners({ cone, wrap, thickness }: GaugedBend, { angle, near }: GaugeHold): Place[] {
  const reach = setbacks(cone, wrap, thickness);
  const outside = Math.min(cone.radiusA, cone.radiusB) + thickness * Math.cos(cone.halfAngle);
  const tip = Math.max(TIP, THINNEST / (2 * Math.sin(angle / 2)));
  const end = Math.max(tip, near === null ? Math.max(...reach) : Math.min(...reach)) + CONTACT;
  const along = (distance: number, aside = 0): Place => [
    distance * Math.cos(angle) + aside * Math.sin(angle),
    distance * Math.sin(angle) - aside * Math.cos(angle),
  ];
  const last = along(end);
  if (angle < PLAIN_WEDGE) return [[tip, 0], [last[0], 0], last, along(tip)];

  const shoulder = along(end, BODY);
  // How far behind the origin the stem's rear edge stands, just in front of the bend; at the smaller end, where that is least.
  const behind = outside * (Math.tan(wrap / 2) - 1) - CLEAR;
  const rear = -behind;
  const elbow = rear / Math.cos(angle);
  if (angle < LEANS_BACK || behind <= TIP || elbow > Math.min(...reach)) {
    const front = Math.max(FOOT, shoulder[0]);
    return [[tip, 0], [front, 0], [front, Math.min(BODY, shoulder[1]) / 2], shoulder, last, along(tip)];
  }
  const stem = rear + BODY;
  const overElbow = along((stem - BODY * Math.sin(angle)) / Math.cos(angle), BODY);
  const knee: Place[] = overElbow[1] > BODY / 2 && overElbow[0] > shoulder[0] ? [overElbow] : [];
  return [[rear, 0], [rear + FOOT, 0], [rear + FOOT, BODY / 2], ...knee, shoulder, last, along(elbow)];
}

function gaugeLabels(points: readonly Place[], { angle, skew, near }: GaugeHold, state: string, high: number): Text[] {
  const degrees = `${toDegrees(angle).toFixed(2)} DEG`;
  const use = near === null ? [] : [`USE NEAR END ${near}`];
  const square =
    Math.abs(skew) < BY_EYE
      ? ['HOLD SQUARE TO', 'TANGENT LINE']
      : ['FROM SQUARE TURN', 'FRONT EDGE', `${toDegrees(Math.abs(skew)).toFixed(1)} DEG TO ${skew > 0 ? 'A' : 'B'}`];
  const wordings = [
    [degrees, state, ...square, ...use],
    [degrees, state, ...use],
    [degrees, state],
    [`${degrees} ${state}`],
  ];
  if (high < LOW_GAUGE) return stackFirst(points, wordings, LETTERS);
  return [
    ...stackLines(points, ['BENCH'], LETTERS, { high: LETTERS + 3 }),
    ...stackFirst(clearOfLeg(points, angle), wordings, LETTERS, { low: 2 * LETTERS + 2 }),
    ...legLabel(points, angle),
  ];
}

/** The outline less a strip along its leg edge, kept for that edge's own label: its far corner moved along the side before it, its near one square to it or along the bench. */
function clearOfLeg(points: readonly Place[], angle: number): Place[] {
  const [near, last, before] = [points.at(-1), points.at(-2), points.at(-3)];
  if (!near || !last || !before) return [];
  const strip = LETTERS + 4;
  const into: Place = [Math.sin(angle), -Math.cos(angle)];
  const side: Place = [before[0] - last[0], before[1] - last[1]];
  const share = strip / (side[0] * into[0] + side[1] * into[1]);
  const lowered = near[1] + strip * into[1];
  return [
    ...points.slice(0, -2),
    [last[0] + share * side[0], last[1] + share * side[1]],
    lowered < 0 ? [strip / Math.sin(angle), 0] : [near[0] + strip * into[0], lowered],
  ];
}

/** Along the leg edge, the right way up, near its far end. */
function legLabel(points: readonly Place[], angle: number): Text[] {
  const last = at(points, -2);
  const back = CONTACT / 2;
  const leansBack = angle > Math.PI / 2 + ROUNDING;
  const aside = leansBack ? 2 : LETTERS + 2;
  const x = last[0] - back * Math.cos(angle) + aside * Math.sin(angle);
  const y = last[1] - back * Math.sin(angle) - aside * Math.cos(angle);
  return label('LEG', { x, y, width: CONTACT / 2, tallest: LETTERS, angle: leansBack ? angle - Math.PI : angle });
}
