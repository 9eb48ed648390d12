/**
 * What the screen shows for what was asked: plain text, ready to be shown. All of the app's use of the
 * library stands here, and runs in the worker.
 */
import {
  type ComponentId,
  components,
  type Demand,
  fit,
  formatAmount,
  formatTally,
  revise,
  roundToKitchen,
  type Sheet,
  sheet,
} from "steelyard";
import { personCard } from "steelyard/card";
import { starterFoods } from "steelyard/foods";
import { recipeFromText } from "steelyard/interchange";
import { portionPlan } from "steelyard/plan";

export interface Asked {
  readonly text: string;
  /** Whose spoons the recipe was written with. */
  readonly spoons: "metric" | "us" | "imperial" | "australian";
  /** kcal; as written where it is not said. */
  readonly energy?: number;
  /** The line that may change by itself, and to how much protein in grams. */
  readonly moves?: string;
  readonly protein?: number;
  readonly kitchen: "metric" | "us";
  /** Whose page is to be printed. */
  readonly who?: string;
}

export interface Told {
  /** What of the recipe could not be read, and what to do. */
  readonly unclear: readonly string[];
  readonly portion?: Portion;
  /** The page to print, where it was asked for. */
  readonly page?: string;
}

export interface Portion {
  readonly name: string;
  /** As written: where the sliders start. */
  readonly written: { readonly energy: number; readonly protein: number };
  /** Grams of protein that the portion brings in these amounts. */
  readonly protein: number;
  /** What could not be reached, in words. */
  readonly misses: readonly string[];
  readonly lines: readonly { readonly key: string; readonly name: string; readonly amount: string }[];
  readonly nutrients: readonly { readonly name: string; readonly amount: string; readonly noData: string }[];
  readonly cautions: readonly string[];
}

const shown: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "availableCarbohydrate",
  "fibre",
  "calcium",
  "iron",
  "iodine",
  "vitaminD",
  "vitaminB12",
];

export function portion(asked: Asked): Told {
  const { unclear, base } = read(asked);
  if (!base) return { unclear };
  const { energy, moves, protein } = asked;
  const from = moves ? revise(base, { lines: { [moves]: { scaling: "adjustable" } } }) : base;
  const demands: Demand[] = [];
  if (energy !== undefined) demands.push({ of: "energy", exactly: energy });
  if (moves && protein !== undefined) demands.push({ of: "protein", exactly: protein });
  const fitted = fit(from, demands);
  const met = fitted.status === "met" ? fitted.sheet : (fitted.nearest ?? from);
  const measured = roundToKitchen(met, asked.kitchen, { demands, tolerance: "1 %" });
  const now = measured.status === "out-of-reach" ? met : measured.sheet;
  const misses = fitted.status === "met" ? [] : fitted.misses.map(({ text }) => text);
  const told = { unclear, portion: view(base, now, asked, misses) };
  return asked.who === undefined ? told : { ...told, page: page(now, asked, asked.who) };
}

let last: {
  readonly text: string;
  readonly spoons: string;
  readonly unclear: string[];
  readonly base?: Sheet;
};

/** Reads the recipe once for all positions of the sliders. */
function read({ text, spoons }: Asked): typeof last {
  if (last?.text === text && last.spoons === spoons) return last;
  const { recipe, lines, unclear } = recipeFromText(text, starterFoods, { measures: spoons });
  last = {
    text,
    spoons,
    unclear: unclear.map(({ path: [where, i], message, hint }) => {
      if (where === "name") return "Write the recipe's name on its first line.";
      if (where === "portions") return "Write how many the recipe serves: Serves 4.";
      return `“${lines[Number(i)]?.text}”: ${message}. ${hint}`;
    }),
    ...(recipe && { base: revise(sheet(recipe, starterFoods), { portions: 1 }) }),
  };
  return last;
}

function view(base: Sheet, now: Sheet, { kitchen }: Asked, misses: readonly string[]): Portion {
  const names = new Map(now.lines.map(({ key, name }) => [key, name]));
  const figure = (s: Sheet, id: ComponentId) => s.portion(id).value.toNumber();
  return {
    name: now.name,
    written: { energy: figure(base, "energy"), protein: figure(base, "protein") },
    protein: figure(now, "protein"),
    misses,
    lines: now.lines.map(({ key, name, amount }) => ({
      key,
      name,
      amount: formatAmount(amount, { measures: kitchen }),
    })),
    nutrients: shown.map((id) => ({
      name: components[id].name,
      amount: formatTally(now.portion(id)),
      noData: now
        .portion(id)
        .missing.map((key) => names.get(key) ?? key)
        .join("; "),
    })),
    cautions: cautionsOf(now),
  };
}

/** What the foods' cautions say, each once: nothing is known here of who eats, so all of them. */
function cautionsOf({ lines }: Sheet): readonly string[] {
  const foods = lines.flatMap(({ food }) => (food === undefined ? [] : [starterFoods.get(food)]));
  return [...new Set(foods.flatMap(({ cautions = [] }) => cautions.map(({ text }) => text)))];
}

function page(now: Sheet, { kitchen }: Asked, name: string): string {
  const plan = portionPlan({
    meals: [{ id: "meal", dishes: now }],
    people: [{ id: "who", name, demands: { energy: now.portion("energy").value } }],
    kitchen,
  });
  return personCard(plan, "who");
}
