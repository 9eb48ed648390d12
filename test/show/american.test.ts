import { parse } from "parse5";
import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { britishEnglish, type Language, say } from "../../src/document/language.ts";
import { components } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { proteinQuality } from "../../src/person/amino/quality.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { allergensOf } from "../../src/person/portion/allergens.ts";
import { doseCheck } from "../../src/person/portion/doses.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { americanEnglish } from "../../src/show/american.ts";
import type { Table } from "../../src/show/table.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { textOf } from "./markup.ts";

/**
 * British forms, by their endings and by word, and independent of the list that the library keeps.
 * Common practice, no source; foods by the names of USDA SR28 beside ours.
 */
const BRITISH: readonly RegExp[] = [
  // -our for -or, but not in four, hour, flour, sour, your.
  /\b(?!four|hour|flour|sour|your|our|pour|tour|scour|devour|contour)\w+our(?:s|ed|ing|ful|able|ite|hood)?\b/i,
  // -tre, -bre for -ter, -ber.
  /\b\w*(?:[tb]re)s?\b/i,
  // ae and oe for e, in words of medicine.
  /\b(?:\w*aem(?:ia|ic|o)\w*|haem\w*|oed\w*|oes(?:tr|oph)\w*|foet\w*|coel\w*|\w+rrhoea|paed\w*|gynae\w*|caes\w*)\b/i,
  // -ise, -isation, -yse for z: only words that an American writes with z.
  /\b\w+isation\w*\b/i,
  /\b(?:recogn|organ|real|util|minim|maxim|stand?ard|optim|summar|sterili|pasteur|emphas|special|general)is(?:e|es|ed|ing)\b/i,
  /\b(?:anal|paral|catal|hydrol)ys(?:e|ed|ing)\b/i,
  // A doubled l before -ed and -ing, where the stress does not ask for it.
  /\b(?:label|travel|cancel|model|level|total|signal|fuel)l(?:ed|ing|er)\b/i,
  /\b\w*sulph\w*\b/i,
  /\b(?:programmes?|grey|cheque|catalogue|analogue|tyre|kerb|plough|mould\w*|moult|smoulder|draught|gramme\w*|tonnes?|aluminium|judgement|licence|defence|offence|practise\w*|sceptic\w*|storey|whilst|amongst|towards|speciality|cosy|mollusc\w*|gelatine|yoghurts?)\b/i,
  /\b(?:aubergines?|courgettes?|beetroots?|wholemeal|wholewheat|wholegrain|cornflour|maize|haricot|broad beans?|spring onions?|coriander lea\w+|rocket|swedes?|mangetout|sweetcorn|linseeds?|rapeseed|prawns?|mince|minced|soya|chillies|cos|porridge|bicarbonate|skimmed|single cream|double cream|tins?|tinned|grilled|treacle|sultanas?|gammon|rashers?|icing sugar|caster sugar)\b/i,
];

const britishIn = (texts: Iterable<string>): string[] =>
  [...texts].flatMap((text) =>
    BRITISH.flatMap((form) => {
      const found = form.exec(text);
      return found ? [text.slice(Math.max(0, found.index - 30), found.index + 40)] : [];
    }),
  );

const textsOf = (tables: readonly Table[]): string[] =>
  tables.flatMap((t) => [
    t.title ?? "",
    ...t.notes,
    ...t.columns.flatMap(({ heading, unit }) => [heading, unit ?? ""]),
    ...t.rows.flatMap((row) =>
      row.kind === "group" ? [row.heading] : row.cells.map((c) => (typeof c === "string" ? c : c.text)),
    ),
  ]);

const person: Person = {
  sex: "female",
  age: 30,
  mass: "60 kg",
  height: "1.70 m",
  activity: "active",
  conditions: ["warfarin", "kidney-disease"],
};
/** Every starter food, in dishes of thirty; more than its own water boils off the first. */
const dishes: readonly Sheet[] = Array.from({ length: Math.ceil(starterFoods.ids.length / 30) }, (_, i) =>
  sheet(
    {
      name: `Dish ${i + 1}`,
      portions: 2,
      ...(i === 0 ? { yieldFactor: "0.2" } : {}),
      lines: starterFoods.ids.slice(30 * i, 30 * i + 30).map((food, at) => ({
        ...{ key: `line-${at}`, food, amount: "20 g" },
        ...(at % 5 === 0 ? { scaling: "per-portion" as const, added: "serving" as const } : {}),
      })),
    },
    starterFoods,
  ),
);
const uk = referenceIntakes("uk", person);
const plan = portionPlan({
  meals: dishes.map((dishes, i) => ({ id: `meal-${i}`, dishes })),
  people: [
    { id: "cox", demands: { factor: 1 } },
    { id: "stroke", demands: { factor: 2 } },
  ],
});
const eaten = Object.fromEntries(dishes.map((s, i) => [`meal ${i}`, s]));
const cardText = (language: Language): string[] => [
  textOf(parse(personCard(plan, "stroke", { language, day: compare(eaten, uk), personal: "show" }))),
];

const shown: readonly [string, (language: Language) => string[]][] = [
  ["sheets", (l) => textsOf(dishes.flatMap((s) => tablesOf(s, { language: l })))],
  ["a comparison", (l) => textsOf(tablesOf(compare(eaten, uk), { language: l }))],
  [
    "a comparison of the EU's",
    (l) => textsOf(tablesOf(compare(eaten, referenceIntakes("eu", person)), { language: l })),
  ],
  ["doses", (l) => textsOf(dishes.flatMap((s) => [...tablesOf(doseCheck(s, { cox: uk }), { language: l })]))],
  ["allergens", (l) => textsOf(dishes.flatMap((s) => [...tablesOf(allergensOf(s), { language: l })]))],
  [
    "protein",
    (l) => textsOf(dishes.flatMap((s) => [...tablesOf(proteinQuality(s, { person }), { language: l })])),
  ],
  ["a plan", (l) => textsOf(tablesOf(plan, { language: l }))],
  ["a shopping list", (l) => textsOf(tablesOf(shoppingList(plan), { language: l }))],
  ["a card", cardText],
  ["names of components", (l) => Object.values(components).map(({ name }) => say(l, name))],
];

describe("American English", () => {
  it.each(shown)("has no British form left in %s", (_, texts) => {
    expect(new Set(britishIn(texts(americanEnglish)))).toEqual(new Set());
  });

  it("has something to do there: the forms are found in the British output", () => {
    const found = new Set(shown.flatMap(([, texts]) => britishIn(texts(britishEnglish))));
    for (const form of ["fibre", "Yoghurt", "Courgette", "Aubergine", "molluscs", "sulphur"])
      expect([...found].join(" ")).toContain(form);
  });

  it("turns whole words alone, keeps a capital, and leaves gaps and what fills them", () => {
    const us = (phrase: string, gaps?: Record<string, string>): string => say(americanEnglish, phrase, gaps);
    expect(us("Fibre and fibreglass, soya-free")).toBe("Fiber and fibreglass, soy-free");
    expect(us("Yoghurt, Greek style, plain, fat free")).toBe("Yogurt, Greek style, plain, fat free");
    expect(us("Soya beans, dry")).toBe("Soybeans, dry");
    expect(us("{colour} of {name}", { colour: "grey", name: "Grey litre" })).toBe("grey of Grey litre");
    expect(us("constructor __proto__ toString")).toBe("constructor __proto__ toString");
    // What Americans write alike stays.
    for (const same of ["four hours", "wheat flour", "sour", "acres", "exercise", "otherwise"])
      expect(us(same)).toBe(same);
  });

  it("gives way to a phrase of its own, and a language without spellings changes nothing", () => {
    const own: Language = { ...americanEnglish, phrases: { fibre: "roughage" } };
    expect([say(own, "fibre"), say(own, "litres")]).toEqual(["roughage", "liters"]);
    expect(say({ ...own, spellings: {} }, "litres")).toBe("litres");
    expect(say({ ...own, spellings: { "c++": "cpp" } }, "c++ litres")).toBe("cpp litres");
    expect(say(britishEnglish, "litres")).toBe("litres");
  });

  it("does not turn its own words any further", () => {
    for (const [british, own] of Object.entries(americanEnglish.spellings ?? {})) {
      expect(british).toBe(british.toLowerCase());
      expect(say(americanEnglish, own), british).toBe(own);
    }
  });
});
