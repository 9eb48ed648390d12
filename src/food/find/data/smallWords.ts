/** Words that say little of which food is meant, or nothing. Common practice, no source. */
export const smallWords: ReadonlySet<string> = new Set(
  "a an the of or and in with for to any some your other such good quality best nice favourite favorite choice organic free range large medium small big little extra ripe whole fresh freshly plain regular natural pure real homemade home made store bought own brand preferred preferably piece pcs food unsweetened non uht untreated".split(
    " ",
  ),
);

/** Words in a food's name that cost it nothing: what a plain food is unless said. */
export const plainSigns: ReadonlySet<string> = new Set(
  "raw fresh dry uncooked unprepared regular plain all commercial variety type whole with without and or a the of in made from includes include product mixed specie various average year round spice nut fluid added solid unspecified mature usda commodity salt not fortified enriched bleached".split(
    " ",
  ),
);

/** Kinds that tables put before a food's own name: `Spices, cumin seed`. The name begins after them. */
export const kindsBefore: ReadonlySet<string> = new Set([
  "spice",
  "nut",
  "seed",
  "leavening agent",
  "alcoholic beverage",
  "beverage",
  "fish",
  "crustacean",
  "mollusk",
  "cheese",
  "oil",
  "sugar",
  "syrup",
  "candy",
  "sweetener",
  "cereal",
  "sauce",
  "game meat",
  "herb",
  "snack",
  "salad dressing",
  "seaweed",
  "fat",
]);

/** Words that say that a food was made ready; it is not meant unless the words say so. */
export const cookedSigns: ReadonlySet<string> = new Set(
  "cooked boiled roasted fried braised baked grilled broiled stewed simmered steamed microwaved microwave microwavable prepared toasted heated sauteed browned breaded battered poached barbecued rotisserie candied warmed reheated".split(
    " ",
  ),
);

/** Words that say that a food was not. */
export const rawSigns: ReadonlySet<string> = new Set([
  "raw",
  "fresh",
  "uncooked",
  "unprepared",
  "dry",
  "dried",
]);

/** Words that say that a food was kept or changed; it is not meant unless the words say so. */
export const keptSigns: ReadonlySet<string> = new Set(
  "canned frozen dried dehydrated freeze pickled powder powdered condensed instant smoked cured imitation substitute sweetened flavored chocolate dietetic lowfat nonfat reduced low light lite diet drained sprouted concentrate fermented juice leaf green babyfood infant formula restaurant fast mix stuffed filled sandwich salad soup pie cake cookie dessert flavor snack industrial native alaska".split(
    " ",
  ),
);

/** Kinds that a cook may name with a food and a table may leave out, or the other way about: mozzarella cheese. */
export const kindWords: ReadonlySet<string> = new Set([
  "cheese",
  "meat",
  "fish",
  "oil",
  "alcoholic",
  "beverage",
]);
