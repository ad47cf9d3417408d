import type { Point } from '../../base/polygon';
import type { CornerTreat } from './panel';

/** What the corners of a built-up base are: tangent lines' on the flat, or where the legs' inside or outside planes meet the base's. */
export type Measured = 'flat' | 'inside' | 'outside';

/** A panel given as a base polygon with bends on its edges, mm and radians. */
export interface BuiltUp {
  readonly thickness: number;
  readonly base: {
    /** Counter-clockwise on the marked face. */
    readonly corners: readonly Point[];
    /** Edge i runs from corner i to corner i + 1. */
    readonly edges: readonly string[];
    readonly measured: Measured;
  };
  /** Each after the one whose leg it stands on. */
  readonly bends: readonly BendSpec[];
  /** What becomes of the corners; what is not named is a mitre, or open where metal is lacking. */
  readonly corners: readonly CornerSpec[];
}

export interface BendSpec {
  /** An edge of the base, or the rim of a leg: `long`, `long.rim`. */
  readonly on: string;
  readonly turn: 'up' | 'down';
  /** Between the two faces, from flat. */
  readonly angle: number;
  /** Finished inside radius toward each neighbouring edge, or one for all. */
  readonly radius: number | Readonly<Record<string, number>>;
  /** The neighbouring edge at end A; null for the end where the edge starts. */
  readonly from: string | null;
  /** Flat metal beyond the leg line, or a level rim's height over the base, measured on the face `measured` names. */
  readonly reach: { readonly leg: number } | { readonly height: number };
  /** Neutral-line factor; null for DIN 6935. */
  readonly neutral: number | null;
  /** How far the bend stays short of the edge's ends, mm, by neighbouring edge. */
  readonly inset: Readonly<Record<string, number>>;
}

export interface CornerSpec {
  /** Two neighbouring edges, either order. */
  readonly between: readonly [string, string];
  readonly treat: CornerTreat | null;
  /** Between the edges at the rim; null for the sheet's thickness. */
  readonly gap: number | null;
  /** Rounding of the base's corner that is to be dressed, mm. */
  readonly rounded: number;
  /** A lap's tab, and the edge whose leg carries it (null: the later edge). */
  readonly tab: { readonly width: number; readonly on: string | null };
}

/** Everything a bend may leave out. */
export const plainBend = { turn: 'up', from: null, neutral: null, inset: {} } as const;

export const plainCorner: Omit<CornerSpec, 'between'> = {
  treat: null,
  gap: null,
  rounded: 0,
  tab: { width: 15, on: null },
};
