import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { Fault } from "../../src/number/error.ts";
import type { Avoided, PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toText } from "../../src/table/text.ts";
import { errorOf } from "../number/error-of.ts";
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
      ({ person, meal, dish, line, of }) => `${person} ${meal} ${dish} ${line} ${[...of].sort().join("+")}`,
    )
    .sort();

const overriddenOf = ({ avoided }: Plan): string[] =>
  avoided.overridden
    .map(({ person, meal, dish, lines, avoided: what }) => {
      const id = "allergen" in what ? what.allergen : what.food;
      return `${person} ${id} ${meal} ${dish}: ${lines.join(", ")}`;
    })
    .sort();

/** The same world with every entry overridden: what is declared on the person becomes an entry. */
function allowed(world: World): World {
  return {
    ...world,
    people: world.people.map(({ avoid, declared }) => {
      const more = declared.filter((id) => !avoid.some(({ what }) => what === id));
      const all = [...avoid, ...more.map((what) => ({ what, override: true }))];
      return { declared, avoid: all.map((each) => ({ ...each, override: true })) };
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
      { numRuns: 300 },
    );
    expect(Math.min(refused, served)).toBeGreaterThan(10);
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
          meals: [...back.meals].reverse(),
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
      { numRuns: 50 },
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
    ]);
    expect(faults.map((each) => each.split(":")[0])).toEqual([
      "avoid.0",
      "avoid.1.allergen",
      "avoid.2.food",
      "avoid.3",
      "avoid.4.food",
      "avoid.5.food",
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
    ]);
    expect(faults[0]).toContain("did you mean milk?");
    expect(faults[1]).toContain("did you mean sesame?");
    expect(faults[2]).toContain("almonds");
    expect(faults[15]).toContain("did you mean override?");
  });

  it("are refused where one comes twice, and where they are no list", () => {
    expect(faultsOf(["fish", { allergen: "fish", override: "the doctor" }])).toEqual([
      'avoid.1: "fish" comes twice (keep one of them)',
    ]);
    for (const none of ["milk", {}, null, 3]) expect(faultsOf(none)).toHaveLength(1);
  });

  it("are read with the rest: a person's faults, the authority's, and theirs", () => {
    const people = [
      { id: "a", person: { sex: "female", age: Number.NaN, mass: "52 kg", allergens: ["mlik"] } },
      { id: "b", person: { ...JSON.parse('{"__proto__": {"sex": "male"}}'), age: 20, mass: "1e99 kg" } },
      { id: "c", person: null },
      { id: "d", avoid: ["mlik"], person: { sex: "male", age: "20", mass: "80 kg", allergies: [] } },
    ];
    const input = { meals, people, authority: "who" } as unknown as PlanInput;
    const paths = errorOf(() => portionPlan(input)).faults.map(
      ({ code, path }) => `${code} ${path.join(".")}`,
    );
    expect(paths[0]).toBe("authority-unknown authority");
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
    expect(shown).toContain("sauce/milk");
    expect(shown).toContain("<img onerror=x>");
    expect(shown).toContain("Bow: no fish");
    expect(shown).toContain("Read the labels");
    expect(shown).not.toContain("Stroke");
    expect(shown).not.toMatch(/free from/i);
  });

  it("stands in the plan where someone avoids something, and else nowhere", () => {
    const title = "What people avoid";
    const titles = (plan: Plan): readonly unknown[] => plan.toTables().map((each) => each.title);
    expect(titles(portionPlan({ meals, people }))).toContain(title);
    expect(titles(portionPlan({ meals, people: people.slice(2) }))).not.toContain(title);
  });
});
