import { useEffect } from 'preact/hooks';

/** Ctrl or ⌘ with Z goes back a step, with Y or shift and Z on again; the text's own undoing is the page's too. */
export function useUndoKeys(back: () => void, forth: () => void): void {
  useEffect(() => {
    const keys = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const isBack = key === 'z' && !event.shiftKey;
      if (!isBack && key !== 'y' && key !== 'z') return;
      event.preventDefault();
      if (isBack) back();
      else forth();
    };
    addEventListener('keydown', keys);
    return () => removeEventListener('keydown', keys);
  }, []);
}
