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
  'one-strip': note({}, () => ({
    message: 'one strip says nothing of how far the sheet and your measuring vary',
    hint: 'bend two more, from elsewhere on the sheet',
  })),
  'strips-disagree': warning({ low: 'ratio', high: 'ratio' }, ({ low, high }) => ({
    message: `the strips’ factors lie between ${low} and ${high}: too far apart to rely on`,
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
