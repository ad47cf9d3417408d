import { at } from '../base/at';

/** Names and values, one pair a line. */
export function pairs(rows: readonly (readonly [string, string])[]): string {
  const width = Math.max(...rows.map(([name]) => columns(name)));
  return rows.map(([name, value]) => `  ${pad(name, width)}  ${value}\n`).join('');
}

/** Rows under a heading, columns in line. Columns that have no room in the terminal's width go on below, beside the first column again. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], width = Infinity): string {
  const widths = head.map(
    (title, column) => 2 + Math.max(columns(title), ...rows.map((row) => columns(row[column] ?? ''))),
  );
  const line = (cells: readonly string[], band: readonly number[]): string =>
    `${band
      .map((column) => pad(`  ${at(cells, column)}`, at(widths, column)))
      .join('')
      .trimEnd()}\n`;
  return bands(widths, width)
    .map((band) => [head, ...rows].map((cells) => line(cells, band)).join(''))
    .join('\n');
}

/** Which columns stand beside one another: the first in each band, then as many as fit, at least one. */
function bands(widths: readonly number[], width: number): number[][] {
  const [first = 0, ...others] = widths;
  const found: number[][] = [[0]];
  let used = first;
  others.forEach((wide, index) => {
    if (used + wide > width && (found.at(-1)?.length ?? 0) > 1) {
      found.push([0]);
      used = first;
    }
    found.at(-1)?.push(index + 1);
    used += wide;
  });
  return found;
}

function pad(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columns(text)));
}

/** How many columns of a terminal a text takes: wide characters two, marks that stand over another none. */
function columns(text: string): number {
  return [...text].reduce(
    (sum, character) =>
      sum +
      (/\p{M}/u.test(character)
        ? 0
        : /[\p{sc=Han}\p{sc=Hangul}\p{sc=Hiragana}\p{sc=Katakana}\p{Emoji_Presentation}]/u.test(character)
          ? 2
          : 1),
    0,
  );
}
