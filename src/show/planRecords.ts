import { type ComponentId, components } from "../food/components.ts";
import { sum } from "../number/exact.ts";
import { compareText } from "../number/text.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { PersonMean } from "../plan/mean.ts";
import type { AboutPeople } from "../plan/people/about.ts";
import type { Plan, PlannedMeal } from "../plan/planned.ts";
import type { Portion } from "../plan/portion.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import { demandColumns } from "./fitDemandRecords.ts";
import { driftRows } from "./measuredRecords.ts";
import { aboutColumns, aboutRows } from "./peopleRecords.ts";
import { lineColumns, lineRows, sumRows, type Whose, writtenRows } from "./sheetRecords.ts";
import { cellRow, pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { type WantedRows, wanted } from "./wanted.ts";

/** Columns of a plan's records beside those of every result. */
const OWN: readonly string[] = [...lineColumns, "pot", "status", ...demandColumns, ...aboutColumns];

/**
 * A plan as tidy rows: each person's portions, line by line, dish by dish (`portion`) and together (`meal`);
 * what they eat besides; of several meals the `day`, and of several days the `mean` with the `least-day` and the
 * `most-day`; all that is cooked and added, without a person; pots and what of them each gets; what measurable
 * amounts cost (`drift`); then what is missed, avoided and to be heeded, which are words and no figures. `meal`
 * is what a plan is asked by, with the day's id before it where there is a menu of days.
 */
export function planTidy(plan: Plan, asked: Asked): Tidy {
  return { own: OWN, rows: planRows(plan, plan.about(), wanted(asked, [], ownComponentsIn(plan))) };
}

/** Components of its dishes' foods that the registry lacks. */
function ownComponentsIn(plan: Plan): readonly ComponentId[] {
  const sheets = plan.meals.flatMap(({ batch }) => [...batch.values()]);
  return [...new Set(sheets.flatMap((s) => s.plan.ownComponents))].sort(compareText);
}

function* planRows(plan: Plan, about: AboutPeople, want: WantedRows): Generator<TidyRow> {
  const days = new Map(plan.meals.map(({ id, own, day }) => [id, id === own.id ? undefined : day]));
  const dayOf = (meal: string): string | undefined => days.get(meal);
  for (const portion of plan.portions) yield* portionRows(plan, portion, dayOf(portion.meal), want);
  for (const { id } of plan.people) yield* daysRows(plan, id, want);
  for (const meal of plan.meals) {
    const day = dayOf(meal.id);
    for (const dish of meal.dishes.values()) yield* dishRows(meal, dish, day, want);
    const brings = (id: ComponentId): Tally => plan.holds(meal.id, id);
    yield* togetherRows({ day, meal: meal.id, row: "total" }, [...meal.batch.values()], brings, want);
  }
  for (const row of [
    ...plan.portions.flatMap((each) => [...driftRows(each)]),
    ...aboutRows(plan.portions, about),
  ])
    yield { ...row, day: row.day ?? dayOf(row.meal ?? row.head?.meal ?? "") };
}

/** What one person is served of one meal: of who is away nothing, as `status` says. */
function* portionRows(
  plan: Plan,
  portion: Portion,
  day: string | undefined,
  want: WantedRows,
): Generator<TidyRow> {
  const { person, meal, status } = portion;
  const who = { person, day, meal, own: { status } };
  for (const [dish, s] of portion.dishes) {
    const whose = { ...who, dish, sheet: s.name };
    for (const i of s.lines.keys()) yield* lineRows(s, i, whose, want);
    yield* sumRows(s, "portion", whose, want);
  }
  const brings = (id: ComponentId): Tally => plan.brings(person, meal, id);
  yield* togetherRows({ ...who, row: "meal" }, [...portion.dishes.values()], brings, want);
}

/** What one person eats besides, each of their days, and the mean of them. */
function* daysRows(plan: Plan, person: string, want: WantedRows): Generator<TidyRow> {
  const isMenu = plan.meals.some(({ id, own }) => id !== own.id);
  for (const { id } of plan.days) {
    const day = plan.day(person, id);
    const on = { person, day: isMenu ? id : undefined };
    for (const { name, sheet: s, meal } of day.besides) {
      const whose: Whose = { ...on, meal, dish: name, sheet: s.name, own: { status: "besides" } };
      for (const i of s.lines.keys()) yield* lineRows(s, i, whose, want);
      yield* sumRows(s, "portion", whose, want);
    }
    if (isMenu || plan.meals.length > 1 || day.besides.length > 0) {
      const head = { ...on, row: "day", own: { status: day.status } };
      yield* togetherRows(head, [...day.dishes.values()], (of) => day.brings(of), want);
    }
  }
  if (plan.days.length > 1) yield* meanRows(plan.mean(person), want);
}

/** The mean of the days that are wholly eaten, and between what the least and the most of them lie. */
function* meanRows(mean: PersonMean, want: WantedRows): Generator<TidyRow> {
  const { person } = mean;
  const head = { person, row: "mean", what: "eaten" };
  for (const id of want.ids) yield cellRow(head, id, mean.brings(id));
  for (const id of want.ids) {
    const { unit } = components[id];
    const ends = { "least-day": mean.least(id), "most-day": mean.most(id) };
    for (const [row, { day, least, most }] of Object.entries(ends))
      yield { person, day, row, what: "eaten", component: id, unit, bound: "between", least, most };
  }
}

/** Dishes together. */
function* togetherRows(
  head: TidyRow,
  sheets: readonly Sheet[],
  brings: (id: ComponentId) => Tally,
  want: WantedRows,
): Generator<TidyRow> {
  const eaten = { ...head, what: "eaten" };
  if (want.has("mass"))
    yield { ...eaten, component: "mass", ...pointRow(sum(sheets.map((s) => s.masses.cooked)), "g") };
  for (const id of want.ids) yield cellRow(eaten, id, brings(id));
}

/** A dish for everyone: all that goes in, each pot, and what each person gets of it. */
function* dishRows(
  meal: PlannedMeal,
  dish: PlannedDish,
  day: string | undefined,
  want: WantedRows,
): Generator<TidyRow> {
  const whose: Whose = { day, meal: meal.id, dish: dish.name, sheet: dish.batch.name };
  for (const i of dish.batch.lines.keys()) yield* lineRows(dish.batch, i, whose, want);
  yield* sumRows(dish.batch, "total", whose, want);
  for (const [at, { sheet: s }] of dish.pots.entries()) {
    const pot = { ...whose, what: "pot", own: { pot: String(at + 1) } };
    for (const i of s.lines.keys()) yield* writtenRows(s, i, pot, want);
    yield { ...pot, row: "total", component: "mass", ...pointRow(s.masses.cooked, "g") };
  }
  for (const serving of dish.servings) yield* servingRows(dish, serving, whose, want);
}

/** One person's part of a dish: by mass, by volume and as a share of the pot, and what is added to it. */
function* servingRows(
  dish: PlannedDish,
  serving: PartServing,
  { own: _, ...whose }: Whose,
  want: WantedRows,
): Generator<TidyRow> {
  const { person, pot, share, grams, millilitres, weighed, added } = serving;
  const head = { ...whose, person, row: "portion" };
  if (pot) {
    const own = { pot: String(dish.pots.indexOf(pot) + 1) };
    const of = { ...head, component: "mass", own };
    yield { ...of, what: "share-of-pot", ...pointRow(share, "") };
    yield { ...of, what: "from-pot", ...pointRow(grams, "g") };
    if (millilitres) yield { ...of, what: "from-pot", ...pointRow(millilitres, "ml") };
    if (weighed) yield { ...of, what: "weighed-out", ...pointRow(weighed.value, weighed.unit) };
  }
  if (!added) return;
  for (const i of added.lines.keys()) yield* writtenRows(added, i, { ...whose, person, what: "added" }, want);
}
