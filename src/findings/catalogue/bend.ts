import { error, warning } from '../entry';

/** What the sheet itself forbids or makes doubtful. */
export const bendFindings = {
  'wrap-too-far': error({ wrap: 'angle', angle: 'angle', most: 'angle' }, ({ wrap, angle, most }) => ({
    message: `the sheet would have to be wrapped ${wrap} to spring back to ${angle}; a half-disc holds it up to ${most}`,
    hint: 'bend less, make the radius smaller, or use a softer temper',
    got: wrap,
    allowed: `at most ${most}`,
  })),
  'no-minimum-radius': warning({ metal: 'text', thickness: 'fine' }, ({ metal, thickness }, { field }) => ({
    message: `no minimum bend radius is published here for ${metal} ${thickness} thick`,
    hint: `ask the supplier, bend a scrap first, and set ${field('sheet.minBendRatio')}`,
  })),
  'would-crack': error(
    { metal: 'text', ratio: 'ratio', strain: 'percent', least: 'ratio' },
    ({ metal, ratio, strain, least }, { field }) => ({
      message: `the form bends ${metal} to ${ratio} times its thickness (outside strain ${strain}); the least allowed is ${least}`,
      hint: `use a larger radius, a softer temper or a thinner sheet; set ${field('sheet.minBendRatio')} if your supplier allows less`,
      got: `${ratio} × thickness`,
      allowed: `at least ${least} × thickness`,
    }),
  ),
  'mostly-springback': warning({ radius: 'length', flat: 'length' }, ({ radius, flat }) => ({
    message: `at its larger end the sheet springs back more than half of its bend (bent to ${radius}; from ${flat} it comes back flat): table data is a poor guide here`,
    hint: 'bend trial strips of your own sheet before cutting the form, or use a softer or thicker sheet',
  })),
  twist: warning({ twist: 'angle' }, ({ twist }) => ({
    message: `one wrap serves both ends, so the leg comes out twisted by up to ${twist} at an end`,
    hint: 'correct the end by hand after release, or make the two radii more alike',
  })),
  'hard-pull': warning({ force: 'force', lever: 'length', most: 'force' }, ({ force, lever, most }) => ({
    message: `it takes ${force} at ${lever} from the tangent line to pull the leg round; ${most} is as much as one person should`,
    hint: 'get help, leave more leverage, or split the run',
    got: force,
    allowed: `at most ${most}`,
  })),
  'would-not-set': error({ radius: 'length', flat: 'length' }, ({ radius, flat }) => ({
    message: `a form this large does not set the sheet: wrapped no tighter than ${flat} inside radius it springs back flat`,
    hint: 'use a smaller form radius, a thicker sheet or a softer temper',
    got: radius,
    allowed: `below ${flat}`,
  })),
  'taper-too-steep-for-angle': error({ angle: 'angle', most: 'angle' }, ({ angle, most }) => ({
    message: `on a taper this steep the legs cannot turn ${angle}; even wrapped half round they turn ${most}`,
    hint: 'bend less or make the two radii more alike',
    got: angle,
    allowed: `below ${most}`,
  })),
  'ends-spring-apart': error(
    { end: 'text', form: 'length', left: 'length', curved: 'length', straighter: 'length' },
    ({ end, form, left, curved, straighter }) => ({
      message: `no one cone is left when this sheet is let go: the larger end springs back so much more than the other that at end ${end} the radius would have to shrink from ${form} to ${left}, while the metal there straightens (radius of curvature ${curved} to ${straighter}); the sheet would twist instead`,
      hint: 'make the two radii more alike, the part longer, the sheet thicker or softer, or bend it over two forms',
    }),
  ),
};
