import type { LengthUnit } from '../base/units';
import type { Tables } from '../tables/tables';
import type { CuttingTool } from './cutting-tool';

/** What bounds, defaults and their words may depend on, beside the field itself. */
export interface Setting {
  readonly tables: Tables;
  readonly units: LengthUnit;
  readonly tool: CuttingTool;
}

/** A value, or how it follows from the setting. */
export type Of<Value> = Value | ((setting: Setting) => Value);

/** The value of an {@link Of} in a setting. Values are never functions themselves. */
export function settle<Value extends string | number | boolean>(of: Of<Value>, setting: Setting): Value {
  return typeof of === 'function' ? of(setting) : of;
}
