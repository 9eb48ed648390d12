import { number } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { coded, fields, once, optional, type Schema } from "../document/schema.ts";
import { fault, kindOf, quote } from "../number/error.ts";
import { type Exact, over, times, type Value } from "../number/exact.ts";
import {
  type Amount,
  type AmountOptions,
  amountShape,
  type ReadAmountOptions,
  readAmount,
  readContext,
  simple,
} from "./amount.ts";
import { readyMeasures } from "./measures.ts";
import type { Unit } from "./units.ts";
import { readUnit } from "./unitText.ts";

export interface ConvertOptions extends AmountOptions {
  /** Grams per millilitre of the food, above 0: what turns a volume into a mass and back. */
  readonly density?: Value;
}

/**
 * The same amount in another unit, exactly. A spoon or cup is read by `measures`, else by those of
 * the amount itself.
 *
 * Throws `density-needed` between mass and volume without a density, `unit-kinds-differ` for other
 * pairs of kinds (a food's own measure has no size here), and the codes of `amount`.
 *
 * @example
 * ```ts
 * convert("1 lb 4 oz", "g").value.toString(); // => 566.9904625
 * convert("1 us cup", "g", { density: "1.03" }).value.toString(); // => 243.685883595
 * convert("9 in", "cm").value.toString(); // => 22.86
 * ```
 */
export function convert(a: Amount | string, unit: string, how: ConvertOptions = {}): Amount {
  if (typeof unit !== "string") {
    const message = `expected the name of a unit, got ${kindOf(unit)}`;
    throw fault("amount-unknown-unit", message, 'write it as text: "g"', ["unit"]);
  }
  const { density, own, ...rest } = read(convertHow(), how, "format-malformed");
  const context = readContext(rest);
  const from = readAmount(a, { ...context, own });
  const set = context.set ?? (from.measures && readyMeasures(from.measures));
  const to = readUnit(unit, { ...context, set });
  return simple({ value: over(inBase(from, to, density), to.size), unit: to });
}

const convertHow: () => Schema<ReadConvertOptions> = /* @__PURE__ */ once(() =>
  fields<ReadConvertOptions>({
    ...amountShape(),
    density: optional(coded("density-needed", number({ above: 0 }))),
  }),
);

interface ReadConvertOptions extends ReadAmountOptions {
  readonly density?: Exact;
}

const OF_ITS_OWN = {
  energy: "energy comes from what a food is made of, not from its amount alone",
  length: "a length becomes another length: in to cm",
} as const;

/** The amount in the base unit of the wanted kind. */
function inBase(from: Amount, to: Unit, gramsPerMl: Exact | undefined): Exact {
  if (from.kind === "own" || from.size === undefined) {
    const hint = "the food says what its own measures weigh; write a mass or a volume here";
    throw fault("unit-kinds-differ", `${quote(from.unit)} is a food's own measure`, hint);
  }
  const base = times(from.value, from.size);
  if (from.kind === to.kind) return base;
  const apart = [from.kind, to.kind].find((kind) => kind === "energy" || kind === "length");
  if (apart)
    throw fault("unit-kinds-differ", `${from.kind} does not convert to ${to.kind}`, OF_ITS_OWN[apart]);
  if (gramsPerMl === undefined) {
    const message = `from ${quote(from.unit)} to ${quote(to.id)} takes a density`;
    throw fault("density-needed", message, "give it in grams per millilitre: { density: 1.03 }");
  }
  return from.kind === "mass" ? over(base, gramsPerMl) : times(base, gramsPerMl);
}
