import { type ComponentId, component } from "../../food/components.ts";
import type { FoodInput } from "../../food/food.ts";
import { type Exact, fraction, isZero, over, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { Quantity } from "../demand.ts";
import { cooksServing, type Helping, type ServingRange } from "./cooksServing.ts";
import { replaceFood } from "./replaceFood.ts";

/** Below so many kcal a portion a line is there for its taste or its bulk. Common practice, no source. */
const LITTLE_ENERGY: Exact = /* @__PURE__ */ fraction(20n);
/** Share of the energy: "high protein" of Regulation (EC) No 1924/2006, annex: unverified, read as others cite it. */
const HIGH_PROTEIN: Exact = /* @__PURE__ */ fraction(1n, 5n);
/** Grams in each gram: leaves have as high a share, and nobody eats them for it. Common practice, no source. */
const MUCH_PROTEIN: Exact = /* @__PURE__ */ fraction(1n, 20n);
/** mg in each gram: what has as much is there for its salt. Common practice, no source. */
const MUCH_SODIUM: Exact = /* @__PURE__ */ fraction(10n);
/** kcal/g, the general factor: FAO Food and Nutrition Paper 77 (2003), 3.5. */
const PROTEIN_ENERGY: Exact = /* @__PURE__ */ fraction(4n);

/** Returns what a substitute should bring as much of as the line: what a cook would say the line is there for. */
export function usualMatch(s: Sheet, i: number): Quantity {
  const { grams, energy, protein, sodium } = servingOf(s, i);
  const isHigh =
    protein !== undefined &&
    !isZero(protein) &&
    compareRatios(protein, times(grams, MUCH_PROTEIN)) >= 0 &&
    (!energy || compareRatios(times(protein, PROTEIN_ENERGY), times(energy, HIGH_PROTEIN)) >= 0);
  if (energy ? compareRatios(energy, LITTLE_ENERGY) < 0 : !isHigh)
    return sodium && compareRatios(sodium, times(grams, MUCH_SODIUM)) >= 0 ? "sodium" : "mass";
  return isHigh ? "protein" : "energy";
}

/** What became of a food that was tried in the line's place. */
export type Tried =
  /** It brings none of what is matched, or does not say. */
  | { readonly is: "without" }
  | {
      readonly is: "matched" | "too-little" | "too-much";
      readonly grams: Exact;
      readonly range: ServingRange;
    };

/** Tries a food: so much of it as brings what the line does, and whether a cook would serve that. Grams of the batch. */
export function tryFood(s: Sheet, i: number, { id }: FoodInput, match: Quantity): Tried {
  const { portions } = s.values;
  const own = s.values.grams[i] ?? ZERO;
  const same = replaceFood(s, i, id, own);
  const [before, after] = [bringsOf(s, i, match), bringsOf(same, i, match)];
  if (!before || !after || isZero(after)) return { is: "without" };
  const grams = over(times(own, before), after);
  const range = cooksServing(servingOf(s, i), servingOf(same, i));
  const batch = { least: times(range.least, portions), most: times(range.most, portions) };
  const is =
    compareRatios(grams, batch.least) < 0
      ? "too-little"
      : compareRatios(grams, batch.most) > 0
        ? "too-much"
        : "matched";
  return { is, grams, range: batch };
}

/** What a line brings to the batch; nothing where it does not say. */
function bringsOf(s: Sheet, i: number, match: Quantity): Exact | undefined {
  if (match === "mass") return s.values.grams[i] ?? ZERO;
  return known(s.cell(s.plan.lines[i]?.line.key ?? "", match));
}

function servingOf(s: Sheet, i: number): Helping & { readonly protein: Exact | undefined } {
  const { line, source } = s.plan.lines[i] ?? {};
  const of = (id: ComponentId): Exact | undefined => {
    const brought = known(s.cell(line?.key ?? "", id));
    return brought && over(brought, s.values.portions);
  };
  return {
    food: source?.food?.input as FoodInput,
    grams: over(s.values.grams[i] ?? ZERO, s.values.portions),
    energy: of("energy"),
    protein: of("protein"),
    sodium: of("sodium"),
  };
}

function known(cell: Tally): Exact | undefined {
  return cell.bound === "unknown" ? undefined : cell.value;
}

/** In words. */
export function matchName(match: Quantity): string {
  return match === "mass" ? "mass" : component(match).name;
}
