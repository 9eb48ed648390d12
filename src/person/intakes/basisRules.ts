import type { ComponentId } from "../../food/components.ts";
import type { Fraction } from "../../number/fraction.ts";
import type { Check } from "../check.ts";

/** A way to count a nutrient in other terms, and where it is from. */
export interface BasisRule {
  /** The component that comes out, in its own unit. */
  readonly gives: ComponentId;
  /** The components it is reckoned from: all of them, for an unknown one is not zero. */
  readonly from: readonly ComponentId[];
  readonly formula: string;
  readonly source: string;
  readonly check: Check;
  readonly terms: { readonly [C in ComponentId]?: Fraction };
}

const iomA = "Institute of Medicine (US) 2001, DRI for Vitamin A, chapter 4";
const raeRead: Check = {
  at: "issuer",
  read: "https://dietarysupplementdatabase.usda.nih.gov/Conversions.php",
};
const reSource = "FAO/WHO 1967 retinol equivalents, as INFOODS defines VITA; used by COMA 1991 and EFSA 2015";
const reRead: Check = { at: "copy", read: "FAO/INFOODS tagname files" };
const dfeSource = "Institute of Medicine (US) 1998, DRI for folate; multiplier 1.7 as FOLDFE in INFOODS";
const dfeRead: Check = { at: "issuer", read: "https://dsld.od.nih.gov/dsld/unitconversion.jsp" };

const one: Fraction = { n: 1n, d: 1n };
const part = (n: bigint, d: bigint): Fraction => ({ n, d });

/**
 * Conversions between the terms of one nutrient, the most direct first. Retinol activity equivalents
 * count carotenoids of food at half of what retinol equivalents do, so that with the retinol known
 * either follows from the other.
 */
export const basisRules: readonly BasisRule[] = [
  {
    gives: "vitaminARae",
    from: ["retinol", "betaCarotene", "alphaCarotene", "betaCryptoxanthin"],
    formula: "retinol + beta-carotene / 12 + (alpha-carotene + beta-cryptoxanthin) / 24",
    terms: {
      retinol: one,
      betaCarotene: part(1n, 12n),
      alphaCarotene: part(1n, 24n),
      betaCryptoxanthin: part(1n, 24n),
    },
    source: iomA,
    check: raeRead,
  },
  {
    gives: "vitaminARae",
    from: ["vitaminARe", "retinol"],
    formula: "(retinol equivalents + retinol) / 2",
    terms: { vitaminARe: part(1n, 2n), retinol: part(1n, 2n) },
    source: iomA,
    check: raeRead,
  },
  {
    gives: "vitaminARe",
    from: ["retinol", "betaCarotene", "alphaCarotene", "betaCryptoxanthin"],
    formula: "retinol + beta-carotene / 6 + (alpha-carotene + beta-cryptoxanthin) / 12",
    terms: {
      retinol: one,
      betaCarotene: part(1n, 6n),
      alphaCarotene: part(1n, 12n),
      betaCryptoxanthin: part(1n, 12n),
    },
    source: reSource,
    check: reRead,
  },
  {
    gives: "vitaminARe",
    from: ["vitaminARae", "retinol"],
    formula: "2 x retinol activity equivalents - retinol",
    terms: { vitaminARae: part(2n, 1n), retinol: part(-1n, 1n) },
    source: iomA,
    check: raeRead,
  },
  {
    gives: "folateDfe",
    from: ["foodFolate", "folicAcid"],
    formula: "folate of food + 1.7 x folic acid",
    terms: { foodFolate: one, folicAcid: part(17n, 10n) },
    source: dfeSource,
    check: dfeRead,
  },
  {
    gives: "folateDfe",
    from: ["folate", "folicAcid"],
    formula: "folate + 0.7 x folic acid",
    terms: { folate: one, folicAcid: part(7n, 10n) },
    source: dfeSource,
    check: dfeRead,
  },
  {
    gives: "folate",
    from: ["foodFolate", "folicAcid"],
    formula: "folate of food + folic acid",
    terms: { foodFolate: one, folicAcid: one },
    source: "INFOODS definition of FOL",
    check: reRead,
  },
  {
    gives: "folate",
    from: ["folateDfe", "folicAcid"],
    formula: "dietary folate equivalents - 0.7 x folic acid",
    terms: { folateDfe: one, folicAcid: part(-7n, 10n) },
    source: dfeSource,
    check: dfeRead,
  },
  {
    gives: "niacinEquivalents",
    from: ["niacin", "tryptophan"],
    // Niacin is in mg, tryptophan in g.
    formula: "niacin + tryptophan / 60",
    terms: { niacin: one, tryptophan: part(1000n, 60n) },
    source: "INFOODS NIATRP; EFSA 2014, Dietary Reference Values for niacin, EFSA Journal 12(7):3759",
    check: { at: "issuer", read: "https://www.efsa.europa.eu/en/efsajournal/pub/3759" },
  },
  {
    gives: "salt",
    from: ["sodium"],
    // Sodium is in mg, salt in g.
    formula: "2.5 x sodium",
    terms: { sodium: part(25n, 10000n) },
    source: "Regulation (EU) No 1169/2011, Annex I point 11",
    check: { at: "copy", read: "https://bryantresearch.co.uk/foodlaw/label/nutrition-definitions.htm" },
  },
  {
    gives: "sodium",
    from: ["salt"],
    formula: "salt / 2.5",
    terms: { salt: part(400n, 1n) },
    source: "Regulation (EU) No 1169/2011, Annex I point 11",
    check: { at: "copy", read: "https://bryantresearch.co.uk/foodlaw/label/nutrition-definitions.htm" },
  },
];
