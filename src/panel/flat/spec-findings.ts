import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { BendSpec, BuiltUp } from './built-up';
import { at } from '../../base/at';

/** Which bend stands on each edge of the base, and on each bend's rim; by number, null for none. */
export interface Standing {
  readonly onEdge: readonly (number | null)[];
  readonly onRim: readonly (number | null)[];
}

/** The edges beside edge `index`: where it starts, where it ends. */
export function neighbours({ base }: BuiltUp, index: number): readonly [string, string] {
  const count = base.edges.length;
  return [at(base.edges, index - 1), at(base.edges, (index + 1) % count)];
}

/** The edge of the base that a bend stands on, itself or through the legs between. */
function rootEdge(spec: BuiltUp, { on }: BendSpec): number {
  return spec.base.edges.indexOf(on.split('.')[0] ?? '');
}

/** Finds what stands on what, and every name that fits nothing. */
export function whatStandsWhere(spec: BuiltUp): { readonly standing: Standing; readonly findings: readonly Finding[] } {
  const onEdge: (number | null)[] = spec.base.edges.map(() => null);
  const onRim: (number | null)[] = spec.bends.map(() => null);
  const findings: Finding[] = [];
  spec.bends.forEach((bend, index) => {
    const path = `bends[${index}].on`;
    const parent = bend.on.endsWith('.rim') ? bend.on.slice(0, -'.rim'.length) : null;
    const list = parent === null ? onEdge : onRim;
    const place =
      parent === null ? spec.base.edges.indexOf(bend.on) : spec.bends.findIndex((other) => other.on === parent);
    if (place < 0 || (parent !== null && place >= index)) findings.push(unknownEdge(spec, bend, path));
    else if (list[place] !== null) findings.push(twoBends(bend, path));
    else list[place] = index;
    findings.push(...radiusFindings(spec, bend, index));
  });
  return { standing: { onEdge, onRim }, findings };
}

function unknownEdge(spec: BuiltUp, { on }: BendSpec, path: string): Finding {
  const rims = spec.bends.map((bend) => `${bend.on}.rim`);
  return finding('unknown-edge', path, { edge: on, known: [...spec.base.edges, ...rims] });
}

function twoBends({ on }: BendSpec, path: string): Finding {
  return finding('edge-bent-twice', path, { edge: on });
}

function radiusFindings(spec: BuiltUp, bend: BendSpec, index: number): Finding[] {
  const edge = rootEdge(spec, bend);
  if (edge < 0) return [];
  const names = neighbours(spec, edge);
  const keys = [
    ...(typeof bend.radius === 'number' ? [] : Object.keys(bend.radius).map((key) => ['radius', key] as const)),
    ...Object.keys(bend.inset).map((key) => ['inset', key] as const),
    ...(bend.from === null ? [] : [['from', bend.from] as const]),
  ];
  const strange = keys
    .filter(([, key]) => !names.includes(key))
    .map(([field, key]) =>
      finding('not-a-neighbour', field === 'from' ? `bends[${index}].from` : `bends[${index}].${field}.${key}`, {
        name: key,
        edge: bend.on,
        neighbours: names,
      }),
    );
  const { radius } = bend;
  if (typeof radius === 'number') return strange;
  const missing = names.filter((name) => !(name in radius));
  return missing.length === 0
    ? strange
    : [...strange, finding('radius-missing', `bends[${index}].radius`, { toward: missing, neighbours: names })];
}
