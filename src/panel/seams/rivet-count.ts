import { MM_PER_INCH } from '../../base/inch';
import type { Fastener, RivetRule } from '../../tables/fasteners';
import { ROUNDING } from '../../base/tolerance';

/** A plain sheet joint to be riveted, mm. Information only: certified work follows its own rules. */
export interface Joint {
  readonly thickness: number;
  readonly width: number;
  readonly rivet: Pick<Fastener, 'hole'>;
  readonly rule: RivetRule;
  /** Of the table's count: 0.75 for single-lap joints of sheet, 0.6 for another share of the strength, 1 for all of it. */
  readonly share?: number;
}

/** To a tenth, as the tables print. */
const tenth = (value: number): number => Math.round(value * 10) / 10;

/**
 * Rivets to an inch of width that make a joint as strong as the sheet: enough for shear, t/(shear·πd²/4), and for bearing,
 * 1/(bearing·d), d the hole. AC 43.13-1B tables 4-10 and 4-11 follow it to a tenth.
 */
export function rivetsPerInch({ thickness, rivet, rule }: Omit<Joint, 'width' | 'share'>): number {
  const diameter = rivet.hole;
  const perMm = Math.max(thickness / ((rule.shear * Math.PI * diameter ** 2) / 4), 1 / (rule.bearing * diameter));
  return perMm * MM_PER_INCH;
}

/** How many rivets a joint takes, by the tables' own rounding: a tenth an inch, then up to whole rivets. */
export function rivetCount(joint: Joint): number {
  const perInch = tenth(tenth(rivetsPerInch(joint)) * (joint.share ?? 1));
  return Math.ceil((perInch * joint.width) / MM_PER_INCH - ROUNDING);
}

/** The width of sheet (mm) that carries a load (N): the joint needs the rivets of that width. `tensile` MPa. */
export function widthForLoad(load: number, thickness: number, tensile: number): number {
  return load / (thickness * tensile);
}
