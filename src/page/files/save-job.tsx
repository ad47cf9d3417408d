import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Source } from '../open-file';
import { writeBack } from './handle';
import { save } from './save';

export interface SaveJobProps {
  /** What the file is to say. */
  readonly text: () => string;
  /** The job that was worked out: once it changes, what was said of saving is over. */
  readonly of: unknown;
  /** The file the job came from; null where it came from none. */
  readonly source: Source | null;
  /** What it is called where it came from none, without its ending. */
  readonly name: string;
}

/** Saves the job: into the file it came from where the browser can, else as a download. */
export function SaveJob({ text, of, source, name }: SaveJobProps): JSX.Element {
  const [said, setSaid] = useState<{ readonly of: unknown; readonly words: string } | null>(null);
  const back = async (handle: FileSystemFileHandle): Promise<void> => {
    try {
      await writeBack(handle, text());
      setSaid({ of, words: `Saved in ${handle.name}.` });
    } catch {
      setSaid({
        of,
        words: `${handle.name} was not written: the browser may not, or it is gone. Take the job file instead.`,
      });
    }
  };
  const handle = source?.handle ?? null;
  return (
    <>
      {handle ? (
        <>
          <button type="button" onClick={() => void back(handle)}>
            Save in {handle.name}
          </button>{' '}
        </>
      ) : null}
      <button type="button" onClick={() => save(source?.name ?? `${name}.yaml`, text(), 'application/yaml')}>
        Job file
      </button>
      {said !== null && said.of === of ? (
        <>
          {' '}
          <span role="status">{said.words}</span>
        </>
      ) : null}
    </>
  );
}
