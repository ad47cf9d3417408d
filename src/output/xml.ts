/**
 * A small tree of elements and its one serialiser. Element and attribute names are closed lists, so that no text of a job can
 * ever become one; every value and every text goes through one escape.
 */

export type ElementName = 'svg' | 'g' | 'path' | 'circle' | 'text' | 'title' | 'desc';
export type AttributeName =
  | 'xmlns'
  | 'width'
  | 'height'
  | 'viewBox'
  | 'id'
  | 'fill'
  | 'stroke'
  | 'stroke-width'
  | 'stroke-dasharray'
  | 'd'
  | 'cx'
  | 'cy'
  | 'r'
  | 'x'
  | 'y'
  | 'font-family'
  | 'font-size'
  | 'text-anchor'
  | 'transform';

export interface Element {
  readonly name: ElementName;
  readonly attributes: Readonly<Partial<Record<AttributeName, string>>>;
  readonly children: readonly (Element | string)[];
}

export function el(name: ElementName, attributes: Element['attributes'], children: Element['children'] = []): Element {
  return { name, attributes, children };
}

/** The tree as text, one element a line, nothing but escaped text inside text. */
export function write(element: Element): string {
  const attributes = Object.entries(element.attributes).map(([name, value]) => ` ${name}="${escape(value)}"`);
  const open = `<${element.name}${attributes.join('')}`;
  if (element.children.length === 0) return `${open}/>`;
  const onlyText = element.children.every((child) => typeof child === 'string');
  const children = element.children.map((child) => (typeof child === 'string' ? escape(child) : write(child)));
  return onlyText
    ? `${open}>${children.join('')}</${element.name}>`
    : `${open}>\n${children.join('\n')}\n</${element.name}>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text safe inside an element or a quoted attribute; characters XML does not allow become spaces. */
export function escape(text: string): string {
  return text
    .replaceAll(/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, ' ')
    .replaceAll(/[&<>"']/gu, (character) => ENTITIES[character] ?? '');
}
