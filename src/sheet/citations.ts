import { read } from "../document/read.ts";
import { refuseHole } from "../document/safe.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import { datasets } from "../food/data/datasets.ts";
import type { ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import { findRow, retentionCode } from "../food/retention.ts";
import { foundYield, isYieldCode, type YieldInput } from "../food/yield.ts";
import { fault, kindOf } from "../number/error.ts";
import { isZero, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { compareText } from "../number/text.ts";
import { componentIndex } from "./plan.ts";
import { Sheet } from "./sheet.ts";

/** What has sheets in it: one, several, or a plan's portions. */
export type Cited =
  | Sheet
  | Iterable<Sheet>
  | { readonly portions: Iterable<{ readonly dishes: ReadonlyMap<string, Sheet> }> };

/** Options of {@link citations} and {@link methods}. */
export interface CitedOptions {
  /** The components that were told of; every one unless told. */
  readonly components?: readonly ComponentId[];
}

/** One source, and what rests on it. */
export interface Citation {
  /**
   * `data`: figures of foods. `formula`: figures worked out here. `retention`: what cooking leaves. `yield`: published
   * yields, each counted once for a line or a dish. `presumption`: zeros.
   */
  readonly kind: "data" | "formula" | "retention" | "yield" | "presumption";
  /** As figures name it, without the numbers of records. */
  readonly source: string;
  /** What it is called in full, its release and licence, where the library knows the data set. */
  readonly title: string | undefined;
  readonly release: string | undefined;
  readonly licence: string | undefined;
  /** How many figures rest on it, each of a food and a component counted once. */
  readonly figures: number;
  /** Whose figures they are. */
  readonly foods: readonly string[];
  /** Records of it, as figures name them: `NDB 08120`. */
  readonly records: readonly string[];
}

/** Every source of some sheets' figures, the one that most rest on first. */
export class Citations extends Result {
  readonly is = "steelyard/citations@1";
  readonly sources: readonly Citation[];

  /** @internal Use {@link citations}. */
  constructor(sources: readonly Citation[]) {
    super();
    this.sources = sources;
  }

  override toString(): string {
    const all = this.sources.reduce((sum, { figures }) => sum + figures, 0);
    return `${this.sources.length} sources of ${all} figures`;
  }
}

/**
 * Lists every source that the figures of a sheet, of several, or of a plan rest on: the data set with its
 * release and licence where the library knows it, and how many figures rest on it. Lines of no mass and figures
 * of which nothing is known rest on nothing.
 *
 * Throws `component-unknown`, and `sheet-malformed` for what has no sheets or an option that there is not.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const [first] = citations(porridge, { components: ["energy", "iron"] }).sources;
 * console.log(`${first.title}, release ${first.release}: ${first.figures} figures`);
 * ```
 * ```text
 * USDA National Nutrient Database for Standard Reference, release 28 (September 2015, slightly revised May 2016): 2 figures
 * ```
 */
export function citations(x: Cited, how: CitedOptions = {}): Citations {
  const { components } = read(citedHow(), how, "sheet-malformed", ["how"]);
  const found = new Map<string, Found>();
  for (const s of sheetsIn(x)) gather(s, components ?? s.plan.components, found);
  const sources = [...found.values()].map(({ kind, source, figures, foods, records }): Citation => {
    const known = datasets.find((each) => source.startsWith(each.source));
    return {
      kind,
      source,
      title: known?.title,
      release: known?.release,
      licence: known?.licence,
      figures: figures.size,
      foods: [...foods].sort(compareText),
      records: [...records].sort(compareText),
    };
  });
  return new Citations(sources.sort((a, b) => b.figures - a.figures || compareText(a.source, b.source)));
}

/** @internal */
export const citedHow: () => Schema<CitedOptions> = /* @__PURE__ */ once(() =>
  fields<CitedOptions>({ components: optional(list(componentId())) }),
);

/** @internal The sheets in something, each once. Throws `sheet-malformed`. */
export function sheetsIn(x: unknown): readonly Sheet[] {
  const all = looseSheets(x);
  if (all.length > 0 && all.every((each) => each instanceof Sheet)) return [...new Set(all as Sheet[])];
  throw fault("sheet-malformed", `expected sheets, got ${kindOf(x)}`, "give a sheet, several, or a plan", [
    "x",
  ]);
}

function looseSheets(x: unknown): readonly unknown[] {
  if (x instanceof Sheet) return [x];
  if (typeof x !== "object" || x === null) return [];
  if (Array.isArray(x)) refuseHole(x, "sheet-malformed");
  if (Symbol.iterator in x && typeof x[Symbol.iterator] === "function") return [...(x as Iterable<unknown>)];
  if (!("portions" in x) || !Array.isArray(x.portions)) return [];
  return x.portions.flatMap((portion: unknown): unknown[] =>
    typeof portion === "object" && portion !== null && "dishes" in portion && portion.dishes instanceof Map
      ? [...portion.dishes.values()]
      : [],
  );
}

interface Found extends Pick<Citation, "kind" | "source"> {
  readonly figures: Set<string>;
  readonly foods: Set<string>;
  readonly records: Set<string>;
}

function gather(s: Sheet, components: readonly ComponentId[], found: Map<string, Found>): void {
  const { retention: table } = s.plan.foods;
  const add = (kind: Citation["kind"], said: string, food: string, id: ComponentId | "mass"): void => {
    const [, source = said, record] = /^(.*?),? ((?:NDB|FDC)\b.*)$/.exec(said) ?? [];
    const key = `${kind}: ${source}`;
    const own = found.get(key) ?? { kind, source, figures: new Set(), foods: new Set(), records: new Set() };
    found.set(key, own);
    own.figures.add(`${food} ${id}`);
    own.foods.add(food);
    if (record !== undefined) own.records.add(record);
  };
  const yields = (told: YieldInput | undefined, of: string): void => {
    if (isYieldCode(told)) add("yield", foundYield(told.code, table).source, of, "mass");
  };
  if (s.values.cooking.by !== "mass") yields(s.origin.yieldFactor, s.name);
  for (const [i, { line, source, nested }] of s.plan.lines.entries()) {
    if (isZero(s.values.grams[i] ?? ZERO)) continue;
    if (s.values.cooking.by === "lines") yields(line.yieldFactor, source.id);
    const code = retentionCode(line.retention);
    const isOwn = (id: ComponentId): boolean =>
      typeof line.retention === "object" && Object.hasOwn(line.retention, id);
    const food = source.food?.input;
    const inner = source.asEaten ?? nested;
    if (inner) gather(inner, components, found);
    for (const id of components) {
      const figure = source.figure(componentIndex(id));
      if (food && figure && figure.kind !== "missing") {
        for (const [kind, said] of saidOf(figure, food, id)) add(kind, said, food.id, id);
        if (code !== undefined && source.left.has(id) && !isOwn(id))
          add("retention", findRow(code, table)?.table.source ?? code, food.id, id);
      }
    }
  }
}

/** Whom a figure rests on. */
function saidOf(
  { kind, formula, note }: ReadFigure,
  food: FoodInput,
  id: ComponentId,
): readonly (readonly [Citation["kind"], string])[] {
  const given = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  if (formula) return [["formula", formula.source]];
  if (kind === "presumed" && given === undefined) return [["presumption", note ?? "presumed zero"]];
  const own = typeof given === "object" && "source" in given ? given.source : undefined;
  return [["data", own ?? food.source]];
}
