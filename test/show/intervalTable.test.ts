import { expect, it } from "vitest";
import { foodTable, openSheet, sheet, uncertainty } from "../../src/index.ts";
import { toText } from "../../src/show.ts";

/** Made up: the table is held to what `uncertainty` says. */
const foods = foodTable([
  {
    id: "greens",
    name: "Greens",
    source: "made up",
    per100g: { iron: "2", zinc: { value: "1", error: "0.1" } },
  },
]).withRetention({
  source: "made up",
  columns: [["iron"]],
  codes: { boiled: ["greens, boiled", "80", "60-100:9"] },
});

it("tells how sure a cooked sheet's figures are, where it is asked to, and still once stored and opened", () => {
  const s = sheet(
    { name: "Bowl", portions: 1, lines: [{ food: "greens", amount: "100 g", retention: "boiled" }] },
    foods,
  );
  const iron = uncertainty(s, "iron", "portion");
  // 2 mg × 0.8; nine in ten from 60 to 100 %: 0.4 mg are 1.645 standard uncertainties.
  expect(iron.high.toNumber()).toBeCloseTo(1.6 + (2 * 0.4) / 1.645, 4);
  const shown = toText(s, { parts: ["intervals"] });
  expect(shown).toMatch(/iron +mg +about 1\.6 d, 1\.11 to 2\.09/);
  expect(shown).toMatch(/zinc +mg +about 1, 0\.8 to 1\.2/);
  expect(toText(s)).not.toContain("how sure");
  expect(toText(openSheet(JSON.parse(JSON.stringify(s))), { parts: ["intervals"] })).toBe(shown);
});
