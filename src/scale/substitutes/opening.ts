import type { FoodInput } from "../../food/food.ts";
import { showFigure } from "../../measure/showFigure.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Quantity } from "../demand.ts";
import type { FoodsLeftOut, Opening } from "./leftOut.ts";
import { matchName, tryFood } from "./match.ts";
import type { ReadSubstitutes } from "./read.ts";
import { closestFirst, substituteOf } from "./substituteOf.ts";

interface Search {
  readonly s: Sheet;
  readonly i: number;
  readonly read: ReadSubstitutes;
  /** Candidates that hold nothing of what is to be avoided. */
  readonly free: readonly FoodInput[];
  readonly left: FoodsLeftOut;
}

/** Foods of other groups that are looked at, so that a table of any length comes back. */
const MOST_TRIED = 500;
const MOST_NAMED = 3;
/** What raises a dough seasons nothing, whatever salt it holds. */
const RAISING = "leavening";

/** Says why no food was found, and looks for what would do: another match, foods of other groups. */
export function openingOf(search: Search): Opening {
  const { read, left } = search;
  const others = [...otherMatches(search), ...otherGroups(search)];
  const told =
    left.unknown.length === 0
      ? []
      : [`find out which allergens these hold, and say so of them: ${left.unknown.join(", ")}`];
  const opens = [...others, ...told];
  const none = "add foods to the table, or match something else that the line brings";
  return { why: whyNone(search, read.match), opens: opens.length > 0 ? opens : [none] };
}

function whyNone({ s, i, read, left }: Search, match: Quantity): string {
  const food = s.plan.lines[i]?.source.food?.input;
  const { candidates, isNamed } = read;
  if (candidates.length === 0) {
    if (isNamed) return "no other food is named to choose among";
    if (food?.group === undefined) return "the food has no group, so that none is known to be like it";
    return `the table has no other food of its group and state (${food.group}${food.state ? `, ${food.state}` : ""})`;
  }
  const counts: [number, string][] = [
    [left.avoided.length, "with what is avoided"],
    [left.unknown.length, "of unknown allergens"],
    [left.without.length, `without ${matchName(match)}, or silent on it`],
    [left.outside.length, "of which a cook would not serve so much, or so little"],
  ];
  const parts = counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`);
  return `none is left of ${candidates.length}: ${parts.join("; ")}`;
}

function otherMatches({ s, i, read, free }: Search): string[] {
  const matches: readonly Quantity[] = ["protein", "energy", "mass"];
  return matches.flatMap((match) => {
    if (match === read.match) return [];
    const names = free.flatMap((food) => named(s, i, food, match));
    return names.length === 0 ? [] : [`match ${matchName(match)}: ${names.slice(0, MOST_NAMED).join(", ")}`];
  });
}

/** Foods of any group, in the line's state or as sold, the closest first. */
function otherGroups({ s, i, read }: Search): string[] {
  const { foods, lines } = s.plan;
  const own = lines[i]?.source.food?.input;
  const tried = new Set(read.candidates.map(({ id }) => id));
  const isOther = ({ id, state, group, allergens }: FoodInput): boolean =>
    id !== own?.id &&
    !tried.has(id) &&
    (state === own?.state || state === "as sold") &&
    (group !== RAISING || own?.group === RAISING) &&
    (read.avoid.length === 0 || (allergens !== undefined && !allergens.some((a) => read.avoid.includes(a))));
  const found = foods.ids
    .map((id) => foods.get(id))
    .filter(isOther)
    .slice(0, MOST_TRIED)
    .flatMap((food) => {
      const made = tryFood(s, i, food, read.match);
      if (made.is !== "matched") return [];
      return [substituteOf(s, i, food, made.grams, read)];
    })
    .sort(closestFirst);
  const names = found.slice(0, MOST_NAMED).map(({ food }) => JSON.stringify(food));
  return names.length === 0 ? [] : [`look beyond its group: among: [${names.join(", ")}]`];
}

function named(s: Sheet, i: number, food: FoodInput, match: Quantity): string[] {
  const made = tryFood(s, i, food, match);
  return made.is === "matched" ? [`${food.id} (${showFigure(made.grams, { unit: "g" })})`] : [];
}
