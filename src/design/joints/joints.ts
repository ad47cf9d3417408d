import type { End } from '../../base/ends';
import type { Tab } from '../built/tabs';
import type { Contact } from '../form/contact';

/** How the boards of a form find one another, by the tool that cuts them; mm throughout, `s` along the centre line from the cone's end A. */
export type Joints = JigsawJoints | RouterJoints | LaserJoints;

/** Boards stand on drawn lines. */
export interface JigsawJoints {
  readonly with: 'jigsaw';
}

/** Stations stand in grooves across the front of the spine. */
export interface RouterJoints {
  readonly with: 'router';
  /** Of every groove; each station grows by it behind its diameter. */
  readonly depth: number;
  readonly grooves: readonly Groove[];
}

/** A groove or a slot along the centre line: the board in it stands in its middle, or against its closed side where it is open at the spine's end. */
export interface Opening {
  readonly low: number;
  readonly high: number;
  /** The end of the spine it runs out of. */
  readonly open: End | null;
}

export interface Groove extends Opening {
  /** The station that stands in it. */
  readonly holds: string;
}

/** Every board is a stack of layers; tabs behind the stations, and before the backing stations, go through slots in the spine. */
export interface LaserJoints {
  readonly with: 'laser';
  /** How far a tab reaches into the spine. */
  readonly tabLength: number;
  /** Side of the notch at either side of a tab's root. */
  readonly relief: number;
  /** Stations first, then backing stations. */
  readonly boards: readonly StackedBoard[];
}

export interface StackedBoard {
  readonly name: string;
  readonly layers: readonly Layer[];
  readonly tabs: readonly Tab[];
  readonly slots: readonly Slot[];
  readonly dowels: readonly Dowel[];
}

/** One layer of a stack, between `low` and `high`, with how it meets the cone. */
export interface Layer extends Contact {
  readonly low: number;
  readonly high: number;
}

export interface Slot extends Opening {
  readonly offset: number;
  readonly width: number;
}

/** A hole through all layers of a board: `offset` from the centre line, `depth` from its edge to the spine. */
export interface Dowel {
  readonly offset: number;
  readonly depth: number;
  readonly diameter: number;
}
