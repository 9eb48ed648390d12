import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clean, isolate } from "../../src/show/clean.ts";
import { hostileText, neutral } from "./hostile.ts";

describe("clean", () => {
  it("leaves of every code point what the list written by hand leaves", () => {
    const differ: string[] = [];
    for (let c = 0; c <= 0x10ffff; c += 1) {
      const text = String.fromCodePoint(c);
      if (clean(text) !== neutral(text)) differ.push(c.toString(16));
    }
    expect(differ).toEqual([]);
  });

  it("leaves what the hand-written rule leaves, of any text, and changes nothing the second time", () => {
    fc.assert(
      fc.property(hostileText, (text) => {
        expect(clean(text)).toBe(neutral(text));
        expect(clean(clean(text))).toBe(clean(text));
      }),
    );
  });

  // UAX #9, section 2: the explicit and implicit directional formatting characters.
  it("leaves no mark that sets a direction", () => {
    for (const mark of "\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069\u200E\u200F\u061C") {
      expect(clean(`oats${mark}12`)).toBe("oats12");
    }
  });

  it("keeps what scripts and emoji need: joiners, selectors, accents", () => {
    for (const text of ["می\u200Cخواهم", "👩\u200D🍳", "✔\uFE0F", "e\u0301", "葛\u{E0100}"]) {
      expect(clean(text)).toBe(text);
    }
  });

  it("leaves a terminal no escape", () => {
    expect(clean("\u001B[31mred\u009B0m")).toBe("\uFFFD[31mred\uFFFD0m");
  });
});

describe("isolate", () => {
  it("sets apart Hebrew, Arabic, Syriac, Thaana, N'Ko, Adlam; not Latin, Greek, Han", () => {
    for (const rtl of ["א", "ش", "١", "ܐ", "ހ", "ߊ", "𞤀", "ﷺ", "ﻼ"]) {
      expect(isolate(`a ${rtl}`)).toBe(`\u2068a ${rtl}\u2069`);
    }
    for (const ltr of ["Oats", "βρώμη", "燕麦", "ओट्स", "🥣", ""]) expect(isolate(ltr)).toBe(ltr);
  });
});
