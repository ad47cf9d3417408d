import fasteners from '../../shared/fasteners.json';
import { InternalError } from '../base/errors';

/** A screw or rivet of a seam, mm. */
export interface Fastener {
  readonly id: string;
  readonly name: string;
  readonly kind: 'screw' | 'rivet';
  readonly system: 'in' | 'mm';
  readonly diameter: number;
  /** A screw's clearance hole, normal fit; a rivet's drilled hole. */
  readonly hole: number;
  /** The drill as the trade calls it. */
  readonly drill: string;
  readonly source: string;
}

/** Rules of spacing; see `shared/fasteners.json` for what each is, its unit and source. */
export interface SeamRules {
  readonly edge: number;
  readonly edgeCountersunk: number;
  readonly pitch: number;
  readonly pitchTwoRows: number;
  readonly rowsApart: number;
  readonly thickest: number;
  readonly seamLength: number;
  readonly bendRadius: number;
  /** Degrees. */
  readonly bendAngle: number;
  /** Degrees. */
  readonly smooth: number;
  readonly singleLap: number;
}

/** What a table of rivet counts rests on, as shares of the sheet's tensile strength. */
export interface RivetRule {
  readonly id: string;
  readonly what: string;
  readonly shear: number;
  readonly bearing: number;
  readonly source: string;
}

export interface Fasteners {
  readonly fasteners: readonly Fastener[];
  readonly rules: SeamRules;
  readonly strength: readonly RivetRule[];
}

/** The table of fasteners, as bundled with the program. Throws where a rule is missing. */
export function loadFasteners(): Fasteners {
  return {
    fasteners: fasteners.rows as Fastener[],
    rules: {
      edge: rule('edge'),
      edgeCountersunk: rule('edgeCountersunk'),
      pitch: rule('pitch'),
      pitchTwoRows: rule('pitchTwoRows'),
      rowsApart: rule('rowsApart'),
      thickest: rule('thickest'),
      seamLength: rule('seamLength'),
      bendRadius: rule('bendRadius'),
      bendAngle: rule('bendAngle'),
      smooth: rule('smooth'),
      singleLap: rule('singleLap'),
    },
    strength: fasteners.strength,
  };
}

function rule(id: keyof SeamRules): number {
  const row = fasteners.rules.find((candidate) => candidate.id === id);
  if (!row) throw new InternalError(`shared/fasteners.json has no rule ${id}`);
  return row.value;
}
