import { at } from '../../base/at';
import type { Bounds } from '../../base/bounds';
import { InternalError } from '../../base/errors';
import type { Shaped } from '../parts/part';
import { chainAt, noFit, quarterTurned, sideAt, type Point } from './convex';
import type { Item, Piece, Pose } from './item';
import { outlineOf } from './outline';

/** What is placed as one: a part by itself, or two half-discs together. */
export interface Unit {
  readonly poses: readonly UnitPose[];
  /** By which units are put in order, mm², mm, mm. */
  readonly area: number;
  readonly long: number;
  readonly short: number;
}

export interface UnitPose {
  readonly pieces: readonly Placed[];
  readonly members: readonly Member[];
  readonly bounds: Bounds;
}

/** A piece of room and how far it is shifted, mm. */
export interface Placed extends Point {
  readonly piece: Piece;
}

/** A part, by how many quarters it is turned about its origin and where that comes to lie, mm. */
export interface Member extends Point {
  readonly part: Shaped;
  readonly quarters: number;
}

/** A part by itself. */
export function single(item: Item): Unit {
  return unitOf(
    item.poses.map((pose) => [{ item, pose, x: 0, y: 0 }]),
    item.area,
  );
}

/** How two half-discs lie together: straight edge to straight edge as a disc, or the same slid by half a radius, or head to tail in one band. */
export const pairings = ['disc', 'slid', 'head to tail'] as const;
export type Pairing = (typeof pairings)[number];

/** Two half-discs as one unit, the second turned over and laid against the first. */
export function pair(first: Item, second: Item, pairing: Pairing): Unit {
  const turn = pairing === 'head to tail' ? 0 : 1;
  const [a, b] = [poseOf(first, turn), poseOf(second, turn + 2)];
  const level =
    pairing === 'head to tail'
      ? a.bounds.minY - b.bounds.minY
      : (a.bounds.minY + a.bounds.maxY - b.bounds.minY - b.bounds.maxY) / 2;
  const shift = { x: 0, y: level + (pairing === 'slid' ? (a.bounds.maxX - a.bounds.minX) / 2 : 0) };
  // Half-discs are convex: one piece each.
  const [fixed, moving] = [a.pieces[0], b.pieces[0]];
  if (!fixed || !moving) throw new InternalError('a half-disc without room');
  const { right } = noFit(fixed.shape, moving.over);
  shift.x = chainAt(right, shift.y, sideAt(right, shift.y));
  const poses = [0, 1, 2, 3].map((quarters) => [
    { item: first, pose: poseOf(first, turn + quarters), x: 0, y: 0 },
    { item: second, pose: poseOf(second, turn + 2 + quarters), ...quarterTurned(shift, quarters) },
  ]);
  return unitOf(poses, first.area + second.area);
}

/** Whether an item is a half-disc, or one with a straight tail: one arc of half a turn, all else straight, no hollows. */
export function isHalfDisc(item: Item): boolean {
  const { vertices } = outlineOf(item.part);
  const arcs = vertices.filter(({ bulge }) => bulge !== 0);
  return (
    item.poses[0].pieces.length === 1 &&
    vertices.length <= 4 &&
    arcs.length === 1 &&
    Math.abs(Math.abs(at(arcs, 0).bulge) - 1) < 1e-6
  );
}

function poseOf({ poses }: Item, quarters: number): Pose {
  return poses[quarters % 4] ?? poses[0];
}

interface Laid extends Point {
  readonly item: Item;
  readonly pose: Pose;
}

function unitOf(layouts: readonly (readonly Laid[])[], area: number): Unit {
  const poses = layouts.map((laid): UnitPose => ({
    pieces: laid.flatMap(({ pose, x, y }) => pose.pieces.map((piece) => ({ piece, x, y }))),
    members: laid.map(({ item, pose, x, y }) => ({ part: item.part, quarters: pose.quarters, x, y })),
    bounds: {
      minX: Math.min(...laid.map(({ pose, x }) => pose.bounds.minX + x)),
      minY: Math.min(...laid.map(({ pose, y }) => pose.bounds.minY + y)),
      maxX: Math.max(...laid.map(({ pose, x }) => pose.bounds.maxX + x)),
      maxY: Math.max(...laid.map(({ pose, y }) => pose.bounds.maxY + y)),
    },
  }));
  const [{ minX, minY, maxX, maxY }] = poses.map(({ bounds }) => bounds) as [Bounds];
  return { poses, area, long: Math.max(maxX - minX, maxY - minY), short: Math.min(maxX - minX, maxY - minY) };
}
