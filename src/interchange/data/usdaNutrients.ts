import type { ComponentId } from "../../food/components.ts";

/**
 * Components by nutrient number, as the USDA's tables number them: SR28 (file NUTR_DEF) and, where the
 * number is not there, FoodData Central (nutrient_nbr). Numbers are text, for some have decimals.
 *
 * Source: USDA National Nutrient Database for Standard Reference, Release 28 (2016), file NUTR_DEF, read;
 * FoodData Central, Foundation Foods (2019), for 269.3 and 314, read; for 316, 416 and 539 from memory.
 */
// biome-ignore format: a table
export const usdaNutrients: { readonly [number: string]: ComponentId } = {
  "203": "protein", "204": "fat", "205": "carbohydrateByDifference", "207": "ash", "208": "energy", "209": "starch",
  "221": "alcohol", "255": "water", "262": "caffeine", "263": "theobromine", "269": "sugars", "291": "fibre",
  "301": "calcium", "303": "iron", "304": "magnesium", "305": "phosphorus", "306": "potassium", "307": "sodium",
  "309": "zinc", "312": "copper", "313": "fluoride", "314": "iodine", "315": "manganese", "316": "molybdenum", "317": "selenium",
  "319": "retinol", "320": "vitaminARae", "321": "betaCarotene", "322": "alphaCarotene", "323": "vitaminE",
  "328": "vitaminD", "334": "betaCryptoxanthin", "337": "lycopene", "338": "luteinZeaxanthin",
  "401": "vitaminC", "404": "thiamin", "405": "riboflavin", "406": "niacin", "410": "pantothenicAcid", "415": "vitaminB6",
  "416": "biotin", "417": "folate", "418": "vitaminB12", "421": "choline", "430": "vitaminK", "431": "folicAcid", "432": "foodFolate",
  "435": "folateDfe", "454": "betaine",
  "501": "tryptophan", "502": "threonine", "503": "isoleucine", "504": "leucine", "505": "lysine", "506": "methionine",
  "507": "cystine", "508": "phenylalanine", "509": "tyrosine", "510": "valine", "511": "arginine", "512": "histidine",
  "513": "alanine", "514": "asparticAcid", "515": "glutamicAcid", "516": "glycine", "517": "proline", "518": "serine",
  "539": "addedSugars",
  "601": "cholesterol", "605": "transFat", "606": "saturatedFat", "621": "dha", "629": "epa", "631": "dpa", "636": "phytosterols",
  "645": "monounsaturatedFat", "646": "polyunsaturatedFat", "675": "linoleicAcid", "851": "alphaLinolenicAcid",
  "210": "sucrose", "211": "glucose", "212": "fructose", "213": "lactose", "214": "maltose", "287": "galactose",
  "325": "vitaminD2", "326": "vitaminD3", "341": "betaTocopherol", "342": "gammaTocopherol",
  "343": "deltaTocopherol", "344": "alphaTocotrienol", "345": "betaTocotrienol", "346": "gammaTocotrienol",
  "347": "deltaTocotrienol", "428": "menaquinone4", "429": "dihydrophylloquinone", "521": "hydroxyproline",
  "607": "butyricAcid", "608": "caproicAcid", "609": "caprylicAcid", "610": "capricAcid", "611": "lauricAcid",
  "612": "myristicAcid", "613": "palmiticAcid", "614": "stearicAcid", "615": "arachidicAcid", "617": "fa18d1",
  "618": "fa18d2", "619": "fa18d3", "620": "fa20d4", "624": "behenicAcid", "625": "fa14d1", "626": "fa16d1",
  "627": "fa18d4", "628": "fa20d1", "630": "fa22d1", "638": "stigmasterol", "639": "campesterol",
  "641": "betaSitosterol", "652": "pentadecanoicAcid", "653": "margaricAcid", "654": "lignocericAcid",
  "662": "fa16d1t", "663": "fa18d1t", "664": "fa22d1t", "665": "fa18d2t", "666": "fa18d2i", "669": "fa18d2tt",
  "670": "conjugatedLinoleicAcids", "671": "fa24d1c", "672": "fa20d2cn6", "673": "fa16d1c", "674": "fa18d1c",
  "676": "fa22d1c", "685": "gammaLinolenicAcid", "687": "fa17d1", "689": "fa20d3",
  "693": "transMonounsaturatedFat", "695": "transPolyunsaturatedFat", "696": "tridecanoicAcid", "697": "fa15d1",
  "852": "fa20d3n3", "853": "dihomoGammaLinolenicAcid", "855": "arachidonicAcid", "856": "fa18d3i",
  "857": "fa21d5", "858": "fa22d4", "859": "fa18d1tn7",
};

/** What stands for a component where its own number does not, the first that is there. */
// biome-ignore format: a table
export const usdaInstead: { readonly [C in ComponentId]?: readonly string[] } = {
  energy: ["958", "957", "268"], // Atwater specific factors, then general ones; in kilojoules
  sugars: ["269.3"], // by the label's definition
  vitaminD: ["324"], // in international units, 40 to the microgram
};

/** The part of a component that was added to the food. */
export const usdaAdded: { readonly [number: string]: ComponentId } = {
  "573": "vitaminE",
  "578": "vitaminB12",
};
