/** The rows of the table with this caption, cell by cell, as text. */
export function rowsOf(sheet: string, caption: string): string[][] {
  const start = sheet.indexOf(`<caption>${caption}`);
  if (start < 0) throw new Error(`no table ${caption}`);
  const body = sheet.slice(sheet.indexOf('<tbody>', start), sheet.indexOf('</tbody>', start));
  return body
    .split('<tr>')
    .slice(1)
    .map((row) =>
      [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gsu)].map(([, cell = '']) =>
        cell
          .replaceAll(/<[^>]*>/gu, '')
          .replaceAll('\u00a0', ' ')
          .trim(),
      ),
    );
}
