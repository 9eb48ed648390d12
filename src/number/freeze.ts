/**
 * Freezes plain data through and through, and gives it back: what is shared by all who read it is
 * changed by none. Objects of classes are left as they are, and what is computed when it is looked at is
 * not looked at: who computes it freezes it.
 */
export function freezeAll<T>(data: T): T {
  if (!isPlain(data) || Object.isFrozen(data)) return data;
  Object.freeze(data);
  for (const key of Object.keys(data)) freezeAll(Object.getOwnPropertyDescriptor(data, key)?.value);
  return data;
}

function isPlain(data: unknown): data is object {
  if (typeof data !== "object" || data === null) return false;
  const prototype: unknown = Object.getPrototypeOf(data);
  return prototype === Object.prototype || prototype === null || Array.isArray(data);
}
