import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, it } from "vitest";
import { clean } from "../../src/show/clean.ts";
import { characters, displayWidth, wrap } from "../../src/show/width.ts";
import { runs } from "../runs.ts";
import { hostileText } from "./hostile.ts";

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });

/** Single characters, and the sequences that names contain. */
const piece = fc.oneof(
  fc.string({ unit: "grapheme-composite", minLength: 1, maxLength: 1 }),
  fc.constantFrom("🥣", "👩‍🍳", "🇬🇧", "✔️", "1️⃣", "한", "ｶﾞ", "अ", "वा", "é", "e\u0301", "燕", "👍🏽", " ", "a"),
);
const pieces = fc.array(piece, { maxLength: 40 }).map((p) => clean(p.join("")).replaceAll("\n", " "));

describe("displayWidth", () => {
  // Independent method: string-width 8, which follows UAX #11 and UTS #51.
  it("agrees with string-width on every assigned character", () => {
    const differ: string[] = [];
    for (let c = 0x20; c <= 0x10ffff; c += 1) {
      const text = String.fromCodePoint(c);
      if (/[\p{Cn}\p{Co}\p{Cs}]/u.test(text) || clean(text) !== text) continue;
      if (displayWidth(text) !== stringWidth(text)) differ.push(c.toString(16));
    }
    expect(differ).toEqual([]);
  });

  it("agrees with string-width on every mark after a letter", () => {
    const differ: string[] = [];
    for (let c = 0x300; c <= 0x10ffff; c += 1) {
      const mark = String.fromCodePoint(c);
      if (!/\p{M}/u.test(mark) || clean(mark) !== mark) continue;
      for (const text of [`a${mark}`, `\u4e00${mark}${mark}`]) {
        if (displayWidth(text) !== stringWidth(text)) differ.push(c.toString(16));
      }
    }
    expect(differ).toEqual([]);
  });

  it("agrees with string-width on names of mixed scripts and emoji", () => {
    fc.assert(
      fc.property(pieces, (text) => {
        expect(displayWidth(text)).toBe(stringWidth(text));
      }),
      { numRuns: runs(500) },
    );
  });
});

describe("characters", () => {
  it("are the same taken in stretches as taken at once", () => {
    const text = fc.array(piece, { minLength: 300, maxLength: 900 }).map((p) => p.join(""));
    fc.assert(
      fc.property(text, fc.nat(3), (t, shift) => {
        const shifted = "x".repeat(shift) + t;
        expect(characters(shifted)).toEqual(Array.from(segmenter.segment(shifted), (s) => s.segment));
      }),
      { numRuns: runs(60) },
    );
  });

  it("hold together across the end of a stretch, however long one is", () => {
    for (const one of ["👩‍🍳", "🇬🇧", "👍🏽", "e\u0301", `e${"\u0301".repeat(2000)}`, "🥣"]) {
      for (let before = 500; before < 516; before += 1) {
        const text = `${"é".repeat(before)}${one}${one}z`;
        expect(characters(text).slice(-3)).toEqual([one, one, "z"]);
      }
    }
  });

  it("are told apart in bounded time: 100,000 flags, emoji or accents", () => {
    const start = performance.now();
    for (const one of ["🇬🇧", "🥣", "\u0301"]) displayWidth(one.repeat(100_000));
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});

describe("wrap", () => {
  it("loses nothing but spaces, and keeps to the width", () => {
    fc.assert(
      fc.property(
        fc.oneof(pieces, hostileText.map(clean)),
        fc.integer({ min: 2, max: 30 }),
        (text, width) => {
          const lines = wrap(text, width);
          expect(lines.join("").replace(/\s/gu, "")).toBe(text.replace(/\s/gu, ""));
          for (const line of lines) {
            // One character can be wider than the line: a letter with several vowel signs beside it.
            if (characters(line).length > 1) expect(displayWidth(line)).toBeLessThanOrEqual(width);
          }
        },
      ),
    );
  });

  it("breaks at spaces where it can", () => {
    expect(wrap("rolled oats, raw", 7)).toEqual(["rolled", "oats,", "raw"]);
    expect(wrap("porridge", 4)).toEqual(["porr", "idge"]);
    expect(wrap("one\ntwo", 10)).toEqual(["one", "two"]);
    expect(wrap("燕麦片粥", 5)).toEqual(["燕麦", "片粥"]);
  });
});
