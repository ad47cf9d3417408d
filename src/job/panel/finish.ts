import * as z from 'zod/mini';
import { block, field, list } from '../fields/field';
import { choice, count, fastener, length, name, yesNo } from '../fields/quantities';
import { written } from './keyed';
import { entriesAt } from './places';

const MOST_SEAMS = 20;
const MOST_EDGES = 40;

/** Rows of fasteners that join the panel to the next. */
export const seams = list(
  {
    help: 'Rows of screws or rivets along edges, where the panel laps the next',
    one: 'seam',
    empty: 'No seam',
    group: 'bend',
    least: 1,
    most: MOST_SEAMS,
  },
  {
    on: field({
      label: 'on',
      help: 'The edge it is on: one of the base, a leg’s rim (`long.rim`), or one named in `outline.edges`',
      example: 'top',
      is: name,
      required: true,
    }),
    lap: field({
      label: 'lap',
      help: 'How far the two panels lap; a row lies on the middle of it',
      example: '32',
      is: length(3, 300),
      required: true,
    }),
    fastener: field({
      label: 'fastener',
      help: 'Id of a screw or rivet in shared/fasteners.json',
      example: 'rivet-4',
      is: fastener,
      required: true,
    }),
    countersunk: field({ label: 'countersunk', help: 'Whether its head is let in', is: yesNo, unless: false }),
    ends: field({
      label: 'ends',
      help: 'From the ends of the edge to the first and the last hole',
      example: '16',
      is: length(1, 1000),
      without: 'half the lap',
    }),
    count: field({
      label: 'count',
      help: 'How many holes in a row',
      example: '7',
      is: count(2, 500),
      without: 'by `pitch`',
    }),
    pitch: field({
      label: 'pitch',
      help: 'In place of `count`: how far apart holes are at most',
      example: '40',
      is: length(3, 1000),
      without: 'by `count`',
    }),
    rows: field({ label: 'rows', help: 'How many rows', is: count(1, 2), unless: 1 }),
    drill: field({
      label: 'drill',
      help: 'Whether this panel is drilled on the bench, or through the other’s holes once the two are clamped together',
      is: choice(['now', 'match']),
      unless: 'now',
    }),
    mating: field({
      label: 'other sheet',
      help: 'Thickness of the other panel’s sheet',
      example: '1.2',
      is: length(0.1, 12.7),
      without: 'as this one',
    }),
  },
);

const names = (words: { readonly label: string; readonly help: string; readonly example: string }) =>
  written<readonly string[]>(words, {
    shape: z.array(z.string()).check(z.minLength(1), z.maxLength(MOST_EDGES)),
    writing: 'A list of names',
    required: false,
    without: 'none',
    read: (reader, path) => entriesAt(reader, path).map((_, index) => reader.name([...path, index])),
  });

/** What is left on for the bends and cut off after. */
export const trim = block(
  { help: 'Metal left on until a bend is made' },
  {
    after: names({
      label: 'Trimmed after bending',
      help: 'Legs left longer, to be cut to their line once the bend is made: by their rims (`long.rim`). A bend pulled by hand that needs leverage has it left on unasked',
      example: '[long.rim]',
    }),
    allowance: field({
      label: 'Left on',
      help: 'How much is left on at those rims at least',
      example: '12',
      is: length(1, 500),
      unless: ({ tables }) => tables.rules.trimAllowance,
    }),
  },
);

/** What becomes of edges. */
export const edgeWork = block(
  { help: 'What becomes of the edges' },
  {
    cap: names({ label: 'Capped edges', help: 'Edges that get a cap strip, by their names', example: '[back, top]' }),
  },
);
