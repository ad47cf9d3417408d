import { at } from '../../../base/at';
import type { Panel } from '../../../panel';
import type { SeamLayout } from '../../../panel/seams/seam';
import type { EdgeWork } from '../../../panel/edges/edges';
import type { Measures } from '../../shop-sheet/measures';
import type { PanelFinish } from './finish';
import type { Metal } from './metal-of';
import type { Trim } from './trim-of';

/** What is cut off once a bend is made; null where nothing is. */
export function trimWords(trim: Trim | null, panel: Panel, bend: number, say: Measures): string | null {
  const here = (trim?.leftOn ?? []).filter((one) => one.bend === bend);
  if (here.length === 0) return null;
  const sides = here.map(({ side, extra }) => {
    const name = side === 'leg' ? `leg of ${at(panel.bends, bend).name}` : faceName(panel, at(panel.bends, bend).base);
    return `the ${name} to its trim line, where ${say.length(extra)} was left on`;
  });
  return `Cut ${sides.join(' and ')}, before the next bend; deburr the new edge.`;
}

function faceName(panel: Panel, face: number): string {
  return at(panel.faces, face).name;
}

/** A seam in one sentence or two. */
function seamWords({ seam, count, pitch, fromEdge, length }: SeamLayout, say: Measures): string {
  const { on, lap, fastener, rows, drill, ends, countersunk } = seam;
  const each = `${count} ${fastener.name}s${countersunk ? ', countersunk,' : ''} ${say.length(pitch)} apart`;
  const where = fromEdge.map((mm) => say.length(mm)).join(' and ');
  const how =
    drill === 'now'
      ? `Drill them now, ${drillOf(seam, say)}.`
      : `Mark them, but drill only when both panels are clamped together, through the other’s holes, ${drillOf(seam, say)}.`;
  return `Seam on ${on}, ${say.length(length)} long: ${rows === 2 ? `two rows of ${each}` : `a row of ${each}`}, ${where} from the edge, the first and last ${say.length(ends)} from its ends. ${how} The other panel’s edge lies ${say.length(lap)} in, on the lap line.`;
}

function drillOf({ fastener }: SeamLayout['seam'], say: Measures): string {
  return `${fastener.drill} (${say.exact(fastener.hole)})`;
}

/** Cap strip to buy and edges to deburr. */
function edgeWords({ caps, capLength, tightest, deburr }: EdgeWork, say: Measures): string[] {
  const strip = caps.map(({ edge, length }) => `${edge} ${say.length(length)}`).join(', ');
  return [
    ...(caps.length > 0
      ? [
          `Cap strip to buy: ${say.length(capLength)} (${strip})${tightest === null ? '' : `; it must follow a radius of ${say.length(tightest)}`}.`,
        ]
      : []),
    `Edges to deburr, holes too: ${say.length(deburr)}.`,
  ];
}

/** What to buy and how it is cut from. */
function metalWords({ layout }: Metal, say: Measures): string {
  const { sheets, mass, used } = layout;
  const first = at(sheets, 0);
  const size = `${say.length(first.width)} × ${say.length(first.length)}`;
  const each = Object.entries(mass).map(([name, kilogram]) => `${name} ${say.mass(kilogram)}`);
  return `Metal: ${sheets.length} sheet${sheets.length === 1 ? '' : 's'} of ${size}, of which ${(100 * used).toFixed(0)} % is used; as cut: ${each.join(', ')}. Laid out in blank/on-${first.id}.`;
}

/** Everything about metal, seams and edges, sentence by sentence. */
export function finishWords({ seams, edges, metal }: PanelFinish, say: Measures): string[] {
  return [
    ...(metal ? [metalWords(metal, say)] : []),
    ...seams.map((seam) => seamWords(seam, say)),
    ...(edges ? edgeWords(edges, say) : []),
  ];
}
