import type { LengthUnit } from '../base/units';
import type { Board, ClampKind, GaugeTable, HandForce, Metal, MetalName, Screw, YokeBolt, YokeStock } from './schema';

/** The numbers that belong to shop practice rather than to a job; see `shared/shop-rules.json` for units and sources. */
export interface ShopRules {
  readonly screwCover: number;
  readonly minBiteDiameters: number;
  readonly pilotExtraDepth: number;
  readonly thirdScrewAbove: number;
  readonly clampHole: number;
  readonly clampHoleSizes: readonly number[];
  readonly clampHoleMin: number;
  readonly clampWood: number;
  readonly clampRating: number;
  readonly minClamps: number;
  readonly earLength: number;
  readonly footDepths: readonly number[];
  readonly maxSpan: number;
  readonly maxSag: number;
  readonly maxBow: number;
  readonly handForceLimit: number;
  readonly handForceFinding: number;
  readonly safetyFactor: number;
  readonly maxWrapDegrees: number;
  readonly swingExtraDegrees: number;
  /** Wood left between parts laid out on a board, and uncut along its edges, mm. */
  readonly partGap: number;
  readonly boardBorder: number;
  /** Left on a leg that is trimmed once its bend is made, mm. */
  readonly trimAllowance: number;
  /** The same between blanks on a metal sheet. */
  readonly blankGap: number;
  readonly blankBorder: number;
  /** Section of the batten along the edge that is pulled, mm. */
  readonly battenThick: number;
  readonly battenWide: number;
  readonly clampThroat: number;
  readonly maxDeparture: number;
  readonly maxLegBow: number;
  readonly squarePullAbove: number;
  readonly noseEdge: number;
  readonly noseSlope: number;
  readonly noseClears: number;
  readonly minHandle: number;
  readonly maxLegTurn: number;
  readonly maxYokeTail: number;
  readonly maxHeldSpread: number;
  readonly clampForceSpread: number;
  readonly maxHeldLift: number;
  readonly maxHandle: number;
  readonly yokeBoltBehind: number;
  readonly yokeBoltPast: number;
  readonly plankShort: number;
  readonly gaugePast: number;
  readonly pressArm: number;
  /** What is misread on a finished part: degrees, degrees, a share; and what its legs may keep beyond the sums, degrees. */
  readonly angleMisread: number;
  readonly takeOffMisread: number;
  readonly radiusMisread: number;
  readonly mostLegsOff: number;
  /** Allowable shear of a screw over its diameter squared, N/mm²; its share in an edge; how many times as much fails. */
  readonly screwShear: number;
  readonly screwInEdge: number;
  readonly screwUltimate: number;
  /** Most the spine's front edge may bed in, mm; times its strength at which a round edge crushes for certain. */
  readonly edgeBeds: number;
  readonly edgeUltimate: number;
}

/** The numbers that belong to jigsaws, routers and lasers; see `shared/tools.json` for what each is, its unit and source. */
export interface ToolRules {
  readonly bladeTurn: number;
  readonly reliefSpacing: number;
  readonly reliefShort: number;
  readonly narrowWaste: number;
  readonly hatchSpacing: number;
  readonly bit: number;
  readonly bitGap: number;
  readonly grooveShare: number;
  readonly grooveMost: number;
  readonly grooveLeast: number;
  readonly grooveOverrun: number;
  readonly routerFit: number;
  readonly bridgeLength: number;
  readonly bridgeHeight: number;
  readonly bridgeSpacing: number;
  readonly kerf: number;
  readonly laserFit: number;
  readonly laserGap: number;
  readonly laserBorder: number;
  readonly laserThickest: number;
  readonly stackTo: number;
  readonly dowel: number;
  readonly blockDowel: number;
  readonly dowelLeast: number;
  readonly jointWood: number;
  readonly tabLeast: number;
  readonly tabMost: number;
  readonly tabShort: number;
  readonly underHead: number;
  readonly engraved: number;
  readonly looseFit: number;
  readonly tabRelief: number;
  readonly kerfLeast: number;
  readonly sameThickness: number;
  readonly leastGap: number;
  readonly fitStep: number;
  /** Diameters dowels are sold in, falling, by the unit they are sold by. */
  readonly dowelSizes: Readonly<Record<'mm' | 'in', readonly number[]>>;
}

/** All reference tables, as the core takes them. */
export interface Tables {
  readonly metals: readonly Metal[];
  readonly metalNames: readonly MetalName[];
  readonly gauges: readonly GaugeTable[];
  readonly boards: readonly Board[];
  readonly screws: readonly Screw[];
  readonly clamps: readonly ClampKind[];
  readonly handForces: readonly HandForce[];
  readonly yokeStock: readonly YokeStock[];
  readonly yokeBolts: readonly YokeBolt[];
  readonly rules: ShopRules;
  readonly tools: ToolRules;
  /** What of the rules and the tools' numbers is another for a job in inches, mm all the same. */
  readonly inch: { readonly rules: Partial<ShopRules>; readonly tools: Partial<ToolRules> };
}

/** The tables as a job in this unit takes them: round inches for a job in inches. */
export function tablesIn(tables: Tables, unit: LengthUnit): Tables {
  if (unit === 'mm') return tables;
  return {
    ...tables,
    rules: { ...tables.rules, ...tables.inch.rules },
    tools: { ...tables.tools, ...tables.inch.tools },
  };
}
