/** A board or an offcut to lay parts out on, mm. */
export interface Stock {
  readonly width: number;
  readonly length: number;
  /** Its place in the job's list of offcuts; null for a whole board. */
  readonly offcut: number | null;
}

/** What there is to cut from: each offcut once, whole boards as many as it takes. */
export interface Supply {
  readonly offcuts: readonly Stock[];
  readonly board: Stock;
  /** Left uncut along every edge, mm. */
  readonly border: number;
  /** Whether parts may only be turned end for end, since the stock's grain runs along its length. */
  readonly grain?: boolean;
}
