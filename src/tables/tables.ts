import type { Board, GaugeTable, Metal, Screw } from './schema';

/** The numbers that belong to shop practice rather than to a job; see `shared/shop-rules.json` for units and sources. */
export interface ShopRules {
  readonly screwCover: number;
  readonly minBiteDiameters: number;
  readonly pilotExtraDepth: number;
  readonly thirdScrewAbove: number;
  readonly clampHole: number;
  readonly clampHoleSizes: readonly number[];
  readonly clampHoleMin: number;
  readonly clampWood: number;
  readonly clampRating: number;
  readonly minClamps: number;
  readonly earLength: number;
  readonly footDepths: readonly number[];
  readonly maxSpan: number;
  readonly maxSag: number;
  readonly maxBow: number;
  readonly handForceLimit: number;
  readonly handForceFinding: number;
  readonly safetyFactor: number;
  readonly maxWrapDegrees: number;
  readonly swingExtraDegrees: number;
  /** Wood left between parts laid out on a board, and uncut along its edges, mm. */
  readonly partGap: number;
  readonly boardBorder: number;
}

/** All reference tables, as the core takes them. */
export interface Tables {
  readonly metals: readonly Metal[];
  readonly gauges: readonly GaugeTable[];
  readonly boards: readonly Board[];
  readonly screws: readonly Screw[];
  readonly rules: ShopRules;
}
