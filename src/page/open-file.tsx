import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { readDraftFile, type Opened } from './draft';

/** No job is longer; the rest of a longer file is left alone. Bytes. */
const MOST = 1024 * 1024;

/** A button that asks for a job file and hands on what it holds, with its name. */
export function OpenFile({ open }: { open: (opened: Opened, name: string) => void }): JSX.Element {
  const chooser = useRef<HTMLInputElement>(null);
  const take = async (input: HTMLInputElement): Promise<void> => {
    const [file] = input.files ?? [];
    if (!file) return;
    open(await readOpened(file), file.name);
    // The same file may be opened again after it was changed.
    input.value = '';
  };
  return (
    <>
      <button type="button" onClick={() => chooser.current?.click()}>
        Open a job file …
      </button>
      <input
        ref={chooser}
        type="file"
        hidden
        accept=".yaml,.yml,.json"
        onChange={(event) => void take(event.currentTarget)}
      />
    </>
  );
}

/** What a file holds that was chosen, or dropped on the page. */
export async function readOpened(file: File): Promise<Opened> {
  try {
    return readDraftFile(new Uint8Array(await file.slice(0, MOST).arrayBuffer()));
  } catch {
    return { draft: null, problem: 'the browser could not read it' };
  }
}
