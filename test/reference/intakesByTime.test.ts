import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Person } from "../../src/person/person.ts";
import { energyRangesFor } from "../../src/person/ranges/all.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg" };

function figure(authority: Authority, of: ComponentId, more: Partial<Person>): string | undefined {
  const { reference } = referenceIntakes(authority, { ...woman, ...more }).get(of);
  return reference?.value.toString();
}

describe("figures that follow the months of a pregnancy or since a birth", () => {
  const trimesters = [1, 2, 3] as const;

  it("change by trimester: WHO and FAO 2004, annex 1", () => {
    const by = (authority: Authority, of: ComponentId): unknown =>
      trimesters.map((pregnant) => figure(authority, of, { pregnant }));
    expect(by("who", "zinc")).toEqual(["5.5", "7", "10"]);
    expect(by("who", "calcium")).toEqual(["1000", "1000", "1200"]);
  });

  it("change by month of breastfeeding: WHO and FAO 2004, annex 1: zinc 9.5, 8.8, 7.2; selenium 35, 35, 42", () => {
    const by = (of: ComponentId): unknown =>
      [undefined, 2, 3, 5, 6, 11].map((monthsSinceBirth) =>
        figure("who", of, { breastfeeding: true, ...(monthsSinceBirth && { monthsSinceBirth }) }),
      );
    expect(by("zinc")).toEqual(["9.5", "9.5", "8.8", "8.8", "7.2", "7.2"]);
    expect(by("selenium")).toEqual(["35", "35", "35", "35", "42", "42"]);
  });

  it("say what they leave out where those of mothers were not read, and give none where none is published", () => {
    // The Swedish Food Agency's page on magnesium names women, and no mothers.
    const magnesium = referenceIntakes("nordic", { ...woman, pregnant: 2 }).get("magnesium").reference;
    expect([magnesium?.value.toString(), magnesium?.leavesOut]).toEqual(["300", "pregnancy"]);
    expect(referenceIntakes("nordic", woman).get("magnesium").reference?.leavesOut).toBeUndefined();
    // FAO and WHO print no iron of pregnancy: supplements are advised.
    expect(figure("who", "iron", { pregnant: 2 })).toBeUndefined();
  });
});

describe("figures that follow age and menopause in their own way", () => {
  it("vitamin D rises at 75 in the Nordic countries, and iron falls with menopause, by WHO and FAO", () => {
    expect([74.9, 75].map((age) => figure("nordic", "vitaminD", { age }))).toEqual(["10", "20"]);
    expect([50, 51].map((age) => figure("who", "iron", { age }))).toEqual(["24", "9"]);
    expect(figure("who", "iron", { age: 52, postmenopausal: false })).toBe("24");
  });

  it("WHO's goals for populations begin at their ages: 2 g of sodium and 3,510 mg of potassium for adults, fibre by age", () => {
    const sodium = (age: number): string | undefined =>
      referenceIntakes("who", { ...woman, age })
        .get("sodium")
        .upper?.value.toString();
    expect([17, 18].map(sodium)).toEqual([undefined, "2000"]);
    expect([17, 18].map((age) => figure("who", "potassium", { age }))).toEqual([undefined, "3510"]);
    expect([2, 5, 6, 9, 10, 60].map((age) => figure("who", "fibre", { age }))).toEqual([
      "15",
      "15",
      "21",
      "21",
      "25",
      "25",
    ]);
    const shares = (age: number): string[] =>
      energyRangesFor("who", { ...woman, age }).map(
        ({ of, least = "", most = "" }) => `${of} ${least}-${most}`,
      );
    expect(shares(1)).toEqual(["freeSugars -10"]);
    expect(shares(30)).toContain("transFat -1");
    expect(shares(19)).not.toContain("fat -30");
    expect(shares(20)).toContain("fat -30");
  });
});
