/**
 * A drawing as every writer takes it: plain shapes in mm, y up, each under one operation.
 * Closed loops keep their arcs as bulges; nothing here is open but marks and the strokes of labels.
 */

/** The closed list of operations, in the order they are listed (design section 8); `board` is the edge of the board the parts lie on, not to be cut. */
export const operations = ['outline', 'hole', 'pilot', 'countersink', 'groove', 'mark', 'label', 'board'] as const;
export type Operation = (typeof operations)[number];

/** The order they are carried out in: inside before outside, so that nothing is still to be done to a part that has come loose. */
export const cutOrder = [
  'board',
  'label',
  'mark',
  'countersink',
  'pilot',
  'groove',
  'hole',
  'outline',
] as const satisfies readonly Operation[];

/** A corner of a loop; `bulge` = tan(included angle/4) of the arc to the next corner, positive counter-clockwise, 0 straight. */
export interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** A closed loop: the last vertex joins the first. */
export interface Loop {
  readonly kind: 'loop';
  readonly operation: Operation;
  readonly vertices: readonly Vertex[];
}

export interface Circle {
  readonly kind: 'circle';
  readonly operation: Operation;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** An open straight line: marks only. */
export interface Line {
  readonly kind: 'line';
  readonly operation: 'mark';
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** One line of text. `x`,`y` is the baseline's start, middle or end by `anchor`; `angle` radians counter-clockwise; `height` of a capital, mm. */
export interface Text {
  readonly kind: 'text';
  readonly operation: 'label';
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly angle: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
}

/** An open run of straight strokes, from point to point, two at least: labels to engrave only. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly operation: 'label';
  readonly points: readonly (readonly [number, number])[];
}

export type Shape = Loop | Circle | Line | Text | Stroke;

export interface Drawing {
  readonly shapes: readonly Shape[];
}

/** A file ready to be stored: `path` is relative, with `/` between folders. */
export interface OutputFile {
  readonly path: string;
  readonly content: string | Uint8Array;
  readonly mime: string;
}
