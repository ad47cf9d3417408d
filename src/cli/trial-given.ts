import { EXIT, Stop } from './io';

/** A measurement as given on the command line, in its order there. */
export interface Given {
  readonly name:
    'radius' | 'bent' | 'left' | 'width' | 'part-at' | 'part-radius' | 'part-angle' | 'part-wrap' | 'part-form';
  readonly text: string;
}

/** What begins a strip and a part, and what each must have. */
const KINDS = {
  strip: { first: 'radius', begins: 'the --radius of its disc', needs: ['bent', 'left'] },
  part: { first: 'part-at', begins: 'its place, --part-at', needs: [] },
} as const satisfies Readonly<
  Record<string, { first: Given['name']; begins: string; needs: readonly Given['name'][] }>
>;

const DEGREES: readonly string[] = ['bent', 'left', 'part-angle', 'part-wrap'];

interface Gathered {
  readonly kind: keyof typeof KINDS;
  readonly values: Map<Given['name'], string>;
}

/** Measurements gathered into strips and parts, as the job file would have them: each `--radius` begins a strip, each `--part-at` a part. */
export function trialsOf(given: readonly Given[]): Record<string, unknown>[] {
  const gathered: Gathered[] = [];
  for (const { name, text } of given) {
    const kind = name.startsWith('part-') ? 'part' : 'strip';
    const { first, begins } = KINDS[kind];
    if (name === first) gathered.push({ kind, values: new Map() });
    const { kind: last, values } = gathered.at(-1) ?? {};
    if (!values || last !== kind)
      throw new Stop(`--${name} stands before any --${first}: each ${kind} begins with ${begins}`, EXIT.wrong);
    if (values.has(name))
      throw new Stop(`${kind} ${gathered.length} has two --${name}; each ${kind} begins with ${begins}`, EXIT.wrong);
    values.set(name, text);
  }
  return gathered.map(asInFile);
}

function asInFile({ kind, values }: Gathered, index: number): Record<string, unknown> {
  for (const name of KINDS[kind].needs)
    if (!values.has(name)) throw new Stop(`strip ${index + 1} lacks --${name}`, EXIT.wrong);
  const fields = Object.fromEntries(
    [...values].map(([name, text]) => [
      name.replace('part-', ''),
      DEGREES.includes(name) ? readDegrees(name, text) : text,
    ]),
  );
  return kind === 'part' ? { part: fields } : fields;
}

function readDegrees(name: string, text: string): number {
  const [, number] = /^\s*(-?(?:\d+(?:\.\d*)?|\.\d+))\s*(?:°|deg|degrees)?\s*$/u.exec(text) ?? [];
  if (number === undefined || text.length > 32)
    throw new Stop(`--${name} should be a number of degrees, as in 95 or 84.5`, EXIT.wrong);
  return Number(number);
}
