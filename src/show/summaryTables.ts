import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { absolute, type Exact, fraction, ONE, over, plus, sum, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { missedOf } from "../plan/missed.ts";
import { sizeText } from "../plan/normalPortion.ts";
import type { Plan } from "../plan/planned.ts";
import type { Portion } from "../plan/portion.ts";
import { inSentence } from "../sheet/names.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { plainFigure } from "./tallyFigure.ts";

/**
 * A plan on one screen: who is off what by how much, what each is served, and what to check. Every other part
 * is there by name.
 */
export function summaryTables(plan: Plan, language: Language): readonly Table[] {
  return [offTable(plan, language), servedTable(plan, language), checkTable(plan, language)];
}

/** What a day's figures are told of, in a summary. */
const TOLD: readonly ComponentId[] = ["energy", "protein"];

function offTable(plan: Plan, language: Language): Table {
  const several = plan.days.length > 1;
  const end = { align: "end" } as const;
  return table({
    title: say(language, "Who is off, and by how much"),
    columns: [
      { key: "person", heading: say(language, "Person") },
      ...TOLD.map((id) => ({ key: id, heading: headingOf(id, several, language), ...end })),
      { key: "met", heading: say(language, "Portions met"), ...end },
      { key: "off", heading: say(language, "Furthest off") },
    ],
    rows: plan.people.map(({ id, name }): Cell[] => {
      const served = plan.portions.filter(({ person, status }) => person === id && status !== "away");
      const missing = served.filter((portion) => missedOf(portion, language).length > 0);
      const met = { met: String(served.length - missing.length), all: String(served.length) };
      return [
        name,
        ...TOLD.map((of) =>
          served.length === 0
            ? ""
            : plainFigure(meanOf(plan, id, of), { language, unit: components[of].unit }),
        ),
        served.length === 0 ? say(language, "away") : say(language, "{met} of {all}", met),
        missing.length > 0 ? furthest(plan, missing, language) : farthestMet(plan, served, language),
      ];
    }),
    notes: several ? meanNotes(plan, language) : [],
  });
}

/** What the days bring on the mean that are wholly eaten in the plan. */
function meanOf(plan: Plan, person: string, of: ComponentId): Tally {
  const all = plan.days.map(({ id }) => plan.day(person, id));
  const days = plan.days.length > 1 ? all.filter(({ isWhole }) => isWhole) : all;
  const share = over(ONE, fraction(BigInt(Math.max(1, days.length))));
  const sheets = days.flatMap(({ portions }) => portions.flatMap(({ dishes }) => [...dishes.values()]));
  return combine(
    components[of].unit,
    sheets.map((s) => [s.total(of), share]),
  );
}

function headingOf(id: ComponentId, several: boolean, language: Language): string {
  const component = say(language, components[id].name);
  const named = component.slice(0, 1).toUpperCase() + component.slice(1);
  return several ? say(language, "{component} a day", { component: named }) : named;
}

/** Days that are not wholly eaten in the plan do not count for a mean: who has any. */
function meanNotes(plan: Plan, language: Language): readonly string[] {
  const own = plan.people.filter(({ id }) => plan.mean(id).others.length > 0).map(({ name }) => name);
  if (own.length === 0) return [];
  const people = own.join(", ");
  return [
    say(language, "days that are not wholly eaten in the plan do not count for the mean: {people}", {
      people,
    }),
  ];
}

/** The miss that is the largest share of what is asked, with its meal. */
function furthest(plan: Plan, missing: readonly Portion[], language: Language): string {
  const [worst] = missing
    .map((portion) => ({ portion, off: offOf(portion) }))
    .sort((a, b) => compareRatios(b.off, a.off));
  if (!worst) return "";
  const [first, ...others] = missedOf(worst.portion, language);
  const found = plan.meals.find(({ id }) => id === worst.portion.meal);
  const isOfDay = first?.ofDay === true && plan.days.length > 1;
  const meal = (isOfDay ? plan.days.find(({ id }) => id === found?.day) : found)?.name ?? worst.portion.meal;
  const text = first?.text ?? "";
  const told = plan.meals.length === 1 ? text : say(language, "{meal}: {text}", { meal, text });
  const more = others.length;
  return more === 0 ? told : say(language, "{text}, and {count} more", { text: told, count: String(more) });
}

/** What is within the tolerance all the same is told by its share: `energy +0.4 %`. */
function farthestMet(plan: Plan, served: readonly Portion[], language: Language): string {
  const all = served.flatMap(({ meal, drift }) =>
    (drift?.demands ?? []).flatMap(({ of, off }) => (off && off.n !== 0n ? [{ meal, of, off }] : [])),
  );
  const [worst] = all.sort((a, b) => compareRatios(absolute(b.off), absolute(a.off)));
  if (!worst) return "";
  const off = `${worst.off.n > 0n ? "+" : ""}${showPercent(worst.off, { significant: 2, language })}`;
  const told = say(language, "{component} {off}", { component: say(language, worst.of), off });
  const meal = nameOf(plan.meals, worst.meal);
  return plan.meals.length === 1 ? told : say(language, "{meal}: {text}", { meal, text: told });
}

function offOf({ drift, misses }: Portion): Exact {
  const measured = drift?.demands.flatMap(({ off, holds }) => (off && !holds ? [absolute(off)] : [])) ?? [];
  if (measured.length > 0) return measured.reduce((a, b) => (compareRatios(a, b) > 0 ? a : b));
  return fraction(BigInt(misses.length));
}

/** People beside each other in a table, at most: of more the least and the most are named. */
const BESIDE = 5;

/** What each is served of each dish, each time, as eaten. */
function servedTable(plan: Plan, language: Language): Table {
  const dishes = dishesOf(plan);
  const end = { align: "end" } as const;
  const grams = (value: Exact | undefined): string =>
    value === undefined ? "" : showFigure(value, { places: 0, unit: "g", language });
  const beside = plan.people.length <= BESIDE;
  const head = [
    { key: "dish", heading: say(language, "Dish") },
    { key: "times", heading: say(language, "Times"), ...end },
  ];
  return table({
    title: say(language, "What is served, each time"),
    columns: beside
      ? [...head, ...plan.people.map(({ id, name }) => ({ key: id, heading: name, ...end }))]
      : [
          ...head,
          { key: "least", heading: say(language, "Least") },
          { key: "most", heading: say(language, "Most") },
          { key: "all", heading: say(language, "In all"), ...end },
        ],
    rows: dishes.map(({ name, times, each, all }): Cell[] => {
      const sorted = [...each].sort(([, a], [, b]) => compareRatios(a, b));
      const told = (found: readonly [string, Exact] | undefined): string =>
        found
          ? say(language, "{grams}, {person}", {
              grams: grams(found[1]),
              person: nameOf(plan.people, found[0]),
            })
          : "";
      return [
        name,
        String(times),
        ...(beside
          ? plan.people.map(({ id }) => grams(each.get(id)))
          : [told(sorted[0]), told(sorted.at(-1)), grams(all)]),
      ];
    }),
    notes: [say(language, "as eaten; where portions of one dish differ from time to time, their mean")],
  });
}

interface ServedDish {
  readonly name: string;
  /** At how many meals somebody is served it. */
  readonly times: number;
  /** By person, one portion on the mean. */
  readonly each: ReadonlyMap<string, Exact>;
  readonly all: Exact;
}

/** The same recipe under one name is one dish, however many meals have it. */
function dishesOf(plan: Plan): readonly ServedDish[] {
  const found = new Map<string, { meals: Set<string>; grams: Map<string, Exact[]> }>();
  const ownOf = (name: string) => {
    const own = found.get(name) ?? { meals: new Set<string>(), grams: new Map<string, Exact[]>() };
    found.set(name, own);
    return own;
  };
  // Dishes that nobody is served stand in no meal's portions, and are told all the same.
  for (const { batch } of plan.meals) for (const { name } of batch.values()) ownOf(name);
  for (const { person, meal, dishes } of plan.portions) {
    for (const { name, masses } of dishes.values()) {
      const { meals, grams } = ownOf(name);
      meals.add(meal);
      grams.set(person, [...(grams.get(person) ?? []), masses.cooked]);
    }
  }
  return [...found].map(([name, { meals, grams }]) => ({
    name,
    times: meals.size,
    each: new Map([...grams].map(([person, all]) => [person, over(sum(all), fraction(BigInt(all.length)))])),
    all: [...grams.values()].reduce((total, all) => plus(total, sum(all)), ZERO),
  }));
}

/** Misses are told up to here, each by itself. */
const TOLD_APART = 5;

function checkTable(plan: Plan, language: Language): Table {
  const rows = checks(plan, language);
  return table({
    title: say(language, "What to check"),
    columns: [
      { key: "what", heading: say(language, "About") },
      { key: "text", heading: say(language, "What") },
    ],
    rows,
    notes: rows.length === 0 ? [say(language, "nothing is known that needs a look")] : [],
  });
}

function checks(plan: Plan, language: Language): readonly Row[] {
  const { avoided, doses, questions } = plan;
  const name = (person: string): string => nameOf(plan.people, person);
  const row = (about: string, text: string): Row => ({ kind: "body", cells: [say(language, about), text] });
  const unknown = groupedBy(
    avoided.unknown,
    ({ person }) => person,
    ({ food }) => foodName(plan, food, language),
  );
  const served = groupedBy(
    avoided.overridden,
    ({ person }) => person,
    ({ name: what }) => say(language, what),
  );
  const past = [...new Set((doses?.past ?? []).map(({ name: food }) => say(language, food)))];
  const nearly = [...new Set((doses?.mayBePast ?? []).map(({ name: food }) => say(language, food)))];
  const cautions = plan.people.flatMap(({ id }): Row[] => {
    const own = plan.knows(id) ? plan.cautions(id).filter(({ because }) => because.length > 0) : [];
    const texts = [...new Set(own.map(({ text }) => say(language, text)))];
    return texts.map((text) =>
      row("Cautions", say(language, "{person}: {text}", { person: name(id), text })),
    );
  });
  const notes = [
    ...new Set(
      plan.portions.flatMap((portion) =>
        portion.kitchenNotes
          .filter(({ code }) => code === "not-rounded" || code === "not-measurable")
          .map(({ text }) => say(language, text)),
      ),
    ),
  ];
  return [
    ...[...unknown].map(([person, foods]) =>
      row(
        "Allergens",
        say(language, "{person} may be served what they avoid, ask about: {foods}", {
          person: name(person),
          foods: some(foods, language),
        }),
      ),
    ),
    ...[...served].map(([person, what]) =>
      row(
        "Allergens",
        say(language, "{person} is served what they avoid, as written down: {foods}", {
          person: name(person),
          foods: some(what, language),
        }),
      ),
    ),
    ...(past.length === 0
      ? []
      : [
          row("Fixed doses", say(language, "above an upper level: {foods}", { foods: some(past, language) })),
        ]),
    ...(nearly.length === 0
      ? []
      : [
          row(
            "Fixed doses",
            say(language, "may be above an upper level: {foods}", { foods: some(nearly, language) }),
          ),
        ]),
    ...levelRows(plan, language),
    ...cautions,
    ...sizeRows(plan, language),
    ...[...new Set(questions.map(({ text }) => say(language, text)))]
      .slice(0, TOLD_APART)
      .map((text) => row("To decide", text)),
    ...notes.slice(0, TOLD_APART).map((text) => row("Kitchen", text)),
  ];
}

/** What the mean of someone's days is above for certain. Single days are told with the levels themselves. */
function levelRows(plan: Plan, language: Language): readonly Row[] {
  return plan.people.flatMap(({ id, name }): Row[] => {
    const past = (plan.days.length > 1 ? (plan.levels(id) ?? []) : []).filter(
      ({ verdict }) => verdict === "past",
    );
    if (past.length === 0) return [];
    const what = past.map(({ of }) => of.map((each) => say(language, components[each].name)).join(" + "));
    const text = say(language, "{person}: above on the mean of the days: {components}", {
      person: name,
      components: some(what, language),
    });
    return [{ kind: "body", cells: [say(language, "Upper levels"), text] }];
  });
}

/** Portions that are far from what their recipe calls a normal one: of each dish who is furthest off. */
function sizeRows(plan: Plan, language: Language): readonly Row[] {
  const found = new Map<string, { times: Exact; who: string; text: string; people: Set<string> }>();
  for (const { person, dishes, sizes } of plan.portions) {
    for (const size of sizes) {
      const { dish, times, flag } = size;
      if (flag === undefined) continue;
      const text = sizeText(size, language);
      const name = dishes.get(dish)?.name ?? dish;
      const key = `${flag} ${name}`;
      const own = found.get(key) ?? { times, who: person, text, people: new Set<string>() };
      own.people.add(person);
      const isFurther = compareRatios(times, own.times) * (flag === "large" ? 1 : -1) > 0;
      found.set(key, isFurther ? { ...own, times, who: person, text } : own);
    }
  }
  const more = found.size - TOLD_APART;
  const told = [...found].slice(0, TOLD_APART).map(([key, { who, text, people }]): Row => {
    const gaps = { dish: key.slice(key.indexOf(" ") + 1), person: nameOf(plan.people, who), text };
    const others = people.size - 1;
    const said =
      others === 0
        ? say(language, "{dish}, {person}: {text}", gaps)
        : say(language, "{dish}, {count} people, {person} the furthest off: {text}", {
            ...gaps,
            count: String(people.size),
          });
    return { kind: "body", cells: [say(language, "Portions"), said] };
  });
  if (more <= 0) return told;
  const rest = say(language, "and {count} dishes more that are far from a normal portion", {
    count: String(more),
  });
  return [...told, { kind: "body", cells: [say(language, "Portions"), rest] }];
}

function groupedBy<T>(
  all: readonly T[],
  key: (each: T) => string,
  text: (each: T) => string,
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>();
  for (const each of all) found.set(key(each), (found.get(key(each)) ?? new Set()).add(text(each)));
  return new Map([...found].map(([own, texts]) => [own, [...texts]]));
}

/** The first few of many. */
function some(names: readonly string[], language: Language): string {
  const list = names.slice(0, TOLD_APART).join("; ");
  const more = names.length - TOLD_APART;
  return more <= 0 ? list : say(language, "{list} and {count} more", { list, count: String(more) });
}

/** A food by its name, as the first dish has it that names it. */
function foodName(plan: Plan, food: string, language: Language): string {
  for (const { batch } of plan.meals) {
    for (const s of batch.values()) {
      if (s.plan.foods.has(food))
        return inSentence(say(language, kitchenNameOf(s.plan.foods.get(food))), language);
    }
  }
  return inSentence(food, language);
}

function nameOf(all: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return all.find((each) => each.id === id)?.name ?? id;
}
