/** What could move a terminal's cursor, clear it, turn its writing round or hide what follows; line breaks and tabs are text. */
const ACTS = /[\p{Cc}\p{Cs}\u061C\u200E\u200F\u2028\u2029\u202A-\u202E\u2066-\u2069\uFFF9-\uFFFB]/gu;

/** What this program itself sends to a terminal that shows it: its colours, and its line of progress. */
const ESCAPE = '\u001B';
const OURS = new RegExp(`${ESCAPE}\\[(?:0|1|36|33;1|31;1)m|\\r${ESCAPE}\\[K`, 'u');

/** A text as it may be printed: what would act on the terminal is shown as in JSON, `\u001b`. JSON stays the JSON it was. */
export function clean(text: string): string {
  return text.replaceAll(ACTS, (character) =>
    character === '\n' || character === '\t' ? character : shown(character),
  );
}

/** The same for what may hold colours of ours. */
export function cleanButOurs(text: string): string {
  return text
    .split(new RegExp(`(${OURS.source})`, 'u'))
    .map((piece) => (OURS.test(piece) ? piece : clean(piece)))
    .join('');
}

/** A text of someone else's, on one line and no longer than a message may be. */
export function onOneLine(text: string): string {
  const plain = clean(text).replaceAll('\n', '\\n').replaceAll('\t', ' ');
  return plain.length > LONGEST ? `${plain.slice(0, LONGEST - 1)}…` : plain;
}

const LONGEST = 1000;

function shown(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}
