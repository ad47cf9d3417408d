import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import type { Bend } from './bend';

/**
 * A panel laid out flat: mm on the neutral surface, seen on the face that is up when it is marked; z up out of that face, 0 in the
 * middle of the sheet.
 */
export interface Panel {
  readonly thickness: number;
  /** The base first; the leg of bend i is face i + 1. */
  readonly faces: readonly Face[];
  readonly bends: readonly Bend[];
  readonly corners: readonly Corner[];
  /** Net outline, closed, counter-clockwise. */
  readonly outline: readonly Vertex[];
  /** Closed loops within it, clockwise. */
  readonly holes: readonly (readonly Vertex[])[];
}

/** A flat part of the panel. */
export interface Face {
  readonly name: string;
  /** Number of the bend it hangs from; null for the base. */
  readonly bend: number | null;
  /** Counter-clockwise, as far as its tangent lines. */
  readonly outline: readonly Vertex[];
}

export const cornerTreats = ['mitre', 'open', 'lap', 'dress'] as const;
export type CornerTreat = (typeof cornerTreats)[number];

/** Where two bends of one face meet, and what becomes of the metal between them. */
export interface Corner {
  /** Numbers of the bends, in the order of the face's outline. */
  readonly between: readonly [number, number];
  readonly treat: CornerTreat;
  /** Where the two base lines meet, on the flat. */
  readonly at: Point;
  /** What has to leave the corner between the legs' edges, radians; below 0 metal is lacking. */
  readonly dart: number;
  /** Between the edges at the rim, mm; 0 where they are not cut to meet. */
  readonly gap: number;
  /** How far each bend's metal runs past the end of its base line, mm. */
  readonly reach: readonly [number, number];
  /** The hole that the cut ends in; null where nothing is cut. */
  readonly root: { readonly at: Point; readonly diameter: number } | null;
  /** Between the legs' ends at the leg lines once folded, mm. */
  readonly apart: number;
  /** What is lacking to close it, mm²; 0 where the edges meet. */
  readonly patch: number;
  /** Share by which a rim left whole must shrink; 0 where it is cut. */
  readonly shrink: number;
  /** Width of the tab, and which of the two bends carries it; null without. */
  readonly tab: { readonly width: number; readonly on: 0 | 1 } | null;
}
