import words from '../../shared/words.json';

/** A word of the trade, and what it is here. */
export interface Word {
  readonly word: string;
  readonly is: string;
}

/** The glossary for makers, in the order in which a form is understood. */
export const glossary: readonly Word[] = words.rows;

/** The same as a table in Markdown. */
export function wordsTable(): string {
  return ['| word | what it is |', '|---|---|', ...glossary.map(({ word, is }) => `| ${word} | ${is} |`)].join('\n');
}
