import { error, warning } from '../entry';

/** Where the pull strains screws and wood. */
export const woodFindings = {
  'front-edge-crushes': error({ load: 'force', bears: 'force' }, ({ load, bears }, { field }) => ({
    message: `the held leg pushes the spine’s front edge up by ${load} in all: it crushes right through`,
    hint: `set a strip of steel under the spine’s front edge on hardwood, or take a stronger board for ${field('board.spine.stock')} or a longer held leg`,
    got: load,
    allowed: `at most ${bears}`,
  })),
  'front-edge-beds': warning({ beds: 'length', most: 'length' }, ({ beds, most }) => ({
    message: `the held leg pushes the spine’s front edge up so hard that it beds in over ${beds} (${most} is usual): the bend starts that late, and later with every part`,
    hint: 'glue a strip of hardwood or screw a strip of steel along the spine’s front edge, flush with both faces',
  })),
  'screws-shear': error({ station: 'text', load: 'force', most: 'force' }, ({ station, load, most }, { field }) => ({
    message: `the pull shears each screw of ${station} by ${load}: they tear out of the board’s edge`,
    hint: `set the stations closer (${field('stations.maxSpan')}), take larger screws or pull further out`,
    got: load,
    allowed: `at most ${most}`,
  })),
  'screws-strained': warning(
    { station: 'text', load: 'force', most: 'force' },
    ({ station, load, most }, { field }) => ({
      message: `the pull shears each screw of ${station} by ${load}, more than the ${most} it is allowed in a board’s edge: the station may shift`,
      hint: `glue the stations too, set them closer (${field('stations.maxSpan')}) or take larger screws`,
    }),
  ),
  'round-edge-crushes': error(
    { station: 'text', pressure: 'stress', most: 'stress' },
    ({ station, pressure, most }, { field }) => ({
      message: `the sheet presses the round edge of ${station} by ${pressure}: it crushes, and the radius with it`,
      hint: `set the stations closer (${field('stations.maxSpan')}), take a stronger board for ${field('board.stations.stock')} or pull further out`,
      got: pressure,
      allowed: `at most ${most}`,
    }),
  ),
  'round-edge-strained': warning(
    { station: 'text', pressure: 'stress', most: 'stress' },
    ({ station, pressure, most }, { field }) => ({
      message: `the sheet presses the round edge of ${station} by ${pressure}, more than the ${most} it surely bears: the edge may dent and the radius drifts`,
      hint: `face the round edges with a strip of sheet and cut them that much smaller, set the stations closer (${field('stations.maxSpan')}), or take a stronger board`,
    }),
  ),
};
