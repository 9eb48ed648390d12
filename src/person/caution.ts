import { freezeAll } from "../number/freeze.ts";
import type { Check } from "./check.ts";
import type { Condition } from "./person.ts";

/** Something to heed, who says so, and where that was checked. Wording is ours. */
export interface Caution {
  readonly code: CautionCode;
  readonly text: string;
  /** The body that issued the advice, and where. */
  readonly source: string;
  readonly check: Check;
  /** What the person declared that it gives away: nothing for a page that others read. */
  readonly because?: readonly Condition[];
}

export type CautionCode =
  | "outside-population"
  | "equation-step"
  | "unusual-activity"
  | "energy-below-800"
  | "energy-below-resting"
  | "energy-beyond-limit"
  | "low-energy-availability"
  | "fast-loss"
  | "fast-loss-for-mass"
  | "fast-gain"
  | "macros-energy"
  | "protein-low"
  | "protein-high"
  | "protein-share"
  | "under-18"
  | "over-65"
  | "pregnant"
  | "breastfeeding"
  | "underweight"
  | "underweight-soon"
  | "underweight-unknown"
  | "refeeding"
  | "kidney-disease"
  | "insulin"
  | "warfarin"
  | "thyroid-disease"
  | "eating-disorder-history"
  | "coeliac-disease"
  | "diabetes"
  | "hypertension"
  | "levothyroxine"
  | "lithium"
  | "mao-inhibitors"
  | "phenylketonuria"
  | "haemochromatosis"
  | "no-upper-level"
  | "authority-in-part"
  | "guidance-level"
  | "supervised";

/** Said once with every result about a person. */
export const practitionerNote: string =
  "These are calculations from published tables, not advice: a licensed practitioner decides what a person should eat.";

/** Codes that have words for everyone; `caution` may say them more closely. */
export type FixedCautionCode = Exclude<
  CautionCode,
  "supervised" | "no-upper-level" | "authority-in-part" | "guidance-level"
>;

export type CautionAdvice = Omit<Caution, "code" | "because">;

const nice: string = "NICE (England), CG189 Obesity, recommendations 1.7 (since replaced by NG246)";
const niceCheck: Check = "issuer";

/** What every caution of pregnancy ends on. */
const diets = {
  text: " Weight-loss diets are not advised; a midwife or dietitian sets the target.",
  source: "; on diets NICE (England), PH27",
} as const;

/** Cautions by code. One list, since their wording is ours; each names the body it rests on. */
export const cautionTexts: { readonly [Code in FixedCautionCode]: CautionAdvice } = /* @__PURE__ */ freezeAll(
  {
    "outside-population": {
      text: "This person's age lies outside that of the people the equation was made from.",
      source: "the paper named as the equation's source",
      check: "unverified",
    },
    "equation-step": {
      text: "Near this age the equation, or its figures, change in one step: the need is less sure than one number tells.",
      source: "the papers named as the equations' sources",
      check: "unverified",
    },
    "unusual-activity": {
      text: "A physical activity level outside 1.40 to 2.40 is rarely kept up for long, and the estimate is less sure there.",
      source: "FAO/WHO/UNU 2004, Human energy requirements, table 5.3",
      check: "unverified",
    },
    "energy-below-800": {
      text: "800 kcal a day or less is a very-low-energy diet: only for a clinical need, nutritionally complete, for at most 12 weeks, with continuing clinical support.",
      source: nice,
      check: niceCheck,
    },
    "energy-below-resting": {
      text: "This is less energy than the body is reckoned to use at complete rest.",
      source: "FAO/WHO/UNU 2004, Human energy requirements, definition of basal metabolism",
      check: "unverified",
    },
    "fast-loss": {
      text: "More than 1 kg a week is faster than weight-loss programmes are advised to aim for (0.5 to 1 kg at most).",
      source: "NICE (England), advice on weight-loss programmes",
      check: "unverified",
    },
    "fast-loss-for-mass": {
      text: "More than 1 % of body mass a week is faster than people who train are advised to lose (0.5 to 1 %), so as to keep their lean mass.",
      source: "Ruiz-Castellano et al. 2021, Nutrients 13(9):3255, review of resistance-trained athletes",
      check: "issuer",
    },
    "fast-gain": {
      text: "More than 0.5 % of body mass a week is faster than people who train to gain muscle are advised to aim for (0.25 to 0.5 %); what comes on beyond that is mostly fat.",
      source: "Iraki et al. 2019, Sports 7(7):154, review of off-season nutrition",
      check: "issuer",
    },
    "energy-beyond-limit": {
      text: "More than 2.5 times the energy of complete rest: more than people were found able to take up day after day.",
      source: "Thurber et al. 2019, Science Advances 5(6):eaaw0341",
      check: "unverified",
    },
    "low-energy-availability": {
      text: "Less than 30 kcal for each kg of fat-free mass, even before what exercise takes is taken off: low energy availability, which can harm hormones, bones and performance, in men too. The threshold was found in young women, and people differ.",
      source:
        "International Olympic Committee, consensus statements on REDs, 2018 and 2023: Br J Sports Med 52:687, 57:1073",
      check: "unverified",
    },
    "macros-energy": {
      text: "Protein, fat and carbohydrate as asked do not come to the day's energy by general factors (4, 9 and 4 kcal per g): only foods whose own factors differ can meet them together.",
      source:
        "Atwater general factors, Merrill and Watt 1973, USDA Handbook 74; the margin is common practice",
      check: "unverified",
    },
    "protein-low": {
      text: "Less protein than the reference intake for this age and state (0.83 g per kg of body mass a day for adults).",
      source: "EFSA 2012, Dietary Reference Values for protein, EFSA Journal 10(2):2557",
      check: "issuer",
    },
    "protein-high": {
      text: "More than 2.0 g of protein per kg of body mass a day: above the range given for people in training (1.4 to 2.0), and above twice the reference intake.",
      source:
        "International Society of Sports Nutrition 2017, J Int Soc Sports Nutr 14:20; EFSA Journal 2012 10(2):2557",
      check: "issuer",
    },
    "protein-share": {
      text: "Protein brings a share of energy outside the range set for this age (10 to 35 % for adults).",
      source: "Institute of Medicine (US) 2002/2005, acceptable macronutrient distribution ranges",
      check: "issuer",
    },
    "under-18": {
      text: "Under 18: growth needs energy and protein of its own, and adult equations and targets do not fit.",
      source: "FAO/WHO/UNU 2004, Human energy requirements, chapter on children and adolescents",
      check: "unverified",
    },
    "over-65": {
      text: "65 or over: losing weight can cost muscle and bone, and diets to that end are best left alone but where the weight itself does harm; older people may need more protein than the adult reference.",
      source: "ESPEN guideline on clinical nutrition and hydration in geriatrics, 2019 and 2022",
      check: "unverified",
    },
    pregnant: {
      text: `Pregnant: equations for energy leave out what pregnancy adds (EFSA: 70, 260 and 500 kcal a day by trimester), which only an authority's reference intakes count in.${diets.text}`,
      source: `EFSA 2013, Dietary Reference Values for energy, EFSA Journal 11(1):3005${diets.source}`,
      check: "unverified",
    },
    breastfeeding: {
      text: "Breastfeeding: equations for energy leave out what milk costs (EFSA: about 500 kcal a day in the first six months), which only an authority's reference intakes count in.",
      source: "EFSA 2013, Dietary Reference Values for energy, EFSA Journal 11(1):3005",
      check: "unverified",
    },
    underweight: {
      text: "A body mass index below 18.5 counts as underweight in adults.",
      source: "World Health Organization, body mass index classes, TRS 894 (2000)",
      check: "unverified",
    },
    "underweight-soon": {
      text: "At this pace the body mass index falls below 18.5, which counts as underweight in adults, within 12 weeks.",
      source: "World Health Organization, body mass index classes, TRS 894 (2000)",
      check: "unverified",
    },
    "underweight-unknown": {
      text: "Without a height nothing can be said about underweight.",
      source: "World Health Organization, body mass index classes, TRS 894 (2000)",
      check: "unverified",
    },
    refeeding: {
      text: "A body mass index below 16 is a high risk of refeeding problems, which can kill: after a time of eating little, food starts under clinical care at 10 kcal per kg a day or less, and at 5 kcal below an index of 14.",
      source:
        "NICE (England) 2006, updated 2017, CG32 Nutrition support for adults, section 1.4 and its criteria of refeeding risk",
      check: "copy",
    },
    "kidney-disease": {
      text: "Kidney disease: protein, potassium, phosphorus and sodium are set by the kidney team, often below the amounts used here.",
      source: "KDOQI and Academy of Nutrition and Dietetics, guideline on nutrition in CKD, 2020",
      check: "copy",
    },
    insulin: {
      text: "Insulin: a change in carbohydrate or in meal sizes changes the dose needed; agree it with the diabetes team first.",
      source: "NICE (England), NG17 Type 1 diabetes in adults, dietary management",
      check: "unverified",
    },
    warfarin: {
      text: "Warfarin: keep vitamin K steady from week to week, and tell the clinic before changing how much leafy green food is eaten.",
      source: "Cambridge University Hospitals NHS, dietary advice for patients taking warfarin",
      check: "issuer",
    },
    "thyroid-disease": {
      text: "Thyroid disease: one serving of seaweed can bring several days' worth of iodine; leave seaweed out unless a doctor says otherwise.",
      source: "ANSES (France), opinion of 2018 on seaweed and iodine",
      check: "unverified",
    },
    "eating-disorder-history": {
      text: "A history of an eating disorder: counting energy and losing weight can bring it back; involve the treating team.",
      source: "NICE (England), NG69 Eating disorders: recognition and treatment",
      check: "unverified",
    },
    "coeliac-disease": {
      text: "Coeliac disease: the diet is to be strictly and lifelong free of gluten; a dietitian helps to keep it whole.",
      source: "NICE (England), QS134 Coeliac disease, advice about a gluten-free diet",
      check: "issuer",
    },
    diabetes: {
      text: "Diabetes: carbohydrate, meal times and weight loss are agreed person by person; on tablets that can bring glucose too low, eating less can need another dose.",
      source: "NICE (England), NG28 Type 2 diabetes in adults, dietary advice",
      check: "issuer",
    },
    hypertension: {
      text: "High blood pressure: salt is to be kept low. Salt made with potassium is not for everyone on medicines: ask whoever prescribes them.",
      source: "NICE (England), NG136 Hypertension in adults, lifestyle interventions",
      check: "unverified",
    },
    levothyroxine: {
      text: "Levothyroxine: soya, and food rich in calcium, iron or fibre, hinder its uptake when eaten near the tablet; tell whoever checks the dose of a change in them.",
      source: "British Thyroid Foundation, diets and supplements for thyroid disorders",
      check: "copy",
    },
    lithium: {
      text: "Lithium: keep salt, drink and caffeine steady. Less salt, a diet to lose weight or a loss of fluid can make lithium poisonous: ask whoever prescribes it first.",
      source: "NHS (England), lithium; British National Formulary, lithium carbonate",
      check: "copy",
    },
    "mao-inhibitors": {
      text: "MAO inhibitors: aged cheese, cured meat, pickled fish, yeast and meat extracts, fermented soya, beer and wine can drive blood pressure up dangerously; eat only fresh food.",
      source: "British National Formulary, monoamine-oxidase inhibitors, as NHS formularies print it",
      check: "copy",
    },
    phenylketonuria: {
      text: "Phenylketonuria: protein and phenylalanine are set by the metabolic team, far below the amounts used here.",
      source: "European guidelines on phenylketonuria, van Wegberg et al. 2017, Orphanet J Rare Dis 12:162",
      check: "unverified",
    },
    haemochromatosis: {
      text: "Haemochromatosis: no added iron, little alcohol, no raw shellfish; no diet stands in for having blood taken, and a reference intake of iron is no goal here.",
      source: "EASL 2022, Clinical practice guidelines on haemochromatosis, J Hepatol 77:479-502",
      check: "unverified",
    },
  },
);

/** The caution of a code, in closer words where there are any. */
export function caution(code: FixedCautionCode, closer: Partial<CautionAdvice> = {}): Caution {
  return { code, ...cautionTexts[code], ...closer };
}

/** Closer words of a caution of pregnancy, with what all of them say of diets. */
export function withDiets(
  text: string,
  said?: Pick<CautionAdvice, "source" | "check">,
): Partial<CautionAdvice> {
  if (!said) return { text: `${text}${diets.text}` };
  return {
    text: `${text}${diets.text}`,
    source: `${said.source}${diets.source}`,
    check: "unverified",
  };
}
