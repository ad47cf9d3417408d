import { error } from '../entry';

/** What is wrong between the values of a job. */
export const jobRuleFindings = {
  'taper-too-steep': error({ growth: 'given', length: 'given' }, ({ growth, length }) => ({
    message: `the radius grows by ${growth} over a length of ${length}: no cone is as steep as that`,
    hint: 'make the bend longer or the radii more alike',
    got: growth,
    allowed: `less than ${length}`,
  })),
  /** Null where the job's numbers cannot be read; `other` is the second edge, its radii null where there is none. */
  'runs-gone': error(
    {
      ...{ one: 'text?', back: 'text?', other: 'text?', top: 'text?', angle: 'number?' },
      ...{ length: 'given?', depth: 'given?', leg: 'given?' },
      ...{ from: 'given?', to: 'given?', otherFrom: 'given?', otherTo: 'given?' },
      radii: ['finished', 'form'],
    },
    (said) => ({
      message: 'a job of one bend has no runs any more: edges that share a form are the bends of a panel',
      hint: said.one === null ? SHARED_FORM : `in place of bend and runs write ${asPanel(said)}`,
    }),
  ),
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

const SHARED_FORM =
  'leave runs out; describe a base and its bends, and make one on another’s form with `form: { with: NAME }`';

/** The words of a panel that has an old job's edges. */
function asPanel(said: Readonly<Record<string, string | number | null>>): string {
  const { one, back, other, top, length, depth, leg, angle, from, to, otherFrom, otherTo } = said;
  const corners = `[[0, 0], [${length}, 0], [${length}, ${depth}], [0, ${depth}]]`;
  const first = `{ on: ${one}, angle: ${angle}, radius: { ${other}: ${from}, ${back}: ${to} }, leg: ${leg} }`;
  const second = `{ on: ${other}, angle: ${angle}, radius: { ${one}: ${otherFrom}, ${top}: ${otherTo} }, leg: ${leg}, form: { with: ${one} } }`;
  const bends = otherFrom === null ? first : `${first}, ${second}`;
  const finished = said.radii === 'form' ? ' (with the radii after release in place of the form’s)' : '';
  return `base: { corners: ${corners}, edges: [${one}, ${back}, ${top}, ${other}] } and bends: [${bends}]${finished}`;
}
