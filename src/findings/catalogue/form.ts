import { error, note, warning } from '../entry';

/** What the rules of the form forbid or make doubtful: stations, screws, clamps, spine, boards. */
export const formFindings = {
  'run-too-short': error({ run: 'text', room: 'length', needed: 'length' }, ({ run, room, needed }) => ({
    message: `“${run}” has ${room} along the centre line; its two end stations need ${needed}`,
    hint: 'make the bend longer or cut the stations from thinner board',
    got: room,
    allowed: `at least ${needed}`,
  })),
  'stations-overlap': error(
    { first: 'text', second: 'text', apart: 'length', thickness: 'length' },
    ({ first, second, apart, thickness }) => ({
      message: `the stations at ${first} and at ${second} overlap: they stand ${apart} apart and each is ${thickness} thick`,
      hint: 'let the bends on this form end at the same place of it or further apart, make one of them on a form of its own, or cut the stations from thinner board',
      got: `${apart} apart`,
      allowed: `the same place, or at least ${thickness} apart`,
    }),
  ),
  'sheet-sags': error({ first: 'text', second: 'text', most: 'fine' }, ({ first, second, most }, { field }) => ({
    message: `between the stations at ${first} and at ${second} no spacing that leaves room between stations keeps the sheet within ${most} of the form`,
    hint: `bend further than this small angle, leave a longer free leg, or allow more sag with ${field('stations.maxSag')}`,
  })),
  'one-screw': warning({ board: 'text', half: 'length' }, ({ board, half }) => ({
    message: `${board} (radius ${half}) has no room for two screws at its quarter points: it gets one in the middle, with glue`,
    hint: 'glue it as well as screwing it, or use a smaller screw or a thinner spine',
  })),
  /** `needed` is null where no length sold is long enough. */
  'radius-too-small-for-screws': error(
    {
      board: 'text',
      depth: 'length',
      needed: 'length?',
      screw: 'text',
      spine: 'length',
      cover: 'length',
      bite: 'length',
    },
    ({ board, depth, needed, screw, spine, cover, bite }, { field }) => ({
      message:
        needed === null
          ? `no standard ${screw} is long enough to go through a ${spine} spine and bite ${bite} into ${board}`
          : `${board} is ${depth} deep; a ${screw} through the ${spine} spine with ${cover} of wood left over its tip needs ${needed}`,
      hint: `use a larger radius, a thinner spine board, or name another screw with ${field('screws.size')}`,
      got: needed === null ? null : depth,
      allowed: needed === null ? null : `at least ${needed}`,
    }),
  ),
  'no-room-for-clamps': error(
    { clamps: 'count', force: 'force', rating: 'force', wood: 'length' },
    ({ clamps, force, rating, wood }, { field }) => ({
      message: `${clamps} clamps (${force} at ${rating} each) are needed even with the deepest foot, and the spine has no room for their holes with ${wood} of wood round each, beside a backing station`,
      hint: `use a longer free leg or more leverage, stronger clamps (${field('clamps.rating')}), fewer or thinner stations, or a larger radius`,
    }),
  ),
  'throat-too-short': warning(
    { reach: 'length', past: ['foot', 'plank', 'held leg'], throat: 'length' },
    ({ reach, past, throat }, { field }) => ({
      message: `the clamps must reach in by ${reach}, past the ${past}, to the holes in the spine; ${field('clamps.throat')} is ${throat}`,
      hint:
        past === 'held leg'
          ? `hold the other leg (change the two of ${field('bend.legs')} over), cut clamp holes through waste in the held leg or clamp past the sheet’s ends, or use deeper clamps`
          : 'use deeper clamps, or clamp past the sheet’s ends',
      got: throat,
      allowed: `at least ${reach}`,
    }),
  ),
  'spine-bows': error({ force: 'force', thickness: 'length', most: 'fine' }, ({ force, thickness, most }) => ({
    message: `pushed back by ${force}, the ${thickness} spine bows more than ${most} with every backing station that fits`,
    hint: 'use a thicker spine board, a longer free leg, or fewer stations',
  })),
  'parts-clash': error(
    { first: 'place', second: 'place', apart: 'length', needed: 'length' },
    ({ first, second, apart, needed }) => ({
      message: `${first} and ${second} are in each other's way: ${apart} from middle to middle, ${needed} needed`,
      hint: 'use a smaller screw or a different board thickness; where bends share the form, make one of them on a form of its own',
      got: apart,
      allowed: `at least ${needed}`,
    }),
  ),
  /** `offcuts` are those of the right kind and thickness that were tried as well. */
  'larger-than-board': error(
    { piece: 'text', size: 'size', board: 'text', room: 'size', offcuts: 'names' },
    ({ piece, size, board, room, offcuts }) => ({
      message: `${piece} is ${size}; ${board} gives ${room} inside its border${offcuts === '' ? '' : `, and ${offcuts} no more`}`,
      hint: 'choose a larger board, or make the form in two lengths',
      got: size,
      allowed: `at most ${room}`,
    }),
  ),
  'offcut-of-no-use': note(
    { offcut: 'count', stock: 'text', thickness: 'fine?', play: 'fine' },
    ({ offcut, stock, thickness, play }) => ({
      message: `no part of this job is cut from offcut ${offcut}: ${stock}${thickness === null ? '' : `, ${thickness} thick`}`,
      hint: `check its stock and thickness (within ${play} of the board’s), or leave it out`,
    }),
  ),
  'offcut-too-small': note({ offcut: 'count', border: 'length' }, ({ offcut, border }) => ({
    message: `offcut ${offcut} is no wider than the ${border} left uncut along either edge`,
    hint: 'leave it out',
  })),
};
