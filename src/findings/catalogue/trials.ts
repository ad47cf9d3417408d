import { error, note, warning } from '../entry';

/** What trial strips say, and whether they can be believed. */
export const trialFindings = {
  'strip-too-narrow': error(
    { strip: 'count', width: 'length', times: 'ratio', least: 'length', leastTimes: 'number' },
    ({ strip, width, times, least, leastTimes }) => ({
      message: `strip ${strip} is ${width} wide, ${times} times its thickness: it curls across its width and springs back unlike the sheet`,
      hint: 'bend a wider strip',
      got: width,
      allowed: `at least ${least} (${leastTimes} times the thickness)`,
    }),
  ),
  'no-springback': error({ strip: 'count', left: 'reading', bent: 'reading' }, ({ strip, left, bent }) => ({
    message: `strip ${strip} cannot keep ${left} of ${bent}: every sheet springs back`,
    hint: 'measure both as degrees turned from flat, the first while it is held on the disc',
    got: left,
    allowed: `less than ${bent}`,
  })),
  'strip-came-back-flat': error({ strip: 'count', left: 'reading' }, ({ strip, left }) => ({
    message: `strip ${strip} came back flat: it shows only that this disc is too large to set the sheet`,
    hint: 'bend it round a smaller disc',
    got: left,
    allowed: 'more than 0°',
  })),
  'little-springback': warning(
    { strip: 'count', springback: 'reading', change: 'percent' },
    ({ strip, springback, change }) => ({
      message: `strip ${strip} sprang back only ${springback}: half a degree of misreading changes its factor by ${change}`,
      hint: 'bend it further, or round a larger disc, and measure with a long-armed protractor',
    }),
  ),
  'trial-contradicts-sheet': error(
    {
      strip: 'count',
      radius: 'length',
      bent: 'reading',
      left: 'reading',
      factor: 'ratio',
      least: 'number',
      most: 'number',
    },
    ({ strip, radius, bent, left, factor, least, most }) => ({
      message: `strip ${strip} (${bent} round ${radius}, ${left} left) makes the sheet ${factor} times as strong as the tables have it; beyond ${least} to ${most} times it is another sheet, or a slip`,
      hint: 'check the metal, its temper and thickness, the disc’s radius, and that both angles are turned from flat; else leave this strip out',
      got: `factor ${factor}`,
      allowed: `${least} to ${most}`,
    }),
  ),
  'strip-or-part': error({ key: 'text' }, ({ key }) => ({
    message: `“${key}” does not go with the rest: a trial is a strip (radius, bent, left, width) or a finished part (part), not both`,
    hint: 'make two entries of it',
  })),
  'part-not-measured': error({ trial: 'count' }, ({ trial }) => ({
    message: `trial ${trial} is a finished part of which neither radius nor angle was measured`,
    hint: 'measure what came out: its inside radius, its angle, or both',
  })),
  'part-lacks-wrap': error({ trial: 'count', angle: 'reading' }, ({ trial, angle }) => ({
    message: `trial ${trial} came out at ${angle}, but not said is how far it was pulled`,
    hint: 'give its wrap: how far round the form, past the held tangent line, the sheet lay at the end of the pull, by the marks on the stations',
  })),
  'part-outside-bend': error(
    { trial: 'count', at: 'length', length: 'length' },
    ({ trial, at: place, length: most }) => ({
      message: `trial ${trial} was measured ${place} from end A, past the bend’s end`,
      hint: 'measure from end A along the tangent line',
      got: place,
      allowed: `up to ${most}`,
    }),
  ),
  'part-beyond-taper': error({ trial: 'count', angle: 'reading' }, ({ trial, angle }) => ({
    message: `trial ${trial}: legs of a bend that tapers so cannot stand at ${angle}`,
    hint: 'measure square to the line the legs’ planes meet in, from flat',
    got: angle,
  })),
  'part-not-opened': error({ trial: 'count', radius: 'length', form: 'length' }, ({ trial, radius, form }) => ({
    message: `trial ${trial} came out at a radius of ${radius} from a form of ${form}: every sheet springs back to a larger one`,
    hint: 'measure the inside radius square to the centre line; give the form’s own radius as “form” where it was cut otherwise',
    got: radius,
    allowed: `more than ${form}`,
  })),
  'part-contradicts-sheet': error(
    { trial: 'count', stronger: 'text', least: 'number', most: 'number' },
    ({ trial, stronger, least, most }) => ({
      message: `trial ${trial} makes the sheet far ${stronger} than the tables have it; beyond ${least} to ${most} times it is another sheet, or a slip`,
      hint: 'check the metal, its temper and thickness, the form’s radius and the wrap, and that the angle is from flat; else leave this part out',
      allowed: `${least} to ${most}`,
    }),
  ),
  'part-legs-off': warning({ trial: 'count', off: 'angle', which: 'text' }, ({ trial, off, which }) => ({
    message: `trial ${trial} came out ${off} ${which} than its radius and wrap account for`,
    hint: 'look again at where the sheet left the form, how square the pull was and how hard the clamps held; the new wrap is right only if all that is done the same way',
  })),
  'part-form-taken': note({ trial: 'count', form: 'length' }, ({ trial, form }, { at }) => ({
    message: `trial ${trial} is taken as bent on a form of ${form} there, as this job has it without its parts`,
    hint: `say the radius it was really bent on (${at}), and keep it so when you recut`,
  })),
  'one-strip': note({}, () => ({
    message: 'one strip says nothing of how far the sheet and your measuring vary',
    hint: 'bend two more, from elsewhere on the sheet',
  })),
  'strips-disagree': warning({ low: 'ratio', high: 'ratio' }, ({ low, high }) => ({
    message: `the trials’ factors lie between ${low} and ${high}: too far apart to rely on`,
    hint: 'bend and measure them again, all cut the same way of the grain; leave out the one that went wrong',
  })),
  'disc-unlike-form': warning(
    {
      strip: 'count',
      radius: 'length',
      formLeast: 'length',
      formMost: 'length',
      discLeast: 'length',
      discMost: 'length',
    },
    ({ strip, radius, formLeast, formMost, discLeast, discMost }) => ({
      message: `strip ${strip} was bent round ${radius}, far from the form’s ${formLeast} to ${formMost}: the sheet hardens differently there`,
      hint: `bend one round a disc between ${discLeast} and ${discMost}`,
    }),
  ),
};
