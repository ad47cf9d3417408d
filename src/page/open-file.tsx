import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { readDraftFile, type Opened } from './draft';
import { canSaveBack, pickJobFile } from './files/handle';

/** No job is longer; the rest of a longer file is left alone. Bytes. */
const MOST = 1024 * 1024;

/** A file's name, and the way to write back to it where the browser gives one. */
export interface Source {
  readonly name: string;
  readonly handle: FileSystemFileHandle | null;
}

/** What takes an opened job, or the word why it is none. */
export type Open = (opened: Opened, source: Source) => void;

/** A button that asks for a job file and hands on what it holds, with its name. */
export function OpenFile({ open }: { open: Open }): JSX.Element {
  const chooser = useRef<HTMLInputElement>(null);
  const take = async (input: HTMLInputElement): Promise<void> => {
    const [file] = input.files ?? [];
    if (!file) return;
    open(await readOpened(file), { name: file.name, handle: null });
    // The same file may be opened again after it was changed.
    input.value = '';
  };
  const pick = async (): Promise<void> => {
    if (!canSaveBack()) return chooser.current?.click();
    const handle = await pickJobFile();
    if (handle) open(await readOpened(await handle.getFile()), { name: handle.name, handle });
  };
  return (
    <>
      <button type="button" onClick={() => void pick()}>
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
