import { z } from 'zod';
import { jobFileSchema } from './schema';

/** The job file’s shape as JSON Schema (draft 2020-12), for editors. */
export function jobJsonSchema(): object {
  return z.toJSONSchema(jobFileSchema, { io: 'input' });
}
