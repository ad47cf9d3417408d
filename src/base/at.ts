import { InternalError } from './errors';

/** What a list holds at an index, counted from its end where negative. Throws where there is nothing: a mistake of ours. */
export function at<Item>(list: ArrayLike<Item>, index: number): Item {
  const item = list[index < 0 ? list.length + index : index];
  if (item === undefined) throw new InternalError(`nothing at ${index} of a list of ${list.length}`);
  return item;
}
