/** The sheet in a bend: mm, K, radians. */
interface Bent {
  readonly thickness: number;
  readonly neutral: number;
  readonly halfAngle?: number;
}

/**
 * Length of the neutral line round the bend, mm: ψ·(R + K·t·cos β). `wrap` radians about the centre line, `radius` the inside
 * radius square to it, `neutral` K (0…0.5), `halfAngle` β (0 on a cylinder, where this is the bend allowance of the handbooks).
 */
export function bendAllowance(wrap: number, radius: number, { thickness, neutral, halfAngle = 0 }: Bent): number {
  return wrap * (radius + neutral * thickness * Math.cos(halfAngle));
}

/**
 * Distance, mm, from a tangent line to where the two legs' outside planes would meet, measured square to the tangent line:
 * tan(ψ/2)·(R + t·cos β). Valid below a half turn. On a cylinder it is the setback K·(R + T), K = tan(N/2), of AC 43.13-1B.
 */
export function setback(wrap: number, radius: number, thickness: number, halfAngle: number): number {
  return Math.tan(wrap / 2) * (radius + thickness * Math.cos(halfAngle));
}
