import { error, note, warning } from '../entry';

const PANEL_FILE = {
  missing: 'there is no such file beside the assembly',
  folder: 'this is a folder, not a job file',
  forbidden: 'this file may not be read',
  other: 'the file cannot be read',
  'no-panel': 'this is no panel’s job file',
} as const;
const DRILLED = { now: 'now', match: 'through the other' } as const;

/** What is wrong with seams and with panels that are joined by them. */
export const seamFindings = {
  'count-or-pitch': error({}, () => ({
    message: 'a seam has either a count or a pitch',
    hint: 'give `count`, how many holes, or `pitch`, how far apart they are at most',
  })),
  'seams-crowded': error(
    { first: 'text', second: 'text', gap: 'length', least: 'length' },
    ({ first, second, gap, least }) => ({
      message: `where the seams on ${first} and ${second} come near one another their holes stand ${gap} apart`,
      hint: 'begin one of them further from its end (`ends`)',
      got: gap,
      allowed: `at least ${least}`,
    }),
  ),
  'no-such-rim': error({ rim: 'text', known: 'list' }, ({ rim, known }) => ({
    message: `no leg has a rim called ${rim}`,
    hint: 'name the rim of a leg that no other bend stands on',
    got: rim,
    allowed: known,
  })),
  'trim-before-next': note({ bend: 'text', extra: 'length' }, ({ bend, extra }) => ({
    message: `${extra} is left on for ${bend}: it is looked at as trimmed in the bends after it`,
    hint: 'trim it before the next bend',
  })),
  'seam-corner': error({ edge: 'text' }, ({ edge }) => ({
    message: `the edge ${edge} turns a corner or bends tighter than its lap: one row of holes cannot follow it`,
    hint: 'give each side of the corner a seam of its own',
  })),
  'seam-diameter': warning({ fastener: 'text', diameter: 'fine', least: 'fine', most: 'fine' }, (said) => ({
    message: `a ${said.fastener} is ${said.diameter} thick; for this sheet it should be ${said.least} to ${said.most}`,
    hint: 'a thinner fastener shears, a thicker one tears the sheet: choose another size',
    got: said.diameter,
    allowed: `${said.least} to ${said.most}`,
  })),
  'seam-lap': error(
    { fastener: 'text', lap: 'length', edge: 'length', times: 'number', least: 'length', leastLap: 'length' },
    ({ fastener, lap, edge, times, least, leastLap }) => ({
      message: `a lap of ${lap} leaves ${edge} from the middle of a ${fastener} to the edge; it needs ${least} (${times} diameters)`,
      hint: `make the lap ${leastLap} wide or choose a smaller fastener`,
      got: lap,
      allowed: `at least ${leastLap}`,
    }),
  ),
  'seam-ends': error({ fastener: 'text', ends: 'length', times: 'number', least: 'length' }, (said) => ({
    message: `the last ${said.fastener} stands ${said.ends} from the end of the edge; it needs ${said.least} (${said.times} diameters)`,
    hint: 'move the first and last hole in',
    got: said.ends,
    allowed: `at least ${said.least}`,
  })),
  'seam-count': error({ count: 'number' }, ({ count }) => ({
    message: `a row of ${count} holes is none`,
    hint: 'give a whole number, 2 or more, or a pitch',
    got: count,
    allowed: '2 or more',
  })),
  'seam-short': error({ edge: 'text', length: 'length', ends: 'length' }, ({ edge, length, ends }) => ({
    message: `the edge ${edge} is ${length} long: nothing is left between ends of ${ends}`,
    hint: 'move the first and last hole out, or leave the seam away',
  })),
  'seam-pitch': error(
    { count: 'count', pitch: 'length', fastener: 'text', times: 'number', least: 'length' },
    ({ count, pitch, fastener, times, least }) => ({
      message: `${count} holes stand ${pitch} apart; a ${fastener} needs ${least} (${times} diameters)`,
      hint: 'use fewer holes or a smaller fastener',
      got: pitch,
      allowed: `at least ${least}`,
    }),
  ),
  'seam-over-bend': warning({ edge: 'text', bend: 'text' }, ({ edge, bend }) => ({
    message: `the seam on ${edge} runs over the bend ${bend}: bent, the outer sheet is the longer, and holes drilled in both before would part`,
    hint: 'let these be the only holes before the bend: pilot holes, the other panel drilled through them once both are bent; or end the seam before the bend',
  })),
  'panel-name': error({ got: 'text' }, ({ got }) => ({
    message: 'a panel’s name is of letters, figures, spaces and dashes',
    hint: 'call it by where it stands: left, middle',
    got,
  })),
  'panel-file-outside': error({ got: 'text' }, ({ got }) => ({
    message: 'a panel’s job file must lie beside the assembly’s, or in a folder below it',
    hint: 'copy it there and give its name alone',
    got,
  })),
  'panel-file-unread': error(
    { file: 'text', trouble: ['missing', 'folder', 'forbidden', 'other', 'no-panel'] },
    (said) => ({
      message: `${said.file}: ${PANEL_FILE[said.trouble]}`,
      hint: 'give the name of a panel’s job file beside the assembly’s',
    }),
  ),
  'panel-refused': error({ panel: 'text', file: 'text' }, ({ panel, file }) => ({
    message: `${panel} cannot be made`,
    hint: `see what is said of ${file}`,
  })),
  'mirror-of-none': error({ name: 'text', known: 'list' }, ({ name, known }) => ({
    message: `there is no panel called ${name} with a file of its own to mirror`,
    hint: 'name one that has',
    got: name,
    allowed: known,
  })),
  'no-such-seam': error({ seam: 'text', known: 'list' }, ({ seam, known }) => ({
    message: `no panel here has a seam ${seam}`,
    hint: 'name a panel and the edge its seam is on, `middle.left`',
    got: seam,
    allowed: known,
  })),
  'join-drill': error(
    {
      outer: 'text',
      inner: 'text',
      first: ['now', 'match'],
      second: ['now', 'match'],
      drill: ['inner', 'outer', 'both'],
    },
    (said) => ({
      message: `${said.outer} is drilled ${DRILLED[said.first]} and ${said.inner} ${DRILLED[said.second]}, but the join drills ${said.drill === 'both' ? 'both apart' : `the ${said.drill} first`}`,
      hint:
        said.drill === 'both'
          ? 'give both seams `drill: now`'
          : `give the ${said.drill} seam \`drill: now\` and the other \`drill: match\``,
    }),
  ),
  'join-length': error(
    { outer: 'text', inner: 'text', first: 'length', second: 'length', most: 'length' },
    ({ outer, inner, first, second, most }) => ({
      message: `${outer} is ${first} long and ${inner} ${second}: they may differ by ${most}`,
      hint: 'make the two edges the same length',
    }),
  ),
  'join-length-over-bends': error(
    { outer: 'text', inner: 'text', first: 'length', second: 'length', wanted: 'length', longer: 'fine' },
    (said) => ({
      message: `${said.outer} is ${said.first} long on the flat: over the bends of ${said.inner}, ${said.second} long, it has to be ${said.longer} longer`,
      hint: `make its edge ${said.wanted} long`,
      got: said.first,
      allowed: said.wanted,
    }),
  ),
  'join-lap': error({ outer: 'text', inner: 'text', first: 'length', second: 'length' }, (said) => ({
    message: `${said.outer} laps ${said.first} and ${said.inner} ${said.second}`,
    hint: 'give both seams the same lap',
  })),
  'join-fastener': error({ outer: 'text', inner: 'text', first: 'text', second: 'text' }, (said) => ({
    message: `${said.outer} is made for a ${said.first} and ${said.inner} for a ${said.second}`,
    hint: 'give both seams the same fastener',
  })),
  'join-mating': error(
    { seam: 'text', other: 'text', expected: 'fine', thickness: 'fine' },
    ({ seam, other, expected, thickness }) => ({
      message: `${seam} was worked out to meet a sheet ${expected} thick; that of ${other} is ${thickness}`,
      hint: `write mating: ${thickness} with that seam in its panel’s file`,
      got: expected,
      allowed: thickness,
    }),
  ),
  'join-count': error({ outer: 'text', inner: 'text', first: 'count', second: 'count' }, (said) => ({
    message: `${said.outer} has ${said.first} holes and ${said.inner} ${said.second}`,
    hint: 'give both seams the same count and rows',
  })),
  'join-over-bend': error({ outer: 'text', inner: 'text', bend: 'text' }, ({ outer, inner, bend }) => ({
    message: `${outer} and ${inner} are both drilled before the bend ${bend} that they run over: bent, the outer sheet is the longer and the holes part`,
    hint: 'drill pilot holes in one of them only and match-drill the other, or end the seams before the bend',
  })),
  'join-bends': error({ outer: 'text', inner: 'text', first: 'count', second: 'count' }, (said) => ({
    message: `${said.outer} runs over ${said.first} bends and ${said.inner} over ${said.second}`,
    hint: 'give both panels the same bends there, or end the seams before the bend',
  })),
  'join-bend-angle': error({ bend: 'text', other: 'text', first: 'angle', second: 'angle' }, (said) => ({
    message: `${said.bend}, turns ${said.first}; ${said.other}, on which it lies, ${said.second}`,
    hint: 'give both the same angle',
    got: said.first,
    allowed: said.second,
  })),
  'join-bend-radius': error({ bend: 'text', other: 'text', radius: 'fine', wanted: 'fine' }, (said) => ({
    message: `${said.bend}, has an inside radius of ${said.radius} at the seam: over ${said.other}, it has to be ${said.wanted}, the inner radius and the inner sheet`,
    hint: `give it a radius of ${said.wanted} there; it takes a form of its own`,
    got: said.radius,
    allowed: said.wanted,
  })),
  'join-bend-place': error({ bend: 'text', other: 'text', apart: 'length', most: 'length' }, (said) => ({
    message: `${said.bend}, begins ${said.apart} along the lap from where ${said.other}, does`,
    hint: 'move the bend’s line so that both begin together',
    got: said.apart,
    allowed: `at most ${said.most}`,
  })),
  'join-holes': error({ outer: 'text', inner: 'text', apart: 'fine', play: 'fine' }, (said) => ({
    message: `drilled apart, the holes of ${said.outer} and ${said.inner} lie up to ${said.apart} apart; they have ${said.play} to spare`,
    hint: 'drill one panel and match-drill the other through it',
  })),
  'trim-on-panel': error({ bend: 'text', x: 'length', y: 'length' }, ({ bend, x, y }) => ({
    message: `the metal left on for the pull at ${bend} falls on another part of the panel at (${x}, ${y})`,
    hint: 'use a shorter lever with clamped boards, or bend it the other way round: hold the leg and pull the base',
  })),
  'trim-on-trim': error({ bend: 'text', other: 'text', x: 'length', y: 'length' }, ({ bend, other, x, y }) => ({
    message: `the metal left on for the pull at ${bend} and at ${other} overlaps at (${x}, ${y})`,
    hint: 'use a shorter lever for one of them',
  })),
  'metal-too-small': error({ blank: 'text', size: 'size', sheet: 'size' }, ({ blank, size, sheet }) => ({
    message: `${blank} is ${size} as it is cut; it does not fit on a sheet of ${sheet}, nor on any offcut`,
    hint: 'buy a larger sheet, pull with a shorter lever, or make the panel of two',
    got: size,
    allowed: `less than ${sheet}`,
  })),
  'no-such-edge': error({ edge: 'text' }, ({ edge }) => ({
    message: `the panel has no edge called ${edge}, or it is not in one piece`,
    hint: 'use the name of an edge of the outline',
    got: edge,
  })),
};
