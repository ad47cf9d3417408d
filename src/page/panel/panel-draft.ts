import { readSource } from '../../job/source';
import { countedOf } from '../counted';
import { changed, dataFrom, spread, toDraft, type Draft, type DraftPath } from '../draft';
import { patched } from '../files/kept-text';
import { rootOf } from './panel-root';

/** A panel's job on the page: its text, comments and all, and what stands in the fields. */
export interface PanelDraft {
  readonly text: string;
  readonly draft: Draft;
}

/** The fields of a text; null where it cannot be taken apart. */
function draftOf(text: string): Draft | null {
  const read = toDraft(readSource(text).source?.data);
  if (typeof read !== 'object' || Array.isArray(read)) return null;
  const whole = spread(read, [], rootOf(read));
  return typeof whole === 'object' ? whole : null;
}

/** A job's text opened. */
export function openPanelText(text: string): PanelDraft {
  return { text, draft: draftOf(text) ?? {} };
}

/** Another text; while it cannot be taken apart, the fields stay. */
export function withText(held: PanelDraft, text: string): PanelDraft {
  return { text, draft: draftOf(text) ?? held.draft };
}

/** Another draft, brought into the text. */
export function withDraft({ text, draft }: PanelDraft, next: Draft): PanelDraft {
  const root = rootOf(next);
  return { text: patched(text, dataFrom(draft, root), dataFrom(next, root)) ?? text, draft: next };
}

/** One field changed. */
export function withField(held: PanelDraft, path: DraftPath, value: Draft | string | undefined): PanelDraft {
  return withDraft(held, changed(held.draft, path, value));
}

/** The text as far as it counts: without entries of lists that are still being filled in. */
export function countedText({ text, draft }: PanelDraft): string {
  const root = rootOf(draft);
  const { draft: counted } = countedOf(draft, new Set(), root);
  return counted === draft ? text : (patched(text, dataFrom(draft, root), dataFrom(counted, root)) ?? text);
}
