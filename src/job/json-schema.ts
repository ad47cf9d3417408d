import { z } from 'zod';
import { jobFields } from './fields/index';

/** The job file’s shape as JSON Schema (draft 2020-12), for editors. */
export function jobJsonSchema(): object {
  return z.toJSONSchema(jobFields.shape.meta({ title: 'bendbuck job', description: jobFields.help }), { io: 'input' });
}
