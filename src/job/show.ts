/** Characters no title or name may hold: controls, lone surrogates, line separators, and those that turn the writing direction round. */
export const UNPRINTABLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/u;

/** A value as the maker wrote it, short enough for a message. */
export function show(value: unknown): string {
  if (typeof value === 'string') return `“${shorten(value)}”`;
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(value) : Number.isNaN(value) ? '.nan' : 'an endless number';
  if (typeof value === 'boolean') return String(value);
  if (value === null || value === undefined) return 'nothing';
  return Array.isArray(value) ? 'a list' : 'a block of keys';
}

/** At most 60 characters, unprintable ones shown as �. */
export function shorten(text: string): string {
  const plain = text.replaceAll(new RegExp(UNPRINTABLE, 'gu'), '\uFFFD');
  return plain.length > 60 ? `${plain.slice(0, 57).replace(/\p{Cs}$/u, '')}…` : plain;
}
