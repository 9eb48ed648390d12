import { readNumber } from "../measure/numberText.ts";
import { exactText } from "../number/digits.ts";
import { fault, quote, SteelyardError } from "../number/error.ts";
import {
  absolute,
  type Exact,
  exact,
  fraction,
  greatest,
  minus,
  ONE,
  over,
  plus,
  times,
  type Value,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { type ComponentId, type ComponentUnit, components } from "./components.ts";
import { VITAMIN_D_IU } from "./internationalUnits.ts";

/** A figure as a label prints it, in the unit of its component. */
export type Printed =
  | { readonly kind: "trace" }
  /** "less than 1 g": somewhere from 0 to that. */
  | { readonly kind: "below"; readonly limit: Exact }
  | {
      readonly kind: "amount";
      readonly value: Exact;
      /** One in the last printed digit. */
      readonly unit: Exact;
      /** What was printed times this is the value: 1 but for units converted. */
      readonly scale: Exact;
    }
  | { readonly kind: "percent"; readonly percent: Exact; readonly unit: Exact };

const BELOW = /^(?:contains )?(?:less than|under|below|<) ?/i;
const TRACE = /^traces?$/i;
/** A figure, its unit, what it counts in (`DFE`), and a per cent that may follow an amount. */
const FIGURE =
  /^([\d.,]*\d[\d.,]*) ?([a-zµμ%]*(?: dv)?)(?: ((?:[aα]-)?[A-Z]{2,3}))?(?: ?\(?([\d.,]+) ?%(?: ?dv)?\)?)?$/i;

/** What amounts of a component are printed in: equivalents of one of its forms. */
const equivalents: { readonly [C in ComponentId]?: RegExp } = {
  vitaminARae: /^RAE$/i,
  vitaminARe: /^RE$/i,
  folateDfe: /^DFE$/i,
  niacinEquivalents: /^NE$/i,
  vitaminE: /^(?:[aα]-)?TE$/i,
};

/** Reads one printed figure. A bare number is in the unit of the component. Throws `label-malformed`. */
export function readPrinted(written: Value, id: ComponentId): Printed {
  const text = typeof written === "string" ? tidy(written) : exactText(exact(written));
  if (TRACE.test(text)) return { kind: "trace" };
  if (id === "energy") return readEnergy(text);
  const below = BELOW.exec(text);
  const figure = readFigure(below ? text.slice(below[0].length) : text, id);
  if (!below) return figure;
  if (figure.kind !== "amount") throw malformed(text, 'write the limit as an amount: "less than 1 g"');
  return { kind: "below", limit: figure.value };
}

function readFigure(text: string, id: ComponentId): Printed & { readonly kind: "amount" | "percent" } {
  const [, digits, unit = "", counted] = FIGURE.exec(text) ?? [];
  if (digits === undefined || (counted !== undefined && !equivalents[id]?.test(counted)))
    throw malformed(text, howToWrite(id));
  const value = number(digits);
  const last = lastDigit(digits);
  if (/^%/.test(unit)) return { kind: "percent", percent: value, unit: last };
  const scale = scaleOf(unit, id);
  if (!scale) throw malformed(text, howToWrite(id));
  return { kind: "amount", value: times(value, scale), unit: times(last, scale), scale };
}

/** Kilocalories, kilojoules, or both, which must then speak of the same energy. */
function readEnergy(text: string): Printed {
  const below = BELOW.exec(text);
  const [first, second] = (below ? text.slice(below[0].length) : text)
    .split(/ ?[/(,;] ?(?=[\d.,]+ ?k)| (?=\d)/i)
    .map((each) => each.replace(/\)$/, ""));
  const a = oneEnergy(first ?? "");
  const b = second === undefined ? undefined : oneEnergy(second);
  if (b && a.inKj === b.inKj) throw malformed(text, "write it in kcal, in kJ, or once in each");
  const [kcal, kj] = a.inKj ? [b, a] : [a, b];
  if (kcal && kj) refuseStrangers(text, kcal.value, kj.value);
  const chosen = kcal ?? a;
  if (below) return { kind: "below", limit: chosen.value };
  return { kind: "amount", value: chosen.value, unit: chosen.unit, scale: chosen.scale };
}

interface Energy {
  readonly value: Exact;
  readonly unit: Exact;
  readonly scale: Exact;
  readonly inKj: boolean;
}

function oneEnergy(text: string): Energy {
  const [, digits, unit = ""] = FIGURE.exec(text.trim()) ?? [];
  const inKj = /^kj$/i.test(unit);
  if (digits === undefined || !(inKj || /^(?:kcal|k?cals?|calories?)?$/i.test(unit)))
    throw malformed(text, 'write "250 kcal", "1046 kJ" or "1046 kJ / 250 kcal"');
  const scale = inKj ? KCAL_PER_KJ : ONE;
  return { value: times(number(digits), scale), unit: times(lastDigit(digits), scale), scale, inKj };
}

/**
 * kJ and kcal are summed by factors of their own, from 8 kJ to 2 kcal (fibre) to 13 kJ to 3 kcal
 * (organic acids): what lies further apart, rounding apart, is a slip of the pen.
 */
function refuseStrangers(text: string, kcal: Exact, kjAsKcal: Exact): void {
  const most = plus(ONE, times(fraction(6n, 100n), greatest(kcal, kjAsKcal)));
  if (compareRatios(absolute(minus(kcal, kjAsKcal)), most) > 0)
    throw malformed(text, "kJ and kcal do not speak of the same energy: check both");
}

const KCAL_PER_KJ: Exact = /* @__PURE__ */ fraction(250n, 1046n);

const grams: Readonly<Record<string, Exact>> = {
  g: ONE,
  mg: /* @__PURE__ */ fraction(1n, 1000n),
  µg: /* @__PURE__ */ fraction(1n, 1000000n),
  μg: /* @__PURE__ */ fraction(1n, 1000000n),
  ug: /* @__PURE__ */ fraction(1n, 1000000n),
  mcg: /* @__PURE__ */ fraction(1n, 1000000n),
};

/** What turns a figure printed in a unit into the component's own. */
function scaleOf(unit: string, id: ComponentId): Exact | undefined {
  const own: ComponentUnit = components[id].unit;
  if (unit === "") return ONE;
  if (unit.toLowerCase() === "iu") return id === "vitaminD" ? over(ONE, VITAMIN_D_IU) : undefined;
  const from = Object.hasOwn(grams, unit.toLowerCase()) ? grams[unit.toLowerCase()] : undefined;
  const to = grams[own];
  return from && to && over(from, to);
}

function number(digits: string): Exact {
  try {
    const { value, rest } = readNumber(digits);
    if (rest === "") return value;
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    throw fault("label-malformed", error.faults[0]?.message ?? error.message, error.hint);
  }
  throw malformed(digits, "write digits with one point for decimals: 12.5");
}

/** One in the last digit: 0.1 for 2.5, 1 for 120. */
function lastDigit(digits: string): Exact {
  const decimals = /[.,](\d+)$/.exec(digits)?.[1]?.length ?? 0;
  return fraction(1n, 10n ** BigInt(decimals));
}

function tidy(text: string): string {
  return text.trim().replace(/\s+/g, " ").slice(0, 200);
}

function malformed(text: string, hint: string): SteelyardError {
  return fault("label-malformed", `${quote(text)} is not a figure of a label`, hint);
}

function howToWrite(id: ComponentId): string {
  const { unit } = components[id];
  if (id === "energy") return 'write "250 kcal" or "1046 kJ"';
  const more = notes[id] ?? "";
  return `write "12 ${unit}", "less than 1 ${unit}" or a bare number in ${unit}${more}`;
}

const notes: { readonly [C in ComponentId]?: string } = {
  vitaminARae: "; international units of vitamin A say too little",
  vitaminARe: "; international units of vitamin A say too little",
  folateDfe: ' (of DFE), and the folic acid in it by itself: folicAcid: "120 mcg"',
};
