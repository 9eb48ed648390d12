import type { Json } from "../document/leaves.ts";
import { type ComponentId, components } from "../food/components.ts";
import { ToldResult } from "../number/told.ts";
import { EatenPortion } from "../person/portion/eaten.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { combine, type Tally } from "../sheet/tally.ts";
import type { DayFit } from "./find/dayFit.ts";
import type { BesideOfDay } from "./find/dayTask.ts";
import { dayDrift } from "./measure/dayDrift.ts";
import type { PortionDrift } from "./measure/drift.ts";
import type { Portion, PortionStatus, ServedPortion } from "./portion.ts";

/** A day of a plan. */
export interface PlannedDay {
  readonly id: string;
  readonly name: string;
  /** Ids of its meals in the plan, in their order. */
  readonly meals: readonly string[];
  /** The app's own data of the day, as it was handed in. */
  readonly meta?: Json;
}

interface DayAt {
  readonly person: string;
  readonly day: string;
  readonly portions: readonly ServedPortion[];
  readonly names: ReadonlyMap<string, string>;
  readonly besides: readonly BesideOfDay[];
}

/** One person's day: all that they eat of it. */
export class PersonDay extends ToldResult {
  readonly person: string;
  readonly day: string;
  /** Of each meal, in the menu's order. */
  readonly portions: readonly Portion[];
  /** How it was fitted as one; nothing where meals were planned one by one, or none is eaten. */
  readonly fit: DayFit | undefined;
  readonly #served: readonly ServedPortion[];
  readonly #names: ReadonlyMap<string, string>;
  #eaten: EatenPortion | undefined;

  /** What is eaten that day besides what the plan serves. */
  readonly besides: readonly BesideOfDay[];

  /** @internal Use `plan.day`. */
  constructor({ person, day, portions, names, besides }: DayAt) {
    super();
    this.person = person;
    this.day = day;
    this.portions = portions;
    this.#served = portions;
    this.fit = portions.map((portion) => portion.dayFit()).find((fit) => fit !== undefined);
    this.#names = names;
    this.besides = besides;
  }

  /**
   * What measurable amounts cost the day in accuracy, all meals together; nothing where no kitchen was
   * given, or the day was not fitted as one.
   */
  get drift(): PortionDrift | undefined {
    return this.fit && dayDrift(this.fit, this.#served, () => [...this.dishes.values()]);
  }

  /** The worst of its portions; `away` where they are there for none of them. */
  get status(): PortionStatus {
    const all = this.portions.map(({ status }) => status);
    return WORST_FIRST.find((status) => all.includes(status)) ?? "away";
  }

  /** Whether all that they eat that day is known: they are served each meal, or it is told what they eat instead. */
  get isWhole(): boolean {
    const told = new Set(this.besides.map(({ meal }) => meal));
    return this.portions.every(
      ({ status, meal }) => (status !== "away" && status !== "not-served") || told.has(meal),
    );
  }

  /** What they eat, by `meal/dish`, and besides by its name: what `compare` takes for the day. */
  get dishes(): ReadonlyMap<string, Sheet> {
    const served = this.portions.flatMap(({ meal, dishes }) => {
      const own = this.#names.get(meal) ?? meal;
      return [...dishes].map(([dish, s]) => [dish === own ? own : `${own}/${dish}`, s] as const);
    });
    const all = new Map(served);
    for (const { name, sheet } of this.besides) {
      let key = name;
      for (let n = 2; all.has(key); n += 1) key = `${name} (${n})`;
      all.set(key, sheet);
    }
    return all;
  }

  /** What the day brings of a component, all meals together. */
  brings(id: ComponentId): Tally {
    this.#eaten ??= new EatenPortion([...this.dishes].map(([name, sheet]) => ({ name, sheet })));
    return this.#eaten.meals.length === 0 ? combine(components[id].unit, []) : this.#eaten.brings(id);
  }
}

/** A day is what the worst of its portions is. */
const WORST_FIRST: readonly PortionStatus[] = ["not-served", "out-of-reach", "within-tolerance", "met"];
