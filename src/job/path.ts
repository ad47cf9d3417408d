/** Where a value stands in the job: keys and list indexes. */
export type Path = readonly PropertyKey[];

/** `bend.radius.from`, `runs[1].to`. */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? String(step) : `${text}.${String(step)}`), '');
}
