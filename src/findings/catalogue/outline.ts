import { error, note, warning } from '../entry';

/** What is wrong with a traced outline's lines, and with the lengths it is scaled by. Places are as drawn, before scaling; sizes and gaps at true size. */
export const outlineFindings = {
  'scale-factor': error({ factor: 'number' }, ({ factor }) => ({
    message: `the scale must be above 0, not ${factor}`,
    hint: 'give a factor, 1 for a drawing at true size',
  })),
  'reference-length': error({ reference: 'count', trouble: ['same place', 'no length'] }, ({ reference, trouble }) => ({
    message: `reference ${reference}: ${trouble === 'same place' ? 'its two places are the same' : 'its length is not above 0'}`,
    hint: 'give two places of the drawing and how far apart they are',
  })),
  'reference-missing': error({}, () => ({
    message: 'no reference length is given',
    hint: 'give one, or a factor',
  })),
  /** `growth` is null where the references do not tell the two axes apart. */
  'references-weak': error({ growth: 'ratio?', most: 'number' }, ({ growth, most }) => ({
    message: `the reference lengths ${growth === null ? 'do not tell the two axes apart' : `would let an error in them grow ${growth} times`} (${most} times at most)`,
    hint: 'measure one length along x and one along y',
  })),
  'references-contradict': error(
    { reference: 'count', off: 'percent', longer: ['longer', 'shorter'] },
    ({ reference, off, longer }) => ({
      message: `reference ${reference} comes out ${off} ${longer} than it is, by the others`,
      hint: 'measure them again',
    }),
  ),
  'references-uneven': warning({ off: 'percent', more: ['more', 'less'] }, ({ off, more }) => ({
    message: `the references stretch the drawing ${off} ${more} along x than along y`,
    hint: 'scans and photographs do this; if it was drawn to scale, measure again',
  })),
  'drawing-too-far': error({ where: 'text' }, ({ where }) => ({
    message: `${where}: it lies too far away to be part of a panel`,
    hint: 'check the scale and the unit of the drawing',
  })),
  'outline-too-fine': error({ most: 'count' }, ({ most }) => ({
    message: `the outline has more than ${most} sides`,
    hint: 'simplify it, or leave only the outline in the drawing',
  })),
  'outline-double': error({ at: 'point' }, ({ at }) => ({
    message: `the same line is drawn twice at ${at}`,
    hint: 'delete one of the two',
  })),
  'outline-branch': error({ at: 'point', where: 'text' }, ({ at, where }) => ({
    message: `more than two lines meet at ${at}: ${where}`,
    hint: 'delete the one that does not belong to the outline',
  })),
  /** `gap` and `nearest` are the nearest other end; null where there is none. */
  'outline-open': error(
    { at: 'point', where: 'text', gap: 'fine?', nearest: 'point?', reach: 'fine' },
    ({ at, where, gap, nearest, reach }) => ({
      message: `the line ends at ${at} and meets no other: ${where}${gap === null ? '' : `; the nearest end is ${gap} away at ${nearest}`}`,
      hint: `close it: ends within ${reach} are joined`,
    }),
  ),
  'outline-gaps': note({ gaps: 'count', widest: 'fine' }, ({ gaps, widest }) => ({
    message: gaps === 1 ? `a gap of ${widest} was closed` : `${gaps} gaps of up to ${widest} were closed`,
    hint: 'both ends were moved to the middle',
  })),
  'outline-missing': error({}, () => ({
    message: 'the drawing holds no closed line',
    hint: 'draw the outline as lines, arcs or paths, on a layer that is read',
  })),
  /** `second` is null where a line crosses itself. */
  'outline-crossing': error({ at: 'point', first: 'text', second: 'text?' }, ({ at, first, second }) => ({
    message:
      second === null
        ? `the line crosses or touches itself at ${at}: ${first}`
        : `two lines cross or touch at ${at}: ${first} and ${second}`,
    hint: 'move them apart',
  })),
  'outline-choice': error({ outlines: 'boxes', count: 'count', more: 'count' }, ({ outlines, count, more }) => ({
    message: `the drawing holds ${count} outline${count === 1 ? '' : 's'}: ${outlines}${more > 0 ? ` and ${more} more` : ''}`,
    hint: `say which one: part: 1${count > 1 ? ` to ${count}` : ''}`,
  })),
  'outline-island': error({ at: 'point', where: 'text' }, ({ at, where }) => ({
    message: `something is drawn inside a hole at ${at}: ${where}`,
    hint: 'a hole is empty: delete it',
  })),
};
