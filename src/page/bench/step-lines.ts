import type { HtmlElement, HtmlNode } from '../../output/html';

/** A step of the shop sheet apart: what is done line by line, and what one must mind. */
export interface StepLines {
  readonly lines: readonly (readonly HtmlNode[])[];
  readonly cautions: readonly HtmlElement[];
}

/** Every entry of a list and every paragraph that is no caution is a line to tick off. */
export function stepLines(content: readonly HtmlNode[]): StepLines {
  const elements = content.filter((node): node is HtmlElement => typeof node !== 'string' && 'tag' in node);
  const cautions = elements.filter(isCaution);
  const lines = elements
    .filter((element) => !isCaution(element))
    .flatMap(({ tag, children }) =>
      tag === 'ul' || tag === 'ol'
        ? children.map((item) => (typeof item !== 'string' && 'tag' in item ? item.children : [item]))
        : [children],
    );
  return { lines, cautions };
}

function isCaution({ attributes }: HtmlElement): boolean {
  return attributes.class === 'caution';
}
