import { drawnSheets } from "../cook/drawnSheets.ts";
import { methodOf } from "../cook/methodOf.ts";
import { CookingSchedule } from "../cook/schedule.ts";
import type { DishServing } from "../cook/served.ts";
import { linesAdded } from "../cook/session.ts";
import { weighed } from "../cook/settledAmount.ts";
import { britishEnglish, type Language, say } from "../document/language.ts";
import { type ComponentId, component } from "../food/components.ts";
import { collect, type Fault, fault, throwIfAny } from "../number/error.ts";
import { type Exact, fraction, ONE, over, sum, times } from "../number/exact.ts";
import { allergensOf } from "../person/portion/allergens.ts";
import type { PortionCaution } from "../person/portion/cautions.ts";
import { type EatenPortion, readEaten } from "../person/portion/eaten.ts";
import { lossesNote } from "../plan/losses.ts";
import { missedOf } from "../plan/missed.ts";
import type { PartServing, Plan, PlannedDish, Portion } from "../plan/plan.ts";
import { moveLines } from "../scale/move.ts";
import { portionInterval } from "../sheet/portionInterval.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { measuresNote } from "../sheet/stated.ts";
import { intervalNotes } from "../show/intervalFigure.ts";
import { amountGroups } from "./amounts.ts";
import type { Card, CardBatch, CardDish, CardMeal, PotShare } from "./card.ts";
import {
  allergenCautions,
  avoidedCautions,
  foodCautions,
  numbered,
  recipeNotes,
  shownCautions,
  standingNotes,
} from "./cautions.ts";
import {
  cardComponents,
  type DayHeldFigures,
  dayRow,
  overCaution,
  ownDay,
  readDay,
  watchedComponents,
} from "./day.ts";
import { energyOf } from "./energy.ts";
import { Footnotes, foodSources, joined } from "./footnotes.ts";
import type { CardCaution, CardOptions } from "./how.ts";
import { potShare } from "./potShare.ts";
import { silentFoods } from "./silent.ts";

/** Gathers what stands on a person's card. Throws as {@link personCard}. */
export function cardOf(of: Plan | CookingSchedule, person: string, how: CardOptions): Card {
  const language = how.language ?? britishEnglish;
  const plan = of instanceof CookingSchedule ? of.plan : of;
  const schedule = of instanceof CookingSchedule ? of : undefined;
  const { portions, dishes, ids, watched, day, days } = read(plan, person, how);
  const eaten = dishes.size === 0 ? undefined : readEaten(dishes, "card-malformed");
  const sheets = how.intervals ? [...dishes.values()] : [];
  const isSure = (id: ComponentId): boolean => eaten?.brings(id).bound === "point";
  const intervals = new Map(
    ids.map((id) => [id, isSure(id) ? portionInterval(sheets, id) : undefined] as const),
  );
  const rows = eaten
    ? ids.map((id) => dayRow(id, eaten.brings(id), day.get(id), language, intervals.get(id)))
    : [];
  const energy = eaten && energyOf(eaten, how.energyBy ?? "atwater-general", language);
  const footnotes = new Footnotes();
  const cautions = numbered(
    cautionsOf(plan, { portions, dishes, eaten, watched, day }, how),
    footnotes,
    language,
  );
  const foods = (eaten?.foods ?? []).map(({ food }) => food);
  return {
    person: plan.people.find((p) => p.id === person)?.name ?? person,
    date: how.date,
    version: how.version,
    about: aboutLines(how, language),
    allergens: eaten ? allergenCautions(allergensOf(dishes), language) : [],
    meals: portions.map((portion) => mealOf(plan, portion, schedule, language)),
    factor: portions[0]?.factor ?? ONE,
    energy: energy?.picture,
    day: rows,
    days,
    against: rows.some(({ share }) => share !== undefined),
    cautions,
    notes: [
      ...measuresNote(
        [...dishes.values()].flatMap((s) => s.values.amounts),
        language,
      ),
      ...intervalNotes([...intervals.values()], language),
      ...lossesNote(dishes.values(), ids, language),
      ...(eaten ? silentFoods(eaten, new Set([...ids, ...(energy?.reads ?? [])]), language) : []),
      ...standingNotes(how.personal ?? "hide", language),
    ],
    sources: [
      ...footnotes.all,
      ...joined([
        ...foodSources(foods, ids),
        ...(energy ? [energy.source] : []),
        ...ids.flatMap((id) => day.get(id)?.sources ?? []),
      ]).filter((source) => !footnotes.all.includes(source)),
    ],
  };
}

interface Read {
  readonly portions: readonly Portion[];
  /** Every dish under a name of its own. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  readonly ids: readonly ComponentId[];
  /** What is held against upper levels: more than is shown. */
  readonly watched: readonly ComponentId[];
  readonly day: ReadonlyMap<ComponentId, DayHeldFigures>;
  /** Of how many days the dishes are the mean. */
  readonly days: number;
}

function read(plan: Plan, person: string, how: CardOptions): Read {
  const faults: Fault[] = [];
  for (const [i, id] of (how.days ?? []).entries()) collect(faults, ["days", i], () => plan.day(person, id));
  throwIfAny(faults);
  const shown = plan.meals.filter((meal) => how.days?.includes(meal.day) ?? true);
  const meals = how.meals ?? shown.map(({ id }) => id);
  if (meals.length === 0) {
    throw fault("card-malformed", "a card of no meals", "give the id of one, or leave `meals` out", [
      "meals",
    ]);
  }
  const portions = meals.flatMap((meal) => collect(faults, [], () => plan.portion(person, meal)) ?? []);
  const ids = [...new Set(how.components ?? cardComponents)];
  for (const [i, id] of ids.entries()) collect(faults, ["components", i], () => component(id));
  const dayOf = new Map(plan.meals.map((meal) => [meal.id, meal.day]));
  const served = portions.filter(({ dishes }) => dishes.size > 0).map(({ meal }) => dayOf.get(meal));
  const days = Math.max(1, new Set(served).size);
  const dishes = dishesOf(portions, days);
  // Nobody's day is looked up for a card that is refused.
  const intakes = how.day || faults.length > 0 ? undefined : plan.intakes(person);
  const watched = [...new Set([...ids, ...watchedComponents])];
  const own = intakes ? ownDay(intakes, watched, how.personal ?? "hide") : [];
  const day = collect(faults, [], () =>
    readDay(how.day ?? own, how.personal ?? "hide", how.language ?? britishEnglish),
  );
  throwIfAny(faults);
  return { portions, dishes, ids, watched, day: day ?? new Map(), days };
}

/** Every dish under a name of its own, however meals and dishes are called; of several days on their mean. */
function dishesOf(portions: readonly Portion[], days: number): ReadonlyMap<string, Sheet> {
  const mean = (s: Sheet): Sheet => (days === 1 ? s : moveLines(s, [], fraction(BigInt(days))));
  return new Map(
    portions.flatMap(({ dishes }, i) => [...dishes].map(([name, s]) => [`${i} ${name}`, mean(s)])),
  );
}

function mealOf(
  plan: Plan,
  portion: Portion,
  schedule: CookingSchedule | undefined,
  language: Language,
): CardMeal {
  const { meal, status, dishes } = portion;
  const missed = missedOf(portion, language).map(({ text }) => text);
  const nothing = say(language, "Nothing is served, since what must hold cannot.");
  const planned = plan.meals.find(({ id }) => id === meal);
  const isOfDay = planned !== undefined && planned.id !== planned.own.id;
  return {
    name: (isOfDay ? planned.own.name : planned?.name) ?? meal,
    day: isOfDay ? (plan.days.find(({ id }) => id === planned.day)?.name ?? planned.day) : undefined,
    missed: status === "not-served" ? [nothing] : status === "away" ? [say(language, "Away.")] : missed,
    dishes: [...dishes].map(([name, s]) =>
      dishOf(s, { planned: plan.dish(meal, name), person: portion.person, schedule }, language),
    ),
    notes: kitchenNotes(plan, portion, language),
  };
}

/**
 * What a kitchen could not measure of what this person gets, each once. What is missed by measuring
 * stands above with its figures; whether a search ended early is no matter for a cook.
 */
function kitchenNotes(
  plan: Plan,
  { person, meal, dishes, kitchenNotes: own }: Portion,
  language: Language,
): readonly string[] {
  const pots = [...dishes.keys()].flatMap((name) => plan.dish(meal, name).serving(person).pot?.notes ?? []);
  // What is done to a pot is the cook's to know.
  const told = [
    ...pots.filter(({ code }) => code !== "not-divided" && code !== "left-in-pot"),
    ...own,
  ].filter(({ code }) => code !== "off-target" && code !== "not-proven");
  return [...new Set(told.map(({ text }) => say(language, text)))];
}

interface Served {
  readonly planned: PlannedDish;
  readonly person: string;
  /** What is cooked when, where it is told: the cook has the pots then. */
  readonly schedule: CookingSchedule | undefined;
}

/** A pot that a cook makes for several is told by what to take of it: only what is one's own is weighed out. */
function dishOf(s: Sheet, { planned, person, schedule }: Served, language: Language): CardDish {
  const serving = planned.serving(person);
  const { pot, added } = serving;
  const isCooked = pot !== undefined && (schedule !== undefined || pot.people.length > 1);
  const keys = (pooled: readonly string[]): readonly string[] => planned.ownKeys(person, pooled);
  const own = new Set(keys((added?.lines ?? []).map(({ key }) => key)));
  const settled = { measured: keys(serving.measured), kitchen: serving.kitchen };
  const { steps, unnamed } = isCooked ? NO_METHOD : methodOf(s, settled.measured, language);
  const lines = unnamed.join("; ");
  return {
    name: s.name,
    first: schedule
      ? []
      : drawnSheets(s, (key) => !isCooked || own.has(key)).map((each) => batchOf(each, language)),
    groups: amountGroups(s, settled, language, (key) => !isCooked || own.has(key)).filter(
      ({ rows }) => rows.length > 0,
    ),
    pots: isCooked ? sharesOf(planned, serving, schedule, language) : [],
    mass: weighed(massEaten(s, planned, serving, schedule), language),
    method: steps,
    notes: [
      ...(unnamed.length === 0 ? [] : [say(language, "Not named in the method: {lines}", { lines })]),
      ...planned.questions.map(({ text }) => text),
    ],
  };
}

function batchOf(s: Sheet, language: Language): CardBatch {
  return {
    name: s.name,
    rows: amountGroups(s, { measured: [], kitchen: undefined }, language).flatMap(({ rows }) => rows),
    mass: weighed(s.masses.cooked, language),
    method: methodOf(s, [], language).steps,
  };
}

const NO_METHOD: ReturnType<typeof methodOf> = { steps: [], unnamed: [] };

/** What one portion weighs on the mean of those that are served, as it is cooked where that is told. */
function massEaten(
  s: Sheet,
  planned: PlannedDish,
  serving: PartServing,
  schedule: CookingSchedule | undefined,
): Exact {
  const found = servedOf(planned, serving, schedule);
  if (found.length === 0) return s.masses.cooked;
  const apart = serving.added && linesAdded(serving.added, "cooking")?.masses.cooked;
  const all = found.map(({ count, portion, added }) =>
    times(count, sum([portion.grams, ...(added ? [added.masses.cooked] : []), ...(apart ? [apart] : [])])),
  );
  return over(sum(all), sum(found.map(({ count }) => count)));
}

/** How often and how large someone is served a dish as it is cooked; empty where no schedule tells. */
function servedOf(
  { meal, name }: PlannedDish,
  { person }: PartServing,
  schedule: CookingSchedule | undefined,
): readonly DishServing[] {
  const all = schedule?.servings ?? [];
  return all.filter((each) => each.person === person && each.meal === meal && each.dish === name);
}

/** What to take each time: as it is cooked, where that is told. */
function sharesOf(
  planned: PlannedDish,
  serving: PartServing,
  schedule: CookingSchedule | undefined,
  language: Language,
): readonly PotShare[] {
  const found = servedOf(planned, serving, schedule);
  if (found.length === 0) {
    return [{ when: "", ...potShare(serving, serving.share, language) }];
  }
  const nameOf = (day: string): string => schedule?.plan.days.find(({ id }) => id === day)?.name ?? day;
  return found.map(({ days, portion }) => ({
    when: found.length === 1 ? "" : days.map((day) => nameOf(day)).join(", "),
    ...potShare(portion, undefined, language),
  }));
}

function aboutLines({ about }: CardOptions, language: Language): readonly string[] {
  return [
    ...(about?.mass === undefined ? [] : [say(language, "Body mass: {mass}", { mass: about.mass })]),
    ...(about?.age === undefined ? [] : [say(language, "Age: {age}", { age: about.age })]),
    ...(about?.conditions ?? []),
  ];
}

interface ServedRead extends Read {
  readonly eaten: EatenPortion | undefined;
}

/** What a day's meals ask to heed together, told once for all days; of single meals what each does. */
function heeded(
  plan: Plan,
  portions: readonly Portion[],
  { meals, days }: CardOptions,
): readonly PortionCaution[] {
  const [person = ""] = portions.map((portion) => portion.person);
  if (meals !== undefined) return portions.flatMap(({ meal }) => plan.cautions(person, meal));
  if (days === undefined || plan.days.length === 1) return plan.cautions(person);
  const all = days.flatMap((day) => plan.cautions(person, day));
  return all.filter(({ text }, i) => all.findIndex((each) => each.text === text) === i);
}

/** What could do harm stands first. */
function cautionsOf(
  plan: Plan,
  { portions, dishes, eaten, watched, day }: Omit<ServedRead, "days" | "ids">,
  how: CardOptions,
): readonly CardCaution[] {
  const language = how.language ?? britishEnglish;
  const personal = how.personal ?? "hide";
  const meeting = heeded(plan, portions, how);
  const own = shownCautions(how.cautions ?? meeting, personal);
  if (!eaten) return own;
  const foods = eaten.foods.map(({ food }) => food);
  return [
    ...watched.flatMap((id) => {
      const text = overCaution(id, eaten.brings(id), day.get(id)?.upper, language);
      return text === undefined ? [] : [{ text }];
    }),
    ...(personal === "show" ? avoidedCautions(plan.avoided, portions, language) : []),
    // Those that foods carry follow, with the names of the foods.
    ...own.filter(({ text }) => !foods.some(({ cautions }) => cautions?.some((each) => each.text === text))),
    ...foodCautions(
      foods,
      {
        told: new Set(meeting.map(({ text }) => text)),
        isKnown: plan.knows(portions[0]?.person ?? ""),
        personal,
      },
      language,
    ),
    ...recipeNotes([...dishes.values()], language),
    ...portions.flatMap(({ notes }) => notes.map(({ text }) => ({ text: say(language, text) }))),
  ];
}
