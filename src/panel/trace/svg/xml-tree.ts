import { SaxesParser } from 'saxes';
import { shown, type Troubles } from '../trace';

/** An element of a drawing, with the line it stands on. Names without `svg:`. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
  readonly line: number;
}

interface Growing extends XmlElement {
  readonly children: Growing[];
  text: string;
}

/** Deeper nesting than this is no drawing. */
const DEEPEST = 200;

/**
 * Text → its root element; null, with what is wrong and on which line, where it is not well-formed XML or declares a document type of
 * its own: a drawing needs none, and its entities may unfold to any size or fetch other files.
 */
export function readXml(text: string, troubles: Troubles): XmlElement | null {
  const parser = new SaxesParser();
  const open: Growing[] = [];
  let root: Growing | null = null;
  let stopped = false;
  const stop = (say: () => void): void => {
    if (!stopped) say();
    stopped = true;
  };
  parser.on('error', ({ message }) =>
    stop(() => troubles.say('svg-broken', { trouble: `the SVG file is not well-formed: ${shown(message)}` })),
  );
  parser.on('doctype', (doctype) => {
    if (!USUAL_TYPE.test(doctype)) stop(() => troubles.say('svg-entities', { line: parser.line }));
  });
  parser.on('processinginstruction', ({ target }) => {
    if (target !== 'xml')
      stop(() =>
        troubles.say('svg-external', {
          line: parser.line,
          what: `the SVG file asks for a style sheet (${shown(target)})`,
        }),
      );
  });
  parser.on('opentag', ({ name, attributes }) => {
    if (stopped) return;
    const element: Growing = {
      name: name.replace(/^svg:/u, ''),
      attributes,
      children: [],
      text: '',
      line: parser.line,
    };
    open.at(-1)?.children.push(element);
    root ??= element;
    open.push(element);
    if (open.length > DEEPEST)
      stop(() =>
        troubles.say('svg-broken', { trouble: `line ${parser.line}: elements are nested more than ${DEEPEST} deep` }),
      );
  });
  parser.on('closetag', () => void open.pop());
  const addText = (more: string): void => {
    const within = open.at(-1);
    if (within?.name === 'style') within.text += more;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  for (let at = 0; at < text.length && !stopped; at += CHUNK) parser.write(text.slice(at, at + CHUNK));
  if (!stopped) parser.close();
  return stopped ? null : root;
}

/** The declaration older drawing programs write; nothing is fetched for it. Any other may hold entities. */
const USUAL_TYPE =
  /^\s*svg(?:\s+PUBLIC\s+"-\/\/W3C\/\/DTD SVG [^"]{1,40}"\s+"https?:\/\/www\.w3\.org\/[^"]{1,80}")?\s*$/u;

/** Read so many characters at a time, so that a broken file is put down at its first mistake. */
const CHUNK = 65_536;
