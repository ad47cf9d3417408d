import type { Cut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';

/** How far a router's groove runs past the edge it is open to, mm: half the bit, so that no rounded corner is left, and a little. */
export function grooveOverrun(cut: Cut, tools: ToolRules): number {
  return cut.with === 'router' ? cut.bit / 2 + tools.grooveOverrun : 0;
}
