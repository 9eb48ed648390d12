import type { CookingSchedule } from "../cook/schedule.ts";
import type { Language } from "../document/language.ts";
import type { FoodRanking } from "../food/rankFoods.ts";
import type { FoodTable } from "../food/table.ts";
import type { ProteinQuality } from "../person/amino/quality.ts";
import type { Comparison } from "../person/compare/comparison.ts";
import type { Allergens } from "../person/portion/allergens.ts";
import type { DoseCheck } from "../person/portion/doses.ts";
import type { PlanAvoided } from "../plan/people/avoided.ts";
import type { Plan } from "../plan/planned.ts";
import type { ServedPortion } from "../plan/portion.ts";
import type { FitMet, FitMetTogether } from "../scale/fit/met.ts";
import type { FitOutOfReach, FitOutOfReachTogether } from "../scale/fit/missed.ts";
import type { Rounded, RoundedTogether, RoundingOutOfReach } from "../scale/round/result.ts";
import type { Substitutes } from "../scale/substitutes/result.ts";
import type { Sweep } from "../scale/sweep.ts";
import type { Citations } from "../sheet/citations.ts";
import type { CookingBalance } from "../sheet/cooking.ts";
import type { Difference } from "../sheet/difference.ts";
import type { EnergyShares } from "../sheet/energy.ts";
import type { EnergyCheck } from "../sheet/energyCheck.ts";
import type { Explanation } from "../sheet/explanation.ts";
import type { Influence } from "../sheet/influence.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import type { Uncertainty } from "../sheet/uncertain.ts";
import type { ShoppingList } from "../shop/list.ts";
import type { PlanDifference } from "../shop/planDifference.ts";
import type { ShoppingDifference } from "../shop/shoppingDifference.ts";
import { allergenTables, allergenTidy } from "./allergenTables.ts";
import { avoidedTables } from "./avoidedTable.ts";
import { citationTables, citationTidy } from "./citationTables.ts";
import { comparisonTidy } from "./comparisonRecords.ts";
import { comparisonTables } from "./comparisonTables.ts";
import { cookingTidy } from "./cookingRecords.ts";
import { cookingTables } from "./cookingTables.ts";
import { differenceTidy } from "./differenceRecords.ts";
import { differenceTables } from "./differenceTables.ts";
import { doseTidy } from "./doseRecords.ts";
import { doseTables } from "./doseTable.ts";
import { energyCheckTidy } from "./energyCheckRecords.ts";
import { energyCheckTables } from "./energyCheckTables.ts";
import { energyTidy } from "./energyRecords.ts";
import { explanationTables, explanationTidy } from "./explanationTables.ts";
import { metTidy, missedTidy } from "./fitRecords.ts";
import { metTables, outOfReachTables } from "./fitTables.ts";
import { foodsTables, foodsTidy } from "./foodsTables.ts";
import { influenceTables, influenceTidy } from "./influenceTables.ts";
import type { Parts } from "./parts.ts";
import { avoidedTidy } from "./peopleRecords.ts";
import { planDifferenceTables, planDifferenceTidy } from "./planDifferenceTables.ts";
import { planTidy } from "./planRecords.ts";
import { planTables } from "./planTables.ts";
import { portionTables, portionTidy } from "./portionTables.ts";
import { qualityTidy } from "./qualityRecords.ts";
import { qualityTables } from "./qualityTable.ts";
import { rankingTables, rankingTidy } from "./rankingTables.ts";
import { roundedTidy, unroundableTidy } from "./roundRecords.ts";
import { roundedTables, roundOutOfReachTables as unroundableTables } from "./roundTables.ts";
import { scheduleTidy } from "./scheduleRecords.ts";
import { scheduleTables } from "./scheduleTables.ts";
import { sheetTidy } from "./sheetRecords.ts";
import { sheetTables } from "./sheetTables.ts";
import { shoppingDifferenceTables, shoppingDifferenceTidy } from "./shoppingDifferenceTables.ts";
import { shoppingTidy } from "./shoppingRecords.ts";
import { shoppingTables } from "./shoppingTables.ts";
import { substitutesTidy } from "./substitutesRecords.ts";
import { substitutesTables } from "./substitutesTables.ts";
import { sweepTidy } from "./sweepRecords.ts";
import { sweepTables } from "./sweepTables.ts";
import type { Table } from "./table.ts";
import { energyTables, tallyTables, tallyTidy } from "./tallyTables.ts";
import type { Asked, Tidy } from "./tidy.ts";
import { uncertaintyTables, uncertaintyTidy } from "./uncertaintyTables.ts";

/** A result of the library, of this copy of the package or of another: it says what it is. */
export type LibraryResult =
  | (Sheet | Tally | EnergyShares | EnergyCheck | Difference | CookingBalance | Explanation | Uncertainty)
  | (FitMet | FitMetTogether | FitOutOfReach | FitOutOfReachTogether)
  | (Rounded | RoundedTogether | RoundingOutOfReach | Substitutes | Sweep)
  | ServedPortion
  | (Influence | Citations | FoodRanking)
  | (Comparison | DoseCheck | Allergens | ProteinQuality)
  | FoodTable
  | (Plan | PlanAvoided | CookingSchedule | ShoppingList | ShoppingDifference | PlanDifference);

/** How one kind of result is shown to a person, and told to a data frame. */
interface Maker<T> {
  /** `most` is how many rows of each table will be shown. */
  tables(x: T, language: Language, most?: number, parts?: Parts): readonly Table[];
  rows(x: T, asked: Asked): Tidy;
}

/** A maker for each kind, by what results call themselves. */
const MAKERS: { readonly [Is in LibraryResult["is"]]: Maker<Extract<LibraryResult, { readonly is: Is }>> } = {
  "steelyard/foods@1": { tables: foodsTables, rows: foodsTidy },
  "steelyard/sheet@1": { tables: sheetTables, rows: sheetTidy },
  "steelyard/tally@1": { tables: tallyTables, rows: tallyTidy },
  "steelyard/energy-shares@1": { tables: energyTables, rows: energyTidy },
  "steelyard/energy-check@1": { tables: energyCheckTables, rows: energyCheckTidy },
  "steelyard/difference@1": { tables: differenceTables, rows: differenceTidy },
  "steelyard/cooking@1": { tables: cookingTables, rows: cookingTidy },
  "steelyard/citations@1": { tables: citationTables, rows: citationTidy },
  "steelyard/influence@1": { tables: influenceTables, rows: influenceTidy },
  "steelyard/food-ranking@1": { tables: rankingTables, rows: rankingTidy },
  "steelyard/explanation@1": { tables: explanationTables, rows: explanationTidy },
  "steelyard/uncertainty@1": { tables: uncertaintyTables, rows: uncertaintyTidy },
  "steelyard/fit@1": { tables: metTables, rows: metTidy },
  "steelyard/fit-out-of-reach@1": { tables: outOfReachTables, rows: missedTidy },
  "steelyard/rounding@1": { tables: roundedTables, rows: roundedTidy },
  "steelyard/rounding-out-of-reach@1": { tables: unroundableTables, rows: unroundableTidy },
  "steelyard/substitutes@1": { tables: substitutesTables, rows: substitutesTidy },
  "steelyard/sweep@1": { tables: sweepTables, rows: sweepTidy },
  "steelyard/comparison@1": { tables: comparisonTables, rows: comparisonTidy },
  "steelyard/doses@1": { tables: doseTables, rows: doseTidy },
  "steelyard/allergens@1": { tables: allergenTables, rows: allergenTidy },
  "steelyard/protein-quality@1": { tables: qualityTables, rows: qualityTidy },
  "steelyard/portion@1": { tables: portionTables, rows: portionTidy },
  "steelyard/plan@1": { tables: planTables, rows: planTidy },
  "steelyard/avoided@1": { tables: avoidedTables, rows: avoidedTidy },
  "steelyard/schedule@1": { tables: scheduleTables, rows: scheduleTidy },
  "steelyard/shopping@1": { tables: shoppingTables, rows: shoppingTidy },
  "steelyard/plan-difference@1": { tables: planDifferenceTables, rows: planDifferenceTidy },
  "steelyard/shopping-difference@1": { tables: shoppingDifferenceTables, rows: shoppingDifferenceTidy },
};

/** Whether something is a result that there is a maker for. */
export function isTold(x: unknown): x is LibraryResult {
  if (typeof x !== "object" || x === null || !("is" in x)) return false;
  return typeof x.is === "string" && Object.hasOwn(MAKERS, x.is);
}

/** The maker of a result's kind. */
export function makerOf(x: LibraryResult): Maker<LibraryResult> {
  return MAKERS[x.is] as Maker<LibraryResult>;
}
