export {
  type CardAbout,
  type CardCaution,
  type CardDay,
  type CardDayFigure,
  type CardHow,
  personCard,
} from "./card/personCard.ts";
export {
  type CookedApart,
  type CookedPot,
  type CookingNote,
  type CookingNoteCode,
  type CookingRun,
  CookingSchedule,
  type CookingSession,
  type CookingSteps,
  cookingSchedule,
  type DishServing,
  type MealSchedule,
  type PersonDrift,
  type PersonPortions,
  type RunsHow,
  type ScheduleHow,
  type Vessel,
  type VesselFit,
  type VesselUse,
} from "./cook/cookingSchedule.ts";
export { inReaderUnits } from "./cook/readerUnits.ts";
export { britishEnglish, type Language, type PluralForms, type UnitWords } from "./document/language.ts";
export { type Allergen, allergens } from "./food/allergens.ts";
export { type BorrowHow, borrow } from "./food/borrow.ts";
export {
  type Component,
  type ComponentGroup,
  type ComponentId,
  type ComponentUnit,
  components,
} from "./food/components.ts";
export { usPolyolFactors } from "./food/data/energyUs101.ts";
export { type Formula, formulas } from "./food/data/formulas.ts";
export {
  type EnergyPart,
  type EnergySystem,
  type EnergySystemId,
  type EnergyTerm,
  energySystems,
} from "./food/energy.ts";
export type {
  EnergyFactors,
  Figure,
  FoodCaution,
  FoodInput,
  FoodMeasure,
  FoodPrice,
  Origin,
  Pack,
  State,
} from "./food/food.ts";
export { vitaminDFromIu, vitaminDToIu } from "./food/internationalUnits.ts";
export { foodFromLabel } from "./food/label.ts";
export type { LabelInput, LabelWord } from "./food/labelDocument.ts";
export { type Lender, type LendersHow, lenders } from "./food/lend.ts";
export type { BorrowBasis } from "./food/lending.ts";
export type { PackedFood, PackedFoods } from "./food/packed.ts";
export { type RetentionCode, type RetentionTable, retentionCodes } from "./food/retention.ts";
export { FoodTable, foodTable, type StoredFoods } from "./food/table.ts";
export {
  type Amount,
  type AmountData,
  type AmountHow,
  type AmountInput,
  type AmountKind,
  amount,
} from "./measure/amount.ts";
export { type ConvertHow, convert } from "./measure/convert.ts";
export { type FormatHow, formatAmount } from "./measure/format.ts";
export { type Kitchen, type KitchenName, kitchen, kitchens } from "./measure/kitchen.ts";
export type { HouseholdUnit } from "./measure/measureSet.ts";
export {
  type MeasureSet,
  type MeasureSetName,
  type Measures,
  measureSet,
  measureSets,
} from "./measure/measures.ts";
export type { DecimalMark } from "./measure/numberText.ts";
export { type ErrorCode, type Fault, type Path, SteelyardError } from "./number/error.ts";
export { Exact, exact, type Value } from "./number/exact.ts";
export { toDecimal } from "./number/toDecimal.ts";
export { type ActivityBand, activityClasses, type ChildActivity, childActivity } from "./person/activity.ts";
export type { Aim, MacroAim, MacroName, Rate, Wanted } from "./person/aim.ts";
export type { Digestibility } from "./person/amino/digestibility.ts";
export type { AminoName, AminoPattern, PatternId } from "./person/amino/pattern.ts";
export {
  type AminoContent,
  type PortionScore,
  ProteinQuality,
  type ProteinQualityHow,
  proteinQuality,
} from "./person/amino/quality.ts";
export {
  type AminoScore,
  aminoPatterns,
  aminoRequirementMet,
  aminoScore,
  type ProteinAmounts,
} from "./person/amino/score.ts";
export { type Caution, type CautionCode, cautionTexts, practitionerNote } from "./person/caution.ts";
export type { Check } from "./person/check.ts";
export type { EnergyBalance, PortionRatio, RangeVerdict } from "./person/compare/balance.ts";
export { type CompareHow, compare } from "./person/compare/compare.ts";
export { Comparison, type ComparisonData, type ComparisonRow } from "./person/compare/comparison.ts";
export type { HeldReference, HeldUpper, ReferenceVerdict, UpperVerdict } from "./person/compare/held.ts";
export { type DayTarget, dayTarget } from "./person/dayTarget.ts";
export { type DemandsFor, type DemandsHow, demandsFor } from "./person/demandsFor.ts";
export type { EnergyAddition } from "./person/energyAdditions.ts";
export { type ActivityTaken, type EnergyNeed, energyNeed, type SpreadItem } from "./person/energyNeed.ts";
export { energyEquations } from "./person/equations/all.ts";
export type { RequirementActivity } from "./person/equations/eer2023.ts";
export type { EnergyEquation, EquationId, EquationLine } from "./person/equations/equation.ts";
export {
  type EstimatedEnergyRequirement,
  estimatedEnergyRequirement,
  type RequirementOptions,
} from "./person/estimatedEnergyRequirement.ts";
export { type LabelAuthority, type LabelReference, labelReference } from "./person/intakes/labelReference.ts";
export {
  countsFood,
  type IntakeEntry,
  type IntakeOptions,
  type NoUpper,
  type ReferenceIntakes,
  referenceIntakes,
} from "./person/intakes/referenceIntakes.ts";
export type { IntakeFigure, ReferenceFigure, UpperFigure } from "./person/intakes/resolve.ts";
export type { Childbearing } from "./person/intakes/stage.ts";
export type { Authority, Basis, Covers, Per, ReferenceKind, UpperKind } from "./person/intakes/table.ts";
export {
  alphaTocopherolEquivalents,
  alphaTocopherolEstimate,
  type Tocopherols,
  tocopherolFactors,
} from "./person/intakes/tocopherols.ts";
export { upperLimits } from "./person/intakes/upperLimits.ts";
export { type LeftOfDay, leftOfDay, type Totals } from "./person/leftOfDay.ts";
export type { ActivityClass, Condition, Person } from "./person/person.ts";
export {
  type AllergenCheck,
  type AllergenHeld,
  type AllergenList,
  type AllergenOverride,
  Allergens,
  type AllergenUnknown,
  allergenCheck,
  allergensOf,
} from "./person/portion/allergens.ts";
export { cautionsFor, type PortionCaution } from "./person/portion/cautions.ts";
export { DoseCheck, type DoseFor, type DoseRow, doseCheck } from "./person/portion/doses.ts";
export type { Eaten } from "./person/portion/eaten.ts";
export type { Trait } from "./person/portion/meetings.ts";
export type { LevelVerdict } from "./person/portion/verdict.ts";
export { energyRanges, energyRangesFor } from "./person/ranges/all.ts";
export type { EnergyRange, RangeOf } from "./person/ranges/range.ts";
export { type MealShare, mealDemands, shareDay } from "./person/shareDay.ts";
export type {
  Avoided,
  DishInput,
  FewestPots,
  MealInput,
  PersonInput,
  PlanAnswer,
  PlanInput,
  PortionDemands,
  PotChoice,
} from "./plan/input.ts";
export { type OpenPlanOptions, openPlan } from "./plan/openPlan.ts";
export {
  type Addition,
  type ApartWhy,
  type AvoidedServed,
  type AvoidedUnknown,
  type Avoider,
  type DemandDrift,
  type DishSharing,
  type KitchenNote,
  Plan,
  PlanAvoided,
  PlannedDish,
  type PlannedMeal,
  type PlanProgress,
  type PlanQuestion,
  type Portion,
  PortionDrift,
  type PortionFit,
  type PortionSharing,
  type PortionStatus,
  type Pot,
  type PotRatio,
  portionPlan,
  portionPlanSteps,
  type RatioDrift,
  type Serving,
} from "./plan/plan.ts";
export type { StoredMeal, StoredPlan, StoredPortion } from "./plan/storedPlan.ts";
export type {
  Line,
  LineInput,
  Recipe,
  RecipeInput,
  RecipeNote,
  Retention,
  Scaling,
  WrittenAmount,
} from "./recipe/document.ts";
export { recipe } from "./recipe/recipe.ts";
export type { Demand, DemandAmount, DemandSubject, EnergyShareOf, Quantity } from "./scale/demand.ts";
export {
  type FitAlone,
  FitBinding,
  type FitConflict,
  type FitEasing,
  type FitFactor,
  type FitHow,
  FitMet,
  FitMetTogether,
  type FitOutcome,
  FitOutOfReach,
  FitOutOfReachTogether,
  type FitRange,
  type FitSuggestion,
  fit,
  type NotProven,
  type Sheets,
} from "./scale/fit.ts";
export type { ScaleNote } from "./scale/move.ts";
export { type Range, type Reach, reach } from "./scale/reach.ts";
export {
  type Drift,
  type Kept,
  type RoundBound,
  Rounded,
  type RoundedDemand,
  type RoundedLine,
  RoundedTogether,
  type RoundHow,
  RoundingOutOfReach,
  roundToKitchen,
} from "./scale/round.ts";
export { type Scaled, type ScaleHow, scale } from "./scale/scale.ts";
export type { OutsideServing } from "./scale/substitutes/opening.ts";
export { type Substitute, type SubstituteChange, Substitutes } from "./scale/substitutes/result.ts";
export { type SubstitutesHow, substitutes } from "./scale/substitutes.ts";
export { type Axis, Sweep, type SweepHow, type SweepPoint, sweep } from "./scale/sweep.ts";
export type { Silence, Target } from "./scale/target.ts";
export { type Between, type BetweenHow, between, type WidenedLine } from "./sheet/between.ts";
export { type SheetHow, sheet } from "./sheet/build.ts";
export { type Balance, CookingBalance, cooking } from "./sheet/cooking.ts";
export {
  type ComponentChange,
  Difference,
  difference,
  type LineChange,
  type MassChange,
} from "./sheet/difference.ts";
export type { EnergyBy, EnergyShare, EnergyShares } from "./sheet/energy.ts";
export { EnergyCheck, type EnergyCheckHow, type EnergyCheckLine, energyCheck } from "./sheet/energyCheck.ts";
export type { Where } from "./sheet/explain.ts";
export { Explanation } from "./sheet/explanation.ts";
export type { ColumnFormula, ColumnView, RowFormula, RowView } from "./sheet/grid.ts";
export { openSheet, type Refreshed, refresh } from "./sheet/openSheet.ts";
export type { CellRef, CellValue, Failure, FormulaResult, RowRef } from "./sheet/own.ts";
export type { RecipesById } from "./sheet/plan.ts";
export { toRecipe } from "./sheet/recipe.ts";
export { type Changes, type LineChanges, revise } from "./sheet/revise.ts";
export { Sheet, type SheetLine } from "./sheet/sheet.ts";
export type { StoredOrigin, StoredOwn, StoredSheet } from "./sheet/stored.ts";
export { type Bound, type Marks, Tally, type TallyData } from "./sheet/tally.ts";
export {
  type BoughtPack,
  type Cost,
  type CupboardItem,
  type InCupboard,
  type PortionCost,
  type Shoppable,
  type Shopped,
  type ShoppingHow,
  type ShoppingLine,
  ShoppingList,
  shoppingList,
} from "./shop/shoppingList.ts";
export { americanEnglish } from "./table/american.ts";
export { type CsvHow, toCsv } from "./table/csv.ts";
export { type HtmlHow, toHtml } from "./table/html.ts";
export { type MarkdownHow, toMarkdown } from "./table/markdown.ts";
export { type RecordsHow, type TidyRecord, toRecords } from "./table/records.ts";
export { Shown } from "./table/shown.ts";
export {
  type Cell,
  type Column,
  type Figure as TableFigure,
  type Row,
  type Table,
  type TableInput,
  type Tone,
  table,
} from "./table/table.ts";
export type { DataRecord } from "./table/tableRecords.ts";
export type { Recordable, Showable, ShowHow, Tabular } from "./table/tabular.ts";
export { type TextHow, toText } from "./table/text.ts";
export type { Asked, Tidy, TidyRow } from "./table/tidy.ts";
