import type { Written } from "./text/written.ts";

/** Herbs that are bought fresh and dried: by the spoon they are dried, unless something is done to them. */
const HERBS =
  /\b(?:basil|dill|oregano|thyme|rosemary|sage|tarragon|marjoram|parsley|coriander|chervil|mint|savory|cilantro)\b/;
/** What is fresh by the piece, and a powder by the spoon. */
const ROOTS = /^(?:ginger|garlic|onion|turmeric)$/;
const SPOONS: ReadonlySet<string | null> = new Set(["tsp", "tbsp", "pinch", "dash"]);
const FRESH: ReadonlySet<string | null> = new Set(["sprig", "twig", "bunch", "handful", "cup", "stalk"]);

/** The words to look a line's food up by: its name, its state, and what its unit says of the form it is in. */
export function searchWords({ food, state, preparation, amounts }: Omit<Written, "apart">): string {
  const said = [...state.filter((each) => !NOT_SEARCHED.has(each)), food];
  return [...said, ...formSaid(food, state, preparation, amounts)].join(" ");
}

/** States that no table tells foods apart by. */
const NOT_SEARCHED: ReadonlySet<string> = new Set([
  "organic", "untreated", "unwaxed", "ripe", "overripe", "free-range", "leftover", "wild", "live", "fed", "enriched", "bone-in", "skin-on", "skin-off",
]); // biome-ignore format: words

function formSaid(
  name: string,
  state: readonly string[],
  preparation: readonly string[],
  amounts: Written["amounts"],
): readonly string[] {
  if (isTinned(name, amounts)) return ["canned"];
  const isSaid = state.some((each) => /^(?:fresh|dried|ground|dehydrated|frozen)$/.test(each));
  if (isSaid || /\b(?:fresh|dried|ground|seeds?|powder)\b/.test(name)) return [];
  const [{ unit } = { unit: undefined }] = amounts;
  if (unit === undefined) return [];
  const isCut = preparation.some((each) => /chop|mince|grat|tor|pick|slice|crush|press|peel/.test(each));
  if (HERBS.test(name) && !/\bleaf|\bleaves|\bsprig/.test(name)) {
    if (SPOONS.has(unit) && !isCut)
      return name.includes("coriander") || name.includes("cilantro") ? [] : ["dried"];
    return FRESH.has(unit) || isCut ? ["fresh"] : [];
  }
  return ROOTS.test(name) && unit === "tsp" && !isCut
    ? [name === "garlic" || name === "onion" ? "powder" : "ground"]
    : [];
}

/** What is bought by the tin is canned; drinks and milks are what they are in one. */
function isTinned(name: string, amounts: Written["amounts"]): boolean {
  return (
    amounts.some(({ unit }) => unit === "can" || unit === "tin") &&
    !/\b(?:canned|tinned|milk|cream|beer|ale|cola|soda|soup|stock|broth|water|juice|paste|spray|sauce|fish|tuna|anchov\w*|sardines?)\b/.test(
      name,
    )
  );
}
