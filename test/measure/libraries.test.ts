/** Every unit against two general-purpose unit libraries from the registry. */
import convertUnits from "convert-units";
import Qty from "js-quantities";
import { describe, expect, it } from "vitest";
import { amount } from "../../src/measure/amount.ts";
import { convert } from "../../src/measure/convert.ts";
import { measureSetNames, measureSets } from "../../src/measure/measures.ts";
import { fixedUnitIds, householdUnits } from "../../src/measure/units.ts";
import { errorOf } from "../number/errorOf.ts";

const base = { mass: "g", volume: "ml", length: "mm", energy: "kJ" } as const;

/** Ours: grams, millilitres, millimetres or kilojoules in one. */
function sizeOf(unit: string): number {
  const one = amount(`1 ${unit}`);
  if (one.kind === "own") throw new Error(unit);
  return convert(one, base[one.kind]).value.toNumber();
}

/**
 * How far off a factor of convert-units may be, as a share. Its pound is 453.592 g, good to half its
 * last digit. Its litre is 33.8140226 fl oz, where 1000 / 29.5735295625 begins 33.8140227: that last
 * digit is one too low, so its spoons and cups are held to just over one unit of it.
 */
const pound = 0.0005 / 453.592;
const fluidOunce = 0.00000011 / 33.8140226;
const stated: Record<string, number> = {
  oz: pound,
  lb: pound,
  tsp: fluidOunce,
  Tbs: fluidOunce,
  "fl-oz": fluidOunce,
  cup: fluidOunce,
  pnt: fluidOunce,
  qt: fluidOunce,
  gal: fluidOunce,
  // Five and six digits of cubic inch and foot; 3.28084 feet to the metre.
  in3: 0.000005 / 0.55411,
  ft3: 0.0005 / 957.506 + fluidOunce,
  in: 0.000005 / 3.28084,
  ft: 0.000005 / 3.28084,
};
const FLOAT = 1e-14;

/** What a cook would write for it, where its symbol needs saying whose. */
const ours: Record<string, string> = {
  tsp: "us tsp",
  Tbs: "us tbsp",
  "fl-oz": "us fl oz",
  cup: "us cup",
  pnt: "us pint",
  qt: "us qt",
  gal: "us gal",
};

/** What nobody cooks with or labels food by. */
const left = [
  ...["mt", "mm3", "kl", "m3", "km3", "yd3", "glas", "kanna"],
  ...["km", "yd", "ft-us", "mi", "Wh", "mWh", "kWh", "MWh", "GWh"],
];

const listed = (["mass", "volume", "length", "energy"] as const).flatMap((kind) =>
  convertUnits()
    .list(kind)
    .map(({ abbr }) => ({ abbr, kind })),
);
const shared = listed.filter(({ abbr }) => abbr !== "t" && !left.includes(abbr));

describe("convert-units 2.3.4", () => {
  it("lists what this test expects to hold", () => {
    expect(listed.length).toBe(49);
    expect(shared.length).toBe(31);
  });

  it.each(shared)("agrees on $abbr within its stated rounding", ({ abbr, kind }) => {
    const theirs = convertUnits(1).from(abbr).to(base[kind]);
    const mine = sizeOf(ours[abbr] ?? abbr);
    expect(Math.abs(mine - theirs) / theirs).toBeLessThanOrEqual(stated[abbr] ?? FLOAT);
  });

  it("does not decide what a ton is", () => {
    expect(errorOf(() => amount("1 t")).code).toBe("amount-ambiguous");
  });
});

/** js-quantities writes eight significant digits or more of each; nine for most. */
const QTY_ROUNDING = 1e-8;

const qtyNames: Record<string, string> = {
  µg: "ug",
  mg: "mg",
  g: "g",
  kg: "kg",
  oz: "oz",
  lb: "lb",
  st: "stone",
  ml: "mL",
  cl: "cL",
  dl: "dL",
  l: "L",
  J: "J",
  kJ: "kJ",
  MJ: "MJ",
  kcal: "kcal",
  "us tsp": "tsp",
  "us tbsp": "tbsp",
  "us fl oz": "floz",
  "us cup": "cup",
  "us pint": "pint",
  "us quart": "qt",
  "us gallon": "gal",
  "imperial fl oz": "floz-imp",
  "imperial pint": "pint-imp",
  "imperial gallon": "gallon-imp",
  in3: "in^3",
  ft3: "ft^3",
  mm: "mm",
  cm: "cm",
  m: "m",
  in: "in",
  ft: "ft",
};

describe("js-quantities 1.8.0", () => {
  it.each(Object.entries(qtyNames))("agrees on %s", (unit, theirName) => {
    const one = amount(`1 ${unit}`);
    const to = { mass: "g", volume: "mL", length: "mm", energy: "kJ" }[
      one.kind === "own" ? "mass" : one.kind
    ];
    const theirs = Qty(1, theirName).to(to).scalar;
    expect(Math.abs(sizeOf(unit) - theirs) / theirs).toBeLessThan(QTY_ROUNDING);
  });

  it("leaves no unit of ours without a second opinion but those that it does not have", () => {
    const unchecked = [
      ...fixedUnitIds(),
      ...measureSetNames.flatMap((set) =>
        householdUnits.filter((u) => measureSets[set].ml[u] !== undefined).map((u) => `${set} ${u}`),
      ),
    ].filter((unit) => !(unit in qtyNames) && !(unit in ours) && !listed.some(({ abbr }) => abbr === unit));
    // Metric, label and Australian spoons are whole millilitres; gills and the imperial quart are held to their definitions.
    expect(unchecked.filter((unit) => !/^(metric|us-label|australian) /.test(unit))).toEqual([
      "us gill",
      "imperial tsp",
      "imperial dessertspoon",
      "imperial tbsp",
      "imperial gill",
      "imperial quart",
    ]);
  });
});
