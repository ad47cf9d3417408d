import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { readDraftFile, type Opened } from './draft';
import { canSaveBack, pickJobFile } from './files/handle';

/** No job is longer, no drawing that is read; the rest of a longer file is left alone. Bytes. */
const MOST = { job: 1024 * 1024, drawing: 25 * 1024 * 1024 } as const;

/** A file's name, and the way to write back to it where the browser gives one. */
export interface Source {
  readonly name: string;
  readonly handle: FileSystemFileHandle | null;
  /** One of the program's own jobs, which is nobody's file. */
  readonly isStarter?: true;
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
        Open a job or a drawing …
      </button>
      <input
        ref={chooser}
        type="file"
        hidden
        accept=".yaml,.yml,.json,.svg,.dxf"
        onChange={(event) => void take(event.currentTarget)}
      />
    </>
  );
}

/** What a file holds that was chosen, or dropped on the page. */
export async function readOpened(file: File): Promise<Opened> {
  try {
    if (/\.(?:svg|dxf)$/iu.test(file.name))
      return {
        draft: null,
        drawing: { name: file.name, text: await file.slice(0, MOST.drawing).text() },
        problem: null,
      };
    return readDraftFile(new Uint8Array(await file.slice(0, MOST.job).arrayBuffer()));
  } catch {
    return { draft: null, problem: 'the browser could not read it' };
  }
}
