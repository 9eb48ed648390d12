import { describe, expect, it } from "vitest";
import { alphaTocopherolEquivalents, alphaTocopherolEstimate } from "../../src/person/intakes/tocopherols.ts";

describe("vitamin E in alpha-tocopherol equivalents", () => {
  // By hand from the factors of INFOODS, sources to the tagnames, part 4 (VITE).
  it("is never below the alpha-tocopherol, and tables differ", () => {
    const forms = { alpha: 10, beta: 1, gamma: 20, delta: 5 };
    expect(alphaTocopherolEquivalents(forms).toString()).toBe("13.3");
    expect(alphaTocopherolEquivalents(forms, "usda").toString()).toBe("12.45");
    expect(alphaTocopherolEquivalents({ alpha: 10 }).toString()).toBe("10");
    expect(alphaTocopherolEstimate(15).toString()).toBe("12");
  });
});
