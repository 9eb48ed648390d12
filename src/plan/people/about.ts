import { exactText } from "../../number/digits.ts";
import { ZERO } from "../../number/exact.ts";
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
import { Watch } from "../find/watch.ts";
import type { ReadBody } from "../read/readBody.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { ReadPerson } from "../read/readPerson.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { type Names, PlanAvoided } from "./avoided.ts";

/** A portion, as far as it concerns whoever eats it. */
export interface EatenBy {
  readonly person: string;
  readonly meal: string;
  factors(): LineFactors;
  readonly dishes: ReadonlyMap<string, Sheet>;
}

/** What a plan knows of the people it feeds. All of it is worked out when first looked at. */
export class AboutPeople {
  readonly avoided: PlanAvoided;
  readonly #people: ReadonlyMap<string, ReadPerson>;
  readonly #meals: ReadonlyMap<string, ReadMeal>;
  readonly #portions: readonly EatenBy[];
  #doses: DoseCheck | undefined;

  constructor(people: readonly ReadPerson[], meals: readonly ReadMeal[], portions: readonly EatenBy[]) {
    this.#people = new Map(people.map((one) => [one.id, one]));
    this.#meals = new Map(meals.map((meal) => [meal.id, meal]));
    this.#portions = portions;
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
    const rows: DoseRow[] = [];
    for (const meal of this.#meals.values()) {
      const own = this.#portions.filter((each) => each.meal === meal.id && people.has(each.person));
      for (const group of sameDoses(own, meal)) {
        const [first] = group;
        const eaters = group.flatMap(({ person }) => people.get(person) ?? []);
        if (first) rows.push(...doseRows(new EatenPortion(this.#sheets(first, "meal")), eaters));
      }
    }
    const who = [...people.keys()].map((id) => ({ id, name: this.names.person(id) }));
    return new DoseCheck("The plan", who, rows);
  }

  /** Several dishes of one meal go by their names; those of several meals by the meal's, too. */
  #eaten(portions: readonly EatenBy[], meals: number): EatenPortion {
    return new EatenPortion(
      portions.flatMap((portion) => this.#sheets(portion, meals > 1 ? "meal" : "dish")),
    );
  }

  #sheets({ meal, dishes }: EatenBy, by: "meal" | "dish"): ConstructorParameters<typeof EatenPortion>[0] {
    const several = (this.#meals.get(meal)?.dishes.size ?? 1) > 1;
    return [...dishes].map(([dish, sheet]) => {
      const own = several ? [dish] : [];
      const name = [...(by === "meal" ? [meal] : []), ...own].join("/");
      return { name: name === "" ? undefined : name, sheet };
    });
  }
}

/** Portions of a meal by what they hold of each line that is the same for everyone: as a rule one group. */
function sameDoses(portions: readonly EatenBy[], { dishes }: ReadMeal): readonly (readonly EatenBy[])[] {
  const lines = [...dishes].flatMap(([dish, { plan }]) =>
    plan.lines.flatMap(({ line }, at) => (line.scaling === "per-portion" ? [{ dish, at }] : [])),
  );
  if (lines.length === 0) return [];
  const dosesIn = (portion: EatenBy): string =>
    lines.map(({ dish, at }) => exactText(portion.factors().get(dish)?.[at] ?? ZERO)).join(" ");
  return [...groupBy(portions, dosesIn).values()];
}
