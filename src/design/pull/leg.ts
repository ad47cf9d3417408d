/** A leg beyond the take-off while it is pulled, and after: per unit width; N, radians. */
export interface PulledLeg {
  /** At the hands, N per mm of width. */
  readonly force: number;
  /** How far the leg turns beyond the take-off, up to the hands or the yoke, while pulled. */
  readonly loaded: number;
  /** How much of that stays after release: the tail. */
  readonly stays: number;
}
