import type { Finding } from '../../base/findings';

/** What the sums of one bend found, said of that bend in the panel's file. */
export function inBend(findings: readonly Finding[], index: number): Finding[] {
  return findings.map((found) => {
    const own = found.path === 'bend' || found.path.startsWith('bend.');
    return own ? { ...found, path: `bends[${index}]${found.path.slice('bend'.length)}` } : found;
  });
}
