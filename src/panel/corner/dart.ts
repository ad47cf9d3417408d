/** One of two bends at a corner, as the dart sees it; radians. */
export interface DartBend {
  /** Between the two faces, + where the leg rises, − where it drops. */
  readonly angle: number;
  /** Of the planes' meeting line to the base line, and of the leg line to it on the flat; + where the radius grows away from the corner. */
  readonly slant: number;
  readonly fan: number;
}

/**
 * What has to leave the corner between the edges of two legs, radians; below 0 metal is lacking. `corner` is the inside angle of the base between
 * the base lines. E = E₀(C) + Σ(2γᵢ − fanᵢ), E₀ the dart of three planes that meet in sharp lines, C = 180° − (corner + γ₁ + γ₂). Panel design section 3.
 */
export function dartAngle(corner: number, [a, b]: readonly [DartBend, DartBend]): number {
  const turn = Math.PI - (corner + a.slant + b.slant);
  return sharpDart(turn, a.angle, b.angle) + 2 * (a.slant + b.slant) - (a.fan + b.fan);
}

/** The dart of three planes: 2·atan2(tan(b₁/2)·tan(b₂/2)·sin C, 1 + tan(b₁/2)·tan(b₂/2)·cos C), C the turn of the outline at the corner. */
export function sharpDart(turn: number, first: number, second: number): number {
  const product = Math.tan(first / 2) * Math.tan(second / 2);
  return 2 * Math.atan2(product * Math.sin(turn), 1 + product * Math.cos(turn));
}

/** Angle, radians, that the line in which two faces' planes meet makes with the base line: γ = atan(sin β·tan(ψ/2)), + where the radius grows. */
export function meetingSlant(halfAngle: number, wrap: number): number {
  return Math.atan(Math.sin(halfAngle) * Math.tan(wrap / 2));
}

/**
 * How much of its length the rim of a dressed corner must lose: 1 − (rc + R·sin φ + L·cos φ)/(rc + R·φ + L); `rounding` rc of the base's corner, `radius` R of
 * the bend, `leg` L beyond it, mm; `wrap` φ radians. Panel design section 3.
 */
export function rimShrink(sizes: { rounding: number; radius: number; leg: number; wrap: number }): number {
  const { rounding, radius, leg, wrap } = sizes;
  return 1 - (rounding + radius * Math.sin(wrap) + leg * Math.cos(wrap)) / (rounding + radius * wrap + leg);
}
