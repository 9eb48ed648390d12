import { type Language, say } from "../document/language.ts";
import { allergens } from "../food/allergens.ts";
import type { FoodInput } from "../food/food.ts";
import { kitchenNameOf } from "../food/kitchenName.ts";
import { type CautionCode, practitionerNote } from "../person/caution.ts";
import { sourceText } from "../person/check.ts";
import type { Allergens, AllergenUnknown } from "../person/portion/allergens.ts";
import type { PlanAvoided, Portion } from "../plan/plan.ts";
import { shortName } from "../sheet/names.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Sourced } from "./card.ts";
import type { Footnotes } from "./footnotes.ts";
import type { CardCaution } from "./how.ts";

/**
 * Whether a caution gives away someone's age, body, health or pregnancy: nothing for a kitchen wall. Every
 * code stands here, so that a new one is not shown before somebody has thought of it.
 */
const PERSONAL: { readonly [C in CautionCode]: boolean } = {
  "outside-population": true,
  "equation-step": true,
  "unusual-activity": false,
  "energy-below-800": false,
  "energy-below-resting": false,
  "energy-beyond-limit": false,
  "low-energy-availability": true,
  "fast-loss": false,
  "fast-loss-for-mass": true,
  "fast-gain": false,
  "macros-energy": false,
  "protein-low": false,
  "protein-high": false,
  "protein-share": false,
  "under-18": true,
  "over-65": true,
  pregnant: true,
  breastfeeding: true,
  underweight: true,
  "underweight-soon": true,
  "underweight-unknown": true,
  refeeding: true,
  "kidney-disease": true,
  insulin: true,
  warfarin: true,
  "thyroid-disease": true,
  "eating-disorder-history": true,
  "coeliac-disease": true,
  diabetes: true,
  hypertension: true,
  levothyroxine: true,
  lithium: true,
  "mao-inhibitors": true,
  phenylketonuria: true,
  haemochromatosis: true,
  "no-upper-level": false,
  "authority-in-part": false,
  "guidance-level": false,
  supervised: true,
};

/** What the caller's cautions may show. */
export function shownCautions(
  all: readonly CardCaution[],
  personal: "hide" | "show",
): readonly CardCaution[] {
  if (personal === "show") return all;
  return all.filter(({ code, because = [] }) => because.length === 0 && !isPersonal(code));
}

function isPersonal(code: string | undefined): boolean {
  return code !== undefined && Object.hasOwn(PERSONAL, code) && PERSONAL[code as CautionCode];
}

/** Whom the cautions of foods are shown to. */
interface FoodCautionsFor {
  /** Texts of the cautions that concern whoever eats it. */
  readonly told: ReadonlySet<string>;
  /** Whether the plan knows who that is. */
  readonly isKnown: boolean;
  readonly personal: "hide" | "show";
}

/**
 * Gives the cautions that foods carry, each once, with the foods that it speaks of. Of those that concern some
 * people alone a card shows none while it hides what is personal: one that stands there tells what they have.
 */
export function foodCautions(
  foods: readonly FoodInput[],
  { told, isKnown, personal }: FoodCautionsFor,
  language: Language,
): readonly CardCaution[] {
  const byText = new Map<string, { readonly caution: CardCaution; readonly names: Set<string> }>();
  for (const food of foods) {
    for (const caution of food.cautions ?? []) {
      const isHidden = isKnown && personal === "hide" && caution.for !== undefined;
      if (isHidden || !told.has(caution.text)) continue;
      const found = byText.get(caution.text) ?? { caution, names: new Set<string>() };
      found.names.add(shortName(say(language, kitchenNameOf(food))));
      byText.set(caution.text, found);
    }
  }
  return [...byText.values()].map(({ caution, names }) => ({
    ...caution,
    text: say(language, "{foods}: {text}", {
      foods: [...names].join("; "),
      text: say(language, caution.text),
    }),
  }));
}

/** Allergens that are known to be in it, and the foods of which too little is said. */
export function allergenCautions({ contains, unknown }: Allergens, language: Language): readonly string[] {
  const listed = (phrase: string, names: readonly string[]): readonly string[] => {
    const list = [...new Set(names.map((name) => say(language, name)))].join("; ");
    return list === "" ? [] : [say(language, phrase, { list })];
  };
  const foods = (why: AllergenUnknown["why"]): readonly string[] =>
    unknown.filter((each) => each.why === why).map(({ food }) => food);
  return [
    ...listed(
      "Allergens: {list}",
      contains.map(({ name }) => name),
    ),
    ...listed(
      "Allergens are not known of {list}: unknown is not free from",
      foods("says nothing of allergens"),
    ),
    ...listed("Gluten, but not said whether of wheat: {list}", foods("says gluten, but not of which cereal")),
  ];
}

/** What the person avoids, what is served of it on a written override, and what to ask before serving. */
export function avoidedCautions(
  avoided: PlanAvoided,
  portions: readonly Pick<Portion, "person" | "meal">[],
  language: Language,
): readonly CardCaution[] {
  const words = (text: string): string => say(language, text);
  const isHere = (at: { readonly person: string; readonly meal: string }): boolean =>
    portions.some(({ person, meal }) => person === at.person && meal === at.meal);
  const [person] = portions.map((portion) => portion.person);
  const names = avoided.people.find((each) => each.person === person)?.avoids ?? [];
  const list = names.map(words).join("; ");
  return [
    ...(names.length > 0 ? [{ text: say(language, "Not to be served: {list}", { list }) }] : []),
    ...avoided.overridden.filter(isHere).map(({ name, because }) => ({
      text: say(language, "{name} is served all the same: {because}", { name: words(name), because }),
    })),
    ...avoided.unknown.filter(isHere).map(({ food, of, origin }) => ({
      text:
        origin === undefined
          ? say(language, "Ask before serving whether {food} holds: {list}", {
              food: words(food),
              list: of.map((id) => words(allergens[id].name)).join("; "),
            })
          : say(language, "Ask before serving whether any of {food} is of animal origin", {
              food: words(food),
            }),
    })),
  ];
}

/** What recipes say of keeping, cooling and heating again, each with the dish that it is of. */
export function recipeNotes(dishes: readonly Sheet[], language: Language): readonly CardCaution[] {
  return dishes.flatMap(({ name, origin: { notes = [] } }) =>
    notes.map(({ text, source }) => ({
      text: say(language, "{name}: {text}", { name, text }),
      ...(source !== undefined && { source }),
    })),
  );
}

/** What stands on every card. */
export function standingNotes(personal: "hide" | "show", language: Language): readonly string[] {
  const kept =
    "Cautions about the person, where there are any, are not shown here: ask whoever planned this.";
  return [...(personal === "show" ? [] : [say(language, kept)]), say(language, practitionerNote)];
}

/** Cautions with the numbers of their footnotes, each text once. */
export function numbered(
  all: readonly CardCaution[],
  footnotes: Footnotes,
  language: Language,
): readonly Sourced[] {
  const texts = new Set<string>();
  return all.flatMap(({ text, source, check }) => {
    if (texts.has(text)) return [];
    texts.add(text);
    const footnote =
      source === undefined ? undefined : footnotes.number(sourceText({ source, check }, language));
    return [{ text, footnote }];
  });
}
