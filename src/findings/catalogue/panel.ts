import { error, note, warning } from '../entry';

/** What a panel's base, edges, legs and corners forbid or make doubtful. */
export const panelFindings = {
  'base-too-small': error({}, () => ({
    message: 'the bends leave no base between their tangent lines',
    hint: 'make the base larger or the radii smaller',
  })),
  'file-or-corners': error({}, () => ({
    message: 'an outline is either a drawing or a list of corners',
    hint: 'give `file`, an SVG or DXF file beside the job, or `corners`',
  })),
  'bend-named-twice': error({ name: 'text' }, ({ name }) => ({
    message: `two bends are called ${name}`,
    hint: 'give each a name of its own',
    got: name,
  })),
  'bend-line-short': error({ bend: 'text' }, ({ bend }) => ({
    message: `the two places of the line of ${bend} are the same`,
    hint: 'give a place at end A and one at end B',
  })),
  'zones-overlap': error({ bend: 'text', other: 'text' }, ({ bend, other }) => ({
    message: `the curved part of ${bend} runs into that of ${other}, away from any corner that is cut out`,
    hint: 'move the lines apart, or cut the metal between them out of the outline',
  })),
  'leg-or-height': error({}, () => ({
    message: 'a bend has either a leg or a height',
    hint: 'give `leg`, the flat metal beyond the bend, or `height`, how high its rim stands over the base',
  })),
  'no-such-form': error({ name: 'text', known: 'list' }, ({ name, known }) => ({
    message: `no bend stands on ${name} whose form could be used`,
    hint: 'name the edge that another bend stands on',
    got: name,
    allowed: known,
  })),
  'form-too-short': error({ bend: 'text', form: 'text' }, ({ bend, form }) => ({
    message: `the form of ${form} is shorter than ${bend}`,
    hint: 'leave `form` out, or name a longer one',
  })),
  'form-differs': error({ bend: 'text', form: 'text', off: 'length' }, ({ bend, form, off }) => ({
    message: `the form of ${form} has radii that differ by ${off} from what ${bend} needs`,
    hint: 'leave `form` out, or make the radii agree',
  })),
  'form-lacks-clamps': error({ bend: 'text', form: 'text', clamps: 'count' }, ({ bend, form, clamps }) => ({
    message: `the form of ${form} has no room for stations, foot and ${clamps} clamps of its own under ${bend}`,
    hint: 'leave `form` out, or make it a form of its own: `form: own`',
  })),
  'form-nearly': warning({ bend: 'text', form: 'text', off: 'length' }, ({ bend, form, off }) => ({
    message: `${bend} is made on the form of ${form}, whose radii differ by ${off}: it comes out by about that much otherwise`,
    hint: 'make it a form of its own where that matters',
  })),
  'base-edges': error({ corners: 'count', edges: 'count' }, ({ corners, edges }) => ({
    message: 'edge i runs from corner i to the next: as many edges as corners',
    hint: 'give at least three corners and as many edges',
    got: `${corners} corners, ${edges} edges`,
  })),
  'edge-names': error({}, () => ({
    message: 'an edge’s name is used twice, is empty or holds a full stop',
    hint: 'name each edge once, in a word without a full stop',
  })),
  'base-clockwise': error({}, () => ({
    message: 'the corners run clockwise',
    hint: 'give them counter-clockwise',
  })),
  'edge-without-length': error({ edge: 'text' }, ({ edge }) => ({
    message: `edge ${edge} has no length: it begins and ends at one place`,
    hint: 'give each corner once',
  })),
  'base-crosses': error({ first: 'text', second: 'text' }, ({ first, second }) => ({
    message: `edges ${first} and ${second} of the base cross, or one runs back along the other`,
    hint: 'look at each corner’s two numbers, and at their order round the base',
  })),
  'corners-as-drawn': error({}, () => ({
    message: 'the corners of an outline of your own are cut as they are drawn',
    hint: 'draw the cut at the corner in the outline; `corners` goes with a base',
  })),
  'no-such-corner': error({ first: 'text', second: 'text', edges: 'list' }, ({ first, second, edges }) => ({
    message: `${first} and ${second} do not meet`,
    hint: 'name two edges side by side',
    allowed: edges,
  })),
  'unknown-edge': error({ edge: 'text', known: 'list' }, ({ edge, known }) => ({
    message: `no edge is called ${edge}`,
    hint: 'name an edge of the base or the rim of a leg bent before',
    got: edge,
    allowed: known,
  })),
  'edge-bent-twice': error({ edge: 'text' }, ({ edge }) => ({
    message: `two bends stand on ${edge}`,
    hint: 'put the second on the rim of the first one’s leg',
    got: edge,
  })),
  'not-a-neighbour': error({ name: 'text', edge: 'text', neighbours: 'names' }, ({ name, edge, neighbours }) => ({
    message: `${name} is no edge beside ${edge}`,
    hint: `name the edges it runs between, ${neighbours}`,
    got: name,
    allowed: neighbours,
  })),
  'radius-missing': error({ toward: 'names', neighbours: 'names' }, ({ toward, neighbours }) => ({
    message: `no radius toward ${toward}`,
    hint: 'give one radius, or one toward each neighbouring edge',
    allowed: neighbours,
  })),
  'radius-not-positive': error({ from: 'given', to: 'given' }, ({ from, to }) => ({
    message: 'a bend’s radius is above 0',
    hint: 'give an inside radius',
    got: `${from} and ${to}`,
  })),
  'bend-too-short': error({ edge: 'text' }, ({ edge }) => ({
    message: `insets and rounding leave nothing of ${edge}`,
    hint: 'make them smaller',
  })),
  'leg-too-short': error({ leg: 'given' }, ({ leg }) => ({
    message: 'a leg is not shorter than nothing',
    hint: 'give 0 or more',
    got: leg,
  })),
  'height-within-bend': error({ height: 'length', least: 'length' }, ({ height, least }) => ({
    message: `the bend alone rises ${least}`,
    hint: 'raise the rim or make the radius smaller',
    got: height,
    allowed: `${least} or more`,
  })),
  'no-leg-left': error({}, () => ({
    message: 'the next bend leaves nothing of this leg',
    hint: 'make the leg longer',
  })),
  'rim-misses-leg': error({ edge: 'text' }, ({ edge }) => ({
    message: `the rim of ${edge} runs off past its leg’s end`,
    hint: 'make the rim less slanted or the leg longer',
  })),
  'flat-overlaps-itself': error({ at: 'point' }, ({ at }) => ({
    message: `the flat would overlap itself near ${at}`,
    hint: 'leave the corner open, bend less, make the legs lower or their ends shorter',
  })),
  'corner-metal-lacking': error(
    { lacking: 'angle', treat: ['mitre', 'lap', 'dress', 'open'] },
    ({ lacking, treat }) => ({
      message: `at this corner the flat has ${lacking} too little metal: a slit opens by that, and there is nothing to ${treat}`,
      hint: 'leave it open and patch it',
      got: treat,
      allowed: 'open',
    }),
  ),
  'corner-block': error(
    { why: ['none', 'turns', 'overhang', 'shallow', 'room'] },
    ({ why }) =>
      ({
        none: {
          message: 'no two bends meet there for a block to fit',
          hint: 'name the edges of two bends side by side',
        },
        turns: {
          message: 'one bend goes up and the other down: there is no inside for a block to fit',
          hint: 'leave `block` out',
        },
        overhang: {
          message: 'a leg bent to more than a right angle leans over the block',
          hint: 'leave `block` out, and dress over a block of your own',
        },
        shallow: {
          message: 'a leg leans so far out that the other’s edge of the block is gone below its top',
          hint: 'leave `block` out',
        },
        room: {
          message: 'the base has no room for a block with two dowels there',
          hint: 'leave `block` out, or make the base larger',
        },
      })[why],
  ),
  'corner-shrink': error({ share: 'percent', most: 'percent' }, ({ share, most }) => ({
    message: `left whole, the rim would have to shrink by ${share}`,
    hint: 'mitre the corner, round the base more, or make the legs lower',
    got: share,
    allowed: `up to ${most}`,
  })),
  'corner-shrink-much': warning({ share: 'percent' }, ({ share }) => ({
    message: `the rim must shrink by ${share} to stand up`,
    hint: 'gather it in small tucks, or mitre the corner',
  })),
  'corner-shrink-little': note({ share: 'percent' }, ({ share }) => ({
    message: `the rim shrinks by ${share}`,
    hint: 'dress it with hammer and dolly',
  })),
  'mitre-never-meets': error({}, () => ({
    message: 'the two legs never meet past the corner',
    hint: 'leave the corner open, or change the angles',
  })),
  'bend-off-outline': error({ bend: 'text' }, ({ bend }) => ({
    message: `the middle of bend ${bend} does not lie on a flat part`,
    hint: 'draw it across the metal, clear of the other bends’ curved parts',
  })),
  'bend-without-metal': error({ bend: 'text', side: ['before', 'beyond'] }, ({ bend, side }) => ({
    message: `bend ${bend} leaves no flat metal ${side} it`,
    hint: 'move the line, or make the radius smaller',
  })),
  'hole-in-bend': error({ near: 'point?' }, ({ near }) => ({
    message: `a hole${near === null ? '' : ` near ${near}`} lies where the metal will curve`,
    hint: 'drill it after bending, or trace a flat with the metal allowed for',
  })),
  'hole-on-bend': note({ bend: 'text' }, ({ bend }) => ({
    message: `a hole lies in the curved part of bend ${bend}`,
    hint: 'expect flats and kinks beside it, or drill it after bending',
  })),
  'panel-crosses-itself': error({ first: 'text', second: 'text' }, ({ first, second }) => ({
    message: `once bent, ${first} and ${second} lie in one another`,
    hint: 'make a leg lower, keep a bend short of the edge’s end, or bend less',
  })),
  'no-order': error(
    {
      bend: 'text',
      held: ['base', 'leg'],
      form: 'text',
      first: 'text',
      second: 'text',
      gap: 'length',
      needed: 'length',
      apart: ['meet', 'too near'],
      frees: ['own-form', 'no-ears', 'nothing-known'],
    },
    ({ bend, held, form, first, second, gap, needed, apart, frees }) => ({
      message: `there is no order in which every bend can be made; nearest to it, at ${bend} with its ${held} held, ${
        apart === 'meet' ? `${first} strikes ${second}` : `${first} and ${second} come within ${gap}`
      }`,
      hint: {
        'own-form': `make a form of its own for ${bend}, not a stretch of the one for ${form}`,
        'no-ears': `the spine for ${form} reaches past its bend to be clamped there: leave less wood round the clamp holes with clamps.wood, so that they find room in it`,
        'nothing-known': 'make a leg lower, cut a form shorter, or use clamps that reach further',
      }[frees],
      ...(apart === 'meet' ? {} : { got: gap, allowed: `at least ${needed}` }),
    }),
  ),
  'clamps-too-short': error({ bend: 'text', reach: 'length', throat: 'length' }, ({ bend, reach, throat }) => ({
    message: `no clamp reaches round what is held at ${bend}: ${reach} from the hole`,
    hint: 'use deeper clamps, or clamp past the sheet’s ends',
    got: throat,
    allowed: `at least ${reach}`,
  })),
};
