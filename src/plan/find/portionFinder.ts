import { collect, type Fault, throwIfAny } from "../../number/error.ts";
import { type Exact, isZero, minus, ONE, over, sum, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Quantity } from "../../scale/demand.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { solveTask } from "../../scale/engine/solveTask.ts";
import { taskOf } from "../../scale/fit/read.ts";
import { resultOf } from "../../scale/fit/result.ts";
import { silentLines, splitOf } from "../../scale/linear.ts";
import { factorFor, type Silence } from "../../scale/target.ts";
import { type Answered, ServedPortion } from "../portion.ts";
import { byDish, type ReadMeal } from "../read/readMeal.ts";
import type { ReadPerson, Want } from "../read/readPerson.ts";

/** What a meal brings of a quantity: the same for everyone, and what one factor moves. */
interface MealSplit {
  readonly fixed: Exact;
  readonly moving: Exact;
  readonly silent: boolean;
}

/** Finds portions of one meal; what its dishes bring is summed once for everyone. */
export class PortionFinder {
  readonly #meal: ReadMeal;
  readonly #silence: Silence;
  readonly #splits = new Map<Quantity, MealSplit>();

  constructor(meal: ReadMeal, silence: Silence) {
    this.#meal = meal;
    this.#silence = silence;
  }

  /** Throws the codes of `scale` and `fit`, from where the demands stand in the input. */
  find(person: ReadPerson): ServedPortion | undefined {
    if (person.away.has(this.#meal.id)) return new ServedPortion(person.id, this.#meal, AWAY);
    const want = person.wants.get(this.#meal.id);
    if (!want) return undefined;
    const faults: Fault[] = [];
    const answer = collect(faults, want.path, () => this.#answer(want));
    // Demands for every meal stand in one place: which of them cannot be met has to be said.
    throwIfAny(faults.map((each) => ({ ...each, message: `${this.#meal.name}: ${each.message}` })));
    return answer && new ServedPortion(person.id, this.#meal, answer);
  }

  #answer(want: Want): Answered {
    if (want.kind !== "target") return this.#fitted(want.demands);
    const factor = this.#factor(want.aim);
    const factors = new Map(
      [...this.#meal.dishes].map(([name, { plan }]) => [
        name,
        plan.lines.map(({ line }) => (line.scaling === "per-portion" ? ONE : factor)),
      ]),
    );
    return { status: "met", factor, factors, fit: undefined };
  }

  #factor(aim: (Want & { kind: "target" })["aim"]): Exact {
    if (aim.of === "factor") return aim.factor;
    const { fixed, moving, silent } = this.#split(aim.of);
    const reached = !isZero(moving) && compareRatios(aim.amount, fixed) > 0;
    if (reached && !(silent && this.#silence === "refuse")) return over(minus(aim.amount, fixed), moving);
    // What is refused, and what can be reached, is said there.
    return factorFor([...this.#meal.dishes.values()], aim, this.#silence);
  }

  #split(of: Quantity): MealSplit {
    const made = this.#splits.get(of) ?? this.#makeSplit(of);
    this.#splits.set(of, made);
    return made;
  }

  #makeSplit(of: Quantity): MealSplit {
    const sheets = [...this.#meal.dishes.values()];
    const splits = sheets.map((s) => splitOf(s, of));
    return {
      fixed: sum(splits.map(({ fixed }) => fixed)),
      moving: sum(splits.map(({ moving }) => moving)),
      silent: sheets.some((s) => silentLines(s, of).length > 0),
    };
  }

  #fitted(demands: readonly ReadDemand[]): Answered {
    const { together, fit: how } = this.#meal;
    const solved = solveTask(taskOf(together, demands, how));
    const answer = solved.found ? solved.answer : solved.nearest();
    const fit = resultOf(solved);
    if (!answer) return { status: "not-served", factor: ZERO, factors: new Map(), fit };
    return {
      status: fit.status,
      factor: answer.common,
      factors: byDish(this.#meal, answer.lineFactors),
      fit,
    };
  }
}

/** Nothing is cooked for someone who is not there. */
export const AWAY: Answered = { status: "away", factor: ZERO, factors: new Map(), fit: undefined };
