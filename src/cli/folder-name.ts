import { createHash } from 'node:crypto';

/** Longest folder name made from a title, characters. */
const LONGEST = 60;
/** Names that one system or another keeps for its devices. */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/u;

/**
 * A folder name for a job's title that is safe on every system: lower-case ASCII letters, digits and hyphens. Where that loses
 * anything that tells two titles apart, a short hash of the whole title is added, so that no two titles share a folder.
 */
export function folderName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '');
  const short = plain.slice(0, LONGEST).replace(/-+$/u, '');
  const faithful = short === title.toLowerCase().replaceAll(' ', '-') && short !== '' && !RESERVED.test(short);
  if (faithful) return short;
  const hash = createHash('sha256').update(title).digest('hex').slice(0, 8);
  return short === '' ? `job-${hash}` : `${short}-${hash}`;
}
