import type { Finding, Level, Words } from '../base/findings';
import type { Kinds, SaidValues, ValuesOf } from './kinds';
import { sayValue, type Listener } from './say-value';

/** What the words of a finding may name besides its values. */
export interface Around {
  /** The field the finding is about, as its reader knows it; “the job” for the job as a whole. */
  readonly at: string;
  /** Another field, as the reader knows it. */
  readonly field: (path: string) => string;
}

/** Words as the catalogue writes them: `got` and `allowed` may be left out, or null where the values do not ask for them. */
export interface WrittenWords {
  readonly message: string;
  readonly hint: string;
  readonly got?: string | null;
  readonly allowed?: string | null;
}

/** A code of the catalogue: its level, what its values are, and its words. */
export interface Entry<K extends Kinds = Kinds> {
  readonly level: Level;
  readonly kinds: K;
  readonly say: (finding: Pick<Finding, 'path' | 'values'>, to: Listener) => Words;
  /** Only for the type: what `finding()` asks for. */
  readonly values?: ValuesOf<K>;
}

type Wording<K extends Kinds> = (said: SaidValues<K>, around: Around) => WrittenWords;

/** Declares a code that says the job is wrong or impossible. */
export function error<const K extends Kinds>(kinds: K, words: Wording<K>): Entry<K> {
  return entry('error', kinds, words);
}

/** Declares a code that says something is doubtful but buildable. */
export function warning<const K extends Kinds>(kinds: K, words: Wording<K>): Entry<K> {
  return entry('warning', kinds, words);
}

/** Declares a code worth knowing, with nothing to mend. */
export function note<const K extends Kinds>(kinds: K, words: Wording<K>): Entry<K> {
  return entry('note', kinds, words);
}

function entry<K extends Kinds>(level: Level, kinds: K, words: Wording<K>): Entry<K> {
  return {
    level,
    kinds,
    say: ({ path, values }, to) => {
      const field = to.field ?? ((name: string) => name);
      const said = Object.fromEntries(
        Object.entries(kinds).map(([key, kind]) => [key, sayValue(kind, values[key], to)]),
      );
      // Sound: made key by key from the same kinds that the type is made from, and `sayValue` refuses a value of another kind.
      return plain(words(said as SaidValues<K>, { at: path === '' ? 'the job' : field(path), field }));
    },
  };
}

/** Without what the values did not ask for. */
function plain({ message, hint, got, allowed }: WrittenWords): Words {
  return {
    message,
    hint,
    ...(got === undefined || got === null ? {} : { got }),
    ...(allowed === undefined || allowed === null ? {} : { allowed }),
  };
}
