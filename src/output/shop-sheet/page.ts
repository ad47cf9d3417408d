import { html, writeHtml, type HtmlElement } from '../html';
import { keepFractions } from './pieces';
import { STYLE } from './style';

/** No script, nothing fetched: a browser holds the file to it. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** A sheet for the bench as a whole HTML file, to print on letter or A4; `kind`: what sheet it is, beside the job's title. */
export function writePage(title: string, kind: string, body: HtmlElement): string {
  const head = html(
    'head',
    {},
    html('meta', { charset: 'utf-8' }),
    html('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    html('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    html('title', {}, `${title}: ${kind}`),
    html('style', {}, STYLE),
  );
  return writeHtml(html('html', { lang: 'en' }, head, keepFractions(body)));
}
