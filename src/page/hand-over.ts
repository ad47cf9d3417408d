import { once } from '../base/once';
import type { Part } from '../drawing/parts/part';
import type { Form, Worked } from './work';

/** What became of a draft as it goes from the worker to the page: the pieces, which are most of it, as text that is read once somebody looks at them. */
export interface HandedOver extends Omit<Worked, 'form'> {
  readonly form: (Omit<Form, 'parts'> & { readonly partsText: string }) | null;
}

export function handOver({ form, ...rest }: Worked): HandedOver {
  if (!form) return { ...rest, form };
  const { parts, ...others } = form;
  return { ...rest, form: { ...others, partsText: exactJson(parts) } };
}

/** Stands in for a nought with a minus, which JSON can say but `JSON.stringify` does not. */
const MINUS_NOUGHT = '\u0000-0';

/** Plain data as JSON from which the very same numbers are read again. */
function exactJson(data: unknown): string {
  const text = JSON.stringify(data, (_, value: unknown) => (Object.is(value, -0) ? MINUS_NOUGHT : value));
  return text.replaceAll(JSON.stringify(MINUS_NOUGHT), '-0');
}

export function takeOver({ form, ...rest }: HandedOver): Worked {
  if (!form) return { ...rest, form };
  const { partsText, ...others } = form;
  const parts = once(() => JSON.parse(partsText) as readonly Part[]);
  return {
    ...rest,
    form: {
      ...others,
      get parts() {
        return parts();
      },
    },
  };
}
