import { error } from '../entry';

/** What is wrong between the values of a job. */
export const jobRuleFindings = {
  'taper-too-steep': error({ growth: 'given', length: 'given' }, ({ growth, length }) => ({
    message: `the radius grows by ${growth} over a length of ${length}: no cone is as steep as that`,
    hint: 'make the bend longer or the radii more alike',
    got: growth,
    allowed: `less than ${length}`,
  })),
  'run-named-twice': error({ name: 'text' }, ({ name }) => ({
    message: `two runs are called ${name}`,
    hint: 'give each run a name of its own',
    got: name,
  })),
  'run-backward': error({ run: 'text', from: 'given', to: 'given' }, ({ run, from, to }) => ({
    message: `run ${run} runs from ${from} to ${to}: it must end after it begins`,
    hint: 'let “from” be the smaller',
    got: to,
    allowed: `more than ${from}`,
  })),
  'run-outside-form': error({ run: 'text', to: 'given', length: 'given' }, ({ run, to, length }) => ({
    message: `run ${run} reaches to ${to}; the form is ${length} long`,
    hint: 'shorten the run or lengthen the bend',
    got: to,
    allowed: `at most ${length}`,
  })),
  'block-outside-bend': error({ from: 'given', to: 'given', length: 'given' }, ({ from, to, length }, { field }) => ({
    message: `the finishing block reaches from ${from} to ${to}; the bend from 0 to ${length}`,
    hint: `move it with ${field('block.at')} or make it shorter`,
    got: `${from} to ${to}`,
    allowed: `0 to ${length}`,
  })),
  'roll-without-width': error({ example: 'length' }, ({ example }, { field }) => ({
    message: 'a roll of paper needs its width',
    hint: `add ${field('paper.width')}, as in ${example}`,
  })),
  'width-without-roll': error({ size: 'text', width: 'given' }, ({ size, width }, { field }) => ({
    message: `${size} paper has a width of its own`,
    hint: `leave ${field('paper.width')} out, or let ${field('paper.size')} be roll`,
    got: width,
  })),
  'not-for-this-tool': error({ tool: 'text', owners: 'names' }, ({ tool, owners }, { at, field }) => ({
    message: `${at} belongs to a ${owners}; this job cuts with a ${tool}`,
    hint: `leave it out, or change ${field('cut.with')}`,
    got: tool,
    allowed: owners,
  })),
  'gap-too-narrow': error(
    { tool: ['router', 'laser'], gap: 'given', least: 'given' },
    ({ tool, gap, least }, { at }) => ({
      message: `${at} is ${gap}: ${tool === 'router' ? 'the bit cuts all round each part, and grooves run past its edge' : 'the beam cuts all round each part'}`,
      hint: 'leave more between the parts',
      got: gap,
      allowed: `at least ${least}`,
    }),
  ),
  'kerf-too-narrow': error({ kerf: 'given', least: 'given' }, ({ kerf, least }, { at }) => ({
    message: `${at} is ${kerf}: no beam is as narrow`,
    hint: 'measure it, or write 0 where the machine makes up for it',
    got: kerf,
    allowed: `0, or at least ${least}`,
  })),
};
