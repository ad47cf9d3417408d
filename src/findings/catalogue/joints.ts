import { error, note, warning } from '../entry';

/** What a router's or a laser's joints have no room for, and what they ask of the boards. */
export const jointFindings = {
  'loose-fit': warning({ fit: 'fine', opening: ['groove', 'slot'], most: 'fine' }, ({ fit, opening, most }) => ({
    message: `with ${fit} of play a ${opening} no longer places what stands in it`,
    hint: 'cut the fit test piece and take the tightest that goes together',
    got: fit,
    allowed: `up to ${most}`,
  })),
  'thick-for-laser': warning({ boards: 'names', most: 'length' }, ({ boards, most }) => ({
    message: `${boards}: a small laser cuts up to ${most} clean and square`,
    hint: 'use a thinner board, which is stacked, or ask the shop that cuts it',
  })),
  'board-not-measured': note({ openings: ['grooves', 'slots'], boards: 'names' }, ({ openings, boards }) => ({
    message: `${openings} are cut to the thickness ${boards} should have`,
    hint: 'measure your board at several places, give the thickness in the job, and cut the fit test piece first',
  })),
  'grooves-too-close': error({ first: 'text', second: 'text', wall: 'length', least: 'length' }, (said) =>
    tooClose('grooves', said),
  ),
  'slots-too-close': error({ first: 'text', second: 'text', wall: 'length', least: 'length' }, (said) =>
    tooClose('slots', said),
  ),
  /** `most` is the deepest that leaves wood enough; there is none where it is less than `least`. */
  'groove-depth': error(
    {
      depth: 'length',
      spine: 'length',
      trouble: ['shallow', 'deep'],
      least: 'length',
      most: 'length',
      mend: ['change depth', 'change board'],
    },
    ({ depth, spine, trouble, least, most, mend }, { field }) => ({
      message: `grooves ${depth} deep in a ${spine} spine ${trouble === 'shallow' ? 'hold nothing' : 'leave too little wood under the screw heads behind them'}`,
      hint:
        mend === 'change depth' ? `change ${field('cut.groove')}` : 'use a thicker spine board, or cut with a jigsaw',
      got: depth,
      allowed: mend === 'change depth' ? `${least} to ${most}` : `none: ${least} at least, ${most} at most`,
    }),
  ),
  'groove-narrower-than-bit': error({ bit: 'fine', groove: 'fine' }, ({ bit, groove }) => ({
    message: `the bit is ${bit} across; the stations’ grooves are ${groove} wide`,
    hint: 'use a smaller bit or thicker stations',
    got: bit,
    allowed: `at most ${groove}`,
  })),
  'smaller-than-bit': note({ bit: 'fine', holes: 'sized' }, ({ bit, holes }) => ({
    message: `the ${bit} bit does not go into the ${holes}: they are drilled, with a drill of their own size`,
    hint: 'drill them at the centres the bit marks, or use a smaller bit',
  })),
  'dowels-thinner': note({ dowel: 'fine', thinner: 'sized' }, ({ dowel, thinner }, { field }) => ({
    message: `dowels of ${dowel} have no room everywhere: thinner ones go through ${thinner}`,
    hint: `the dowel table says which goes where; a smaller ${field('cut.dowel')} makes them alike`,
  })),
  'no-room-for-tabs': warning({ boards: 'names' }, ({ boards }, { field }) => ({
    message: `there is no room for a tab beside the screws of ${boards}`,
    hint: `stand them by their drawn lines and screw holes, or name a smaller screw with ${field('screws.size')}`,
  })),
  'no-room-for-dowels': note({ boards: 'names' }, ({ boards }) => ({
    message: `there is no room for dowels through the layers of ${boards}`,
    hint: 'line the layers up by their tabs in the slots while the glue sets',
  })),
  'screws-in-glue-line': note({ boards: 'names' }, ({ boards }, { field }) => ({
    message: `the ${boards} have an even number of layers: their screws run along the glue between the two middle ones`,
    hint: `choose an odd number with ${field('cut.layers')}, or clamp the stack across its faces while you drill and drive`,
  })),
  'fit-tighter-than-beam': warning({ fit: 'fine', beam: 'fine', least: 'fine' }, ({ fit, beam, least }) => ({
    message: `slots only ${fit} wider than their tabs: the round corners a ${beam} beam leaves will hold the tabs off`,
    hint: 'round the tabs’ corners with a file, or allow more fit',
    got: fit,
    allowed: `at least ${least}`,
  })),
  'kerf-too-wide': error({ kerf: 'fine', opening: 'fine', most: 'fine' }, ({ kerf, opening, most }) => ({
    message: `a beam ${kerf} wide cannot cut openings ${opening} across and the notches beside the tabs`,
    hint: 'measure the kerf again, or use a thicker board or larger screws',
    got: kerf,
    allowed: `at most ${most}`,
  })),
};

interface Wall {
  readonly first: string;
  readonly second: string;
  readonly wall: string;
  readonly least: string;
}

function tooClose(what: 'grooves' | 'slots', { first, second, wall, least }: Wall) {
  return {
    message: `the ${what} of ${first} and ${second} leave ${wall} of wood between them`,
    hint: 'cut the stations from thinner board, or cut with a jigsaw; where bends share the form, make one of them on a form of its own',
    got: wall,
    allowed: `at least ${least}`,
  };
}
