/** Temperatures and times of a method in the reader's units. */
import * as fc from "fast-check";
import Qty from "js-quantities";
import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { inReaderUnits } from "../../src/cook/readerUnits.ts";
import { britishEnglish, type Language } from "../../src/document/language.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const celsius: Language = { ...britishEnglish, temperatures: "celsius" };
const fahrenheit: Language = { ...britishEnglish, temperatures: "fahrenheit" };
const both: Language = { ...britishEnglish, temperatures: "both" };
const hours: Language = { ...britishEnglish, times: "hours" };
const minutes: Language = { ...britishEnglish, times: "minutes" };

describe("temperatures", () => {
  /** °F = 9/5 °C + 32 (NIST SP 811, 2008 edition, Appendix B.8; unverified), times 5 to stay whole. */
  const toFahrenheit = (c: number): number => (9 * c + 160) / 5;
  const toCelsius = (f: number): number => (5 * (f - 32)) / 9;
  const nearest = (x: number, step: number): number => Math.round(x / step) * step;

  it("follow the definition, rounded as they were written", () => {
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 600 }), (c) => {
        const step = c >= 100 && c % 5 === 0 ? 5 : 1;
        expect(inReaderUnits(`at ${c} °C.`, fahrenheit)).toBe(`at ${nearest(toFahrenheit(c), step)} °F.`);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 999 }), (f) => {
        const step = f >= 212 && f % 5 === 0 ? 5 : 1;
        expect(inReaderUnits(`at ${f} °F.`, celsius)).toBe(`at ${nearest(toCelsius(f), step)} °C.`);
      }),
    );
  });

  it("agree with a general-purpose library of units (js-quantities 1.8.0)", () => {
    for (const c of [-18, 0, 4, 37, 63, 74, 82, 98, 113, 121, 177]) {
      const theirs = Math.round(Qty(c, "tempC").to("tempF").scalar);
      expect(inReaderUnits(`${c} °C`, fahrenheit)).toBe(`${theirs} °F`);
    }
  });

  // FDA Food Code 2022, 3-401.11, 3-501.14 and 3-501.16, gives both scales (read in states' adoptions).
  it.each([
    [5, 41],
    [21, 70],
    [57, 135],
    [74, 165],
  ])("come to the pair that the Food Code prints: %i °C, %i °F", (c, f) => {
    expect(inReaderUnits(`${c} °C`, fahrenheit)).toBe(`${f} °F`);
    expect(inReaderUnits(`${f} °F`, celsius)).toBe(`${c} °C`);
  });

  it("before rounding are exact: 180 °C is 356 °F", () => {
    // 1 °C beside it is not a multiple of 5, so that neither is rounded beyond the degree: 354.2 and 357.8.
    expect(inReaderUnits("179 °C, then 181 °C", fahrenheit)).toBe("354 °F, then 358 °F");
    expect(inReaderUnits("180.0 °C", fahrenheit)).toBe("355 °F");
    expect(inReaderUnits("36.6 °C", fahrenheit)).toBe("98 °F");
  });

  it.each([
    ["Bake at 180 °C.", "Bake at 355 °F."],
    ["Bake at 180°C.", "Bake at 355 °F."],
    ["Bake at 180ºC.", "Bake at 355 °F."],
    ["Bake at 180℃.", "Bake at 355 °F."],
    ["Bake at 180C.", "Bake at 355 °F."],
    ["Bake at 180 degrees Celsius.", "Bake at 355 °F."],
    ["Bake at 180 degrees C.", "Bake at 355 °F."],
    ["Bake at 180°c.", "Bake at 355 °F."],
    ["160–180 °C", "320–355 °F"],
    ["160 to 180 °C", "320 to 355 °F"],
    ["160 °C–180 °C", "320 °F–355 °F"],
    ["160 °C - 180 °C", "320 °F - 355 °F"],
    ["200/180 °C (fan)", "390/355 °F (fan)"],
    ["180 °C (160 °C fan)", "355 °F (320 °F fan)"],
    ["Freeze at −18 °C, or -18 °C.", "Freeze at 0 °F, or 0 °F."],
    ["Freeze at −30 °C.", "Freeze at −22 °F."],
    ["Boil to 118 °C.", "Boil to 244 °F."],
    ["Lower the heat by 20 °C.", "Lower the heat by 36 °F."],
    ["Use 20 °C lower with a fan.", "Use 36 °F lower with a fan."],
    ["Keep below 5 °C.", "Keep below 41 °F."],
  ])("%j reads %j in Fahrenheit", (written, read) => {
    expect(inReaderUnits(written, fahrenheit)).toBe(read);
  });

  it.each([
    ["Bake at 350 °F.", "Bake at 175 °C."],
    ["Bake at 350F.", "Bake at 175 °C."],
    ["Bake at 350 degrees Fahrenheit.", "Bake at 175 °C."],
    ["Freeze at 0 °F.", "Freeze at -18 °C."],
    ["Cook to 165 °F.", "Cook to 74 °C."],
    ["Raise it by 25 °F.", "Raise it by 14 °C."],
  ])("%j reads %j in Celsius", (written, read) => {
    expect(inReaderUnits(written, celsius)).toBe(read);
  });

  it("are shown in both scales, as written first", () => {
    expect(inReaderUnits("Bake at 180C, then 350 °F.", both)).toBe("Bake at 180C, then 350 °F.");
    expect(inReaderUnits("Bake at 160–180 °C.", both)).toBe("Bake at 160–180 °C (320–355 °F).");
    expect(inReaderUnits("Bake at 350 °F.", both)).toBe("Bake at 350 °F (175 °C).");
  });

  it.each([
    "Bake at 180 °C (350 °F).",
    "Bake at 350 °F/180 °C.",
    "Bake at gas mark 4.",
    "Bake at 350 degrees.",
    "Add 2 C flour and 3 F figs.",
    "Add 200 Cups.",
    "Batch A180C2.",
    "Vitamin C, 12.180 °C",
    "Fold in {350 °F}.",
    "Turn by 180°.",
    "",
  ])("stay as written in %j", (text) => {
    for (const language of [fahrenheit, celsius, both]) expect(inReaderUnits(text, language)).toBe(text);
  });
});

describe("times", () => {
  it.each([
    ["Rest for 120 min.", "Rest for 2 h.", "Rest for 120 min."],
    ["Rest for 2 h.", "Rest for 2 h.", "Rest for 120 min."],
    ["Bake for 90 minutes.", "Bake for 1 h 30 min.", "Bake for 90 min."],
    ["Bake for 1 1/2 hours.", "Bake for 1 h 30 min.", "Bake for 90 min."],
    ["Bake for 1½ hours.", "Bake for 1 h 30 min.", "Bake for 90 min."],
    ["Bake for 1,5 h.", "Bake for 1 h 30 min.", "Bake for 90 min."],
    ["Bake for ½ hour.", "Bake for 30 min.", "Bake for 30 min."],
    ["Bake for 1 hour and 15 minutes.", "Bake for 1 h 15 min.", "Bake for 75 min."],
    ["Bake for 1 h 15 min.", "Bake for 1 h 15 min.", "Bake for 75 min."],
    [
      "Bake 2 hours, 5 min of them open.",
      "Bake 2 h, 5 min of them open.",
      "Bake 120 min, 5 min of them open.",
    ],
    ["Simmer for 45–75 min.", "Simmer for 45 min–1 h 15 min.", "Simmer for 45–75 min."],
    ["Soak for 1 to 1 1/2 hours.", "Soak for 1 h to 1 h 30 min.", "Soak for 60 to 90 min."],
    ["Soak for 1 to 1 h 30 min.", "Soak for 1 h to 1 h 30 min.", "Soak for 60 to 90 min."],
    [
      "Fry for 10 mins, stir, 5 min more.",
      "Fry for 10 min, stir, 5 min more.",
      "Fry for 10 min, stir, 5 min more.",
    ],
  ])("%j reads %j, or %j", (written, inHours, inMinutes) => {
    expect(inReaderUnits(written, hours)).toBe(inHours);
    expect(inReaderUnits(written, minutes)).toBe(inMinutes);
  });

  it.each([
    "Rest for half an hour.",
    "Blend for 30 s.",
    "A 30-minute rest.",
    "Cook 1/7 h.",
    "2 handfuls, 3 hot",
    "5 minced cloves",
    "{90 min}",
  ])("stay as written in %j", (text) => {
    for (const language of [hours, minutes]) expect(inReaderUnits(text, language)).toBe(text);
  });

  it("lose no minute on the way: minutes, hours, and minutes again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9999 }), (n) => {
        const text = `Leave for ${n} min.`;
        expect(inReaderUnits(inReaderUnits(text, hours), minutes)).toBe(text);
      }),
    );
  });

  it("are said in the reader's words", () => {
    const german: Language = {
      tag: "de",
      decimal: ",",
      group: ".",
      phrases: {
        "{figure} min": "{figure} Min.",
        "{figure} h": "{figure} Std.",
        "{hours} h {minutes} min": "{hours} Std. {minutes} Min.",
      },
      times: "hours",
    };
    expect(inReaderUnits("90 min, 2 hours, 5 minutes", german)).toBe("1 Std. 30 Min., 2 Std., 5 Min.");
  });
});

const MARKS = "CF°º℃hminours .,/–-{}toeby";

describe("a method for a reader elsewhere", () => {
  const step = "Bake {oats} at 180 °C for 90 min.";
  const flapjack = sheet(
    {
      name: "Flapjack",
      portions: 2,
      lines: [{ key: "oats", food: "oats-rolled-dry", amount: "120 g" }],
      method: [step],
    },
    starterFoods,
  );
  const plan = portionPlan({
    meals: [{ id: "tea", dishes: flapjack }],
    people: [{ id: "cox", demands: { energy: "300 kcal" } }],
  });
  const reader: Language = { ...britishEnglish, temperatures: "fahrenheit", times: "hours" };

  it("stays as written unless told", () => {
    expect(inReaderUnits(step, britishEnglish)).toBe(step);
    expect(personCard(plan, "cox")).toContain("at 180 °C for 90 min.");
  });

  it("is on the card and in the cook's steps", () => {
    expect(personCard(plan, "cox", { language: reader })).toContain("at 355 °F for 1 h 30 min.");
    const schedule = cookingSchedule(plan, {});
    expect(toText(schedule, { language: reader })).toContain("at 355 °F for 1 h 30 min.");
    expect(toText(schedule)).toContain("at 180 °C for 90 min.");
  });

  it("refuses a scale that there is not", () => {
    const language = { ...britishEnglish, temperatures: "kelvin", times: "days" } as unknown as Language;
    expect(
      errorOf(() => personCard(plan, "cox", { language })).faults.map(({ path }) => path.at(-1)),
    ).toEqual(["temperatures", "times"]);
  });

  it("leaves text alone that has no figure, and ends soon with any", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...MARKS) }), (text) => {
        expect(inReaderUnits(text, { ...fahrenheit, times: "hours" })).toBe(text);
      }),
    );
    const began = performance.now();
    for (const trap of [
      "1".repeat(20_000),
      "1 ".repeat(10_000),
      "1/1 ".repeat(5_000),
      "180 - ".repeat(3_000),
    ])
      inReaderUnits(trap, { ...both, times: "minutes" });
    expect(performance.now() - began).toBeLessThan(10_000);
  });
});
