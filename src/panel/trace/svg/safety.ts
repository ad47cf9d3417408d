import { shown, type Troubles } from '../trace';
import type { XmlElement } from './xml-tree';

/** Elements that run programs or bring other documents in. */
const ACTIVE: readonly string[] = ['script', 'foreignObject', 'iframe', 'object', 'embed', 'handler', 'listener'];
const FETCHES = /@import|url\(\s*["']?\s*(?!["']?#)/iu;

/**
 * Refuses what no drawing needs and could do harm once it is shown: scripts, other files, addresses. Pictures held in the file are
 * harmless and only left out.
 */
export function checkSafe(root: XmlElement, troubles: Troubles): void {
  const waiting = [root];
  for (let element = waiting.pop(); element; element = waiting.pop()) {
    checkElement(element, troubles);
    waiting.push(...element.children);
  }
}

function checkElement({ name, attributes, text, line }: XmlElement, troubles: Troubles): void {
  const local = name.replace(/^.*:/u, '');
  if (ACTIVE.includes(local))
    troubles.say('svg-script', { line, what: `the SVG file holds a ${shown(local)} element` });
  if (FETCHES.test(text)) troubles.say('svg-external', { line, what: 'the SVG file’s style fetches another file' });
  for (const [key, value] of Object.entries(attributes)) {
    if (/^on/iu.test(key)) troubles.say('svg-script', { line, what: `${shown(key)} of ${shown(name)} is a script` });
    if (isReference(key) && !isWithin(value, local)) {
      troubles.say('svg-external', {
        line,
        what: `${shown(name)} refers to something outside the file: ${shown(value)}`,
      });
    }
    if (key === 'style' && FETCHES.test(value)) {
      troubles.say('svg-external', { line, what: `the style of ${shown(name)} fetches another file` });
    }
  }
}

function isReference(key: string): boolean {
  return /^(?:.*:)?href$/u.test(key) || key === 'src';
}

function isWithin(value: string, element: string): boolean {
  const target = value.trim();
  if (target === '' || target.startsWith('#')) return true;
  return element === 'image' && /^data:image\/(?:png|jpe?g|gif|webp|bmp)[;,]/iu.test(target);
}
