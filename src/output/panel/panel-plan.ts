import { at } from '../../base/at';
import { toDegrees } from '../../base/angle';
import { flattenLoop } from '../../base/flatten';
import { loopOnGrid } from '../../base/on-grid';
import type { Point } from '../../base/polygon';
import { flatOnLeg, fromFrame } from '../../panel/flat/bend';
import { loopArea } from '../../base/area';
import type { SaidFinding } from '../../findings/say';
import type { BuiltPlan, PlanHold, PlanPull } from '../plan/plan';
import { benchOf, type BenchRoom } from './bench';
import { grainDegrees } from './grain';
import type { NamedBlock } from './corner-blocks';
import type { BuildablePanel } from './plan-panel';
import type { HowTraced } from './flat-panel';
import { CHORD_STRAY } from '../../base/tolerance';

/** What `plan --json` and plan.json hold of a panel: mm on the flat of the neutral surface, degrees, kg. */
export interface PanelPlan {
  readonly title: string;
  readonly panel: PlanPanelPart | null;
  /** Each form as a job of its own. */
  readonly forms: readonly PlanPanelForm[];
  readonly findings: readonly SaidFinding[];
}

export interface PlanPanelPart {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly bends: readonly PlanPanelBend[];
  readonly corners: readonly PlanPanelCorner[];
  /** Names of the bends in the order of work. */
  readonly order: readonly string[];
  readonly pair: boolean;
  /** One panel. */
  readonly mass: number;
  /** How a traced outline came by its size; null for a panel built up. */
  readonly traced: PlanTraced | null;
  readonly seams: readonly PlanSeam[];
  /** What is cut before the bends, and the lines it is trimmed to after; null where nothing is left on. */
  readonly trim: PlanTrim | null;
  readonly edges: PlanEdges | null;
  /** The sheets it is cut from; null where the job names none. */
  readonly metal: PlanMetal | null;
}

export interface PlanMetal {
  readonly sheets: readonly {
    readonly id: string;
    readonly width: number;
    readonly length: number;
    /** Turned by `angle`, degrees, about the origin of the blank’s drawing, then moved. */
    readonly blanks: readonly {
      readonly blank: string;
      readonly angle: number;
      readonly dx: number;
      readonly dy: number;
    }[];
  }[];
  /** kg of each blank as cut. */
  readonly mass: Readonly<Record<string, number>>;
  /** The blanks’ share of the sheets. */
  readonly used: number;
}

export interface PlanSeam {
  readonly on: string;
  readonly fastener: string;
  readonly hole: number;
  readonly drill: 'now' | 'match';
  readonly lap: number;
  readonly length: number;
  readonly pitch: number;
  /** Row after row. */
  readonly holes: readonly Point[];
}

export interface PlanTrim {
  readonly cut: readonly Point[];
  readonly lines: readonly (readonly Point[])[];
  readonly leftOn: readonly { readonly bend: string; readonly side: 'base' | 'leg'; readonly extra: number }[];
}

export interface PlanEdges {
  readonly caps: readonly { readonly edge: string; readonly length: number }[];
  readonly deburr: number;
}

export interface PlanTraced {
  readonly file: string | null;
  readonly sizes: string;
  readonly scale: { readonly x: number; readonly y: number };
  /** How many times an error in a reference grows at most. */
  readonly growth: number;
  /** Largest relative difference between a reference and what it comes out as; null where they are too few to leave one. */
  readonly residual: number | null;
  readonly references: readonly { readonly is: number; readonly comesOut: number }[];
  readonly takenOff: readonly { readonly bend: string; readonly from: number; readonly to: number }[];
}

export interface PlanPanelBend {
  readonly name: string;
  readonly form: string;
  readonly hand: 1 | -1;
  readonly smallEnd: 'left' | 'right' | 'either';
  readonly held: 'base' | 'leg';
  readonly turn: 'up' | 'down';
  readonly angle: number;
  /** How far the bend reaches along its rulings from end A; past its ends at a mitred corner. */
  readonly run: { readonly from: number; readonly to: number };
  readonly baseLine: readonly [Point, Point];
  readonly legLine: readonly [Point, Point];
  /** The same two lines by what is clamped: the form stands on the held one. From the bend's end A to B. */
  readonly heldLine: readonly [Point, Point];
  readonly freeLine: readonly [Point, Point];
  /** Between the sheet's grain and the bend's base line, 0 along it, 90 across; null where the job names no sheet to lay it out on. */
  readonly grain: number | null;
  /** Bench on which the sheet lies flat with the form on it: along the form, behind its front and before it. */
  readonly bench: BenchRoom;
  /** Finished inside radius and wrap where the sheet leaves the form. */
  readonly finished: { readonly from: number; readonly to: number };
  readonly wrap: number;
  /** How it is pulled and held in its step, on the form that is built. */
  readonly pull: PlanPull;
  readonly hold: PlanHold;
}

export interface PlanPanelCorner {
  readonly between: readonly [string, string];
  readonly treat: string;
  readonly dart: number;
  readonly gap: number;
  readonly reach: readonly [number, number];
  readonly root: { readonly at: Point; readonly diameter: number } | null;
  /** The block it is dressed over; null where the job asks for none. */
  readonly block: PlanCornerBlock | null;
}

/** Layers from the base up, each by the heights of its faces over the base's inside face and by its outline there, on the flat. */
export interface PlanCornerBlock {
  readonly reach: number;
  readonly height: number;
  readonly dowel: number;
  readonly holes: readonly Point[];
  readonly foot: readonly Point[];
  readonly layers: readonly { readonly from: number; readonly to: number; readonly outline: readonly Point[] }[];
}

export interface PlanPanelForm {
  readonly name: string;
  readonly runs: readonly { readonly bend: string; readonly from: number; readonly to: number }[];
  readonly plan: BuiltPlan;
}

const MM3_PER_M3 = 1e9;

/** The plan of a panel that can be made. */
export function toPanelPlan(planned: BuildablePanel, findings: readonly SaidFinding[]): PanelPlan {
  const { job, panel, bends, order, forms, blocks } = planned;
  const name = (index: number): string => at(panel.bends, index).name;
  const [grain, benches] = [grainDegrees(planned), benchOf(planned)];
  return {
    title: job.title,
    panel: {
      outline: flattenLoop(loopOnGrid(panel.outline), CHORD_STRAY),
      holes: panel.holes.map((hole) => flattenLoop(loopOnGrid(hole), CHORD_STRAY)),
      bends: bends.map(({ bend, step, hand, smallEnd, alone }, index): PlanPanelBend => {
        const { length } = bend.finished;
        const baseLine = [fromFrame(bend.frame, [0, 0]), fromFrame(bend.frame, [length, 0])] as const;
        const legLine = [flatOnLeg(bend, [0, 0]), flatOnLeg(bend, [length, 0])] as const;
        return {
          name: bend.name,
          form: step.use.body.name,
          hand,
          smallEnd,
          held: step.held,
          turn: bend.turn,
          angle: toDegrees(bend.angle),
          run: bend.run,
          baseLine,
          legLine,
          heldLine: step.held === 'base' ? baseLine : legLine,
          freeLine: step.held === 'base' ? legLine : baseLine,
          grain: grain?.[bend.name] ?? null,
          bench: at(benches, index),
          finished: { from: bend.finished.radiusA, to: bend.finished.radiusB },
          wrap: alone.plan.bend.wrap.chosen,
          pull: alone.plan.pull,
          hold: alone.plan.hold,
        };
      }),
      corners: panel.corners.map(({ between: [a, b], treat, dart, gap, reach, root }) => ({
        between: [name(a), name(b)],
        treat,
        dart: toDegrees(dart),
        gap,
        reach,
        root,
        block: blockPart(blocks.find(({ block }) => block.between[0] === a && block.between[1] === b)),
      })),
      order: order.map(({ bend }) => name(bend)),
      pair: job.panel.pair,
      mass: massOf(planned),
      traced: planned.flat.traced && tracedPart(planned.flat.traced),
      ...finishPart(planned),
    },
    forms: forms.map(({ name: called, runs, planned: form }) => ({
      name: called,
      runs: runs.map(({ name: bend, from, to }) => ({ bend, from, to })),
      plan: form.plan,
    })),
    findings,
  };
}

function blockPart(made: NamedBlock | undefined): PlanCornerBlock | null {
  if (!made) return null;
  const { reach, height, holes, foot, layers } = made.block;
  return { reach, height, dowel: made.dowel, holes, foot, layers };
}

function finishPart({
  finish: { seams, trim, edges, metal },
  panel,
}: BuildablePanel): Pick<PlanPanelPart, 'seams' | 'trim' | 'edges' | 'metal'> {
  return {
    seams: seams.map(({ seam, length, pitch, rows }) => ({
      on: seam.on,
      fastener: seam.fastener.id,
      hole: seam.fastener.hole,
      drill: seam.drill,
      lap: seam.lap,
      length,
      pitch,
      holes: rows.flat().map(({ x, y }) => [x, y] as const),
    })),
    trim: trim && {
      cut: flattenLoop(loopOnGrid(trim.cut.cut.vertices), CHORD_STRAY),
      lines: trim.cut.trim.map((run) => flattenLoop(run, CHORD_STRAY)),
      leftOn: trim.leftOn.map(({ bend, side, extra }) => ({ bend: at(panel.bends, bend).name, side, extra })),
    },
    edges: edges && { caps: edges.caps, deburr: edges.deburr },
    metal: metal && {
      sheets: metal.layout.sheets.map(({ id, width, length, placements }) => ({
        id,
        width,
        length,
        blanks: placements.map(({ part, angle, dx, dy }) => ({ blank: part, angle: toDegrees(angle), dx, dy })),
      })),
      mass: metal.layout.mass,
      used: metal.layout.used,
    },
  };
}

function tracedPart({ file, sizes, scale: { x, y, growth, residual }, references, takenOff }: HowTraced): PlanTraced {
  return {
    file,
    sizes,
    scale: { x, y },
    growth,
    residual,
    references,
    takenOff: takenOff.map(({ bend, A, B }) => ({ bend, from: A, to: B })),
  };
}

/** Mass of one panel, kg: net outline × thickness × the metal's density. */
export function massOf({ panel, bends }: Pick<BuildablePanel, 'panel' | 'bends'>): number {
  const cutOut = panel.holes.reduce((sum, hole) => sum + Math.abs(loopArea(hole)), 0);
  const area = Math.abs(loopArea(panel.outline)) - cutOut;
  return ((area * panel.thickness) / MM3_PER_M3) * at(bends, 0).alone.bend.metal.density;
}

/** The plan of one that cannot. */
export function noPanelPlan(title: string, findings: readonly SaidFinding[]): PanelPlan {
  return { title, panel: null, forms: [], findings };
}
