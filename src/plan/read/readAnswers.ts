import { anyText, word } from "../../document/leaves.ts";
import { fields, list, optional, type Schema } from "../../document/schema.ts";
import { type Fault, type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { PlanAnswer } from "../input.ts";
import { followingPot, movedToServing } from "../share/lines.ts";

/** The schema of answers, before the meals are known. */
export function answersSchema(): Schema<readonly PlanAnswer[]> {
  return list(
    fields<PlanAnswer>({
      meal: anyText(),
      dish: optional(anyText()),
      line: anyText(),
      answer: word(["serving", "pot"]),
    }),
  );
}

/** Sheets by meal and dish, as answers find and leave them. */
export interface Answerable {
  readonly meals: readonly string[];
  dishes(meal: string): ReadonlyMap<string, Sheet> | undefined;
  put(meal: string, dish: string, sheet: Sheet): void;
}

/** Takes answers and changes the sheets that they speak of; what they do not fit is a fault. */
export function takeAnswers(
  faults: Fault[],
  answers: readonly (Partial<PlanAnswer> | undefined)[],
  plan: Answerable,
): void {
  const seen = new Set<string>();
  answers.forEach((answer, i) => {
    if (answer) takeAnswer(faults, answer, ["answers", i], plan, seen);
  });
}

function takeAnswer(
  faults: Fault[],
  { meal, dish: named, line: key, answer }: Partial<PlanAnswer>,
  path: Path,
  plan: Answerable,
  seen: Set<string>,
): void {
  const known = (given: string | undefined, names: readonly string[], field: string, what = field) =>
    given !== undefined && isOneOf(faults, given, names, [...path, field], what);
  if (meal === undefined || !known(meal, plan.meals, "meal")) return;
  const dishes = plan.dishes(meal);
  if (dishes === undefined) return;
  const [only, ...others] = dishes.keys();
  const dish = named === undefined && others.length === 0 ? only : (named ?? "");
  if (dish === undefined || !known(dish, [...dishes.keys()], "dish")) return;
  const s = dishes.get(dish);
  if (s === undefined || key === undefined) return;
  const question = JSON.stringify([meal, dish, key]);
  if (seen.has(question)) {
    const message = "a second answer to one question";
    faults.push({ code: "plan-malformed", path, message, hint: "keep one of them" });
    return;
  }
  seen.add(question);
  // A question can be about these alone.
  const asked = s.plan.lines.flatMap(({ line }) =>
    line.scaling === "per-portion" && line.added === "cooking" ? [line.key] : [],
  );
  if (!known(key, asked, "line", "line that is cooked and the same for everyone") || answer === undefined)
    return;
  const place = s.plan.indexOf(key);
  plan.put(meal, dish, answer === "serving" ? movedToServing(s, place) : followingPot(s, place));
}

/** Answers as they concern other versions of the dishes that they speak of. */
export function withAnswers(
  own: ReadonlyMap<string, ReadonlyMap<string, Sheet>>,
  answers: readonly (Partial<PlanAnswer> | undefined)[],
): ReadonlyMap<string, ReadonlyMap<string, Sheet>> {
  const changed = (meal: string, dish: string, s: Sheet, alone: boolean): Sheet =>
    answers.reduce((now, answer) => {
      if (answer?.meal !== meal || (answer.dish ?? (alone ? dish : undefined)) !== dish) return now;
      const place = now.plan.lines.findIndex(
        ({ line }) => line.key === answer.line && line.scaling === "per-portion" && line.added === "cooking",
      );
      if (place < 0) return now;
      return answer.answer === "serving" ? movedToServing(now, place) : followingPot(now, place);
    }, s);
  return new Map(
    [...own].map(([meal, sheets]) => [
      meal,
      new Map([...sheets].map(([dish, s]) => [dish, changed(meal, dish, s, sheets.size === 1)])),
    ]),
  );
}

function isOneOf(
  faults: Fault[],
  given: string,
  names: readonly string[],
  path: Path,
  what: string,
): boolean {
  if (names.includes(given)) return true;
  const few = names.slice(0, 5).map((name) => quote(name));
  const hint = didYouMean(given, names, few.length === 0 ? "there is none" : `use ${few.join(", ")}`);
  faults.push({ code: "plan-malformed", path, message: `no ${what} is called ${quote(given)}`, hint });
  return false;
}
