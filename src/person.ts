export { type ActivityBand, activityClasses, type ChildActivity, childActivity } from "./person/activity.ts";
export type { Aim, MacroAim, MacroName, Rate, Wanted } from "./person/aim.ts";
export type { Digestibility } from "./person/amino/digestibility.ts";
export type { AminoName, AminoPattern, PatternId } from "./person/amino/pattern.ts";
export {
  type AminoContent,
  type PortionScore,
  ProteinQuality,
  type ProteinQualityOptions,
  proteinQuality,
} from "./person/amino/quality.ts";
export {
  type AminoScore,
  aminoPatterns,
  aminoRequirementMet,
  aminoScore,
  type ProteinAmounts,
} from "./person/amino/score.ts";
export {
  type Caution,
  type CautionAdvice,
  type CautionCode,
  cautionTexts,
  type FixedCautionCode,
  practitionerNote,
} from "./person/caution.ts";
export type { Check } from "./person/check.ts";
export type { EnergyBalance, PortionRatio, RangeVerdict } from "./person/compare/balance.ts";
export { type CompareOptions, compare } from "./person/compare/compare.ts";
export { Comparison, type ComparisonData, type ComparisonRow } from "./person/compare/comparison.ts";
export type { HeldReference, HeldUpper, ReferenceVerdict, UpperVerdict } from "./person/compare/held.ts";
export { type DayTarget, dayTarget } from "./person/dayTarget.ts";
export { type DemandsFor, type DemandsOptions, demandsFor } from "./person/demandsFor.ts";
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
