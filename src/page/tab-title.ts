import { useEffect } from 'preact/hooks';

/** The browser's tab says which job it is, so that two can be told apart. */
export function useTabTitle(title: string): void {
  useEffect(() => {
    const own = title.trim();
    document.title = own === '' ? 'bendbuck: the form to bend it on' : `${own} · bendbuck`;
  }, [title]);
}
