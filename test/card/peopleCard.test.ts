import fc from "fast-check";
import { parse } from "parse5";
import { describe, expect, it } from "vitest";
import { type CardOptions, personCard } from "../../src/card/personCard.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { dayTarget } from "../../src/person/dayTarget.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Condition, Person } from "../../src/person/person.ts";
import { cautionsFor } from "../../src/person/portion/cautions.ts";
import type { Avoided, PersonInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";
import { elements, textOf } from "../show/markup.ts";

const greens = sheet(
  {
    name: "Greens",
    portions: 1,
    lines: [
      { key: "kale", food: "kale-raw", amount: "80 g" },
      { key: "wakame", food: "wakame-raw", amount: "5 g", scaling: "per-portion" },
      { key: "mix", food: "mix", amount: "30 g" },
    ],
  },
  starterFoods.with([
    { id: "mix", name: "Seed mix", source: "made up for a test", per100g: { energy: 500, protein: 20 } },
  ]),
);

const planFor = (one: Omit<PersonInput, "id">, authority: Authority = "eu"): Plan =>
  portionPlan({
    meals: [{ id: "lunch", name: "Lunch", dishes: greens }],
    people: [{ id: "who", name: "Who", ...one }],
    authority,
  });
const card = (plan: Plan, how: CardOptions = {}): string => personCard(plan, "who", how);

const body = { sex: "female", age: 30 } as const;
/** Said where greens meet warfarin; kale carries a caution of its own for everyone. */
const meeting = "On warfarin, vitamin K should stay much the same";
const conditions: readonly Condition[] = ["kidney-disease", "insulin", "warfarin", "thyroid-disease"];

describe("the card of someone whose body the plan knows", () => {
  it("is the same whatever they weigh, declare or avoid, unless it is asked for", () => {
    const someone = fc.record({
      authority: fc.constantFrom<Authority>("uk", "us", "eu"),
      mass: fc.integer({ min: 45, max: 140 }),
      leanest: fc.boolean(),
      declared: fc.subarray([...conditions]),
      avoid: fc.subarray<Avoided>([
        "fish",
        "lupin",
        { food: "almonds" },
        { origin: "animal" },
        { allergen: "milk", override: "Dr" },
      ]),
      allergens: fc.subarray(["celery", "egg"] as const),
    });
    const plain: { readonly [A in Authority]?: string } = {
      uk: card(planFor({ person: { ...body, mass: "60 kg" } }, "uk")),
      us: card(planFor({ person: { ...body, mass: "60 kg" } }, "us")),
      eu: card(planFor({ person: { ...body, mass: "60 kg" } }, "eu")),
    };
    fc.assert(
      fc.property(someone, ({ authority, mass, leanest, declared, avoid, allergens }) => {
        const person: Person = {
          ...body,
          mass: `${mass} kg`,
          conditions: declared,
          allergens,
          ...(leanest && { leanMass: `${mass * 0.6} kg`, height: "1.81 m" }),
        };
        expect(card(planFor({ person, avoid }, authority))).toBe(plain[authority]);
      }),
      { numRuns: runs(40) },
    );
    // Not for want of a day: references that do not follow the body stand there.
    for (const page of Object.values(plain)) expect(page).toContain("of a day");
  });

  it("shows, asked to, what it shows of a comparison and of cautions by hand", () => {
    const person: Person = {
      ...body,
      mass: "61 kg",
      height: "1.70 m",
      activity: "active",
      conditions: ["warfarin", "thyroid-disease"],
    };
    for (const authority of ["uk", "us", "eu"] as const) {
      const plan = planFor({ person }, authority);
      const { dishes } = plan.portion("who", "lunch");
      const day = compare(dishes, referenceIntakes(authority, person));
      const byHand = card(plan, { personal: "show", day, cautions: cautionsFor(dishes, person) });
      expect(card(plan, { personal: "show" })).toBe(byHand);
      expect(byHand).toContain(meeting);
      expect(card(plan)).not.toContain(meeting);
    }
  });

  it("keeps from a kitchen wall what an aim says of a body, whoever hands it in", () => {
    // 47.5 kg at 1.60 m is a BMI of 18.6: at 0.7 kg a week she is underweight in the first.
    const cox: Person = { sex: "female", age: 24, mass: "47.5 kg", height: "1.60 m", activity: "active" };
    const { cautions } = dayTarget(cox, { weight: { lose: { perWeek: "0.7 kg" } } });
    const codes = cautions.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(["underweight-soon", "fast-loss-for-mass"]));
    const plan = planFor({ person: cox });
    const [hidden, shown] = [card(plan, { cautions }), card(plan, { cautions, personal: "show" })];
    const [wall, own] = [hidden, shown].map((page) => textOf(parse(page ?? "")));
    for (const { text } of cautions.filter(({ code }) => /underweight|for-mass/.test(code))) {
      expect(own).toContain(text);
      expect(wall).not.toContain(text);
    }
  });

  it("says what is avoided, allowed and not known only where asked; what is in it on every card", () => {
    const avoid: readonly Avoided[] = ["fish", { food: "kale-raw", override: "By <b>her</b> own wish" }];
    const plan = planFor({ person: { ...body, mass: "61 kg" }, avoid });
    const [hidden, shown] = [card(plan), card(plan, { personal: "show" })].map((page) => textOf(parse(page)));
    for (const text of ["Not to be served", "own wish", "Ask before serving"]) {
      expect(shown).toContain(text);
      expect(hidden).not.toContain(text);
    }
    expect(shown).toContain("Not to be served: fish; Kale, raw");
    expect(shown).toContain("Ask before serving whether Seed mix holds: fish");
    // A food that says nothing is named to everyone.
    expect(hidden).toContain("Allergens are not known of Seed mix");
  });

  it("asks, where only origins are avoided, of every food that does not say its own", () => {
    const plan = planFor({ avoid: [{ origin: "animal" }] });
    const [hidden, shown] = [card(plan), card(plan, { personal: "show" })].map((page) => textOf(parse(page)));
    for (const text of [
      "Not to be served: food of animal origin",
      "Ask before serving whether any of Seed mix is of animal origin",
    ]) {
      expect(shown).toContain(text);
      expect(hidden).not.toContain(text);
    }
    expect(shown).not.toContain("Ask before serving whether Seed mix holds");
    expect(shown).not.toContain("whether any of Kale");
  });

  it("leaves what an override says without effect", () => {
    const hostile = '"><img src=x onerror=alert(1)><script>x()</script>';
    const plan = planFor({ avoid: [{ food: "kale-raw", override: hostile }] });
    const page = parse(card(plan, { personal: "show" }));
    expect(elements(page, "img", "script")).toEqual([]);
    expect(textOf(page)).toContain(hostile);
  });

  it("takes a day or cautions of the caller's own before the plan's", () => {
    const plan = planFor({ person: { ...body, mass: "61 kg", conditions: ["warfarin"] } });
    const day = [{ of: "iron", reference: { value: 10, source: "our own list" } }] as const;
    const own = card(plan, { day });
    expect(own).toContain("our own list");
    expect(own).not.toContain("EFSA Journal");
    expect(card(plan, { day: [] })).not.toContain("of a day");
    expect(card(plan, { personal: "show", cautions: [] })).not.toContain(meeting);
    expect(card(plan, { personal: "show" })).toContain(meeting);
  });

  it("holds the meals that it shows against the day, and no others", () => {
    const foods = foodTable([{ id: "a", name: "A", source: "made up", per100g: { iron: 7 } }]);
    const dish = sheet({ name: "Dish", portions: 1, lines: [{ food: "a", amount: "100 g" }] }, foods);
    const plan = portionPlan({
      meals: [
        { id: "one", dishes: dish },
        { id: "two", dishes: dish },
      ],
      people: [{ id: "who", person: { sex: "male", age: 30, mass: "80 kg" } }],
      authority: "eu",
    });
    // EFSA Journal 2015;13(10):4254: iron for men 11 mg. 7 of 11 is 63.6 %.
    expect(card(plan, { meals: ["one"], components: ["iron"] })).toContain("64%");
    expect(card(plan, { components: ["iron"] })).toContain("127%");
  });
});

describe("whom a card speaks to", () => {
  const shared = sheet(
    {
      name: "Spinach",
      portions: 1,
      lines: [
        { key: "kale", food: "kale-raw", amount: "80 g" },
        { key: "spinach", food: "spinach-raw", amount: "60 g" },
        { key: "honey", food: "honey", amount: "10 g" },
      ],
    },
    starterFoods,
  );
  const cardOf = (one: Omit<PersonInput, "id">, how: CardOptions = {}): string =>
    personCard(
      portionPlan({
        meals: [{ id: "lunch", dishes: shared }],
        people: [{ id: "who", ...one }],
        authority: "uk",
      }),
      "who",
      how,
    );
  const boy: Person = { sex: "male", age: 17, mass: "66 kg", height: "1.78 m", activity: "active" };
  const clotting = "On warfarin, keep vitamin K";
  const stones = "Rich in oxalate";
  const infants = "No honey for a child under 12 months";

  // Whom each caution concerns is said in the documents that starter foods' cautions name.
  it.each<[string, Omit<PersonInput, "id">, CardOptions, readonly string[]]>([
    ["someone unknown is told all", {}, {}, [clotting, stones, infants]],
    ["a boy of 17 of none", { person: boy }, { personal: "show" }, []],
    ["nor on a card that hides what is personal", { person: boy }, {}, []],
    [
      "who takes warfarin, of that",
      { person: { ...boy, age: 40, conditions: ["warfarin"] } },
      { personal: "show" },
      [clotting],
    ],
    ["but not where it is hidden", { person: { ...boy, age: 40, conditions: ["warfarin"] } }, {}, []],
    [
      "whose kidneys are ill, of oxalate",
      { person: { ...boy, age: 40, conditions: ["kidney-disease"] } },
      { personal: "show" },
      [stones],
    ],
  ])("%s", (_, one, how, told) => {
    const text = cardOf(one, how);
    expect([clotting, stones, infants].filter((each) => text.includes(each))).toEqual(told);
  });

  const woman: Person = { sex: "female", age: 30, mass: "82 kg", height: "1.70 m", activity: "active" };
  const energyShare = (page: string): string | undefined =>
    elements(parse(page), "tr")
      .map((tr) => textOf(tr))
      .find((text) => text.startsWith("energy"))
      ?.match(/\d+%/)?.[0];

  it("holds energy against the day that someone aims at", () => {
    const aim = { weight: { lose: { perWeek: "0.5 kg" } } } as const;
    const { target, need } = dayTarget(woman, aim, { authority: "uk" }).energy;
    expect(Number(target)).toBeLessThan(Number(need));
    const kcal = Number(shared.portion("energy").value);
    const per = (day: unknown): string => `${Math.round((kcal / Number(day)) * 100)}%`;
    expect(energyShare(cardOf({ person: woman }, { personal: "show" }))).toBe(per(need));
    expect(energyShare(cardOf({ person: woman, aim }, { personal: "show" }))).toBe(per(target));
  });

  it("gives away no need of energy while it hides the body", () => {
    const pages = ["60 kg", "82 kg", "120 kg"].map((mass) => cardOf({ person: { ...woman, mass } }));
    expect(new Set(pages).size).toBe(1);
    expect(energyShare(pages[0] ?? "")).toBeUndefined();
    // Fibre and iron have a share all the same: what they are of is the same for everyone of that age.
    expect(pages[0]).toContain("of a day");
  });

  it("refuses an aim as the aim itself is refused", () => {
    const of = (one: Omit<PersonInput, "id">): unknown => errorOf(() => planFor(one)).faults;
    const aim = { weight: { lose: { perWeek: "0.5 kg" } } } as const;
    expect(of({ aim })).toMatchObject([{ code: "plan-malformed", path: ["people", 0, "aim"] }]);
    expect(of({ aim, person: boy })).toMatchObject([
      { code: "aim-refused", path: ["people", 0, "aim", "weight", "lose"] },
    ]);
  });
});
