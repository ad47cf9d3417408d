import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { parseDocument, stringify } from 'yaml';
import type { Field } from '../job/fields/field';
import { dataFrom, toDraft, type Draft } from './draft';

/** Whether a field holds a list or a block written in one line: `[[0, 0], [22, 0]]`, `{ short: 30, back: 45 }`. */
export function isStructured({ kind }: Field): boolean {
  return kind.name === 'structure';
}

type Value = Draft | string | undefined;

/** What stands at a structured field, in one line as a job file has it. */
export function lineOf(node: Value): string {
  if (node === undefined || typeof node === 'string') return node ?? '';
  return stringify(dataFrom(node), { collectionStyle: 'flow', flowCollectionPadding: true, lineWidth: 0 })
    .trim()
    .replaceAll('[ ', '[')
    .replaceAll(' ]', ']');
}

/** What is typed as a draft has it: a list or a block once its brackets close, text until then. */
export function valueOf(typed: string): Value {
  const text = typed.trim();
  if (!/^[[{]/u.test(text)) return typed;
  const document = parseDocument(text);
  return document.errors.length > 0 ? typed : toDraft(document.toJS());
}

interface StructuredProps {
  readonly id: string;
  readonly node: Value;
  readonly set: (value: Value) => void;
  readonly settle: () => void;
  readonly placeholder: string;
  readonly wrong: boolean;
  readonly described: { readonly 'aria-describedby'?: string };
}

/** Such a field: what is typed stays as typed as long as it says what holds. */
export function StructuredInput(props: StructuredProps): JSX.Element {
  const { id, node, set, settle, placeholder, wrong, described } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const shown = typed !== null && JSON.stringify(valueOf(typed)) === JSON.stringify(node) ? typed : lineOf(node);
  return (
    <input
      id={id}
      type="text"
      value={shown}
      onInput={(event) => {
        setTyped(event.currentTarget.value);
        set(valueOf(event.currentTarget.value));
      }}
      onBlur={settle}
      placeholder={placeholder}
      autocomplete="off"
      spellcheck={false}
      aria-invalid={wrong}
      {...described}
    />
  );
}
