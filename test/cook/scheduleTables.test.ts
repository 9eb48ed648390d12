import "../../src/notebook.ts";
import Papa from "papaparse";
import { parseFragment } from "parse5";
import { describe, expect, it } from "vitest";
import { type CookingSchedule, cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { britishEnglish } from "../../src/document/language.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toCsv } from "../../src/show/csv.ts";
import { toHtml } from "../../src/show/html.ts";
import { toMarkdown } from "../../src/show/markdown.ts";
import { toText } from "../../src/show/text.ts";
import { HOSTILE, neutral, withoutIsolates } from "../show/hostile.ts";
import { elements, textOf } from "../show/markup.ts";

const foods: readonly FoodInput[] = [
  { id: "lentils", name: "Lentils, red", state: "dry", source: "made up", per100g: {} },
  { id: "water", name: "Water", source: "made up", per100g: {}, density: 1 },
  { id: "lemon", name: "Lemon juice", source: "made up", per100g: {} },
];

function supper(names: Readonly<Record<"dish" | "step" | "note" | "source", string>>): Plan {
  const soup = sheet(
    {
      name: names.dish,
      portions: 2,
      lines: [
        { key: "lentils", food: "lentils", amount: "150 g" },
        { key: "water", food: "water", amount: "650 g" },
        { key: "lemon", food: "lemon", amount: "10 g", scaling: "per-portion", added: "serving" },
      ],
      method: [`Simmer {lentils} in {water}${names.step}`, "Serve with {lemon}."],
      notes: [{ kind: "storage", text: names.note, source: names.source, days: 2 }],
    },
    foodTable(foods),
  );
  return portionPlan({
    meals: [{ id: "supper", name: names.dish, dishes: { soup: { sheet: soup, density: "1.05" } } }],
    people: [
      { id: "cox", name: "Cox" },
      { id: "bow", name: "Bow", demands: { factor: 2 } },
    ],
  });
}

const plain = { dish: "Lentil soup", step: ".", note: "Cold, 2 days.", source: "Club rules" };
const weekOf = (plan: Plan, day = "Sun"): CookingSchedule =>
  cookingSchedule(plan, {
    days: [day, "Mon", "Tue", "Wed"],
    cook: [day],
    away: { cox: ["Mon"] },
    meals: { supper: { vessel: "2 l" } },
  });

describe("a cooking schedule, shown", () => {
  const schedule = weekOf(supper(plain));

  it("says what is cooked when, how, what is served of it, and what to heed", () => {
    // By hand: Cox eats 3 portions of 400 g, Bow 4 of 800 g, which is 4400 g, and 4.19 l at 1.05 g/ml.
    expect(`\n${toText(schedule)}\n`).toBe(`
What is cooked
Day  Dish         Portions  Eaten on            As cooked  Runs
───  ───────────  ────────  ──────────────────  ─────────  ────
Sun  Lentil soup         7  Sun, Mon, Tue, Wed     4400 g     3

Sun: Lentil soup
Line               In all  Each of 3 runs
─────────────────  ──────  ──────────────
Lentils, red, dry   825 g           275 g
Water              3575 g          1192 g
─────────────────  ──────  ──────────────
as cooked          4400 g          1467 g

Sun: Lentil soup: method
Step  What to do
────  ─────────────────────────────────────
   1  Simmer 275 g lentils in 1192 g water.
   2  Serve with lemon juice.
amounts are those of one run
Left for serving: lemon juice

At serving, each time
Dish         Person  Days                Portions  From the pot  By volume  Added
───────────  ──────  ──────────────────  ────────  ────────────  ─────────  ───────────────
Lentil soup  Cox     Sun, Tue, Wed              3         400 g     381 ml  Lemon juice 5 g
Lentil soup  Bow     Sun, Mon, Tue, Wed         4         800 g     762 ml  Lemon juice 5 g

Cautions
Day  Dish         Note                                                                    Source
───  ───────────  ──────────────────────────────────────────────────────────────────────  ──────────
Sun  Lentil soup  eaten on Wed, up to 3 days after it is cooked; the recipe gives 2       Club rules
                  days: Cold, 2 days.
Sun  Lentil soup  3 equal runs, since 4.19 l is more than the 2 l that it holds
Sun  Lentil soup  Cold, 2 days.                                                           Club rules
`);
  });

  it("names columns for what it has, and no others", () => {
    const once = toText(cookingSchedule(supper(plain)));
    for (const word of ["Day", "Runs", "Eaten on", "Cautions"]) expect(once).not.toContain(word);
    expect(toText(cookingSchedule(supper(plain), { meals: { supper: { eaten: [] } } }))).toContain(
      "nothing is cooked",
    );
  });

  it("tells full runs from the rest, and one run from several", () => {
    const full = (capacity: string): string =>
      toText(cookingSchedule(supper(plain), { meals: { supper: { vessel: { capacity, runs: "full" } } } }));
    // 1200 g in all, the shares of 400 g and 800 g.
    expect(full("500 g")).toMatch(/Line +In all +Each of 2 full runs +The rest\n/);
    expect(full("500 g")).toMatch(/as cooked +1200 g +500 g +200 g\n/);
    expect(full("500 g")).toContain("amounts are those of one full run");
    expect(full("1 kg")).toMatch(/Line +In all +The full run +The rest\n/);
    expect(full("2 kg")).not.toMatch(/run of|one run|one full run|The rest/);
  });

  it("shows itself in a notebook and in markdown", () => {
    const display = (schedule as unknown as Record<symbol, () => Record<string, string>>)[
      Symbol.for("Jupyter.display")
    ]?.call(schedule);
    expect(display?.["text/html"]).toContain("What is cooked");
    expect(toMarkdown(schedule)).toContain("| Sun | Lentil soup |");
  });

  it("speaks the language it is given, decimal mark and all", () => {
    const language = {
      ...britishEnglish,
      tag: "de",
      decimal: "," as const,
      phrases: {
        "What is cooked": "Was gekocht wird",
        "{amount} {name}": "{name}: {amount}",
        "{count} days": "{count} Tage",
        "Left for serving: {lines}": "Zum Anrichten: {lines}",
        "{count} equal runs, since {needs} is more than the {capacity} that it holds":
          "{count} gleiche Gänge: {needs} statt {capacity}",
      },
    };
    const text = toText(schedule, { language });
    for (const word of [
      "Was gekocht wird",
      "Lentils: 275 g",
      "up to 3 Tage after",
      "Zum Anrichten: Lemon juice",
      "3 gleiche Gänge: 4,19 l statt 2 l",
    ]) {
      expect(text).toContain(word);
    }
  });
});

describe("hostile names", () => {
  const named = (text: string): { readonly schedule: CookingSchedule; readonly name: string } => {
    const name = text.trim() === "" || /[^\P{Cc}\t\r\n]/u.test(text) ? "plain" : text;
    // A day is one line; a method keeps braces for its lines.
    const day = /\p{Cc}/u.test(name) || name === "__proto__" ? "day" : name;
    const plan = supper({ dish: "Soup", step: ` ${name.replace(/[{}]/g, "")}`, note: name, source: name });
    return { schedule: weekOf(plan, day), name };
  };

  it("stay inert in html, and read back as they were written", () => {
    for (const text of HOSTILE) {
      const { schedule, name } = named(text);
      const html = parseFragment(toHtml(schedule));
      for (const bad of ["script", "img", "a", "b", "svg", "style", "iframe"]) {
        expect(elements(html, bad), bad).toEqual([]);
      }
      const cells = elements(html, "td").map((cell) =>
        withoutIsolates(textOf(cell)).trim().replace(/\s+/g, " "),
      );
      expect(cells).toContain(neutral(name).trim().replace(/\s+/g, " "));
    }
  });

  it("start no formula in csv", () => {
    for (const text of HOSTILE) {
      const { data } = Papa.parse<string[]>(
        toCsv(named(text).schedule, { notes: true }).replace(/^\uFEFF/, ""),
      );
      for (const cell of data.flat()) expect(cell).not.toMatch(/^\s*[=+\-@＝＋－＠](?![\d.]+$)/);
    }
  });
});
