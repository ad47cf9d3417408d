import { InternalError } from '../base/errors';
import { escape, write, type Element } from './xml';

/** A small tree of HTML elements and its one serialiser; names are closed lists and every text and value goes through one escape. */

export type HtmlName =
  | 'html'
  | 'head'
  | 'meta'
  | 'title'
  | 'style'
  | 'body'
  | 'header'
  | 'main'
  | 'section'
  | 'h1'
  | 'h2'
  | 'h3'
  | 'p'
  | 'ul'
  | 'ol'
  | 'li'
  | 'dl'
  | 'dt'
  | 'dd'
  | 'div'
  | 'figure'
  | 'figcaption'
  | 'table'
  | 'caption'
  | 'thead'
  | 'tbody'
  | 'tr'
  | 'th'
  | 'td'
  | 'strong'
  | 'small'
  | 'bdi'
  | 'span'
  | 'a';
export type HtmlAttribute =
  'lang' | 'charset' | 'name' | 'content' | 'http-equiv' | 'class' | 'id' | 'scope' | 'colspan' | 'href';

export interface HtmlElement {
  readonly tag: HtmlName;
  readonly attributes: Readonly<Partial<Record<HtmlAttribute, string>>>;
  readonly children: readonly HtmlNode[];
}

/** An element, a picture from the SVG tree, or text. */
export type HtmlNode = HtmlElement | Element | string;

const VOID: ReadonlySet<HtmlName> = new Set(['meta']);
/** Elements between which a line break shows nothing: they are put on lines of their own. */
const LINES: ReadonlySet<HtmlName> = new Set([
  'html',
  'head',
  'body',
  'header',
  'main',
  'section',
  'ul',
  'ol',
  'dl',
  'table',
  'thead',
  'tbody',
  'tr',
  'figure',
  'div',
]);

export function html(
  tag: HtmlName,
  attributes: HtmlElement['attributes'] = {},
  ...children: readonly HtmlNode[]
): HtmlElement {
  return { tag, attributes, children };
}

/** A whole document from its `html` element. */
export function writeHtml(root: HtmlElement): string {
  return `<!DOCTYPE html>\n${writeNode(root)}\n`;
}

function writeNode(node: HtmlNode): string {
  if (typeof node === 'string') return escape(node);
  if (!('tag' in node)) return write(node);
  const { tag, attributes, children } = node;
  const open = `<${tag}${Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escape(value)}"`)
    .join('')}>`;
  if (VOID.has(tag)) return open;
  if (tag === 'style') return `${open}${children.map(rawStyle).join('')}</style>`;
  const inner = children.map(writeNode);
  return LINES.has(tag) && children.length > 0
    ? `${open}\n${inner.join('\n')}\n</${tag}>`
    : `${open}${inner.join('')}</${tag}>`;
}

/** A style sheet is not escaped, so it must be ours alone and cannot hold what would end it. */
function rawStyle(node: HtmlNode): string {
  if (typeof node !== 'string' || node.includes('<'))
    throw new InternalError('a style sheet must be plain text without <');
  return node;
}
