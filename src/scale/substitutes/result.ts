import { type Allergen, allergens } from "../../food/allergens.ts";
import { type ComponentId, components } from "../../food/components.ts";
import type { FoodCaution, State } from "../../food/food.ts";
import { showFigure } from "../../measure/showFigure.ts";
import { compare, type Fraction, fraction, minus, over } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { plainFigure } from "../../sheet/show.ts";
import type { Tally } from "../../sheet/tally.ts";
import { figure } from "../../table/figure.ts";
import { Shown } from "../../table/shown.ts";
import { type Figure, type Table, table } from "../../table/table.ts";
import type { Asked, Tidy } from "../../table/tidy.ts";
import type { Quantity } from "../demand.ts";
import { matchName } from "./match.ts";
import { movesOf, type Replaced } from "./moves.ts";
import type { LeftOut, Opening, OutsideServing } from "./opening.ts";
import { substitutesTidy } from "./records.ts";

/** One component of a portion before and after. */
export interface SubstituteChange {
  readonly component: ComponentId;
  readonly before: Tally;
  readonly after: Tally;
  /** After less before, over before. */
  readonly share: Fraction;
}

/** A food that may stand in for another, with the amount to use. */
export interface Substitute {
  readonly food: string;
  readonly name: string;
  readonly state: State | undefined;
  /** For the batch, edible portion. */
  readonly grams: Fraction;
  /** The sheet with it in the line's place. */
  readonly sheet: Sheet;
  /** Sum of the shares by which what was to stay close moved, up or down. */
  readonly distance: Fraction;
  readonly changes: readonly SubstituteChange[];
  /** What moves beside, that a swap should not hide: sodium, unless it was to stay close. */
  readonly also: readonly Omit<SubstituteChange, "share">[];
  /** What it says nothing of, of what was to stay close; foods that say all come first. */
  readonly silent: readonly ComponentId[];
  /** What it does tell of what the line does not: the gaps that it would fill. */
  readonly tells: readonly ComponentId[];
  /** What to heed with it: raw beans must be boiled, say. */
  readonly cautions: readonly FoodCaution[];
}

/** What could stand in, the closest first, and what was left out. */
export class Substitutes extends Shown {
  /** What each brings just as much of as the line did. */
  readonly match: Quantity;
  readonly found: readonly Substitute[];
  /** Foods left out because they hold what is to be avoided. */
  readonly avoided: readonly { readonly food: string; readonly holds: readonly Allergen[] }[];
  /** Foods left out because nothing is known of their allergens: unknown is not free from. */
  readonly unknown: readonly string[];
  /** Foods left out because they bring none of what is matched, or do not say. */
  readonly without: readonly string[];
  /** Foods left out because a cook would not serve what it would take of them. */
  readonly outside: readonly OutsideServing[];
  /** Why nothing was found; nothing where something was. */
  readonly why: string | undefined;
  /** Where nothing was found, what would open it. */
  readonly opens: readonly string[];
  /** What was to stay close but the line says nothing of: there is no figure to stay close to. */
  readonly untold: readonly ComponentId[];
  readonly #of: Replaced;

  /** @internal Use {@link substitutes}. */
  constructor(
    of: Replaced,
    found: readonly Substitute[],
    left: LeftOut & Pick<Substitutes, "untold" | "match"> & { readonly opening: Opening | undefined },
  ) {
    super();
    this.#of = of;
    this.found = found;
    this.avoided = left.avoided;
    this.unknown = left.unknown;
    this.without = left.without;
    this.outside = left.outside;
    this.untold = left.untold;
    this.match = left.match;
    this.why = left.opening?.why;
    this.opens = left.opening?.opens ?? [];
  }

  override toTables(): readonly Table[] {
    const changed = [...new Set(this.found.flatMap(({ changes }) => changes.map((c) => c.component)))];
    const beside = [...new Set(this.found.flatMap(({ also }) => also.map((c) => c.component)))];
    return [
      table({
        title: `${this.#of.sheet.name}: instead of ${this.#of.name}`,
        columns: [
          { key: "food", heading: "Instead" },
          { key: "state", heading: "State" },
          { key: "grams", heading: "Mass", unit: "g", align: "end" },
          ...changed.map((id) => ({
            key: id,
            heading: components[id].name,
            unit: "% more",
            align: "end" as const,
          })),
          ...beside.map((id) => ({
            key: id,
            heading: components[id].name,
            unit: `${components[id].unit} more`,
            align: "end" as const,
          })),
        ],
        rows: this.found.map((found) => {
          const moves = movesOf(this.#of.sheet, found);
          const told = new Set([...found.changes, ...found.also].map(({ component }) => component));
          const cell = (id: ComponentId, by: (id: ComponentId) => Tally): Figure =>
            told.has(id) ? plainFigure(by(id), { significant: 2 }) : figure(null);
          return [
            found.name,
            found.state ?? "",
            figure(found.grams),
            ...changed.map((id) => cell(id, (each) => moves.share(each).times(HUNDRED))),
            ...beside.map((id) => cell(id, moves.by)),
          ];
        }),
        notes: [
          ...(this.why === undefined
            ? [`each brings as much ${matchName(this.match)} as ${this.#of.name} did`]
            : [`nothing stands in: ${this.why}`]),
          ...this.opens.map((open) => `what would open it: ${open}`),
          ...this.found.flatMap(({ name, cautions }) =>
            cautions.map((c) => `${name}: ${c.text} (${c.source})`),
          ),
          ...this.#avoidedNotes(),
          ...this.#untoldNotes(),
          ...(this.unknown.length > 0 ? [`allergens not known, left out: ${this.unknown.join(", ")}`] : []),
          ...this.#leftNotes(),
        ],
      }),
    ];
  }

  /** What could stand in, what it changes and what was left out, as tidy rows: `toRecords` reads them. */
  toRows(asked: Asked): Tidy {
    return substitutesTidy(this, this.#of, asked);
  }

  /** Foods by what they hold. */
  #avoidedNotes(): string[] {
    const by = new Map<string, string[]>();
    for (const { food, holds } of this.avoided) {
      const names = holds.map((a) => allergens[a].name).join(", ");
      by.set(names, [...(by.get(names) ?? []), food]);
    }
    return [...by].map(([names, foods]) => `with ${names}, left out: ${foods.join(", ")}`);
  }

  #leftNotes(): string[] {
    const { without, outside } = this;
    const grams = (f: Fraction): string => showFigure(f, { unit: "g" });
    const amounts = outside.map(({ food, grams: needed, least, most }) => {
      const end = compare(needed, most) > 0 ? `at most ${grams(most)}` : `at least ${grams(least)}`;
      return `${food} (${grams(needed)}, served ${end})`;
    });
    return [
      ...(without.length > 0
        ? [`no ${matchName(this.match)}, or silent on it, left out: ${without.join(", ")}`]
        : []),
      ...(amounts.length > 0 ? [`not as a cook would serve it, left out: ${amounts.join(", ")}`] : []),
    ];
  }

  #untoldNotes(): string[] {
    if (this.untold.length === 0) return [];
    const told = this.found.filter(({ tells }) => tells.length > 0);
    return [
      `${this.#of.name} says nothing of ${namesOf(this.untold)}, so that nothing is held close to it`,
      ...told.map(({ name, tells }) => `${name} tells of ${namesOf(tells)}`),
    ];
  }
}

const namesOf = (ids: readonly ComponentId[]): string => ids.map((id) => components[id].name).join(", ");

/** By what share of itself a component moved; below 0 where it fell. */
export function shareMoved({ before, after }: Pick<SubstituteChange, "before" | "after">): Fraction {
  return over(minus(after.value, before.value), before.value);
}

const HUNDRED: Fraction = /* @__PURE__ */ fraction(100n);
