/** Sentences of one text, each written on a line of its own. */
export function sentences(...all: readonly string[]): string {
  return all.join(' ');
}
