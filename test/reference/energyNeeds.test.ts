/**
 * Every coefficient and bound that an energy need is reckoned with, typed a second time, and held to the
 * figures through `energyNeed` and `dayTarget` alone: a slip of one digit in either typing shows.
 */
import { exact } from "steelyard";
import { dayTarget, type EquationId, energyNeed, type Person } from "steelyard/person";
import { describe, expect, it } from "vitest";
import { energyEquations } from "../../src/person/equations/all.ts";

type Sex = Person["sex"];

/** Sex, from one age and below another (120 is the oldest that is read), kcal a day: constant, per kg, per metre. */
type Line = readonly [Sex, from: number, below: number, constant: string, perKg: string, perMetre?: string];

/** Schofield 1985 in kJ: sex, ages, per kg, constant. */
type KilojouleLine = readonly [Sex, from: number, below: number, perKg: number, constant: number];

/**
 * FAO/WHO/UNU 2004, Human energy requirements, table 5.2, MJ a day times 1000, as an encyclopaedia copies
 * it for all ages. The women's of 18 to 30 agrees with the issuer's own example in section 5.4.1.
 */
const schofield: readonly KilojouleLine[] = [
  ["male", 1, 3, 249, -127],
  ["male", 3, 10, 95, 2110],
  ["male", 10, 18, 74, 2754],
  ["male", 18, 30, 63, 2896],
  ["male", 30, 60, 48, 3653],
  ["male", 60, 120, 49, 2459],
  ["female", 1, 3, 244, -130],
  ["female", 3, 10, 85, 2033],
  ["female", 10, 18, 56, 2898],
  ["female", 18, 30, 62, 2036],
  ["female", 30, 60, 34, 3538],
  ["female", 60, 120, 38, 2755],
];

/** The same table's kcal, from the same copy; each agrees with its kJ at 4.184 to its last digit (below). */
const schofieldKcal: readonly Line[] = [
  ["female", 60, 120, "658.5", "9.082"],
  ["female", 30, 60, "845.6", "8.126"],
  ["female", 18, 30, "486.6", "14.818"],
  ["female", 10, 18, "692.6", "13.384"],
  ["female", 3, 10, "485.9", "20.315"],
  ["female", 1, 3, "-31.1", "58.317"],
  ["male", 60, 120, "587.7", "11.711"],
  ["male", 30, 60, "873.1", "11.472"],
  ["male", 18, 30, "692.2", "15.057"],
  ["male", 10, 18, "658.2", "17.686"],
  ["male", 3, 10, "504.3", "22.706"],
  ["male", 1, 3, "-30.4", "59.512"],
];

/**
 * Henry 2005, Public Health Nutr 8(7A):1133-1152, mass alone. Those of 18 to 60 agree with a copy that
 * names the paper; the rest is unverified. Held to the MJ forms below.
 */
const henryMass: readonly Line[] = [
  ["female", 60, 120, "569", "10.1"],
  ["female", 30, 60, "694", "9.74"],
  ["female", 18, 30, "558", "13.1"],
  ["female", 10, 18, "761", "11.1"],
  ["female", 3, 10, "507", "20.1"],
  ["female", 1, 3, "-23.1", "58.9"],
  ["male", 60, 120, "514", "13.5"],
  ["male", 30, 60, "593", "14.2"],
  ["male", 18, 30, "545", "16"],
  ["male", 10, 18, "581", "18.4"],
  ["male", 3, 10, "514", "23.3"],
  ["male", 1, 3, "-33.7", "61"],
];

/**
 * Henry 2005, mass and height; all unverified. Some copies print 74.2 per metre for boys of 3 to 10, which
 * the MJ form, 1.31, does not bear out.
 */
const henry: readonly Line[] = [
  ["female", 60, 120, "10.7", "8.52", "421"],
  ["female", 30, 60, "-11.6", "8.18", "502"],
  ["female", 18, 30, "-282", "10.4", "615"],
  ["female", 10, 18, "462", "9.4", "249"],
  ["female", 3, 10, "349", "15.9", "210"],
  ["female", 1, 3, "-287", "30.4", "703"],
  ["male", 60, 120, "-256", "11.4", "541"],
  ["male", 30, 60, "-137", "11.4", "541"],
  ["male", 18, 30, "113", "14.4", "313"],
  ["male", 10, 18, "299", "15.6", "266"],
  ["male", 3, 10, "306", "15.1", "313"],
  ["male", 1, 3, "-371", "28.2", "859"],
];

/** Henry 2005 in MJ a day, in the order of the lines above: constant, per kg, per metre; unverified. */
const henryMj: readonly (readonly [string, string, string])[] = [
  ["0.0448", "0.0356", "1.76"],
  ["-0.0486", "0.0342", "2.10"],
  ["-1.18", "0.0433", "2.57"],
  ["1.93", "0.0393", "1.04"],
  ["1.46", "0.0666", "0.878"],
  ["-1.20", "0.127", "2.94"],
  ["-1.07", "0.0478", "2.26"],
  ["-0.574", "0.0476", "2.26"],
  ["0.473", "0.0600", "1.31"],
  ["1.25", "0.0651", "1.11"],
  ["1.28", "0.0632", "1.31"],
  ["-1.55", "0.118", "3.59"],
];
const henryMassMj: readonly (readonly [string, string])[] = [
  ["2.38", "0.0424"],
  ["2.90", "0.0407"],
  ["2.33", "0.0546"],
  ["3.18", "0.0465"],
  ["2.12", "0.0842"],
  ["-0.0965", "0.246"],
  ["2.15", "0.0563"],
  ["2.48", "0.0592"],
  ["2.28", "0.0669"],
  ["2.43", "0.0769"],
  ["2.15", "0.0974"],
  ["-0.141", "0.255"],
];

const A_DAY = exact("1/365");

function resting(equation: EquationId, person: Omit<Person, "activity">): string {
  return energyNeed({ ...person, activity: 1.6 }, { equation }).resting.toString();
}

/** Bodies that are likely at an age: mass in kg and height in metres. */
function bodiesOf(age: number): readonly (readonly [string, string])[] {
  const [light, heavy, short, tall] =
    age < 3
      ? [9, 14, 0.7, 0.95]
      : age < 10
        ? [15, 31, 0.99, 1.37]
        : age < 18
          ? [33, 64, 1.4, 1.78]
          : [51, 94, 1.5, 1.93];
  return [
    [`${light}`, `${short}`],
    [`${heavy}`, `${short}`],
    [`${heavy}`, `${tall}`],
  ];
}

/** What a line says, at three bodies (so that each coefficient counts) and at both ends of its ages. */
function holdToLine(equation: EquationId, [sex, from, below, constant, perKg, perMetre = "0"]: Line): void {
  for (const age of [exact(from), exact(below).minus(below === 120 ? 0 : A_DAY)]) {
    for (const [mass, height] of bodiesOf(from)) {
      const said = exact(constant).plus(exact(perKg).times(mass)).plus(exact(perMetre).times(height));
      const ours = resting(equation, { sex, age, mass: `${mass} kg`, height: `${height} m` });
      expect(ours, `${equation}, ${sex} of ${age.toFixed(2)}, ${mass} kg`).toBe(said.toString());
    }
  }
}

function named(lines: readonly Line[]): (readonly [string, Line])[] {
  return lines.map((line) => [`${line[0]} of ${line[1]} to ${line[2]}`, line]);
}

describe("resting energy, line by line, from its first day to its last", () => {
  it.each(named(schofieldKcal))("Schofield 1985, %s", (_, line) => {
    holdToLine("schofield-1985", line);
  });

  it.each(named(henryMass))("Henry 2005 by mass, %s", (_, line) => {
    holdToLine("henry-2005-mass", line);
  });

  it.each(named(henry))("Henry 2005 by mass and height, %s", (_, line) => {
    holdToLine("henry-2005", line);
  });

  // Mifflin et al. 1990, Am J Clin Nutr 51:241-247, abstract, read in a copy of the paper.
  it.each([
    ["male", "5"],
    ["female", "-161"],
  ] as const)("Mifflin-St Jeor 1990, %s", (sex, constant) => {
    for (const [age, kg, cm] of threes) {
      const said = exact(constant)
        .plus(exact(10).times(kg))
        .plus(exact("6.25").times(cm))
        .minus(exact(5).times(age));
      expect(resting("mifflin-st-jeor", { sex, age, mass: kg, height: `${cm} cm` })).toBe(said.toString());
    }
  });

  // Roza & Shizgal 1984, Am J Clin Nutr 40:168-182, as the dietitians of Maastricht UMC+ print them (copy).
  it.each([
    ["male", "88.362", "13.397", "4.799", "5.677"],
    ["female", "447.593", "9.247", "3.098", "4.33"],
  ] as const)("Harris-Benedict, revised 1984, %s", (sex, constant, perKg, perCm, perYear) => {
    for (const [age, kg, cm] of threes) {
      const said = exact(constant)
        .plus(exact(perKg).times(kg))
        .plus(exact(perCm).times(cm))
        .minus(exact(perYear).times(age));
      expect(resting("harris-benedict-1984", { sex, age, mass: kg, height: `${cm} cm` })).toBe(
        said.toString(),
      );
    }
  });

  // Cunningham 1980, Am J Clin Nutr 33:2372-2374, from a textbook's example (copy); Cunningham 1991, Am J
  // Clin Nutr 54:963-969, and McArdle, Katch & Katch, Exercise Physiology: unverified.
  it.each([
    ["cunningham-1980", "500", "22"],
    ["cunningham-1991", "370", "21.6"],
    ["katch-mcardle", "370", "21.6"],
  ] as const)("%s, by lean mass", (equation, constant, perKg) => {
    for (const leanMass of [37, 71]) {
      const said = exact(constant).plus(exact(perKg).times(leanMass));
      for (const sex of ["female", "male"] as const)
        expect(resting(equation, { sex, age: 40, mass: 90, leanMass })).toBe(said.toString());
    }
  });

  /** Four bodies of age, kg and cm, no two alike in one of them alone. */
  const threes = [
    [20, 55, 160],
    [20, 83, 160],
    [20, 83, 191],
    [67, 83, 191],
  ] as const;
});

describe("the two typings agree with the same equations in joules", () => {
  it("Schofield: kcal are kJ over 4.184, to the last digit printed", () => {
    const kcal = new Map(schofieldKcal.map(([sex, from, ...rest]) => [`${sex} ${from}`, rest]));
    for (const [sex, from, below, perKg, constant] of schofield) {
      const [end, fixed = "", slope = ""] = kcal.get(`${sex} ${from}`) ?? [];
      expect(end).toBe(below);
      expect(Math.abs(Number(slope) - perKg / 4.184)).toBeLessThan(0.00051);
      expect(Math.abs(Number(fixed) - constant / 4.184)).toBeLessThan(0.051);
    }
  });

  /** Half a step of the last digit that a figure is printed with. */
  const halfStep = (printed: string): number => 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);

  it.each([
    ["mass alone", henryMass, henryMassMj],
    ["mass and height", henry, henryMj],
  ] as const)("Henry, %s: kcal and MJ within what rounding hides", (_, lines, joules) => {
    for (const [i, [sex, from, , ...printed]] of lines.entries()) {
      for (const [k, mj] of (joules[i] ?? []).entries()) {
        const figure = printed[k] ?? "";
        // Trailing zeros of the kcal were not typed: three significant digits are printed.
        const kcalStep = Math.max(
          halfStep(figure),
          0.5 * 10 ** (Math.floor(Math.log10(Math.abs(Number(figure)))) - 2),
        );
        const hidden = kcalStep + halfStep(mj) * 239.006;
        expect(
          Math.abs(Number(figure) - Number(mj) * 239.006),
          `${sex} ${from}: ${figure}`,
        ).toBeLessThanOrEqual(hidden * 1.01);
      }
    }
  });
});

describe("ages of the people that an equation was made from", () => {
  const person: Person = { sex: "female", age: 40, mass: 60, height: "1.65 m", leanMass: 45, activity: 1.6 };
  const isWarned = (equation: EquationId, age: Person["age"]): boolean =>
    energyNeed({ ...person, age }, { equation }).cautions.some(({ code }) => code === "outside-population");

  // Mifflin et al. 1990: 19 to 78 (abstract). Roza & Shizgal 1984: women of 15 to 74. The three by lean
  // mass speak of adults. Schofield and Henry are of all ages.
  it.each([
    ["mifflin-st-jeor", 19, 78],
    ["harris-benedict-1984", 15, 74],
    ["cunningham-1980", 18, undefined],
    ["cunningham-1991", 18, undefined],
    ["katch-mcardle", 18, undefined],
    ["henry-2005", 0, undefined],
    ["henry-2005-mass", 0, undefined],
    ["schofield-1985", 0, undefined],
  ] as const)("%s: from %d to %s", (equation, from, to) => {
    expect(energyEquations[equation].ages).toEqual(to === undefined ? { from } : { from, to });
    expect(isWarned(equation, Math.max(from, 1))).toBe(false);
    if (from > 1) expect(isWarned(equation, exact(from).minus(A_DAY))).toBe(true);
    expect(isWarned(equation, to === undefined ? 120 : exact(to + 1).minus(A_DAY))).toBe(false);
    if (to !== undefined) expect(isWarned(equation, to + 1)).toBe(true);
  });

  it("Mifflin-St Jeor is taken unasked within its ages alone", () => {
    const taken = (age: Person["age"]): string => energyNeed({ ...person, age }).equation;
    expect([18, exact(19).minus(A_DAY), 19, 78, exact(79).minus(A_DAY), 79].map(taken)).toEqual([
      ...["schofield-1985", "schofield-1985", "mifflin-st-jeor"],
      ...["mifflin-st-jeor", "mifflin-st-jeor", "schofield-1985"],
    ]);
  });
});

describe("physical activity", () => {
  const at = (age: Person["age"], activity: Person["activity"] = 1.6): ReturnType<typeof energyNeed> =>
    energyNeed({ sex: "female", age, mass: age === 1 ? 10 : 40, activity });

  // FAO/WHO/UNU 2004, table 5.3: the middle band and its 1.85 from the issuer's page (section 5.4.1), the
  // other two from an encyclopaedia copy; their middles are taken as the issuer takes its own.
  it.each([
    ["sedentary", "1.4", "1.69", "1.55"],
    ["active", "1.7", "1.99", "1.85"],
    ["vigorous", "2", "2.4", "2.2"],
  ] as const)("an adult's class: %s", (activity, least, most, middle) => {
    for (const age of [18, 99]) {
      const { activity: taken, resting, total } = at(age, activity);
      expect([taken.band?.least, taken.band?.most, taken.level].map(String)).toEqual([least, most, middle]);
      expect(total.toString()).toBe(resting.times(middle).toString());
    }
  });

  // EFSA 2013, EFSA Journal 11(1):3005: 1.4, 1.6, 1.8 and 2.0, and 1 % on each for growth (abstract); from
  // what age which is given is unverified.
  it.each([
    [1, 4, "1.4", "1.4", "1.4"],
    [4, 10, "1.4", "1.6", "1.8"],
    [10, 18, "1.6", "1.8", "2"],
  ] as const)("a child's classes, from %d to below %d, with 1 %% for growth", (from, below, ...levels) => {
    for (const age of [exact(from), exact(below).minus(A_DAY)])
      for (const [i, activity] of (["sedentary", "active", "vigorous"] as const).entries())
        expect(at(age, activity).activity.level.toString()).toBe(
          exact(levels[i] ?? 0)
            .times("1.01")
            .toString(),
        );
  });

  it.each([
    [1, "1.4", "1.414"],
    [5, "1.4", "1.818"],
    [12, "1.6", "2.02"],
    [40, "1.4", "2.4"],
  ] as const)("at %d a level below %s or above %s is called unusual", (age, least, most) => {
    const isUnusual = (level: ReturnType<typeof exact>): boolean =>
      at(age, level).cautions.some(({ code }) => code === "unusual-activity");
    const little = exact("0.001");
    expect(
      [exact(least).minus(little), exact(least), exact(most), exact(most).plus(little)].map(isUnusual),
    ).toEqual([...[true, false, false, true]]);
  });
});

describe("what is laid down, given off, and lost", () => {
  const added = (person: Partial<Person>): Record<string, string> =>
    Object.fromEntries(
      energyNeed({
        sex: "female",
        age: 30,
        mass: 62,
        height: "1.66 m",
        activity: 1.6,
        ...person,
      }).additions.map(({ authority, value }) => [authority, value.toString()]),
    );

  // SACN 2011: 0.8 MJ in the last trimester alone (copy). Institute of Medicine 2002/2005, chapter 5: 0, 340,
  // 452 (issuer). EFSA's announcement of 10 January 2013: 70, 260, 500.
  it.each([
    [1, { uk: "0", us: "0", eu: "70" }],
    [2, { uk: "0", us: "340", eu: "260" }],
    [3, { uk: "191", us: "452", eu: "500" }],
  ] as const)("pregnancy, trimester %d", (pregnant, kcal) => {
    expect(added({ pregnant })).toEqual(kcal);
    // SACN's 0.8 MJ is 191 kcal.
    if (pregnant === 3) expect(Math.round(800 / 4.184)).toBe(Number(kcal.uk));
  });

  // SACN 2011: 330 in the first six months; Institute of Medicine: 500 - 170, then 400; EFSA: 500 for six
  // months of milk alone. The UK's and US's are unverified, EFSA's is from its announcement.
  it.each([
    ["0", { uk: "330", us: "330", eu: "500" }],
    ["5.99", { uk: "330", us: "330", eu: "500" }],
    ["6", { us: "400" }],
    ["11.99", { us: "400" }],
    ["12", {}],
  ] as const)("breastfeeding, %s months after birth", (monthsSinceBirth, kcal) => {
    expect(added({ breastfeeding: true, monthsSinceBirth })).toEqual(kcal);
  });

  // From what age each is published for: the US tables' stages are 14 to 18, 19 to 30 and 31 to 50 years;
  // EFSA speaks of women, taken for 18 and more.
  it.each([
    [exact(14).minus(A_DAY), ["uk"]],
    [14, ["uk", "us"]],
    [exact(18).minus(A_DAY), ["uk", "us"]],
    [18, ["uk", "us", "eu"]],
    [exact(51).minus(A_DAY), ["uk", "us", "eu"]],
    [51, ["uk", "eu"]],
    [1, ["uk"]],
  ] as const)("at %s years", (age, authorities) => {
    const body = age === 1 ? { mass: 10, height: "0.8 m" } : {};
    expect(Object.keys(added({ ...body, age, pregnant: 3 }))).toEqual(authorities);
  });

  it("a kilogram of body mass stands for 7,700 kcal", () => {
    // Wishnofsky 1958, Am J Clin Nutr 6:542-546: 3,500 kcal to the pound; in round figures 7,700 to the kg.
    const { energy } = dayTarget(
      { sex: "male", age: 30, mass: 90, height: "1.80 m", activity: 1.6 },
      { weight: { lose: { perWeek: "0.5 kg" } } },
    );
    expect(energy.change.toString()).toBe("-550");
    expect(energy.rule.kcalPerKg.toString()).toBe("7700");
    expect(Math.round(3500 / 0.45359237 / 100) * 100).toBe(7700);
  });
});
