import boards from '../../shared/boards.json';
import clamps from '../../shared/clamps.json';
import metalNames from '../../shared/metal-names.json';
import gauges from '../../shared/gauges.json';
import handForces from '../../shared/hand-forces.json';
import screws from '../../shared/screws.json';
import metals from '../../shared/sheet-metals.json';
import rules from '../../shared/shop-rules.json';
import tools from '../../shared/tools.json';
import yokeBolts from '../../shared/yoke-bolts.json';
import yokeStock from '../../shared/yoke-stock.json';
import { InternalError } from '../base/errors';
import type { Board, ClampKind, GaugeTable, HandForce, Metal, MetalName, Screw, YokeBolt, YokeStock } from './schema';
import type { ShopRules, Tables, ToolRules } from './tables';

/**
 * The tables of `shared/`, as bundled with the program. Their rows are held to `schema.ts` by the tests, not here: reading the
 * schema library would cost every command its start-up time. Throws where a rule is missing.
 */
export function loadTables(): Tables {
  return {
    metals: metals.rows satisfies Metal[],
    metalNames: metalNames.rows satisfies MetalName[],
    gauges: gauges.rows satisfies GaugeTable[],
    boards: boards.rows as Board[],
    screws: screws.rows as Screw[],
    clamps: clamps.rows satisfies ClampKind[],
    handForces: handForces.rows satisfies HandForce[],
    yokeStock: yokeStock.rows as YokeStock[],
    yokeBolts: yokeBolts.rows as YokeBolt[],
    rules: {
      screwCover: rule('screwCover'),
      minBiteDiameters: rule('minBiteDiameters'),
      pilotExtraDepth: rule('pilotExtraDepth'),
      thirdScrewAbove: rule('thirdScrewAbove'),
      clampHole: rule('clampHole'),
      clampHoleSizes: ruleList('clampHoleSizes'),
      clampHoleMin: rule('clampHoleMin'),
      clampWood: rule('clampWood'),
      clampRating: rule('clampRating'),
      minClamps: rule('minClamps'),
      earLength: rule('earLength'),
      footDepths: ruleList('footDepths'),
      maxSpan: rule('maxSpan'),
      maxSag: rule('maxSag'),
      maxBow: rule('maxBow'),
      handForceLimit: rule('handForceLimit'),
      handForceFinding: rule('handForceFinding'),
      safetyFactor: rule('safetyFactor'),
      maxWrapDegrees: rule('maxWrapDegrees'),
      swingExtraDegrees: rule('swingExtraDegrees'),
      partGap: rule('partGap'),
      trimAllowance: rule('trimAllowance'),
      boardBorder: rule('boardBorder'),
      battenThick: rule('battenThick'),
      battenWide: rule('battenWide'),
      clampThroat: rule('clampThroat'),
      maxDeparture: rule('maxDeparture'),
      maxLegBow: rule('maxLegBow'),
      squarePullAbove: rule('squarePullAbove'),
      noseEdge: rule('noseEdge'),
      noseSlope: rule('noseSlope'),
      noseClears: rule('noseClears'),
      minHandle: rule('minHandle'),
      maxLegTurn: rule('maxLegTurn'),
      maxYokeTail: rule('maxYokeTail'),
      maxHeldSpread: rule('maxHeldSpread'),
      clampForceSpread: rule('clampForceSpread'),
      maxHeldLift: rule('maxHeldLift'),
      maxHandle: rule('maxHandle'),
      yokeBoltBehind: rule('yokeBoltBehind'),
      yokeBoltPast: rule('yokeBoltPast'),
      plankShort: rule('plankShort'),
      gaugePast: rule('gaugePast'),
      blankGap: rule('blankGap'),
      blankBorder: rule('blankBorder'),
      pressArm: rule('pressArm'),
      angleMisread: rule('angleMisread'),
      takeOffMisread: rule('takeOffMisread'),
      radiusMisread: rule('radiusMisread'),
      mostLegsOff: rule('mostLegsOff'),
      screwShear: rule('screwShear'),
      screwInEdge: rule('screwInEdge'),
      screwUltimate: rule('screwUltimate'),
      edgeBeds: rule('edgeBeds'),
      edgeUltimate: rule('edgeUltimate'),
    },
    tools: {
      bladeTurn: tool('bladeTurn'),
      reliefSpacing: tool('reliefSpacing'),
      reliefShort: tool('reliefShort'),
      narrowWaste: tool('narrowWaste'),
      hatchSpacing: tool('hatchSpacing'),
      bit: tool('bit'),
      bitGap: tool('bitGap'),
      grooveShare: tool('grooveShare'),
      grooveMost: tool('grooveMost'),
      grooveLeast: tool('grooveLeast'),
      grooveOverrun: tool('grooveOverrun'),
      routerFit: tool('routerFit'),
      bridgeLength: tool('bridgeLength'),
      bridgeHeight: tool('bridgeHeight'),
      bridgeSpacing: tool('bridgeSpacing'),
      kerf: tool('kerf'),
      laserFit: tool('laserFit'),
      laserGap: tool('laserGap'),
      laserBorder: tool('laserBorder'),
      laserThickest: tool('laserThickest'),
      stackTo: tool('stackTo'),
      dowel: tool('dowel'),
      blockDowel: tool('blockDowel'),
      dowelLeast: tool('dowelLeast'),
      jointWood: tool('jointWood'),
      tabLeast: tool('tabLeast'),
      tabMost: tool('tabMost'),
      tabShort: tool('tabShort'),
      underHead: tool('underHead'),
      engraved: tool('engraved'),
      looseFit: tool('looseFit'),
      tabRelief: tool('tabRelief'),
      kerfLeast: tool('kerfLeast'),
      sameThickness: tool('sameThickness'),
      leastGap: tool('leastGap'),
      fitStep: tool('fitStep'),
      dowelSizes: { mm: toolList('dowelSizesMm'), in: toolList('dowelSizesInch') },
    },
    inch: { rules: inchOf(rules.rows), tools: inchOf(tools.rows) },
  };
}

/** What rows say for a job in inches, by their id. */
function inchOf(rows: readonly { readonly id: string; readonly inch?: number | readonly number[] }[]): object {
  return Object.fromEntries(rows.flatMap(({ id, inch }) => (inch === undefined ? [] : [[id, inch]])));
}

function rule(id: keyof ShopRules): number {
  const value = find(id);
  if (typeof value !== 'number') throw new InternalError(`shop rule ${id} is not a number`);
  return value;
}

function ruleList(id: keyof ShopRules): readonly number[] {
  const value = find(id);
  if (value === undefined || typeof value === 'number') throw new InternalError(`shop rule ${id} is not a list`);
  return value;
}

function find(id: keyof ShopRules): number | readonly number[] | undefined {
  return rules.rows.find((row) => row.id === id)?.value;
}

function tool(id: Exclude<keyof ToolRules, 'dowelSizes'>): number {
  const value = tools.rows.find((one) => one.id === id)?.value;
  if (typeof value !== 'number') throw new InternalError(`tool number ${id} is missing`);
  return value;
}

function toolList(id: string): readonly number[] {
  const value = tools.rows.find((one) => one.id === id)?.value;
  if (value === undefined || typeof value === 'number') throw new InternalError(`tool list ${id} is missing`);
  return value;
}
