import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';

/** A button that asks for a job file and hands its text on. */
export function OpenFile({ open }: { open: (text: string) => void }): JSX.Element {
  const chooser = useRef<HTMLInputElement>(null);
  const take = async (input: HTMLInputElement): Promise<void> => {
    const [file] = input.files ?? [];
    // A file that went away between choosing and reading is as if none were chosen.
    const text = await file?.text().catch(() => undefined);
    // The same file may be opened again after it was changed.
    input.value = '';
    if (text !== undefined) open(text);
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
