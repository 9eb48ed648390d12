/** The kitchen's words, by which a line of a recipe is read. Common practice, no source. */

const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));
const map = (pairs: string): ReadonlyMap<string, string> =>
  new Map(
    pairs
      .trim()
      .split("\n")
      .flatMap((line) => {
        const [to = "", ...all] = line.trim().split(/\s*,\s*/);
        return [to, ...all].map((from): [string, string] => [from, to]);
      }),
  );

/** Numbers in words. */
export const numberWords: ReadonlyMap<string, string> = new Map([
  ["a", "1"], ["an", "1"], ["one", "1"], ["two", "2"], ["three", "3"], ["four", "4"], ["five", "5"], ["six", "6"],
  ["seven", "7"], ["eight", "8"], ["nine", "9"], ["ten", "10"], ["eleven", "11"], ["twelve", "12"],
  ["fifteen", "15"], ["twenty", "20"], ["dozen", "12"], ["half", "1/2"], ["quarter", "1/4"], ["third", "1/3"],
]); // biome-ignore format: pairs

/** Words of pieces and packs, each with its spellings: the first is the one used. */
export const countUnits: ReadonlyMap<string, string> = map(`
  clove, cloves
  stick, sticks
  stalk, stalks
  rib, ribs
  slice, slices
  rasher, rashers
  piece, pieces, pcs, pc
  can, cans
  tin, tins
  jar, jars
  bottle, bottles
  package, packages, pkg, pkgs
  packet, packets, pkt
  pack, packs
  bag, bags
  box, boxes
  carton, cartons
  tub, tubs
  container, containers
  sachet, sachets
  envelope, envelopes
  tube, tubes
  pouch, pouches
  bunch, bunches
  sprig, sprigs
  twig, twigs
  handful, handfuls, handfull, hand full
  pinch, pinches
  dash, dashes
  splash, splashes
  drizzle, drizzles
  drop, drops
  knob, knobs
  pat, pats
  glass, glasses
  mug, mugs
  bowl, bowls
  cube, cubes
  head, heads
  bulb, bulbs
  sheet, sheets
  strip, strips
  fillet, fillets, filet, filets
  block, blocks
  ball, balls
  bar, bars
  square, squares
  loaf, loaves
  wedge, wedges
  ear, ears
  scoop, scoops
  ladle, ladles
  spoon, spoons, spoonful, spoonfuls
  thumb, thumbs
  roll, rolls
  round, rounds
  log, logs
  rack, racks
  part, parts
  pod, pods
  serving, servings
`);

/** Packs and pieces that are told by their size: a 400 g can, a 5 cm piece. */
export const sized: ReadonlySet<string> = set(
  "can tin jar bottle package packet pack bag box carton tub container sachet envelope tube pouch piece block ball bar loaf log fillet slice stick roll head",
);

/** What holds a liquid: its ounces are fluid. */
export const liquidPacks: ReadonlySet<string> = set("bottle carton");

/** Piece words that may stand behind the food: garlic cloves, celery sticks, stock cubes. */
export const behindFood: ReadonlySet<string> = set(
  "clove stick stalk rib cube sprig twig slice rasher head bulb wedge strip sheet can tin jar",
);

/** Units that are no measure. */
export const loose: ReadonlySet<string> = set(
  "pinch handful dash splash drizzle drop knob glass mug bowl spoon thumb ladle",
);

/** Sizes that stand with a count. */
export const sizes: ReadonlyMap<string, string> = map(`
  small, little, smallish
  medium, medium-sized, medium sized, medium-size, medium size, medium-large, med, average, mid-size, mid-sized
  large, large-sized, large sized, large size, big, lg, largish
  extra large, extra-large, x-large, xl, jumbo
`);

/** States that a food is bought or kept in. */
export const stateWords: ReadonlySet<string> = set(`
  fresh raw canned tinned frozen dried dehydrated boneless skinless unsalted salted untreated unwaxed ripe overripe lean
  organic whole enriched pickled cooked uncooked pitted seedless unsweetened sweetened fed live smoked-dried
  bone-in skin-on skin-off free-range low-fat lowfat fat-free nonfat non-fat full-fat reduced-fat low-sodium reduced-sodium
  low-salt non-uht uht jarred leftover unpeeled unbleached wild tepid lukewarm thick-cut thin-cut
`);

/** What is done to a food before it is used. */
export const preparations: ReadonlySet<string> = set(`
  chopped diced sliced minced grated shredded crushed peeled melted softened beaten cubed quartered halved crumbled
  mashed pureed puréed juiced zested squeezed toasted roasted blanched drained rinsed washed cleaned trimmed cored seeded
  deseeded de-seeded stemmed sifted packed cut torn pressed whisked strained thawed soaked julienned scrubbed shelled
  deveined deboned boned skinned smashed pounded flaked slivered ripped broken separated warmed heated boiled
  hard-boiled soft-boiled fried sautéed sauteed steamed caramelized caramelised caramelized cooled chilled divided split bruised
  ground hulled husked pricked spiralized spiralised shaved cracked clarified browned reserved crosswise lengthwise
  finely-chopped chunked plucked picked debearded patted tied warm cold hot boiling ice-cold thinly finely roughly coarsely freshly
  diagonally lightly well thickly very small chunks pieces cubes strips slices rings wedges matchsticks rounds half halves
  bite-sized bite-size thin thick thick-sliced fine coarse into in and or then & / to quarters quarter dice mince paste
`);

/** Of those, the words that are a preparation by themselves; the others only go with one. */
export const acts: ReadonlySet<string> = new Set(
  [...preparations].filter((word) =>
    /(?:ed|ped|en|cut|torn|split|ground|broken|boiling|hot|cold|warm)$/.test(word),
  ),
);

/** How a preparation is done. */
export const manners: ReadonlySet<string> = set(
  "thinly finely roughly coarsely freshly lightly well thickly very",
);

/** Tools and other things that are not eaten. */
export const tools: ReadonlySet<string> = set(`
  cooker pan pot skewer skewers paper parchment foil thermometer blender processor tray string twine toothpick toothpicks
  bowl bag mixer whisk spatula grater oven grill smoker wok skillet casserole dish mold mould molds moulds cutter wrap
  cloth cheesecloth press peeler rack stick sticks liners cups jars chips charcoal knife spoon machine maker fryer griddle
  stove microwave sieve strainer ramekin ramekins
`);

/** Words of a sentence that speaks of the recipe and lists no food. */
export const sentenceWords: ReadonlySet<string> = set(`
  you your i we it they is are was were can could may might should must will would don't do does have has had use used
  feel make makes add recommend include includes depends depending if be it's i'm that's there this these i've my me
`);

/** Verbs that a step of the method begins with. */
export const stepVerbs: ReadonlySet<string> = set(`
  preheat heat chop mix add stir cook bake boil fry combine place put serve pour whisk cut slice season bring simmer let leave
  remove cover drain melt peel grate roll knead spread sprinkle toss blend reduce return transfer set turn rinse wash soak
`);

/** What stands before a noun that two share: basmati or jasmine rice. */
export const heads: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["rice", set("basmati jasmine arborio carnaroli long-grain short-grain medium-grain sushi wild")],
  ["flour", set("wheat spelt rye wholemeal wholewheat almond buckwheat bread all-purpose self-raising oat corn rice barley")],
  ["vinegar", set("cider wine balsamic malt rice sherry")],
  ["beans", set("kidney pinto cannellini haricot butter navy broad borlotti fava adzuki mung runner")],
  ["mince", set("beef lamb pork turkey chicken veal")],
  ["milk", set("oat soy soya almond coconut rice cow's goat's")],
  ["butter", set("peanut almond cashew")],
  ["sugar", set("caster granulated cane demerara muscovado icing palm coconut")],
  ["mushrooms", set("button chestnut portobello oyster shiitake cremini")],
  ["tomatoes", set("cherry plum vine beef")],
  ["seeds", set("sunflower pumpkin sesame chia flax poppy hemp cumin fennel caraway")],
  ["cabbage", set("savoy napa pointed")],
  ["lettuce", set("romaine cos iceberg butterhead")],
  ["stock", set("chicken beef vegetable veggie fish pork lamb veal mushroom")],
]); // biome-ignore format: a noun a line

/** Meats: before them "ground" and "minced" make the name. */
export const meats: ReadonlySet<string> = set(
  "beef pork lamb veal meat turkey chicken mutton venison bison sausage round chuck",
);
