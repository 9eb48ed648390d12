import { type ComponentId, componentIds, componentPlace } from "../food/components.ts";
import { ownComponentsOf } from "../food/composition.ts";
import type { FoodTable } from "../food/table.ts";
import { fault, quote } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { lcm } from "../number/ratio.ts";
import { compareText } from "../number/text.ts";
import type { Line, Recipe, RecipeInput } from "../recipe/document.ts";
import type { AmountReader } from "../recipe/resolve.ts";
import type { Sheet } from "./sheet.ts";
import type { Mark, Source } from "./source.ts";
import { type KeptKind, type KeptMarks, makeMarks, NO_MARKS } from "./tally.ts";

/** What of a line stays the same in every version of a sheet. */
export interface PlanLine {
  readonly line: Line;
  readonly source: Source;
  readonly nested: Sheet | undefined;
  /** Reads amounts of this line and turns them into grams of edible portion. */
  readonly reader: AmountReader;
  /** Bounds of one portion in grams. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
}

/** Recipes by the id that lines name them by. */
export type RecipesById = Readonly<Record<string, RecipeInput | Recipe>>;

/** A mark with the line it stands on. */
export interface LineMark {
  readonly line: number;
  readonly key: string;
  readonly mark: Mark;
}

/**
 * The frozen part of a sheet: what each line draws on, and what the figures say of themselves.
 * Built once and shared by every version that only amounts, portions or cooking tell apart.
 */
export class SheetPlan {
  readonly recipe: Recipe;
  readonly foods: FoodTable;
  /** Recipes that lines name by id. */
  readonly recipes: RecipesById;
  readonly lines: readonly PlanLine[];
  /** The common scale of all sources' figures. */
  readonly scale: bigint;
  /** What lifts each line's figures to the common scale. */
  readonly lifts: readonly bigint[];
  /** How many lines there are once nested recipes are written out: as many marks a component may have. */
  readonly spread: number;
  /** What the lines draw on, each once. */
  readonly sources: readonly Source[];
  /** Which of {@link sources} each line draws on. */
  readonly sourceOf: readonly number[];
  readonly #indices: ReadonlyMap<string, number>;
  #own: readonly ComponentId[] | undefined;
  #order: readonly number[] | undefined;
  readonly #lineMarks: (readonly LineMark[] | undefined)[] = [];
  readonly #marks: (KeptMarks | undefined)[] = [];
  readonly #kept: (KeptMarks | undefined)[][] = [];

  constructor(recipe: Recipe, foods: FoodTable, lines: readonly PlanLine[], recipes: RecipesById) {
    this.recipe = recipe;
    this.recipes = recipes;
    this.foods = foods;
    this.lines = lines;
    this.scale = lines.reduce((all, { source }) => lcm(all, source.scale), 1n);
    this.lifts = lines.map(({ source }) => this.scale / source.scale);
    this.spread = lines.reduce((all, { nested }) => all + (nested?.plan.spread ?? 1), 0);
    const places = new Map<Source, number>();
    this.sourceOf = lines.map(({ source }) => {
      const place = places.get(source) ?? places.size;
      places.set(source, place);
      return place;
    });
    this.sources = [...places.keys()];
    this.#indices = new Map(lines.map(({ line }, i) => [line.key, i]));
  }

  /**
   * The plan of other lines, with all else that this one knows: every sheet that is made from another has
   * its plan from here. `recipe` is the one that the lines are of, where more than they changed.
   */
  withLines(lines: readonly PlanLine[], recipe: Recipe = this.recipe): SheetPlan {
    const of = freezeAll({ ...recipe, lines: lines.map(({ line }) => line) });
    return new SheetPlan(of, this.foods, lines, this.recipes);
  }

  /** Components that its foods tell of: those of the registry, then others by their ids. */
  get components(): readonly ComponentId[] {
    this.#own ??= [
      ...new Set(
        this.lines.flatMap(({ source, nested }) => [
          ...(source.food ? ownComponentsOf(source.food.input) : []),
          ...(nested?.plan.ownComponents ?? []),
        ]),
      ),
    ].sort(compareText);
    return this.#own.length === 0 ? componentIds : [...componentIds, ...this.#own];
  }

  /** Those of them that the registry lacks. */
  get ownComponents(): readonly ComponentId[] {
    return this.components.slice(componentIds.length);
  }

  /** Where a line stands. Throws `line-unknown`. */
  indexOf(key: string): number {
    const i = this.#indices.get(key);
    if (i !== undefined) return i;
    const named = typeof key === "string" ? key : "";
    const hint = didYouMean(named, this.#indices.keys(), "use a key from .lines");
    throw fault("line-unknown", `the recipe has no line ${quote(key)}`, hint);
  }

  /** What one line's figure of a component says of itself. */
  marksOf(i: number, component: number): readonly LineMark[] {
    const { line, source } = this.lines[i] ?? {};
    if (!line || !source) return UNMARKED;
    const marks = source.marks(component);
    if (marks.length === 0) return UNMARKED;
    return marks.map((mark) => {
      return { line: i, key: mark.at === "" ? line.key : `${line.key}/${mark.at}`, mark };
    });
  }

  /** The same, by kind. */
  keptOf(i: number, component: number): KeptMarks {
    const own = this.#kept[i] ?? [];
    this.#kept[i] = own;
    const made = own[component] ?? gatherMarks(this.marksOf(i, component));
    own[component] = made;
    return made;
  }

  /** Every mark of a component, per-portion lines first: a gap in a dose matters most. */
  lineMarks(component: number): readonly LineMark[] {
    this.#lineMarks[component] ??= this.#dosesFirst().flatMap((i) => this.marksOf(i, component));
    return this.#lineMarks[component];
  }

  /** Whether any line says nothing of a component, or some line inside one. */
  isSilent(component: number): boolean {
    return this.sources.some((source) => source.marks(component).some(({ kind }) => kind === "missing"));
  }

  /** The marks of a total in which every line has some mass. */
  marks(component: number): KeptMarks {
    const made = this.#marks[component] ?? this.#gather(component);
    this.#marks[component] = made;
    return made;
  }

  /** Keys by kind, without an object for each mark: of many lines there are very many. */
  #gather(component: number): KeptMarks {
    const keys: KeysByKind = new Map();
    const said = this.sources.map((source) =>
      source.marks(component).map(({ at, kind }) => ({ at, list: listFor(keys, kind) })),
    );
    if (keys.size === 0) return NO_MARKS;
    for (const i of this.#dosesFirst()) {
      const key = this.lines[i]?.line.key ?? "";
      for (const { at, list } of said[this.sourceOf[i] ?? 0] ?? [])
        list.push(at === "" ? key : `${key}/${at}`);
    }
    return makeMarks((kind) => keys.get(kind) ?? NONE);
  }

  /** Where lines stand, per-portion ones first. */
  #dosesFirst(): readonly number[] {
    if (this.#order) return this.#order;
    const isDose = (i: number): boolean => this.lines[i]?.line.scaling === "per-portion";
    const all = [...this.lines.keys()];
    this.#order = [...all.filter(isDose), ...all.filter((i) => !isDose(i))];
    return this.#order;
  }
}

const UNMARKED: readonly LineMark[] = [];

export function isMissing(m: LineMark): boolean {
  return m.mark.kind === "missing";
}

const NONE: readonly string[] = [];

type KeysByKind = Map<KeptKind, string[]>;

function listFor(keys: KeysByKind, kind: KeptKind): string[] {
  const list = keys.get(kind) ?? [];
  keys.set(kind, list);
  return list;
}

/** Sorts marks by kind. */
export function gatherMarks(all: readonly LineMark[]): KeptMarks {
  if (all.length === 0) return NO_MARKS;
  const keys: KeysByKind = new Map();
  for (const { mark, key } of all) listFor(keys, mark.kind).push(key);
  return makeMarks((kind) => keys.get(kind) ?? NONE);
}

/** Where a component stands in rows of figures. Throws `component-unknown`. */
export const componentIndex: (id: ComponentId) => number = componentPlace;
