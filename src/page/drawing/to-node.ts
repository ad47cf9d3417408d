import { h, type VNode } from 'preact';
import type { HtmlNode } from '../../output/html';
import type { Element } from '../../output/xml';

/** A writer's element as the page's; a group's name, which is an id in a file, is a class among many drawings. */
export function toNode(element: Element): VNode {
  const { id, ...attributes } = element.attributes;
  return h(
    element.name,
    { ...attributes, ...(id === undefined ? {} : { class: id }) },
    ...element.children.map((child) => (typeof child === 'string' ? child : toNode(child))),
  );
}

/** The same of a piece of the shop sheet. */
export function htmlNode(node: HtmlNode): VNode | string {
  if (typeof node === 'string') return node;
  if (!('tag' in node)) return toNode(node);
  return h(node.tag, { ...node.attributes }, ...node.children.map(htmlNode));
}
