import { type CardOptions, personCard } from "../../src/card/personCard.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";

/** A global that hostile names would set, if any of them ran. */
export const sentinel = "ranFromAName";

const names = {
  image: `<img src="http://card.test/x.png" onerror="${sentinel}=1">`,
  script: `</style></title></table><script>${sentinel}=1</script>`,
  quote: `" onmouseover="${sentinel}=1" x="`,
  apostrophe: `' onfocus='${sentinel}=1' autofocus='`,
  formula: "=cmd|'/c calc'!A1",
  pipes: "| a | b |",
  lines: "one\ntwo\r\nthree\u2028four",
  override: "abc\u202Efed\u202C",
  svg: `<svg onload="${sentinel}=1"><use href="http://card.test/y.svg#z"/></svg>`,
  style: "</style><style>@import url(http://card.test/z.css);</style>",
  link: `<a href="javascript:${sentinel}=1">x</a><base href="http://card.test/">`,
  long: "w".repeat(200),
};

/** A plan takes no control characters in the names of people and meals. */
const named = (text: string): string => text.replace(/\p{Cc}/gu, " ");

/** A plan in which every text that comes from outside is one of the texts given. */
export function planOfTexts(at: (place: string) => string): Plan {
  const food = (id: string): FoodInput => ({
    id,
    name: at(`food ${id}`),
    state: "raw",
    per100g: { energy: 100, protein: 5, fat: 2, carbohydrateByDifference: 10 },
    source: at(`food source ${id}`),
    measures: [{ name: at("measure").replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, " "), grams: 30 }],
    cautions: [{ code: "own", text: at(`food caution ${id}`), source: at(`caution source ${id}`) }],
  });
  const foods = foodTable([food("a"), food("b")]);
  const dish = sheet(
    {
      name: at("dish"),
      portions: 2,
      lines: [
        { key: "a", food: "a", amount: "100 g", prep: at("prep") },
        {
          key: "b",
          food: "b",
          amount: { value: 2, unit: foods.get("b").measures?.[0]?.name ?? "" },
          added: "serving",
        },
      ],
      method: [`${at("method").replace(/[{}]/g, "")} {a}`],
      notes: [{ kind: "storage", text: at("note"), source: at("note source") }],
    },
    foods,
  );
  return portionPlan({
    meals: [{ id: "meal", name: named(at("meal")), dishes: dish }],
    people: [{ id: "person", name: named(at("person")), demands: { energy: 200 } }],
  });
}

/** A card on which every text that comes from outside is one of the texts given. */
export function cardOfTexts(at: (place: string) => string): string {
  const how: CardOptions = {
    date: at("date"),
    version: at("version"),
    about: { mass: at("mass"), age: at("age"), conditions: [at("condition")] },
    cautions: [{ text: at("caution"), source: at("source") }],
    day: [{ of: "protein", reference: { value: 50, source: at("day source") } }],
  };
  return personCard(planOfTexts(at), "person", how);
}

/** A card on which every text from outside means harm: all of the above, begun at another in every place. */
export function hostileCard(): string {
  const all = Object.values(names);
  let first = 0;
  return cardOfTexts((place) => {
    first += 1;
    const turned = all.map((_, i) => all[(i + first) % all.length] ?? "");
    return `${place}: ${turned.join(" ")}`.slice(0, /^(measure|meal|person)$/.test(place) ? 190 : 480);
  });
}
