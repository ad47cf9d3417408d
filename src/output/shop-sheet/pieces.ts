import type { SaidFinding } from '../../findings/say';
import { html, type HtmlElement, type HtmlNode } from '../html';
import type { Measures } from './measures';

/** Text the maker wrote: shown as it is, kept apart from what stands around it whichever way its script runs, broken where it must. */
export function theirs(text: string): HtmlElement {
  return html('bdi', { class: 'theirs' }, text);
}

/** Fractions such as the `1-5/8` of `1.628 in (1-5/8)`, which a line must not break after the hyphen. */
const FRACTION = /(\d+-\d+\/\d+)/u;

/** The same tree with every fraction in our own text kept on one line. */
export function keepFractions(node: HtmlNode): HtmlNode {
  if (typeof node === 'string' || !('tag' in node) || node.attributes.class === 'theirs' || node.tag === 'style')
    return node;
  return {
    ...node,
    children: node.children.flatMap((child) =>
      typeof child === 'string' ? splitFractions(child) : [keepFractions(child)],
    ),
  };
}

function splitFractions(text: string): HtmlNode[] {
  return text
    .split(FRACTION)
    .map((piece, index) => (index % 2 === 1 ? html('span', { class: 'whole' }, piece) : piece));
}

export type Cell = HtmlNode | readonly HtmlNode[];

/** A table of more rows may go on on the next page, rather than leave half a page empty before it. */
const MOST_ROWS = 12;

/** A table whose head is repeated on every page; the first cell of each row names it. */
export function table(caption: string, head: readonly string[], rows: readonly (readonly Cell[])[]): HtmlElement {
  return html(
    'table',
    rows.length > MOST_ROWS ? { class: 'long' } : {},
    html('caption', {}, caption),
    html('thead', {}, html('tr', {}, ...head.map((text) => html('th', { scope: 'col' }, text)))),
    html('tbody', {}, ...rows.map((row) => html('tr', {}, ...row.map(cell)))),
  );
}

function cell(content: Cell, index: number): HtmlElement {
  const children = Array.isArray(content) ? (content as readonly HtmlNode[]) : [content as HtmlNode];
  return index === 0 ? html('th', { scope: 'row' }, ...children) : html('td', {}, ...children);
}

export function section(id: string, title: string, ...children: readonly HtmlNode[]): HtmlElement {
  return html('section', { id }, html('h2', {}, title), ...children);
}

/** A section that need not start a page. */
export function flowing(id: string, title: string, ...children: readonly HtmlNode[]): HtmlElement {
  return html('section', { id, class: 'flow' }, html('h2', {}, title), ...children);
}

/** How lengths are written, where a sheet has inches. */
export function inchNote({ units }: Pick<Measures, 'units'>): HtmlElement[] {
  if (units === 'mm') return [];
  return [
    html(
      'p',
      { class: 'lead' },
      'Lengths in inches: thousandths, as the drawings have them, and in brackets the nearest 1/32 for the rule.',
    ),
  ];
}

export function paragraph(...children: readonly HtmlNode[]): HtmlElement {
  return html('p', {}, ...children);
}

export function caution(...children: readonly HtmlNode[]): HtmlElement {
  return html('p', { class: 'caution' }, html('strong', {}, 'Caution: '), ...children);
}

export function list(...items: readonly (HtmlNode | readonly HtmlNode[])[]): HtmlElement {
  return html(
    'ul',
    {},
    ...items.map((item) =>
      html('li', {}, ...(Array.isArray(item) ? (item as readonly HtmlNode[]) : [item as HtmlNode])),
    ),
  );
}

/** A finding in full: what was found, then what to do about it. */
export function findingText({ message, hint }: SaidFinding): HtmlNode[] {
  return [theirs(message), '. What to do: ', theirs(hint), '.'];
}

/** Plain words with the right ending: `1 screw`, `4 screws`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number}\u00a0${number === 1 ? one : many}`;
}
