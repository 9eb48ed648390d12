import { type ComponentId, components } from "../food/components.ts";
import { vitaminDFromIu } from "../food/internationalUnits.ts";
import { exactText } from "../number/digits.ts";
import { type Exact, exact, over, times } from "../number/exact.ts";

/** Spellings of the units of figures; a µ that was read by another code page is no other letter. */
const spellings: { readonly [written: string]: string } = {
  g: "g",
  gram: "g",
  grams: "g",
  mg: "mg",
  µg: "µg",
  μg: "µg",
  ug: "µg",
  mcg: "µg",
  "\uFFFDg": "µg",
  kcal: "kcal",
  kj: "kJ",
  iu: "IU",
};

/** The unit that is meant, or nothing where it is none that figures of foods come in. */
export function figureUnit(written: string): string | undefined {
  const wanted = written.trim();
  const key = wanted.toLowerCase();
  return Object.hasOwn(spellings, key) ? spellings[key] : undefined;
}

/** How many of a component's own unit one of another makes; joules by the thermochemical calorie, 4.184 of them. */
const inOne: { readonly [pair: string]: string } = {
  "g mg": "1000",
  "g µg": "1000000",
  "mg g": "1/1000",
  "mg µg": "1000",
  "µg mg": "1/1000",
  "µg g": "1/1000000",
  "kJ kcal": "1/4.184",
};

/**
 * Brings a figure to its component's unit; undefined where the units are not of one kind. Of vitamins in
 * international units only D turns into a mass without its form being known.
 */
export function toUnitOf(id: ComponentId, value: string, unit: string): string | undefined {
  const own = components[id].unit;
  if (unit === own) return value;
  if (id === "vitaminD" && unit === "IU") return exactText(vitaminDFromIu(value));
  const factor = inOne[`${unit} ${own}`];
  return factor === undefined ? undefined : exactText(times(exact(value), factorOf(factor)));
}

function factorOf(text: string): Exact {
  const [over1 = "1", under = "1"] = text.split("/");
  return over(exact(over1), exact(under));
}
