import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { zipSync, type Zippable } from 'fflate';
import type { OutputFile } from '../base/drawing';
import { fileName } from '../base/file-name';
import { save } from './files/save';
import { SaveJob } from './files/save-job';
import type { OpenedDrawing } from './draft';
import type { Source } from './open-file';
import { faultText } from './work';

/** Every file, and the job they were made of as it was worked out. */
export interface Made {
  readonly files: readonly OutputFile[];
  readonly text: string;
}

export interface TakeProps {
  /** Draws every file; null where there is nothing to draw. */
  readonly make: (() => Promise<Made>) | null;
  /** What the files are of: once it changes, they are made anew. */
  readonly of: unknown;
  readonly title: string;
  /** The job: once it changes, what was said of saving it is over. */
  readonly job: unknown;
  /** The job in the words of the file it came from. */
  readonly kept: () => string;
  readonly source: Source | null;
  /** The drawing that the job names, to lie beside it in the zip. */
  readonly beside?: OpenedDrawing | null;
}

/** Section 5: what you take away. The same files, byte for byte, as the command line writes. */
export function Take({ make: draw, of: worked, title, job, kept, source, beside = null }: TakeProps): JSX.Element {
  const [made, setMade] = useState<{ readonly of: unknown; readonly all: Made } | null>(null);
  const [busy, setBusy] = useState(false);
  const [failed, setFailed] = useState<{ readonly of: unknown; readonly why: string } | null>(null);
  const held = made !== null && made.of === worked ? made.all : null;
  const files = held?.files;
  const ready = draw !== null;
  /** Makes the files where they are not made yet, and hands them on; what fails is shown. */
  const make = async (use: (all: Made) => void = () => undefined): Promise<void> => {
    if (!draw) return;
    setBusy(true);
    setFailed(null);
    try {
      const all = held ?? (await draw());
      setMade({ of: worked, all });
      use(all);
    } catch (problem) {
      setFailed({ of: worked, why: faultText(problem) });
    } finally {
      setBusy(false);
    }
  };
  const name = fileName(title);
  const takeZip = (): Promise<void> => make((all) => save(`${name}.zip`, zip(all, beside), 'application/zip'));
  return (
    <section class="take" aria-labelledby="take">
      <h2 id="take">What you take away</h2>
      <p>
        <button type="button" class="main" disabled={!ready || busy} onClick={() => void takeZip()}>
          Everything, one zip
        </button>{' '}
        <SaveJob text={kept} of={job} source={source} name={name} />{' '}
        <button type="button" disabled={!ready || busy} onClick={() => void make()}>
          List the files
        </button>{' '}
        <button type="button" disabled={!ready} onClick={() => print()}>
          Print the shop sheet
        </button>
      </p>
      {ready ? null : <p class="quiet">Mend what is wrong first; then the files can be made.</p>}
      {busy ? <p role="status">Drawing …</p> : null}
      {failed !== null && failed.of === worked ? (
        <p class="refused" role="alert">
          No files were made. {failed.why}
        </p>
      ) : null}
      {files && ready ? (
        <ul class="files">
          {files.map((file) => (
            <li key={file.path}>
              <button
                type="button"
                class="link"
                data-path={file.path}
                onClick={() => save(file.path.split('/').at(-1) ?? file.path, file.content, file.mime)}
              >
                {file.path}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}

/** Zip entries need a date; every one gets the first the format knows, so that the same job gives the same bytes. */
const FIRST_DATE = new Date(1980, 0, 1);

function zip({ files, text }: Made, beside: OpenedDrawing | null): Uint8Array {
  const bytes = (content: string | Uint8Array): Uint8Array =>
    typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const entries: Zippable = Object.fromEntries([
    ...files.map(({ path, content }) => [path, bytes(content)] as const),
    ['job.yaml', bytes(text)] as const,
    ...(beside ? [[beside.name, bytes(beside.text)] as const] : []),
  ]);
  return zipSync(entries, { mtime: FIRST_DATE, level: 6 });
}
