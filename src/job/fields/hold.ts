import { findClamp, findHandForce } from '../../tables/look-up';
import type { Tables } from '../../tables/tables';
import { block, field, type Read } from './field';
import { choice, count, force, length, ratio, screw } from './quantities';

/** Kinds of clamp, by id in shared/clamps.json. */
const clampKinds = ['trigger', 'f-light', 'c', 'f-heavy'] as const;
/** How hands pull, by id in shared/hand-forces.json. */
const postures = [
  'arms-out',
  'seated',
  'kneeling',
  'standing',
  'knuckle-to-shoulder-women',
  'knuckle-to-shoulder-men',
] as const;
/** Ways of pulling the free leg round. */
const pullingWays = ['bare', 'yoke', 'press'] as const;

/** How the free leg is pulled. */
export const pull = block(
  { help: 'How the free leg is pulled round', group: 'hold' },
  {
    with: field({
      label: 'Pull with',
      help: 'How the free leg is pulled: by its end with bare hands, gripped near the bend by a yoke, or pressed down by a batten that follows the bend',
      is: choice(pullingWays, { bare: 'bare hands', yoke: 'a yoke', press: 'a batten pressed down' }),
      without: 'bare hands where the leg comes out flat, else a yoke, or a batten where none finds room',
    }),
    /** mm. */
    press: field({
      label: 'Batten from the bend',
      help: 'Press: how far from where the sheet leaves the form the batten presses',
      example: '40',
      is: length(10, 500),
      unless: ({ tables }) => tables.rules.pressArm,
    }),
  },
);

/** How hard the maker pulls. */
export const effort = block(
  { help: 'How hard you pull', group: 'hold' },
  {
    /** N. */
    handForce: field({
      label: 'Hand-force limit',
      help: 'Most each of you wants to pull by hand',
      example: '45 lbf',
      is: force(10, 1000),
      without: 'by posture',
    }),
    posture: field({
      label: 'Posture',
      help: 'How you stand to pull: sets the hand-force limit, from published limits',
      is: choice(postures, {
        'arms-out': 'arms out or leaning over',
        standing: 'standing, whole body',
        'knuckle-to-shoulder-women': 'standing, hands below the shoulder, women',
        'knuckle-to-shoulder-men': 'standing, hands below the shoulder, men',
      }),
      unless: 'arms-out',
    }),
    people: field({
      label: 'People pulling',
      help: 'How many pull together',
      example: '2',
      is: count(1, 4),
      unless: 1,
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
    kind: field({
      label: 'Kind of clamp',
      help: 'Kind of clamp: sets the force one is trusted with',
      is: choice(clampKinds, {
        trigger: 'one-hand trigger clamps',
        'f-light': 'light F-clamps',
        c: { mm: 'C-clamps, 100–150 mm', in: 'C-clamps, 4–6 in' },
        'f-heavy': 'heavy F-clamps',
      }),
      unless: 'f-light',
    }),
    /** N. */
    rating: field({
      label: 'Force of one clamp',
      help: 'Force one clamp is trusted with',
      example: '900 N',
      is: force(50, 20_000),
      without: 'by its kind',
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

/** The force limit of one person's hands, N: the job's own, or that of the posture. */
export function handForceOf({ handForce, posture }: Read<typeof effort>, tables: Tables): number {
  return handForce ?? findHandForce(tables, posture)?.force ?? tables.rules.handForceLimit;
}

/** What one clamp is trusted with, N: the job's own, or that of its kind. */
export function ratingOf({ rating, kind }: Read<typeof clamps>, tables: Tables): number {
  return rating ?? findClamp(tables, kind)?.force ?? tables.rules.clampRating;
}
