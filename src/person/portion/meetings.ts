import type { ComponentId } from "../../food/components.ts";
import type { Check } from "../check.ts";
import type { Condition } from "../person.ts";

/** What of a person may meet what of a food. */
export type Trait = Condition | "pregnant" | "breastfeeding" | "under-18";

/** A caution that holds where a trait of the person meets a food, or a component of a portion. */
export interface Meeting {
  readonly code: string;
  /** Any one of them. */
  readonly traits: readonly Trait[];
  /** Codes of the cautions that foods carry. */
  readonly foods?: readonly string[];
  /** Components that are told with it: any of them that is not proven to be none. */
  readonly components?: readonly ComponentId[];
  readonly text: string;
  readonly source: string;
  readonly check: Check;
}

/** One list, since the wording is ours; each names the body it rests on. Foods' own cautions ride along besides. */
export const meetings: readonly Meeting[] = [
  {
    code: "seaweed-thyroid",
    traits: ["thyroid-disease", "kidney-disease"],
    foods: ["iodine-seaweed"],
    text: "Seaweed is advised against with thyroid, heart or kidney disease, or on medicines with iodine or lithium, unless a doctor says otherwise.",
    source: "ANSES (France), opinion of 2018 on seaweed and iodine",
    check: { at: "copy", read: "a news report of the opinion" },
  },
  {
    code: "seaweed-growth",
    traits: ["pregnant", "breastfeeding", "under-18"],
    foods: ["iodine-seaweed"],
    text: "In pregnancy, while breastfeeding and for children: brown seaweed at most once a week.",
    source: "Food Standards Australia New Zealand, advice on brown seaweed",
    check: { at: "copy", read: "https://ukiodine.org/news/article-in-sunday-times-on-iodine-in-seaweed/" },
  },
  {
    code: "warfarin-vitamin-k",
    traits: ["warfarin"],
    foods: ["vitamin-k-steady"],
    components: ["vitaminK"],
    text: "On warfarin, vitamin K should stay much the same from week to week. Tell the clinic before this becomes a habit, or stops being one.",
    source: "Cambridge University Hospitals NHS, dietary advice for patients taking warfarin",
    check: {
      at: "issuer",
      read: "https://www.cuh.nhs.uk/patient-information/dietary-advice-for-patients-taking-warfarin",
    },
  },
  {
    code: "warfarin-grapefruit",
    traits: ["warfarin"],
    foods: ["grapefruit-medicines"],
    text: "Grapefruit is advised against with warfarin: ask the clinic.",
    source: "NHS (England), warfarin: food and drink",
    check: "memory",
  },
  {
    code: "kidney-amounts",
    traits: ["kidney-disease"],
    components: ["potassium", "phosphorus", "sodium", "protein"],
    text: "Kidney disease: how much of these is right is set by the kidney team, often below what is usual.",
    source: "KDOQI and Academy of Nutrition and Dietetics, guideline on nutrition in CKD, 2020",
    check: { at: "issuer", read: "https://www.andeal.org/topic.cfm?menu=5861&cat=5973" },
  },
  {
    code: "insulin-carbohydrate",
    traits: ["insulin"],
    components: ["availableCarbohydrate"],
    text: "Insulin is matched to carbohydrate: a portion of another size, or another mix, changes the dose. Agree it with the diabetes team.",
    source: "NICE (England), NG17 Type 1 diabetes in adults, dietary management",
    check: "memory",
  },
  {
    code: "liver-pregnancy",
    traits: ["pregnant"],
    foods: ["vitamin-a-liver"],
    text: "No liver, and nothing made of it, in pregnancy or when planning one: too much vitamin A harms the unborn child.",
    source: "EFSA 2024, EFSA Journal 22(6):8814; NHS 111 Wales, vitamins and minerals",
    check: { at: "issuer", read: "https://111.wales.nhs.uk/encyclopaedia/v/article/Vitaminsandminerals" },
  },
  {
    code: "caffeine-pregnancy",
    traits: ["pregnant", "breastfeeding"],
    components: ["caffeine"],
    text: "In pregnancy and while breastfeeding: no more than 200 mg of caffeine in the whole day.",
    source: "EFSA 2015, EFSA Journal 13(5):4102",
    check: { at: "issuer", read: "https://www.efsa.europa.eu/fr/efsajournal/pub/4102" },
  },
];
