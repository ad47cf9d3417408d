import { at } from '../../base/at';
import type { PanelRules } from '../../tables/panel-rules';
import type { Panel } from '../flat/panel';
import { handOf, type HeldSide } from '../form/hand';
import { tryBend } from './try-bend';
import {
  settledUse,
  type BendWork,
  type FormUse,
  type LeftMetal,
  type OfferedUse,
  type ShopBodies,
  type Step,
  type Strike,
} from './work';

/** A form of its own for the bend; its clamps through holes, not on ears past the sheet's ends. */
export type Freeing = 'own-form' | 'no-ears';

/** An order of work, or why there is none. */
export interface FoundOrder {
  /** Null where no order is possible. */
  readonly steps: readonly Step[] | null;
  /** What stood in the way, the nearest to possible first; at least one where there is no order. */
  readonly misses: readonly Strike[];
  /** What would free the nearest miss. */
  readonly frees: Freeing | null;
  /** Bends tried one way or another. */
  readonly tried: number;
}

export interface OrderGiven {
  readonly work: readonly BendWork[];
  readonly shop: ShopBodies;
  readonly rules: PanelRules;
  /** Metal left on for the bends; absent where there is none. */
  readonly leftOn?: readonly LeftMetal[] | undefined;
}

/** Fewest forms, then fewest turnings, then least hand force; compared in that order. */
type Cost = readonly [number, number, number];

interface Node {
  readonly done: number;
  readonly last: Choice | null;
  readonly forms: ReadonlySet<string>;
  readonly turned: number;
  readonly force: number;
  /** What the whole will cost at least. */
  readonly cost: Cost;
  /** Nodes gone through, for ties: the maker's own order first. */
  readonly steps: readonly Choice[];
}

interface Choice {
  readonly bend: number;
  readonly held: HeldSide;
  readonly use: OfferedUse;
}

/**
 * The cheapest order in which every bend can be made, either side held, with any of the forms it may use. The cheapest way not yet ruled out is always looked at
 * first, so that few clashes need be looked for.
 */
export function findOrder(panel: Panel, given: OrderGiven): FoundOrder {
  const search = orderSearch(panel, given);
  for (;;) {
    const next = search.next();
    if (next.done) return next.value;
  }
}

/** The same search, one look at a bend at a time: what it yields is how many it has looked at. */
export function* orderSearch(panel: Panel, given: OrderGiven): Generator<number, FoundOrder, void> {
  const known: Known = new Map();
  const all = (1 << panel.bends.length) - 1;
  const open: Node[] = [{ done: 0, last: null, forms: new Set(), turned: 0, force: 0, cost: [0, 0, 0], steps: [] }];
  const seen = new Set<string>();
  while (open.length > 0) {
    const node = takeCheapest(open);
    if (node.last) {
      const key = keyOf(node);
      if (seen.has(key)) continue;
      const before = node.done & ~(1 << node.last.bend);
      const made = look(panel, given, { known, choice: node.last, done: before });
      yield known.size;
      if (!isStep(made)) continue;
      seen.add(key);
    }
    if (node.done === all) {
      const steps = node.steps.map((choice, index) => {
        const before = node.steps.slice(0, index).reduce((mask, { bend }) => mask | (1 << bend), 0);
        return look(panel, given, { known, choice, done: before });
      });
      return { steps: steps.filter(isStep), misses: missesOf(known), frees: null, tried: known.size };
    }
    open.push(...onward(panel, given, node));
  }
  const misses = missesOf(known);
  return { steps: null, misses, frees: freedBy(panel, given, known), tried: known.size };
}

function takeCheapest(open: Node[]): Node {
  let best = 0;
  open.forEach((node, index) => {
    if (compare(node, open[best] ?? node) < 0) best = index;
  });
  const [taken] = open.splice(best, 1);
  if (!taken) throw new RangeError('nothing open');
  return taken;
}

function compare(a: Node, b: Node): number {
  const [fa, ta, na] = a.cost;
  const [fb, tb, nb] = b.cost;
  return fa - fb || ta - tb || na - nb || b.steps.length - a.steps.length;
}

/** Two ways to the same bends made, the same forms cut and the same last bend are one. */
function keyOf({ done, last, forms }: Node): string {
  return `${done} ${last ? choiceKey(last) : ''} ${[...forms].sort().join('|')}`;
}

function choiceKey({ bend, held, use }: Choice): string {
  return `${bend} ${held} ${use.body.name} ${use.stretch.from} ${use.stretch.startsAtA}`;
}

function onward(panel: Panel, { work }: OrderGiven, node: Node): Node[] {
  return work.flatMap((one, bend): Node[] => {
    if (node.done & (1 << bend)) return [];
    return (['base', 'leg'] as const).flatMap((held) =>
      one.pulling[held]
        ? one.uses.map((use): Node => {
            const choice = { bend, held, use };
            const forms = new Set([...node.forms, use.body.name]);
            const turned = node.turned + turnings(panel, node.last, choice);
            const force = Math.max(node.force, forceOf(one, held));
            const done = node.done | (1 << bend);
            const cost = leastCost(work, { done, forms, turned, force });
            return { done, last: choice, forms, turned, force, cost, steps: [...node.steps, choice] };
          })
        : [],
    );
  });
}

/** Hand force with a side held, N; endless where it cannot be. */
function forceOf({ pulling }: BendWork, held: HeldSide): number {
  return pulling[held]?.force ?? Infinity;
}

/** What has been spent, and what the bends still to be made cannot do without. */
function leastCost(work: readonly BendWork[], node: Pick<Node, 'done' | 'forms' | 'turned' | 'force'>): Cost {
  let force = node.force;
  let ownForms = 0;
  let lacksOne = false;
  work.forEach((one, bend) => {
    if (node.done & (1 << bend)) return;
    force = Math.max(force, Math.min(forceOf(one, 'base'), forceOf(one, 'leg')));
    if (one.uses.some(({ body }) => node.forms.has(body.name))) return;
    lacksOne = true;
    const others = work.filter((_, index) => index !== bend);
    const alone = one.uses.every(({ body }) =>
      others.every(({ uses }) => uses.every((use) => use.body.name !== body.name)),
    );
    if (alone) ownForms += 1;
  });
  // However many forms serve one bend alone, another that none of those so far serves takes one more at least.
  const forms = node.forms.size + (lacksOne ? Math.max(1, ownForms) : 0);
  return [forms, node.turned, force];
}

/** How often something is turned between two bends: the panel over, the form over. */
function turnings(panel: Panel, last: Choice | null, next: Choice): number {
  const [before, after] = [last ? panel.bends[last.bend] : undefined, panel.bends[next.bend]];
  if (!last || !before || !after) return 0;
  const panelOver = before.turn === after.turn ? 0 : 1;
  const sameForm = last.use.body.name === next.use.body.name;
  const formOver = sameForm && handOf(before, last.held) !== handOf(after, next.held) ? 1 : 0;
  return panelOver + formOver;
}

/** What every look at a bend found; null where the form cannot be made for it. */
type Known = Map<string, Step | Strike | null>;

function isStep(found: Step | Strike | null): found is Step {
  return found !== null && !('why' in found);
}

interface Look {
  readonly known: Known;
  readonly choice: Choice;
  /** Bit by bit, the bends made before. */
  readonly done: number;
}

function look(
  panel: Panel,
  { work, shop, rules, leftOn }: OrderGiven,
  { known, choice, done }: Look,
): Step | Strike | null {
  const key = `${done} ${choiceKey(choice)}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const use = settledUse(choice.use);
  const own = work[choice.bend];
  if (!own) throw new RangeError(`no work for bend ${choice.bend}`);
  const made = panel.bends.map((_, index) => (done & (1 << index)) !== 0);
  const found = use && tryBend(panel, { ...choice, use, done: made, work: own, shop, rules, leftOn });
  known.set(key, found);
  return found;
}

/** Everything that failed, what lacked least first; one of a kind. */
function missesOf(known: Known): Strike[] {
  const strikes = [...known.values()].filter((one): one is Strike => one !== null && 'why' in one);
  const lacking = ({ why, gap, needed }: Strike): number =>
    why === 'strikes' ? needed - gap : Math.abs(needed - gap) + 1e3;
  return strikes.sort((a, b) => lacking(a) - lacking(b));
}

/** What may free the bend: a form of its own where it failed with a shared one, a spine without ears where something strikes that. */
function freedBy(panel: Panel, given: OrderGiven, known: Known): Freeing | null {
  const misses = missesOf(known);
  const [nearest] = misses;
  if (nearest && strikesEars(given, nearest)) return 'no-ears';
  const failed = misses.find(({ bend, form }) => usesFor(given, bend).every(({ body }) => body.name === form));
  if (!failed) return null;
  const own = given.work[failed.bend];
  const [use] = own?.uses ?? [];
  const bend = panel.bends[failed.bend];
  if (!own || !use || !bend) return null;
  const reach = Math.abs(use.stretch.to - use.stretch.from);
  return reach < use.body.cone.length - 1 ? 'own-form' : null;
}

/** The forms that can be made for a bend. */
function usesFor({ work }: OrderGiven, bend: number): FormUse[] {
  return at(work, bend).uses.flatMap((use) => settledUse(use) ?? []);
}

/** Whether what lacked was room for a spine that reaches past its end stations. */
function strikesEars(given: OrderGiven, { bend, form, why, what }: Strike): boolean {
  const uses = usesFor(given, bend);
  return (
    why === 'strikes' &&
    what.includes('spine') &&
    uses.some(({ body: { name, ears } }) => name === form && Math.max(ears.small, ears.large) > 0)
  );
}
