/** Longest name made from a title, characters. */
const LONGEST = 60;
/** Names that one system or another keeps for its devices. */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/u;

/**
 * A file's or folder's name for a job's title that is safe on every system: lower-case ASCII letters, digits and hyphens. Where
 * that loses anything that tells two titles apart, a short hash of the whole title is added, so that no two titles share a name
 * but by a chance of one in 2³².
 */
export function fileName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '');
  const short = plain.slice(0, LONGEST).replace(/-+$/u, '');
  const faithful = short === title.toLowerCase().replaceAll(' ', '-') && short !== '' && !RESERVED.test(short);
  if (faithful) return short;
  return `${short === '' ? 'job' : short}-${shortHash(title)}`;
}

/** Eight hex digits of a text: FNV-1a over its UTF-8 bytes, 32 bits. Source: Fowler, Noll, Vo & Eastlake, IETF draft-eastlake-fnv. */
export function shortHash(text: string): string {
  const hash = new TextEncoder().encode(text).reduce((held, byte) => Math.imul(held ^ byte, 0x01000193), 0x811c9dc5);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
