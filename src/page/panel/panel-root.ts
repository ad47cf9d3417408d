import type { Block } from '../../job/fields/field';
import { panelFields, tracedFields } from '../../job/panel/fields';
import { readSource } from '../../job/source';
import { nodeAt, toDraft, type Draft } from '../draft';

/** The job file described that a panel's draft is one of: built up from a base, or on an outline of the maker's own. */
export function rootOf(draft: Draft): Block {
  return isTraced(draft) ? tracedFields : panelFields;
}

/** Whether a draft has an outline of its own; as the job reader tells them apart. */
export function isTraced(draft: Draft): boolean {
  return nodeAt(draft, ['base']) === undefined && nodeAt(draft, ['outline']) !== undefined;
}

/** The same for a text. */
export function rootOfText(text: string): Block {
  const read = toDraft(readSource(text).source?.data);
  return rootOf(typeof read === 'object' ? read : {});
}
