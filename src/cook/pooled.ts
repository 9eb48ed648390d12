import { type Exact, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { MealFigures, rowAt } from "../plan/measure/figures.ts";
import type { PotAsked } from "../plan/measure/potAsked.ts";
import type { PlannedMeal } from "../plan/planned.ts";
import type { Eater, EaterGroup } from "../plan/share/groups.ts";
import { potGroups } from "../plan/share/whoSharesAPot.ts";
import { Eating } from "./eating.ts";

/** A dish of one meal of a menu, and who eats of it when. */
export interface Part {
  readonly meal: PlannedMeal;
  readonly dish: PlannedDish;
  readonly eating: Eating;
}

/** Who eats, and of which meal: of a dish that is cooked for several meals one person eats several times. */
export interface Who {
  readonly person: string;
  readonly meal: string;
}

/** One dish of several meals, as if it were of one whose eaters are people at meals. */
export interface PooledDish {
  readonly meal: PlannedMeal;
  readonly dish: PlannedDish;
  readonly eating: Eating;
  readonly who: (eater: string) => Who;
  readonly eaterOf: (person: string, meal: string) => string | undefined;
  /** Whether someone's firm demands hold, whatever the pot is rounded to. */
  readonly keeps: (eater: string, factors: readonly Exact[]) => boolean;
}

/** Pools one dish over the meals that have it. */
export function pooled(parts: readonly Part[]): PooledDish | undefined {
  const [first] = parts;
  if (!first) return undefined;
  const at = new Map(
    parts.flatMap((part) => part.dish.servings.map(({ person }) => [idOf(person, part), { person, part }])),
  );
  const { name } = first.dish;
  const eaters = parts.flatMap((part) =>
    part.dish.groups().flatMap((group) => group.eaters.map((eater, i) => asFound(group, eater, i, part))),
  );
  const groups = potGroups(first.dish.base(), eaters).map((group) => measuredAs(group, parts));
  const dish = first.dish.with({ eaters, groups });
  const days = [...new Set(parts.flatMap(({ eating }) => eating.days))].sort((a, b) => a - b);
  const eating = new Eating({
    eaten: days,
    people: [...at.keys()],
    servings: (eater) => {
      const own = at.get(eater);
      return own ? own.part.eating.servings(own.person) : 0n;
    },
    isAway: (eater, day) => {
      const own = at.get(eater);
      return !own?.part.eating.daysOf(own.person).includes(day);
    },
  });
  const meal: PlannedMeal = {
    ...first.meal,
    batch: new Map([[name, dish.batch]]),
    dishes: new Map([[name, dish]]),
  };
  return {
    ...{ meal, dish, eating },
    who: (eater) => {
      const { person = eater, part = first } = at.get(eater) ?? {};
      return { person, meal: part.meal.id };
    },
    eaterOf: (person, meal) => {
      const part = parts.find((each) => each.meal.id === meal);
      const id = part && idOf(person, part);
      return id !== undefined && at.has(id) ? id : undefined;
    },
    keeps: (eater, factors) => {
      const own = at.get(eater);
      return !own || keepsFirm(own.person, own.part, factors);
    },
  };
}

function idOf(person: string, { meal }: Pick<Part, "meal">): string {
  return JSON.stringify([person, meal.id]);
}

/** What goes into a pot as it was found, before one meal's pot was measured for itself; additions as they were measured. */
function asFound({ pot, measured }: EaterGroup, eater: Eater, i: number, part: Part): Eater {
  const before = measured?.before[i]?.factors ?? eater.factors;
  const inPot = new Set(pot);
  const pick = <T>(line: number, own: T, other: T): T => (inPot.has(line) ? other : own);
  const amounts = eater.amounts?.map((own, line) => pick(line, own, undefined));
  return {
    ...eater,
    person: idOf(eater.person, part),
    factors: eater.factors.map((own, line) => pick(line, own, before[line] ?? own)),
    ...(amounts && { amounts }),
  };
}

/** Ratios alone are held to: what each person asks is judged meal by meal. */
function measuredAs(group: EaterGroup, parts: readonly Part[]): EaterGroup {
  const found = parts.flatMap(({ dish }) =>
    dish.groups().flatMap(({ measured }) => measured?.asked ?? []),
  )[0];
  const base = parts[0]?.dish.base();
  if (!found || !base || group.pot.length === 0) return group;
  const name = parts[0]?.dish.name;
  const heldTo = new Map(group.eaters.map(({ person }) => [person, { person, demands: [], standing: [] }]));
  const figures = new MealFigures([{ name, sheet: base }], found.figures.system);
  const asked: PotAsked = { ...found, figures, heldTo };
  const measured = {
    before: group.eaters,
    amounts: [],
    weighed: new Map(),
    rest: undefined,
    left: ZERO,
    notes: [],
    asked,
  };
  return { ...group, measured };
}

/** Whether what must hold for someone at a meal does, with other amounts of one of its dishes. */
function keepsFirm(person: string, { meal, dish }: Part, factors: readonly Exact[]): boolean {
  const groups = [...meal.dishes].map(([name, each]) => [name, each.groups()] as const);
  const asked = groups.flatMap(([, own]) => own.flatMap(({ measured }) => measured?.asked ?? []))[0];
  const held = asked?.heldTo.get(person);
  if (!asked || !held) return true;
  const plate = new Map(
    groups.flatMap(([name, own]): [string, readonly Exact[]][] => {
      const eater = own.flatMap(({ eaters }) => eaters).find((each) => each.person === person);
      return eater ? [[name, name === dish.name ? factors : eater.factors]] : [];
    }),
  );
  return held.demands
    .filter(({ firm }) => firm)
    .flatMap((demand) => asked.figures.rows(demand))
    .every((row) => {
      const side = compareRatios(rowAt(row, plate), row.end);
      return row.side === "most" ? side <= 0 : side >= 0;
    });
}
