import { type ComponentId, componentIds } from "../food/components.ts";
import type { Figure } from "../food/food.ts";
import { SR_ASSUMED_ZERO, srAnalysed, srBorrowed, srCalculated, srSource } from "./data/srDerivations.ts";
import { usdaAdded, usdaInstead, usdaNutrients } from "./data/usdaNutrients.ts";
import { LeftOuts, Rows, type WhyLeftOut } from "./rows.ts";
import { figureUnit, toUnitOf } from "./units.ts";

/** What a figure says of how the USDA came by it, by its codes of source and derivation. */
export function provenance(source: string, derivation: string, lender: string | undefined): object {
  const code = [source, derivation].filter((each) => each !== "").join(" ");
  const sourceCode = code === "" ? {} : { sourceCode: code };
  if (source === SR_ASSUMED_ZERO || (source === "" && derivation === "Z"))
    return { presumed: true, ...sourceCode };
  const borrowed = srBorrowed[derivation];
  const isBorrowed = borrowed !== undefined || lender !== undefined;
  const from = [lender ?? "a like food, or another form of it", borrowed].filter(Boolean).join(", ");
  const isAnalysed = source === "" ? srCalculated[derivation] === undefined : srAnalysed.has(source);
  return {
    ...(isBorrowed && { borrowedFrom: from.length > 200 ? `${from.slice(0, 199)}…` : from }),
    ...(!isAnalysed &&
      borrowed === undefined && {
        calculated: srCalculated[derivation] ?? srSource[source] ?? "the source does not say how",
      }),
    ...sourceCode,
  };
}

/** A figure as FoodData Central gives it. */
export interface UsdaFigure {
  readonly number: string;
  readonly name: string;
  readonly unit: string;
  readonly value: string;
  readonly count?: string;
  readonly least?: string;
  readonly most?: string;
  readonly source?: string;
  readonly derivation?: string;
}

/** Figures of foods by nutrient number, each in its component or counted among what is left out. */
export class UsdaFigures {
  readonly rows: Rows = new Rows();
  readonly left: LeftOuts = new LeftOuts();
  readonly added: Map<string, Set<ComponentId>> = new Map();
  readonly #instead = new Map<string, Map<string, UsdaFigure>>();
  #count = 0;

  add(food: string, figure: UsdaFigure): void {
    const { number, name, unit, value } = figure;
    const of = { code: number, name, unit };
    const part = usdaAdded[number];
    if (part !== undefined) {
      if (Number(value) > 0) this.added.set(food, (this.added.get(food) ?? new Set()).add(part));
      this.left.add({ ...of, why: "added" });
    } else if (INSTEAD.has(number)) {
      this.#instead.set(food, (this.#instead.get(food) ?? new Map()).set(number, figure));
    } else if (Object.hasOwn(usdaNutrients, number)) {
      this.#put(food, usdaNutrients[number] as ComponentId, figure);
    } else {
      this.left.add({ ...of, why: "no-component" });
    }
  }

  /** How many figures were kept, once what may stand instead of others has found its place. */
  finish(): number {
    for (const [food, figures] of this.#instead) {
      for (const id of componentIds) {
        for (const number of usdaInstead[id] ?? []) {
          const figure = figures.get(number);
          if (figure) this.#put(food, id, figure, "told-elsewhere");
        }
      }
    }
    this.#instead.clear();
    return this.#count;
  }

  #put(food: string, id: ComponentId, figure: UsdaFigure, otherwise: WhyLeftOut = "second"): void {
    const {
      number,
      name,
      unit,
      value,
      count = "",
      least = "",
      most = "",
      source = "",
      derivation = "",
    } = figure;
    const known = figureUnit(unit);
    const own = known === undefined ? undefined : toUnitOf(id, value, known);
    if (known === undefined || own === undefined) {
      this.left.add({ code: number, name, unit, why: "unit" });
      return;
    }
    const inOwn = (text: string): string => toUnitOf(id, text, known) ?? text;
    const full: Figure = {
      value: own,
      ...(Number(count) > 0 && { count: Number(count) }),
      ...(least !== "" && { least: inOwn(least) }),
      ...(most !== "" && { most: inOwn(most) }),
      ...provenance(source, derivation, undefined),
    };
    if (this.rows.set(food, id, full)) this.#count += 1;
    else this.left.add({ code: number, name, unit, why: otherwise });
  }
}

/** The component that each number may stand for. */
export const INSTEAD: ReadonlyMap<string, ComponentId> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ componentIds.flatMap((id) => (usdaInstead[id] ?? []).map((number) => [number, id])),
);
