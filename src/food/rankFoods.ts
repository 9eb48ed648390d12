import { anyText, count } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, fraction, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { Result } from "../number/result.ts";
import { compareText } from "../number/text.ts";
import { componentId } from "./componentSchema.ts";
import { type ComponentId, component, components } from "./components.ts";
import { figureMarks, type ReadFigure } from "./figure.ts";
import type { State } from "./food.ts";
import { checkFoodTable, type FoodTable } from "./table.ts";

/** Options of {@link rankFoods}. */
export interface RankFoodsOptions {
  /** What it is taken for: 100 g unless told; of energy 100 kcal, of another component one of its unit. */
  readonly per?: ComponentId;
  /** Foods of this group alone. */
  readonly group?: string;
  /** How many, the richest first; all unless told. */
  readonly most?: number;
}

/** A food in its place. */
export interface RankedFood {
  readonly id: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly group: string | undefined;
  readonly value: Exact;
  /** What must be said of the figures that it is made of: `calculated borrowed`; empty where they are simply known. */
  readonly marks: readonly string[];
}

/** Foods of a table, the richest in a component first. */
export class FoodRanking extends Result {
  readonly is = "steelyard/food-ranking@1";
  readonly component: ComponentId;
  readonly per: ComponentId | undefined;
  /** `mg per 100 kcal`. */
  readonly unit: string;
  readonly foods: readonly RankedFood[];
  /** Foods of which the table does not tell it: they may be richer than any. */
  readonly unknown: readonly string[];

  /** @internal Use {@link rankFoods}. */
  constructor(
    id: ComponentId,
    per: ComponentId | undefined,
    foods: readonly RankedFood[],
    unknown: readonly string[],
  ) {
    super();
    this.component = id;
    this.per = per;
    const basis =
      per === undefined
        ? "100 g"
        : per === "energy"
          ? "100 kcal"
          : `${components[per].unit} of ${components[per].name.toLowerCase()}`;
    this.unit = `${components[id].unit} per ${basis}`;
    this.foods = foods;
    this.unknown = unknown;
  }

  override toString(): string {
    const [first] = this.foods;
    const { name } = components[this.component];
    return first
      ? `${name}: ${first.name} has most, ${showFigure(first.value)} ${this.unit}`
      : `${name}: nothing is known of any food`;
  }
}

/**
 * Ranks the foods of a table by what they hold of a component, for 100 g or for 100 kcal. Only what is known
 * has a place: foods of which it is missing, a trace or under a limit are listed as `unknown`, and so are those
 * of which the other figure is. Two foods alike stand in the order of their ids.
 *
 * Throws `component-unknown`, and `food-malformed` for what is no table or an option that there is not.
 *
 * @example
 * ```ts
 * const { foods, unit } = rankFoods(starterFoods, "iron", { per: "energy", group: "pulses", most: 1 });
 * console.log(foods.map(({ id, value }) => `${id}: ${value.toFixed(1)} ${unit}`)); // => [ 'white-beans-dry: 3.1 mg per 100 kcal' ]
 * ```
 */
export function rankFoods(table: FoodTable, id: ComponentId, how: RankFoodsOptions = {}): FoodRanking {
  checkFoodTable(table);
  component(id);
  const { per, group, most } = read(howSchema(), how, "food-malformed", ["how"]);
  const index = Object.keys(components);
  const [at, below] = [index.indexOf(id), per === undefined ? -1 : index.indexOf(per)];
  const unknown: string[] = [];
  const ranked = table.ids.flatMap((food): RankedFood[] => {
    const { input, composition } = table.food(food);
    if (group !== undefined && input.group !== group) return [];
    const figure = composition.figures[at];
    const other = composition.figures[below];
    const isTold = isKnown(figure) && (per === undefined || (isKnown(other) && other.value.n > 0n));
    if (!isTold) {
      unknown.push(food);
      return [];
    }
    const value = other ? over(figure.value, other.value) : figure.value;
    return [
      {
        id: food,
        name: input.name,
        state: input.state,
        group: input.group,
        value: per === "energy" ? times(value, fraction(100n)) : value,
        marks: [...new Set([figure, ...(other ? [other] : [])].flatMap(figureMarks))],
      },
    ];
  });
  ranked.sort((a, b) => compareRatios(b.value, a.value) || compareText(a.id, b.id));
  return new FoodRanking(id, per, ranked.slice(0, most), unknown);
}

function isKnown(figure: ReadFigure | undefined): figure is ReadFigure {
  return figure !== undefined && !["missing", "trace", "below"].includes(figure.kind);
}

const howSchema: () => Schema<RankFoodsOptions> = /* @__PURE__ */ once(() =>
  fields<RankFoodsOptions>({
    per: optional(componentId()),
    group: optional(anyText()),
    most: optional(count(1)),
  }),
);
