import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Point } from '../../base/polygon';
import type { PanelRules } from '../../tables/panel-rules';
import type { CornerSpec } from '../flat/built-up';
import type { Corner, CornerTreat } from '../flat/panel';
import { direction } from '../flat/plane';
import { outAtRim, squareCut, type CutCurve } from './end-cut';
import type { BendEnd } from './mitre';
import type { RootHole } from './root';
import {
  apartAtLegLines,
  dartOf,
  dressShrink,
  halvingCut,
  mitreOf,
  openedCut,
  patchArea,
  type CornerEnds,
} from './treat';
import { ROUNDING } from '../../base/tolerance';

/** How the two bends at a corner end, and the hole between them. */
export interface CornerCuts {
  /** Of the bend that comes in along the outline, then of the one that goes out. */
  readonly curves: readonly [CutCurve, CutCurve];
  /** Null where the corner is left whole, to be dressed. */
  readonly root: RootHole | null;
  readonly tab: Corner['tab'];
  readonly facts: Pick<Corner, 'treat' | 'dart' | 'gap' | 'apart' | 'patch' | 'shrink'>;
}

export interface CornerGiven extends CornerEnds {
  readonly spec: Omit<CornerSpec, 'between'>;
  /** Which of the two carries a lap's tab. */
  readonly tabOn: 0 | 1;
  /** As the maker names it: `long/short`. */
  readonly name: string;
  readonly thickness: number;
  /** Unit vectors along the base's outline into the corner and out of it. */
  readonly headings: readonly [Point, Point];
}

/** Decides how a corner is cut and where; its findings say why it cannot be as asked. */
export function cornerCuts(given: CornerGiven, rules: PanelRules): CornerCuts | Finding[] {
  const dart = dartOf(given);
  const treat = given.spec.treat ?? (dart >= 0 ? 'mitre' : 'open');
  if (dart < 0 && treat !== 'open') return [metalLacking(given, treat, dart)];
  if (treat === 'open') return openCuts(given, dart, rules);
  if (treat === 'dress') return dressedCuts(given, dart);
  return mitredCuts(given, { treat, dart, rules });
}

function metalLacking({ name }: CornerGiven, treat: CornerTreat, dart: number): Finding {
  return finding('corner-metal-lacking', `corners.${name}.treat`, { lacking: -dart, treat });
}

function rootHole(at: Point, thickness: number, { rules, gap }: { rules: PanelRules; gap: number }): RootHole {
  const diameter = Math.max(rules.rootHole, rules.rootHoleThicknesses * thickness, rules.rootHoleOverGap * gap);
  return { at, diameter };
}

function openCuts(given: CornerGiven, dart: number, rules: PanelRules): CornerCuts {
  const { ends, inside, at, headings, thickness } = given;
  const roomForSquare = inside <= Math.PI + ROUNDING;
  const away = outward(headings);
  const curve = (end: BendEnd): CutCurve => (roomForSquare ? squareCut(end.bend, end.x) : halvingCut(end, at, away));
  return {
    curves: [curve(ends[0]), curve(ends[1])],
    root: rootHole(at, thickness, { rules, gap: 0 }),
    tab: null,
    facts: { treat: 'open', dart, gap: 0, apart: apartAtLegLines(ends), patch: patchArea(given), shrink: 0 },
  };
}

/** Out of the base, halfway between the normals of the two edges. */
function outward([into, out]: readonly [Point, Point]): Point {
  return direction([0, 0], [into[1] + out[1], -into[0] - out[0]]);
}

function dressedCuts(given: CornerGiven, dart: number): CornerCuts {
  const { ends, spec } = given;
  return {
    curves: [squareCut(ends[0].bend, ends[0].x), squareCut(ends[1].bend, ends[1].x)],
    root: null,
    tab: null,
    facts: { treat: 'dress', dart, gap: 0, apart: 0, patch: 0, shrink: dressShrink(given, spec.rounded) },
  };
}

/** What is said about a dressed corner's shrink; above the limit it is refused. */
export function shrinkFindings(name: string, shrink: number, rules: PanelRules): Finding[] {
  const path = `corners.${name}`;
  if (shrink > rules.dressWarning) {
    return [finding('corner-shrink', path, { share: shrink, most: rules.dressWarning })];
  }
  if (shrink > rules.dressNote) {
    return [finding('corner-shrink-much', path, { share: shrink })];
  }
  return [finding('corner-shrink-little', path, { share: shrink })];
}

function mitredCuts(
  given: CornerGiven,
  { treat, dart, rules }: { treat: 'mitre' | 'lap'; dart: number; rules: PanelRules },
): CornerCuts | Finding[] {
  const { ends, rims, spec, thickness, name } = given;
  const mitre = mitreOf(given, rules.rootShrink);
  if (!mitre) {
    return [finding('mitre-never-meets', `corners.${name}`)];
  }
  const gap = spec.gap ?? thickness;
  const opened = (side: 0 | 1): CutCurve => {
    const curve = mitre.ideal[side];
    const from = mitre.rootOut[side];
    const setBack = treat === 'lap' && side === given.tabOn ? 0 : gap / 2;
    return openedCut(curve, { past: ends[side].past, from, to: outAtRim(curve, rims[side]), setBack });
  };
  return {
    curves: [opened(0), opened(1)],
    root: rootHole(mitre.root, thickness, { rules, gap: mitre.rootGap }),
    tab: treat === 'lap' ? { width: spec.tab.width, on: given.tabOn } : null,
    facts: { treat, dart, gap, apart: gap, patch: 0, shrink: 0 },
  };
}
