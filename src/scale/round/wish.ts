import { text } from "../../document/leaves.ts";
import { byName, type Schema } from "../../document/schema.ts";
import { type Amount, amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { collect, type Fault, fault, quote, SteelyardError, throwIfAny } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import { type Dish, nameIn } from "../engine/model.ts";

/** How a line is wished to be measured: left alone, or by what one of a unit is. */
export type Wish = "as-written" | { readonly one: Amount };

/** The schema of wishes by line name, before the lines are known. */
export function wishesSchema(): Schema<Readonly<Record<string, string>>> {
  return byName(text(200), { like: '{ oil: "tbsp" }' });
}

/**
 * Reads wishes by line name. Throws every fault at once: `rounding-malformed`, `line-unknown`, and
 * the codes of amounts for a unit that the line cannot be measured in.
 */
export function readWishes(
  lines: Readonly<Record<string, string>>,
  dishes: readonly Dish[],
  kitchen: Kitchen | undefined,
): ReadonlyMap<string, Wish> {
  const known = new Map(
    dishes.flatMap((dish) =>
      dish.sheet.plan.lines.map((line) => [nameIn(dish, line.line.key), line] as const),
    ),
  );
  const faults: Fault[] = [];
  const wishes = new Map<string, Wish>();
  for (const [name, wish] of Object.entries(lines)) {
    const read = collect(faults, [name], () => readWish(wish, name, known, kitchen));
    if (read) wishes.set(name, read);
  }
  throwIfAny(faults);
  return wishes;
}

function readWish(
  wish: string,
  name: string,
  known: ReadonlyMap<string, PlanLine>,
  kitchen: Kitchen | undefined,
): Wish {
  const line = known.get(name);
  if (!line) {
    const hint = didYouMean(
      name,
      known.keys(),
      "use a key from .lines, after its sheet's name where several",
    );
    throw fault("line-unknown", `there is no line ${quote(name)}`, hint);
  }
  if (wish === "as-written") return wish;
  if (line.line.scaling === "per-portion") {
    const hint = "leave the wish out, or write the line otherwise in its recipe";
    throw fault("rounding-malformed", `${quote(name)} is the same for everyone, and never rounded`, hint);
  }
  const one =
    wish === "weigh" ? gram() : (unitOf(wish, kitchen) ?? line.reader.read({ value: 1, unit: wish }));
  line.reader.toGrams(one);
  return { one };
}

export function gram(): Amount {
  return amount({ value: 1, unit: "g" });
}

/** One of a unit as the kitchen has it; nothing where the word can only be the food's own. */
function unitOf(unit: string, kitchen: Kitchen | undefined): Amount | undefined {
  try {
    return amount({ value: 1, unit }, kitchen ? { measures: kitchen.measures } : {});
  } catch (error) {
    if (error instanceof SteelyardError && error.code === "amount-unknown-unit") return undefined;
    throw error;
  }
}
