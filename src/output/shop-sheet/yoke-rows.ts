import { plankFor } from '../../design/fixture/plank';
import { yokeDepth } from '../../design/pull/yoke-parts';
import type { Shop } from './shop';

/** A member of the yoke, or the plank: what it is made of, how it is cut, how many, and what for. */
export interface Member {
  readonly name: string;
  readonly stock: string;
  readonly length: string;
  readonly number: number;
  readonly remark: string;
}

/** The pieces a pull by yoke needs besides the form; none without one. */
export function yokeMembers({ bend, layout, tables, say }: Shop): Member[] {
  const { yoke, lever } = bend.pull;
  const plank = plankFor(bend, layout, tables.rules);
  if (!yoke || !plank) return [];
  return [
    {
      name: 'yoke’s nose',
      stock: yoke.nose.name,
      length: `${say.length(yoke.length)} long`,
      number: 1,
      remark: 'one flange on the inside face, drilled for the bolts',
    },
    {
      name: 'yoke’s outer member',
      stock: yoke.outer.name,
      length: `${say.length(yoke.length)} long`,
      number: 1,
      remark: 'under the outside face, drilled with the nose',
    },
    {
      name: 'yoke’s handle',
      stock: yoke.handle.name,
      length: `${say.length(lever)} long`,
      number: yoke.handles,
      remark: 'screwed square to the underside of the outer member',
    },
    {
      name: 'plank',
      stock: `wood ${say.atLeast(plank.thickness)} thick, ${say.length(plank.ahead + plank.behind)} wide, of battens side by side if need be`,
      length: `${say.length(plank.length)} long`,
      number: 1,
      remark: `under form and held leg: ${say.length(plank.behind)} of it behind the spine’s front face`,
    },
  ];
}

/** Bolts of the yoke to buy; none without one. */
export function yokeBolts({ bend, say }: Shop): Member[] {
  const { yoke } = bend.pull;
  if (!yoke) return [];
  const grip = yoke.outer.depth + yoke.nose.thickness + bend.section.thickness;
  return [
    {
      name: 'yoke’s bolts',
      stock: `${yoke.bolt.name} bolt, nut and two large washers`,
      length: `${say.atLeast(grip + NUT)} or longer`,
      number: 4,
      remark: `two at each end, ${say.length(yoke.span)} from pair to pair`,
    },
    {
      name: 'yoke’s screws',
      stock: 'stout wood screw',
      length: `${say.atLeast(SCREW_SHARE * yokeDepth(yoke))} or a little less`,
      number: 4 * yoke.handles,
      remark: 'four to a handle, into the outer member',
    },
  ];
}

/** Washers and nut past what a bolt goes through, mm. */
const NUT = 20;
/** A screw through a handle goes well into the outer member and not out of it. */
const SCREW_SHARE = 0.9;
