import { keyFigures, sayRows, type Amount, type Figure, type Printers } from './figures';
import type { Plan, PlanEnds, PlanHold, PlanPull } from './plan';

/** A number of the pull or the hold that is no key figure: said once for the table, the page and the shop sheet. */
export interface Detail extends Pick<Figure, 'name' | 'perEnd' | 'amounts' | 'words'> {
  readonly id: DetailId;
  /** What it is a number of. */
  readonly of: 'leg' | 'yoke' | 'hold';
}

export type DetailId =
  | 'loaded'
  | 'bow'
  | 'stands'
  | 'with'
  | 'gap'
  | 'arm'
  | 'opens'
  | 'grip'
  | 'part'
  | 'handles'
  | 'wedge'
  | 'clears'
  | 'bolts'
  | 'bare'
  | 'bearing'
  | 'lift'
  | 'up'
  | 'spread'
  | 'safety';

/** What else there is to know of pull and hold, in the order of the work. Nothing of what errors left without meaning. */
export function pullDetails({ pull, hold }: Pick<Plan, 'pull' | 'hold'>): readonly Detail[] {
  return [...(pull ? [...legDetails(pull), ...wayDetails(pull)] : []), ...(hold ? holdDetails(hold) : [])];
}

/** All numbers of a bend's pull and hold, key figures first: what each is called and what it says. */
export function pullAndHold(plan: Plan, print: Printers): readonly (readonly [string, string])[] {
  const figures = keyFigures(plan).filter(({ part, id }) => part === 'pull' || id === 'wrap-needed');
  return sayRows([...figures, ...pullDetails(plan)], print);
}

const length = (value: number): Amount => ({ of: 'length', value });
const angle = (value: number): Amount => ({ of: 'angle', value });
const force = (value: number): Amount => ({ of: 'force', value });
const both = ({ from, to }: PlanEnds): readonly Amount[] => [angle(from), angle(to)];

type Said = Pick<Detail, 'id' | 'of' | 'name'>;

function detail(said: Said, amounts: readonly Amount[], words: Detail['words'] = (text = '') => text): Detail {
  return { ...said, perEnd: false, amounts, words };
}

function legDetails({ tail, bow, early }: PlanPull): Detail[] {
  const of = 'leg';
  return [
    {
      id: 'loaded',
      of,
      name: 'Leg’s own bend while pulled',
      perEnd: true,
      amounts: [...both(tail.loaded), length(tail.reach)],
      words: (from = '', to = '', reach = '') => `${from} / ${to}, over ${reach}`,
    },
    detail({ id: 'bow', of, name: 'Leg bows by' }, [length(bow)]),
    detail(
      { id: 'stands', of, name: 'Front of the spine' },
      [length(Math.abs(early))],
      (text = '') => `${text} ${early >= 0 ? 'behind' : 'ahead of'} the held tangent line`,
    ),
  ];
}

const WITH = 'Pulled with';

/** With what the leg is pulled; of a yoke, where its nose lies and what it carries. */
function wayDetails({ with: way, yoke, bare, lever }: PlanPull): Detail[] {
  const of = 'yoke';
  if (!yoke)
    return [
      detail({ id: 'with', of: 'leg', name: WITH }, [], () =>
        way === 'press' ? 'a batten pressed down' : 'bare hands',
      ),
    ];
  const { nose, outer, bolts } = yoke;
  return [
    detail(
      { id: 'with', of, name: WITH },
      [length(yoke.length)],
      (long = '') => `a yoke, ${nose} and ${outer}, ${long} long`,
    ),
    detail({ id: 'gap', of, name: 'Yoke’s nose past where the sheet leaves the form' }, [length(yoke.gap)]),
    detail({ id: 'arm', of, name: 'From the nose to the hands' }, [length(yoke.arm)]),
    detail({ id: 'opens', of, name: 'Nose and outer member part under load by' }, [length(yoke.opens)]),
    detail({ id: 'grip', of, name: 'Sheet lies flat in the yoke again behind the nose at' }, [length(yoke.grip)]),
    detail(
      { id: 'part', of, name: 'Sheet pushes nose and outer member apart by' },
      [force(yoke.part * bolts.span)],
      (text = '') => `${text} over the span`,
    ),
    detail(
      { id: 'handles', of, name: 'Yoke’s handles' },
      [{ of: 'count', value: yoke.handles }, length(lever)],
      (count = '', far = '') => `${count} of ${yoke.handle}, to ${far} from the form`,
    ),
    detail(
      { id: 'wedge', of, name: 'Yoke’s nose is ground to a wedge' },
      [length(yoke.wedge.edge), length(yoke.wedge.back)],
      (edge = '', back = '') => `${edge} thick at its edge, whole ${back} back`,
    ),
    detail(
      { id: 'clears', of, name: 'Yoke’s nose clears the form by' },
      [length(yoke.clears)],
      (text = '') => `${text} at the end of the pull`,
    ),
    detail(
      { id: 'bolts', of, name: 'Yoke’s bolts' },
      [length(bolts.span), force(bolts.force)],
      (span = '', load = '') => `two ${bolts.size} an end, ${span} apart; ${load} a pair`,
    ),
    detail(
      { id: 'bare', of, name: 'Bare hands instead' },
      bare ? [force(bare.handForce), length(bare.lever)] : [],
      (load = '', within = '') => (bare ? `${load} within ${within} of the form` : 'not at any lever'),
    ),
  ];
}

function holdDetails({ bearing, lift, up, spread: { weak, strong }, safety }: PlanHold): Detail[] {
  const of = 'hold';
  return [
    detail(
      { id: 'bearing', of, name: 'Held leg bears' },
      [length(bearing)],
      (text = '') => `${text} behind the tangent line`,
    ),
    detail({ id: 'lift', of, name: 'Front edge of the spine lifts' }, [length(lift)]),
    detail({ id: 'up', of, name: 'Front edge of the spine is pushed up by' }, [force(up)]),
    detail(
      { id: 'spread', of, name: 'Held leg’s own bend, by how the clamps are done up' },
      [strong, ...(weak === null ? [] : [weak])].map(angle),
      (least = '', most = '') =>
        weak === null ? `from ${least}; weak clamps let the form lift` : `${least} to ${most}`,
    ),
    detail(
      { id: 'safety', of, name: 'Clamps’ safety against tipping' },
      [{ of: 'ratio', value: safety }],
      (text = '') => `${text} times what the pull asks for`,
    ),
  ];
}
