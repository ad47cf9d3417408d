import * as z from 'zod/mini';
import { isBlock } from '../reader';
import { about, written } from './keyed';

/** Which form a bend is made on. */
export type FormChoice =
  { readonly kind: 'any' } | { readonly kind: 'own' } | { readonly kind: 'with'; readonly bend: string };

/** The form a bend asks for. */
export const formChoice = written<FormChoice>(
  {
    label: 'form',
    help: 'The form it is made on: `own`, or `{ with: NAME }` for the form of another bend: its edge, or its name',
    example: '{ with: long }',
  },
  {
    shape: z.union([z.enum(['own']), z.strictObject({ with: about(z.string(), 'The bend whose form it is made on') })]),
    writing: '`own`, or a block with `with`',
    required: false,
    without: 'the fewest forms that do',
    read: (reader, path) => {
      const value = reader.at(path);
      if (isBlock(value)) return { kind: 'with', bend: reader.name([...path, 'with']) };
      return value === 'own' ? { kind: 'own' } : { kind: 'any' };
    },
  },
);
