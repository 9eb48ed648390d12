import type { ComponentId } from "../../food/components.ts";
import type { Check } from "../check.ts";
import type { Condition } from "../person.ts";
import { type Kind, kinds } from "./kinds.ts";

/** What of a person may meet what of a food. */
export type Trait =
  | Condition
  | "pregnant"
  | "breastfeeding"
  | "under-18"
  | "under-16"
  | "under-5"
  | "over-65";

/** A caution that holds where a trait of the person meets a food, or a component of a portion. */
export interface TraitMeeting {
  /** A food that carries a caution of this code meets it, whatever the food is called. */
  readonly code: string;
  /** Any one of them. */
  readonly traits: readonly Trait[];
  /** Traits with a meeting of their own, which says the same and more. */
  readonly unless?: readonly Trait[];
  /** Codes of the cautions that foods carry. */
  readonly foods?: readonly string[];
  readonly kind?: Kind;
  /** Told with it, as far as its foods bring them; with no `foods` or `kind`, any of the portion's that is not proven to be none. */
  readonly components?: readonly ComponentId[];
  /** Less than this of the first component is passed over, unless a food is told by a caution or may hold it unsaid. */
  readonly least?: string;
  /** It is about the whole portion; its foods are those that bring most. */
  readonly whole?: true;
  readonly text: string;
  readonly source: string;
  readonly check: Check;
}

/** Foods to avoid in pregnancy; what it says of eggs and fish was read there. */
const nhsPregnancy: string = "NHS 111 Wales, foods to avoid in pregnancy";
const nhsPregnancyPage: Check = "issuer";

/**
 * One list, since the wording is ours; each names the body it rests on. What to leave out comes first,
 * then what an illness or a medicine makes matter, then how much of a food. Foods' own cautions ride
 * along besides.
 */
export const meetings: readonly TraitMeeting[] = [
  {
    code: "coeliac-gluten",
    traits: ["coeliac-disease"],
    kind: kinds.gluten,
    text: "Coeliac disease: wheat, barley and rye hold gluten, and the diet is to be strictly free of it. None of this food, unless its label says gluten-free.",
    source: "Kent Community Health NHS Foundation Trust, gluten free diet (2022); NICE (England), QS134",
    check: "issuer",
  },
  {
    code: "liver-pregnancy",
    traits: ["pregnant"],
    kind: kinds.liver,
    text: "No liver, and nothing made of it, in pregnancy or when planning one: too much vitamin A harms the unborn child.",
    source: "EFSA 2024, EFSA Journal 22(6):8814; NHS 111 Wales, vitamins and minerals",
    check: "issuer",
  },
  {
    code: "mercury-fish",
    traits: ["pregnant", "under-16"],
    kind: kinds.mercuryFish,
    text: "None of this fish in pregnancy, when planning one, or under 16: it is high in mercury. Which fish are named differs by country; local advice comes first.",
    source: `${nhsPregnancy}, and fish and shellfish; US FDA and EPA, advice about eating fish`,
    check: "unverified",
  },
  {
    code: "alcohol-pregnancy",
    traits: ["pregnant"],
    kind: kinds.alcohol,
    components: ["alcohol"],
    text: "In pregnancy, and when planning one, it is safest to have no alcohol at all; of what goes into this food, cooking may leave some.",
    source: "UK Chief Medical Officers, low risk drinking guidelines (2016)",
    check: "unverified",
  },
  {
    code: "soft-cheese-pregnancy",
    traits: ["pregnant"],
    kind: kinds.softCheese,
    text: "In pregnancy: none of this food, unless cooked until steaming hot. Soft mould-ripened or soft blue cheese, and what is made of unpasteurised milk, can carry listeria. Local advice comes first.",
    source: "NHS Scotland, Ready Steady Baby, what foods to avoid",
    check: "issuer",
  },
  {
    code: "smoked-fish-pregnancy",
    traits: ["pregnant"],
    kind: kinds.smokedFish,
    text: "In pregnancy: cold-smoked or cured fish only when cooked until steaming hot, for it can carry listeria. Local advice comes first.",
    source: "UK Food Standards Agency and Food Standards Scotland, advice on smoked and cured fish (2023)",
    check: "copy",
  },
  {
    code: "pate-pregnancy",
    traits: ["pregnant"],
    kind: kinds.pate,
    text: "In pregnancy: no pâté of any kind, made of vegetables either, for it can carry listeria.",
    source: "NHS (England), foods to avoid in pregnancy; Tommy's, the same",
    check: "copy",
  },
  {
    code: "sprouts-pregnancy",
    traits: ["pregnant"],
    kind: kinds.sprouts,
    text: "In pregnancy: sprouted seeds and beans only when cooked until steaming hot; raw they can carry salmonella, E. coli and listeria.",
    source: "US Office on Women's Health, food safety in pregnancy: no raw sprouts of any kind",
    check: "copy",
  },
  {
    code: "raw-meat-pregnancy",
    traits: ["pregnant"],
    kind: kinds.rawMeat,
    text: "In pregnancy, where this meat would be eaten raw or pink: cook it until no pink and no blood are left, for toxoplasma and salmonella.",
    source: "NHS (England), foods to avoid in pregnancy",
    check: "copy",
  },
  {
    code: "cured-meat-pregnancy",
    traits: ["pregnant"],
    kind: kinds.curedMeat,
    text: "In pregnancy: meat that was cured and not cooked can carry toxoplasma. It is safest cooked; local advice comes first.",
    source: "NHS (England), foods to avoid in pregnancy",
    check: "copy",
  },
  {
    code: "nuts-whole-child",
    traits: ["under-5"],
    kind: kinds.wholeNuts,
    text: "No whole nuts under 5 years, for a child can choke on them: ground, crushed or as a smooth butter.",
    source: "Kidshealth (New Zealand), choking checklist (2021): no whole nuts before 5 years",
    check: "issuer",
  },
  {
    code: "alcohol-child",
    traits: ["under-18"],
    kind: kinds.alcohol,
    components: ["alcohol"],
    text: "Under 18 it is healthiest to have no alcohol, and before 15 none at all; of what goes into this food, cooking may leave some.",
    source:
      "Chief Medical Officer for England 2009, guidance on the consumption of alcohol by children and young people",
    check: "copy",
  },
  {
    code: "maoi-tyramine",
    traits: ["mao-inhibitors"],
    kind: kinds.tyramine,
    text: "On MAO inhibitors: food that was aged, cured, fermented or concentrated, and beer and wine, can hold tyramine that drives blood pressure up dangerously; broad bean pods hold dopa. Leave it out unless the prescriber says otherwise, and for two to three weeks after the medicine is stopped. Only fresh food.",
    source:
      "British National Formulary, monoamine-oxidase inhibitors, as NHS formularies print it; Sussex Partnership NHS Foundation Trust, foods to avoid with MAOIs (2013)",
    check: "copy",
  },
  {
    code: "pku-aspartame",
    traits: ["phenylketonuria"],
    kind: kinds.aspartame,
    text: "Phenylketonuria: aspartame (E 951) is a source of phenylalanine, and its label has to say so. None, unless the metabolic team says otherwise.",
    source: "Regulation (EU) No 1169/2011, Annex III",
    check: "copy",
  },
  {
    code: "haemochromatosis-shellfish",
    traits: ["haemochromatosis"],
    kind: kinds.rawShellfish,
    text: "Haemochromatosis: no raw or half-cooked shellfish; Vibrio vulnificus in it can kill people with too much iron.",
    source: "EASL 2022, Clinical practice guidelines on haemochromatosis, J Hepatol 77:479-502",
    check: "unverified",
  },
  {
    code: "seaweed-thyroid",
    traits: ["thyroid-disease", "levothyroxine", "kidney-disease", "lithium"],
    foods: ["iodine-seaweed", "iodine-nori"],
    text: "Seaweed is advised against with thyroid, heart or kidney disease, or on medicines with iodine or lithium, unless a doctor says otherwise.",
    source: "ANSES (France), opinion of 2018 on seaweed and iodine",
    check: "unverified",
  },
  {
    code: "warfarin-vitamin-k",
    traits: ["warfarin"],
    kind: kinds.vitaminK,
    components: ["vitaminK"],
    // 15 % of 75 µg, a "significant amount" in a portion: Regulation (EU) No 1169/2011, Annex XIII.
    least: "11.25",
    text: "On warfarin, vitamin K should stay much the same from week to week. Tell the clinic before this becomes a habit, or stops being one.",
    source: "Cambridge University Hospitals NHS, dietary advice for patients taking warfarin",
    check: "issuer",
  },
  {
    code: "warfarin-grapefruit",
    traits: ["warfarin"],
    foods: ["grapefruit-medicines"],
    text: "Grapefruit is advised against with warfarin: ask the clinic.",
    source: "NHS (England), warfarin: food and drink",
    check: "unverified",
  },
  {
    code: "warfarin-cranberry",
    traits: ["warfarin"],
    kind: kinds.cranberry,
    text: "Cranberry juice, and for caution other things made of cranberries, are advised against with warfarin: no safe amount could be named. Ask the clinic.",
    source: "UK Committee on Safety of Medicines and MHRA, Current Problems in Pharmacovigilance 2004;30",
    check: "copy",
  },
  {
    code: "levothyroxine-soya",
    traits: ["levothyroxine"],
    kind: kinds.soya,
    text: "Soya hinders the uptake of levothyroxine: leave as long a time as can be between the tablet and soya, keep the amount steady, and tell whoever checks the dose.",
    source: "British Thyroid Foundation, diets and supplements for thyroid disorders",
    check: "copy",
  },
  {
    code: "lithium-salt",
    traits: ["lithium"],
    kind: kinds.salt,
    whole: true,
    components: ["salt"],
    // 15 % of 6 g, as for high blood pressure below.
    least: "0.9",
    text: "On lithium, salt and drink are to stay much the same from day to day: with less salt than usual lithium can rise to a poisonous level, with more it falls.",
    source: "NHS (England), lithium; British National Formulary, lithium carbonate",
    check: "copy",
  },
  {
    code: "pku-phenylalanine",
    traits: ["phenylketonuria"],
    components: ["phenylalanine", "protein"],
    text: "Phenylketonuria: how much phenylalanine a day may hold is set by the metabolic team, and each portion counts; where it is not known, a gram of protein is counted as about 50 mg.",
    source: "European guidelines on phenylketonuria, van Wegberg et al. 2017, Orphanet J Rare Dis 12:162",
    check: "unverified",
  },
  {
    code: "haemochromatosis-iron",
    traits: ["haemochromatosis"],
    components: ["iron"],
    // 15 % of 14 mg, a "significant amount" in a portion: Regulation (EU) No 1169/2011, Annex XIII.
    least: "2.1",
    text: "Haemochromatosis: food with added iron and iron supplements are to be avoided, and red meat limited; no diet stands in for having blood taken.",
    source: "EASL 2022, Clinical practice guidelines on haemochromatosis, J Hepatol 77:479-502",
    check: "unverified",
  },
  {
    code: "haemochromatosis-alcohol",
    traits: ["haemochromatosis"],
    kind: kinds.alcohol,
    components: ["alcohol"],
    text: "Haemochromatosis: little alcohol, and none where the liver is scarred.",
    source: "EASL 2022, Clinical practice guidelines on haemochromatosis, J Hepatol 77:479-502",
    check: "unverified",
  },
  {
    code: "potassium-salt",
    traits: ["kidney-disease", "hypertension", "diabetes", "insulin", "pregnant", "over-65"],
    kind: kinds.potassiumSalt,
    components: ["potassium"],
    text: "Salt made with potassium is not to be used with kidney disease or diabetes, in pregnancy, by older people, or on some medicines for blood pressure (ACE inhibitors, angiotensin receptor blockers): ask a doctor or pharmacist first.",
    source: "NICE (England), NG136 Hypertension in adults, lifestyle interventions",
    check: "unverified",
  },
  {
    code: "kidney-amounts",
    traits: ["kidney-disease"],
    components: ["potassium", "phosphorus", "sodium", "protein"],
    text: "Kidney disease: how much of these is right is set by the kidney team, often below what is usual.",
    source: "KDOQI and Academy of Nutrition and Dietetics, guideline on nutrition in CKD, 2020",
    check: "issuer",
  },
  {
    code: "insulin-carbohydrate",
    traits: ["insulin"],
    components: ["availableCarbohydrate"],
    text: "Insulin is matched to carbohydrate: a portion of another size, or another mix, changes the dose. Agree it with the diabetes team.",
    source: "NICE (England), NG17 Type 1 diabetes in adults, dietary management",
    check: "unverified",
  },
  {
    code: "diabetes-carbohydrate",
    traits: ["diabetes"],
    unless: ["insulin"],
    components: ["availableCarbohydrate"],
    // One "carbohydrate portion" of 15 g, as many clinics count: common practice, no source.
    least: "15",
    text: "Diabetes: how much carbohydrate a meal should bring, and when, is agreed person by person; sources rich in fibre that raise blood glucose slowly are preferred. On tablets that can bring glucose too low, less carbohydrate than usual can matter: ask the diabetes team.",
    source: "NICE (England), NG28 Type 2 diabetes in adults, dietary advice",
    check: "issuer",
  },
  {
    code: "hypertension-salt",
    traits: ["hypertension"],
    kind: kinds.salt,
    whole: true,
    components: ["salt"],
    // 15 % of 6 g, the reference intake of the same Annex; that its 15 % fits salt is ours.
    least: "0.9",
    text: "High blood pressure: keep salt low. Adults are advised to stay below 6 g in the whole day, from everything eaten. Salt made with potassium is no way out on some medicines: ask first.",
    source: "NICE (England), NG136 Hypertension in adults; NHS (England), high blood pressure",
    check: "unverified",
  },
  {
    code: "raw-egg-pregnancy",
    traits: ["pregnant"],
    kind: kinds.rawEgg,
    text: "In pregnancy, where this egg would be eaten raw or soft: cook white and yolk until firm, unless the eggs come from a scheme against salmonella that local advice trusts (the UK's food safety authority names those it trusts, by the mark on the shell).",
    source: nhsPregnancy,
    check: nhsPregnancyPage,
  },
  {
    code: "seaweed-growth",
    traits: ["pregnant", "breastfeeding", "under-18"],
    foods: ["iodine-seaweed"],
    text: "In pregnancy, while breastfeeding and for children: brown seaweed at most once a week.",
    source: "Food Standards Australia New Zealand, advice on brown seaweed",
    check: "unverified",
  },
  {
    code: "tuna-pregnancy",
    traits: ["pregnant"],
    kind: kinds.tuna,
    text: "Of this food, in pregnancy and when planning one: no more than four medium cans of tuna (140 g drained each) or two steaks (140 g cooked) a week, for its mercury. Local advice comes first.",
    source: nhsPregnancy,
    check: nhsPregnancyPage,
  },
  {
    code: "oily-fish-pregnancy",
    traits: ["pregnant", "breastfeeding"],
    kind: kinds.oilyFish,
    text: "Of this food, in pregnancy and while breastfeeding: oily fish is good to have, but no more than two portions (140 g cooked each) a week, for the pollutants it gathers. Local advice comes first.",
    source: `${nhsPregnancy}; nidirect (Northern Ireland), fish and shellfish`,
    check: nhsPregnancyPage,
  },
  {
    code: "caffeine-pregnancy",
    traits: ["pregnant", "breastfeeding"],
    kind: kinds.caffeine,
    components: ["caffeine"],
    text: "In pregnancy and while breastfeeding: no more than 200 mg of caffeine in the whole day.",
    source: "EFSA 2015, EFSA Journal 13(5):4102",
    check: "issuer",
  },
  {
    code: "coeliac-oats",
    traits: ["coeliac-disease"],
    kind: kinds.oats,
    text: "Coeliac disease: of this food only oats that are labelled gluten-free, for others are mixed with wheat or barley on their way. A few people react to any oats; some countries advise against them. Ask the dietitian first.",
    source: "Coeliac UK, oats",
    check: "issuer",
  },
  {
    code: "coeliac-unknown",
    traits: ["coeliac-disease"],
    kind: kinds.glutenUnknown,
    text: "Coeliac disease: nothing is said of allergens in this food, and unknown is not free from gluten. Read the label.",
    source: "Regulation (EU) No 1169/2011, Annex II",
    check: "unverified",
  },
];
