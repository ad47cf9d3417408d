import { at } from '../../base/at';
import type { Body } from './solid';
import { dot, type Point3 } from './vector';
import { ROUNDING } from '../../base/tolerance';

/**
 * The bodies from the farthest to the nearest as seen from direction `eye` (toward the viewer), so that painting them in this
 * order hides what is hidden. Two convex bodies that do not run into each other have a plane between them, and one of their
 * own faces' planes serves here; the body on the viewer's side of it cannot be hidden by the other. What must come first does
 * (a topological sort); where bodies ring around one another, which boards across one spine and a sheet outside cannot, what has the fewest before it goes first,
 * then the given order decides.
 * Corners within `tolerance` mm of a plane count as lying in it: what the facets of curves that touch may run into each other.
 */
export function paintOrder(bodies: readonly Body[], eye: Point3, tolerance: number): Body[] {
  const measured = bodies.map(measure);
  const behind = measured.map((body, index) =>
    measured.flatMap((other, otherIndex) =>
      otherIndex !== index && mayHide(body, other, eye, tolerance) ? [otherIndex] : [],
    ),
  );
  const painted = new Set<number>();
  const order: Body[] = [];
  while (order.length < bodies.length) {
    const waiting = bodies.map((_, index) => index).filter((index) => !painted.has(index));
    const before = (index: number): number => at(behind, index).filter((other) => !painted.has(other)).length;
    const next = waiting.reduce((least, index) => (before(index) < before(least) ? index : least), at(waiting, 0));
    painted.add(next);
    order.push(at(bodies, next));
  }
  return order;
}

/** A body as its corners and its faces' planes; a prism's first two faces hold all its corners. */
interface Measured {
  readonly corners: readonly Point3[];
  readonly planes: readonly Plane[];
}

interface Plane {
  readonly normal: Point3;
  readonly distance: number;
}

function measure(body: Body): Measured {
  return {
    corners: body.faces.slice(0, 2).flatMap((face) => face.outline),
    planes: body.faces.map(({ normal, outline: [corner] }) => ({ normal, distance: corner ? dot(normal, corner) : 0 })),
  };
}

/** Whether `near` may hide part of `far`: no plane of theirs shows `far` to be on the viewer's side of `near`, or both to be side by side. */
function mayHide(near: Measured, far: Measured, eye: Point3, tolerance: number): boolean {
  return ![...near.planes, ...far.planes].some((plane) => {
    const toward = dot(plane.normal, eye);
    if (Math.abs(toward) < ROUNDING) return splits(near, far, plane, tolerance) || splits(far, near, plane, tolerance);
    return toward > 0 ? splits(near, far, plane, tolerance) : splits(far, near, plane, tolerance);
  });
}

/** Whether `below` lies wholly on the plane's back side and `above` on its front side. */
function splits(below: Measured, above: Measured, { normal, distance }: Plane, tolerance: number): boolean {
  return (
    below.corners.every((point) => dot(normal, point) <= distance + tolerance) &&
    above.corners.every((point) => dot(normal, point) >= distance - tolerance)
  );
}
