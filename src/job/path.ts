/** Where a value stands in the job: keys and list indexes. */
export type Path = readonly PropertyKey[];

/** A key that needs no quotes to be told from its neighbours. */
const PLAIN = /^[^.[\]"]+$/u;
const STEP = /\[(\d+)\]|\[("(?:[^"\\]|\\.)*")\]|([^.[\]"]+)/gu;

/** `bend.radius.from`, `offcuts[1].width`; a key that could be taken for two is quoted: `["bend.angle"]`. Inverse: {@link pathFromText}. */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    const key = String(step);
    if (!PLAIN.test(key)) return `${text}[${JSON.stringify(key)}]`;
    return text === '' ? key : `${text}.${key}`;
  }, '');
}

/** The steps of a printed path. Inverse: {@link pathText}. */
export function pathFromText(text: string): Path {
  return [...text.matchAll(STEP)].map(([, index, quoted, plain]) =>
    index === undefined ? (quoted === undefined ? (plain ?? '') : String(JSON.parse(quoted))) : Number(index),
  );
}
