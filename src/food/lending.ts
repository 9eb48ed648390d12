import { type Exact, fraction, isZero, minus, ONE, over, plus, ZERO } from "../number/exact.ts";
import { type ComponentId, components } from "./components.ts";
import { readFigure } from "./composition.ts";
import { formulas } from "./data/formulas.ts";
import { figureAsRead, type ReadFigure } from "./figure.ts";
import type { FoodInput } from "./food.ts";

/** What the rest of a food is brought over by: solids, solids but fat, or the food as it weighs. */
export type BorrowBasis = "dry-matter" | "fat-free-dry-matter" | "weight";

/** A figure that may be taken over, and how; or why it may not. */
export type Loan =
  | { readonly figure: ReadFigure; readonly ratio: Exact; readonly by: string }
  | { readonly refused: string };

/**
 * Whether a figure may be taken over from one food into another, and by what ratio: amino acids by
 * protein, fatty acids by fat, the rest by dry matter where both waters are known, else by weight.
 * Never over a figure that is known, never from one that was itself borrowed, or computed here, or no
 * more than a limit; never a nutrient that was added; nor water and energy, which follow from the rest.
 *
 * Source: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), on imputed and borrowed
 * values; unverified.
 */
export function loanOf(into: FoodInput, from: FoodInput, id: ComponentId, basis?: BorrowBasis): Loan {
  if (id === "water" || id === "energy")
    return { refused: `${id} follows from the rest and is not borrowed` };
  if (into.per100g[id] !== undefined) return { refused: `${into.id} has a figure of its own` };
  const given = from.per100g[id];
  if (given === undefined) return { refused: `${from.id} does not give it either` };
  const figure = figureAsRead(given);
  const refused = whyNotLent(figure, from) ?? whyAdded(into, from, id);
  if (refused !== undefined) return { refused };
  const ratio = ratioOf(into, from, id, basis);
  return "refused" in ratio ? ratio : { figure, ...ratio };
}

/** Whether a food is cooked as another is: raw from raw, cooked from cooked. */
export function likeStates(into: FoodInput, from: FoodInput): boolean {
  return into.state !== undefined && into.state === from.state;
}

/** Grams of what is not water in 100 g, where water is known, or of what is neither water nor fat. */
export function solids(food: FoodInput, basis: Exclude<BorrowBasis, "weight">): Exact | undefined {
  const water = measured(food, "water");
  const fat = basis === "dry-matter" ? ZERO : measured(food, "fat");
  return water && fat && minus(HUNDRED, plus(water, fat));
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);

function whyNotLent({ kind }: ReadFigure, from: FoodInput): string | undefined {
  if (kind === "borrowed") return `${from.id} has borrowed it itself`;
  return kind === "trace" || kind === "below" ? `${from.id} has no more than a limit of it` : undefined;
}

/**
 * How an added nutrient is known: a food's own `fortifiedWith`, or folic acid, which food has only where
 * it was added. What is computed from an added nutrient, or holds it, was added to as well.
 */
function whyAdded(into: FoodInput, from: FoodInput, id: ComponentId): string | undefined {
  if (id === "folicAcid") return "folic acid is only ever added, by maker and country";
  const food = [into, from].find((each) => addedTo(each).has(id));
  return food && `${food.id} has it added, by maker and country`;
}

function addedTo(food: FoodInput): ReadonlySet<ComponentId> {
  const added = new Set<ComponentId>(food.fortifiedWith ?? []);
  const folicAcid = food.per100g.folicAcid;
  if (folicAcid !== undefined && !isKnownZero(figureAsRead(folicAcid))) added.add("folicAcid");
  if (added.has("vitaminARae") || added.has("vitaminARe")) added.add("retinol");
  const named = [...added];
  // A difference from what was added is what was there before.
  for (const { gives, terms } of formulas)
    if (named.some((id) => terms[id] !== undefined && !terms[id].startsWith("-"))) added.add(gives);
  return added;
}

function isKnownZero({ kind, value }: ReadFigure): boolean {
  return kind !== "trace" && kind !== "below" && isZero(value);
}

type Ratio = { readonly ratio: Exact; readonly by: string } | { readonly refused: string };

function ratioOf(into: FoodInput, from: FoodInput, id: ComponentId, basis: BorrowBasis | undefined): Ratio {
  const { group } = components[id];
  if (group === "aminoAcid") return quotient(into, from, "protein", (food) => measured(food, "protein"));
  if (group === "fattyAcid") return quotient(into, from, "fat", (food) => measured(food, "fat"));
  if (basis === "weight") return byWeight;
  const made = quotient(into, from, (basis ?? "dry-matter").replaceAll("-", " "), (food) =>
    solids(food, basis ?? "dry-matter"),
  );
  return basis === undefined && "refused" in made ? byWeight : made;
}

const byWeight: Ratio = { ratio: ONE, by: "weight" };

function quotient(
  into: FoodInput,
  from: FoodInput,
  by: string,
  of: (food: FoodInput) => Exact | undefined,
): Ratio {
  const [a, b] = [of(into), of(from)];
  if (!a || !b) return { refused: `the ${by} of ${a ? from.id : into.id} is not known` };
  if (b.n <= 0n || a.n < 0n) return { refused: `${from.id} has no ${by} to go by` };
  return { ratio: over(a, b), by };
}

/** A figure that is neither a gap, nor a limit, nor borrowed. */
function measured(food: FoodInput, id: ComponentId): Exact | undefined {
  const { kind, value } = readFigure(food, id);
  const isOwn = kind === "known" || kind === "calculated" || kind === "derived" || kind === "presumed";
  return isOwn ? value : undefined;
}
