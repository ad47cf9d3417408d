import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { readOpened, type Open } from './open-file';

/** A job file or a drawing dropped anywhere on the page is opened as if it were chosen; while one hovers, the page says so. */
export function DropFile({ open }: { open: Open }): JSX.Element | null {
  const [hovers, setHovers] = useState(false);
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      setHovers(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setHovers(false);
    };
    const drop = (event: DragEvent): void => {
      const [file] = event.dataTransfer?.files ?? [];
      setHovers(false);
      if (!file) return;
      // Else the browser would leave the page and show the file.
      event.preventDefault();
      void readOpened(file).then((opened) => open(opened, { name: file.name, handle: null }));
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, [open]);
  return hovers ? (
    <div class="drop-here">Drop a job file, or an SVG or DXF drawing of an outline, to open it</div>
  ) : null;
}
