import { type Fraction, toText } from "../number/fraction.ts";

/**
 * For `JSON.stringify(rows, asJson)`: what JSON has no word for, in a form that loses nothing. Exact
 * fractions become their text (`"1/3"`), maps plain objects, sets lists, and results whose fields are
 * worked out when asked for (a portion, its drift) objects of those fields. Results that say for
 * themselves what they are in JSON, such as a sheet or a tally, are as ever.
 *
 * @example
 * ```ts
 * const s = sheet({ name: "Oats", portions: 3, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }, starterFoods);
 * const { sheet: third, factor } = scale(s, { factor: "1/3" });
 * console.log(JSON.stringify(third.lines.map(({ key, grams }) => ({ key, grams })), asJson)); // => [{"key":"oats-rolled-dry","grams":"100/3"}]
 * ```
 */
export function asJson(_key: string, value: unknown): unknown {
  if (typeof value === "bigint") return value.toString();
  if (typeof value !== "object" || value === null) return value;
  if (isFraction(value)) return toText(value);
  if (value instanceof Set) return [...value];
  if (value instanceof Map) return Object.fromEntries(value);
  return isPlain(value) ? value : { ...workedOut(value), ...value };
}

function isFraction(value: object): value is Fraction {
  return (
    "n" in value && "d" in value && typeof value.n === "bigint" && typeof value.d === "bigint" && value.d > 0n
  );
}

function isPlain(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype || Array.isArray(value);
}

/** What a class works out when asked: the fields of its getters. */
function workedOut(value: object): { readonly [field: string]: unknown } {
  const fields: { [field: string]: unknown } = {};
  for (let at = Object.getPrototypeOf(value); at && at !== Object.prototype; at = Object.getPrototypeOf(at)) {
    for (const [name, { get }] of Object.entries(Object.getOwnPropertyDescriptors(at))) {
      if (get !== undefined && !Object.hasOwn(fields, name)) fields[name] = get.call(value);
    }
  }
  return fields;
}
