import type { Language } from "../document/language.ts";
import { type Exact, exact } from "../number/exact.ts";
import { type Cost, minorPlaces } from "../shop/cost.ts";
import { figureCell } from "./figure.ts";
import type { Cell, Table } from "./table.ts";

/** The currency stands in the heading where there is one, else beside each figure. */
export function priceColumn(key: string, heading: string, costs: readonly Cost[]): Table["columns"][number] {
  const [only, ...others] = costs;
  return { key, heading, align: "end", ...(only && others.length === 0 && { unit: only.currency }) };
}

/** `named` writes the currency beside the figure. */
export function money(cost: Cost, language: Language, named: boolean): Cell {
  const places = minorPlaces(cost.currency);
  const tone = cost.bound === "point" ? "known" : "at-least";
  const how = { places, zeros: "keep", tone, language } as const;
  return figureCell(exact(cost.value), named ? { ...how, unit: cost.currency } : how);
}

/** Grams as a kitchen scale is read. */
export function grams(of: Exact, language: Language): Cell {
  return figureCell(of, { ...weighing(of), language });
}

/** Whole grams from 10 g up, tenths from 1 g, hundredths below. */
function weighing(grams: Exact): { readonly places: number } {
  return { places: grams.n >= 10n * grams.d ? 0 : grams.n >= grams.d ? 1 : 2 };
}
