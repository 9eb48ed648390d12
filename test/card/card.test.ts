import fc from "fast-check";
import { type DefaultTreeAdapterMap, parse } from "parse5";
import { describe, expect, it } from "vitest";
import { type CardOptions, personCard } from "../../src/card/personCard.ts";
import { starterFoods } from "../../src/foods.ts";
import { fixedText } from "../../src/number/digits.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { campDay, campPlan } from "../plan/camp.ts";
import { runs } from "../runs.ts";
import { hostileText, neutral } from "../show/hostile.ts";
import { elements, textOf } from "../show/markup.ts";
import { cardOfTexts } from "./hostileCard.ts";

type Node = DefaultTreeAdapterMap["node"];

const attributes = (node: Node): Record<string, string> =>
  "attrs" in node ? Object.fromEntries(node.attrs.map((a) => [a.name, a.value])) : {};

/** Text as it shows: other white space than a line end is one space. */
const shown = (node: Node): string =>
  textOf(node)
    .replace(/[\u00A0 ]+/g, " ")
    .trim();

const plan = campPlan();

/** A card, read back by a parser of the HTML standard. */
function read(html: string): Node {
  const errors: string[] = [];
  const page = parse(html, { onParseError: (e) => errors.push(e.code) });
  // Text may hold code points that the standard forbids yet keeps: non-characters.
  expect(errors.filter((e) => !e.startsWith("noncharacter-"))).toEqual([]);
  return page;
}

const card = (how: CardOptions = {}, person = "cox", of: Plan = plan): Node =>
  read(personCard(of, person, how));

/** The rows of every table, as texts. */
const rows = (page: Node): string[][] =>
  elements(page, "tr").map((row) => elements(row, "th", "td").map(shown));
const row = (page: Node, heading: string): string[] => rows(page).find(([first]) => first === heading) ?? [];
/** What stands of a nutrient: its figure, what is said of it, its share of a day. */
const nutrient = (page: Node, name: string): readonly (string | undefined)[] => {
  const [section] = elements(page, "section").filter((each) => attributes(each).class === "nutrients");
  const tr = section && elements(section, "tr").find((each) => shown(each).startsWith(`${name}`));
  const part = (is: string): string | undefined =>
    (tr ? elements(tr, "span", "small") : [])
      .filter((each) => attributes(each).class === is || each.nodeName === is)
      .map(shown)[0];
  return [part("lead"), part("small"), part("percent")];
};
const items = (page: Node): string[] => elements(page, "li").map(shown);

describe("personCard", () => {
  it("says what to weigh, in whole grams from 10 on, and what that is in spoons and pieces", () => {
    const page = card();
    const pot = plan.portion("cox", "breakfast").dishes.get("pot");
    // What goes into a pot for three is nobody's to weigh: its cook has another page.
    expect(row(page, "Oats, rolled, dry")).toEqual([]);
    for (const line of plan.dish("breakfast", "pot").serving("cox").added?.lines ?? []) {
      const cells = rows(page).find(([first]) => first?.startsWith(line.name.split(",")[0] ?? "?"));
      const places = line.grams.gte(10) ? 0 : 1;
      expect(cells?.[1]).toContain(`${Number(line.grams.toFixed(places))} g`);
    }
    // Spoons come first for spoonfuls; a tenth of a piece is nobody's to cut.
    expect(row(page, "Cinnamon, dry the same for everyone")[1]).toBe("½ tsp 1.3 g");
    expect(row(page, "Bananas sliced")[1]).toBe("49 g");
    expect(items(page)).toContain("1 metric cup is 250 ml; 1 metric tsp is 5 ml");
    expect(row(page, "As eaten")[1]).toBe(`${pot?.mass.cooked.toFixed(0)} g`);
  });

  it("puts each line's amount into the method once, and says which lines that leaves out", () => {
    const keys = ["a", "b", "c", "d"];
    const piece = fc.oneof(
      fc.constantFrom(...keys).map((key) => `{${key}}`),
      fc.constantFrom(" stir ", ", ", "5 minutes"),
    );
    const step = fc.array(piece, { minLength: 1, maxLength: 6 }).map((all) => all.join(" "));
    const grams = ["101", "202", "303", "404"];
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 4 }), (method) => {
        const dish = sheet(
          {
            name: "Dish",
            portions: 1,
            lines: keys.map((key, i) => ({
              key,
              food: starterFoods.ids[i * 7] ?? "",
              amount: `${grams[i]} g`,
            })),
            method,
          },
          starterFoods,
        );
        const made = portionPlan({ meals: [{ id: "m", dishes: dish }], people: [{ id: "p", demands: {} }] });
        const page = card({}, "p", made);
        const steps = elements(page, "main")
          .flatMap((main) => elements(main, "ol"))
          .flatMap((list) => elements(list, "li"));
        expect(steps).toHaveLength(method.length);
        const text = steps.map(shown).join("\n");
        const left = elements(page, "main")
          .flatMap((main) => elements(main, "p"))
          .map(shown)
          .join("\n");
        dish.lines.forEach((line, i) => {
          const inSteps = text.split(`${grams[i]} g`).length - 1;
          const named = method.some((each) => each.includes(`{${line.key}}`));
          expect(inSteps).toBe(named ? 1 : 0);
          const short = (line.name.split(",")[0] ?? "").toLowerCase();
          expect(left.includes(`Not named in the method:`) && left.toLowerCase().includes(short)).toBe(
            !named,
          );
        });
      }),
      { numRuns: runs(60) },
    );
  });

  it("holds what a portion brings against the day, rounded the safe way, unknown never as nothing", () => {
    const page = card({ day: campDay });
    const brings = (id: "protein" | "iodine" | "vitaminD"): number =>
      plan.brings("cox", "breakfast", id).value.toNumber();
    expect(nutrient(page, "protein")).toEqual([
      `${brings("protein").toPrecision(3)} g`,
      undefined,
      `${Math.round((brings("protein") / 80) * 100)}%`,
    ]);
    expect(nutrient(page, "iodine")).toEqual([
      `at least ${Math.floor(brings("iodine") * 10) / 10} µg`,
      undefined,
      `at least ${Math.floor((brings("iodine") / 150) * 100)}%`,
    ]);
    expect(nutrient(page, "calcium")).toEqual(["273 mg", "all or part calculated", undefined]);
    const hatched = elements(page, "svg")
      .filter((svg) => elements(svg, "rect").some((rect) => attributes(rect).class === "unknown"))
      .map((svg) => attributes(svg)["aria-label"]);
    expect(hatched).toContain(
      `at least ${Math.floor((brings("iodine") / 150) * 100)}% of a day, the rest is not known`,
    );
    expect(hatched).not.toContain(`${Math.round((brings("protein") / 80) * 100)}% of a day`);
    expect(items(page).filter((item) => item.startsWith("no iodine data:"))[0]).toContain("cinnamon");
  });

  it("draws bars as long as the shares that it says, a whole day being 100 of 120", () => {
    for (const { id } of plan.people) {
      const page = card({ day: campDay }, id);
      for (const { of, reference } of campDay) {
        const label = {
          energy: "energy",
          protein: "protein",
          fibre: "fibre",
          iron: "iron",
          iodine: "iodine",
        }[String(of)];
        if (label === undefined || reference === undefined) continue;
        const tr = elements(page, "tr").find((each) =>
          shown(elements(each, "th")[0] ?? each).startsWith(label),
        );
        const [bar] = tr ? elements(tr, "rect") : [];
        const share = plan.brings(id, "breakfast", of).value.toNumber() / Number(reference.value);
        expect(Number(bar && attributes(bar).width)).toBeCloseTo(Math.min(120, share * 100), 0);
      }
    }
  });

  it("shares energy in whole per cents that total 100, as 4, 9, 4 and 7 kcal per gram do", () => {
    // General Atwater factors: FAO Food and Nutrition Paper 77 (2003), section 3.5.
    const page = card();
    const [key] = elements(page, "figcaption");
    const said = key ? elements(key, "li").map(shown) : [];
    const percents = said.flatMap((text) => /^(protein|fat|carbohydrate) (\d+)%$/.exec(text)?.slice(1) ?? []);
    const g = (id: "protein" | "fat" | "carbohydrateByDifference"): number =>
      plan.brings("cox", "breakfast", id).value.toNumber();
    const parts = [g("protein") * 4, g("fat") * 9, g("carbohydrateByDifference") * 4];
    const all = parts.reduce((a, b) => a + b);
    const figures = [1, 3, 5].map((i) => Number(percents[i]));
    expect(figures.reduce((a, b) => a + b)).toBe(100);
    parts.forEach((part, i) => {
      expect(Math.abs((part / all) * 100 - (figures[i] ?? 0))).toBeLessThan(1);
    });
    // Seeds say nothing of alcohol and cannot hold any: no width of the bar is kept for it.
    expect(said.join()).not.toMatch(/not all known/);
  });

  it("hatches as much of the energy's bar as the share of the mass that does not tell all", () => {
    const silent = starterFoods.with([
      {
        id: "mine",
        name: "My own mix",
        source: "the cook",
        per100g: { fat: 20, carbohydrateByDifference: 30 },
      },
    ]);
    const endOf = (mix: string): readonly number[] => {
      const dish = sheet(
        {
          name: "Bowl",
          portions: 1,
          lines: [
            { key: "oats", food: "oats-rolled-dry", amount: "100 g" },
            { key: "mix", food: "mine", amount: mix },
          ],
        },
        silent,
      );
      const page = card(
        {},
        "cox",
        portionPlan({ meals: [{ id: "m", dishes: dish }], people: [{ id: "cox" }] }),
      );
      const bar = elements(page, "svg").find((svg) => attributes(svg).class === "energy");
      const rects = bar ? elements(bar, "rect").map(attributes) : [];
      const widths = rects.filter((rect) => rect.class !== "frame").map(({ width }) => Number(width));
      // Whatever is hatched, the bar is full.
      expect(Math.abs(widths.reduce((a, b) => a + b) - 300)).toBeLessThan(0.5);
      return rects.filter((rect) => rect.class === "unknown").map(({ width }) => Number(width));
    };
    // By mass, 3 g of 103 and 25 g of 125 say nothing of protein; 0.2 g can just be seen, and half stays for what is known.
    expect(endOf("3 g")[0]).toBeCloseTo((300 * 3) / 103, 0);
    expect(endOf("25 g")[0]).toBeCloseTo((300 * 25) / 125, 0);
    expect(endOf("0.2 g")).toEqual([3]);
    expect(endOf("900 g")).toEqual([150]);
  });

  it("puts first what is above an upper level, and says so in words", () => {
    const page = card({
      day: [
        {
          of: "iron",
          reference: { value: 14, source: "s" },
          upper: { value: 3, source: "limits of our own" },
        },
        { of: "protein", reference: { value: 50, source: "s" }, upper: { value: 500, source: "s" } },
      ],
    });
    const [cautions] = elements(page, "section").filter((each) => attributes(each).class === "cautions");
    expect(cautions && elements(cautions, "li").map(shown)[0]).toBe(
      "iron: 3.53 mg is above the upper level of 3 mg a day",
    );
    expect(nutrient(page, "iron")[2]).toBe("25% over");
    expect(nutrient(page, "protein")[2]).not.toContain("over");
    // What is held against a level is more than what is shown.
    const salted = card({ day: [{ of: "sodium", upper: { value: 5, source: "s" } }] });
    expect(items(salted)).toContain("sodium: 90.5 mg is above the upper level of 5 mg a day");
    expect(nutrient(salted, "sodium")).toEqual([undefined, undefined, undefined]);
    expect(items(page)).toContain("limits of our own");
  });

  it("names allergens that are known, and takes no silence for absence", () => {
    const under = (of: Node): string[] =>
      elements(of, "header").flatMap((each) => elements(each, "p").map(shown));
    expect(under(card())).toContain("Allergens: cereals containing gluten; milk");
    const page = read(cardOfTexts((place) => place));
    expect(under(page)).toContain("Allergens are not known of food a; food b: unknown is not free from");
  });

  it("gives nothing of the body away unless asked", () => {
    const cautions = [
      { code: "warfarin", text: "Keep vitamin K steady.", source: "a clinic" },
      { code: "pregnant", text: "In pregnancy …", source: "a clinic" },
      { code: "meets", text: "Meets a medicine.", source: "a clinic", because: ["insulin"] },
      { code: "protein-share", text: "Much protein.", source: "a body", because: [] },
    ];
    const plain = card({ cautions });
    const wall = shown(plain);
    for (const word of [
      "warfarin",
      "vitamin K steady",
      "pregnancy",
      "medicine",
      "a clinic",
      "Body mass",
      "Age:",
    ]) {
      expect(wall).not.toContain(word);
    }
    expect(wall).toContain("Much protein.");
    expect(wall).toContain("Cautions about the person, where there are any, are not shown here");
    // The same sentence stands there for everyone, so that it tells nothing of anyone.
    expect(shown(card())).toContain("Cautions about the person, where there are any, are not shown here");
    const asked = shown(
      card({ cautions, personal: "show", about: { mass: "52 kg", age: "22", conditions: ["on warfarin"] } }),
    );
    for (const word of [
      "Keep vitamin K steady.",
      "In pregnancy",
      "Body mass: 52 kg",
      "Age: 22",
      "on warfarin",
    ]) {
      expect(asked).toContain(word);
    }
    expect(asked).not.toContain("are not shown here");
  });

  it("takes a comparison for the day, and of it only levels that count food", () => {
    const rower: Person = { sex: "female", age: 24, mass: "60 kg", height: "1.70 m", activity: "active" };
    const pot = plan.portion("cox", "breakfast").dishes;
    const comparison = compare(pot, referenceIntakes("eu", rower));
    const components = ["protein", "iron", "magnesium"] as const;
    const page = card({ day: comparison, components, personal: "show" });
    // EFSA: 0.83 g of protein per kg a day (EFSA Journal 10(2):2557), 16 mg of iron (13(10):4254).
    const iron = plan.brings("cox", "breakfast", "iron").value.toNumber();
    const protein = plan.brings("cox", "breakfast", "protein").value.toNumber();
    expect(nutrient(page, "protein")[2]).toBe(`${Math.round((protein / (0.83 * 60)) * 100)}%`);
    expect(nutrient(page, "iron")[2]).toBe(`${Math.round((iron / 16) * 100)}%`);
    // 250 mg of magnesium is a level for supplements: 177 mg from food is not held against it.
    const sure = card({ day: comparison, components: ["magnesium"] }, "heavyweight");
    expect(plan.brings("heavyweight", "breakfast", "magnesium").value.gt(250)).toBe(true);
    expect(nutrient(sure, "magnesium")[2]).not.toContain("over");
    const heeding = card({ day: comparison, cautions: comparison.cautions });
    expect(items(heeding).filter((item) => item.includes("No honey for a child"))).toHaveLength(1);
    // A share of so much for each kilogram gives away the kilograms.
    const hidden = card({ day: comparison, components });
    expect([nutrient(hidden, "protein")[2], nutrient(hidden, "iron")[2]]).toEqual([
      undefined,
      nutrient(page, "iron")[2],
    ]);
    for (const secret of ["per kg", "60 kg", "49.8"]) expect(shown(hidden)).not.toContain(secret);
  });

  it("carries the caller's date and version, and none where none is given", () => {
    const [time] = elements(card({ date: "2026-01-12", version: "3" }), "time");
    expect(time && attributes(time)).toEqual({ datetime: "2026-01-12" });
    expect(elements(card({ date: "the second Monday" }), "time")).toEqual([]);
    expect(shown(card({ date: "the second Monday" }))).toContain("the second Monday");
    expect(personCard(plan, "cox")).not.toMatch(/20\d\d-\d\d-\d\d/);
    expect(personCard(plan, "cox", { day: campDay })).toBe(personCard(plan, "cox", { day: campDay }));
  });

  it("numbers its sources, and every reference leads to one", () => {
    const page = card({ day: campDay, cautions: [{ text: "Heed this.", source: "A body, 2020" }] });
    const ids = elements(page, "li").map((item) => attributes(item).id);
    const links = elements(page, "a").map((link) => attributes(link).href ?? "");
    expect(links.length).toBeGreaterThan(1);
    for (const link of links) expect(ids).toContain(link.slice(1));
    const at = items(page).indexOf("A body, 2020");
    expect(links).toContain(`#${ids[at]}`);
    expect(items(page).some((item) => item.startsWith("USDA SR28, NDB 08120, "))).toBe(true);
  });

  it("is read back as what was put in, wherever text comes from, whatever it is", () => {
    const own = new Set(
      "html head meta title style body svg defs pattern rect circle line path header main footer section div h1 h2 h3 p bdi time table caption thead tbody tfoot tr th td small ol ul li b figure figcaption span sup a br i details summary".split(
        " ",
      ),
    );
    const places = [
      "person",
      "meal",
      "dish",
      "food a",
      "prep",
      "method",
      "note",
      "source",
      "caution",
      "version",
    ];
    fc.assert(
      fc.property(hostileText, (text) => {
        const harm = ` ${text.replace(/[\p{Cc}\p{Cs}]/gu, "").slice(0, 120)} `;
        const page = read(cardOfTexts((place) => `${place}${harm}.`));
        for (const element of elements(page)) {
          expect(own).toContain(element.nodeName);
          for (const [name, value] of Object.entries(attributes(element))) {
            expect(name).not.toMatch(/^on|^src$|^srcset$|^srcdoc$|^action$|^formaction$|^xlink/);
            if (name === "href") expect(value).toMatch(/^#source-\d+$/);
            if (name === "style") expect(value).toMatch(/^--type:[\d.]+pt$/);
          }
        }
        const all = textOf(page);
        for (const place of places) {
          const put = neutral(`${place}${harm}.`).replace(place === "method" ? /[{}]/g : /$^/g, "");
          expect(all).toContain(put.trim() === put ? put : put.trim());
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("keeps its title a title", () => {
    const page = read(cardOfTexts((place) => `${place} </title></style><script>x</script> &lt; "'`));
    expect(elements(page, "script")).toEqual([]);
    const [title] = elements(page, "title");
    expect(title && textOf(title)).toBe(
      `person </title></style><script>x</script> &lt; "', meal </title></style><script>x</script> &lt; "'`,
    );
  });

  it("names lines in full in the method where their first words are alike", () => {
    const dish = sheet(
      {
        name: "Two milks",
        portions: 1,
        lines: [
          { key: "a", food: "milk-whole", amount: "100 g" },
          { key: "b", food: "milk-skimmed", amount: "50 g" },
          { key: "c", food: "oats-rolled-dry", amount: "40 g" },
        ],
        method: ["Mix {a}, {b} and {c}."],
      },
      starterFoods,
    );
    const made = portionPlan({ meals: [{ id: "m", dishes: dish }], people: [{ id: "p", demands: {} }] });
    const [whole, skimmed] = dish.lines.map((line) => line.name);
    expect(items(card({}, "p", made))).toContain(
      `Mix 100 g ${whole?.replace("M", "m")}, 50 g ${skimmed?.replace("M", "m")} and 40 g oats.`,
    );
  });

  it("refuses what it cannot show, every fault at once", () => {
    const how: CardOptions = {
      components: ["protein", "vitaminX" as "protein"],
      day: [
        { of: "iron", reference: { value: 0, source: "s" }, upper: { value: "much", source: "s" } },
        { of: "iron" },
        { of: "constructor" as "iron" },
      ],
    };
    try {
      personCard(plan, "cox", how);
      expect.unreachable();
    } catch (error) {
      const { faults } = error as { faults: readonly { code: string; path: readonly unknown[] }[] };
      expect(faults.map(({ code, path }) => [code, path.join(".")])).toEqual([
        ["component-unknown", "components.1"],
        ["card-malformed", "day.0.reference.value"],
        ["number-malformed", "day.0.upper.value"],
        ["card-malformed", "day.1.of"],
        ["component-unknown", "day.2.of"],
      ]);
    }
    expect(() => personCard(plan, "stroke")).toThrow(/stroke/);
    expect(() => personCard(plan, "cox", { meals: ["supper"] })).toThrow(/supper/);
    expect(() => personCard(plan, "cox", { meals: [] })).toThrow(/no meals/);
  });

  it("adds several meals up to one day", () => {
    const porridge = (name: string) =>
      sheet(
        { name, portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "50 g" }] },
        starterFoods,
      );
    const days = portionPlan({
      meals: [
        { id: "breakfast", dishes: porridge("Porridge") },
        { id: "supper", dishes: porridge("Gruel") },
      ],
      people: [{ id: "cox", name: "Cox", demands: {} }],
    });
    // 2 × 50 g of rolled oats: 13.15 g of protein in 100 g, USDA SR28, NDB 08120.
    expect(nutrient(card({}, "cox", days), "protein")[0]).toBe("13.2 g");
    expect(nutrient(card({ meals: ["supper"] }, "cox", days), "protein")[0]).toBe("6.58 g");
    expect(elements(card({ meals: ["supper"] }, "cox", days), "h3").map(shown)).toEqual(["Gruel"]);
  });

  it("says what to take of a pot that several eat from, and no such thing of a pot for one", () => {
    const { grams } = plan.dish("breakfast", "pot").serving("cox");
    const share = row(card(), "From the pot");
    expect(share.slice(0, 2)).toEqual(["From the pot", `${fixedText(grams, 0)} g`]);
    expect(items(card()).some((text) => text.startsWith("Warm "))).toBe(false);
    const alone = portionPlan({
      meals: [{ id: "m", dishes: campPlan().dish("breakfast", "pot").batch }],
      people: [{ id: "cox", demands: {} }],
    });
    expect(row(card({}, "cox", alone), "From the pot")).toEqual([]);
  });

  it("says what a portion misses, and that nothing is served where what must hold cannot", () => {
    const dishes = sheet(
      { name: "Porridge", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "50 g" }] },
      starterFoods,
    );
    const heavy = { of: "mass" as const, least: "100 g" };
    const light = { of: "energy" as const, most: 100 };
    const hungry = portionPlan({
      meals: [{ id: "m", name: "Breakfast", dishes }],
      people: [
        { id: "near", demands: [heavy, { ...light, firm: true }] },
        {
          id: "none",
          demands: [
            { ...heavy, firm: true },
            { ...light, firm: true },
          ],
        },
      ],
    });
    const missed = (who: string): string[] =>
      elements(card({}, who, hungry), "p")
        .filter((each) => attributes(each).class === "over-text")
        .map(shown);
    expect(missed("near")).toEqual(hungry.portion("near", "m").misses.map(({ text }) => text));
    expect(missed("near")).toHaveLength(1);
    expect(missed("none")).toEqual(["Nothing is served, since what must hold cannot."]);
    expect(elements(card({}, "none", hungry), "table")).toEqual([]);
  });

  it("sets type no larger as a card grows", () => {
    const size = (lines: number): number => {
      const dish = sheet(
        {
          name: "Dish",
          portions: 1,
          lines: Array.from({ length: lines }, (_, i) => ({
            food: starterFoods.ids[i * 3] ?? "",
            amount: "10 g",
          })),
        },
        starterFoods,
      );
      const made = portionPlan({ meals: [{ id: "m", dishes: dish }], people: [{ id: "p", demands: {} }] });
      return Number(/--type:([\d.]+)pt/.exec(personCard(made, "p"))?.[1]);
    };
    const sizes = [1, 3, 6, 10, 15, 20, 30, 60].map(size);
    expect([...sizes].sort((a, b) => b - a)).toEqual(sizes);
    expect(sizes[0]).toBeGreaterThan(14);
    expect(sizes.at(-1)).toBe(10.5);
  });
});
