import { flag, size } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { absolute, type Exact, fraction, minus, over, sum, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { componentId } from "./componentSchema.ts";
import { type ComponentId, componentIds } from "./components.ts";
import { readFigure } from "./composition.ts";
import type { FoodInput, State } from "./food.ts";
import { likeStates, loanOf, solids } from "./lending.ts";
import { checkFoodTable, type FoodTable } from "./table.ts";

/** Options of {@link lenders}. */
export interface LendersOptions {
  /** Only foods that can lend one of these. */
  readonly components?: readonly ComponentId[];
  /** Set to look among foods of other states too. */
  readonly acrossStates?: boolean;
  /** How many at most: 5 unless told. */
  readonly most?: number;
}

/** A food that could lend figures to another. */
export interface Lender {
  readonly id: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly group: string | undefined;
  readonly sameGroup: boolean;
  /** How far the proximates lie apart: mean difference, g per 100 g of dry matter, or of food where a water is not known. */
  readonly distance: Exact;
  readonly by: "dry matter" | "weight";
  /** The proximates that both know. */
  readonly compared: readonly ComponentId[];
  /** What it could lend. */
  readonly lends: readonly ComponentId[];
}

/** Proximates that tell what kind of food it is; water tells only how dry. */
const PROXIMATES: readonly ComponentId[] = [
  "protein",
  "fat",
  "carbohydrateByDifference",
  "fibre",
  "ash",
  "sugars",
  "starch",
];

const lendersHow: () => Schema<LendersOptions> = /* @__PURE__ */ once(() =>
  fields<LendersOptions>({
    components: optional(list(componentId())),
    acrossStates: optional(flag()),
    most: optional(size("how many foods: 5", 0)),
  }),
);

/** With fewer in common, nearness is luck. */
const LEAST_IN_COMMON = 3;

/**
 * Foods of a table that are like one of them and know what it does not, the likest first: those of
 * its group before others, then by how near their proximates are. What state it is in counts before
 * all else: foods of other states are left out unless asked for. Nearness takes at least three
 * proximates that both foods know (water, protein, fat and the like): foods with fewer in common are
 * left out, so that a food that says less than three gets an empty list.
 *
 * Throws `food-unknown`, `component-unknown`, `borrow-refused` for options that there are not, and
 * `food-malformed` for what is no table.
 *
 * @example
 * ```ts
 * const mine = starterFoods.with([
 *   {
 *     id: "farm-oats",
 *     name: "Oats from the farm",
 *     state: "dry",
 *     group: "grains",
 *     source: "own analysis",
 *     per100g: { protein: 12, fat: "7.1", fibre: 10, ash: "1.9", water: 11 },
 *   },
 * ]);
 * console.log(lenders(mine, "farm-oats", { components: ["magnesium"] })[0].id); // => oats-rolled-dry
 * ```
 */
export function lenders(table: FoodTable, id: string, how: LendersOptions = {}): readonly Lender[] {
  checkFoodTable(table);
  const {
    components: wanted = componentIds,
    acrossStates,
    most = 5,
  } = read(lendersHow(), how, "borrow-refused");
  const into = table.get(id);
  const near = table.ids
    .filter((each) => each !== id)
    .map((each) => table.get(each))
    .filter((from) => acrossStates || likeStates(into, from))
    .flatMap((from) => {
      const measure = distance(into, from);
      return measure
        ? [{ from, ...measure, sameGroup: into.group !== undefined && into.group === from.group }]
        : [];
    })
    .sort(
      (a, b) =>
        Number(b.sameGroup) - Number(a.sameGroup) ||
        Number(likeStates(into, b.from)) - Number(likeStates(into, a.from)) ||
        compareRatios(a.apart, b.apart) ||
        (a.from.id < b.from.id ? -1 : 1),
    );
  const found: Lender[] = [];
  for (const { from, apart, by, compared, sameGroup } of near) {
    if (found.length >= most) break;
    const lends = wanted.filter((c) => !("refused" in loanOf(into, from, c)));
    if (lends.length === 0) continue;
    const { name, state, group } = from;
    found.push({
      id: from.id,
      name,
      state,
      group,
      sameGroup,
      distance: apart,
      by,
      compared,
      lends,
    });
  }
  return found;
}

/** How far two foods' proximates lie apart, or nothing where too little is known of them. */
function distance(
  a: FoodInput,
  b: FoodInput,
): { apart: Exact; by: Lender["by"]; compared: readonly ComponentId[] } | undefined {
  const [dryA, dryB] = [solids(a, "dry-matter"), solids(b, "dry-matter")];
  const dry = dryA && dryB && dryA.n > 0n && dryB.n > 0n ? ([dryA, dryB] as const) : undefined;
  const compared = PROXIMATES.filter((id) => known(a, id) && known(b, id));
  if (compared.length < LEAST_IN_COMMON) return undefined;
  const per100 = (food: FoodInput, id: ComponentId, of: Exact | undefined): Exact => {
    const { value } = readFigure(food, id);
    return of ? over(times(value, HUNDRED), of) : value;
  };
  const apart = compared.map((id) => absolute(minus(per100(a, id, dry?.[0]), per100(b, id, dry?.[1]))));
  return {
    apart: over(sum(apart), fraction(BigInt(compared.length))),
    by: dry ? "dry matter" : "weight",
    compared,
  };
}

function known(food: FoodInput, id: ComponentId): boolean {
  const { kind } = readFigure(food, id);
  return kind !== "missing" && kind !== "trace" && kind !== "below" && kind !== "borrowed";
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);
