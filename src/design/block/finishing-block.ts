import { at } from '../../base/at';
import type { End } from '../../base/ends';
import { centreFromTangent, centreLength, tangentFromCentre } from '../../base/cone';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { BendPlan } from '../bend/bend-plan';
import { namedPieceOn } from '../fixture/bed';
import { boardOf } from '../built/board-of';
import { contactOf } from '../form/contact';
import type { BlockChoice, Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { layerCorners } from './block-shape';
import { ROUNDING } from '../../base/tolerance';

/** Straight edge followed along each leg, mm: more is not dressed (common practice). */
const LONGEST_LEG = 100;
/** Least depth of wood behind the middle of the arc, and below the lower leg's end, mm (common practice). */
const LEAST_DEPTH = 50;
const BELOW_LEG = 15;
/** The dowel holes stand at least this far above the base, mm. */
const HOLE_RISE = 20;
/** Of the width free for them, how far out the holes stand: wood to spare for a wandering drill. */
const HOLES_OUT = 0.7;
/** More layers than this are not glued up by hand. */
const MOST_LAYERS = 60;

/** Layers of board to dress the finished bend over, stacked along the finished bend's own centre line. */
export interface BlockLayout {
  /** Along the tangent line from end A. */
  readonly from: number;
  readonly to: number;
  /** Length of the straight edges that follow the legs. */
  readonly legs: { readonly held: number; readonly free: number };
  /** Dowel or bolt holes, the same in every layer: from the centre line, aside and toward the bend along the line that halves it. */
  readonly holes: readonly { readonly x: number; readonly y: number; readonly diameter: number }[];
  readonly layers: readonly BlockLayer[];
}

export interface BlockLayer {
  readonly name: string;
  /** Middle of its thickness along the finished bend's centre line from end A. */
  readonly at: number;
  readonly thickness: number;
  readonly contact: End;
  /** Radius to cut: the finished inside radius at the contact face. */
  readonly radius: number;
  readonly farRadius: number;
}

/** The finishing block with what its drawings need besides. */
export interface FinishingBlock extends BlockLayout {
  /** Height of its flat back in the layers' coordinates (centre line at the origin, arc's middle straight up), mm. */
  readonly base: number;
  /** Finished wrap, radians: between the leg edges of a layer. */
  readonly wrap: number;
}

/**
 * Lays out the block to dress the bend over: slices square to the centre line, each with the finished inside radius at its own
 * smaller-radius face, so that none stands proud of the finished cone or of the legs' planes. Null without a `block` in the job.
 */
export function layOutBlock(bend: BendPlan, job: Job, tables: Tables): Staged<FinishingBlock | null> {
  if (!job.block) return { value: null, findings: [] };
  const board = boardOf(job.block.board, tables);
  const { thickness } = board;
  const layers = stackLayers(bend, job.block, thickness);
  if (layers.length === 0 || layers.length > MOST_LAYERS)
    return { value: null, findings: [badCount(layers.length, thickness)] };

  const radii = layers.map(({ radius }) => radius);
  const [least, largest] = [Math.min(...radii), Math.max(...radii)];
  const wrap = bend.finishedWrap;
  const legs = { held: Math.min(bend.legs.held, LONGEST_LEG), free: Math.min(bend.legs.free, LONGEST_LEG) };
  const legEnd = least * Math.cos(wrap / 2) - Math.max(legs.held, legs.free) * Math.sin(wrap / 2);
  const base = Math.min(legEnd, least - LEAST_DEPTH) - BELOW_LEG;
  const shape = { wrap, legs, base };
  const holes = placeHoles(
    layerCorners({ ...shape, radius: least, contact: at(layers, 0).contact }),
    { ...shape, radius: least },
    tables.tools.blockDowel,
    tables.rules.clampWood,
  );

  const widest = layerCorners({ ...shape, radius: largest, contact: at(layers, 0).contact }).map(({ x }) => x);
  const findings = [
    ...holeFindings(holes, tables.rules.clampWood),
    ...boardFindings(
      Math.max(...widest) - Math.min(...widest),
      largest - base,
      namedPieceOn(board, job.machine.bed),
      job.cut.border,
    ),
  ];
  const half = thickness / 2;
  const [first, last] = [at(layers, 0), at(layers, -1)];
  const block: FinishingBlock = {
    from: tangentFromCentre(bend.finished, first.at - half),
    to: tangentFromCentre(bend.finished, last.at + half),
    ...shape,
    holes,
    layers,
  };
  return { value: hasErrors(findings) ? null : block, findings };
}

/** Whole layers, centred on the wanted place and pushed back inside where they would reach past an end. */
function stackLayers(bend: BendPlan, { at, length }: BlockChoice, thickness: number): BlockLayer[] {
  const whole = centreLength(bend.finished);
  const wanted = Math.ceil(centreFromTangent(bend.finished, length) / thickness - ROUNDING);
  const count = Math.min(wanted, Math.floor(whole / thickness + ROUNDING));
  const depth = count * thickness;
  const start = Math.max(0, Math.min(whole - depth, centreFromTangent(bend.finished, at) - depth / 2));
  return Array.from({ length: Math.min(count, MOST_LAYERS + 1) }, (_, index): BlockLayer => {
    const low = start + index * thickness;
    return {
      name: `block-${index + 1}`,
      at: low + thickness / 2,
      thickness,
      ...contactOf(bend.finished, low, low + thickness),
    };
  });
}

/**
 * Two holes side by side above the base, as far apart as leaves `wood` round each in the smallest layer, and then somewhat nearer. The
 * slice is convex: what keeps the distance from each side's line, and from the arc where it is nearest, keeps it from the edge.
 */
function placeHoles(
  corners: readonly { x: number }[],
  { wrap, base, radius }: Pick<FinishingBlock, 'wrap' | 'base'> & { readonly radius: number },
  diameter: number,
  wood: number,
): BlockLayout['holes'] {
  const need = wood + diameter / 2;
  const y = base + Math.max(HOLE_RISE, need);
  const half = wrap / 2;
  const underLeg = (radius - need - y * Math.cos(half)) / Math.sin(half);
  const underArc =
    y > (radius - need) * Math.cos(half) ? Math.sqrt(Math.max(0, (radius - need) ** 2 - y ** 2)) : Infinity;
  const xs = corners.map(({ x }) => x);
  const right = Math.min(Math.max(...xs) - need, underLeg, underArc);
  const left = Math.max(Math.min(...xs) + need, -underLeg, -underArc);
  const [middle, out] = [(left + right) / 2, (HOLES_OUT * (right - left)) / 2];
  return [-out, out].map((aside) => ({ x: middle + aside, y, diameter }));
}

function badCount(count: number, thickness: number): Finding {
  return count === 0
    ? finding('block-too-thick', 'block', { thickness })
    : finding('block-too-many-layers', 'block.length', { most: MOST_LAYERS, thickness });
}

function holeFindings(holes: BlockLayout['holes'], wood: number): Finding[] {
  const [left, right] = holes;
  const apart = left && right ? right.x - left.x - left.diameter : -1;
  if (apart >= wood) return [];
  return [finding('block-without-room-for-dowels', 'block', { between: Math.max(0, apart), needed: wood })];
}

function boardFindings(
  a: number,
  b: number,
  board: { name: string; length: number; width: number },
  border: number,
): Finding[] {
  const [long, short] = [Math.max(a, b), Math.min(a, b)];
  const [boardLong, boardShort] = [
    Math.max(board.length, board.width) - 2 * border,
    Math.min(board.length, board.width) - 2 * border,
  ];
  if (long <= boardLong && short <= boardShort) return [];
  return [
    finding('block-larger-than-board', 'block', {
      size: [long, short],
      board: board.name,
      room: [boardLong, boardShort],
    }),
  ];
}
