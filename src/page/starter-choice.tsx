import type { JSX } from 'preact';
import { readDraft } from './draft';
import type { Open } from './open-file';
import { panelStarters, starters } from './starters';

const KINDS = [
  ['One bend', starters],
  ['A whole panel', panelStarters],
] as const;

/** The starter jobs to choose from; the one chosen is opened. */
export function StarterChoice({ open }: { open: Open }): JSX.Element {
  const start = (name: string): void => {
    const starter = [...starters, ...panelStarters].find((one) => one.name === name);
    if (!starter) return;
    const opened = readDraft(starter.text);
    const beside = 'panel' in opened && starter.drawing ? { beside: starter.drawing } : {};
    open({ ...opened, ...beside }, { name: starter.name, handle: null, isStarter: true });
  };
  return (
    <>
      <label for="starter">Start from</label>
      <select id="starter" value="" onChange={(event) => start(event.currentTarget.value)}>
        <option value="">choose a starter</option>
        {KINDS.map(([kind, list]) => (
          <optgroup key={kind} label={kind}>
            {list.map(({ name, what }) => (
              <option key={name} value={name}>
                {what}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </>
  );
}
