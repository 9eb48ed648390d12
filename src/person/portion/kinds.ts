import type { Allergen } from "../../food/allergens.ts";
import type { ComponentId } from "../../food/components.ts";
import type { State } from "../../food/food.ts";

/**
 * A kind of food that advice speaks of, and how a food is told to be of it. What is sure comes first: a
 * code among the food's own cautions, its figures, the allergens it lists. Its words come last, and they
 * are English: a food that goes by others is told where it carries a caution with the meeting's code.
 */
export interface Kind {
  /** Codes of cautions that foods carry. */
  readonly codes?: readonly string[];
  /** It is of this kind where it holds more than this in 100 g, in the component's own unit. */
  readonly above?: { readonly of: ComponentId; readonly in100g: string };
  /** It is of this kind where it lists this allergen; `"nothing"`: where it says nothing of allergens. */
  readonly says?: Allergen | "nothing";
  readonly group?: RegExp;
  /** Words that count whatever its figures are. */
  readonly words?: RegExp;
  /** Words that count where the food is silent on the component of `above`: it may hold it. */
  readonly silentWords?: RegExp;
  /** Words that say it is none, for all its other words. */
  readonly but?: RegExp;
  /** For words and groups: one that lists its allergens without this is none; nor is a plant, for fish, milk and egg. */
  readonly holds?: Allergen;
  /** One that lists this allergen is none. */
  readonly lacks?: Allergen;
  /** For words and groups: what it may be, where it says. */
  readonly states?: readonly State[];
  /** One of these is none, however it was told. */
  readonly not?: readonly Kind[];
}

export type KindName =
  | "caffeine"
  | "vitaminK"
  | "salt"
  | "potassiumSalt"
  | "liver"
  | "tuna"
  | "oilyFish"
  | "mercuryFish"
  | "rawEgg"
  | "softCheese"
  | "smokedFish"
  | "pate"
  | "sprouts"
  | "rawMeat"
  | "curedMeat"
  | "rawShellfish"
  | "wholeNuts"
  | "cranberry"
  | "soya"
  | "tyramine"
  | "aspartame"
  | "alcohol"
  | "gluten"
  | "oats"
  | "glutenUnknown";

/** Oats as such; what is baked of them counts as gluten, for it may hold wheat. */
const oats: Kind = {
  lacks: "wheat",
  words: /\b(oats?|oatmeal)\b/,
  but: /\b(wheat|barley|rye|spelt|biscuits?|cookies?|bread|cakes?|bars?|flapjacks?|muesli|granola)\b/,
};

/** Words for those that list no allergens. */
const gluten: Kind = {
  codes: ["bread-read-label"],
  says: "gluten",
  holds: "gluten",
  words:
    /\b(wheat|barley|rye|spelt|einkorn|emmer|triticale|bulgur|couscous|semolina|seitan|malt|bread|pasta|noodles|biscuits?|cakes?|beer)\b/,
  but: /\b(gluten[- ]free|rice (noodles|cakes?|pasta)|malt whisk(e)?y)\b/,
  not: [oats],
};

/** Words are held against a name in small letters, without accents. Lists of words are those of the advice that the kind serves. */
export const kinds: { readonly [Name in KindName]: Kind } = {
  caffeine: {
    above: { of: "caffeine", in100g: "0" },
    silentWords:
      /\b(coffee|espresso|cappuccino|latte|mocha|tea|matcha|chai|cocoa|cacao|chocolate|colas?|kola|guarana|yerba|energy (drink|shot|gel)s?|pre-?workout|caffeine|caffeinated)\b/,
    but: /\b(decaf|decaffeinated|caffeine[- ]free|no caffeine|(herbal|fruit|rooibos|peppermint|chamomile|camomile) tea)\b/,
  },
  /** Above 15 % of the reference value of 75 µg: a "significant amount", Regulation (EU) No 1169/2011, Annex XIII. */
  vitaminK: {
    codes: ["vitamin-k-steady"],
    above: { of: "vitaminK", in100g: "11.25" },
    silentWords:
      /\b(kale|spinach|chard|greens|cabbage|broccoli|sprouts|lettuce|rocket|watercress|endive|parsley|basil|asparagus|natto)\b/,
  },
  /** High in salt for the UK's labels: more than 1.5 g (0.6 g of sodium) in 100 g. */
  salt: {
    above: { of: "salt", in100g: "1.5" },
    silentWords:
      /\b(salt|salted|brine|soy sauce|fish sauce|stock cubes?|bouillon|miso|bacon|ham|salami|gherkins?|anchov(y|ies)|crisps)\b/,
    but: /\b(unsalted|no salt|without salt|no added salt|salt[- ]free|salt substitute)\b/,
  },
  /** Salt whose sodium gave way to potassium. The figure is ours: only salts of potassium reach it. */
  potassiumSalt: {
    above: { of: "potassium", in100g: "10000" },
    words: /\b(potassium chloride|salt substitute|(low|reduced|lower)[- ](sodium|salt) salt)\b/,
  },
  /** The figure is ours: above any food but liver and its oils. */
  liver: {
    codes: ["vitamin-a-liver"],
    above: { of: "retinol", in100g: "3000" },
    words: /\b(livers?|liverwurst|haggis|pate)\b/,
    but: /\b(vegan|vegetarian|vegetable|mushroom|lentil|pate (brisee|sucree|feuilletee|sablee|a choux)|pates? de fruits?)\b/,
  },
  tuna: { holds: "fish", words: /\btuna\b/, but: /\bbigeye\b/ },
  oilyFish: {
    holds: "fish",
    words:
      /\b(salmon|trout|mackerel|herrings?|kippers?|bloaters?|sardines?|pilchards?|sprats?|whitebait|anchov(y|ies))\b/,
    but: /\b(king mackerel|(salmon|mackerel|herring|sardine|anchovy) oil)\b/,
  },
  mercuryFish: {
    holds: "fish",
    words: /\b(swordfish|sharks?|marlin|king mackerel|orange roughy|tilefish|bigeye)\b/,
  },
  rawEgg: {
    holds: "egg",
    group: /^eggs?$/,
    words: /\braw eggs?\b/,
    but: /\b(pasteuri[sz]ed|boiled|poached|scrambled|fried|baked|omelette|powder)\b/,
    states: ["raw", "as sold"],
  },
  softCheese: {
    holds: "milk",
    words:
      /\b(brie|camembert|chevre|mou?ld[- ]ripened|gorgonzola|roquefort|danish blue|blue cheese|queso (fresco|blanco)|unpasteuri[sz]ed)\b/,
    but: /\b(hard|cheddar|parmesan|gruyere)\b/,
    states: ["raw", "as sold"],
  },
  /** Ready to eat, smoked cold or cured; mackerel is smoked hot, kippers are cooked before they are eaten. */
  smokedFish: {
    holds: "fish",
    words:
      /\b(cold[- ]smoked|smoked (salmon|trout|halibut|fish)|(salmon|trout|halibut)\b.*\b(smoked|cured)|grav(ad)?lax|lox)\b/,
    but: /\b(hot[- ]smoked|mackerel|cheese|cheddar|ham|bacon|tofu)\b/,
    states: ["raw", "as sold"],
  },
  /** Of any kind, vegetables too; pastry of the French name is none. */
  pate: {
    words: /\b(pates?|rillettes|terrines?)\b/,
    but: /\b(pate (brisee|sucree|feuilletee|sablee|a choux)|pates? de fruits?)\b/,
  },
  sprouts: {
    words:
      /\b(bean ?sprouts?|(alfalfa|mung|radish|clover|lentil|soya?|fenugreek)( bean)? sprouts?|sprouted)\b/,
    but: /\b(brussels?|cooked|boiled|canned|bread|flour|broccoli)\b/,
    states: ["raw", "as sold"],
  },
  rawMeat: {
    group: /^(meat|poultry|game)$/,
    words:
      /\b(carpaccio|(steak|beef) tartare|raw (beef|veal|lamb|pork|venison|chicken|turkey|duck|mince|meat))\b/,
    but: /\b(liver|gelatine?)\b/,
    states: ["raw"],
  },
  curedMeat: {
    words:
      /\b(salami|chorizo|pepperoni|prosciutto|parma ham|serrano|iberico|bresaola|coppa|nduja|saucisson|biltong|air[- ]dried ham)\b/,
    but: /\b(vegan|vegetarian|soya|chill?i(es)?|chiles?|peppers?)\b/,
    states: ["raw", "as sold", "dry"],
  },
  rawShellfish: {
    words:
      /\b(oysters?|raw (mussels|clams|cockles|scallops|prawns|shellfish)|(mussels|clams|cockles|scallops)\b.*\braw)\b/,
    but: /\b(oyster (mushrooms?|sauce)|mushrooms?|smoked|cooked|canned|fried|baked)\b/,
    states: ["raw", "as sold"],
  },
  wholeNuts: {
    words: /\b(nuts?|almonds?|peanuts?|cashews?|walnuts?|hazelnuts?|pecans?|pistachios?|macadamias?)\b/,
    but: /\b(ground|flaked|chopped|crushed|slivered|nut[- ]free|nut allergy|(nut|almond|peanut|cashew|walnut|hazelnut|pecan|pistachio|macadamia)s? (butter|flour|meal|milk|drink|oil|paste|spread|essence|extract)|water chest ?nuts?)\b/,
  },
  cranberry: { words: /\bcranberr(y|ies)\b/, but: /\bcranberry beans?\b/ },
  /** As a food, not as sauce, oil or lecithin. */
  soya: {
    holds: "soya",
    words: /\b(soya?|soya? ?beans?|tofu|tempeh|edamame|natto)\b/,
    but: /\b(sauce|oil|lecithin|soya?[- ]free)\b/,
  },
  /** Aged, cured, fermented or concentrated. */
  tyramine: {
    words:
      /\b(cheddar|stilton|parmesan|pecorino|gruyere|emmental|gouda|brie|camembert|roquefort|gorgonzola|blue cheese|(mature|aged|hard) cheese|salami|chorizo|pepperoni|pickled herrings?|rollmops?|(yeast|meat|beef) extracts?|stock cubes?|soya? sauce|miso|tempeh|natto|fermented (soya?|tofu|fish)|fish sauce|sauerkraut|kimchi|broad bean pods?|beer|lager|ale|wine|vermouth|sherry)\b/,
    but: /\b(vinegar|ginger (ale|beer)|root beer|wine gums?|vegan cheese)\b/,
  },
  aspartame: {
    words:
      /\b(aspartame|e ?951|(artificial|table[- ]top) sweeteners?|diet (cola|soda|drink|lemonade)|sugar[- ]free)\b/,
    but: /\b((without|no) aspartame|aspartame[- ]free|sucralose|stevia|xylitol|erythritol)\b/,
  },
  /** Above 0.5 % by volume (0.4 g in 100 g), what the UK lets be called dealcoholised (unverified); bread and ripe fruit stay below. */
  alcohol: {
    above: { of: "alcohol", in100g: "0.4" },
    silentWords:
      /\b(wine|beer|lager|ale|stout|cider|sherry|port|brandy|cognac|rum|whisk(e)?y|bourbon|vodka|gin|tequila|liqueurs?|vermouth|champagne|prosecco|sake|mirin)\b/,
    but: /\b(vinegar|alcohol[- ]free|non[- ]?alcoholic|dealcoholi[sz]ed|ginger (ale|beer)|root beer|gums?)\b/,
  },
  gluten,
  oats,
  /** May hold gluten for all that is said of it. */
  glutenUnknown: { says: "nothing", not: [gluten, oats] },
};
