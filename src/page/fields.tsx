import type { ComponentChildren, JSX, TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import type { SaidFinding } from '../findings/say';
import { nodeAt, textAt, type Draft, type DraftPath } from './draft';
import { pathText } from '../job/path';
import { cutFor, groups, isFor, lists, type Field, type FieldList } from './field-list';

export interface FieldsProps {
  readonly draft: Draft;
  readonly findings: readonly SaidFinding[];
  readonly change: (path: DraftPath, value: Draft | string | undefined) => void;
  readonly settle: () => void;
}

/** Section 1: what you are bending. */
export function Fields(props: FieldsProps): JSX.Element {
  return (
    <section class="bending" aria-labelledby="bending">
      <h2 id="bending" tabIndex={-1}>
        What you are bending
      </h2>
      {groups.slice(0, 2).map((group) => (
        <fieldset key={group.title}>
          <legend>{group.title}</legend>
          {group.fields.map((field) => (
            <FieldRow key={pathText(field.path)} field={field} {...props} />
          ))}
        </fieldset>
      ))}
      {lists.map((list) => (
        <List key={list.key} list={list} {...props} />
      ))}
      {groups.slice(2).map((group) => (
        <Fold
          key={group.title}
          title={group.title}
          open={group.open || group.fields.some((field) => textAt(props.draft, field.path) !== '')}
        >
          {group.fields
            .filter((field) => isFor(field, props.draft))
            .map((field) => (
              <FieldRow key={pathText(field.path)} field={field} {...props} />
            ))}
        </Fold>
      ))}
    </section>
  );
}

/** A part of the fields that can be folded away. What is in use unfolds it; only the maker folds it again. */
function Fold({ title, open, children }: { title: string; open: boolean; children: ComponentChildren }): JSX.Element {
  const opened = useRef(open);
  opened.current ||= open;
  return (
    <details open={opened.current}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}

/** The findings that stand at a field: at its path, at a block around it that has no field of its own, or at a key below it. */
export function findingsAt(findings: readonly SaidFinding[], path: DraftPath): readonly SaidFinding[] {
  const text = pathText(path);
  const around = path.length > 1 ? pathText(path.slice(0, -1)) : '';
  const first = (block: string): boolean =>
    block === around &&
    ['from', 'stock', 'handForce', 'hole', 'size', 'maxSpan', 'name', 'radius', 'at', 'width', 'with'].includes(
      String(path.at(-1)),
    );
  return findings.filter(
    (finding) =>
      finding.path === text || finding.path.startsWith(`${text}.`) || (finding.path !== '' && first(finding.path)),
  );
}

function FieldRow({ field, draft, findings, change, settle }: FieldsProps & { field: Field }): JSX.Element {
  const name = pathText(field.path);
  const value = textAt(draft, field.path);
  const units = textAt(draft, ['units']) === 'in' ? 'in' : 'mm';
  const mine = findingsAt(findings, field.path);
  const wrong = mine.some(({ level }) => level === 'error');
  const described = mine.length > 0 ? { 'aria-describedby': `${name}-says` } : {};
  const set = (event: TargetedEvent<HTMLInputElement | HTMLSelectElement>): void => {
    const typed = event.currentTarget.value;
    if (name === 'cut.with') change(['cut'], cutFor(draft, typed));
    else change(field.path, typed === '' && field.choices ? undefined : typed);
  };
  return (
    <div class={wrong ? 'field wrong' : 'field'}>
      <label for={name}>{field.label}</label>
      <span class="entry">
        {field.choices ? (
          <select id={name} value={value} onChange={set} onBlur={settle} aria-invalid={wrong} {...described}>
            {field.choices.some((choice) => choice.value === value) ? null : (
              <option value={value}>{value === '' ? 'choose' : value}</option>
            )}
            {field.choices.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.text}
              </option>
            ))}
          </select>
        ) : (
          <input
            id={name}
            type="text"
            value={value}
            onInput={set}
            onBlur={settle}
            placeholder={field.otherwise ?? ''}
            autocomplete="off"
            spellcheck={false}
            aria-invalid={wrong}
            {...described}
          />
        )}
        {unitOf(field, value, units) === '' ? null : <span class="unit">{unitOf(field, value, units)}</span>}
      </span>
      {mine.length > 0 ? <FieldFindings id={`${name}-says`} findings={mine} /> : null}
    </div>
  );
}

/** The unit a typed value has: its own where it carries one. */
function unitOf(field: Field, value: string, units: string): string {
  if (field.unit === 'length') return /[a-z"'″′]/iu.test(value) ? '' : units;
  if (field.unit === 'N') return /[a-z]/iu.test(value) ? '' : 'N';
  return field.unit === 'degrees' ? '°' : field.unit;
}

function FieldFindings({ id, findings }: { id: string; findings: readonly SaidFinding[] }): JSX.Element {
  return (
    <ul id={id} class="says">
      {findings.map((finding) => (
        <li key={finding.code} class={finding.level}>
          {finding.message}
          {finding.hint === '' ? '' : ` — ${finding.hint}`}
        </li>
      ))}
    </ul>
  );
}

function List({ list, ...props }: FieldsProps & { list: FieldList }): JSX.Element {
  const { draft, change } = props;
  const { key, one } = list;
  const listed = nodeAt(draft, [key]);
  const entries = Array.isArray(listed) ? listed : [];
  const add = (): void => change([key, entries.length], list.fresh(draft, entries.length));
  const remove = (index: number): void => change(entries.length === 1 ? [key] : [key, index], undefined);
  return (
    <Fold title={list.title} open={list.open || entries.length > 0}>
      {entries.length === 0 ? <p class="quiet">{list.empty}</p> : null}
      {entries.map((_, index) => (
        <div class="run" key={index} role="group" aria-label={`${one} ${index + 1}`}>
          {list.fields.map(({ name, ...field }) => (
            <FieldRow
              key={name}
              field={{ ...field, path: [key, index, name], label: `${one} ${index + 1}: ${field.label}` }}
              {...props}
            />
          ))}
          <button type="button" onClick={() => remove(index)}>
            Take {one} {index + 1} out
          </button>
        </div>
      ))}
      <button type="button" onClick={add}>
        Add {one === 'offcut' ? 'an' : 'a'} {one}
      </button>
    </Fold>
  );
}
