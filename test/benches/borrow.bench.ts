/**
 * How well borrowing does: each figure of a starter food is hidden, borrowed back from the food that
 * `lenders` ranks first among those that know it, and held to what was hidden. Not a pass mark, but a
 * figure to see and to improve. The errors are of the borrowed figure, in per cent of the hidden one.
 */
import { bench, describe } from "vitest";
import { borrow } from "../../src/food/borrow.ts";
import {
  type ComponentGroup,
  type ComponentId,
  componentIds,
  components,
} from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { lenders } from "../../src/food/lend.ts";
import type { BorrowBasis } from "../../src/food/lending.ts";
import type { FoodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exact } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { figureCell } from "../../src/show/figure.ts";
import { type Cell, table } from "../../src/show/table.ts";
import { toText } from "../../src/show/text.ts";

/** What lenders are ranked by stays; the rest is hidden. */
const kept: ReadonlySet<ComponentId> = new Set([
  "energy",
  "water",
  "protein",
  "fat",
  "carbohydrateByDifference",
  "fibre",
  "ash",
  "sugars",
  "starch",
  "alcohol",
]);

interface Trial {
  readonly group: ComponentGroup;
  readonly component: ComponentId;
  readonly food: string;
  readonly lender: string;
  readonly hidden: number;
  readonly borrowed: number;
}

function hide(food: FoodInput): FoodInput {
  const per100g = Object.fromEntries(
    Object.entries(food.per100g).filter(([id]) => kept.has(id as ComponentId)),
  );
  return { ...food, per100g };
}

const number = (food: FoodInput, id: ComponentId): number => readFigure(food, id).value.toNumber();

function trialsOf(id: string, foods: FoodTable, basis?: BorrowBasis): Trial[] {
  const whole = foods.get(id);
  const bare = foods.with([hide(whole)]);
  const hiddenIds = componentIds.filter((c) => !kept.has(c) && whole.per100g[c] !== undefined);
  const ranked = lenders(bare, id, { components: hiddenIds, most: 500 });
  const chosen = new Map<string, ComponentId[]>();
  for (const c of hiddenIds) {
    const lender = ranked.find((l) => l.lends.includes(c));
    if (lender) chosen.set(lender.id, [...(chosen.get(lender.id) ?? []), c]);
  }
  return [...chosen].flatMap(([lender, ids]) => {
    const back = borrow(bare, { into: id, from: lender, components: ids, ...(basis && { basis }) }).get(id);
    return ids.map(
      (component): Trial => ({
        ...{ group: components[component].group, component, food: id, lender },
        hidden: number(whole, component),
        borrowed: number(back, component),
      }),
    );
  });
}

/** Of an oil nothing is left to go by once fat and water are taken off. */
function isAllFat(id: string): boolean {
  return number(starterFoods.get(id), "fat") > 90;
}

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

const cell = (x: number): ReturnType<typeof figureCell> =>
  Number.isNaN(x) ? figureCell(null) : figureCell(exact(x.toFixed(6)), { significant: 2 });

function distribution(
  name: string,
  trials: readonly Trial[],
): readonly (string | ReturnType<typeof figureCell>)[] {
  const real = trials.filter((t) => t.hidden > 0);
  const errors = real.map((t) => (100 * Math.abs(t.borrowed - t.hidden)) / t.hidden).sort((a, b) => a - b);
  const within = (most: number): number => (100 * errors.filter((e) => e <= most).length) / errors.length;
  return [
    name,
    cell(trials.length),
    cell(quantile(errors, 0.25)),
    cell(quantile(errors, 0.5)),
    cell(quantile(errors, 0.75)),
    cell(quantile(errors, 0.9)),
    cell(within(25)),
    cell(within(50)),
  ];
}

const trials = starterFoods.ids.flatMap((id) => trialsOf(id, starterFoods));
/** Whether the range of like foods of the same group and state holds what was hidden. */
function rangeRow(group: ComponentGroup): readonly Cell[] {
  const ranges = starterFoods.ids.flatMap((id) => {
    const whole = starterFoods.get(id);
    const bare = starterFoods.with([hide(whole)]);
    const s = sheet({ name: id, portions: 1, lines: [{ food: id, amount: "100 g" }] }, bare);
    const hiddenIds = componentIds.filter(
      (c) => components[c].group === group && !kept.has(c) && whole.per100g[c] !== undefined,
    );
    return hiddenIds.map((c) => {
      const { least, most } = between(s, c);
      const hidden = readFigure(whole, c).value;
      const limited = most !== undefined;
      return {
        limited,
        held: limited && compareRatios(least, hidden) <= 0 && compareRatios(hidden, most) <= 0,
      };
    });
  });
  const limited = ranges.filter((r) => r.limited);
  const held = limited.filter((r) => r.held);
  return [group, cell(ranges.length), cell(limited.length), cell((100 * held.length) / limited.length)];
}

const bases: readonly BorrowBasis[] = ["dry-matter", "fat-free-dry-matter", "weight"];
const byBasis = bases.map((basis) => {
  const rest = starterFoods.ids
    .filter((id) => basis !== "fat-free-dry-matter" || !isAllFat(id))
    .flatMap((id) => trialsOf(id, starterFoods, basis))
    .filter((t) => t.group === "mineral" || t.group === "vitamin");
  return distribution(basis, rest);
});
const groups = [...new Set(trials.map((t) => t.group))];
const worst = [...new Set(trials.map((t) => t.component))]
  .map((id) => [id, trials.filter((t) => t.component === id)] as const)
  .filter(([, all]) => all.filter((t) => t.hidden > 0).length >= 30)
  .map(([id, all]) => distribution(components[id].name, all))
  .sort((a, b) => Number((b[3] as { value: string }).value) - Number((a[3] as { value: string }).value));

const end = "end" as const;
const columns = [
  { key: "what", heading: "Borrowed back" },
  { key: "figures", heading: "Figures", align: end },
  { key: "q25", heading: "25 %", unit: "% off", align: end },
  { key: "q50", heading: "Median", unit: "% off", align: end },
  { key: "q75", heading: "75 %", unit: "% off", align: end },
  { key: "q90", heading: "90 %", unit: "% off", align: end },
  { key: "within25", heading: "Within 25 %", unit: "%", align: end },
  { key: "within50", heading: "Within 50 %", unit: "%", align: end },
];
console.log(
  toText(
    table({
      title: "Errors of borrowed figures, by group (hidden zeros left out)",
      columns,
      rows: [
        ...groups.map((g) =>
          distribution(
            g,
            trials.filter((t) => t.group === g),
          ),
        ),
        { kind: "total", cells: distribution("all", trials) },
      ],
    }),
  ),
  `\n\n${toText(table({ title: "Minerals and vitamins, by basis", columns, rows: byBasis }))}`,
  `\n\n${toText(
    table({
      title: "Ranges of like foods",
      columns: [
        { key: "what", heading: "Hidden" },
        { key: "figures", heading: "Figures", align: end },
        { key: "limited", heading: "With a range", align: end },
        { key: "held", heading: "That holds it", unit: "%", align: end },
      ],
      rows: groups.map(rangeRow),
    }),
  )}`,
  `\n\n${toText(table({ title: "The ten components that borrow worst", columns, rows: worst.slice(0, 10) }))}`,
);

describe("borrowing", () => {
  const bare = starterFoods.with([hide(starterFoods.get("lentils-boiled"))]);
  bench("rank the lenders of a food among 230", () => {
    lenders(bare, "lentils-boiled");
  });
  bench("borrow all that a food is silent on", () => {
    borrow(bare, { into: "lentils-boiled", from: "split-peas-boiled" });
  });
});
