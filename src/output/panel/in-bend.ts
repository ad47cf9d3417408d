import type { Finding } from '../../base/findings';
import type { Panel } from '../../panel';
import { at } from '../../base/at';

type Bends = Pick<Panel, 'bends'>;

/** What the sums of one bend found, said of that bend in the panel's file. */
export function inBend(findings: readonly Finding[], { bends }: Bends, index: number): Finding[] {
  const { name } = at(bends, index);
  return findings.map((found) => {
    const own = found.path === 'bend' || found.path.startsWith('bend.');
    const path = own ? `bends[${index}]${found.path.slice('bend'.length)}` : found.path;
    return { ...found, path, bends: [name] };
  });
}

/** Each finding once: several bends may find the same of the sheet or the boards. What all of them find is said of none by name. */
export function unlike(findings: readonly Finding[], { bends }: Bends): Finding[] {
  const found = new Map<string, Finding>();
  for (const one of findings) {
    const key = JSON.stringify([one.code, one.path, one.values]);
    const names = [...new Set([...(found.get(key)?.bends ?? []), ...(one.bends ?? [])])];
    found.set(key, { ...(found.get(key) ?? one), bends: names });
  }
  return [...found.values()].map(({ bends: names = [], ...rest }) =>
    names.length === 0 || names.length === bends.length ? rest : { ...rest, bends: names },
  );
}
