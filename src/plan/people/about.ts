import { exactText } from "../../number/digits.ts";
import { fraction, ONE, over, ZERO } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import type { ReferenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import { type PortionCaution, portionCautions } from "../../person/portion/cautions.ts";
import {
  DoseCheck,
  type DosedPerson,
  type DoseRow,
  dosedPerson,
  doseRows,
} from "../../person/portion/doses.ts";
import { EatenPortion } from "../../person/portion/eaten.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { combine } from "../../sheet/tally.ts";
import type { BesideOfDay } from "../find/dayTask.ts";
import { Watch } from "../find/watch.ts";
import type { ReadBody } from "../read/readBody.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { ReadPerson } from "../read/readPerson.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { type Names, PlanAvoided } from "./avoided.ts";
import { type DosedDay, dosesOfDays } from "./dosesOfDays.ts";

/** A portion, as far as it concerns whoever eats it. */
export interface EatenBy {
  readonly person: string;
  readonly meal: string;
  factors(): LineFactors;
  readonly dishes: ReadonlyMap<string, Sheet>;
}

interface AboutOf {
  readonly people: readonly ReadPerson[];
  readonly meals: readonly ReadMeal[];
  /** With the ids of their meals. */
  readonly days: readonly { readonly id: string; readonly meals: readonly string[] }[];
  readonly portions: readonly EatenBy[];
  readonly besides: (person: string, day: string) => readonly BesideOfDay[];
}

/** What a plan knows of the people it feeds. All of it is worked out when first looked at. */
export class AboutPeople {
  readonly avoided: PlanAvoided;
  readonly #people: ReadonlyMap<string, ReadPerson>;
  readonly #meals: ReadonlyMap<string, ReadMeal>;
  readonly #portions: readonly EatenBy[];
  readonly #days: AboutOf["days"];
  readonly #besides: AboutOf["besides"];
  #byKey: ReadonlyMap<string, EatenBy> | undefined;
  #doses: DoseCheck | undefined;

  constructor({ people, meals, days, portions, besides }: AboutOf) {
    this.#people = new Map(people.map((one) => [one.id, one]));
    this.#meals = new Map(meals.map((meal) => [meal.id, meal]));
    this.#portions = portions;
    this.#days = days;
    this.#besides = besides;
    this.avoided = new PlanAvoided(new Watch(people, meals), portions, this.names);
  }

  get names(): Names {
    return {
      person: (id) => this.#people.get(id)?.name ?? id,
      meal: (id) => this.#meals.get(id)?.name ?? id,
      line: (meal, dish, key) => ((this.#meals.get(meal)?.dishes.size ?? 1) > 1 ? `${dish}/${key}` : key),
    };
  }

  /** Those whose body the plan was told, by id. */
  get bodies(): ReadonlyMap<string, ReadBody> {
    return new Map(
      [...this.#people].flatMap(([id, { body }]): [string, ReadBody][] => (body ? [[id, body]] : [])),
    );
  }

  portionsOf(person: string): readonly EatenBy[] {
    return this.#portions.filter((each) => each.person === person);
  }

  intakes(person: string): ReferenceIntakes | undefined {
    return this.#people.get(person)?.body?.intakes;
  }

  /** What to heed in portions that one person eats. */
  cautions(person: string, portions: readonly EatenBy[]): readonly PortionCaution[] {
    const served = portions.filter(({ dishes }) => dishes.size > 0);
    if (served.length === 0) return [];
    return portionCautions(this.#eaten(served, portions.length), this.#people.get(person)?.body?.facts);
  }

  /**
   * What to heed on a day, all meals and what is eaten besides together; of several days each thing once,
   * with the days, and what is brought on the mean of those.
   */
  cautionsOfDays(person: string, ids: readonly string[]): readonly PortionCaution[] {
    const facts = this.#people.get(person)?.body?.facts;
    const found = new Map<string, { readonly day: string; readonly caution: PortionCaution }[]>();
    const by = this.#days.length > 1 ? "own" : this.#meals.size > 1 ? "meal" : "dish";
    for (const { id, eaten } of this.#daysOf(person, by)) {
      if (!ids.includes(id) || eaten.meals.length === 0) continue;
      const all = new EatenPortion([...eaten.meals, ...this.#besides(person, id)]);
      for (const caution of portionCautions(all, facts)) {
        const key = JSON.stringify([caution.code, caution.text, caution.because]);
        found.set(key, [...(found.get(key) ?? []), { day: id, caution }]);
      }
    }
    return [...found.values()].flatMap((own): PortionCaution[] => {
      const [first] = own;
      if (!first) return [];
      const days = this.#days.length > 1 ? { days: own.map(({ day }) => day) } : {};
      if (own.length === 1) return [{ ...first.caution, ...days }];
      const share = over(ONE, fraction(BigInt(own.length)));
      return [
        {
          ...first.caution,
          ...days,
          lines: [...new Set(own.flatMap(({ caution }) => caution.lines))],
          amounts: first.caution.amounts.map(({ of, amount }) => ({
            of,
            amount: combine(
              amount.unit,
              own.flatMap(({ caution }) =>
                caution.amounts.filter((each) => each.of === of).map((each) => [each.amount, share] as const),
              ),
            ),
          })),
        },
      ];
    });
  }

  /** Nothing where nobody's levels are known. */
  get doses(): DoseCheck | undefined {
    this.#doses ??= this.#check();
    return this.#doses;
  }

  #check(): DoseCheck | undefined {
    const people = new Map(
      [...this.bodies].flatMap(([id, { facts, intakes }]): [string, DosedPerson][] =>
        intakes ? [[id, dosedPerson(id, intakes, facts.mass)]] : [],
      ),
    );
    if (people.size === 0) return undefined;
    const by = this.#days.length > 1 ? "own" : "meal";
    const groups = groupBy([...people.keys()], (person) => this.#dosesIn(person));
    const rows = [...groups.values()].flatMap((group): readonly DoseRow[] => {
      const [first = ""] = group;
      const eaters = group.flatMap((person) => people.get(person) ?? []);
      return doseRows(dosesOfDays(this.#daysOf(first, by)), eaters);
    });
    const who = [...people.keys()].map((id) => ({ id, name: this.names.person(id) }));
    return new DoseCheck("The plan", who, rows);
  }

  /** What someone is dosed with, by day: of those who are dosed alike one stands for all. */
  #dosesIn(person: string): string {
    return this.#days
      .map(({ id, meals }) => {
        const besides = this.#besides(person, id).length > 0 ? person : "";
        return [besides, ...meals.map((meal) => this.#dosesAt(person, meal))].join(";");
      })
      .join("|");
  }

  #dosesAt(person: string, meal: string): string {
    const dishes = this.#meals.get(meal)?.dishes ?? new Map<string, Sheet>();
    const factors = this.#portion(person, meal)?.factors();
    if (!factors || factors.size === 0) return "-";
    return [...dishes]
      .flatMap(([dish, { plan }]) =>
        plan.lines.flatMap(({ line }, at) =>
          line.scaling === "per-portion" ? [exactText(factors.get(dish)?.[at] ?? ZERO)] : [],
        ),
      )
      .join(" ");
  }

  #daysOf(person: string, by: "meal" | "own" | "dish"): readonly DosedDay[] {
    return this.#days.map(({ id, meals }): DosedDay => {
      const besides = this.#besides(person, id);
      const portions = meals.flatMap((meal) => this.#portion(person, meal) ?? []);
      const told = new Set(besides.map(({ meal }) => meal));
      return {
        id,
        eaten: new EatenPortion(portions.flatMap((each) => this.#sheets(each, by))),
        besides: besides.map(({ sheet }) => sheet),
        isWhole: portions.every(({ meal, dishes }) => dishes.size > 0 || told.has(meal)),
      };
    });
  }

  #portion(person: string, meal: string): EatenBy | undefined {
    this.#byKey ??= new Map(this.#portions.map((each) => [JSON.stringify([each.person, each.meal]), each]));
    return this.#byKey.get(JSON.stringify([person, meal]));
  }

  /** Several dishes of one meal go by their names; those of several meals by the meal's, too. */
  #eaten(portions: readonly EatenBy[], meals: number): EatenPortion {
    return new EatenPortion(
      portions.flatMap((portion) => this.#sheets(portion, meals > 1 ? "meal" : "dish")),
    );
  }

  #sheets(
    { meal, dishes }: EatenBy,
    by: "meal" | "own" | "dish",
  ): ConstructorParameters<typeof EatenPortion>[0] {
    const several = (this.#meals.get(meal)?.dishes.size ?? 1) > 1;
    return [...dishes].map(([dish, sheet]) => {
      const own = several ? [dish] : [];
      const of = by === "own" ? (this.#meals.get(meal)?.own.id ?? meal) : meal;
      const name = [...(by === "dish" ? [] : [of]), ...own].join("/");
      return { name: name === "" ? undefined : name, sheet };
    });
  }
}
