import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Origin } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import type { Fault } from "../../src/number/error.ts";
import type { Avoided, MealInput, PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { met, runs } from "../runs.ts";
import { expected, inputOf, type World, words, worlds } from "./peopleWorlds.ts";

/** `people.0.avoid.1 m0: l0, l1/l0` of each fault. */
const refusals = (faults: readonly Fault[]): string[] =>
  faults
    .map(({ path, message }) => `${path.join(".")} ${message.slice(message.indexOf("is in ") + 6)}`)
    .sort();

const refusedBy = (input: PlanInput): readonly string[] => refusals(errorOf(() => portionPlan(input)).faults);

const unknownOf = ({ avoided }: Plan): string[] =>
  avoided.unknown
    .map(
      ({ person, meal, dish, line, of, origin }) =>
        `${person} ${meal} ${dish} ${line} ${origin ?? [...of].sort().join("+")}`,
    )
    .sort();

const overriddenOf = ({ avoided }: Plan): string[] =>
  avoided.overridden
    .map(({ person, meal, dish, lines, avoided: what }) => {
      const [id] = Object.values(what);
      return `${person} ${id} ${meal} ${dish}: ${lines.join(", ")}`;
    })
    .sort();

/** The same world with every entry overridden: what is declared on the person becomes an entry. */
function allowed(world: World): World {
  return {
    ...world,
    people: world.people.map(({ avoid, declared, away }) => {
      const more = declared.filter((id) => !avoid.some(({ what }) => what === id));
      const all = [...avoid, ...more.map((what) => ({ what, override: true }))];
      return { declared, away, avoid: all.map((each) => ({ ...each, override: true })) };
    }),
  };
}

describe("what people avoid", () => {
  it("is found in any dish, however deep, for those who avoid it and for nobody else", () => {
    let [refused, served] = [0, 0];
    fc.assert(
      fc.property(worlds, (world) => {
        const wanted = expected(world);
        if (wanted.refused.length > 0) {
          refused += 1;
          expect(refusedBy(inputOf(world))).toEqual(wanted.refused);
        } else {
          served += 1;
          const plan = portionPlan(inputOf(world));
          expect(overriddenOf(plan)).toEqual(wanted.overridden);
          expect(unknownOf(plan)).toEqual(wanted.unknown);
        }
      }),
      { numRuns: runs(300) },
    );
    expect(Math.min(refused, served)).toBeGreaterThan(met(10));
  });

  it("is served where each of it is overridden, and foods that say nothing stay listed", () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const all = allowed(world);
        const wanted = expected(all);
        const plan = portionPlan(inputOf(all));
        expect(wanted.refused).toEqual([]);
        expect(overriddenOf(plan)).toEqual(wanted.overridden);
        expect(unknownOf(plan)).toEqual(wanted.unknown);
        expect(plan.avoided.overridden.every(({ because }) => because === words)).toBe(true);
        // An override allows what is known; it says nothing of what is not.
        expect(unknownOf(plan)).toEqual(expected(world).unknown);
      }),
    );
  });

  it("is silenced by an override for what it names, and for nothing else", () => {
    fc.assert(
      fc.property(allowedWithOne(), ({ world, person, entry }) => {
        const people = world.people.map((each, p) => ({
          ...each,
          avoid: each.avoid.map((one, i) => ({ ...one, override: !(p === person && i === entry) })),
        }));
        const wanted = expected({ ...world, people }).refused;
        fc.pre(wanted.length > 0);
        const { faults } = errorOf(() => portionPlan(inputOf({ ...world, people })));
        expect(refusals(faults)).toEqual(wanted);
        for (const { path } of faults) expect(path).toEqual(["people", person, "avoid", entry]);
      }),
    );
  });

  it("does not hang on the order of people, meals, lines or entries", () => {
    fc.assert(
      fc.property(worlds, (world) => {
        const input = inputOf(allowed(world));
        const back = inputOf(allowed(world), { turned: true });
        const turned = {
          ...back,
          meals: [...(back.meals ?? [])].reverse(),
          people: [...back.people]
            .reverse()
            .map(({ avoid = [], ...rest }) => ({ ...rest, avoid: [...avoid].reverse() })),
        };
        const [one, other] = [portionPlan(input), portionPlan(turned)];
        expect(unknownOf(other)).toEqual(unknownOf(one));
        const bySet = (plan: Plan): string[] =>
          overriddenOf(plan).map((text) => text.split(/: |, /).sort().join(" "));
        expect(bySet(other)).toEqual(bySet(one));
      }),
      { numRuns: runs(50) },
    );
  });
});

/** A world in which all is overridden but one entry of one person. */
function allowedWithOne(): fc.Arbitrary<{ world: World; person: number; entry: number }> {
  return worlds
    .map(allowed)
    .filter(({ people }) => people.some(({ avoid }) => avoid.length > 0))
    .chain((world) => {
      const who = world.people.flatMap(({ avoid }, p) => avoid.map((_, entry) => ({ person: p, entry })));
      return fc.constantFrom(...who).map((at) => ({ world, ...at }));
    });
}

/** Oats with milk in a nested sauce, and nuts at serving. */
const bowl = sheet(
  {
    name: "Bowl",
    portions: 1,
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
      { key: "sauce", recipe: "sauce", amount: "50 g" },
      { key: "almonds", food: "almonds", amount: "10 g", added: "serving" },
    ],
  },
  starterFoods,
  {
    recipes: {
      sauce: { name: "Sauce", portions: 1, lines: [{ key: "milk", food: "milk-whole", amount: "100 g" }] },
    },
  },
);
const meals = [{ id: "breakfast", name: "Breakfast", dishes: bowl }];

describe("a refusal", () => {
  it("names person, meal and line, and ways out", () => {
    const people = [{ id: "cox", name: "Cox", avoid: ["milk"] as const }];
    const { code, path, message, hint } = errorOf(() => portionPlan({ meals, people })).faults[0] ?? {};
    expect([code, path]).toEqual(["allergen-served", ["people", 0, "avoid", 0]]);
    expect(message).toBe("milk, which Cox is not to be served, is in Breakfast: sauce/milk");
    expect(hint).toContain("substitute");
    expect(hint).toContain('avoid: [{ allergen: "milk", override:');
  });

  it("lists everyone's at once, with what cannot be reached", () => {
    const people = [
      { id: "cox", avoid: ["milk", { food: "almonds" }] },
      { id: "bow", person: { sex: "male", age: 20, mass: "80 kg", allergens: ["nuts"] } },
      { id: "stroke", avoid: ["nuts"] },
    ] as const;
    const input = { meals, people: people.slice(0, 2) };
    expect(
      errorOf(() => portionPlan(input)).faults.map(({ code, path }) => `${code} ${path.join(".")}`),
    ).toEqual([
      "allergen-served people.0.avoid.0",
      "avoided-served people.0.avoid.1",
      "allergen-served people.1.person.allergens.0",
    ]);
    // What is in a meal counts even where no portion of it is found.
    const short = { ...people[2], demands: { alcohol: 5 } };
    const codes = errorOf(() => portionPlan({ meals, people: [...people.slice(0, 1), short] })).faults;
    expect(codes.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([
      "allergen-served people.0.avoid.0",
      "avoided-served people.0.avoid.1",
      expect.stringMatching(/^target-\w+ people\.1\.demands/),
      "allergen-served people.1.avoid.0",
    ]);
  });

  it("spares a portion that a fit keeps clear of it", () => {
    // Cheese may be left out, and a limit on cholesterol leaves no room for it.
    const toast = sheet(
      {
        name: "Toast",
        portions: 1,
        lines: [
          { key: "beans", food: "lentils-boiled", amount: "100 g" },
          { key: "milk", food: "milk-whole", amount: "100 g", scaling: "adjustable", least: "0 g" },
        ],
      },
      starterFoods,
    );
    const of = (most: string): PlanInput => ({
      meals: [{ id: "lunch", dishes: toast }],
      people: [{ id: "cox", avoid: ["milk"], demands: [{ of: "cholesterol", most, firm: true }] }],
    });
    const plan = portionPlan(of("0 mg"));
    expect(
      plan
        .portion("cox", "lunch")
        .dishes.get("lunch")
        ?.lines.map(({ grams }) => grams.isZero()),
    ).toEqual([false, true]);
    expect(errorOf(() => portionPlan(of("10 mg"))).code).toBe("allergen-served");
  });
});

describe("whatever is of animal origin", () => {
  const plates = (...foods: readonly string[]): readonly MealInput[] => [
    {
      id: "lunch",
      name: "Lunch",
      dishes: sheet(
        { name: "Plate", portions: 1, lines: foods.map((food) => ({ key: food, food, amount: "50 g" })) },
        starterFoods,
      ),
    },
  ];
  const avoid: PlanInput["people"][number]["avoid"] = [{ origin: "animal" }];
  const people = [{ id: "coach", name: "Coach", avoid }];

  it("is meat and fish, and milk, eggs and honey as well", () => {
    const foods = ["chicken-breast-raw", "cod-raw", "gelatine-powder", "butter-salted", "egg-raw", "honey"];
    const { code, path, message, hint } =
      errorOf(() => portionPlan({ meals: plates("lentils-boiled", ...foods, "salt"), people })).faults[0] ??
      {};
    expect([code, path]).toEqual(["avoided-served", ["people", 0, "avoid", 0]]);
    expect(message).toBe(
      `food of animal origin, which Coach is not to be served, is in Lunch: ${foods.join(", ")}`,
    );
    expect(hint).toContain('avoid: [{ origin: "animal", override: "who allows it, and why" }]');
    expect(hint).not.toContain("label");
    const plain = portionPlan({ meals: plates("lentils-boiled", "salt", "olive-oil"), people });
    expect([plain.avoided.unknown, plain.avoided.overridden]).toEqual([[], []]);
  });

  it("may be in what is mixed: the way out is what the label says, not an override of everything", () => {
    const { message, hint } = errorOf(() => portionPlan({ meals: plates("bread-wholemeal"), people }));
    expect(message).toContain("is in Lunch: bread-wholemeal (of mixed origin)");
    expect(hint).toContain('give the food origin: "plant"');
    const bread = { ...starterFoods.get("bread-wholemeal"), origin: "plant" as const };
    const toast = sheet(
      { name: "Toast", portions: 1, lines: [{ food: "bread-wholemeal", amount: "60 g" }] },
      starterFoods.with([bread]),
    );
    expect(portionPlan({ meals: [{ id: "lunch", dishes: toast }], people }).avoided.unknown).toEqual([]);
  });

  it("can be told of starter foods: none passes that holds cholesterol, or an allergen of animals", () => {
    // Plants make next to no cholesterol (FAO/INFOODS, logical zeros; unverified).
    const ofAnimals = ["milk", "egg", "fish", "crustaceans", "molluscs"];
    const passes = starterFoods.ids
      .map((id) => starterFoods.get(id))
      .filter(({ origin }) => origin === "plant" || origin === "mineral");
    const suspect = passes.filter(
      ({ per100g: { cholesterol = "0" }, allergens = [] }) =>
        Number(
          typeof cholesterol === "object" && "value" in cholesterol ? cholesterol.value : cholesterol,
        ) !== 0 || allergens.some((each) => ofAnimals.includes(each)),
    );
    expect(suspect.map(({ id }) => id)).toEqual([]);
    expect(passes.length).toBeGreaterThan(100);
    const mixed = starterFoods.ids.filter((id) => starterFoods.get(id).origin === "mixed");
    expect(mixed.sort()).toEqual([
      "barbecue-sauce",
      "bread-gluten-free-white",
      "bread-gluten-free-wholegrain",
      "bread-wholemeal",
      "breadcrumbs-dry",
      "chocolate-dark-70",
      "hoisin-sauce",
      "mayonnaise",
      "oyster-sauce",
      "worcestershire-sauce",
    ]);
    expect(starterFoods.ids.filter((id) => starterFoods.get(id).origin === undefined)).toEqual([]);
  });

  it("is refused where some of it is served, and only there", () => {
    const origins = fc.constantFrom<Origin | undefined>("plant", "mineral", "animal", "mixed", undefined);
    fc.assert(
      fc.property(origins, fc.boolean(), fc.nat(30), (origin, nested, most) => {
        const foods = foodTable([
          { id: "pulse", name: "Pulse", origin: "plant", source: "made up", per100g: { cholesterol: 0 } },
          {
            id: "extra",
            name: "Extra",
            source: "made up",
            per100g: { cholesterol: 100 },
            ...(origin && { origin }),
          },
        ]);
        const extra = nested ? { recipe: "mix" } : { food: "extra" };
        const dish = sheet(
          {
            name: "Dish",
            portions: 1,
            lines: [
              { key: "pulse", food: "pulse", amount: "100 g" },
              { key: "extra", ...extra, amount: "20 g", scaling: "adjustable", least: "0 g" },
            ],
          },
          foods,
          {
            recipes: {
              mix: { name: "Mix", portions: 1, lines: [{ key: "in", food: "extra", amount: "50 g" }] },
            },
          },
        );
        const input: PlanInput = {
          meals: [{ id: "lunch", dishes: dish }],
          people: [
            { id: "coach", avoid, demands: [{ of: "cholesterol", most: `${most} mg`, firm: true }] },
            // Somebody else may have as much of it as they like.
            { id: "bow" },
          ],
        };
        if (most > 0 && (origin === "animal" || origin === "mixed")) {
          expect(errorOf(() => portionPlan(input)).faults.map(({ code }) => code)).toEqual([
            "avoided-served",
          ]);
        } else {
          const { unknown } = portionPlan(input).avoided;
          const line = nested ? "extra/in" : "extra";
          const who = { person: "coach", meal: "lunch", dish: "lunch", line, food: "Extra" };
          const why = "says nothing of its origin";
          expect(unknown).toEqual(
            most > 0 && origin === undefined ? [{ ...who, of: [], origin: "animal", why }] : [],
          );
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it("is told in the table: what is allowed, what does not say, and who has the last word", () => {
    const foods = starterFoods.with([
      { id: "mix", name: "Seed mix", source: "made up for a test", per100g: { energy: 500 }, allergens: [] },
    ]);
    const lines = [
      { key: "honey", food: "honey", amount: "10 g" },
      { key: "mix", food: "mix", amount: "30 g" },
    ];
    const bars = [{ id: "snack", dishes: sheet({ name: "Bar", portions: 1, lines }, foods) }];
    const override = "Her own wish: honey is fine";
    const { avoided } = portionPlan({
      meals: bars,
      people: [{ id: "cox", name: "Cox", avoid: ["milk", { origin: "animal", override }] }],
    });
    expect(avoided.people).toEqual([{ person: "cox", avoids: ["milk", "food of animal origin"] }]);
    expect(avoided.overridden).toMatchObject([
      { avoided: { origin: "animal" }, name: "food of animal origin", lines: ["honey"], because: override },
    ]);
    const shown = toText(avoided);
    expect(shown).toContain("Cox: no milk, food of animal origin");
    expect(shown).toContain(`of animal or mixed origin: served all the same. ${override}`);
    expect(shown).toContain("Seed mix says nothing of its origin: ask whether any is of animal origin");
    expect(shown).toContain("the label or the maker has the last word");
    const only = portionPlan({ meals: bars, people: [{ id: "cox", avoid: ["milk"] }] });
    expect(toText(only.avoided)).not.toContain("origin");
  });
});

describe("the entries", () => {
  const faultsOf = (avoid: unknown): readonly string[] =>
    errorOf(() =>
      portionPlan({ meals, people: [{ id: "cox", avoid: avoid as readonly Avoided[] }] }),
    ).faults.map(({ path, message, hint }) => `${path.slice(2).join(".")}: ${message} (${hint})`);

  it("are refused with the nearest name, all at once", () => {
    const faults = faultsOf([
      "mlik",
      { allergen: "sesam" },
      { food: "almond" },
      "__proto__",
      { food: "__proto__" },
      { food: "constructor" },
      "toString",
      7,
      null,
      {},
      { allergen: "milk", food: "almonds" },
      { allergen: "fish", override: "  " },
      { allergen: "celery", override: 1 },
      { allergen: "lupin", override: "x".repeat(501) },
      { allergen: "mustard", override: "a\u0000b" },
      { allergen: "egg", overide: "doctor" },
      "animal",
      { origin: "plant" },
      { origin: "Animal" },
      { origin: "__proto__" },
      { origin: ["animal"] },
      { origin: null },
      { origin: "animal", food: "almonds" },
      { origin: "animal", allergen: "nuts", food: "almonds" },
      { orgin: "animal" },
      { origin: "animal", override: "" },
    ]);
    const at = (path: string) => faults.find((each) => each.startsWith(`avoid.${path}: `));
    // What is of the wrong shape first, then what is not there.
    expect(faults.map((each) => each.split(":")[0])).toEqual([
      "avoid.0",
      "avoid.1.allergen",
      "avoid.3",
      "avoid.6",
      "avoid.7",
      "avoid.8",
      "avoid.9",
      "avoid.10",
      "avoid.11.override",
      "avoid.12.override",
      "avoid.13.override",
      "avoid.14.override",
      "avoid.15.overide",
      "avoid.16",
      "avoid.17.origin",
      "avoid.18.origin",
      "avoid.19.origin",
      "avoid.20.origin",
      "avoid.21.origin",
      "avoid.22",
      "avoid.23",
      "avoid.24.orgin",
      "avoid.24",
      "avoid.25.override",
      "avoid.2.food",
      "avoid.4.food",
      "avoid.5.food",
    ]);
    expect(at("0")).toContain("did you mean milk?");
    expect(at("1.allergen")).toContain("did you mean sesame?");
    expect(at("2.food")).toContain("almonds");
    expect(at("15.overide")).toContain("did you mean override?");
    expect(at("16")).toContain('{ origin: "animal" }');
    expect(at("17.origin")).toContain('write "animal"');
    expect(at("22")).toBe("avoid.22: a food and an origin (give one of them in each entry)");
    expect(at("24.orgin")).toContain("did you mean origin?");
  });

  it("are refused where one comes twice, and where they are no list", () => {
    expect(faultsOf(["fish", { allergen: "fish", override: "the doctor" }])).toEqual([
      'avoid.1: "fish" comes twice (keep one of them)',
    ]);
    expect(faultsOf([{ origin: "animal" }, { origin: "animal", override: "the coach" }])).toEqual([
      'avoid.1: "animal" comes twice (keep one of them)',
    ]);
    for (const none of ["milk", {}, null, 3]) expect(faultsOf(none)).toHaveLength(1);
  });

  it("are read with the rest: a person's faults, the authority's, and theirs", () => {
    const people = [
      { id: "a", person: { sex: "female", age: Number.NaN, mass: "52 kg", allergens: ["mlik"] } },
      { id: "b", person: { age: 20, mass: "1e99 kg" } },
      { id: "c", person: null },
      { id: "d", avoid: ["mlik"], person: { sex: "male", age: "20", mass: "80 kg", allergies: [] } },
    ];
    const input = { meals, people, authority: "moon" } as unknown as PlanInput;
    const paths = errorOf(() => portionPlan(input)).faults.map(
      ({ code, path }) => `${code} ${path.join(".")}`,
    );
    expect(paths).toContain("authority-unknown authority");
    const person: unknown = JSON.parse('{"__proto__": {"sex": "male"}, "age": 20}');
    const unsafe = { meals, people: [{ id: "b", person }] } as PlanInput;
    expect(errorOf(() => portionPlan(unsafe)).path).toEqual(["people", 0, "person", "__proto__"]);
    for (const start of [
      "people.0.person.age",
      "people.0.person.allergens.0",
      "people.1.person",
      "people.2.person",
    ]) {
      expect(paths.some((each) => each.includes(` ${start}`))).toBe(true);
    }
    expect(paths).toContain("plan-malformed people.3.avoid.0");
    expect(paths.some((each) => each.startsWith("person-malformed people.3.person"))).toBe(true);
  });

  it("are not held against foods while the recipes are refused", () => {
    const input = { meals: [{ id: "m", dishes: 1 }], people: [{ id: "c", avoid: [{ food: "rice" }] }] };
    const { faults } = errorOf(() => portionPlan(input as unknown as PlanInput));
    expect(faults.map(({ path }) => path.join("."))).toEqual(["meals.0.dishes"]);
  });
});

describe("the table of what people avoid", () => {
  const because = "<img onerror=x> | =cmd|'/c calc'!A1";
  const people: PlanInput["people"] = [
    { id: "cox", name: "Cox", avoid: [{ allergen: "milk", override: because }] },
    { id: "bow", name: "Bow", avoid: ["fish"] },
    { id: "stroke", name: "Stroke" },
  ];

  it("names what is allowed and what is not known, and nobody who avoids nothing", () => {
    const shown = toText(portionPlan({ meals, people }).avoided);
    expect(shown).toContain("Cox: no milk");
    expect(shown).toContain("sauce: milk");
    expect(shown).toContain("<img onerror=x>");
    expect(shown).toContain("Bow: no fish");
    expect(shown).toContain("Read the labels");
    expect(shown).not.toContain("Stroke");
    expect(shown).not.toMatch(/free from/i);
  });

  it("stands in the plan where someone avoids something, and else nowhere", () => {
    const title = "What people avoid";
    const titles = (plan: Plan): readonly unknown[] => tablesOf(plan).map((each) => each.title);
    expect(titles(portionPlan({ meals, people }))).toContain(title);
    expect(titles(portionPlan({ meals, people: people.slice(2) }))).not.toContain(title);
  });
});
