import type { Operation } from '../base/drawing';

/** The papers drawings may be printed on; their sizes are in `paper/paper.ts`. */
export const paperSizes = ['letter', 'A4', 'tabloid', 'A3', 'roll'] as const;
export const paperOrientations = ['auto', 'portrait', 'landscape'] as const;

/** What the drawings are printed on. */
export interface PaperChoice {
  readonly size: (typeof paperSizes)[number];
  /** `auto` takes whichever needs fewer pages; a roll has none. */
  readonly orientation: (typeof paperOrientations)[number];
  /** Width of a roll, mm; null for the other sizes. */
  readonly width: number | null;
  /** Edge the printer leaves blank, mm. */
  readonly margin: number;
  /** Width of the strip two neighbouring pages both show, mm. */
  readonly overlap: number;
}

/**
 * A job after reading: every default filled in, lengths in mm, angles in radians, forces in N, stresses in MPa.
 * `job/parse.ts` makes it from a job file's text; the page makes it from its fields by the same parser.
 */
export interface Job {
  readonly title: string;
  /** Unit of bare numbers in the file and of what is printed for the maker. */
  readonly units: 'mm' | 'in';
  readonly sheet: {
    /** Id of a row of `shared/sheet-metals.json`. */
    readonly material: string;
    readonly thickness: number;
    /** Overrides the table's minimum bend radius, in multiples of the thickness. */
    readonly minBendRatio: number | null;
  };
  readonly bend: {
    /** Turn away from flat between the legs' planes, radians. */
    readonly angle: number;
    readonly length: number;
    readonly radius: { readonly from: number; readonly to: number };
    readonly radiusOf: 'finished' | 'form';
    readonly legs: { readonly held: number; readonly free: number };
  };
  readonly runs: readonly Run[];
  readonly board: {
    readonly spine: BoardChoice;
    readonly stations: BoardChoice;
    readonly backing: BoardChoice;
  };
  readonly stations: {
    /** Longest clear span between stations, mm. */
    readonly maxSpan: number;
    /** Most the sheet may sag between stations, mm. */
    readonly maxSag: number;
  };
  readonly screws: {
    /** Id of a row of `shared/screws.json`, or null to choose by spine thickness. */
    readonly size: string | null;
    /** Wood left between a screw's tip and the round edge, mm. */
    readonly cover: number;
  };
  readonly clamps: {
    /** Diameter wanted for the clamp holes, mm. */
    readonly hole: number;
    /** Wood left round each clamp hole, mm. */
    readonly wood: number;
    /** Force one clamp is trusted with, N. */
    readonly rating: number;
  };
  readonly effort: {
    /** Hand force limit, N. */
    readonly handForce: number;
    readonly safety: number;
    /** Most extra metal the sheet can spare as leverage, mm; null for no limit. */
    readonly maxLeverage: number | null;
  };
  /** Neutral-line factor K (0…0.5) where the maker sets his own; null for DIN 6935. */
  readonly neutral: number | null;
  /** Strips of the job's own sheet, bent and measured; empty without. */
  readonly trials: readonly Trial[];
  readonly paper: PaperChoice;
  /** The block to dress the finished bend over; null for none. */
  readonly block: BlockChoice | null;
  /** Pieces of board to use before whole ones. */
  readonly offcuts: readonly Offcut[];
  readonly cut: Cut;
}

/** A stretch of the bend that is used by one edge of the panel; `from` and `to` along the tangent line, mm. */
export interface Run {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** A strip of the job's sheet bent round a disc and let go. */
export interface Trial {
  /** Of the disc, mm. */
  readonly radius: number;
  /** Turn away from flat between the strip's legs while held on the disc, and after it was let go, radians. */
  readonly bent: number;
  readonly left: number;
  /** Width of the strip, mm; null where it was not said. */
  readonly width: number | null;
}

/** A piece of board left over from other work, used before a whole board is. */
export interface Offcut {
  /** Id of a row of `shared/boards.json`. */
  readonly stock: string;
  readonly width: number;
  readonly length: number;
  /** As measured, mm; null where it is as thick as the job's boards of its kind. */
  readonly thickness: number | null;
}

/** Where along the bend the finishing block fits, and what it is built from. */
export interface BlockChoice {
  /** Its middle along the tangent line from end A, mm. */
  readonly at: number;
  /** Along the tangent line, mm: rounded up to whole layers. */
  readonly length: number;
  readonly board: BoardChoice;
}

export interface BoardChoice {
  /** Id of a row of `shared/boards.json`. */
  readonly stock: string;
  /** Thickness as measured by the maker, mm; null for the table's. */
  readonly thickness: number | null;
}

/** Ways of cutting the boards. */
export const cuttingTools = ['jigsaw', 'router', 'laser'] as const;
export type CuttingTool = (typeof cuttingTools)[number];

/** How the boards are cut: it changes the joints and the drawings, never the bend surface. Lengths in mm. */
export type Cut = JigsawCut | RouterCut | LaserCut;

interface AnyCut {
  /** Left between the parts laid out on a board, and uncut along its edges. */
  readonly gap: number;
  readonly border: number;
  /** Colours of the maker's own, by operation: a name of `base/colour.ts` or #rrggbb. */
  readonly colours: Readonly<Partial<Record<Operation, string>>>;
}

export interface JigsawCut extends AnyCut {
  readonly with: 'jigsaw';
  /** Smallest radius the blade turns. */
  readonly turn: number;
}

export interface RouterCut extends AnyCut {
  readonly with: 'router';
  /** Diameter. */
  readonly bit: number;
  /** Depth of the grooves in the spine; null for the usual share of its thickness. */
  readonly groove: number | null;
  /** How much wider a groove is than the station in it. */
  readonly fit: number;
  /** Whether parts stay held to the board by bridges. */
  readonly bridges: boolean;
}

export interface LaserCut extends AnyCut {
  readonly with: 'laser';
  /** Width the beam takes out. */
  readonly kerf: number;
  /** How much wider a slot is than the tab in it. */
  readonly fit: number;
  /** Layers to a board of the form; null for as many as make it as thick as usual. */
  readonly layers: number | null;
  /** Diameter of the dowels or bolts that align the layers. */
  readonly dowel: number;
}
