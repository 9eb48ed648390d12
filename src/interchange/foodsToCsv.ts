import { isRecord } from "../document/safe.ts";
import { componentIds } from "../food/components.ts";
import { ownComponentsOf } from "../food/composition.ts";
import type { Figure, FoodInput } from "../food/food.ts";
import { checkFoodTable, type FoodTable } from "../food/table.ts";
import { exactText } from "../number/digits.ts";
import { exact, type Value } from "../number/exact.ts";
import { compareText } from "../number/text.ts";
import { guardedText } from "../show/csv.ts";
import { aboutFields, DETAILS, ESTIMATE, headingFor, isJsonField } from "./csvHeading.ts";

/**
 * Writes foods as values between commas (RFC 4180, lines ended by CR LF): a column for each field of a food
 * and each component that one of them has, by INFOODS tagname with its unit; `tr` is a trace, `<2` below a
 * limit, brackets mark an estimate, an empty field is unknown. What figures and foods say beyond that stands
 * as JSON in columns of its own, so that {@link foodsFromCsv} gives the same foods back. Text that a
 * spreadsheet would run as a formula has an apostrophe before it. A table's retention factors are no part
 * of it.
 *
 * Throws `food-malformed` for what is no food table.
 *
 * @example
 * ```ts
 * const foods = foodTable([{ id: "oats", name: "Oats", source: "own analysis", per100g: { iron: "4.25", zinc: "trace" } }]);
 * console.log(foodsToCsv(foods).split("\r\n")[0]); // => id,name,source,FE (mg),ZN (mg)
 * console.log(foodsToCsv(foods).split("\r\n")[1]); // => oats,Oats,own analysis,4.25,tr
 * ```
 */
export function foodsToCsv(foods: FoodTable): string {
  checkFoodTable(foods);
  const all = foods.ids.map((id) => foods.get(id));
  const about = aboutFields.filter((field) => all.some((food) => food[field] !== undefined));
  const own = [...new Set(all.flatMap(ownComponentsOf))].sort(compareText);
  const used = [...componentIds, ...own].filter((id) => all.some(({ per100g }) => per100g[id] !== undefined));
  const detailed = all.map(detailsOf);
  const hasDetails = detailed.some((each) => each !== "");
  const head = [...about, ...used.map(headingFor), ...(hasDetails ? [DETAILS] : [])];
  const rows = all.map((food, i) => [
    ...about.map((field) => fieldText(food, field)),
    ...used.map((id) => figureText(food.per100g[id])),
    ...(hasDetails ? [detailed[i] ?? ""] : []),
  ]);
  return [head, ...rows].map((row) => `${row.map(quoted).join(",")}\r\n`).join("");
}

function fieldText(food: FoodInput, field: (typeof aboutFields)[number]): string {
  const value = food[field];
  if (value === undefined) return "";
  if (isJsonField(field)) return JSON.stringify(value);
  return typeof value === "string" ? guardedText(value) : exactText(exact(value as Value));
}

function figureText(figure: Figure | undefined): string {
  if (figure === undefined) return "";
  if (figure === "trace") return "tr";
  if (!isRecord(figure)) return valueText(figure as Value);
  if ("below" in figure) return `<${valueText(figure.below as Value)}`;
  const { value, ...rest } = figure as FullFigure;
  return isEstimate(rest) ? `[${valueText(value)}]` : valueText(value);
}

type FullFigure = Extract<Figure, { readonly value: unknown }>;

function valueText(value: Value): string {
  return typeof value === "string" && /^[\d./]+$/.test(value) ? value : exactText(exact(value));
}

/** Whether brackets say all that a figure says beside its value. */
function isEstimate({ calculated, ...rest }: Omit<FullFigure, "value">): boolean {
  return calculated === ESTIMATE && Object.keys(rest).length === 0;
}

/** What a food's figures say beside their value, as JSON; no text where they say nothing. */
function detailsOf(food: FoodInput): string {
  const { per100g } = food;
  const said = [...componentIds, ...ownComponentsOf(food)].flatMap((id) => {
    const figure = per100g[id];
    if (!isRecord(figure)) return [];
    const { value: _, below: __, ...rest } = figure as { readonly [field: string]: unknown };
    return Object.keys(rest).length === 0 || isEstimate(rest) ? [] : [[id, rest]];
  });
  return said.length === 0 ? "" : JSON.stringify(Object.fromEntries(said));
}

function quoted(text: string): string {
  return /[",\r\n;]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
