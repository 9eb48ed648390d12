import { collect, type Fault, throwIfAny } from "../number/error.ts";
import { compare, type Fraction, isZero, minus, ONE, over, sum, ZERO } from "../number/fraction.ts";
import type { Demand, Quantity } from "../scale/demand.ts";
import {
  type FitMet,
  type FitMetTogether,
  type FitOutOfReach,
  type FitOutOfReachTogether,
  fit,
} from "../scale/fit.ts";
import { silentLines, splitOf } from "../scale/linear.ts";
import { factorFor, type Silence } from "../scale/target.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Answered, type PortionFit, ServedPortion } from "./portion.ts";
import type { ReadMeal } from "./readMeal.ts";
import type { ReadPerson, Want } from "./readPerson.ts";

/** What a meal brings of a quantity: the same for everyone, and what one factor moves. */
interface MealSplit {
  readonly fixed: Fraction;
  readonly moving: Fraction;
  readonly silent: boolean;
}

/** Finds portions of one meal; what its dishes bring is summed once for everyone. */
export class PortionFinder {
  readonly #meal: ReadMeal;
  readonly #silence: Silence;
  readonly #splits = new Map<Quantity, MealSplit>();
  readonly #isDose: ReadonlyMap<string, readonly boolean[]>;

  constructor(meal: ReadMeal, silence: Silence) {
    this.#meal = meal;
    this.#silence = silence;
    this.#isDose = new Map(
      [...meal.dishes].map(([name, s]) => [
        name,
        s.plan.lines.map(({ line }) => line.scaling === "per-portion"),
      ]),
    );
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
    if (want.kind === "demands") return this.#fitted(want.demands);
    const factor = this.#factor(want.aim);
    const factors = new Map(
      [...this.#isDose].map(([name, doses]) => [name, doses.map((isDose) => (isDose ? ONE : factor))]),
    );
    return { status: "met", factor, factors, fit: undefined };
  }

  #factor(aim: (Want & { kind: "target" })["aim"]): Fraction {
    if (aim.of === "factor") return aim.factor;
    const { fixed, moving, silent } = this.#split(aim.of);
    const reached = !isZero(moving) && compare(aim.amount, fixed) > 0;
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

  #fitted(demands: readonly Demand[]): Answered {
    const { dishes, alone, fit: how } = this.#meal;
    const [found, served] = alone
      ? fittedAlone(alone.name, fit(alone.sheet, demands, how))
      : fittedTogether(fit(Object.fromEntries(dishes), demands, how));
    const factor = found.factor ?? ZERO;
    const factors = served.map(([name, s]): [string, readonly Fraction[]] => [
      name,
      factorsBetween(dishes.get(name) ?? s, s, factor),
    ]);
    const status = served.length === 0 ? "not-served" : found.status;
    return { status, factor, factors: new Map(factors), fit: found };
  }
}

/** Nothing is cooked for someone who is not there. */
const AWAY: Answered = { status: "away", factor: ZERO, factors: new Map(), fit: undefined };

type Served = readonly (readonly [string, Sheet])[];

function fittedAlone(name: string, found: FitMet | FitOutOfReach): readonly [PortionFit, Served] {
  const s = found.status === "met" ? found.sheet : found.nearest;
  return [found, s ? [[name, s]] : []];
}

function fittedTogether(found: FitMetTogether | FitOutOfReachTogether): readonly [PortionFit, Served] {
  return [found, Object.entries((found.status === "met" ? found.sheets : found.nearest) ?? {})];
}

/** What each line was multiplied by; a line of nothing says nothing of it, and goes with the rest. */
function factorsBetween(before: Sheet, after: Sheet, common: Fraction): readonly Fraction[] {
  return after.values.grams.map((grams, i) => {
    const was = before.values.grams[i] ?? ZERO;
    return isZero(was) ? common : over(grams, was);
  });
}
