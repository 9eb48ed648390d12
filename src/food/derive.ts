import { type Exact, exact, plus, times, ZERO } from "../number/exact.ts";
import type { ComponentId } from "./components.ts";
import { ownEnergyFormula } from "./data/energyAtwaterOwn.ts";
import { generalEnergyFormula } from "./data/energyFao77.ts";
import { type Formula, formulas } from "./data/formulas.ts";
import { figureMarks, type ReadFigure } from "./figure.ts";
import type { FoodInput } from "./food.ts";

/** How a derivation asks for a figure that the food gives or that may be presumed; never a derived one. */
export type GivenFigure = (id: ComponentId) => ReadFigure;

/**
 * The figure of a component that a food does not give, by the first formula of which every input is
 * known; nothing where there is none. What is uncertain of the inputs stays uncertain: intervals add
 * up, a trace or a limit among them makes the sum "at least", and an input that is taken off counts
 * with its limit, so that the figure is never more than is known.
 *
 * A difference that comes out below 0, as rounded figures of tables can make it, is 0.
 */
export function derive(food: FoodInput, id: ComponentId, given: GivenFigure): ReadFigure | undefined {
  for (const formula of formulasOf(food, id)) {
    const made = apply(formula, given);
    if (made) return made;
  }
  return undefined;
}

/** The formulas that a component of a food may be worked out by, in order of preference. */
function formulasOf(food: FoodInput, id: ComponentId): readonly Formula[] {
  if (id === "energy")
    return food.energyFactors ? [ownEnergyFormula(food.energyFactors)] : [generalEnergyFormula];
  return formulas.filter((f) => f.gives === id && (f.origin === undefined || f.origin === food.origin));
}

/** Works a formula out, or nothing where an input is not known. */
export function apply(formula: Formula, given: GivenFigure): ReadFigure | undefined {
  const start = exact(formula.from ?? "0");
  let value: Exact = start;
  let low: Exact | undefined = start;
  let high: Exact | undefined = start;
  const inputs = new Set<NonNullable<ReadFigure["inputs"]>[number]>();
  for (const [id, text] of Object.entries(formula.terms) as [ComponentId, string][]) {
    const figure = given(id);
    const weight = exact(text);
    const takenOff = weight.n < 0n;
    const counted = takenOff && figure.kind === "below" ? figure.high : figure.value;
    // Nothing bounds a trace from above, so that nothing can be said of what is left after it.
    if (figure.kind === "missing" || counted === undefined || (takenOff && figure.kind === "trace"))
      return undefined;
    value = plus(value, times(counted, weight));
    low = sumEnd(low, takenOff ? figure.high : figure.low, weight);
    high = sumEnd(high, takenOff ? figure.low : figure.high, weight);
    for (const kind of figureMarks(figure)) if (kind !== "missing") inputs.add(kind);
  }
  const zero = (end: Exact): Exact => (end.n < 0n ? ZERO : end);
  return {
    kind: "derived",
    value: zero(value),
    ...(low && { low: zero(low) }),
    ...(high && { high: zero(high) }),
    note: value.n < 0n ? `${formula.formula}; came out below 0` : formula.formula,
    formula,
    ...(inputs.size > 0 && { inputs: [...inputs] }),
  };
}

function sumEnd(sofar: Exact | undefined, end: Exact | undefined, weight: Exact): Exact | undefined {
  return sofar && end && plus(sofar, times(end, weight));
}
