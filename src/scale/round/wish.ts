import { type Amount, amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { collect, type Fault, fault, quote, SteelyardError, throwIfAny } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import { type Dish, nameIn } from "../fit/model.ts";

/** How a line is wished to be measured: left alone, or by what one of a unit is. */
export type Wish = "as-written" | { readonly one: Amount };

/**
 * Reads wishes by line name. Throws every fault at once: `rounding-malformed`, `line-unknown`, and
 * the codes of amounts for a unit that the line cannot be measured in.
 */
export function readWishes(
  lines: unknown,
  dishes: readonly Dish[],
  kitchen: Kitchen | undefined,
): ReadonlyMap<string, Wish> {
  if (typeof lines !== "object" || lines === null || Array.isArray(lines)) {
    throw fault("rounding-malformed", "the wishes are not an object", 'give them by line: { oil: "tbsp" }');
  }
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
  wish: unknown,
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
  if (typeof wish !== "string" || wish.trim() === "") {
    const hint = 'write "weigh", "as-written" or a unit';
    throw fault("rounding-malformed", `${quote(wish)} is not a wish`, hint);
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
