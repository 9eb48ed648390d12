import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import type { Aim } from "../../src/person/aim.ts";
import { dayTarget } from "../../src/person/dayTarget.ts";
import type { Person } from "../../src/person/person.ts";

const coach: Person = {
  sex: "male",
  age: 40,
  mass: "80 kg",
  height: "180 cm",
  activity: 1.6,
  bodyFat: "20 %",
};
const hold: Aim = { weight: "hold" };

function faults(step: () => unknown): { code: string; path: string; hint: string }[] {
  try {
    step();
  } catch (error) {
    if (error instanceof SteelyardError) {
      return error.faults.map((f) => ({ code: f.code, path: f.path.join("."), hint: f.hint }));
    }
    throw error;
  }
  return [];
}

const codes = (person: Person, aim: Aim): string[] => dayTarget(person, aim).cautions.map((c) => c.code);

describe("a day's target", () => {
  it("holds, loses and gains", () => {
    // Mifflin-St Jeor by hand: 800 + 1125 - 200 + 5 = 1730; times 1.6: 2768 kcal.
    const held = dayTarget(coach, hold);
    expect(held.demands).toEqual([{ of: "energy", exactly: "2768" }]);
    expect(held.energy.change.toString()).toBe("0");
    const byPercent = dayTarget(coach, { weight: { lose: { percent: 15 } } });
    expect(byPercent.energy.target.toString()).toBe("2352.8");
    const byKcal = dayTarget(coach, { weight: { gain: { kcal: 300 } } });
    expect(byKcal.demands[0]).toEqual({ of: "energy", exactly: "3068" });
    // 7,700 kcal to the kg over 7 days: half a kilogram a week is 550 kcal a day.
    const byWeek = dayTarget(coach, { weight: { lose: { perWeek: "0.5 kg" } } });
    expect(byWeek.energy.target.toString()).toBe("2218");
    expect(byWeek.energy.kgPerWeek.toString()).toBe("-0.5");
    expect(byWeek.energy.rule.text).toContain("7,700");
    expect(byWeek.energy.rule.source).toContain("Wishnofsky");
    // 3,500 kcal to the pound, which the rule rounds: a pound a week is within 2 kcal of 500 a day.
    const pound = dayTarget(coach, { weight: { lose: { perWeek: "1 lb" } } });
    expect(Math.abs(pound.energy.change.toNumber() + 500)).toBeLessThan(2);
  });

  it("takes an aim's figures with their units, as shares are", () => {
    const target = (aim: Aim): string => dayTarget(coach, aim).energy.target.toString();
    const lose = (rate: object): string => target({ weight: { lose: rate } } as Aim);
    for (const percent of ["15 %", "15%", "15", 15]) expect(lose({ percent })).toBe("2352.8");
    // 1 kcal is 4.184 kJ exactly (thermochemical).
    for (const kcal of ["300 kcal", "1255.2 kJ", 300]) expect(lose({ kcal })).toBe("2468");
    const { demands } = dayTarget(coach, {
      weight: "hold",
      protein: { perKg: "1.6 g" },
      fibre: { per1000kcal: "14 g" },
    });
    expect(demands.slice(1)).toEqual([
      { of: "protein", exactly: "128" },
      { of: "fibre", least: "38.752" },
    ]);
    for (const percent of ["0 %", "101 %", "15 g", "%", "a lot", Number.NaN]) {
      expect(faults(() => lose({ percent }))[0]?.path, String(percent)).toBe("weight.lose.percent");
    }
    expect(faults(() => lose({ kcal: "300 g" }))[0]?.code).toBe("unit-kinds-differ");
  });

  it("turns protein, fat, carbohydrate and fibre into demands", () => {
    const { demands } = dayTarget(coach, {
      weight: "hold",
      protein: { perKgLean: "2" },
      fat: { share: { least: "20 %", most: "35 %" } },
      carbohydrate: { perKg: { least: 3 } },
      fibre: { per1000kcal: 14 },
    });
    expect(demands).toEqual([
      { of: "energy", exactly: "2768" },
      { of: "protein", exactly: "128" },
      { energyShareOf: "fat", least: "0.2", most: "0.35" },
      { of: "availableCarbohydrate", least: "240" },
      { of: "fibre", least: "38.752" },
    ]);
    expect(dayTarget(coach, { weight: "hold", protein: { share: 0.25 } }).demands[1]).toEqual({
      energyShareOf: "protein",
      exactly: "0.25",
    });
  });

  it("does not change with the unit that a mass was written in", () => {
    const aim: Aim = { weight: { lose: { perWeek: "1 lb" } }, protein: { perKg: "1.6" } };
    const stones = dayTarget({ ...coach, mass: "12 st 8 lb", height: "5 ft 11 in" }, aim);
    const metric = dayTarget(
      { ...coach, mass: "79.83225712 kg", height: "1.8034 m" },
      { ...aim, weight: { lose: { perWeek: "0.45359237 kg" } } },
    );
    expect(stones).toEqual(metric);
  });

  it("says once that a practitioner decides", () => {
    expect(dayTarget(coach, hold).note).toContain("licensed practitioner decides");
  });
});

describe("refusals", () => {
  const lose: Aim = { weight: { lose: { percent: 10 } } };
  const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
  const thin: Person = { ...woman, mass: "53 kg" };
  const refused: readonly [string, Person][] = [
    ["under 18", { ...woman, age: "17.9" }],
    ["pregnant", { ...woman, pregnant: 1 }],
    ["breastfeeding", { ...woman, breastfeeding: true }],
    ["underweight", thin],
    // NHS England's weight-loss programme takes nobody with an active eating disorder.
    ["with an eating disorder", { ...woman, conditions: ["eating-disorder-history"] }],
  ];

  it.each(refused)("weight loss of someone %s, unless a clinician watches over it", (why, person) => {
    const found = faults(() => dayTarget(person, lose));
    expect(found.map((f) => f.code)).toEqual(["aim-refused"]);
    expect(found[0]?.hint).toContain("supervised");
    const watched = dayTarget({ ...person, supervised: { by: "Dr B. Sculls, camp physician" } }, lose);
    expect(watched.cautions.map((c) => c.code)).toContain("supervised");
    expect(watched.cautions.at(-1)?.text).toContain("Dr B. Sculls");
    // What made it a refusal is still said.
    expect(watched.cautions.length).toBeGreaterThan(1);
    expect(why).toBeTruthy();
  });

  it.each(refused)("nothing but loss is refused for someone %s", (_, person) => {
    expect(faults(() => dayTarget(person, hold))).toEqual([]);
    expect(faults(() => dayTarget(person, { weight: { gain: { percent: 5 } } }))).toEqual([]);
  });

  it("are all told at once", () => {
    const found = faults(() => dayTarget({ ...woman, age: 16, pregnant: 2 }, lose));
    expect(found.map((f) => f.code)).toEqual(["aim-refused", "aim-refused"]);
  });

  it("want a height, without which underweight cannot be ruled out", () => {
    const { height: _, ...heightless } = woman;
    expect(faults(() => dayTarget(heightless, lose))).toEqual([
      { code: "person-needs", path: "height", hint: expect.any(String) },
    ]);
    expect(codes({ ...heightless, supervised: { by: "a dietitian" } }, lose)).toContain(
      "underweight-unknown",
    );
  });
});

describe("cautions on a target", () => {
  it("stand at their thresholds", () => {
    const small: Person = { sex: "female", age: 60, mass: "50 kg", height: "150 cm", activity: 1.4 };
    // Mifflin-St Jeor by hand: 500 + 937.5 - 300 - 161 = 976.5; times 1.4: 1367.1 kcal.
    expect(codes(small, { weight: { lose: { kcal: "567.1" } } })).toContain("energy-below-800");
    expect(codes(small, { weight: { lose: { kcal: "567" } } })).not.toContain("energy-below-800");
    expect(codes(small, { weight: { lose: { kcal: "390.7" } } })).toContain("energy-below-resting");
    expect(codes(small, { weight: { lose: { kcal: "390.6" } } })).not.toContain("energy-below-resting");
    expect(codes(coach, { weight: { lose: { perWeek: "1 kg" } } })).not.toContain("fast-loss");
    expect(codes(coach, { weight: { lose: { perWeek: "1.01 kg" } } })).toContain("fast-loss");
    expect(codes(coach, { weight: { gain: { perWeek: "1.2 kg" } } })).not.toContain("fast-loss");
  });

  it("look at a loss by the size of the body", () => {
    const lose = (perWeek: string): string[] => codes(coach, { weight: { lose: { perWeek } } });
    // Ruiz-Castellano 2021: 0.5 to 1 % of body mass a week; 1 % of 80 kg.
    expect(lose("0.8 kg")).not.toContain("fast-loss-for-mass");
    expect(lose("0.801 kg")).toContain("fast-loss-for-mass");
    expect(lose("1.01 kg")).toEqual(expect.arrayContaining(["fast-loss", "fast-loss-for-mass"]));
    expect(codes(coach, { weight: { gain: { perWeek: "1.2 kg" } } })).not.toContain("fast-loss-for-mass");
  });

  it("look 12 weeks ahead for underweight", () => {
    const cox: Person = { sex: "female", age: 22, mass: "47.5 kg", height: "1.60 m", activity: "active" };
    const soon = (mass: string, perWeek: string, person: Partial<Person> = {}): string | undefined =>
      dayTarget({ ...cox, mass, ...person }, { weight: { lose: { perWeek } } }).cautions.find(
        ({ code }) => code === "underweight-soon",
      )?.text;
    // WHO class: 18.5 kg per square metre at 1.60 m are 47.36 kg.
    expect(soon("47.5 kg", "0.7 kg")).toMatch(/below 18.5, .* within a week\.$/);
    expect(soon("47.36 kg", "0.7 kg")).toMatch(/within a week\.$/);
    expect(soon("47.61 kg", "0.25 kg")).toMatch(/within 2 weeks\.$/);
    expect(soon("50.35 kg", "0.25 kg")).toMatch(/within 12 weeks\.$/);
    expect(soon("50.36 kg", "0.25 kg")).toBeUndefined();
    // Underweight already is refused, or said as that; children have growth charts.
    const supervised = { by: "Dr B. Sculls, camp physician" };
    expect(soon("47.35 kg", "0.25 kg", { supervised })).toBeUndefined();
    expect(soon("47.5 kg", "0.25 kg", { supervised, age: 17 })).toBeUndefined();
    expect(codes(cox, { weight: { gain: { perWeek: "0.1 kg" } } })).not.toContain("underweight-soon");
    expect(codes(cox, hold)).not.toContain("underweight-soon");
  });

  it("look at the energy that is left for the body, where fat-free mass is known", () => {
    // IOC 2018 and 2023: 30 kcal per kg of fat-free mass; of 80 kg with 20 % fat 64 kg are lean: 1,920 kcal.
    const lose = (kcal: string, person = coach): string[] => codes(person, { weight: { lose: { kcal } } });
    expect(lose("848")).not.toContain("low-energy-availability");
    expect(lose("848.1")).toContain("low-energy-availability");
    const { bodyFat: _, ...unknown } = coach;
    expect(lose("848.1", unknown)).not.toContain("low-energy-availability");
    expect(codes({ ...coach, activity: 1 }, hold)).toContain("low-energy-availability");
  });

  it("say on which side a figure lies", () => {
    const text = (person: Person, aim: Aim, code: string): string =>
      dayTarget(person, aim).cautions.find((each) => each.code === code)?.text ?? "";
    const share = (of: string): string =>
      text(coach, { weight: "hold", protein: { share: of } }, "protein-share");
    expect(share("9 %")).toMatch(/less than 10 % .* below/);
    expect(share("36 %")).toMatch(/more than 35 % .* above/);
    const carbohydrate = (perKg: number): Aim => ({
      weight: "hold",
      protein: { perKg: 2 },
      fat: { perKg: 1 },
      carbohydrate: { perKg },
    });
    expect(text(coach, carbohydrate(4), "macros-energy")).toContain("come to less than");
    expect(text(coach, carbohydrate(5), "macros-energy")).toContain("come to more than");
    const activity = (level: number): string => text({ ...coach, activity: level }, hold, "unusual-activity");
    expect(activity(1.3)).toContain("below the 1.40");
    expect(activity(2.5)).toContain("above the 1.40");
  });

  it("look at protein by mass and by energy, however it was asked", () => {
    const protein = (p: NonNullable<Aim["protein"]>): string[] =>
      codes(coach, { weight: "hold", protein: p });
    expect(protein({ perKg: "0.87" })).toEqual([]);
    expect(protein({ perKg: "0.82" })).toEqual(["protein-low", "protein-share"]);
    expect(protein({ perKg: 2 })).toEqual([]);
    expect(protein({ perKg: "2.01" })).toEqual(["protein-high"]);
    // 80 % of the mass is lean: 2.5 g per kg of it is 2.0 per kg of body mass.
    expect(protein({ perKgLean: "2.5" })).toEqual([]);
    expect(protein({ perKgLean: "2.51" })).toEqual(["protein-high"]);
    expect(protein({ share: "36 %" })).toEqual(["protein-high", "protein-share"]);
    expect(protein({ share: "9 %" })).toEqual(["protein-low", "protein-share"]);
    expect(protein({ perKg: { least: "1.6", most: "2.2" } })).toEqual([]);
    expect(protein({ perKg: { least: "2.1" } })).toEqual(["protein-high"]);
    expect(protein({ perKg: { most: "0.5" } })).toEqual(["protein-low", "protein-share"]);
  });
});

describe("an aim that cannot be met", () => {
  // The coach's day: 2,768 kcal and 80 kg. General Atwater factors: 4, 9 and 4 kcal per g.
  const found = (aim: Omit<Aim, "weight">): readonly string[] =>
    faults(() => dayTarget(coach, { ...aim, weight: "hold" })).map(({ code, path }) => `${code} ${path}`);
  const cautioned = (aim: Omit<Aim, "weight">): boolean =>
    codes(coach, { ...aim, weight: "hold" }).includes("macros-energy");
  const shares = (protein: string, fat: string, carbohydrate: string): Omit<Aim, "weight"> => ({
    protein: { share: protein },
    fat: { share: fat },
    carbohydrate: { share: carbohydrate },
  });

  it("is refused where three shares do not make a whole", () => {
    expect(found(shares("20 %", "20 %", "20 %"))).toEqual(["aim-malformed protein.share"]);
    expect(found(shares("20 %", "30 %", "49.9 %"))).toEqual(["aim-malformed protein.share"]);
    expect(found(shares("20 %", "30 %", "50.1 %"))).toEqual(["aim-malformed protein.share"]);
    expect(found(shares("20 %", "30 %", "50 %"))).toEqual([]);
    expect(found(shares("1/3", "1/3", "1/3"))).toEqual([]);
    expect(found({ protein: { share: "20 %" }, fat: { share: "20 %" } })).toEqual([]);
    const capped = { ...shares("20 %", "30 %", "50 %"), carbohydrate: { share: { most: "45 %" } } };
    expect(found(capped)).toEqual(["aim-malformed protein.share"]);
    expect(found({ ...capped, carbohydrate: { share: { least: "45 %" } } })).toEqual([]);
    expect(cautioned(shares("20 %", "30 %", "50 %"))).toBe(false);
  });

  it("is refused where grams bring more energy than the day has, or cannot bring it", () => {
    // 80 kg x 20 g x 4 kcal: 6,400 kcal.
    expect(found({ protein: { perKg: 20 } })).toEqual(["aim-malformed protein.perKg"]);
    expect(found({ carbohydrate: { perKg: { least: 10 } } })).toEqual(["aim-malformed carbohydrate.perKg"]);
    expect(found({ carbohydrate: { perKg: { most: 10 } } })).toEqual([]);
    expect(found({ fat: { perKgLean: 6 } })).toEqual(["aim-malformed fat.perKgLean"]);
    // Half of the energy from fat, and 80 x 6 x 4 = 1,920 kcal of carbohydrate: 3,304 in all.
    expect(found({ fat: { share: "50 %" }, carbohydrate: { perKg: 6 } })).toEqual([
      "aim-malformed fat.share",
    ]);
    // 128 + 720 + 640 kcal, all of it exact: the other half has nowhere to come from.
    const short = { protein: { perKg: "0.4" }, fat: { perKg: 1 }, carbohydrate: { perKg: 2 } };
    expect(found(short)).toEqual(["aim-malformed protein.perKg"]);
    expect(found({ ...short, carbohydrate: { perKg: { least: 2 } } })).toEqual([]);
  });

  it("carries a caution where foods' own factors may close the gap", () => {
    // 80 x 9 x 4 = 2,880 kcal: 4 % over. 640 + 720 + 1,280 = 2,640 kcal: 5 % short.
    expect(cautioned({ carbohydrate: { perKg: 9 } })).toBe(true);
    expect(cautioned({ carbohydrate: { perKg: "8.65" } })).toBe(false);
    expect(cautioned({ protein: { perKg: 2 }, fat: { perKg: 1 }, carbohydrate: { perKg: 4 } })).toBe(true);
    expect(cautioned({ protein: { perKg: 2 }, fat: { perKg: 1 }, carbohydrate: { perKg: "4.4" } })).toBe(
      false,
    );
  });

  it("is cautioned, and not refused, where it is extreme", () => {
    const gain = (rate: object): string[] => codes(coach, { weight: { gain: rate } } as Aim);
    // Iraki 2019: at most 0.5 % of body mass a week, here 400 g. Thurber 2019: 2.5 x 1,730 kcal.
    expect(gain({ perWeek: "0.4 kg" })).not.toContain("fast-gain");
    expect(gain({ perWeek: "0.401 kg" })).toContain("fast-gain");
    expect(gain({ perWeek: "3 kg" })).toEqual(["fast-gain", "energy-beyond-limit"]);
    expect(gain({ kcal: 20000 })).toEqual(["fast-gain", "energy-beyond-limit"]);
    expect(gain({ kcal: 1557 })).not.toContain("energy-beyond-limit");
    expect(gain({ kcal: 1558 })).toContain("energy-beyond-limit");
    expect(codes(coach, hold)).toEqual([]);
  });
});

describe("an aim from outside", () => {
  const bad: readonly [string, unknown, string][] = [
    ["nothing", undefined, ""],
    ["no weight", {}, "weight"],
    ["an unknown weight", { weight: "shrink" }, "weight"],
    ["losing and gaining", { weight: { lose: { percent: 5 }, gain: { percent: 5 } } }, "weight"],
    ["losing by nothing", { weight: { lose: {} } }, "weight.lose"],
    ["two rates", { weight: { lose: { percent: 5, kcal: 100 } } }, "weight.lose"],
    ["a loss of 0", { weight: { lose: { percent: 0 } } }, "weight.lose.percent"],
    ["a loss below 0", { weight: { lose: { kcal: -100 } } }, "weight.lose.kcal"],
    ["a loss of NaN", { weight: { lose: { kcal: Number.NaN } } }, "weight.lose.kcal"],
    ["a loss in metres", { weight: { lose: { perWeek: "1 m" } } }, "weight.lose.perWeek"],
    ["protein of nothing", { weight: "hold", protein: {} }, "protein"],
    ["protein twice", { weight: "hold", protein: { perKg: 1, share: 0.2 } }, "protein"],
    ["a share of 25", { weight: "hold", protein: { share: 25 } }, "protein.share"],
    ["a band upside down", { weight: "hold", fat: { perKg: { least: 2, most: 1 } } }, "fat.perKg"],
    ["an empty band", { weight: "hold", fat: { perKg: {} } }, "fat.perKg"],
    ["fibre below 0", { weight: "hold", fibre: { per1000kcal: -1 } }, "fibre.per1000kcal"],
    ["an unknown equation", { weight: "hold", equation: "guess" }, "equation"],
    ["an unknown field", { weight: "hold", proteins: 1 }, "proteins"],
    [
      "shares beyond the whole",
      { weight: "hold", protein: { share: 0.5 }, fat: { share: 0.6 } },
      "protein.share",
    ],
  ];

  it.each(bad)("is refused for %s", (_, aim, path) => {
    const found = faults(() => dayTarget(coach, aim as Aim));
    expect(found.map((f) => f.path)).toContain(path);
    expect(
      found.every((f) => /^(?:aim|person)-malformed$|^number-not-finite$|^amount-negative$/.test(f.code)),
    ).toBe(true);
  });

  it("may not leave nothing to eat", () => {
    expect(faults(() => dayTarget(coach, { weight: { lose: { kcal: 2768 } } }))[0]?.code).toBe(
      "aim-malformed",
    );
    expect(faults(() => dayTarget(coach, { weight: { lose: { percent: 100 } } }))[0]?.code).toBe(
      "aim-malformed",
    );
  });

  it("wants a lean mass where it speaks of one", () => {
    const { bodyFat: _, ...unknown } = coach;
    expect(faults(() => dayTarget(unknown, { weight: "hold", protein: { perKgLean: 2 } }))[0]?.code).toBe(
      "person-needs",
    );
  });
});
