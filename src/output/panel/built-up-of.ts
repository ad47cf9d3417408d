import type { BuiltUpChoice, PanelJob } from '../../job/panel/read';
import { plainBend, plainCorner, type BuiltUp } from '../../panel';

/** A job's base, bends and corners as the panel is built up from. */
export function builtUpOf({ sheet, neutral }: PanelJob, panel: BuiltUpChoice): BuiltUp {
  return {
    thickness: sheet.thickness,
    base: panel.base,
    bends: panel.bends.map(({ on, turn, angle, radius, leg, height }) => ({
      ...plainBend,
      on,
      turn,
      angle,
      radius,
      reach: leg === null ? { height: height ?? NaN } : { leg },
      neutral,
    })),
    corners: panel.corners.map(({ key, treat, gap, rounded }) => {
      const [first = '', second = ''] = key.split('/').map((name) => name.trim());
      return { ...plainCorner, between: [first, second] as const, treat, gap, rounded };
    }),
  };
}
