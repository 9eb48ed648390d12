import type { ComponentId } from "../../food/components.ts";
import { type EnergyPart, type EnergySystem, termsOf } from "../../food/energy.ts";
import { fault } from "../../number/error.ts";
import { exact, type Fraction, over, sum, times, ZERO } from "../../number/fraction.ts";
import { lineEnergies } from "../../sheet/energy.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { EnergyShareOf, Quantity } from "../demand.ts";
import { lineContributions, silentLines } from "../linear.ts";
import type { Subject } from "./demands.ts";
import { type Dish, type LineAt, nameIn } from "./model.ts";

/** What each line brings of a quantity to one portion as eaten, by dish and line. */
export type ByLine = readonly (readonly Fraction[])[];

/** A subject in figures: `value / per` is what is asked of; an amount has no `per`. */
export interface Brought {
  readonly value: ByLine;
  readonly per: ByLine | undefined;
  /** Lines that do not say what they bring. */
  readonly silent: readonly (LineAt & { readonly name: string })[];
}

/** Reads off sheets what demands are about, each quantity once. */
export class Reader {
  readonly #dishes: readonly Dish[];
  readonly #system: EnergySystem;
  readonly #quantities = new Map<Quantity, Brought>();
  #energies: readonly (readonly LineEnergy[])[] | undefined;

  constructor(dishes: readonly Dish[], system: EnergySystem) {
    this.#dishes = dishes;
    this.#system = system;
  }

  read(subject: Subject): Brought {
    if (subject.kind === "amount") return this.#quantity(subject.of);
    if (subject.kind === "share") return this.#share(subject.of);
    const [value, per] = subject.of.map((of) => this.#quantity(of)) as [Brought, Brought];
    return { value: value.value, per: per.value, silent: distinct([...value.silent, ...per.silent]) };
  }

  #quantity(of: Quantity): Brought {
    const made = this.#quantities.get(of) ?? this.#readQuantity(of);
    this.#quantities.set(of, made);
    return made;
  }

  #readQuantity(of: Quantity): Brought {
    const silent = this.#dishes.flatMap((dish, d) =>
      silentLines(dish.sheet, of).map((name) => ({
        dish: d,
        // A line inside a nested recipe moves with the line that names the recipe.
        line: dish.sheet.plan.indexOf(name.split("/", 1)[0] ?? name),
        name: nameIn(dish, name),
      })),
    );
    return { value: this.#dishes.map(({ sheet }) => lineContributions(sheet, of)), per: undefined, silent };
  }

  /** By the energy that each line brings by the factor system, whatever its own energy figure says. */
  #share(of: EnergyShareOf): Brought {
    this.#energies ??= this.#dishes.map((dish) => energiesOf(dish, this.#system));
    const energies = this.#energies;
    const silent = energies.flatMap((lines, dish) =>
      lines.flatMap(({ missing }, line) => missing.map((name) => ({ dish, line, name }))),
    );
    const per = energies.map((lines) => lines.map(({ total }) => total));
    const place = termsOf(this.#system).findIndex(([part]) => part === of);
    if (place >= 0) {
      const value = energies.map((lines) => lines.map(({ parts }) => parts[place] ?? ZERO));
      return { value, per, silent };
    }
    const within = withinPart(of, this.#system);
    if (!within) {
      const hint = "use a factor system that counts it, or ask for an amount";
      throw fault("demand-malformed", `${this.#system.name} tell no energy of ${of}`, hint);
    }
    const held = this.#quantity(within.component);
    const value = held.value.map((lines) => lines.map((grams) => times(grams, within.factor)));
    return { value, per, silent: distinct([...silent, ...held.silent]) };
  }
}

interface LineEnergy {
  /** kcal a portion, in the order of the system's terms. */
  readonly parts: readonly Fraction[];
  readonly total: Fraction;
  readonly missing: readonly string[];
}

function energiesOf(dish: Dish, system: EnergySystem): LineEnergy[] {
  const { sheet } = dish;
  return sheet.plan.lines.map((_, i) => {
    const tallies = lineEnergies(sheet, i, system, (term) => term.factor);
    const parts = tallies.map((tally) => perPortion(sheet, tally.exact));
    const missing = [...new Set(tallies.flatMap((tally) => tally.missing))];
    return { parts, total: sum(parts), missing: missing.map((name) => nameIn(dish, name)) };
  });
}

function perPortion(sheet: Sheet, batch: Fraction): Fraction {
  return over(batch, sheet.values.portions);
}

/**
 * What is no constituent of the system counts by the one that holds it. Factors are the general
 * ones: 9 kcal/g of fat, 4 of carbohydrate, in which systems without a term for fibre count it.
 * Source: FAO Food and Nutrition Paper 77 (2003), section 3.5.
 */
function withinPart(
  of: EnergyShareOf,
  system: EnergySystem,
): { readonly component: ComponentId; readonly factor: Fraction } | undefined {
  const holders: { readonly [S in EnergyShareOf]?: readonly [EnergyPart, ComponentId, number] } = {
    saturatedFat: ["fat", "saturatedFat", 9],
    addedSugars: ["carbohydrate", "addedSugars", 4],
    fibre: ["carbohydrate", "fibre", 4],
  };
  const [holder, component, factor] = holders[of] ?? [];
  if (!holder || !component || factor === undefined || !system.parts[holder]) return undefined;
  return { component, factor: exact(factor) };
}

function distinct<T extends { readonly name: string }>(all: readonly T[]): T[] {
  return [...new Map(all.map((each) => [each.name, each])).values()];
}
