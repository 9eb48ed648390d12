import { existsSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { component, componentIds, components, isComponentId, listedIds } from "../../src/food/components.ts";
import { errorOf } from "../number/errorOf.ts";

/** The ids that users of the library rely on, by the unit of their figures. */
const promised = {
  kcal: "energy",
  g: `protein fat carbohydrateByDifference availableCarbohydrate fibre solubleFibre sugars addedSugars polyols
    organicAcids starch water ash alcohol saturatedFat monounsaturatedFat polyunsaturatedFat transFat
    omega3 omega6 linoleicAcid alphaLinolenicAcid epa dpa dha salt tryptophan threonine isoleucine
    leucine lysine methionine cystine phenylalanine tyrosine valine arginine histidine alanine
    asparticAcid glutamicAcid glycine proline serine`,
  mg: `cholesterol sodium potassium calcium magnesium phosphorus iron zinc copper manganese chloride
    fluoride vitaminC thiamin riboflavin niacin niacinEquivalents pantothenicAcid vitaminB6 vitaminE
    choline betaine caffeine theobromine coumarin phytate oxalate phytosterols`,
  µg: `selenium iodine chromium molybdenum vitaminARae vitaminARe retinol betaCarotene alphaCarotene
    betaCryptoxanthin lycopene luteinZeaxanthin vitaminD vitaminK biotin folate folateDfe foodFolate
    folicAcid vitaminB12`,
};

/**
 * INFOODS tagnames and the unit that the list prints for each. Source: INFOODS Food Component
 * Identifiers (Klensin et al. 1989) with the FAO/INFOODS revisions to April 2010, as in the
 * published tagname files. `BETN` is printed there without a unit.
 */
const infoods: Readonly<Record<string, string>> = {
  ENERC: "kJ",
  PROCNT: "g",
  FAT: "g",
  CHOCDF: "g",
  CHOAVLDF: "g",
  FIBTG: "g",
  FIBSOL: "g", // unverified
  SUGAR: "g",
  SUGAD: "g",
  POLYL: "mg",
  OA: "g",
  STARCH: "g",
  WATER: "g",
  ASH: "g",
  ALC: "g",
  FASAT: "g",
  FAMS: "g",
  FAPU: "g",
  FATRN: "g",
  FAPUN3: "g",
  FAPUN6: "g",
  F18D2CN6: "g",
  F18D3CN3: "g",
  F20D5N3: "g",
  F22D5N3: "g",
  F22D6N3: "g",
  NACL: "mg",
  CHOLE: "mg",
  NA: "mg",
  K: "mg",
  CA: "mg",
  MG: "mg",
  P: "mg",
  FE: "mg",
  ZN: "mg",
  CU: "mg",
  MN: "µg",
  CLD: "mg",
  FD: "µg",
  VITC: "mg",
  THIA: "mg",
  RIBF: "mg",
  NIA: "mg",
  NIAEQ: "mg",
  PANTAC: "mg",
  VITB6A: "mg",
  TOCPHA: "mg",
  CHOLN: "mg",
  CAFFN: "mg",
  THEBRN: "mg",
  PHYTAC: "mg",
  OXALAC: "mg",
  PHYSTR: "mg",
  SE: "µg",
  ID: "µg",
  CR: "µg",
  MO: "µg",
  VITA: "µg",
  RETOL: "µg",
  CARTB: "µg",
  CARTA: "µg",
  CRYPXB: "µg",
  LYCPN: "µg",
  VITD: "µg",
  VITK1: "µg",
  BIOT: "µg",
  FOL: "µg",
  FOLDFE: "µg",
  FOLFD: "µg",
  FOLAC: "µg",
  VITB12: "µg",
  TRP: "mg",
  THR: "mg",
  ILE: "mg",
  LEU: "mg",
  LYS: "mg",
  MET: "mg",
  CYS: "mg",
  PHE: "mg",
  TYR: "mg",
  VAL: "mg",
  ARG: "mg",
  HIS: "mg",
  ALA: "mg",
  ASP: "mg",
  GLU: "mg",
  GLY: "mg",
  PRO: "mg",
  SER: "mg",
};

describe("the component registry", () => {
  it.each(Object.entries(promised))("has every promised id in %s, and no other", (unit, ids) => {
    const here = listedIds.filter((id) => components[id].unit === unit);
    expect([...here].sort()).toEqual(ids.split(/\s+/).sort());
  });

  it("files each component under its own id", () => {
    for (const id of componentIds) expect(components[id].id).toBe(id);
  });

  it("gives no name or tagname twice", () => {
    const all = componentIds.map(component);
    expect(new Set(all.map((c) => c.name)).size).toBe(all.length);
    expect(new Set(all.map((c) => c.tagname)).size).toBe(all.length);
  });

  it("takes every tagname from the INFOODS list, or says from where else", () => {
    const elsewhere = listedIds.map(component).filter((c) => c.tagList !== undefined);
    expect(elsewhere.map((c) => [c.tagname, c.tagList])).toEqual([
      ["COUMARIN", "own"],
      ["VITA_RAE", "SR28"],
      ["LUT+ZEA", "SR28"],
    ]);
    for (const c of listedIds.map(component)) {
      if (c.tagList !== undefined || c.tagname === "BETN") continue;
      expect([c.tagname, c.tagUnit ?? c.unit]).toEqual([c.tagname, infoods[c.tagname]]);
    }
  });
});

interface Tag {
  readonly sr: string;
  readonly srTag: string | null;
  readonly srUnit: string;
  readonly infoods: string | null;
  readonly infoodsDefaultUnit: string | null;
  readonly id: string;
}

/** Notes on the tagnames of SR28's nutrients: NUTR_DEF, and the INFOODS list as above. */
const notes = new URL("../../../shared/standards/infoods_tagnames.json", import.meta.url);

describe("single sugars, fatty acids, vitamers and sterols", () => {
  const details = componentIds.filter((id) => !listedIds.includes(id)).map(component);

  it("are named in SR28, but for the parts that were added and what no mass can be told of", () => {
    expect(details).toHaveLength(69);
    expect(Object.keys(components)).toEqual(componentIds);
    const ofTheirOwn = details.filter(({ tagList }) => tagList === "own").map(({ name }) => name);
    expect(ofTheirOwn).toEqual([
      "18:2, mixed isomers",
      "18:2, trans, not further defined",
      "18:3, mixed isomers",
    ]);
  });

  it.skipIf(!existsSync(notes))("have the tagname and unit of the lists", () => {
    const { numbers } = JSON.parse(readFileSync(notes, "utf8")) as { numbers: readonly Tag[] };
    for (const { id, tagname, tagList, unit, tagUnit } of details) {
      const own = tagList === "own";
      const found = numbers.find((each) => (tagList === "SR28" ? each.srTag : each.infoods) === tagname);
      expect([id, own || found !== undefined]).toEqual([id, true]);
      if (found) expect([id, unit]).toEqual([id, found.srUnit]);
      if (found && tagList === undefined)
        expect([id, tagUnit ?? unit]).toEqual([id, found.infoodsDefaultUnit]);
    }
  });
});

describe("isComponentId", () => {
  it("knows the ids and nothing else", () => {
    for (const id of componentIds) expect(isComponentId(id)).toBe(true);
    fc.assert(
      fc.property(
        fc.string(),
        (text) => isComponentId(text) === (componentIds as readonly string[]).includes(text),
      ),
    );
  });

  it.each([
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
    "valueOf",
    "",
    "Protein",
    "energy ",
    null,
    undefined,
    0,
    {},
    ["energy"],
    Symbol.iterator,
  ])("refuses %s", (hostile) => expect(isComponentId(hostile)).toBe(false));
});

describe("component", () => {
  it("gives the component of an id", () => {
    expect(component("iron")).toEqual({
      id: "iron",
      tagname: "FE",
      name: "iron",
      unit: "mg",
      group: "mineral",
    });
  });

  it.each([
    ["protien", /protein/],
    ["fiber", /did you mean fibre\?/],
    ["Calories", /did you mean energy\?/],
    ["carbs", /availableCarbohydrate or carbohydrateByDifference/],
    ["vitaminA", /vitaminARae/],
    ["omega 3", /omega3/],
    ["PROCNT", /did you mean protein\?/],
    ["VITA_RAE", /did you mean vitaminARae\?/],
    ["xyzzy-plugh", /components lists/],
    ["", /components lists/],
    ["__proto__", /components lists/],
    ["constructor", /components lists/],
  ])("explains what to write instead of %j", (id, hint) => {
    const error = errorOf(() => component(id));
    expect(error.code).toBe("component-unknown");
    expect(error.hint).toMatch(hint);
  });

  it("answers a text of any length in bounded time", () => {
    expect(errorOf(() => component("protein".repeat(100_000))).message.length).toBeLessThan(400);
  });
});
