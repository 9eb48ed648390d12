import type { FoodCaution } from "../food.ts";

/** What bodies have cautioned of starter foods, each named below with its body. */
export type StarterCaution =
  | "beans-boil"
  | "iodine-seaweed"
  | "iodine-nori"
  | "vitamin-a-liver"
  | "grapefruit-medicines"
  | "selenium-brazil-nuts"
  | "vitamin-k-steady"
  | "oxalate-high"
  | "honey-infants"
  | "rice-keeping"
  | "coumarin-cassia"
  | "nutmeg-dose"
  | "bread-read-label"
  | "read-label"
  | "coconut-lists-differ";

/**
 * Cautions that bodies have issued on starter foods, in our own words. The body is named with each.
 * Read at the issuer or in a copy, unless a comment says unverified. Local advice comes first.
 */
export const cautions: { readonly [C in StarterCaution]: Omit<FoodCaution, "code"> } = {
  "beans-boil": {
    text: "Raw or half-cooked common beans, red kidney beans above all, make people ill. Soak for at least 5 hours, throw that water away, then boil in fresh water for at least 30 minutes; a slow cooker alone does not get hot enough.",
    source: "US FDA, Bad Bug Book: phytohaemagglutinin",
  },
  "iodine-seaweed": {
    text: "Seaweed can hold more iodine in a spoonful than the safe limit for a day, and how much varies from one batch to the next. In pregnancy, while breastfeeding and for children: brown seaweed at most once a week. With thyroid, heart or kidney disease, or on medicines with iodine or lithium, ask a clinician first.",
    source: "Food Standards Australia New Zealand, advice on brown seaweed; ANSES opinion on seaweed (2018)",
  },
  // Grams in a sheet are unverified; iodine from iodine.ts.
  "iodine-nori": {
    text: "Nori is a red seaweed, far lower in iodine than kelp, but a sheet (about 3 g dry) can still bring 100 µg, and batches differ. While pregnant or breastfeeding, with thyroid, heart or kidney disease, or on medicines with iodine or lithium, ask a doctor first.",
    source:
      "Food Standards Australia New Zealand, survey of iodine in seaweed (2010); ANSES opinion on seaweed (2018)",
  },
  "vitamin-a-liver": {
    text: "Liver is very rich in vitamin A. Not in pregnancy nor when planning one; anyone else at most once a week.",
    source: "NHS 111 Wales, vitamins and minerals; EFSA (2024) says at most once a month",
  },
  "grapefruit-medicines": {
    text: "Grapefruit changes how the body handles some medicines, certain statins, calcium channel blockers and ciclosporin among them. Ask a pharmacist.",
    source: "US FDA, consumer update on grapefruit juice and medicines",
  },
  // Unverified.
  "selenium-brazil-nuts": {
    text: "Brazil nuts are so rich in selenium that eating them often can pass the upper level of 255 µg a day for adults.",
    source: "EFSA, tolerable upper intake level for selenium (2023)",
  },
  "vitamin-k-steady": {
    text: "On warfarin, keep vitamin K much the same from week to week: no sudden change in leafy greens without telling the clinic.",
    source:
      "Cambridge University Hospitals NHS Foundation Trust, dietary advice for patients taking warfarin",
    for: ["warfarin"],
  },
  "oxalate-high": {
    text: "Rich in oxalate: people who were told to limit it, after kidney stones for one, should ask their clinician.",
    source: "lists of high-oxalate foods in reviews of dietary oxalate",
    for: ["kidney-disease"],
  },
  "honey-infants": {
    text: "No honey for a child under 12 months, not even in cooking: it can carry spores that cause infant botulism.",
    source: "Institut national de santé publique du Québec, feeding your child",
    for: ["under-1"],
  },
  "rice-keeping": {
    text: "Cooked rice: cool it within an hour, keep it in the fridge for a day at most, heat it until steaming all through, and only once. Spores outlive the cooking, grow in warm rice, and leave a poison that heat does not undo.",
    source:
      "NHS (England) and Food Standards Agency, reheating rice, as Kensington and Chelsea council gives it",
  },
  // That liver disease calls for more care is unverified; the rest was read at the BfR or in copies.
  "coumarin-cassia": {
    text: "Most ground cinnamon is cassia, whose coumarin can harm the liver of sensitive people. How much is too much goes by body mass, 0.1 mg of coumarin a day for each kilogram: at the usual content about 0.5 g of cassia for a child of 15 kilograms and 2 g for an adult of 60. For daily use take Ceylon cinnamon, or little; with liver disease ask a doctor first.",
    source:
      "BfR (Germany), press release 26/2012 and questions on coumarin in cinnamon; EFSA 2008, EFSA Journal 793",
  },
  "nutmeg-dose": {
    text: "Nutmeg is for pinches: from about 5 g (two teaspoons) it has poisoned people, with racing heart, confusion and hallucinations. Keep it from children.",
    source:
      "reports of poisonings: Forensic Sci Int 2001, 118:87-90; Rahman et al., Toxicity of nutmeg, a review, Int J Adv Sci Eng Inf Technol (abstracts)",
  },
  // Common practice, no source.
  "bread-read-label": {
    text: "Holds wheat and gluten. Other allergens (milk, soya, sesame and more) depend on the maker: read the label.",
    source: "Regulation (EU) No 1169/2011, Annex II",
  },
  // Common practice, no source.
  "read-label": {
    text: "What it holds of allergens depends on the maker or the method: read the label.",
    source: "Regulation (EU) No 1169/2011, Annex II",
  },
  // The change in the United States is unverified.
  "coconut-lists-differ": {
    text: "Coconut is not on the European list; the United States counted it as a tree nut until 2025. Ask people with a nut allergy; read the label for sulphites.",
    source:
      "Regulation (EU) No 1169/2011, Annex II; US FDA, guidance on food allergen labeling (January 2025)",
  },
};
