import type { SaidFinding } from '../../findings/say';
import type { Point } from '../../base/polygon';
import type { WoodLoads } from '../../design/wood/loads';
import type { BlockLayer, BlockLayout } from '../../design/block/finishing-block';

/**
 * What `plan --json` prints: mm, degrees, N, MPa, N·mm. Names are fixed by the design; more may be added, none renamed.
 * A section is null where an error finding left it without meaning.
 */
export interface Plan {
  readonly title: string;
  readonly sheet: PlanSheet | null;
  /** Trial strips and what they change; null without. */
  readonly trials: PlanTrials | null;
  readonly bend: PlanBend | null;
  readonly runs: readonly PlanRun[];
  readonly effort: PlanEffort | null;
  readonly pull: PlanPull | null;
  readonly hold: PlanHold | null;
  /** Loads on screws and wood against what bears them; N, N/mm, MPa. */
  readonly wood: PlanWood | null;
  readonly stations: readonly PlanStation[];
  readonly spine: PlanSpine | null;
  readonly backings: readonly PlanBacking[];
  readonly blank: PlanBlank | null;
  /** The finishing block; null where the job asks for none. */
  readonly block: PlanBlock | null;
  readonly cut: PlanCut | null;
  readonly findings: readonly SaidFinding[];
}

/** The plan of a form that can be built. */
export interface BuiltPlan extends Plan {
  readonly sheet: PlanSheet;
  readonly bend: PlanBend;
  readonly effort: PlanEffort;
  readonly pull: PlanPull;
  readonly hold: PlanHold;
  readonly wood: PlanWood;
  readonly spine: PlanSpine;
  readonly blank: PlanBlank;
  readonly cut: PlanCut;
}

/** A value at end A (`from`) and end B (`to`). */
export interface PlanEnds {
  readonly from: number;
  readonly to: number;
}

/** The end a thing’s contact face looks to. */
export interface PlanContact {
  readonly contact: 'from' | 'to';
}

/** How the boards are cut, and the joints that come of it; mm, places along the centre line. */
export type PlanCut =
  | { readonly with: 'jigsaw'; readonly gap: number; readonly border: number }
  | {
      readonly with: 'router';
      readonly gap: number;
      readonly border: number;
      readonly bit: number;
      readonly fit: number;
      readonly bridges: boolean;
      readonly grooveDepth: number;
      readonly grooves: readonly (PlanOpening & { readonly holds: string })[];
    }
  | {
      readonly with: 'laser';
      readonly gap: number;
      readonly border: number;
      readonly kerf: number;
      readonly fit: number;
      readonly layers: { readonly spine: number; readonly stations: number; readonly backing: number };
      /** How far tabs reach into the spine. */
      readonly tabLength: number;
      /** Side of the notch at either side of a tab's root. */
      readonly relief: number;
      readonly boards: readonly PlanStack[];
    };

/** A groove or slot across the spine; `open` where it runs out of that end. */
export interface PlanOpening {
  readonly low: number;
  readonly high: number;
  readonly open: 'from' | 'to' | null;
}

/** A station or backing station as a stack of layers. */
export interface PlanStack {
  readonly name: string;
  readonly layers: readonly {
    readonly low: number;
    readonly high: number;
    readonly contact: PlanContact['contact'];
    readonly radius: number;
    readonly farRadius: number;
  }[];
  readonly tabs: readonly { readonly offset: number; readonly width: number }[];
  readonly slots: readonly (PlanOpening & { readonly offset: number; readonly width: number })[];
  readonly dowels: readonly { readonly offset: number; readonly depth: number; readonly diameter: number }[];
}

export interface PlanSheet {
  readonly material: string;
  readonly thickness: number;
  readonly yield: number;
  readonly modulus: number;
  readonly poisson: number;
  readonly hardening: { readonly strength: number; readonly exponent: number; readonly initialStrain: number } | null;
  /** Factor on the flow curve from trial strips; 1 without. */
  readonly factor: number;
}

/** Trial strips against the tables' flow curve. Angles in degrees. */
export interface PlanTrials {
  readonly strips: readonly PlanStrip[];
  readonly parts: readonly PlanPart[];
  /** Turn the legs keep beyond the sums, as parts showed: in the wrap. */
  readonly legsKeep: PlanEnds;
  /** Least squares on the curvature left; used for the whole plan. */
  readonly factor: number;
  /** The least and the greatest of the strips' own factors. */
  readonly spread: { readonly low: number; readonly high: number };
  /** The bend by the tables alone, and at either end of the spread; null where no such bend exists. */
  readonly effect: {
    readonly tables: PlanAtFactor | null;
    readonly low: PlanAtFactor | null;
    readonly high: PlanAtFactor | null;
  };
}

/** A finished part at one place, mm and degrees; null what was not measured. */
export interface PlanPart {
  /** Where among the job's trials, from 1. */
  readonly trial: number;
  readonly at: number;
  /** Radius of the form it came off. */
  readonly form: number;
  readonly radius: number | null;
  readonly angle: number | null;
  readonly wrap: number | null;
  /** The factor that reproduces it alone; null where its angle is put down to the legs. */
  readonly factor: number | null;
  /** What was reckoned before it was bent. */
  readonly reckoned: { readonly radius: number; readonly angle: number | null };
  readonly cameOut: number;
  /** What to do about the form; `wanted` is the finished radius there, null where the job gives the form's. */
  readonly advice: {
    readonly do: 'keep' | 'recut' | 'shim';
    readonly by: number;
    readonly to: number;
    readonly wanted: number | null;
  };
  /** Wrap that brings the angle on the form as it was. */
  readonly again: number | null;
  /** What the measurements may be off by. */
  readonly sure: { readonly radius: number; readonly angle: number | null };
}

export interface PlanStrip {
  readonly radius: number;
  readonly bent: number;
  readonly left: number;
  readonly width: number | null;
  /** The factor that reproduces this strip alone. */
  readonly factor: number;
}

export interface PlanAtFactor {
  readonly form: PlanEnds;
  readonly finished: PlanEnds;
  /** The chosen wrap, degrees. */
  readonly wrap: number;
}

export interface PlanBend {
  /** Between the legs' planes, degrees from flat. */
  readonly angle: number;
  readonly length: number;
  /** Inside radii square to the centre line. */
  readonly finished: PlanEnds;
  readonly form: PlanEnds;
  /** Degrees about the centre line: needed at each end, and the one chosen. */
  readonly wrap: PlanEnds & { readonly chosen: number };
  /** Degrees over (positive) or under at each end after release. */
  readonly twist: PlanEnds;
  readonly neutral: number;
  readonly allowance: PlanEnds;
  /** From a tangent line to where the legs' outside planes would meet. */
  readonly setback: PlanEnds;
  /** Degrees between the two tangent lines on the flat blank. */
  readonly fan: number;
  readonly strain: PlanEnds;
  /** Cone half-angle of the finished bend and of the form, degrees. */
  readonly coneHalfAngle: { readonly finished: number; readonly form: number };
}

export interface PlanRun extends PlanEnds {
  readonly name: string;
  /** Bending moment of the whole run at the form radii, N·mm. */
  readonly moment: number;
}

export interface PlanEffort {
  /** Of the governing run, N·mm. */
  readonly moment: number;
  /** From where the sheet leaves the form to the hands, mm. */
  readonly lever: number;
  /** N. */
  readonly handForce: number;
  readonly leverNeeded: number;
  readonly leverage: number;
  /** Total, N. */
  readonly clampForce: number;
  readonly clamps: number;
  /** Foot depth behind the spine, mm. */
  readonly foot: number;
  readonly safety: number;
}

/** How the free leg is pulled; degrees, mm, N. */
export interface PlanPull {
  readonly with: 'bare' | 'yoke' | 'press';
  readonly lever: number;
  /** Wrap at which the sheet leaves the form, about the centre line: what each end needs. */
  readonly takeOff: PlanEnds;
  /** Between the legs' planes while pulled, where the gauge is held; and a little past the take-off. */
  readonly legAngle: PlanEnds;
  readonly nearAngle: PlanEnds;
  /** Turn of the free leg past the take-off: loaded, what stays, how far along it. */
  readonly tail: { readonly loaded: PlanEnds; readonly stays: PlanEnds; readonly reach: number };
  readonly departure: PlanEnds;
  readonly bow: number;
  /** How far behind the tangent line the form stands. */
  readonly early: number;
  readonly handForce: number;
  readonly people: number;
  /** Longest lever at which bare hands would do, where they were not chosen. */
  readonly bare: { readonly lever: number; readonly handForce: number } | null;
  readonly yoke: {
    readonly nose: string;
    readonly outer: string;
    readonly handle: string;
    readonly handles: number;
    /** How thick the nose is left at its front edge, and how far back its flange is whole. */
    readonly wedge: { readonly edge: number; readonly back: number };
    readonly gap: number;
    /** How far the nose stays clear of the form at the end of the pull. */
    readonly clears: number;
    readonly arm: number;
    readonly grip: number;
    /** N/mm. */
    readonly part: number;
    readonly opens: number;
    readonly stays: number;
    readonly bolts: { readonly size: string; readonly span: number; readonly force: number };
    readonly length: number;
  } | null;
}

/** How the form is held; degrees, mm, N. */
export interface PlanHold {
  /** How far behind the tangent line the held leg bears. */
  readonly bearing: number;
  readonly tail: PlanEnds;
  /** The middle's tail with clamps on the weak and on the strong side; null where weak ones let the form lift. */
  readonly spread: { readonly weak: number | null; readonly strong: number };
  /** Up-push on the spine's front edge. */
  readonly up: number;
  readonly clampForce: number;
  readonly clamps: number;
  readonly fitted: number;
  readonly foot: number;
  readonly safety: number;
  /** Wrap at which most is asked of the clamps. */
  readonly worst: number;
  readonly lift: number;
}

/** Where the pull's loads on the wood are greatest. */
export type PlanWood = WoodLoads;

export interface PlanScrew {
  /** From the centre line, mm. */
  readonly offset: number;
  readonly size: string;
  readonly length: number;
  /** The length as it is sold, e.g. `1-1/2 in`. */
  readonly lengthName: string;
  /** Pilot drill diameter, mm. */
  readonly pilot: number;
  /** The pilot drill as the trade calls it, e.g. `7/64 in`. */
  readonly pilotDrill: string;
  /** Pilot depth into the station's straight edge, mm. */
  readonly pilotDepth: number;
}

export interface PlanStation {
  readonly name: string;
  /** Middle of its thickness along the centre line from the cone's end A, mm. */
  readonly at: number;
  readonly thickness: number;
  /** The face that touches the sheet: the smaller radius; `from` on a constant radius. */
  readonly contact: 'from' | 'to';
  /** Radius to cut, mm: the form radius at the contact face. */
  readonly radius: number;
  /** The form radius at the other face, mm. */
  readonly farRadius: number;
  /** Degrees, for those who bevel the edge. */
  readonly bevel: number;
  readonly screws: readonly PlanScrew[];
  /** Which runs end at this station, and with which end; empty for an infill station. */
  readonly ends: readonly { readonly run: string; readonly end: 'from' | 'to' }[];
}

export interface PlanSpine {
  /** Board length along the centre line between the cone's ends, without ears, mm. */
  readonly length: number;
  readonly thickness: number;
  /** Board width at the cone's end A and B: twice the form radius, mm. */
  readonly widthFrom: number;
  readonly widthTo: number;
  /** Length of the ear past each end, mm; 0 for none. Ears follow the taper. */
  readonly ears: number;
  readonly clampHoles: readonly { readonly at: number; readonly diameter: number }[];
  readonly screwHoles: readonly PlanScrewHole[];
}

export interface PlanScrewHole {
  readonly at: number;
  readonly offset: number;
  readonly diameter: number;
  readonly countersink: number;
  /** The face the screw head sits in. */
  readonly side: 'back' | 'front';
  /** Name of the station or backing station it holds. */
  readonly holds: string;
}

export interface PlanBacking {
  readonly name: string;
  readonly at: number;
  readonly thickness: number;
  /** Height, equal to the spine's width at its narrower face, mm. */
  readonly width: number;
  /** Depth behind the spine: the foot, mm. */
  readonly depth: number;
  readonly screws: readonly PlanScrew[];
}

export interface PlanBlank {
  /** Closed, counter-clockwise, arcs as chords within 0.01 mm. x along the held leg's tangent line, y toward the free leg. */
  readonly outline: readonly Point[];
  /** Held side first. */
  readonly tangents: readonly (readonly [Point, Point])[];
  /** Where to trim after bending. */
  readonly trims: readonly (readonly [Point, Point])[];
  /** kg. */
  readonly mass: number;
  /** Sheet needed along the held tangent line, and across it. */
  readonly width: number;
  readonly height: number;
}

/** The finishing block as laid out; mm. */
export type PlanBlock = Omit<BlockLayout, 'layers'> & { readonly layers: readonly PlanLayer[] };
export type PlanLayer = Omit<BlockLayer, 'contact'> & PlanContact;
