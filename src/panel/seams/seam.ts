import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';
import type { Fastener } from '../../tables/fasteners';

/** A row or two of fasteners along an edge, mm. */
export interface Seam {
  /** The edge's name. */
  readonly on: string;
  /** Width of the overlap. */
  readonly lap: number;
  readonly fastener: Fastener;
  readonly countersunk: boolean;
  /** From the row's ends to the first and last hole. */
  readonly ends: number;
  /** So many holes in a row, or so far apart at most. */
  readonly spacing: { readonly count: number } | { readonly pitch: number };
  readonly rows: 1 | 2;
  /** Drilled now, or through the other panel's holes once the two are clamped together. */
  readonly drill: 'now' | 'match';
}

/** The edge a seam is on. */
export interface SeamEdge {
  /** Its corners in a row, the sheet on the left; the last bulge does not count. */
  readonly run: readonly Vertex[];
  /** The sheets that lie on each other, mm. */
  readonly thickness: number;
  readonly mating: number;
}

/** A seam laid out on the flat. */
export interface SeamLayout {
  readonly seam: Seam;
  /** Along the edge. */
  readonly length: number;
  /** Holes in a row, and from one to the next along it. */
  readonly count: number;
  readonly pitch: number;
  /** The row's holes from its start, one list a row; none of them drilled where `seam.drill` is match. */
  readonly rows: readonly (readonly Place[])[];
  /** How far each row lies from the edge. */
  readonly fromEdge: readonly number[];
  /** Where the other panel's edge comes to lie: an open run. */
  readonly lapLine: readonly Vertex[];
}
