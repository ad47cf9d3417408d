import { createContext } from 'preact';
import type { Form } from './work';

/** The form as last worked out, for what shows it within the fields: these then need not be gone through at every answer. */
export const ShownForm = createContext<Form | null>(null);
