import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { ShopRules } from '../../tables/tables';
import type { WoodLoads } from './loads';

/** What the pull would crush or shear off, and what it strains; the spine's thickness and the bend's length in mm. */
export function checkWood(
  { frontEdge, screws, roundEdge }: WoodLoads,
  { spine, length }: { readonly spine: number; readonly length: number },
  rules: ShopRules,
): Finding[] {
  return [
    ...(frontEdge.beds > spine
      ? [
          finding('front-edge-crushes', 'board.spine', {
            load: frontEdge.load * length,
            bears: frontEdge.strength * spine * length,
          }),
        ]
      : []),
    ...(frontEdge.beds > rules.edgeBeds && frontEdge.beds <= spine
      ? [finding('front-edge-beds', 'board.spine', { beds: frontEdge.beds, most: rules.edgeBeds })]
      : []),
    ...checkScrews(screws, rules),
    ...checkRoundEdge(roundEdge, rules),
  ];
}

function checkScrews({ station, load, bears }: WoodLoads['screws'], rules: ShopRules): Finding[] {
  if (load > rules.screwUltimate * bears)
    return [finding('screws-shear', 'screws', { station, load, most: rules.screwUltimate * bears })];
  return load > bears ? [finding('screws-strained', 'screws', { station, load, most: bears })] : [];
}

function checkRoundEdge({ station, load, bears }: WoodLoads['roundEdge'], rules: ShopRules): Finding[] {
  const most = rules.edgeUltimate * bears;
  if (load > most) return [finding('round-edge-crushes', 'board.stations', { station, pressure: load, most })];
  return load > bears
    ? [finding('round-edge-strained', 'board.stations', { station, pressure: load, most: bears })]
    : [];
}
