import { americanEnglish } from "steelyard/show";
import { describe, expect, it } from "vitest";
import { amountOfFood } from "../../src/cook/amountOfFood.ts";
import { britishEnglish } from "../../src/document/language.ts";

/** How English counts foods: common practice, no source. */
describe("an amount before its food", () => {
  it.each([
    ["1 medium", "bananas", "1 medium banana"],
    ["1/2 medium", "bananas", "1/2 medium banana"],
    ["1 1/2 medium", "bananas", "1 1/2 medium bananas"],
    ["2 large", "eggs", "2 large eggs"],
    ["1 large", "eggs", "1 large egg"],
    ["2 large", "egg", "2 large eggs"],
    ["1 large", "egg", "1 large egg"],
    ["14 large", "egg, hard-boiled", "14 large eggs, hard-boiled"],
    ["1 medium", "tomatoes, canned", "1 medium tomato, canned"],
    ["1 medium", "sweet potatoes", "1 medium sweet potato"],
    ["35 g", "oats", "35 g oats"],
    ["1 cup", "oats", "1 cup oats"],
    ["1/4 cup + 1 tbsp", "walnuts", "1/4 cup + 1 tbsp walnuts"],
  ])("%s, %s", (amount, name, said) => {
    expect(amountOfFood(amount, name, britishEnglish)).toBe(said);
    expect(amountOfFood(amount, name, americanEnglish)).toBe(said);
  });

  it("is left to the phrase of another language", () => {
    const german = { ...britishEnglish, tag: "de", phrases: { "{amount} {name}": "{name}: {amount}" } };
    expect(amountOfFood("1 medium", "Bananen", german)).toBe("Bananen: 1 medium");
  });
});
