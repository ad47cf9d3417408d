import { finding } from '../../findings/finding';
import type { Reader } from '../reader';
import { show } from '../show';
import { field, list, type Read } from './field';
import { length, name } from './quantities';

const WITHIN = length(0, Infinity);

/** Stretches of the bend, each used by one edge of the panel. */
export const runs = list(
  {
    help: 'Stretches of the form, each used by one edge of the panel; one over the whole length unless said',
    one: 'run',
    empty: 'One run over the whole length. Add runs where shorter edges share the form.',
    group: 'runs',
    least: 1,
    most: 40,
  },
  {
    name: field({
      label: 'name',
      help: 'What you call this edge',
      example: 'long edge',
      fresh: 'edge #',
      is: name,
      required: true,
    }),
    /** Along the tangent line from end A, mm. */
    from: field({
      label: 'from',
      help: 'Where it begins, along the tangent line from end A',
      example: '0',
      fresh: '0',
      is: WITHIN,
      required: true,
    }),
    to: field({
      label: 'to',
      help: 'Where it ends, along the tangent line from end A',
      example: '620',
      fresh: ['bend', 'length'],
      is: WITHIN,
      required: true,
    }),
  },
);

type Runs = Read<typeof runs>;

/** The runs there are: those of the job, which lie on the bend and have names of their own, or one over its whole length (mm). */
export function runsOn(reader: Reader, given: Runs, length: number): Runs {
  if (!Array.isArray(reader.at(['runs']))) return [{ name: 'whole length', from: 0, to: length }];
  given.forEach((run, index) => {
    if (run.name !== '' && given.slice(0, index).some((other) => other.name === run.name))
      refuseName(reader, run, index);
    if (run.to <= run.from) refuseBackward(reader, run, index);
    for (const end of ['from', 'to'] as const)
      if (run[end] > length) refuseOutside(reader, run, { index, end, most: length });
  });
  return given;
}

type Run = Runs[number];

function refuseName(reader: Reader, run: Run, index: number): void {
  reader.refuse(finding('run-named-twice', `runs[${index}].name`, { name: show(run.name) }));
}

function refuseBackward(reader: Reader, { name: called, from, to }: Run, index: number): void {
  reader.refuse(finding('run-backward', `runs[${index}]`, { run: show(called), from, to }));
}

function refuseOutside(
  reader: Reader,
  run: Run,
  { index, end, most }: { index: number; end: 'from' | 'to'; most: number },
): void {
  reader.refuse(
    finding('run-outside-form', `runs[${index}].${end}`, { run: show(run.name), to: run[end], length: most }),
  );
}
