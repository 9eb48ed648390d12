export { britishEnglish, type Language, type PluralForms, type UnitWords } from "./document/language.ts";
export type { Json } from "./document/leaves.ts";
export { type Allergen, allergens } from "./food/allergens.ts";
export { type BorrowOptions, borrow } from "./food/borrow.ts";
export {
  type Component,
  type ComponentGroup,
  type ComponentId,
  type ComponentUnit,
  components,
  type ListedId,
  ownComponent,
} from "./food/components.ts";
export type { ShareSpread } from "./food/composition.ts";
export type { DetailId } from "./food/data/componentDetails.ts";
export { usPolyolFactors } from "./food/data/energyUs101.ts";
export { type Formula, formulas } from "./food/data/formulas.ts";
export {
  type EnergyPart,
  type EnergySystem,
  type EnergySystemId,
  type EnergyTerm,
  energySystems,
} from "./food/energy.ts";
export type { FigureKind, MarkKind } from "./food/figure.ts";
export { type FindOptions, type FoundFood, findFoods } from "./food/findFoods.ts";
export type {
  Division,
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
export { type Lender, type LendersOptions, lenders } from "./food/lend.ts";
export type { BorrowBasis } from "./food/lending.ts";
export type { PackedFood, PackedFoods, PackedMark } from "./food/packed.ts";
export { FoodRanking, type RankedFood, type RankFoodsOptions, rankFoods } from "./food/rankFoods.ts";
export {
  type RetentionCode,
  type RetentionInput,
  type RetentionShares,
  retentionCodes,
} from "./food/retention.ts";
export type { RetentionRow, RetentionTable } from "./food/retentionTable.ts";
export { FoodTable, foodTable, type StoredFoods } from "./food/table.ts";
export { type PublishedYield, type YieldCode, type YieldInput, yieldCodes } from "./food/yield.ts";
export type { YieldRow, YieldTable } from "./food/yieldTable.ts";
export {
  type Amount,
  type AmountData,
  type AmountInput,
  type AmountKind,
  type AmountOptions,
  type AmountRange,
  amount,
  type PartData,
} from "./measure/amount.ts";
export { type ConvertOptions, convert } from "./measure/convert.ts";
export { type FormatOptions, formatAmount } from "./measure/format.ts";
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
export type { UnitKind } from "./measure/units.ts";
export { type ErrorCode, type Fault, type Path, SteelyardError } from "./number/error.ts";
export { Exact, exact, type Value } from "./number/exact.ts";
export type { Ratio } from "./number/ratio.ts";
export { toDecimal } from "./number/toDecimal.ts";
export { version } from "./number/version.ts";
export type {
  Line,
  LineInput,
  Recipe,
  RecipeInput,
  RecipeNote,
  Retention,
  Scaling,
  ServedIn,
  WrittenAmount,
} from "./recipe/document.ts";
export { recipe } from "./recipe/recipe.ts";
export type { Demand, DemandAmount, DemandSubject, EnergyShareOf, Quantity } from "./scale/demand.ts";
export type { LimitEnd } from "./scale/engine/constraints.ts";
export {
  type FitAlone,
  FitBinding,
  type FitConflict,
  type FitEasing,
  type FitFactor,
  FitMet,
  FitMetTogether,
  type FitOptions,
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
  type KeptReason,
  type RoundBound,
  Rounded,
  type RoundedDemand,
  type RoundedLine,
  RoundedTogether,
  RoundingOutOfReach,
  type RoundOptions,
  roundToKitchen,
} from "./scale/round.ts";
export { type Scaled, type ScaleOptions, scale } from "./scale/scale.ts";
export type { OutsideServing } from "./scale/substitutes/leftOut.ts";
export type { SubstitutesOptions } from "./scale/substitutes/options.ts";
export { Substitutes } from "./scale/substitutes/result.ts";
export type { Substitute, SubstituteChange } from "./scale/substitutes/substitute.ts";
export { substitutes } from "./scale/substitutes.ts";
export type { LineAxis, TargetAxis } from "./scale/sweep/axes.ts";
export type { VariedAxis } from "./scale/sweep/varied.ts";
export { type Axis, Sweep, type SweepOptions, type SweepPoint, sweep } from "./scale/sweep.ts";
export type { Silence, Target } from "./scale/target.ts";
export { type Between, type BetweenOptions, between, type WidenedLine } from "./sheet/between.ts";
export { type SheetOptions, sheet } from "./sheet/build.ts";
export { type Citation, Citations, type Cited, type CitedOptions, citations } from "./sheet/citations.ts";
export { cellFeeds, cellReads, cellValue, withColumn, withConstant, withRow } from "./sheet/columns.ts";
export { type Balance, CookingBalance, cooking } from "./sheet/cooking.ts";
export {
  type ComponentChange,
  Difference,
  difference,
  type LineChange,
  type MassChange,
} from "./sheet/difference.ts";
export { type EnergyBy, type EnergyShare, type EnergyShares, energyShares } from "./sheet/energy.ts";
export {
  EnergyCheck,
  type EnergyCheckLimits,
  type EnergyCheckLine,
  type EnergyCheckOptions,
  energyCheck,
} from "./sheet/energyCheck.ts";
export { explain, type Where } from "./sheet/explain.ts";
export { Explanation, type RankedLeaf } from "./sheet/explanation.ts";
export { type FormattableTally, formatTally, type TallyOptions } from "./sheet/formatTally.ts";
export type { ColumnFormula, ColumnView, RowFormula, RowView, StoredCell } from "./sheet/grid.ts";
export {
  type BarPlot,
  Influence,
  type InfluenceOptions,
  influence,
  type LineInfluence,
} from "./sheet/influence.ts";
export { type MethodsOptions, methods } from "./sheet/methods.ts";
export { openSheet, type Refreshed, refresh } from "./sheet/openSheet.ts";
export type { CellRef, CellValue, Failure, FormulaResult, RowRef } from "./sheet/own.ts";
export type { RecipesById } from "./sheet/plan.ts";
export { toRecipe } from "./sheet/recipe.ts";
export { type Changes, type LineChanges, type LineField, revise } from "./sheet/revise.ts";
export { Sheet, type SheetLine } from "./sheet/sheet.ts";
export type { StoredOrigin, StoredOwn, StoredSheet } from "./sheet/stored.ts";
export { type Bound, type Marks, Tally, type TallyData } from "./sheet/tally.ts";
export { type LineUncertainty, Uncertainty } from "./sheet/uncertain.ts";
export {
  type UncertainSubject,
  type UncertaintyOptions,
  type UncertainWhere,
  uncertainty,
  type WeighingInput,
} from "./sheet/uncertainty.ts";
