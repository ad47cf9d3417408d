import { InternalError } from '../base/errors';
import rows from '../../shared/panel-rules.json';

/** The numbers of shop practice that panels of several bends need; see `shared/panel-rules.json` for units and sources. */
export interface PanelRules {
  readonly rootShrink: number;
  readonly rootHole: number;
  readonly rootHoleThicknesses: number;
  readonly rootHoleOverGap: number;
  readonly dressNote: number;
  readonly dressWarning: number;
  readonly formsAlike: number;
  readonly formsOffered: number;
  readonly swingClearance: number;
  readonly pulledBeyondDegrees: number;
  readonly oppositeShare: number;
  readonly benchBehind: number;
  readonly clampWidth: number;
  readonly clampFrame: number;
  readonly metalGap: number;
  readonly metalBorder: number;
  readonly cornerBlockPast: number;
  readonly cornerBlockLeg: number;
}

/** The panel rules that come with the program. */
export function loadPanelRules(): PanelRules {
  const rule = (id: keyof PanelRules): number => {
    const found = rows.rows.find((row) => row.id === id);
    if (!found) throw new InternalError(`panel rule ${id} is missing`);
    return found.value;
  };
  return {
    rootShrink: rule('rootShrink'),
    rootHole: rule('rootHole'),
    rootHoleThicknesses: rule('rootHoleThicknesses'),
    rootHoleOverGap: rule('rootHoleOverGap'),
    dressNote: rule('dressNote'),
    dressWarning: rule('dressWarning'),
    formsAlike: rule('formsAlike'),
    formsOffered: rule('formsOffered'),
    swingClearance: rule('swingClearance'),
    pulledBeyondDegrees: rule('pulledBeyondDegrees'),
    oppositeShare: rule('oppositeShare'),
    benchBehind: rule('benchBehind'),
    clampWidth: rule('clampWidth'),
    clampFrame: rule('clampFrame'),
    metalGap: rule('metalGap'),
    metalBorder: rule('metalBorder'),
    cornerBlockPast: rule('cornerBlockPast'),
    cornerBlockLeg: rule('cornerBlockLeg'),
  };
}
