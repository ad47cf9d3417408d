import { block, field } from './field';
import { force, length, ratio, screw } from './quantities';

/** How hard the maker pulls. */
export const effort = block(
  { help: 'How hard you pull', group: 'hold' },
  {
    /** N. */
    handForce: field({
      label: 'Hand-force limit',
      help: 'Most you want to pull by hand',
      example: '45 lbf',
      is: force(10, 1000),
      unless: ({ tables }) => tables.rules.handForceLimit,
    }),
    safety: field({
      label: 'Safety against tipping',
      help: 'Factor on the clamp force',
      example: '2',
      is: ratio(1, 10),
      unless: ({ tables }) => tables.rules.safetyFactor,
    }),
    /** mm; null for no limit. */
    maxLeverage: field({
      label: 'Most extra metal to leave',
      help: 'Most extra metal the sheet can spare as a lever',
      example: '100',
      is: length(0, 3000),
      without: 'no limit',
    }),
  },
);

/** The clamps that hold spine and sheet to the bench. */
export const clamps = block(
  { help: 'The clamps that hold spine and sheet to the bench', group: 'hold' },
  {
    /** Diameter, mm. */
    hole: field({
      label: 'Clamp hole',
      help: 'Diameter wanted for the holes the clamps go through',
      example: '38',
      is: length(({ tables }) => tables.rules.clampHoleMin, 100),
      unless: ({ tables }) => tables.rules.clampHole,
    }),
    /** mm. */
    wood: field({
      label: 'Wood round a clamp hole',
      help: 'Wood left round each clamp hole',
      example: '12',
      is: length(3, 100),
      unless: ({ tables }) => tables.rules.clampWood,
    }),
    /** N. */
    rating: field({
      label: 'Force of one clamp',
      help: 'Force one clamp is trusted with',
      example: '900 N',
      is: force(50, 20_000),
      unless: ({ tables }) => tables.rules.clampRating,
    }),
    /** mm. */
    throat: field({
      label: 'How far the clamps reach in',
      help: 'How far your clamps reach in from an edge: their throat',
      example: '120',
      is: length(20, 2000),
      unless: ({ tables }) => tables.rules.clampThroat,
    }),
  },
);

/** The screws through the spine. */
export const screws = block(
  { help: 'The screws through the spine', group: 'hold' },
  {
    /** Id of a row of `shared/screws.json`; null to choose by spine thickness. */
    size: field({
      label: 'Screw',
      help: 'Id of a screw in shared/screws.json',
      example: '"#8"',
      is: screw,
      without: 'by spine thickness',
    }),
    /** mm. */
    cover: field({
      label: 'Wood over a screw’s tip',
      help: 'Wood left between a screw’s tip and the round edge',
      example: '6',
      is: length(2, 50),
      unless: ({ tables }) => tables.rules.screwCover,
    }),
  },
);

/** How close the stations stand, mm. */
export const stations = block(
  { help: 'How close the stations stand', group: 'hold' },
  {
    maxSpan: field({
      label: 'Longest clear span',
      help: 'Longest clear span between stations',
      example: '150',
      is: length(20, 1000),
      unless: ({ tables }) => tables.rules.maxSpan,
    }),
    maxSag: field({
      label: 'Most sag of the sheet',
      help: 'Most the sheet may sag between stations',
      example: '0.2',
      is: length(0.01, 5),
      unless: ({ tables }) => tables.rules.maxSag,
    }),
  },
);
