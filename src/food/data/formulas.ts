import type { ComponentId } from "../components.ts";
import type { Origin } from "../food.ts";

/** A component computed from others of the same food: a weighted sum, so that totals agree with their parts. */
export interface Formula {
  /** What comes out, in its own unit, per 100 g. */
  readonly gives: ComponentId;
  /** Weights as exact text, each for the input's own unit. Every input must be known. */
  readonly terms: { readonly [C in ComponentId]?: string };
  /** What the sum starts from, where it is a difference from the whole 100 g. */
  readonly from?: string;
  /** Holds only for foods of this origin. */
  readonly origin?: Origin;
  readonly formula: string;
  readonly source: string;
}

/**
 * Formulas for components that a food does not give, the first that can be worked out being used.
 * All but the rules marked otherwise were read in public copies of the sources they name.
 *
 * Available carbohydrate: INFOODS defines CHOAVLDF twice, as carbohydrate by difference less fibre and
 * as the long difference. They part where alcohol was not taken off the carbohydrate. Where a table
 * gives carbohydrate by difference, the first is used, since USDA and its followers do take it off and
 * the two figures then agree on the page; else the long one, which asks for alcohol by name.
 */
export const formulas: readonly Formula[] = [
  {
    gives: "carbohydrateByDifference",
    from: "100",
    terms: { water: "-1", protein: "-1", fat: "-1", ash: "-1", alcohol: "-1" },
    formula: "100 − water − protein − fat − ash − alcohol",
    source: "INFOODS tagname CHOCDF; alcohol taken off as in USDA SR28",
  },
  {
    gives: "carbohydrateByDifference",
    terms: { availableCarbohydrate: "1", fibre: "1" },
    formula: "available carbohydrate + fibre",
    source: "INFOODS tagname CHOAVLDF, turned round",
  },
  {
    gives: "availableCarbohydrate",
    terms: { carbohydrateByDifference: "1", fibre: "-1" },
    formula: "carbohydrate by difference − fibre",
    source: "INFOODS tagname CHOAVLDF",
  },
  {
    gives: "availableCarbohydrate",
    from: "100",
    terms: { water: "-1", protein: "-1", fat: "-1", ash: "-1", alcohol: "-1", fibre: "-1" },
    formula: "100 − water − protein − fat − ash − alcohol − fibre",
    source: "INFOODS tagname CHOAVLDF",
  },
  {
    gives: "vitaminARae",
    terms: { retinol: "1", betaCarotene: "1/12", alphaCarotene: "1/24", betaCryptoxanthin: "1/24" },
    formula: "retinol + beta-carotene/12 + (alpha-carotene + beta-cryptoxanthin)/24",
    source: "Institute of Medicine (2001), Dietary Reference Intakes for Vitamin A, chapter 4",
  },
  {
    gives: "vitaminARae",
    terms: { vitaminARe: "1/2", retinol: "1/2" },
    formula: "(retinol equivalents + retinol)/2",
    source: "arithmetic from both definitions: activity equivalents count carotenoids at half",
  },
  {
    gives: "vitaminARe",
    terms: { retinol: "1", betaCarotene: "1/6", alphaCarotene: "1/12", betaCryptoxanthin: "1/12" },
    formula: "retinol + beta-carotene/6 + (alpha-carotene + beta-cryptoxanthin)/12",
    source: "FAO/WHO (1967) retinol equivalents, as INFOODS tagname VITA",
  },
  {
    gives: "vitaminARe",
    terms: { vitaminARae: "2", retinol: "-1" },
    formula: "2 × retinol activity equivalents − retinol",
    source: "arithmetic from both definitions: activity equivalents count carotenoids at half",
  },
  {
    gives: "folate",
    terms: { foodFolate: "1", folicAcid: "1" },
    formula: "food folate + folic acid",
    source: "INFOODS tagnames FOL, FOLFD and FOLAC",
  },
  {
    gives: "foodFolate",
    terms: { folate: "1", folicAcid: "-1" },
    formula: "total folate − folic acid",
    source: "INFOODS tagnames FOL, FOLFD and FOLAC",
  },
  {
    gives: "folateDfe",
    terms: { foodFolate: "1", folicAcid: "1.7" },
    formula: "food folate + 1.7 × folic acid",
    source: "Institute of Medicine (1998), Dietary Reference Intakes for folate; INFOODS tagname FOLDFE",
  },
  {
    gives: "folateDfe",
    terms: { folate: "1", folicAcid: "0.7" },
    formula: "total folate + 0.7 × folic acid",
    source: "Institute of Medicine (1998), Dietary Reference Intakes for folate; INFOODS tagname FOLDFE",
  },
  {
    gives: "niacinEquivalents",
    terms: { niacin: "1", tryptophan: "50/3" },
    formula: "niacin + tryptophan/60",
    source: "INFOODS tagname NIATRP; EFSA (2014), reference values for niacin",
  },
  {
    gives: "salt",
    terms: { sodium: "1/400" },
    formula: "sodium × 2.5",
    source: "Regulation (EU) No 1169/2011, Annex I, point 11",
  },
  {
    gives: "sodium",
    terms: { salt: "400" },
    formula: "salt ÷ 2.5",
    source: "Regulation (EU) No 1169/2011, Annex I, point 11, turned round",
  },
  {
    gives: "omega3",
    terms: { alphaLinolenicAcid: "1", epa: "1", dpa: "1", dha: "1" },
    formula: "alpha-linolenic acid + EPA + DPA + DHA",
    source: "INFOODS tagname FAPUN3, of the acids that food tables commonly name",
  },
  {
    gives: "omega6",
    terms: { linoleicAcid: "1" },
    origin: "plant",
    formula: "linoleic acid, the n-6 acid of plants",
    // Oils rich in gamma-linolenic acid (borage, evening primrose) are the exception.
    source: "common practice, no source; INFOODS tagname FAPUN6",
  },
];
