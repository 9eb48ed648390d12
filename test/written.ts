/** A result as JSON holds it, read again. */
export function written(x: unknown): { readonly [field: string]: unknown } {
  return JSON.parse(JSON.stringify(x));
}
