import type { Place } from '../../../base/side';
import { lineCurve, type Curve } from '../curve';

/** An elliptical arc as a path writes it; `turned` radians from the x axis. */
export interface PathArc {
  readonly radii: Place;
  readonly turned: number;
  readonly large: boolean;
  readonly sweep: boolean;
  readonly to: Place;
}

/** Path arc → part of an ellipse, radii too small enlarged. Source: SVG 1.1, appendix F.6, "Elliptical arc implementation notes". */
export function arcCurve(from: Place, { radii, turned, large, sweep, to }: PathArc): Curve {
  if (radii.x === 0 || radii.y === 0) return lineCurve(from, to);
  const [cosine, sine] = [Math.cos(turned), Math.sin(turned)];
  // Half the chord, in the ellipse's own axes and its radii.
  const half = inAxes({ x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 }, cosine, sine);
  const [hx, hy] = [half.x / Math.abs(radii.x), half.y / Math.abs(radii.y)];
  const size = Math.hypot(hx, hy);
  if (size === 0) return lineCurve(from, to);
  const grown = Math.max(1, size);
  const [rx, ry] = [Math.abs(radii.x) * grown, Math.abs(radii.y) * grown];
  const aside = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, (grown / size) ** 2 - 1));
  // The centre on the unit circle's plane: square to the chord.
  const [cx, cy] = [(aside * hy) / grown, (-aside * hx) / grown];
  const start = Math.atan2(hy / grown - cy, hx / grown - cx);
  const end = Math.atan2(-hy / grown - cy, -hx / grown - cx);
  const u = { x: rx * cosine, y: rx * sine };
  const v = { x: -ry * sine, y: ry * cosine };
  return {
    kind: 'ellipse',
    centre: {
      x: (from.x + to.x) / 2 + u.x * cx + v.x * cy,
      y: (from.y + to.y) / 2 + u.y * cx + v.y * cy,
    },
    u,
    v,
    start,
    sweep: directed(end - start, sweep),
  };
}

function inAxes({ x, y }: Place, cosine: number, sine: number): Place {
  return { x: cosine * x + sine * y, y: cosine * y - sine * x };
}

function directed(difference: number, positive: boolean): number {
  const whole = 2 * Math.PI;
  const within = ((difference % whole) + whole) % whole;
  return positive ? within : within - whole;
}
