import { figureWritten, word } from "../document/leaves.ts";
import { asFar, attemptAt, byName, coded, once, type Refuse, type Schema } from "../document/schema.ts";
import { type ComponentId, componentIds, isComponentId, OWN_PATTERN } from "../food/components.ts";
import { figure } from "../measure/figure.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault, quote } from "../number/error.ts";
import { type Exact, exact, isZero, minus, ONE, over, sum, type Value, ZERO } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import type { Quantity } from "./demand.ts";
import { quantityName, silentLines, splitOf, unitOf } from "./linear.ts";

/**
 * One target for a portion as eaten: a component (`{ energy: "650 kcal" }`, or a number in the
 * component's own unit), a `mass` (a number is grams), or a `factor`; and, or instead, a number of
 * `portions`.
 */
export type Target = { readonly [C in ComponentId]?: Value } & {
  readonly mass?: Value;
  readonly factor?: Value;
  readonly portions?: Value;
};

/** Whether lines that say nothing of the target may count as bringing none of it. */
export type Silence = "refuse" | "accept";

/** The schema of what is said of silent lines: a mistyped word must not open what refuses. */
export function silence(): Schema<Silence> {
  return word(["refuse", "accept"]);
}

/** A target, read. */
export interface ReadTarget {
  readonly aim:
    | { readonly of: "factor"; readonly factor: Exact }
    | { readonly of: Quantity; readonly amount: Exact };
  readonly portions: Exact | undefined;
}

/** The schema of a target. Its faults have the code `target-malformed`, or those of amounts and numbers. */
export const targetSchema: () => Schema<ReadTarget> = /* @__PURE__ */ once(() =>
  asFar(written(OTHERS), (given, refuse) => {
    if (Object.keys(given).length === 0)
      refuse("the target is empty", 'write one, such as { energy: "650 kcal" } or { portions: 12 }');
    return targetOf(given, refuse);
  }),
);

/** The schema of what one person's portion is to bring: nothing asked is a factor of 1. */
export const portionTarget: () => Schema<ReadTarget["aim"]> = /* @__PURE__ */ once(() =>
  asFar(written(["mass", "factor"]), (given, refuse) => targetOf(given, refuse).aim),
);

function written(others: readonly string[]): Schema<{ readonly [name: string]: Value }> {
  const names = [...componentIds, ...others];
  const check = (name: string, refuse: Refuse): void => {
    if (names.includes(name) || isComponentId(name)) return;
    const otherwise = `use a component id, ${others.join(" or ")}`;
    const one = "a person has one portion: for a larger one, ask for more, or give a factor";
    const hint = name === "portions" ? one : didYouMean(name, names, otherwise);
    refuse(`${quote(name)} is nothing to scale to`, hint, [], "target-malformed");
  };
  const like = '{ energy: "650 kcal" }';
  return coded("target-malformed", byName(figureWritten(), { check, names, pattern: OWN_PATTERN, like }));
}

const OTHERS: readonly string[] = ["mass", "factor", "portions"];

function targetOf(given: { readonly [name: string]: Value }, refuse: Refuse): ReadTarget {
  const [first, second] = Object.keys(given).filter((name) => name !== "portions");
  if (second !== undefined)
    refuse(
      `two targets, ${first} and ${second}: one factor meets only one`,
      "give one, or use fit for several",
      [second],
    );
  const figureOf = (name: string): Exact | undefined => {
    const value = given[name];
    if (value === undefined) return undefined;
    if (name === "mass" || isComponentId(name))
      return attemptAt(refuse, [name], () => figure(value, unitOf(name)));
    const read = OTHERS.includes(name) ? attemptAt(refuse, [name], () => exact(value)) : undefined;
    if (read && compareRatios(read, ZERO) <= 0)
      refuse(`${name} ${quote(value)} is not above 0`, `give ${name} above 0`, [name]);
    return read;
  };
  const portions = figureOf("portions");
  const amount = (first === undefined ? undefined : figureOf(first)) ?? ONE;
  const aim: ReadTarget["aim"] =
    first === undefined || first === "factor"
      ? { of: "factor", factor: amount }
      : { of: first as Quantity, amount };
  return { aim, portions };
}

/**
 * The one factor that brings the portions of these sheets together to the target, in closed form:
 * (target − per-portion lines) ÷ the rest.
 *
 * Throws `target-silent` and `target-unreachable`.
 */
export function factorFor(sheets: readonly Sheet[], aim: ReadTarget["aim"], silence: Silence): Exact {
  if (aim.of === "factor") return aim.factor;
  const { of, amount } = aim;
  const silent = sheets.flatMap((s) => silentLines(s, of));
  if (silence === "refuse" && silent.length > 0) {
    const hint =
      'use a food with a figure, borrow one, or pass { silent: "accept" } to take them as bringing none';
    throw fault(
      "target-silent",
      `nothing is known of the ${quantityName(of)} in ${silent.slice(0, 5).join(", ")}`,
      hint,
      [of],
    );
  }
  const splits = sheets.map((s) => splitOf(s, of));
  const fixed = sum(splits.map((s) => s.fixed));
  const moving = sum(splits.map((s) => s.moving));
  const show = (f: Exact): string => showFigure(f, { unit: unitOf(of) });
  if (isZero(moving)) {
    const has = isZero(fixed)
      ? noneOf(sheets, of)
      : `only per-portion lines bring ${quantityName(of)}, ${show(fixed)} a portion`;
    throw fault(
      "target-unreachable",
      `${has}, so no factor changes it`,
      "scale to something that the other lines bring",
      [of],
    );
  }
  const factor = over(minus(amount, fixed), moving);
  if (compareRatios(factor, ZERO) > 0) {
    if (of === "water") refuseDried(sheets, factor);
    return factor;
  }
  throw fault(
    "target-unreachable",
    `${show(amount)} of ${quantityName(of)} is not above the ${show(fixed)} that the per-portion lines alone bring`,
    `any target above ${show(fixed)} can be reached`,
    [of],
  );
}

/** Why a portion brings none that could be scaled: a trace or a silent line is not absence. */
function noneOf(sheets: readonly Sheet[], of: Quantity): string {
  if (of === "mass") return "the recipe has no mass";
  const totals = sheets.map((s) => s.total(of));
  const some = (marked: (t: Tally) => readonly string[]): string =>
    totals.flatMap(marked).slice(0, 5).join(", ");
  const trace = some((t) => [...t.trace, ...t.below]);
  const silent = some((t) => t.missing);
  if (trace === "" && silent === "") return `the recipe has no ${quantityName(of)}`;
  const traces =
    trace === "" ? "" : `only traces, or less than a stated limit, of ${quantityName(of)} in ${trace}`;
  const unknown =
    silent === "" ? "" : `nothing is known of ${traces ? "it" : `the ${quantityName(of)}`} in ${silent}`;
  return [traces, unknown].filter((each) => each !== "").join(" and ");
}

/** A pot cannot give off more water than it holds, so that water is no longer in proportion where it would. */
function refuseDried(sheets: readonly Sheet[], factor: Exact): void {
  const isDried = (s: Sheet): boolean => !isZero(s.water.beyond);
  if (!sheets.some((s) => isDried(s) !== isDried(s.scaled(factor, s.values.portions)))) return;
  throw fault(
    "target-unreachable",
    "at that size cooking would take off more than the water that goes into the pot, or no longer would",
    "correct the yield factor or the cooked mass, or scale to something else",
    ["water"],
  );
}
