import { Fragment, type ComponentChildren, type JSX, type TargetedEvent } from 'preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { bareForce, type LengthUnit } from '../base/units';
import type { SaidFinding } from '../findings/say';
import { inUnits } from './convert-units';
import { nodeAt, textAt, type Draft, type DraftPath } from './draft';
import { pathText } from '../job/path';
import { isWhole, kindAt } from './counted';
import { isStructured, StructuredInput } from './structured';
import { TrialEffect } from './trial-effect';
import { homeOf } from '../job/fields/label';
import type { PlacedList } from '../job/fields/look';
import { exampleIn, type Block, type EntryKind, type Field } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
import {
  choicesOf,
  cutFor,
  freshEntry,
  isFor,
  rowsOfEntry,
  sections,
  sectionsOf,
  settingOf,
  shownText,
  type Row,
  type Section,
} from './field-list';

export interface FieldsProps {
  readonly draft: Draft;
  readonly findings: readonly SaidFinding[];
  readonly change: (path: DraftPath, value: Draft | string | undefined) => void;
  /** Another draft in place of the whole, as one step. */
  readonly replace: (draft: Draft, place: string) => void;
  readonly settle: () => void;
  /** The job file described: of one bend, or of a panel. */
  readonly root: Block;
}

const ofBend = { root: jobFields, sections } as const;
const known = new Map<Block, readonly Section[]>();

/** The parts of a described job file's form, made once. */
function sectionsFor(root: Block): readonly Section[] {
  const held = root === ofBend.root ? ofBend.sections : (known.get(root) ?? sectionsOf(root));
  known.set(root, held);
  return held;
}

/** Section 1: what you are bending. */
export function Fields(props: FieldsProps): JSX.Element {
  return (
    <section class="bending" aria-labelledby="bending">
      <h2 id="bending" tabIndex={-1}>
        What you are bending
      </h2>
      {sectionsFor(props.root).map((section) =>
        section.begins === 'always' ? (
          <fieldset key={section.name}>
            <legend>{section.title}</legend>
            <Rows section={section} {...props} />
          </fieldset>
        ) : (
          <Fold
            key={section.name}
            title={section.title}
            open={section.begins === 'open' || inUse(section, props.draft)}
          >
            <Rows section={section} {...props} />
          </Fold>
        ),
      )}
    </section>
  );
}

/** Whether anything in a section is filled in. */
function inUse({ rows, lists }: Section, draft: Draft): boolean {
  return (
    rows.some(({ path }) => textAt(draft, path) !== '') || lists.some(({ path }) => nodeAt(draft, path) !== undefined)
  );
}

function Rows({ section, ...props }: FieldsProps & { section: Section }): JSX.Element {
  return (
    <>
      {section.rows
        .filter(({ field }) => isFor(field, props.draft))
        .map((row) => (
          <FieldRow key={pathText(row.path)} row={row} {...props} />
        ))}
      {section.lists.map((placed) => (
        <List key={pathText(placed.path)} placed={placed} {...props} />
      ))}
    </>
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

/** Fields whose change changes others, so that they go by the whole draft. */
const OF_ALL: readonly string[] = ['units', 'cut.with'];

type RowProps = FieldsProps & { row: Row };

/** A row as it last was, unless something it shows has changed. */
function FieldRow(props: RowProps): JSX.Element {
  const { row, draft, findings, root } = props;
  const { units, tool } = settingOf(draft);
  const whole = OF_ALL.includes(pathText(row.path)) ? draft : null;
  return useMemo(
    () => fieldRow(props),
    [nodeAt(draft, row.path), row.label, row.field, findings, root, units, tool, whole],
  );
}

function fieldRow({ row, draft, findings, change, replace, settle, root }: RowProps): JSX.Element {
  const { field, path } = row;
  const name = pathText(path);
  const setting = settingOf(draft);
  const choices = choicesOf(field, setting);
  const value = shownText(field, textAt(draft, path), setting);
  const mine = findings.filter((finding) => homeOf(finding.path, root) === name);
  const wrong = mine.some(({ level }) => level === 'error');
  const described = mine.length > 0 ? { 'aria-describedby': `${name}-says` } : {};
  const set = (event: TargetedEvent<HTMLInputElement | HTMLSelectElement>): void => {
    const typed = event.currentTarget.value;
    if (name === 'units') replace(inUnits(draft, setting.units, typed === 'in' ? 'in' : 'mm', root), name);
    else if (name === 'cut.with') change(['cut'], cutFor(draft, typed));
    else change(path, typed === '' && choices ? undefined : typed);
  };
  const unless = (field.unlessSaid?.(setting) ?? '').replaceAll('`', '');
  const unit = unitOf(field, value === '' && /\d/u.test(unless) ? unless : value, setting.units);
  return (
    <div class={`field${wrong ? ' wrong' : ''}${isStructured(field) ? ' wide' : ''}`}>
      <label for={name} title={`${field.help}.`}>
        {row.label}
      </label>
      <span class="entry">
        {choices ? (
          <select id={name} value={value} onChange={set} onBlur={settle} aria-invalid={wrong} {...described}>
            {choices.some((choice) => choice.value === value) ? null : (
              <option value={value}>{value === '' ? 'choose' : value}</option>
            )}
            {choices.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.text}
              </option>
            ))}
          </select>
        ) : isStructured(field) ? (
          <StructuredInput
            id={name}
            node={nodeAt(draft, path)}
            set={(value) => change(path, value)}
            settle={settle}
            placeholder={unless === '' ? exampleIn(field, setting.units) : unless}
            wrong={wrong}
            described={described}
          />
        ) : (
          <input
            id={name}
            type="text"
            value={value}
            onInput={set}
            onBlur={settle}
            placeholder={unless}
            title={unless === '' ? undefined : `unless said: ${unless}`}
            autocomplete="off"
            spellcheck={false}
            aria-invalid={wrong}
            {...described}
          />
        )}
        {unit === null ? null : <span class="unit">{unit}</span>}
      </span>
      {mine.length > 0 ? <FieldFindings id={`${name}-says`} findings={mine} /> : null}
    </div>
  );
}

/** The unit of what stands in a field, empty where the text carries its own; null for what has no unit. */
function unitOf({ kind }: Field, text: string, units: LengthUnit): string | null {
  switch (kind.name) {
    case 'length':
    case 'thickness':
      return /[a-z"'″′#]/iu.test(text) ? '' : units;
    case 'force':
      return /[a-z]/iu.test(text) ? '' : bareForce[units];
    case 'angle':
      return /[a-z°]/iu.test(text) ? '' : '°';
    default:
      return null;
  }
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

function List({ placed, ...props }: FieldsProps & { placed: PlacedList }): JSX.Element {
  const { draft, change } = props;
  const { path, list } = placed;
  const listed = nodeAt(draft, path);
  const entries = Array.isArray(listed) ? listed : [];
  const within = useRef<HTMLDivElement>(null);
  const goTo = useRef<string | null>(null);
  useLayoutEffect(() => {
    if (goTo.current !== null) within.current?.querySelector<HTMLElement>(goTo.current)?.focus();
    goTo.current = null;
  }, [entries.length]);
  // The keyboard goes into a new entry, and, where one was taken out, to the next thing to do.
  const add = (kind: EntryKind): void => {
    goTo.current = `[data-entry="${entries.length}"] :is(input, select)`;
    change([...path, entries.length], freshEntry(kind, draft, entries.length));
  };
  const remove = (index: number): void => {
    const next = Math.min(index, entries.length - 2);
    goTo.current = next < 0 ? 'button.add' : `[data-entry="${next}"] button`;
    change(entries.length === 1 ? path : [...path, index], undefined);
  };
  return (
    <div ref={within}>
      {entries.length === 0 ? <p class="quiet">{list.empty}</p> : null}
      {entries.map((_, index) => {
        const kind = kindAt(placed, draft, index);
        return kind ? (
          <div class="run" key={index} data-entry={index} role="group" aria-label={`${kind.one} ${index + 1}`}>
            {rowsOfEntry(placed, kind, index).map((row) => (
              <FieldRow key={pathText(row.path)} row={row} {...props} />
            ))}
            {isWhole(placed, draft, index, props.root) ? null : <p class="quiet">Counts once it is filled in.</p>}
            <button type="button" onClick={() => remove(index)}>
              Take {kind.one} {index + 1} out
            </button>
          </div>
        ) : null;
      })}
      {list.kinds.map((kind) => (
        <Fragment key={kind.one}>
          <button type="button" class="add" onClick={() => add(kind)}>
            Add {/^[aeiou]/u.test(kind.one) ? 'an' : 'a'} {kind.one}
          </button>{' '}
        </Fragment>
      ))}
      {list.group === 'trials' ? <TrialEffect /> : null}
    </div>
  );
}
