import { type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { PlanAnswer, PotChoice } from "../input.ts";
import { followingPot, movedToServing } from "../share/lines.ts";
import { type Given, kindOf, type PlanFaults } from "./planFaults.ts";

const ANSWER: readonly string[] = ["meal", "dish", "line", "answer"] satisfies (keyof PlanAnswer)[];
const CHOICES: readonly PotChoice[] = ["serving", "pot"];

/** Sheets by meal and dish, as answers find and leave them. */
export interface Answerable {
  readonly meals: readonly string[];
  dishes(meal: string): ReadonlyMap<string, Sheet> | undefined;
  put(meal: string, dish: string, sheet: Sheet): void;
}

/** Reads answers and changes the sheets that they speak of; what they do not fit is a fault. */
export function readAnswers(faults: PlanFaults, given: unknown, plan: Answerable): void {
  if (given === undefined) return;
  const list = faults.list(given, ["answers"], "the list of answers", "give a list of answers");
  const seen = new Set<string>();
  list?.forEach((value, i) => {
    const path: Path = ["answers", i];
    const answer = faults.record(value, path, "an answer", ANSWER, "name the meal, the line, and the answer");
    if (answer) readAnswer(faults, answer, path, plan, seen);
  });
}

function readAnswer(faults: PlanFaults, given: Given, path: Path, plan: Answerable, seen: Set<string>): void {
  const choice = CHOICES.find((each) => each === given.answer);
  if (choice === undefined) {
    faults.refuse([...path, "answer"], `the answer is ${kindOf(given.answer)}`, 'write "serving" or "pot"');
  }
  const meal = oneOf(faults, given.meal, plan.meals, [...path, "meal"], "meal");
  const dishes = meal === undefined ? undefined : plan.dishes(meal);
  if (meal === undefined || dishes === undefined) return;
  const names = [...dishes.keys()];
  const dish =
    given.dish === undefined && names.length === 1
      ? names[0]
      : oneOf(faults, given.dish, names, [...path, "dish"], "dish");
  const s = dish === undefined ? undefined : dishes.get(dish);
  if (dish === undefined || s === undefined) return;
  const key = typeof given.line === "string" ? JSON.stringify([meal, dish, given.line]) : "";
  if (seen.has(key)) {
    faults.refuse(path, "a second answer to one question", "keep one of them");
    return;
  }
  if (key !== "") seen.add(key);
  const line = lineAsked(faults, given.line, s, [...path, "line"]);
  if (line === undefined || choice === undefined) return;
  plan.put(meal, dish, choice === "serving" ? movedToServing(s, line) : followingPot(s, line));
}

/** Where the line stands, which has to be one that a question can be about. */
function lineAsked(faults: PlanFaults, given: unknown, s: Sheet, path: Path): number | undefined {
  const asked = s.plan.lines.flatMap(({ line }) =>
    line.scaling === "per-portion" && line.added === "cooking" ? [line.key] : [],
  );
  const line = oneOf(faults, given, asked, path, "line that is cooked and the same for everyone");
  return line === undefined ? undefined : s.plan.indexOf(line);
}

function oneOf(
  faults: PlanFaults,
  given: unknown,
  names: readonly string[],
  path: Path,
  what: string,
): string | undefined {
  const found = names.find((name) => name === given);
  if (found !== undefined) return found;
  const otherwise =
    names.length === 0
      ? "there is none"
      : `use ${names
          .slice(0, 5)
          .map((name) => quote(name))
          .join(", ")}`;
  const hint = typeof given === "string" ? didYouMean(given, names, otherwise) : otherwise;
  return faults.refuse(path, `no ${what} is called ${quote(given)}`, hint);
}
