/** The same value, it and all it holds made unchangeable: what many tests share stays as it was worked out. */
export function frozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value) || ArrayBuffer.isView(value)) return value;
  Object.freeze(value);
  for (const held of Object.values(value)) frozen<unknown>(held);
  return value;
}
