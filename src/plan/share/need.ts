import { exactText } from "../../number/digits.ts";
import { absolute, type Exact, fraction, greatest, ONE, over, times, ZERO } from "../../number/exact.ts";
import { type Constraint, demandConstraint, quotientAt } from "../../scale/engine/constraints.ts";
import { ONE_PORTION, type Point } from "../../scale/engine/linear.ts";
import {
  amountAt,
  BASE,
  type LineAt,
  lineFactorsAt,
  type Model,
  modelOf,
  nameIn,
} from "../../scale/engine/model.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { type Problem, type Task, taskProblem } from "../../scale/engine/task.ts";
import { Answer, type FitOutcome, missOf } from "../../scale/fit/answer.ts";
import { taskOf } from "../../scale/fit/read.ts";
import { byDish, type ReadMeal } from "../read/readMeal.ts";
import { demandsOf, type Want } from "../read/readPerson.ts";
import type { LineFactors } from "./lineFactors.ts";
import { ties } from "./tiedPortion.ts";

/** Groups of lines that a pot holds, by a line of each; ratios are taken to the first. */
export interface PotGroups {
  readonly dish: string;
  readonly lines: readonly number[];
}

/** Ratios that a portion has already taken from a pot, of a dish that is settled. */
export interface SettledNeed {
  readonly groups: PotGroups;
  readonly ratios: readonly Exact[];
}

/** A tenth to ten times: how far a target's factor may go for other ratios. */
const TEN: Exact = /* @__PURE__ */ fraction(10n);

/** What someone's portion of a meal has to keep to, whatever pot it comes from. */
export class Need {
  readonly problem: Problem;
  readonly #meal: ReadMeal;
  readonly #task: Task;

  /** `factor` is what the portion was multiplied by before; `groups` are what may move against each other. */
  constructor(meal: ReadMeal, want: Want, factor: Exact, groups: PotGroups, settled: readonly SettledNeed[]) {
    this.#meal = meal;
    const task = taskOf(meal.together, want.kind !== "target" ? want.demands : [], meal.fit);
    if (want.kind !== "target") {
      this.#task = task;
      this.problem = taskProblem(task);
    } else {
      const free = [groups, ...settled.map((each) => each.groups)].flatMap((each) =>
        linesAt(task.dishes, each),
      );
      const moving = movingOnly(task, free, factor);
      [this.#task, this.problem] =
        want.aim.of === "factor" ? [task, oneFactor(moving, want.aim.factor)] : oneTarget(meal, moving, want);
    }
    this.problem = withTies(this.problem, settled);
  }

  get pivots(): number | undefined {
    return this.#task.pivots;
  }

  groupsAt(groups: PotGroups): readonly LineAt[] {
    return linesAt(this.problem.model.dishes, groups);
  }

  factors(point: Point): LineFactors {
    return byDish(this.#meal, lineFactorsAt(this.problem.model, point));
  }

  common({ u }: Point): Exact {
    return over(ONE, u);
  }

  /** What was demanded and what the portion brings. */
  outcomes(point: Point): readonly FitOutcome[] {
    return new Answer(this.#task, this.problem, point).outcomes;
  }

  /** The worst miss, as a share of the figure asked. */
  worst(point: Point): Exact {
    return this.problem.constraints.reduce((worst, each) => greatest(worst, shareMissed(each, point)), ZERO);
  }
}

function shareMissed(constraint: Constraint, point: Point): Exact {
  const brings = constraint.soft ? quotientAt(constraint, point) : null;
  if (!brings) return ZERO;
  const miss = missOf(constraint, brings);
  const end = miss.n < 0n ? constraint.least : constraint.most;
  return miss.n === 0n || !end ? ZERO : absolute(over(miss, end));
}

function linesAt(dishes: Model["dishes"], { dish, lines }: PotGroups): readonly LineAt[] {
  const place = Math.max(
    0,
    dishes.findIndex(({ name }) => name === dish),
  );
  return lines.map((line) => ({ dish: place, line }));
}

function withTies({ model, constraints }: Problem, settled: readonly SettledNeed[]): Problem {
  const tied = settled.flatMap(({ groups, ratios }) => ties(model, linesAt(model.dishes, groups), ratios));
  return { model, constraints: [...constraints, ...tied] };
}

/** One factor moves all but the groups of a pot, every dish as a whole with it. */
function movingOnly({ dishes, ranges }: Task, free: readonly LineAt[], factor: Exact): Model {
  const isFree = (dish: number, line: number): boolean =>
    free.some((at) => at.dish === dish && at.line === line);
  const together = dishes.map(({ name = "" }) => [name, { least: ONE, most: ONE }] as const);
  const common = { least: over(factor, TEN), most: times(factor, TEN) };
  const tied = { ...ranges, common, parts: new Map([...ranges.parts, ...together]) };
  const kept = modelOf(dishes, tied, [])
    .movers.filter(({ dish, lines }) => !lines.some((line) => isFree(dish, line)))
    .flatMap(({ dish, lines }) => lines.map((line) => ({ dish, line })));
  return modelOf(dishes, tied, kept);
}

/** A target is met to the letter, by the portion's size. */
function oneTarget(meal: ReadMeal, model: Model, want: Want): [Task, Problem] {
  const task = taskOf(
    meal.together,
    demandsOf(want).map((demand) => ({ ...demand, firm: true })),
    meal.fit,
  );
  const constraints = task.asked.map(({ demand, brought }) => demandConstraint(model, demand, brought));
  return [task, { model, constraints }];
}

/** A factor asks for the recipe's own amounts, so many times, of every group. */
function oneFactor(model: Model, factor: Exact): Problem {
  const groups = [BASE, ...model.movers.keys()];
  return {
    model,
    constraints: groups.flatMap((place): Constraint[] => {
      const at = lineOf(model, place);
      const dish = at && model.dishes[at.dish];
      if (!at || !dish) return [];
      const key = dish.sheet.plan.lines[at.line]?.line.key ?? "";
      const on = { kind: "line", name: nameIn(dish, key), ...at } as const;
      return [{ on, value: amountAt(place, ONE), per: ONE_PORTION, least: factor, most: factor, soft: true }];
    }),
  };
}

function lineOf({ places }: Model, place: number): LineAt | undefined {
  for (const [dish, own] of places.entries()) {
    const line = own.indexOf(place);
    if (line >= 0) return { dish, line };
  }
  return undefined;
}

/** The ratios of groups to the first; nothing where there is none of that. */
export function ratiosIn(factors: LineFactors, { dish, lines }: PotGroups): readonly Exact[] | undefined {
  const own = factors.get(dish);
  const [first, ...others] = lines.map((line) => own?.[line] ?? ZERO);
  if (!first || first.n === 0n) return undefined;
  return others.map((factor) => over(factor, first));
}

/** What someone asked, as text: the same where the same is needed. */
export function wantText(want: Want): string {
  if (want.kind !== "target") return want.demands.map(demandKey).join("; ");
  const { aim } = want;
  return aim.of === "factor" ? `factor ${exactText(aim.factor)}` : `${aim.of} ${exactText(aim.amount)}`;
}

/** Figures unrounded, and in whatever unit they were written. */
function demandKey({ subject: { kind, of }, least, most, firm }: ReadDemand): string {
  const ends = [least, most].map((end) => (end ? exactText(end) : "-"));
  return [kind, String(of), ...ends, String(firm)].join(" ");
}
