import type { Measures } from '../../shop-sheet/measures';
import { fastenersOf, type PlannedJoin } from './plan-assembly';
import { sentences } from '../../sentences';

/** What is done where two panels lap, in the order it is done. */
export function joinWords({ outer, inner, drill, bends }: PlannedJoin, say: Measures): string {
  const { seam, count, rows } = outer.layout;
  const holes = count * rows.length;
  const { fastener } = seam;
  const bit = `${fastener.drill} (${say.exact(fastener.hole)})`;
  const how = {
    inner: `drill the ${holes} holes of ${outer.panel} through those of ${inner.panel}, ${bit}`,
    outer: `drill the ${holes} holes of ${inner.panel} through those of ${outer.panel}, ${bit}`,
    both: `see that all ${holes} holes of both meet`,
  }[drill];
  const over = bends.map(
    ({ outer: own, inner: under, wanted, longer }) =>
      ` Over its bend ${under.bend} lies ${own.bend} of ${outer.panel}: inside radius ${say.exact(wanted)} where the seam crosses, its flat ${say.exact(longer)} longer.`,
  );
  return sentences(
    `Lay ${outer.name} over ${inner.name}, each edge on the other’s lap line, ${say.length(seam.lap)} in.`,
    `Clamp them together; ${how}, from the middle outward, pinning each third hole as you go.`,
    `Take them apart, deburr the holes and clean out the chips; then put in the ${holes} ${fastener.name}s.${over.join('')}`,
  );
}

/** What the joins take. */
export function fastenerWords(joins: readonly PlannedJoin[]): string {
  return `To buy: ${fastenersOf(joins)
    .map(({ name, count }) => `${count} ${name}s`)
    .join(', ')}, and some to spare.`;
}
