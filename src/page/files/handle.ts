/** As much of the browser's File System Access as is used here; no browser need have it. Source: WICG, File System Access. */
interface Picker {
  readonly showOpenFilePicker?: (options: {
    readonly types: readonly {
      readonly description: string;
      readonly accept: Readonly<Record<string, readonly string[]>>;
    }[];
  }) => Promise<readonly FileSystemFileHandle[]>;
}

/** Whether the browser lets a page write back into a file its user has chosen. */
export function canSaveBack(): boolean {
  return (globalThis as Picker).showOpenFilePicker !== undefined;
}

/** Asks for a job file that can be written back to; null where the asking was given up. */
export async function pickJobFile(): Promise<FileSystemFileHandle | null> {
  const picker = globalThis as Picker;
  try {
    const [handle] =
      (await picker.showOpenFilePicker?.({
        types: [
          { description: 'Job files', accept: { 'application/yaml': ['.yaml', '.yml', '.json'] } },
          { description: 'Drawings of an outline', accept: { 'image/svg+xml': ['.svg'], 'image/vnd.dxf': ['.dxf'] } },
        ],
      })) ?? [];
    return handle ?? null;
  } catch {
    return null;
  }
}

/** Writes the whole file anew; the browser asks its user first. What goes wrong is thrown. */
export async function writeBack(handle: FileSystemFileHandle, text: string): Promise<void> {
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
}
